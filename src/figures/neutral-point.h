#pragma once
#include "aero/lattice.h"
#include "figures/figures.h"

/** What one solve of an aeroplane's surfaces and bodies gave. */
typedef struct {
  NeutralPointFigures point;    /* NAN throughout unless its status is CORE_OK */
  GPtrArray *left_out;          /* of Body, lent by the aeroplane: those not counted in the shift; the caller's, NULL without a neutral point */
  double body_plane_mm;         /* how far the body's shift changes when the flow is taken in the plane of its axis */
} NeutralPointSolution;

/** What the solve needs, all lent: every surface's figures in the document's order, the reference among them (may be NULL). */
typedef struct {
  const Aeroplane *aeroplane;
  SurfaceFigures *surfaces;  size_t count;
  const SurfaceFigures *reference;
} NeutralPointCase;

/** Solves the lattice for all horizontal surfaces that have a planform, the reference first, and asks the handbook for its opinion.
 *  Fills in each surface's lift_slope_per_rad. Without a reference, or when a horizontal surface has no planform, the neutral point
 *  is withheld: CORE_NO_AREA.
 *
 *  The body's shift is −(dM/dα / q) / (S · C_Lα), summed over bodies, with the flow taken in the plane of the reference wing's root.
 *
 *  One standard deviation, in parts of the MAC: σ² = b² + (d/2)² + (p/2)².
 *    b  2.5 % for a plain model, rising to 4 % as the body's shift grows from 3 to 5 % (a fat body); 4 % when no body is drawn from
 *       above, unless the aeroplane has no tail either. Common practice, no source.
 *    d  lattice less handbook: two opinions of one point, half their distance is the deviation of each from their middle
 *    p  how much the body's shift changes when the flow is taken at the body's axis, z = 0, in place of the wing's plane */
NeutralPointSolution neutral_point_solve (Lattice *lattice, const NeutralPointCase *wanted);
