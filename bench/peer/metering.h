/* What the main circuit and the idle circuit of the peer share. */
#ifndef METERING_H
#define METERING_H
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include "peer.h"

#define GRAVITY 9.80665
#define SURFACE_TENSION 0.0216
#define MOST_STAYS 10000
#define WELL_SCALE 0.02                               /* m of level for 1 of a flow: equal weights */
#define SHARE 0.02                                    /* of a level's error that its passes may leave: fastest of those tried */

struct fuel_solver {
    const struct car *car;
    const struct settings *settings;
    SUNContext context;
    N_Vector y, scratch;
    SUNMatrix matrix;
    SUNLinearSolver linear;
    void *cvode;
    struct jet main_jet, idle_jet, pump_jet;
    struct orifice orifice;
    double corrector, nozzle, inertance, rt, bleed, film, fill;
    double air_area, column, foot, share;               /* at the level tried: 2 rho A^2, Pa, Pa, 1 */
    double drawn, rest, lowest;                         /* (28): idle fuel through the main jet, kg/s, the drop it makes alone, Pa, and the lowest sag, m */
    const struct trace *trace;
    size_t at;                                          /* piece of the trace last used */
    double degrees_per_second, air, speed;              /* the last answers of emulsion network, kg/s, and jet, m/s */
    enum { AT_LIP, HANGING, LOWEST } place;             /* of the fuel's surface in the nozzle */
    double sums[4];
    long steps;
};

enum { FUEL, AIR, CORRECTOR_DROP, JET_DROP, SUMS };
enum { FLOW, SAG, COLUMN_STATES };

static inline double sq(double x) { return x * x; }

void idle_solve(struct fuel_solver *s, struct point *p, double main_drop, double *screw, double *holes);
double pump_solve(const struct fuel_solver *s);

#endif
