/* The peer: the gas exchange and the metering of one barrel on one cylinder, written from docs/physics/breathing.md and
   metering.md on SUNDIALS CVODE, to check the product's solver and to time it against. Numbers in brackets are the
   equations of those pages. All quantities in SI; crank angles in degrees behind firing dead centre. */
#ifndef PEER_H
#define PEER_H

#include <stddef.h>

#define MOST_ROWS 16
#define MOST_HOLES 16
#define MOST_POINTS 512
#define MOST_SAMPLES 200000

struct valve { double count, head, lift, opens, closes, discharge, throat_ratio; };

struct air_way {
    double bore, closed_angle, spindle, choke, choke_obstruction, choke_discharge, choke_loss;
    double gain, reverse, plate_discharge, bypass;
};

struct tract {
    double trumpet, barrel, runner, runner_bore, port_volume, runner_loss, wall_temperature, heating, evaporation;
};

struct main_circuit {
    double jet, jet_length_ratio, corrector, air_discharge, well_area, well_depth, nozzle, nozzle_discharge, slip;
    double column_length, column_bore;
    int rows;
    double depth[MOST_ROWS], holes[MOST_ROWS], hole_bore[MOST_ROWS];
};

struct idle_circuit {
    double jet, jet_length_ratio, bleed, air_discharge, lift, main_share, screw_seat, screw_angle, screw_pitch, screw_turns;
    double outlet_discharge;
    int holes;
    double position[MOST_HOLES], hole_bore[MOST_HOLES];
};

struct pump_circuit { double jet, lift, check, bleed; };

struct car {
    double pressure, temperature, density;              /* ambient */
    double fuel_density, fuel_viscosity;
    double fresh_gamma, burnt_gamma, reference, smoothing;
    double bore, stroke, rod, compression;
    struct valve inlet, exhaust;
    struct tract intake;
    double back_pressure, exhaust_temperature;
    double burn_start, burn_duration, heat_per_air, chamber_temperature;
    struct air_way way;
    double lip, vent;
    struct main_circuit main;
    struct idle_circuit idle;
    struct pump_circuit pump;
};

struct settings {
    double cycle_tolerance;                             /* change over a cycle at which it counts as periodic */
    double level_tolerance, flow_tolerance;             /* the same for the level, m, and the flows of the metering */
    double rtol, fuel_rtol;                             /* CVODE's own */
    int most_cycles;
};

/* One operating point: what is asked and what came out. */
struct point {
    double rpm, degrees;
    int after;                                          /* point whose periodic state it starts from, or -1 */
    double air, main, screw, progression, pump, corrector, level;   /* kg a cycle, m */
    double drawn;                                       /* idle fuel through the main jet, kg/s */
    double residual;
    int cycles, passes, settled;
    long steps, evaluations, fuel_steps;
};

/* What the metering feels over the last cycle: quadratic pieces, three samples a step of the integrator. */
struct trace {
    size_t pieces;
    double end[MOST_SAMPLES];                           /* degrees since the start of the cycle at the end of each piece */
    double flow[3 * MOST_SAMPLES], depression[3 * MOST_SAMPLES], up[3 * MOST_SAMPLES], down[3 * MOST_SAMPLES];
};

#define STATES 7

/* input.c */
int read_input(const char *path, struct car *car, struct settings *settings, struct point *points, int *count);

/* flow.c */
struct orifice { double inverse_gamma, factor, critical, width; };
struct orifice orifice_of(double gamma, double smoothing);
double psi_squared(const struct orifice *orifice, double ratio);
double flux(const struct orifice *orifice, double pa, double rta, double pb, double rtb);
double segment(double diameter, double uncovered);
double circle(double diameter);
struct jet { double inverse, viscous, hump, reynolds, area, density; };
struct jet jet_of(double diameter, double length_ratio, double density, double viscosity);
double jet_flow(const struct jet *jet, double drop);
double jet_drop(const struct jet *jet, double flow, double *speed);

/* breathing.c */
struct air_solver;
struct air_solver *air_open(const struct car *car, const struct settings *settings);
void air_close(struct air_solver *solver);
int air_solve(struct air_solver *solver, struct point *point, double *state, struct trace *trace);
void air_start(const struct car *car, double *state);

/* metering.c */
struct fuel_solver;
struct fuel_solver *fuel_open(const struct car *car, const struct settings *settings);
void fuel_close(struct fuel_solver *solver);
int fuel_solve(struct fuel_solver *solver, struct point *point, const struct trace *trace);

#endif
