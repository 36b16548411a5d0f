#pragma once
#include "geometry/outline.h"

/** How an outline becomes a surface. */
typedef enum {
  PLANFORM_CARRIED,   /* mirrored; a root at y > 0 is carried to the centre line at constant chord: the gross area */
  PLANFORM_OPEN,      /* mirrored; the gap between the roots is left out */
  PLANFORM_SINGLE     /* one side only: a fin, y its height */
} PlanformSides;

/** What a surface's outline comes to. Lengths in the outline's unit, area in its square; x aft of the datum. */
typedef struct {
  double area;                 /* of both halves (one for a fin) */
  double span;                 /* tip to tip (a fin: its height, from its root) */
  double aspect_ratio;         /* span² / area */
  double mean_chord;           /* area / span */
  double mac;                  /* mean aerodynamic chord */
  double mac_station;          /* y of the chord that long, as the integral gives it */
  double mac_leading_edge_x;   /* x of its leading edge */
} Planform;

/** Area, mean aerodynamic chord and its place.
 *
 *      S = 2 ∫ c dy    MAC = (2/S) ∫ c² dy    station = (2/S) ∫ c y dy    leading edge = (2/S) ∫ c x_LE dy
 *
 *  over the half-span (a fin: the factor is 1 over its height), by Gauss–Legendre quadrature between nodes and turns of y,
 *  with y = middle − half cos θ in each interval, which takes the square roots at round tips; an interval whose Gauss sum
 *  differs from Kronrod's is halved, and one between straight edges needs two places only. A fin's mac_station is y as the
 *  outline has it, not counted from its root.
 *  planform  set on success, else untouched
 *  returns   CORE_OK, also for a multi-valued outline; else what outline_check gives; CORE_OUT_OF_RANGE when a half to be
 *            mirrored reaches over the centre line by more than 1e-6 of its box, or lies where its root is to be carried;
 *            CORE_NO_MEMORY
 *  accuracy  relative 1e-9 for ellipses, polygons and curves
 *  cost      10 µs for six segments, some of them bent
 *  source    Etkin and Reid, Dynamics of Flight, 3rd ed., appendix C */
CoreStatus planform_measure (const Outline *outline, PlanformSides sides, Planform *planform);

/** A surface at one station. */
typedef struct {
  double leading_x;    /* foremost meeting of the station line with the closed outline */
  double trailing_x;   /* aftmost */
  double chord;        /* length of the station line inside the closed outline: less than trailing - leading at a notch */
  int pieces;          /* how many pieces the chord has */
} StationCut;

/** Cuts the surface at station y >= 0 (a carried root: also inboard of it), in the outline's unit (mm in a document).
 *  CORE_OUT_OF_RANGE beyond tip or inside an open gap (by more than 1e-9 of the span); else as planform_measure. At a step of the
 *  chord the outboard side counts, at the tip the inboard. Allocates nothing.
 *  cost  0.1 µs for six segments, 0.5 µs for 10,000 */
CoreStatus planform_cut (const Outline *outline, PlanformSides sides, double y, StationCut *cut);

/** Area moments of a whole surface as a thin even sheet, about the datum and the centre line; both halves (one for a fin).
 *  In the outline's unit (mm in a document) to the 2nd power for the area, the 1st for the centroid, the 4th for xx and yy. */
typedef struct {
  double area;
  double x;       /* centroid, aft of the datum */
  double y;       /* centroid of one half from the centre line (the whole's is 0 when mirrored) */
  double xx, yy;  /* ∫ (x - x̄)² dA and ∫ y² dA over the surface */
} AreaMoments;

/** The surface's area moments, from the boundary by Green's theorem. *moments is set on success; returns as planform_measure, but
 *  never CORE_NO_MEMORY. */
CoreStatus planform_moments (const Outline *outline, PlanformSides sides, AreaMoments *moments);

/** Stations at which the shape changes kind: nodes and turns of y, rising, from the root (0 when carried) to the tip, no two
 *  closer than 1e-6 of the span; in the outline's unit (mm in a document). Writes at most `room` and returns how many there are;
 *  0 when planform_measure would fail. The lattice's strips end there. */
size_t planform_breaks (const Outline *outline, PlanformSides sides, double stations[], size_t room);
