#pragma once
#include <stddef.h>
#include "geometry/outline.h"
#include "geometry/status.h"

/** Flow across the body at stations x on its axis for one radian of incidence: 1 + w / (V α) from the lattice; data is the caller's. */
typedef void (*BodyFlow) (const void *data, const double x[], size_t count, double cross_flow[]);

/** A stretch of the body that a surface's root chord takes up. */
typedef struct { double leading_x, trailing_x; } BodyChord;

/** The body's pitching moment by Multhopp's strips, dM/dα / q = (π/2) ∫ w² (dε_u/dα) dx, w the width.
 *  outline   top view, y half the width, nose to tail
 *  flow      cross flow along the body; NULL takes 1 everywhere (slender-body theory without a wing)
 *  chords    the root chords of wing, tail and all else that lies flat, in any order, overlapping or not, each leading < trailing: there
 *            the flow follows the surface and adds nothing, and the lattice's single vortices would be met. NULL, 0: none
 *  moment    nose-up positive, in length³ per radian (the outline's unit: m³ from metres), set on success
 *  returns   CORE_OK; CORE_NO_AREA for a body without length or width; CORE_NOT_FINITE; CORE_CROSSES_ITSELF
 *  source    Multhopp, Zur Aerodynamik des Flugzeugrumpfes (1941), NACA TM 1036 (1942) */
CoreStatus body_pitching_moment (const Outline *outline, BodyFlow flow, const void *data,
                                 const BodyChord chords[], size_t chord_count, double *moment);
