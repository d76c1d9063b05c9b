/* Orifices, jets and holes: docs/physics/flow.md and metering.md (1), (2). */
#include <math.h>
#include "peer.h"

double circle(double diameter) { return M_PI / 4 * diameter * diameter; }

struct orifice orifice_of(double gamma, double smoothing) {
    struct orifice o;
    o.inverse_gamma = 1 / gamma;
    o.factor = 2 * gamma / (gamma - 1);
    o.critical = pow(2 / (gamma + 1), gamma / (gamma - 1));
    o.width = 4 * smoothing * smoothing;
    return o;
}

/* Psi squared of flow (3), constant below the critical ratio. */
double psi_squared(const struct orifice *o, double ratio) {
    double r = ratio > o->critical ? ratio : o->critical;
    double q = pow(r, o->inverse_gamma);
    return o->factor * q * (q - r);
}

/* Mass flux from a to b; near rest the root turns linear within the given width of the pressure ratio. */
double flux(const struct orifice *o, double pa, double rta, double pb, double rtb) {
    double forward = pa >= pb;
    double up = forward ? pa : pb, down = forward ? pb : pa;
    double g = psi_squared(o, down / up);
    double m = up * g / sqrt(sqrt(g * g + o->width) * (forward ? rta : rtb));
    return forward ? m : -m;
}

/* flow (14) */
double segment(double diameter, double uncovered) {
    if (uncovered <= 0 || diameter <= 0) return 0;
    if (uncovered >= diameter) return circle(diameter);
    double angle = 4 * asin(sqrt(uncovered / diameter));
    return diameter * diameter / 8 * (angle - sin(angle));
}

/* flow (17), (18) with the loss-free speed u: 1/Cd = inverse - hump(u) + viscous/u */
struct jet jet_of(double diameter, double length_ratio, double density, double viscosity) {
    struct jet j;
    double kinematic = viscosity / density;
    j.inverse = 1 / (0.827 - 0.0085 * length_ratio);
    j.viscous = 20 * (1 + 2.25 * length_ratio) * kinematic / diameter;
    j.hump = 0.005 * length_ratio;
    j.reynolds = diameter / kinematic;
    j.area = circle(diameter);
    j.density = density;
    return j;
}

static double inertia_term(const struct jet *j, double u) {
    double re = 0.00015 * u * j->reynolds;
    if (re < 1e-9) re = 1e-9;
    double decades = log10(re);
    return j->inverse - j->hump / (1 + 7.5 * decades * decades);
}

double jet_flow(const struct jet *j, double drop) {
    if (drop <= 0) return 0;
    double u = sqrt(2 * drop / j->density);
    return j->density * j->area * u * u / (inertia_term(j, u) * u + j->viscous);
}

/* metering (2), the hump by repetition until it holds, from the loss-free speed of the last call */
double jet_drop(const struct jet *j, double flow, double *speed) {
    if (flow <= 0) return 0;
    double v = flow / (j->density * j->area), u = *speed > 0 ? *speed : v;
    for (int k = 0; k < 30; k++) {
        double half = inertia_term(j, u) * v / 2;
        double next = half + sqrt(half * half + v * j->viscous);
        if (fabs(next - u) <= 1e-10 * next) { u = next; break; }
        u = next;
    }
    *speed = u;
    return j->density / 2 * u * u;
}
