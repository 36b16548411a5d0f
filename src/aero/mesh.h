#pragma once
#include "aero/stations.h"

/** One strip of one surface: a column of panels from its leading to its trailing edge. */
typedef struct {
  size_t surface, panel;          /* whose, and its foremost panel */
  size_t panel_count;
  double inner_y, outer_y;        /* the trailing vortices run here, straight downstream */
  double inner_z, outer_z;
  double control_y, control_z;
  double leading_x, trailing_x;   /* at the control station */
  double sine, cosine;            /* of its dihedral: the normal is (0, -sine, cosine) */
} MeshStrip;

/** One surface's share of strips and panels, and its own area. */
typedef struct { size_t strip, strip_count, panel, panel_count; double area; } MeshSurface;

/** Starboard panels of all surfaces: a bound vortex each on the line at a quarter of its chord, a control point at three
 *  quarters. Memory is kept from one build to the next; all zero is empty. */
typedef struct {
  MeshSurface *surfaces;
  MeshStrip *strips;
  size_t surface_count, strip_count, panel_count;
  double *inner_x, *outer_x;      /* ends of the bound vortex, a panel each; y and z are the strip's */
  double *x, *y, *z, *ny, *nz;    /* control point and normal, a panel each */
  double span;                    /* the widest, tip to tip */
  Stations stations;
  double *slab, *edges;
  int *strip_counts;
  size_t surface_room, strip_room, slab_room, edge_room, count_room;
} Mesh;

/** Lays out the panels.
 *  coarseness  1, or 2 for half as many strips and panels along the chord
 *  returns  CORE_OK; what stations_gather gives; CORE_SINGULAR for a strip without chord or surfaces one in the other */
CoreStatus mesh_build (Mesh *self, const LatticeSurface surfaces[], size_t count, LatticeOptions options,
                       int coarseness);
/** Frees the memory and leaves it empty, fit for another build. */
void mesh_clear (Mesh *self);
