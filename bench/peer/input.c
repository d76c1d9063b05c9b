/* Reads what `Tickover.Bench peer` writes: one name and its numbers a line, so that no figure of the car is typed twice. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include "peer.h"

struct field { const char *name; double *first; int count; };

static int take(char *line, struct field *fields, size_t known) {
    char *name = strtok(line, " \n");
    if (!name) return 1;
    for (size_t i = 0; i < known; i++) {
        if (!fields[i].first || strcmp(fields[i].name, name) != 0) continue;
        for (int k = 0; k < fields[i].count; k++) {
            char *number = strtok(NULL, " \n");
            if (!number) return 0;
            fields[i].first[k] = strtod(number, NULL);
        }
        fields[i].first = NULL;                         /* given */
        return 1;
    }
    return -1;
}

static int numbers(char *line, double *out, int count) {
    for (int k = 0; k < count; k++) {
        char *number = strtok(k ? NULL : line, " \n");
        if (!number) return 0;
        out[k] = strtod(number, NULL);
    }
    return 1;
}

static int list(char *line, struct car *car, struct point *points, int *count) {
    double v[3];
    if (!strncmp(line, "row ", 4)) {
        struct main_circuit *m = &car->main;
        if (m->rows >= MOST_ROWS || !numbers(line + 4, v, 3)) return -1;
        m->depth[m->rows] = v[0]; m->holes[m->rows] = v[1]; m->hole_bore[m->rows] = v[2];
        m->rows++;
        return 1;
    }
    if (!strncmp(line, "hole ", 5)) {
        struct idle_circuit *i = &car->idle;
        if (i->holes >= MOST_HOLES || !numbers(line + 5, v, 2)) return -1;
        i->position[i->holes] = v[0]; i->hole_bore[i->holes] = v[1];
        i->holes++;
        return 1;
    }
    if (!strncmp(line, "point ", 6)) {
        if (*count >= MOST_POINTS || !numbers(line + 6, v, 3)) return -1;
        points[*count].rpm = v[0]; points[*count].degrees = v[1]; points[*count].after = (int)v[2];
        (*count)++;
        return 1;
    }
    return 0;
}

int read_input(const char *path, struct car *c, struct settings *s, struct point *points, int *count) {
    struct field fields[] = {
        { "ambient", &c->pressure, 3 }, { "fuel", &c->fuel_density, 2 }, { "gas", &c->fresh_gamma, 4 },
        { "cylinder", &c->bore, 4 }, { "inlet", &c->inlet.count, 7 }, { "exhaust", &c->exhaust.count, 7 },
        { "intake", &c->intake.trumpet, 9 }, { "tract", &c->back_pressure, 2 }, { "burn", &c->burn_start, 4 },
        { "way", &c->way.bore, 11 }, { "float", &c->lip, 2 }, { "main", &c->main.jet, 11 }, { "idle", &c->idle.jet, 11 },
        { "pump", &c->pump.jet, 4 }, { "tolerance", &s->cycle_tolerance, 5 },
    };
    const size_t known = sizeof fields / sizeof fields[0];
    FILE *in = fopen(path, "r");
    if (!in) { perror(path); return 0; }
    memset(c, 0, sizeof *c);
    *count = 0;
    char line[1024];
    while (fgets(line, sizeof line, in)) {
        int kind = list(line, c, points, count);
        if (kind == 1) continue;
        if (kind < 0 || take(line, fields, known) != 1) { fprintf(stderr, "%s: cannot use '%s'\n", path, line); fclose(in); return 0; }
    }
    fclose(in);
    for (size_t i = 0; i < known; i++) {
        if (fields[i].first) { fprintf(stderr, "%s: '%s' is missing\n", path, fields[i].name); return 0; }
    }
    return *count > 0;
}
