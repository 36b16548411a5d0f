#pragma once
#include "aero/lattice.h"
#include "figures/figures.h"

/** How the bodies move the neutral point, mm, negative forward. */
typedef struct {
  double shift_mm;        /* 0 without a body; NAN when no body has a usable outline from above */
  double moment;          /* what shifts it, nose up, mm³ per radian and unit of dynamic pressure; 0 and NAN likewise */
  double plane_mm;        /* how much it changes when the flow is taken at z = 0 in place of the wing's plane */
  size_t bodies;          /* how many were counted */
  GPtrArray *left_out;    /* of Body, lent by the aeroplane: those without a usable outline from above. The array is the caller's */
} BodyShift;

/** The surfaces that a body flies with, all lent, the reference among them. */
typedef struct { const SurfaceFigures *surfaces;  size_t count;  const SurfaceFigures *reference; } BodyCompany;

/** After a solve of the lattice. lift_slope per radian on the reference's area. The body's stretches inside the root chords of all that
 *  lies flat add nothing. */
BodyShift body_shift_of (const Lattice *lattice, const Aeroplane *aeroplane, const BodyCompany *company, double lift_slope);
