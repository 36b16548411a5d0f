#pragma once
#include <stdbool.h>
#include <stddef.h>
#include "geometry/outline.h"
#include "geometry/planform.h"

/** A linear vortex lattice of all horizontal surfaces together: inviscid, thin, small angles, symmetric about the centre
 *  line, trailing vortices straight downstream, solved by LAPACK. Homogeneous in length: any one unit. x aft, z up. */

/** Where a panel's dihedral changes: outboard of `station` the surface rises by `angle` (radians). */
typedef struct { double station, angle; } LatticeBend;

/** One lifting surface as the lattice sees it: laid flat in the stream, for to first order neither incidence nor washout changes a
 *  derivative. */
typedef struct {
  const Outline *outline;       /* plan view as projected; lent */
  PlanformSides sides;          /* PLANFORM_CARRIED or PLANFORM_OPEN */
  double z;                     /* height of the root's leading edge */
  double dihedral;              /* radians; lifts the outline, does not shorten it */
  const LatticeBend *bends;     /* rising stations; may be NULL */
  size_t bend_count;
  double pressure_ratio;        /* dynamic pressure there over that of free flow; multiplies its own forces after the solve */
  int spanwise, chordwise;      /* panels a side; 0 takes the options'; more along the chord close to another surface. Strips have the
                                   same edges on all surfaces, so that a further surface gets about as many as it wishes for, the
                                   first exactly (but for the one that each stretch between two tips must have). */
} LatticeSurface;

/** How strips stand along the span: narrow towards tips like a cosine, with control points midway in its angle; or even,
 *  with control points in the middle, as lattices were laid out for desk calculation. */
typedef enum { LATTICE_COSINE, LATTICE_EVEN } LatticeSpacing;

typedef struct {
  int spanwise, chordwise;
  LatticeSpacing spacing;
  size_t most_panels;           /* of all surfaces, a side; 0 for as many as a machine holds, 20 000 */
} LatticeOptions;
/** 20 by 6 a side for the first surface; others get 12 by 4; at most 2500 in all, which take about a second: half a dozen surfaces whose
 *  tips all stand apart. The convergence behind it is in tests/aero. */
LatticeOptions lattice_default_options (void);

/** One surface's share at one radian of the whole aeroplane's incidence. */
typedef struct {
  double lift_slope;            /* in company, on the reference area, pressure ratio included, per radian */
  double centre_x;              /* where that lift acts */
  double alone_lift_slope;      /* of the surface by itself, on its own area, per radian (NaN unless asked for) */
  double alone_centre_x;
  double downwash_gradient;     /* dε/dα: 1 - lift in company / lift alone; negative where the flow rises (NaN unless asked for) */
  double roll_damping, pitching_lift, pitching_moment;      /* its share of the result's (NaN unless asked for) */
} LatticeShare;

typedef struct {
  double lift_slope;            /* of the aeroplane, per radian, on the reference area */
  double neutral_point_x;
  double roll_damping;          /* dC_l / d(p b / 2V) on reference area and span, about the centre line; NaN unless asked for */
  double span_efficiency;       /* of the first surface alone, from the far wake; NaN unless asked for */
  double pitching_lift, pitching_moment;   /* dC_L / d(q/V), a length, and that lift times where it acts, length², both for
                                              turning about x = 0; for lattice_pitch_damping. NaN unless asked for */
} LatticeResult;

/** Memory for the solves, grown as needed and kept from call to call; one user at a time. */
typedef struct Lattice Lattice;
Lattice *lattice_new  (void);              /* NULL when there is no memory; free it with lattice_free */
void     lattice_free (Lattice *self);     /* NULL is fine */

typedef enum {
  LATTICE_NEUTRAL_POINT = 0,
  LATTICE_ALONE         = 1,    /* each surface by itself as well: alone_*, downwash_gradient */
  LATTICE_ROLL          = 2,    /* the antisymmetric system too */
  LATTICE_FAR_WAKE      = 4,
  LATTICE_PITCH         = 8     /* one more right-hand side */
} LatticeWants;

/** Solves for the surfaces together.
 *  reference_area, reference_span  what coefficients are made with (the first wing's)
 *  shares     count entries, set on success
 *  returns    CORE_OK; CORE_SINGULAR for coincident surfaces or zero chord; what outline_check gives; CORE_OUT_OF_RANGE
 *             for a dihedral past 80°, a negative pressure ratio, no panels or over a thousand, no reference;
 *             CORE_NOT_FINITE; CORE_TOO_MANY; CORE_NO_MEMORY
 *  sweep      between 15° and 25° of the first surface's quarter-chord line at the centre the answer goes over to one that is
 *             extrapolated from these panels and half as many (cosine spacing only): a kink's error is of the first order
 *  accuracy   of the converged value at default panels: alone or with a tail, to 15° of sweep either way, neutral point within 0.15 % of
 *             MAC and lift slope 0.15 %, but with tips bent up 0.25 % and with a square notch at the root 0.35 %; to 45°, beside a
 *             foreplane or as a biplane 0.4 % and 0.6 % (tests/aero/convergence.c). Surfaces over each other nearer than three
 *             quarters of the shorter chord get up to 2⅔ times the panels along the chord, if most_panels leaves room: a biplane's
 *             neutral point is then within 0.15 % of MAC down to a gap of a tenth of the chord, 0.25 % to a twentieth
 *  source     Katz and Plotkin, Low-Speed Aerodynamics, 2nd ed., chapter 12 (horseshoe elements); spacing after
 *             Lan, A Quasi-Vortex-Lattice Method in Thin Wing Theory, J. Aircraft 11 (1974) */
CoreStatus lattice_solve (Lattice *self, const LatticeSurface surfaces[], size_t count, LatticeOptions options, unsigned wants,
                          double reference_area, double reference_span, LatticeShare shares[], LatticeResult *result);

/** Damping in pitch, dC_m / d(q c / 2V), negative where turning is resisted, per radian, about the axis x = axis_x with the chord c;
 *  of all horizontal surfaces in steady turning: what the downwash's delay adds (dC_m / dα̇) is not in it. Needs LATTICE_PITCH.
 *  source    Etkin and Reid, Dynamics of Flight, 3rd ed., section 5.4, for the definition */
double lattice_pitch_damping (const LatticeResult *result, double axis_x, double chord);

/** Lift at one strip: its station and chord, in the outlines' unit, and the section's lift coefficient over the surface's own. */
typedef struct { double station, chord, lift_ratio; } LatticeStation;
/** How lift is spread over one surface in company, of the incidence alone: washout and deflected controls come on top.
 *  stations  up to `room` entries, from the root outboard;  returns how many strips there are. Needs a solve that succeeded. */
size_t lattice_span_loading (const Lattice *self, size_t surface, LatticeStation stations[], size_t room);

/** Vertical flow at points in the plane z for one radian of incidence, from the last solve (which must have succeeded):
 *  w / (V α), up positive (upwash ahead of the wing, negative behind), on the centre line (just beside it, within the
 *  innermost strip, unless there is an open gap). For the body's strips. x and z in the outlines' unit.
 *  accuracy  1 % ahead and behind; inside a surface's chord it is that of single vortices and means nothing. Always finite. */
void lattice_upwash (const Lattice *self, const double x[], size_t count, double z, double upwash[]);
