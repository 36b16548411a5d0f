#pragma once
#include "figures/figures.h"

/** The body's edge along the opening, on the side where the hatch opens: a lid cut from flat sheet is bent along it, and so must be longer than
 *  its hole is in plan. Millimetres. */
typedef struct HatchCurve HatchCurve;

/** NULL without a hatch, until a side is chosen, and where the body is not drawn from that side all along the opening.
 *  method  the side outline (body_profile_at) by chords of 2 mm */
HatchCurve *hatch_curve_new  (const Figures *figures);
void        hatch_curve_free (HatchCurve *self);                /* NULL is fine */
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HatchCurve, hatch_curve_free)

/** Where x, mm aft of the datum, comes to lie when the edge is laid flat, the opening's forward end staying where it is. Of NULL x itself. */
double hatch_curve_at (const HatchCurve *self, double x);

/** How much longer than in plan the edge is over the opening; 0 where that is less than 0.5 mm, which nobody saws, and of NULL. */
double hatch_curve_longer (const HatchCurve *self);
