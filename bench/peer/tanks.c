/* tanks INPUT TOLERANCE RUNS bdf|adams: the two tanks of docs/physics/sending.md on SUNDIALS CVODE, written from that
   page, to check the product's march and to time it against. Prints at every moment the left tank's volume, the flow and
   the needle, last the processor's seconds. Numbers in brackets are the page's equations; vents are free, the gauge thermal. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <sunnonlinsol/sunnonlinsol_fixedpoint.h>

#define STATES 12 /* volumes left and right, flow, four waves (across left, right; along left, right), their speeds, needle */

struct tank { double capacity, height, neck, width, length, damping, *levels; int layers; };
struct place { double ahead, left; const struct tank *tank; int side; };

static struct tank tanks[2];
static struct place sender, pickup;
static double bore, length, column, roughness, to_right, to_left, mouth, inward;
static double apart_ahead, apart_left, apart_up, viscosity, gravity, burnt, pickup_height, pickup_cover, least_depth;
static double pivot, arm, low_angle, high_angle, empty_ohms, full_ohms, gauge_ohms, volts, peg, lag;
static double start_left, start_right, step, every, *ahead, *left, *up;
static int samples;
static long calls;

static double clamp(double x, double a, double b) { return x < a ? a : x > b ? b : x; }

static double level_of(const struct tank *t, double volume) {                   /* (1) */
    double x = volume * t->layers / t->capacity;
    if (x >= t->layers) return t->height + (volume - t->capacity) / t->neck;
    int i = x > 0 ? (int)x : 0;
    return t->levels[i] + (x - i) * (t->levels[i + 1] - t->levels[i]);
}

static double plane_of(const struct tank *t, double h, double slope) {          /* (4) */
    double e = 0.5 * t->width * fabs(slope), top = t->height;
    if ((h >= e && h + e <= top) || h > top || h <= 0 || e == 0) return h;
    double floor = 2 * sqrt(h * e), roof = 2 * sqrt((top - h) * e);
    if (h < e && floor <= top) return floor - e;
    if (h + e > top && roof <= top) return top - roof + e;
    return 0.5 * top + 2 * e * (h / top - 0.5);
}

static double friction(double flow, double area) {                              /* f_D L/D Q^2/(2 a^2): (5), (6) */
    double speed = flow / area, re = speed * bore / viscosity, head = 0.5 * speed * speed * length / bore;
    if (flow == 0) return 0;
    double f = 64 / re;
    if (re > 2000) {
        double root = 1.8 * log10(pow(roughness / bore / 3.7, 1.11) + 6.9 / re), u = re < 4000 ? (re - 2000) / 2000 : 1;
        f += u * u * (3 - 2 * u) * (1 / (root * root) - f);
    }
    return f * head;
}

struct scene { double slope_across, slope_along, h[2], plane[2], above_across[2], above_along[2]; };

static double level_at(const struct scene *s, const struct place *p) {          /* (3) */
    const struct tank *t = p->tank;
    double level = s->plane[p->side] - s->slope_across * p->left - s->slope_along * p->ahead
        + sin(M_PI * p->left / t->width) * s->above_across[p->side] + sin(M_PI * p->ahead / t->length) * s->above_along[p->side];
    double ceiling = s->h[p->side] > t->height ? s->h[p->side] : t->height;
    return clamp(level, 0, ceiling);
}

static double resting(double level) {                                           /* (14) to (18) */
    double angle = clamp(asin(clamp((level - pivot) / arm, -1, 1)), low_angle, high_angle);
    double ohms = empty_ohms + (angle - low_angle) / (high_angle - low_angle) * (full_ohms - empty_ohms);
    double now = pow(volts / (gauge_ohms + ohms), 2), e = pow(volts / (gauge_ohms + empty_ohms), 2), f = pow(volts / (gauge_ohms + full_ohms), 2);
    return clamp((now - e) / (f - e), -peg, 1 + peg);
}

static double cover(const struct scene *s, int side, double place) {
    return clamp((s->plane[side] - s->slope_across * place - mouth) / bore, 1e-3, 1);
}

static int rates(sunrealtype t, N_Vector yv, N_Vector dv, void *unused) {
    (void)unused;
    calls++;
    double *y = N_VGetArrayPointer(yv), *d = N_VGetArrayPointer(dv);
    double place = clamp(t / step, 0, samples - 1);
    int i = place < samples - 2 ? (int)place : samples - 2;
    double share = place - i;
    double fx = ahead[i] + share * (ahead[i + 1] - ahead[i]), fy = left[i] + share * (left[i + 1] - left[i]), fz = up[i] + share * (up[i + 1] - up[i]);
    struct scene s = { .slope_across = fy / fz, .slope_along = fx / fz };
    for (int k = 0; k < 2; k++) {
        const struct tank *tank = &tanks[k];
        double h = level_of(tank, y[k]), deep = clamp(h, least_depth, tank->height);
        s.h[k] = h;
        s.plane[k] = plane_of(tank, h, s.slope_across);
        for (int along = 0; along < 2; along++) {                               /* (10) to (12) */
            double span = along ? tank->length : tank->width, wave = M_PI / span;
            double omega = sqrt(gravity * wave * tanh(wave * deep)), rest = -4 * span / (M_PI * M_PI) * (along ? s.slope_along : s.slope_across);
            int at = 3 + 2 * along + k;
            (along ? s.above_along : s.above_across)[k] = y[at] - rest;
            d[at] = y[at + 4];
            d[at + 4] = -2 * tank->damping * omega * y[at + 4] - omega * omega * (y[at] - rest);
        }
    }

    double q = y[2], area = M_PI / 4 * bore * bore;
    double drive = fx * apart_ahead + fy * apart_left + fz * (apart_up + s.plane[0] - s.plane[1]);  /* (8) */
    int right = q > 0 || (q == 0 && drive > 0);
    double covered = right ? cover(&s, 0, -inward) : cover(&s, 1, inward), loss = (right ? to_right : to_left) / (covered * covered);  /* (7) */
    double lost = friction(fabs(q), area) + loss * q * q / (2 * area * area);
    d[2] = area / column * (drive - (q >= 0 ? lost : -lost));                   /* (9) */
    d[0] = -q;
    d[1] = q;
    d[pickup.side] -= burnt * clamp((level_at(&s, &pickup) - pickup_height) / pickup_cover, 0, 1);
    d[11] = (resting(level_at(&s, &sender)) - y[11]) / lag;                     /* (19) */
    return 0;
}

static void take(FILE *in, const char *name, int count, double **to) {
    char read[64];
    int good = fscanf(in, "%63s", read) == 1 && !strcmp(read, name);
    for (int i = 0; good && i < count; i++) good = fscanf(in, "%lf", to[i]) == 1;
    if (!good) { fprintf(stderr, "the input has no good '%s' where it should\n", name); exit(2); }
}

static double *list(FILE *in, const char *name, int count) {
    double *values = malloc((size_t)count * sizeof *values), **to = malloc((size_t)count * sizeof *to);
    for (int i = 0; i < count; i++) to[i] = &values[i];
    take(in, name, count, to);
    free(to);
    return values;
}

static void read_tank(FILE *in, struct tank *t) {
    double layers;
    take(in, "tank", 7, (double *[]){ &t->capacity, &t->height, &t->neck, &t->width, &t->length, &t->damping, &layers });
    t->layers = (int)layers;
    t->levels = list(in, "levels", t->layers + 1);
}

static void read_place(FILE *in, const char *name, struct place *p) {
    double side;
    take(in, name, 3, (double *[]){ &side, &p->ahead, &p->left });
    p->side = (int)side;
    p->tank = &tanks[p->side];
}

static void read_input(const char *path) {
    FILE *in = fopen(path, "r");
    double count;
    if (!in) { perror(path); exit(2); }
    read_tank(in, &tanks[0]);
    read_tank(in, &tanks[1]);
    take(in, "apart", 3, (double *[]){ &apart_ahead, &apart_left, &apart_up });
    take(in, "pipe", 8, (double *[]){ &bore, &length, &column, &roughness, &to_right, &to_left, &mouth, &inward });
    take(in, "fuel", 3, (double *[]){ &viscosity, &gravity, &least_depth });
    read_place(in, "pickup", &pickup);
    take(in, "draw", 3, (double *[]){ &burnt, &pickup_height, &pickup_cover });
    read_place(in, "sender", &sender);
    take(in, "arm", 4, (double *[]){ &pivot, &arm, &low_angle, &high_angle });
    take(in, "gauge", 6, (double *[]){ &empty_ohms, &full_ohms, &gauge_ohms, &volts, &peg, &lag });
    take(in, "start", 2, (double *[]){ &start_left, &start_right });
    take(in, "trace", 3, (double *[]){ &step, &every, &count });
    samples = (int)count;
    ahead = list(in, "ahead", samples);
    left = list(in, "left", samples);
    up = list(in, "up", samples);
    fclose(in);
}

static void begin(double *y) {
    struct scene s = { .slope_across = left[0] / up[0], .slope_along = ahead[0] / up[0] };
    y[0] = start_left; y[1] = start_right; y[2] = 0;
    for (int k = 0; k < 2; k++) {
        s.h[k] = level_of(&tanks[k], y[k]);
        s.plane[k] = plane_of(&tanks[k], s.h[k], s.slope_across);
        y[3 + k] = -4 * tanks[k].width / (M_PI * M_PI) * s.slope_across;
        y[5 + k] = -4 * tanks[k].length / (M_PI * M_PI) * s.slope_along;
        y[7 + k] = y[9 + k] = 0;
    }
    y[11] = resting(level_at(&s, &sender));
}

static int solve(double tolerance, const char *method, double (*kept)[3], int moments) {
    SUNContext context;
    if (SUNContext_Create(NULL, &context)) return 0;
    int adams = !strcmp(method, "adams");
    N_Vector y = N_VNew_Serial(STATES, context), absolute = N_VNew_Serial(STATES, context);
    const double scale[STATES] = { 1e-2, 1e-2, 1e-4, 0.1, 0.1, 0.1, 0.1, 1, 1, 1, 1, 1 };  /* what counts as much of each */
    for (int i = 0; i < STATES; i++) NV_Ith_S(absolute, i) = tolerance * scale[i];
    begin(N_VGetArrayPointer(y));
    void *cvode = CVodeCreate(adams ? CV_ADAMS : CV_BDF, context);
    SUNMatrix matrix = SUNDenseMatrix(STATES, STATES, context);
    SUNLinearSolver linear = SUNLinSol_Dense(y, matrix, context);
    SUNNonlinearSolver point = SUNNonlinSol_FixedPoint(y, 0, context);
    int ok = !CVodeInit(cvode, rates, 0, y) && !CVodeSVtolerances(cvode, tolerance, absolute)
        && !(adams ? CVodeSetNonlinearSolver(cvode, point) : CVodeSetLinearSolver(cvode, linear, matrix)) && !CVodeSetMaxNumSteps(cvode, 1000000);
    kept[0][0] = start_left; kept[0][1] = 0; kept[0][2] = NV_Ith_S(y, 11);
    for (int i = 1; ok && i < moments; i++) {
        sunrealtype reached;
        ok = CVode(cvode, i * every, y, &reached, CV_NORMAL) >= 0;
        kept[i][0] = NV_Ith_S(y, 0); kept[i][1] = NV_Ith_S(y, 2); kept[i][2] = NV_Ith_S(y, 11);
    }
    CVodeFree(&cvode); SUNNonlinSolFree(point); SUNLinSolFree(linear); SUNMatDestroy(matrix);
    N_VDestroy(y); N_VDestroy(absolute); SUNContext_Free(&context);
    return ok;
}

static double now(void) {
    struct timespec t;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

int main(int argc, char **argv) {
    if (argc != 5) { fprintf(stderr, "usage: tanks INPUT TOLERANCE RUNS bdf|adams\n"); return 2; }
    read_input(argv[1]);
    int moments = (int)((samples - 1) * step / every + 1e-6) + 1, runs = atoi(argv[3]);
    double (*kept)[3] = malloc((size_t)moments * sizeof *kept), best = INFINITY;
    for (int r = 0; r < runs; r++) {
        double from = now();
        calls = 0;
        if (!solve(strtod(argv[2], NULL), argv[4], kept, moments)) return 1;
        double took = now() - from;
        if (took < best) best = took;
    }
    for (int i = 0; i < moments; i++) printf("moment %.12e %.12e %.12e\n", kept[i][0], kept[i][1], kept[i][2]);
    printf("seconds %.9f %ld\n", best, calls);
    return 0;
}
