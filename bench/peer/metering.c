/* Metering of one barrel on a recorded cycle of its air: docs/physics/metering.md. The fuel column is marched by CVODE from
   the moment it starts to the moment it comes to rest; the rest is algebra on the same cycle. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include "metering.h"

/* (5): area of corrector and uncovered holes in series over a level, and the mean height of those holes */
static double emulsion_area(const struct fuel_solver *s, double level, double *height) {
    const struct main_circuit *m = &s->car->main;
    double area = 0, moment = 0;
    *height = 0;
    if (s->corrector <= 0) return 0;
    if (m->rows == 0) { *height = fmax(level, -m->well_depth); return s->corrector; }
    for (int i = 0; i < m->rows; i++) {
        double open = m->holes[i] * segment(m->hole_bore[i], m->hole_bore[i] / 2 - m->depth[i] - level);
        area += open;
        moment -= open * m->depth[i];
    }
    if (area <= 0) return 0;
    *height = moment / area;
    return 1 / sqrt(1 / sq(m->air_discharge * area) + 1 / sq(s->corrector));
}

/* (7) */
static double nozzle_loss(const struct fuel_solver *s, double fuel, double air) {
    double slip = s->car->main.slip, weight = air / slip + fuel;
    if (weight <= 0) return 0;
    return sq(air + fuel) * (air / (s->car->density * slip) + fuel / s->car->fuel_density) / weight * s->nozzle;
}

/* (6) with (7): air that the head left by the nozzle draws; a rising function of the air, by Newton from its upper end */
static double emulsion_air(struct fuel_solver *s, double depression, double fuel) {
    double head = depression - s->film - s->column;
    if (s->air_area <= 0 || head <= nozzle_loss(s, fuel, 0)) return s->air = 0;
    double low = 0, high = sqrt(head * s->air_area), m = s->air > 0 && s->air < high ? s->air : high;
    double slip = s->car->main.slip, light = 1 / (s->car->density * slip), heavy = 1 / s->car->fuel_density;
    for (int k = 0; k < 60; k++) {
        double total = m + fuel, weight = m / slip + fuel, specific = (m * light + fuel * heavy) / weight;
        double f = m * m / s->air_area + total * total * specific * s->nozzle - head;
        double slope = 2 * m / s->air_area + 2 * total * specific * s->nozzle + sq(total) * s->nozzle / weight * (light - specific / slip);
        if (f > 0) high = m; else low = m;
        double next = m - f / slope;
        if (!(next >= low && next <= high)) next = (low + high) / 2;
        if (fabs(next - m) <= 1e-10 * high) { m = next; break; }
        m = next;
    }
    return s->air = m;
}

/* Quadratic through the three samples of the piece that holds a moment. */
static double depression_at(struct fuel_solver *s, double t) {
    const struct trace *tr = s->trace;
    while (s->at + 1 < tr->pieces && t > tr->end[s->at]) s->at++;
    while (s->at > 0 && t <= tr->end[s->at - 1]) s->at--;
    double begin = s->at ? tr->end[s->at - 1] : 0, x = (t - begin) / (tr->end[s->at] - begin);
    const double *d = tr->depression + 3 * s->at;
    return d[0] * (1 - x) * (1 - 2 * x) + d[1] * 4 * x * (1 - x) + d[2] * x * (2 * x - 1);
}

/* (4) before the jet; leaves the air of the moment in s->air */
static double drive(struct fuel_solver *s, double depression, double fuel, double sag) {
    double flow = fmax(fuel, 0), air = emulsion_air(s, depression, flow);
    return s->car->vent + depression - s->film - s->column - s->foot + GRAVITY * s->car->fuel_density * sag - nozzle_loss(s, flow, air);
}

static double signed_jet_drop(struct fuel_solver *s, double fuel) {
    return fuel >= 0 ? jet_drop(&s->main_jet, fuel, &s->speed) : -jet_drop(&s->main_jet, -fuel, &s->speed);
}

static int right_side(realtype t, N_Vector y, N_Vector d, void *data) {
    struct fuel_solver *s = data;
    double m = NV_Ith_S(y, FLOW), sag = NV_Ith_S(y, SAG);
    NV_Ith_S(d, FLOW) = (drive(s, depression_at(s, t), m, sag) - signed_jet_drop(s, m + s->drawn)) / (s->inertance * s->degrees_per_second);
    NV_Ith_S(d, SAG) = s->place == HANGING ? -m * s->fill / s->degrees_per_second : 0;                  /* (22) */
    return 0;
}

/* What ends a stay: flow turning back at the lip, the surface reaching the lip or its lowest place, flow turning up there. */
static int leaves(realtype t, N_Vector y, realtype *g, void *data) {
    const struct fuel_solver *s = data;
    (void)t;
    g[0] = s->place == HANGING ? NV_Ith_S(y, SAG) : s->place == AT_LIP ? NV_Ith_S(y, FLOW) : -NV_Ith_S(y, FLOW);
    g[1] = s->place == HANGING ? s->lowest - NV_Ith_S(y, SAG) : 1;
    return 0;
}

static void integrands(struct fuel_solver *s, double t, N_Vector y, double *f) {
    double m = NV_Ith_S(y, FLOW);
    drive(s, depression_at(s, t), m, NV_Ith_S(y, SAG));
    f[FUEL] = s->place == AT_LIP ? m : 0;
    f[AIR] = s->air;
    f[CORRECTOR_DROP] = s->air_area > 0 ? sq(s->air) / s->air_area * s->share : 0;
    f[JET_DROP] = signed_jet_drop(s, m + s->drawn);
}

static void settle_place(struct fuel_solver *s, double t) {
    double m = NV_Ith_S(s->y, FLOW), *sag = &NV_Ith_S(s->y, SAG);
    *sag = fmin(fmax(*sag, 0), s->lowest);
    int up = m > 0 || (m == 0 && drive(s, depression_at(s, t), 0, *sag) > s->rest);
    s->place = *sag <= 0 && up ? AT_LIP : *sag >= s->lowest && !up ? LOWEST : HANGING;
}

/* Stays in one place until something ends the stay or the cycle ends. */
static double stay(struct fuel_solver *s, double t, double end) {
    double a[SUMS], b[SUMS], c[SUMS];
    settle_place(s, t);
    if (CVodeReInit(s->cvode, t, s->y)) return -1;
    CVodeSetStopTime(s->cvode, end);
    integrands(s, t, s->y, a);
    while (t < end) {
        double from = t;
        int flag = CVode(s->cvode, end, s->y, &t, CV_ONE_STEP);
        if (flag < 0) { fprintf(stderr, "CVODE stopped with %d in the fuel column\n", flag); return -1; }
        if (CVodeGetDky(s->cvode, (from + t) / 2, 0, s->scratch)) return -1;
        integrands(s, (from + t) / 2, s->scratch, b);
        integrands(s, t, s->y, c);
        for (int i = 0; i < SUMS; i++) s->sums[i] += (t - from) / 6 * (a[i] + 4 * b[i] + c[i]);
        memcpy(a, c, sizeof a);
        if (flag == CV_ROOT_RETURN) {
            int roots[2];
            CVodeGetRootInfo(s->cvode, roots);
            if (s->place != HANGING) NV_Ith_S(s->y, FLOW) = 0;
            else NV_Ith_S(s->y, SAG) = roots[0] ? 0 : s->lowest;
            break;
        }
    }
    long steps;
    CVodeGetNumSteps(s->cvode, &steps);
    s->steps += steps;
    return t;
}

static int pass(struct fuel_solver *s) {
    double end = s->trace->end[s->trace->pieces - 1], t = 0;
    memset(s->sums, 0, sizeof s->sums);
    s->at = 0;
    s->air = 0;
    for (int stays = 0; t < end; stays++) {
        t = stay(s, t, end);
        if (t < 0 || stays > MOST_STAYS) return 0;      /* a surface that only flickers at the lip: the tolerance is too loose */
    }
    for (int i = 0; i < SUMS; i++) s->sums[i] /= end;
    return 1;
}

static void set_level(struct fuel_solver *s, double level, double fuel, double air) {
    double height, area = emulsion_area(s, level, &height), well = s->car->main.well_area;
    double ja = air / (s->car->density * well), jf = fuel / (s->car->fuel_density * well);
    double voids = ja / (1.2 * (ja + jf) + 0.25);                                                   /* (9) */
    double weight = GRAVITY * s->car->fuel_density;
    s->air_area = 2 * s->car->density * sq(area);
    s->column = weight * (1 - voids) * (s->car->lip - height);
    s->foot = weight * height;
    s->share = area > 0 ? sq(area / s->corrector) : 0;
}

/* Passes at one level until flow, sag, part of gas and what leaves repeat; fuel that never reaches the lip only goes on sinking. */
static int repeat(struct fuel_solver *s, struct point *p, double level, double tolerance) {
    for (int k = 0; k < 60; k++) {
        double fuel = s->sums[FUEL], air = s->sums[AIR], flow = NV_Ith_S(s->y, FLOW), sag = NV_Ith_S(s->y, SAG);
        set_level(s, level, fuel, air);
        if (!pass(s)) return 0;
        p->passes++;
        double part = tolerance * s->sums[FUEL] + 1e-11;
        int steady = fabs(s->sums[AIR] - air) <= tolerance * s->sums[AIR] + 1e-12 && fabs(s->sums[FUEL] - fuel) <= part;
        int closed = fabs(NV_Ith_S(s->y, FLOW) - flow) <= part && fabs(NV_Ith_S(s->y, SAG) - sag) <= tolerance * WELL_SCALE;
        if (steady && (closed || s->sums[FUEL] == 0)) break;
    }
    return 1;
}

/* (10), (11): the level at which the level the flows would hold equals it; secant inside a bracket, halved now and then. Far from
   the balance the passes need not repeat to the last digit, so their tolerance follows the error of the level before. */
static int main_solve(struct fuel_solver *s, struct point *p) {
    double weight = GRAVITY * s->car->fuel_density, tolerance = s->settings->level_tolerance, finest = s->settings->flow_tolerance;
    double bottom = -s->car->main.well_depth, top = fmax(s->car->vent / weight, 0) + 1e-4;
    double low = bottom, high = top, level = fmin(fmax(p->level, bottom), top), old_level = 0, old_error = 0, within = 1e-2;
    p->passes = 0;
    for (int k = 0; k < 90; k++) {
        if (!repeat(s, p, level, within)) return 0;
        if (s->sums[FUEL] == 0) s->sums[JET_DROP] = s->rest;
        double held = (s->car->vent - fmax(s->sums[JET_DROP], 0) + s->sums[CORRECTOR_DROP]) / weight;
        double error = fmin(fmax(held, bottom), top) - level;
        p->level = level;
        if (fabs(error) <= tolerance) {
            if (within > finest) { within = finest; continue; }
            return 1;
        }
        if (error > 0) low = fmax(low, level); else high = fmin(high, level);
        if (high - low < tolerance) { low = bottom; high = top; }       /* closed on the wrong place by a pass that had not settled */
        double next = k == 0 || error == old_error ? level + error / 4 : level - error * (level - old_level) / (error - old_error);
        if (!(next >= low && next <= high) || (k > 8 && k % 2)) next = (low + high) / 2;
        old_level = level; old_error = error;
        level = next;
        within = fmin(within, fmax(finest, SHARE * fabs(error) / WELL_SCALE));
    }
    return 0;
}

static void draw(struct fuel_solver *s, double fuel) {
    s->drawn = fmax(fuel, 0);
    s->speed = 0;
    for (int k = 0; k < 3; k++) s->rest = jet_drop(&s->main_jet, s->drawn, &s->speed);
    s->lowest = s->car->lip + s->rest / (GRAVITY * s->car->fuel_density);
}

/* (28): the idle fuel that passes the main jet too, by the secant until what is drawn is what was assumed */
int fuel_solve(struct fuel_solver *s, struct point *p, const struct trace *trace) {
    double screw = 0, holes = 0, seconds = 120 / p->rpm, old = 0, old_error = 0, drawn = p->drawn;
    s->trace = trace;
    s->degrees_per_second = 6 * p->rpm;
    s->steps = 0;
    memset(s->sums, 0, sizeof s->sums);
    NV_Ith_S(s->y, FLOW) = NV_Ith_S(s->y, SAG) = 0;
    int ok = 1;
    for (int k = 0; k < 40; k++) {
        draw(s, drawn);
        ok = main_solve(s, p);
        idle_solve(s, p, fmax(s->sums[JET_DROP], 0), &screw, &holes);
        double error = (screw + holes) * s->car->idle.main_share - drawn;
        p->drawn = drawn;
        if (fabs(error) < 3e-8 || !ok) break;
        double next = k == 0 || error == old_error ? drawn + error : drawn - error * (drawn - old) / (error - old_error);
        old = drawn; old_error = error;
        drawn = fmin(fmax(next, 0), 0.01);
        if (k > 12) drawn = (drawn + old) / 2;                  /* a kink over which the secant swings */
    }
    p->main = s->sums[FUEL] * seconds;
    p->corrector = s->sums[AIR] * seconds;
    p->screw = screw * seconds;
    p->progression = holes * seconds;
    p->pump = pump_solve(s) * seconds;
    p->fuel_steps = s->steps;
    return ok;
}

struct fuel_solver *fuel_open(const struct car *c, const struct settings *settings) {
    struct fuel_solver *s = calloc(1, sizeof *s);
    s->car = c;
    s->settings = settings;
    s->main_jet = jet_of(c->main.jet, c->main.jet_length_ratio, c->fuel_density, c->fuel_viscosity);
    s->idle_jet = jet_of(c->idle.jet, c->idle.jet_length_ratio, c->fuel_density, c->fuel_viscosity);
    s->pump_jet = jet_of(c->pump.jet, 3, c->fuel_density, c->fuel_viscosity);
    s->orifice = orifice_of(c->fresh_gamma, 1e-5);
    s->corrector = c->main.air_discharge * circle(c->main.corrector);
    s->nozzle = 0.5 / sq(c->main.nozzle_discharge * circle(c->main.nozzle));
    s->film = 4 * SURFACE_TENSION / c->main.nozzle;                                                     /* (3) */
    s->fill = 1 / (c->fuel_density * circle(c->main.nozzle));
    s->inertance = c->main.column_length / circle(c->main.column_bore);
    s->rt = c->pressure / c->density;
    s->bleed = c->idle.air_discharge * circle(c->idle.bleed);
    SUNContext_Create(NULL, &s->context);
    s->y = N_VNew_Serial(COLUMN_STATES, s->context);
    s->scratch = N_VNew_Serial(COLUMN_STATES, s->context);
    s->matrix = SUNDenseMatrix(COLUMN_STATES, COLUMN_STATES, s->context);
    s->linear = SUNLinSol_Dense(s->y, s->matrix, s->context);
    s->cvode = CVodeCreate(CV_BDF, s->context);
    N_Vector least = N_VNew_Serial(COLUMN_STATES, s->context);
    NV_Ith_S(s->y, FLOW) = NV_Ith_S(s->y, SAG) = 0;
    NV_Ith_S(least, FLOW) = settings->fuel_rtol * 1e-4;
    NV_Ith_S(least, SAG) = settings->fuel_rtol * 1e-3;
    int bad = CVodeInit(s->cvode, right_side, 0, s->y) || CVodeSVtolerances(s->cvode, settings->fuel_rtol, least);
    N_VDestroy(least);
    if (bad
        || CVodeSetUserData(s->cvode, s) || CVodeSetLinearSolver(s->cvode, s->linear, s->matrix)
        || CVodeRootInit(s->cvode, 2, leaves) || CVodeSetMaxNumSteps(s->cvode, 1000000)) { fuel_close(s); return NULL; }
    int falling[2] = { -1, -1 };
    CVodeSetRootDirection(s->cvode, falling);
    CVodeSetNoInactiveRootWarn(s->cvode);
    return s;
}

void fuel_close(struct fuel_solver *s) {
    CVodeFree(&s->cvode);
    SUNLinSolFree(s->linear);
    SUNMatDestroy(s->matrix);
    N_VDestroy(s->y); N_VDestroy(s->scratch);
    SUNContext_Free(&s->context);
    free(s);
}
