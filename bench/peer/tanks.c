/* tanks INPUT TOLERANCE RUNS: the two tanks of docs/physics/sending.md on SUNDIALS CVODE, written from that page, to check the
   product's stepping and to time it against. Prints the left tank's volume at every moment, last the processor's seconds.
   Both tanks are alike here, and the pick-up is in the right one. Numbers in brackets are the page's equations. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>

#define STATES 12 /* two volumes, flow, slopes and their rates of four sloshes, the needle's signal */

static double capacity, cells, neck, *levels, width, length, middle, damping;
static double bore, pipe, ends, loss, roughness, viscosity, gravity, burnt, pickup;
static double sx, sy, pivot, arm, lowest, highest, ohms_e, ohms_f, gauge, volts, lag;
static double start_l, start_r, step, count, every, *ahead, *left;
static double area, low_angle, high_angle;

static double level(double v) {
    double place = v * cells / capacity;
    if (place >= cells) return levels[(int)cells] + (v - capacity) / neck;
    int i = place > 0 ? (int)place : 0;
    return levels[i] + (place - i) * (levels[i + 1] - levels[i]);
}

/* (4) to (6) */
static double friction(double speed) {
    double re = speed * bore / viscosity, kinetic = 0.5 * speed * speed * pipe / bore;
    if (speed == 0) return 0;
    if (re <= 2300) return 64 / re * kinetic;
    double root = -1.8 * log10(pow(roughness / bore / 3.7, 1.11) + 6.9 / re), f = 1 / (root * root);
    if (re < 4000) { double t = (re - 2300) / 1700; f = 64 / re + t * t * (3 - 2 * t) * (f - 64 / re); }
    return f * kinetic;
}

static double cover(double depth) { double c = depth / bore; return c >= 1 ? 1 : c > 0.05 ? c : 0.05; }

static double clamp(double x, double a, double b) { return x < a ? a : x > b ? b : x; }

static double angle(double h) { return asin(clamp((h - pivot) / arm, -1, 1)); }

static int rates(sunrealtype t, N_Vector yv, N_Vector dv, void *unused) {
    (void)unused;
    double *y = N_VGetArrayPointer(yv), *d = N_VGetArrayPointer(dv);
    double place = clamp(t / step, 0, count - 1);
    int i = place < count - 2 ? (int)place : (int)count - 2;
    double ax = ahead[i] + (place - i) * (ahead[i + 1] - ahead[i]), ay = left[i] + (place - i) * (left[i + 1] - left[i]);
    double hl = level(y[0]), hr = level(y[1]);
    for (int k = 0; k < 4; k++) {                       /* (10), (11) */
        double wave = M_PI / (k < 2 ? width : length), depth = k % 2 ? hr : hl;
        double omega = sqrt(gravity * wave * tanh(wave * (depth > 0.002 ? depth : 0.002)));
        double settled = -(k < 2 ? ay : ax) / gravity;
        d[3 + k] = y[7 + k];
        d[7 + k] = -2 * damping * omega * y[7 + k] - omega * omega * (y[3 + k] - settled);
    }
    double q = y[2], v = q / area, c = cover(q >= 0 ? hl : hr), k = loss + 1 / (c * c) - 1;  /* (13), ports in the middle of the floor */
    double e = friction(fabs(v)) + 0.5 * k * v * v;
    double drive = gravity * (hl - hr) + ay * 2 * middle;                                       /* (2) */
    d[2] = area / (pipe + 2 * ends * bore) * (drive - (v >= 0 ? e : -e));
    d[0] = -q;
    d[1] = q - burnt * clamp((hr - pickup) / 0.004, 0, 1);
    double shape_y = 4 * width / (M_PI * M_PI) * sin(M_PI * sy / width), shape_x = 4 * length / (M_PI * M_PI) * sin(M_PI * sx / length);
    double h = hl - ay / gravity * (sy - shape_y) + y[3] * shape_y - ax / gravity * (sx - shape_x) + y[5] * shape_x; /* (12) */
    double travel = (clamp(angle(clamp(h, 0, levels[(int)cells])), low_angle, high_angle) - low_angle) / (high_angle - low_angle);
    double current = volts / (gauge + ohms_e + (ohms_f - ohms_e) * travel);
    d[11] = (current * current - y[11]) / lag;
    return 0;
}

static double *numbers(FILE *in, int n) {
    double *v = malloc((size_t)n * sizeof *v);
    for (int i = 0; i < n; i++) if (fscanf(in, "%lf", &v[i]) != 1) { fprintf(stderr, "the input ends early\n"); exit(2); }
    return v;
}

static void take(FILE *in, int n, double **to) {
    double *v = numbers(in, n);
    for (int i = 0; i < n; i++) *to[i] = v[i];
    free(v);
}

static void read_input(const char *path) {
    FILE *in = fopen(path, "r");
    if (!in) { perror(path); exit(2); }
    take(in, 3, (double *[]){ &capacity, &cells, &neck });
    levels = numbers(in, (int)cells + 1);
    take(in, 4, (double *[]){ &width, &length, &middle, &damping });
    take(in, 5, (double *[]){ &bore, &pipe, &ends, &loss, &roughness });
    take(in, 4, (double *[]){ &viscosity, &gravity, &burnt, &pickup });
    take(in, 8, (double *[]){ &sy, &sx, &pivot, &arm, &lowest, &highest, &ohms_e, &ohms_f });
    take(in, 3, (double *[]){ &gauge, &volts, &lag });
    take(in, 5, (double *[]){ &start_l, &start_r, &step, &count, &every });
    ahead = numbers(in, (int)count);
    left = numbers(in, (int)count);
    fclose(in);
    area = M_PI / 4 * bore * bore;
    low_angle = angle(lowest);
    high_angle = angle(highest);
}

static void begin(double *y) {
    y[0] = start_l; y[1] = start_r; y[2] = 0;
    for (int k = 0; k < 4; k++) { y[3 + k] = -(k < 2 ? left[0] : ahead[0]) / gravity; y[7 + k] = 0; }
    double h = level(start_l) + y[3] * sy + y[5] * sx;
    double travel = (clamp(angle(h), low_angle, high_angle) - low_angle) / (high_angle - low_angle);
    double current = volts / (gauge + ohms_e + (ohms_f - ohms_e) * travel);
    y[11] = current * current;
}

static int solve(double tolerance, double *volumes, int moments) {
    SUNContext context;
    if (SUNContext_Create(NULL, &context)) return 0;
    N_Vector y = N_VNew_Serial(STATES, context), absolute = N_VNew_Serial(STATES, context);
    double scale[STATES] = { 1e-2, 1e-2, 1e-4, 0.1, 0.1, 0.1, 0.1, 1, 1, 1, 1, 1e-2 };
    for (int i = 0; i < STATES; i++) NV_Ith_S(absolute, i) = tolerance * scale[i];
    begin(N_VGetArrayPointer(y));
    void *cvode = CVodeCreate(CV_BDF, context);
    SUNMatrix matrix = SUNDenseMatrix(STATES, STATES, context);
    SUNLinearSolver linear = SUNLinSol_Dense(y, matrix, context);
    int ok = !CVodeInit(cvode, rates, 0, y) && !CVodeSVtolerances(cvode, tolerance, absolute) && !CVodeSetLinearSolver(cvode, linear, matrix)
        && !CVodeSetMaxNumSteps(cvode, 100000) && !CVodeSetMaxStep(cvode, every);
    volumes[0] = start_l;
    for (int i = 1; ok && i < moments; i++) {
        sunrealtype reached;
        ok = CVode(cvode, i * every, y, &reached, CV_NORMAL) >= 0;
        volumes[i] = NV_Ith_S(y, 0);
    }
    CVodeFree(&cvode); SUNLinSolFree(linear); SUNMatDestroy(matrix); N_VDestroy(y); N_VDestroy(absolute); SUNContext_Free(&context);
    return ok;
}

static double now(void) {
    struct timespec t;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

int main(int argc, char **argv) {
    if (argc != 4) { fprintf(stderr, "usage: tanks INPUT TOLERANCE RUNS\n"); return 2; }
    read_input(argv[1]);
    int moments = (int)((count - 1) * step / every + 1e-6) + 1, runs = atoi(argv[3]);
    double *volumes = malloc((size_t)moments * sizeof *volumes), best = INFINITY;
    for (int r = 0; r < runs; r++) {
        double from = now();
        if (!solve(strtod(argv[2], NULL), volumes, moments)) return 1;
        double took = now() - from;
        if (took < best) best = took;
    }
    for (int i = 0; i < moments; i++) printf("%.12e\n", volumes[i]);
    printf("%.9f\n", best);
    return 0;
}
