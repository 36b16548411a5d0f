#pragma once
#include <stddef.h>
#include "geometry/outline.h"
#include "geometry/status.h"

/** Flow across the body at stations x on its axis for one radian of incidence: 1 + w / (V α) from the lattice; data is the caller's. */
typedef void (*BodyFlow) (const void *data, const double x[], size_t count, double cross_flow[]);

/** The body's pitching moment by Multhopp's strips, dM/dα / q = (π/2) ∫ w² (dε_u/dα) dx, w the width.
 *  outline   top view, y half the width, nose to tail
 *  flow      cross flow along the body; NULL takes 1 everywhere (slender-body theory without a wing)
 *  wing_leading_x, wing_trailing_x  the root chord inside the body: there the flow follows the wing and adds nothing;
 *            pass leading >= trailing for no wing
 *  moment    nose-up positive, in length³ per radian (the outline's unit: m³ from metres), set on success
 *  returns   CORE_OK; CORE_NO_AREA for a body without length or width; CORE_NOT_FINITE; CORE_CROSSES_ITSELF
 *  source    Multhopp, Zur Aerodynamik des Flugzeugrumpfes (1941), NACA TM 1036 (1942) */
CoreStatus body_pitching_moment (const Outline *outline, BodyFlow flow, const void *data,
                                 double wing_leading_x, double wing_trailing_x, double *moment);
