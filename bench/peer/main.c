/* peer INPUT [runs]: solves every point of the input, prints one line a point and the times for all of them (median of
   the runs): wall, processor, and the processor's of the air side alone; measured here, without starting the program and reading the input. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include "peer.h"

static double seconds(clockid_t clock) {
    struct timespec t;
    clock_gettime(clock, &t);
    return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

static int solve_all(const struct car *car, const struct settings *settings, struct point *points, int count, struct trace *trace, double *air_time) {
    static double states[MOST_POINTS][STATES + 1];
    struct air_solver *air = air_open(car, settings);
    struct fuel_solver *fuel = fuel_open(car, settings);
    int ok = air && fuel;
    *air_time = 0;
    for (int i = 0; ok && i < count; i++) {
        struct point *p = &points[i];
        int after = p->after;
        p->level = p->drawn = 0;
        if (after >= 0) { memcpy(states[i], states[after], sizeof states[i]); p->level = points[after].level; p->drawn = points[after].drawn; }
        else air_start(car, states[i]);
        double t = seconds(CLOCK_PROCESS_CPUTIME_ID);
        ok = air_solve(air, p, states[i], trace);
        *air_time += seconds(CLOCK_PROCESS_CPUTIME_ID) - t;
        if (!ok) { fprintf(stderr, "point %d (%g rpm, %g degrees) failed\n", i, p->rpm, p->degrees); break; }
        if (!fuel_solve(fuel, p, trace)) p->settled = 0;
    }
    if (air) air_close(air);
    if (fuel) fuel_close(fuel);
    return ok;
}

static int rising(const void *a, const void *b) { double x = *(const double *)a, y = *(const double *)b; return (x > y) - (x < y); }

int main(int argc, char **argv) {
    struct car car;
    struct settings settings = { .most_cycles = 100 };
    static struct point points[MOST_POINTS];
    int count = 0;
    if (argc < 2) { fprintf(stderr, "usage: peer INPUT [runs]\n"); return 2; }
    if (!read_input(argv[1], &car, &settings, points, &count)) return 2;
    int runs = argc > 2 ? atoi(argv[2]) : 1;
    if (runs < 1 || runs > 99) runs = 1;

    struct trace *trace = malloc(sizeof *trace);
    double wall[99], processor[99], air_time = 0;
    for (int r = 0; r < runs; r++) {
        double w = seconds(CLOCK_MONOTONIC), p = seconds(CLOCK_PROCESS_CPUTIME_ID);
        if (!solve_all(&car, &settings, points, count, trace, &air_time)) return 1;
        wall[r] = seconds(CLOCK_MONOTONIC) - w;
        processor[r] = seconds(CLOCK_PROCESS_CPUTIME_ID) - p;
    }
    qsort(wall, (size_t)runs, sizeof *wall, rising);
    qsort(processor, (size_t)runs, sizeof *processor, rising);
    for (int i = 0; i < count; i++) {
        struct point *p = &points[i];
        printf("point %.17g %.17g %.12e %.12e %.12e %.12e %.12e %.12e %.12e %.3e %d %d %d %ld %ld %ld\n", p->rpm, p->degrees, p->air, p->main, p->screw,
            p->progression, p->pump, p->corrector, p->level, p->residual, p->settled, p->cycles, p->passes, p->steps, p->evaluations, p->fuel_steps);
    }
    printf("seconds %.9f %.9f %.9f\n", wall[runs / 2], processor[runs / 2], air_time);
    free(trace);
    return 0;
}
