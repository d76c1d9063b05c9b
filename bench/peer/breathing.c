/* Gas exchange of one barrel on one cylinder, marched over crank angle by CVODE: docs/physics/breathing.md. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include "peer.h"

/* The state: mass, burnt mass and energy of cylinder and port, flow of the column. */
enum { CM, CB, CU, PM, PB, PU, FLOW };

struct gas { double temperature, pressure, rt, burnt, enthalpy; };

struct air_solver {
    const struct car *car;
    const struct settings *settings;
    SUNContext context;
    N_Vector y, tolerances, middle;
    SUNMatrix matrix;
    SUNLinearSolver linear;
    void *cvode;
    struct orifice fresh, burnt;
    double r, cf, cb;
    double start_angle;                                 /* past inlet closing; the integration counts degrees from here */
    double stops[8];
    int stop_count;
    double inlet_rt, inlet_h, exhaust_rt, exhaust_h;
    double piston, clearance, swept;
    double upstream_inertance, runner_inertance, inertance;
    double choke_area, choke_loss, bore_head, runner_loss, sonic, throat_flow;
    double loss_in, loss_out;                           /* of the column at this opening, 1/m^4 */
    double degrees_per_second, wall_speed, exhaust_pressure;
    long evaluations;
    double rate;                                        /* of the column's flow at the last evaluation, kg/s^2 */
    double port_pressure;
};

static double sq(double x) { return x * x; }

/* (16) of flow.md */
static double strip(double a, double k) {
    if (a <= 0) return 0;
    double x = fmin(1, a / k);
    return 2 / M_PI * (a * sqrt(1 - x * x) + k * asin(x));
}

static double plate_area(const struct air_way *w, double opening) {
    double angle = fmin(w->closed_angle + opening, M_PI / 2);
    double a = fmin(1, w->spindle / w->bore), k = fabs(cos(angle)) / cos(w->closed_angle);
    if (k >= 1) return 0;
    return circle(w->bore) * (k <= a ? 1 - strip(a, 1) : 1 - k + strip(a, k) - strip(a, 1));
}

/* (5), (6) */
static double valve_area(const struct valve *v, double degrees) {
    double span = v->closes - v->opens, since = fmod(degrees - v->opens, 720);
    if (since < 0) since += 720;
    if (since >= span) return 0;
    double lift = v->lift * sq(sin(M_PI * since / span));
    double curtain = M_PI * v->head * lift, throat = circle(v->head * v->throat_ratio);
    return v->count * v->discharge * curtain / sqrt(sqrt(1 + sq(sq(curtain / throat))));
}

/* (1) to (3) */
static struct gas gas_of(const struct air_solver *s, double m, double b, double u, double volume) {
    struct gas g;
    double capacity = s->cf * (m - b) + s->cb * b, above = u / capacity;
    g.temperature = s->car->reference + above;
    g.rt = s->r * g.temperature;
    g.pressure = m * g.rt / volume;
    g.burnt = b / m;
    g.enthalpy = capacity / m * above + g.rt;
    return g;
}

/* (8): rate of the flow of the column between ambient and port */
static double column_rate(const struct air_solver *s, double w, const struct gas *port) {
    int in = w >= 0;
    double up = in ? s->car->pressure : port->pressure, down = in ? port->pressure : s->car->pressure;
    double density = up / (in ? s->inlet_rt : port->rt), r = down / up;
    double c = 1 - r < 1e-4 ? 1 : 2 * (1 - r) / psi_squared(&s->fresh, r);
    double y = sq(w / s->sonic), y4 = sq(sq(y));
    double k = (in ? s->loss_in : s->loss_out) * 0.5 / density * c * (1 + sq(y4));
    return (s->car->pressure - port->pressure - k * w * fabs(w)) / s->inertance;
}

/* (9): part of the fresh gas still there that burns in a degree */
static double burn_rate(const struct car *c, double degrees) {
    double s = ((degrees > 360 ? degrees - 720 : degrees) - c->burn_start) / c->burn_duration;
    return s <= 0 || s >= 1 ? 0 : 6.908 * 3 / c->burn_duration * s * s;
}

static int right_side(realtype t, N_Vector yv, N_Vector dv, void *data) {
    struct air_solver *s = data;
    const struct car *c = s->car;
    const double *y = NV_DATA_S(yv);
    double *d = NV_DATA_S(dv);
    double angle = fmod(s->start_angle + t, 720), a = angle * M_PI / 180, sine = sin(a), cosine = cos(a);
    double crank = c->stroke / 2, rod = sqrt(sq(c->rod) - sq(crank * sine));
    double volume = s->clearance + s->piston * (crank * (1 - cosine) + c->rod - rod);               /* (4) */
    double slope = s->piston * crank * sine * (1 + crank * cosine / rod) * M_PI / 180;
    s->evaluations++;
    if (y[CM] <= 0 || y[PM] <= 0) return 1;
    struct gas cyl = gas_of(s, y[CM], y[CB], y[CU], volume), port = gas_of(s, y[PM], y[PB], y[PU], c->intake.port_volume);
    if (cyl.pressure <= 0 || port.pressure <= 0) return 1;

    double ai = valve_area(&c->inlet, angle), ae = valve_area(&c->exhaust, angle);
    double in = ai > 0 ? ai * flux(&s->fresh, port.pressure, port.rt, cyl.pressure, cyl.rt) : 0;
    double out = ae > 0 ? ae * flux(&s->burnt, cyl.pressure, cyl.rt, s->exhaust_pressure, s->exhaust_rt) : 0;
    double in_h = in >= 0 ? port.enthalpy : cyl.enthalpy, in_b = in >= 0 ? port.burnt : cyl.burnt;
    double out_h = out >= 0 ? cyl.enthalpy : s->exhaust_h, out_b = out >= 0 ? cyl.burnt : 1;
    double w = y[FLOW], w_h = w >= 0 ? s->inlet_h : port.enthalpy, w_b = w >= 0 ? 0 : port.burnt;

    double burn = fmax(y[CM] - y[CB], 0) * burn_rate(c, angle) * s->degrees_per_second;
    double wall = 2 * s->piston + 4 * volume / c->bore;
    double bar = cyl.pressure / 1e5;
    double h = 130 * pow(volume, -0.06) * pow(bar * bar / cyl.temperature, 0.4) * s->wall_speed;    /* (10) */
    double heat = burn * c->heat_per_air + h * wall * (c->chamber_temperature - cyl.temperature);

    s->rate = column_rate(s, w, &port);
    s->port_pressure = port.pressure;
    double per = 1 / s->degrees_per_second;
    d[CM] = (in - out) * per;
    d[CB] = (in * in_b - out * out_b + burn) * per;
    d[CU] = (in * in_h - out * out_h + heat) * per - cyl.pressure * slope;                          /* (11) */
    d[PM] = (w - in) * per;
    d[PB] = (w * w_b - in * in_b) * per;
    d[PU] = (w * w_h - in * in_h) * per;
    d[FLOW] = s->rate * per;
    return 0;
}

static int rising(const void *a, const void *b) { double x = *(const double *)a, y = *(const double *)b; return (x > y) - (x < y); }

/* Valve events and the ends of burning: places where a derivative jumps and no step may go across. */
static void find_stops(struct air_solver *s) {
    const struct car *c = s->car;
    double events[] = { c->inlet.opens, c->inlet.closes, c->exhaust.opens, c->exhaust.closes, c->burn_start, c->burn_start + c->burn_duration };
    for (int i = 0; i < 6; i++) {
        double at = fmod(events[i] - s->start_angle, 720);
        s->stops[s->stop_count++] = at < 0 ? at + 720 : at;
    }
    qsort(s->stops, (size_t)s->stop_count, sizeof *s->stops, rising);
    s->stops[s->stop_count++] = 720;
}

struct air_solver *air_open(const struct car *c, const struct settings *settings) {
    struct air_solver *s = calloc(1, sizeof *s);
    s->car = c;
    s->settings = settings;
    s->r = c->pressure / (c->density * c->temperature);
    s->cf = s->r / (c->fresh_gamma - 1);
    s->cb = s->r / (c->burnt_gamma - 1);
    s->fresh = orifice_of(c->fresh_gamma, c->smoothing);
    s->burnt = orifice_of(c->burnt_gamma, c->smoothing);
    double inlet = c->temperature + c->intake.heating * (c->intake.wall_temperature - c->temperature) - c->intake.evaporation;
    s->inlet_rt = s->r * inlet;
    s->inlet_h = s->cf * (inlet - c->reference) + s->inlet_rt;
    s->exhaust_rt = s->r * c->exhaust_temperature;
    s->exhaust_h = s->cb * (c->exhaust_temperature - c->reference) + s->exhaust_rt;
    s->piston = circle(c->bore);
    s->swept = s->piston * c->stroke;
    s->clearance = s->swept / (c->compression - 1);
    double bore = circle(c->way.bore), runner = circle(c->intake.runner_bore), head = 0.5 / c->density;
    s->choke_area = circle(c->way.choke) * (1 - c->way.choke_obstruction);
    s->upstream_inertance = c->intake.trumpet / bore;
    s->runner_inertance = c->intake.runner / runner;
    s->inertance = s->upstream_inertance + c->intake.barrel / bore + s->runner_inertance;
    s->choke_loss = head * c->way.choke_loss / sq(s->choke_area);
    s->bore_head = head / sq(bore);
    s->runner_loss = head * c->intake.runner_loss / sq(runner);
    s->throat_flow = c->way.choke_discharge * s->choke_area * c->pressure / sqrt(s->r * c->temperature);
    s->sonic = s->throat_flow * sqrt(psi_squared(&s->fresh, 0));
    s->start_angle = fmod(c->inlet.closes + 20, 720);
    find_stops(s);

    SUNContext_Create(NULL, &s->context);
    s->y = N_VNew_Serial(STATES, s->context);
    s->middle = N_VNew_Serial(STATES, s->context);
    s->tolerances = N_VNew_Serial(STATES, s->context);
    s->matrix = SUNDenseMatrix(STATES, STATES, s->context);
    s->linear = SUNLinSol_Dense(s->y, s->matrix, s->context);
    return s;
}

void air_close(struct air_solver *s) {
    CVodeFree(&s->cvode);
    SUNLinSolFree(s->linear);
    SUNMatDestroy(s->matrix);
    N_VDestroy(s->y); N_VDestroy(s->middle); N_VDestroy(s->tolerances);
    SUNContext_Free(&s->context);
    free(s);
}

static void scales(const struct air_solver *s, double rpm, double *scale) {
    double cyl = s->car->density * s->swept, port = s->car->density * s->car->intake.port_volume, u = s->cf * s->car->temperature;
    double all[] = { cyl, cyl, cyl * u, port, port, port * u, cyl * rpm / 120 * M_PI };
    memcpy(scale, all, sizeof all);
}

/* A rough first state: six tenths of an atmosphere everywhere. The last number is the mean exhaust flow. */
void air_start(const struct car *c, double *y) {
    const double part = 0.6;
    double r = c->pressure / (c->density * c->temperature), cf = r / (c->fresh_gamma - 1), warm = c->temperature - c->reference;
    double cyl = part * c->density * circle(c->bore) * c->stroke, port = part * c->density * c->intake.port_volume;
    double all[] = { cyl, 0.1 * cyl, cyl * cf * (warm + 80), port, 0, port * cf * warm, 0, 0 };
    memcpy(y, all, sizeof all);
}

static int prepare(struct air_solver *s, const struct point *p, const double *state, double *scale) {
    const struct car *c = s->car;
    double gap = c->way.plate_discharge * (plate_area(&c->way, p->degrees * M_PI / 180) + c->way.bypass) + 1e-8;
    s->loss_in = 1 / sq(gap) + c->way.choke_loss / sq(s->choke_area) + c->intake.runner_loss / sq(circle(c->intake.runner_bore));   /* (7) */
    s->loss_out = s->loss_in + 1 / sq(circle(c->way.bore));
    s->degrees_per_second = 6 * p->rpm;
    s->wall_speed = pow(2 * c->stroke * p->rpm / 60 + 1.4, 0.8);
    s->evaluations = 0;
    memcpy(NV_DATA_S(s->y), state, STATES * sizeof *state);
    scales(s, p->rpm, scale);
    for (int i = 0; i < STATES; i++) NV_Ith_S(s->tolerances, i) = s->settings->rtol * scale[i] * 0.1;
    if (s->cvode) {
        if (CVodeReInit(s->cvode, 0, s->y)) return 0;
        return !CVodeSVtolerances(s->cvode, s->settings->rtol, s->tolerances);
    }
    s->cvode = CVodeCreate(CV_BDF, s->context);
    return s->cvode && !CVodeInit(s->cvode, right_side, 0, s->y) && !CVodeSVtolerances(s->cvode, s->settings->rtol, s->tolerances)
        && !CVodeSetUserData(s->cvode, s) && !CVodeSetLinearSolver(s->cvode, s->linear, s->matrix)
        && !CVodeSetMaxNumSteps(s->cvode, 1000000);
}

/* (15), (17): depression in the auxiliary venturi */
static double depression(const struct air_solver *s, double w, double rate) {
    double target = sq(w / s->throat_flow), low = s->fresh.critical, high = 1;
    double r = low;
    if (target < psi_squared(&s->fresh, low)) {
        r = 1 - target / 2;
        if (r < low) r = low;
        for (int k = 0; k < 50; k++) {                  /* secant of a falling function, kept in its bracket */
            double g = psi_squared(&s->fresh, r) - target;
            if (g > 0) low = r; else high = r;
            double near = r + 1e-7, slope = (psi_squared(&s->fresh, near) - target - g) / 1e-7;
            double next = r - g / slope;
            if (!(next > low && next < high)) next = (low + high) / 2;
            if (fabs(next - r) < 1e-11) { r = next; break; }
            r = next;
        }
    }
    double p = s->car->pressure, gain = s->car->way.gain * (w >= 0 ? 1 : s->car->way.reverse);
    double d = (1 - r) * gain * p, x = d / (0.4717 * p);
    return d / sqrt(sqrt(1 + sq(sq(x)))) + s->upstream_inertance * rate;
}

static void sample(struct air_solver *s, double t, N_Vector y, struct trace *trace, size_t at) {
    right_side(t, y, s->middle, s);
    double w = NV_Ith_S(y, FLOW), square = w * fabs(w);
    trace->flow[at] = w;
    trace->depression[at] = depression(s, w, s->rate);
    trace->up[at] = s->car->pressure - square * s->choke_loss - w * w * s->bore_head - s->upstream_inertance * s->rate;     /* (18) */
    trace->down[at] = s->port_pressure + s->runner_inertance * s->rate + square * s->runner_loss;
}

static int record(struct air_solver *s, double from, double to, double begin, struct trace *trace, N_Vector scratch) {
    size_t n = trace->pieces;
    if (n >= MOST_SAMPLES) return 0;
    for (int k = 0; k < 3; k++) {
        double t = from + (to - from) * k / 2;
        if (k == 0 && n > 0) {                          /* the end of the last piece */
            size_t last = 3 * n - 1, first = 3 * n;
            trace->flow[first] = trace->flow[last]; trace->depression[first] = trace->depression[last];
            trace->up[first] = trace->up[last]; trace->down[first] = trace->down[last];
            continue;
        }
        if (CVodeGetDky(s->cvode, t, 0, scratch)) return 0;
        sample(s, t, scratch, trace, 3 * n + (size_t)k);
    }
    trace->end[n] = to - begin;
    trace->pieces++;
    return 1;
}

/* One cycle; the air of it by Simpson's rule on the integrator's own interpolation, kg. */
static int cycle(struct air_solver *s, double begin, double *air, struct trace *trace, N_Vector scratch) {
    double t = begin, sum = 0;
    if (trace) trace->pieces = 0;
    for (int e = 0; e < s->stop_count; e++) {
        double stop = begin + s->stops[e];
        if (stop <= t) continue;
        CVodeSetStopTime(s->cvode, stop);
        while (t < stop) {
            double from = t, w0 = NV_Ith_S(s->y, FLOW);
            int flag = CVode(s->cvode, stop, s->y, &t, CV_ONE_STEP);
            if (flag < 0) { fprintf(stderr, "CVODE stopped with %d at %g degrees\n", flag, t); return 0; }
            if (CVodeGetDky(s->cvode, (from + t) / 2, 0, scratch)) return 0;
            sum += (t - from) / 6 * (w0 + 4 * NV_Ith_S(scratch, FLOW) + NV_Ith_S(s->y, FLOW));
            if (trace && !record(s, from, t, begin, trace, scratch)) return 0;
        }
    }
    *air = sum / s->degrees_per_second;
    return 1;
}

/* Marches cycles until one repeats the last; leaves the state (and the mean exhaust flow behind it) and the trace of one more. */
int air_solve(struct air_solver *s, struct point *p, double *state, struct trace *trace) {
    double scale[STATES], before[STATES], begin = 0, air = 0;
    double *y = NV_DATA_S(s->y);
    N_Vector scratch = N_VClone(s->y);
    int ok = prepare(s, p, state, scale);
    p->settled = 0;
    trace->pieces = 0;
    for (p->cycles = 0; ok; begin += 720) {
        int last = p->settled || p->cycles >= s->settings->most_cycles;
        s->exhaust_pressure = s->car->pressure + s->car->back_pressure * sq(state[STATES]);
        memcpy(before, y, sizeof before);
        ok = cycle(s, begin, &air, last ? trace : NULL, scratch);
        p->cycles++;
        if (!ok || last) break;
        double stored = y[CM] - before[CM] + y[PM] - before[PM];
        double exhaust = (air - stored) * s->degrees_per_second / 720, worst = 0.2 * fabs(stored) / (fabs(air) + 1e-12);
        for (int i = 0; i < STATES; i++) worst = fmax(worst, fabs(y[i] - before[i]) / scale[i]);
        worst = fmax(worst, fabs(exhaust - state[STATES]) / scale[FLOW]);
        state[STATES] = exhaust;
        p->residual = worst;
        p->settled = worst <= s->settings->cycle_tolerance;
    }
    p->air = air;
    memcpy(state, y, STATES * sizeof *state);
    N_VDestroy(scratch);
    if (s->cvode) CVodeGetNumSteps(s->cvode, &p->steps);
    p->evaluations = s->evaluations;
    return ok;
}
