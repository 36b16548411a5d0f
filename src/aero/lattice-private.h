#pragma once
#include "aero/lattice.h"
#include "aero/mesh.h"

/** What the lattice's two files share: memory, a question, and what one set of panels says to it. */

/* Lift over dynamic pressure, and its moment about x = 0. */
typedef struct { double lift, moment; } Load;

/* One surface at one radian: in company, and by itself; and in company while the aeroplane pitches about x = 0 at one radian
 * in the time that the stream takes for one unit of length. roll_moment is what resists rolling, of its own; NAN unless asked for. */
typedef struct { Load company, alone, pitching; double roll_moment; } Solved;

/* What one set of panels says of the whole. */
typedef struct {
  Solved *surfaces;
  size_t room;
  double span_efficiency;
} Solution;

/* What lattice_solve is asked. */
typedef struct {
  const LatticeSurface *surfaces;
  size_t count;
  LatticeOptions options;
  unsigned wants;
  double reference_area, reference_span;
} Question;

struct Lattice {
  Mesh mesh;
  Solution fine, coarse;
  double *matrix;               /* of all surfaces; then its factors */
  double *rolling;              /* the antisymmetric one */
  double *block;                /* of one surface by itself */
  double *inverse;
  double *company, *pitching, *alone, *roll;   /* circulations over 4π V, a panel each; pitching follows company */
  double *slab;
  int *pivots;
  size_t slab_room, pivot_room;
  bool is_solved;
};

/** Solves with the panels that are laid out in self->mesh. CORE_OK; CORE_SINGULAR; CORE_NO_MEMORY. */
CoreStatus lattice_solve_panels (Lattice *self, const Question *question, Solution *solution);
/** Lift and its moment about x = 0 of one surface with these circulations over 4π V for one radian, a panel each, both sides: over
 *  dynamic pressure, so an area and an area times a length, per radian. */
Load lattice_load_of_surface (const Mesh *mesh, const MeshSurface *surface, const double circulation[]);
