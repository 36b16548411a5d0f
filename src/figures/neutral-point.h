#pragma once
#include "aero/lattice.h"
#include "figures/body-shift.h"
#include "figures/figures.h"

/** One horizontal surface's part in the lattice's answer, thin plates. */
typedef struct {
  size_t surface;               /* its place among the case's surfaces */
  double lift;                  /* per radian on the reference area, in company, pressure ratio included */
  double centre_x;              /* where it acts, mm */
  double own_slope;             /* alone, on its own area */
  double downwash_gradient;
  double roll_damping, pitching_lift, pitching_moment;      /* as of LatticeShare; mm, mm² */
} LiftShare;

/** What one solve of an aeroplane's surfaces and bodies gave: all that outlines and rigging decide. */
typedef struct {
  CoreStatus status;            /* CORE_OK when there is a neutral point, else what stood in the way; the rest NAN or empty then */
  const Surface *at_fault[2];   /* the surface that stood in the way, or the two together; NULL where none can be named */
  LiftShare *shares;  size_t share_count;      /* the reference first */
  LatticeResult lattice;
  double handbook_x;            /* without body; NAN where the formulas do not hold */
  BodyShift body;               /* for the lattice's own lift slope */
  double nose_flow;             /* 1 + w / (V α) at the foremost point, but at least half a MAC ahead of the reference wing's root, where
                                   the lattice's single vortices do not show, in the plane of that root */
  GArray *loading;              /* of SpanLoading, the reference's; NULL without a neutral point */
  double stall_station, stall_ratio;           /* where the reference's section lift is greatest, and over the wing's own */
} NeutralPointSolution;

/** What the solve needs, all lent: every surface's figures in the document's order, the reference among them (may be NULL). */
typedef struct {
  const Aeroplane *aeroplane;
  const SurfaceFigures *surfaces;  size_t count;
  const SurfaceFigures *reference;
  double nose_x;                /* the aeroplane's foremost point */
} NeutralPointCase;

/** Solves the lattice for all horizontal surfaces that have a planform, the reference first, and asks the handbook for its opinion.
 *  Without a reference, or when a horizontal surface has no planform, the neutral point is withheld: CORE_NO_AREA; the shares of those
 *  that have one are given even so. The body's shift is −(dM/dα / q) / (S · C_Lα), summed over bodies, with the flow taken in the
 *  plane of the reference wing's root. */
NeutralPointSolution neutral_point_solve (Lattice *lattice, const NeutralPointCase *wanted);
/** Frees what it holds, not itself. */
void neutral_point_solution_clear (NeutralPointSolution *self);
