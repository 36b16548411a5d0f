#pragma once
#include "figures/figures.h"

/** How mass lies that is spread evenly over a surface's or a body's area, as a thin sheet. Millimetres. */
typedef struct {
  const Piece *piece;
  CoreStatus status;               /* why there is none; the rest is NAN then */
  double x, y, z;                  /* the area's centroid */
  double from_x, length_x;         /* what `centre` counts along: the mean chord, the body's length */
  double slope;                    /* how much lower a place lies for each mm that it is further aft: the incidence */
  double roll, pitch, yaw;         /* squared radii of gyration about the centroid, mm² */
  double traced[TRACED_COUNT];     /* what items of a structure go by, mm² or mm; NAN where the outlines do not tell */
} Spread;

/** A surface's: its planform carried as its area is; dihedral and incidence give the height. */
Spread spread_of_surface (const SurfaceFigures *surface);

/** A body's: its top outline, without one its side outline; the height is the middle of the side outline, 0 without. */
Spread spread_of_body (const Body *body);

/** Of the surface or body of that id; all NAN where there is none. The id may be NULL. */
Spread spread_of_id (const Figures *figures, const char *id);
