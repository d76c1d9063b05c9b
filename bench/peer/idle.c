/* Idle, progression and pull-over of one barrel on a recorded cycle of its air: docs/physics/metering.md (13) to (19). */
#include <math.h>
#include "metering.h"

struct idle_ports { double screw, behind, before; };

/* (13) to (15) */
static struct idle_ports ports_of(const struct car *c, double opening) {
    const struct idle_circuit *i = &c->idle;
    double angle = fmin(c->way.closed_angle + opening, M_PI / 2), all = 0;
    double edge = c->way.bore / 2 * (sin(angle) - sin(c->way.closed_angle)) / cos(c->way.closed_angle);
    double gap = fmax(0, i->screw_turns * i->screw_pitch) * tan(i->screw_angle);
    struct idle_ports p = { gap >= i->screw_seat / 2 ? circle(i->screw_seat) : M_PI * gap * (i->screw_seat - gap), 0, 0 };
    for (int k = 0; k < i->holes; k++) {
        p.behind += segment(i->hole_bore[k], edge - i->position[k] + i->hole_bore[k] / 2);
        all += circle(i->hole_bore[k]);
    }
    p.before = all - p.behind;
    return p;
}

struct passage { double excess, fuel, air, to_engine, to_barrel; };

/* (17) at a pressure in the passage */
static struct passage passage_at(const struct fuel_solver *s, const struct idle_ports *o, double p, double bowl, double up, double down) {
    const struct idle_circuit *i = &s->car->idle;
    double bleed = flux(&s->orifice, s->car->pressure, s->rt, p, s->rt) * s->bleed;
    double before = o->before > 0 ? flux(&s->orifice, up, s->rt, p, s->rt) : 0;
    double behind = flux(&s->orifice, p, s->rt, down, s->rt) * i->outlet_discharge * (o->behind + o->screw);
    before *= o->before * i->air_discharge;
    struct passage q;
    q.fuel = jet_flow(&s->idle_jet, bowl - p);
    q.to_engine = fmax(behind, 0);
    q.to_barrel = fmax(-before, 0);
    double air = bleed + fmax(before, 0) + fmax(-behind, 0);
    double heavy = air + q.fuel, light = air + q.fuel * s->car->density / s->car->fuel_density;
    q.air = air;
    q.excess = sqrt(fmax(heavy * light, 0)) - q.to_engine - q.to_barrel;
    return q;
}

/* Pressure at which (17) balances: a falling function between the lowest and the highest pressure round the passage. */
static double balance(const struct fuel_solver *s, const struct idle_ports *o, double bowl, double up, double down, double *guess) {
    double low = fmin(fmin(up, down), fmin(s->car->pressure, bowl)), high = fmax(fmax(up, down), fmax(s->car->pressure, bowl));
    double p = fmin(fmax(*guess, low), high), old = p + (p > (low + high) / 2 ? -1 : 1);
    double old_f = passage_at(s, o, old, bowl, up, down).excess;
    for (int k = 0; k < 80; k++) {
        double f = passage_at(s, o, p, bowl, up, down).excess;
        if (f > 0) low = p; else high = p;
        double next = p - f * (p - old) / (f - old_f);
        if (!(next >= low && next <= high)) next = (low + high) / 2;
        double moved = fabs(next - p);
        old = p; old_f = f;
        p = next;
        if (moved < 1e-2) break;
    }
    return *guess = p;
}

/* (16) to (18): fuel past the screw and from the holes, means over the cycle */
void idle_solve(struct fuel_solver *s, struct point *p, double main_drop, double *screw, double *holes) {
    const struct trace *tr = s->trace;
    const struct car *c = s->car;
    struct idle_ports o = ports_of(c, p->degrees * M_PI / 180);
    double bowl = c->pressure + c->vent - c->fuel_density * GRAVITY * c->idle.lift - main_drop * c->idle.main_share;
    double past = o.screw + o.behind > 0 ? o.screw / (o.screw + o.behind) : 0, guess = c->pressure, begin = 0;
    double from_screw[3], all[3], end = tr->end[tr->pieces - 1];
    *screw = *holes = 0;
    for (size_t n = 0; n < tr->pieces; n++) {
        for (size_t k = 0; k < 3; k++) {
            if (k == 0 && n > 0) { from_screw[0] = from_screw[2]; all[0] = all[2]; continue; }
            double up = tr->up[3 * n + k], down = tr->down[3 * n + k];
            struct passage q = passage_at(s, &o, balance(s, &o, bowl, up, down, &guess), bowl, up, down);
            double out = q.to_engine + q.to_barrel;
            from_screw[k] = out > 0 ? q.fuel * q.to_engine / out * past : 0;
            all[k] = q.fuel;
        }
        double w = (tr->end[n] - begin) / (6 * end);
        *screw += w * (from_screw[0] + 4 * from_screw[1] + from_screw[2]);
        *holes += w * (all[0] + 4 * all[1] + all[2]);
        begin = tr->end[n];
    }
    *holes -= *screw;
}

/* (19) */
double pump_solve(const struct fuel_solver *s) {
    const struct car *c = s->car;
    const struct trace *tr = s->trace;
    if (c->pump.jet <= 0) return 0;
    double share = sq(sq(c->pump.jet)) / (sq(sq(c->pump.jet)) + sq(sq(c->pump.bleed)));
    double head = c->fuel_density * GRAVITY * c->pump.lift + c->pump.check - c->vent;
    double factor = share * 0.5 / (c->density * sq(circle(c->way.bore))), sum = 0, begin = 0;
    for (size_t n = 0; n < tr->pieces; n++) {
        double f[3];
        for (size_t k = 0; k < 3; k++) f[k] = jet_flow(&s->pump_jet, sq(tr->flow[3 * n + k]) * factor - head);
        sum += (tr->end[n] - begin) / 6 * (f[0] + 4 * f[1] + f[2]);
        begin = tr->end[n];
    }
    return sum / tr->end[tr->pieces - 1];
}
