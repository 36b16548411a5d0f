#include "aero/lattice.h"

#include <assert.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>
#include "aero/influence.h"
#include "aero/linear.h"
#include "aero/mesh.h"
#include "aero/wake.h"

/* Lift over dynamic pressure, and its moment about x = 0. */
typedef struct { double lift, moment; } Load;

/* One surface at one radian: in company, and by itself. */
typedef struct { Load company, alone; } Solved;

/* What one set of panels says of the whole. */
typedef struct {
  Solved *surfaces;
  size_t room;
  double roll_moment, span_efficiency;
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
  double *company, *alone, *roll;   /* circulations over 4π V, a panel each */
  double *slab;
  int *pivots;
  size_t slab_room, pivot_room;
  bool is_solved;
};

/* Up to the first of these sweeps of the quarter-chord line at the centre the panels' own answer stands, from the second
 * on it is extrapolated from two sets of panels, and between them gradually. */
static const double plain_sweep = 15 * M_PI / 180, extrapolated_sweep = 25 * M_PI / 180;

LatticeOptions
lattice_default_options (void)
{
  return (LatticeOptions) { .spanwise = 20, .chordwise = 6, .spacing = LATTICE_COSINE };
}

Lattice *
lattice_new (void)
{
  linear_use_one_thread ();
  return calloc (1, sizeof (Lattice));
}

void
lattice_free (Lattice *self)
{
  if (!self)
    return;
  mesh_clear (&self->mesh);
  free (self->fine.surfaces);
  free (self->coarse.surfaces);
  free (self->slab);
  free (self->pivots);
  free (self);
}

static size_t
greatest_block (const Mesh *mesh)
{
  size_t greatest = 0;

  for (size_t i = 0; i < mesh->surface_count; i++)
    if (mesh->surfaces[i].panel_count > greatest)
      greatest = mesh->surfaces[i].panel_count;
  return greatest;
}

static CoreStatus
make_room (Lattice *self, unsigned wants)
{
  const size_t n = self->mesh.panel_count, matrix = n * n, block = greatest_block (&self->mesh);
  const size_t rolling = wants & LATTICE_ROLL ? matrix : 0;

  if (!stations_reserve (&self->slab, &self->slab_room, matrix + rolling + block * block + 7 * n, sizeof *self->slab)
      || !stations_reserve (&self->pivots, &self->pivot_room, n, sizeof *self->pivots)
      || !stations_reserve (&self->fine.surfaces, &self->fine.room, self->mesh.surface_count, sizeof (Solved))
      || !stations_reserve (&self->coarse.surfaces, &self->coarse.room, self->mesh.surface_count, sizeof (Solved)))
    return CORE_NO_MEMORY;
  self->company = self->slab;
  self->alone = self->company + n;
  self->roll = self->alone + n;
  self->inverse = self->roll + n;
  self->matrix = self->inverse + 4 * n;
  self->block = self->matrix + matrix;
  self->rolling = self->block + block * block;
  return CORE_OK;
}

/* The stream's flow through every panel at one radian, to be met by the vortices'. */
static void
set_incidence (const Mesh *mesh, double right[])
{
  for (size_t i = 0; i < mesh->panel_count; i++)
    right[i] = -mesh->nz[i];
}

/* The flow through every panel at p b / 2V = 1, starboard wing going down about an axis at the first surface's height. */
static void
set_rolling (const Mesh *mesh, double reference_span, double right[])
{
  const double axis_z = mesh->strips[0].inner_z;

  for (size_t i = 0; i < mesh->panel_count; i++)
    right[i] = -(mesh->y[i] * mesh->nz[i] - (mesh->z[i] - axis_z) * mesh->ny[i]) * 2 / reference_span;
}

/* The surface's block of the matrix, before anything is eliminated, solved by itself. */
static CoreStatus
solve_alone (Lattice *self, const MeshSurface *surface)
{
  const size_t n = self->mesh.panel_count, own = surface->panel_count;

  for (size_t j = 0; j < own; j++)
    memcpy (self->block + j * own, self->matrix + (surface->panel + j) * n + surface->panel, own * sizeof *self->block);
  return linear_solve ((int) own, 1, self->block, self->pivots, self->alone + surface->panel);
}

/* A single surface is alone in company. */
static CoreStatus
solve_systems (Lattice *self, unsigned wants, double reference_span)
{
  const Mesh *mesh = &self->mesh;
  const bool several = mesh->surface_count > 1;
  const size_t alone_count = wants & LATTICE_ALONE ? mesh->surface_count : wants & LATTICE_FAR_WAKE ? 1 : 0;
  CoreStatus status;

  if (wants & LATTICE_ROLL)
    influence_both (mesh, self->inverse, self->matrix, self->rolling);
  else
    influence_symmetric (mesh, self->inverse, self->matrix);
  set_incidence (mesh, self->alone);
  for (size_t i = 0; i < alone_count && several; i++)
    if ((status = solve_alone (self, &mesh->surfaces[i])))
      return status;
  set_incidence (mesh, self->company);
  if ((status = linear_solve ((int) mesh->panel_count, 1, self->matrix, self->pivots, self->company)))
    return status;
  if (!several)
    memcpy (self->alone, self->company, mesh->panel_count * sizeof *self->alone);
  if (!(wants & LATTICE_ROLL))
    return CORE_OK;
  set_rolling (mesh, reference_span, self->roll);
  return linear_solve ((int) mesh->panel_count, 1, self->rolling, self->pivots, self->roll);
}

/* Joukowski's law on the bound vortices of both sides; each acts at its middle. */
static Load
load_of_surface (const Mesh *mesh, const MeshSurface *surface, const double circulation[])
{
  Load sum = { 0 };

  for (size_t s = surface->strip; s < surface->strip + surface->strip_count; s++)
    {
      const MeshStrip *strip = &mesh->strips[s];

      for (size_t i = strip->panel; i < strip->panel + strip->panel_count; i++)
        {
          const double lift = 16 * M_PI * circulation[i] * (strip->outer_y - strip->inner_y);

          sum.lift += lift;
          sum.moment += lift * (mesh->inner_x[i] + mesh->outer_x[i]) / 2;
        }
    }
  return sum;
}

/* Rolling moment of the lift and the side force on both sides. */
static double
roll_moment (const Lattice *self, const LatticeSurface surfaces[])
{
  const Mesh *mesh = &self->mesh;
  const double axis_z = mesh->strips[0].inner_z;
  double sum = 0;

  for (size_t s = 0; s < mesh->strip_count; s++)
    {
      const MeshStrip *strip = &mesh->strips[s];
      const double y = (strip->inner_y + strip->outer_y) / 2, z = (strip->inner_z + strip->outer_z) / 2 - axis_z;
      const double arm = y * (strip->outer_y - strip->inner_y) + z * (strip->outer_z - strip->inner_z);

      for (size_t i = strip->panel; i < strip->panel + strip->panel_count; i++)
        sum -= 16 * M_PI * self->roll[i] * arm * surfaces[strip->surface].pressure_ratio;
    }
  return sum;
}

/* Solves with the panels that are laid out. */
static CoreStatus
solve_panels (Lattice *self, const Question *question, Solution *solution)
{
  const Mesh *mesh = &self->mesh;
  CoreStatus status;

  if ((status = make_room (self, question->wants))
      || (status = solve_systems (self, question->wants, question->reference_span)))
    return status;
  for (size_t i = 0; i < mesh->surface_count; i++)
    {
      solution->surfaces[i].company = load_of_surface (mesh, &mesh->surfaces[i], self->company);
      solution->surfaces[i].alone = load_of_surface (mesh, &mesh->surfaces[i], self->alone);
    }
  solution->roll_moment = question->wants & LATTICE_ROLL ? roll_moment (self, question->surfaces) : NAN;
  solution->span_efficiency = question->wants & LATTICE_FAR_WAKE ? wake_span_efficiency (mesh, self->alone) : NAN;
  return CORE_OK;
}

static double
quarter_chord_x (const MeshStrip *strip)
{
  return 0.75 * strip->leading_x + 0.25 * strip->trailing_x;
}

/* How much of the extrapolation the kink of a surface's quarter-chord line at the centre asks for, 0 to 1, without a
 * step. A curved wing has none there, however far its tips trail. */
static double
extrapolated_part (const Mesh *mesh, const MeshSurface *surface, LatticeSpacing spacing)
{
  const MeshStrip *root = &mesh->strips[surface->strip], *next = root + 1;
  double sweep, part;

  if (spacing == LATTICE_EVEN || surface->strip_count < 2)
    return 0;
  sweep = fabs (atan2 (quarter_chord_x (next) - quarter_chord_x (root), next->control_y - root->control_y));
  part = fmin (fmax ((sweep - plain_sweep) / (extrapolated_sweep - plain_sweep), 0), 1);
  return part * part * (3 - 2 * part);
}

static void
load_extrapolate (Load *fine, const Load *coarse, double part)
{
  fine->lift += part * (fine->lift - coarse->lift);
  fine->moment += part * (fine->moment - coarse->moment);
}

/* The kink of a swept wing at its centre line leaves an error in proportion to the panels' size; half as many strips and
 * panels tell twice that error. In company the first surface's kink is felt by all; by itself a further surface has its own
 * or none. */
static void
solution_extrapolate (const Mesh *mesh, LatticeSpacing spacing, Solution *fine, const Solution *coarse, double part)
{
  for (size_t i = 0; i < mesh->surface_count; i++)
    {
      const double own = i ? part * extrapolated_part (mesh, &mesh->surfaces[i], spacing) : part;

      load_extrapolate (&fine->surfaces[i].company, &coarse->surfaces[i].company, part);
      load_extrapolate (&fine->surfaces[i].alone, &coarse->surfaces[i].alone, own);
    }
  fine->roll_moment += part * (fine->roll_moment - coarse->roll_moment);
  fine->span_efficiency += part * (fine->span_efficiency - coarse->span_efficiency);
}

/* The fine panels last, for they are what lattice_upwash looks at. */
static CoreStatus
solve_question (Lattice *self, const Question *question)
{
  const LatticeSurface *surfaces = question->surfaces;
  CoreStatus status = mesh_build (&self->mesh, surfaces, question->count, question->options, 1);
  double part;

  if (status)
    return status;
  if ((part = extrapolated_part (&self->mesh, self->mesh.surfaces, question->options.spacing)) > 0
      && ((status = mesh_build (&self->mesh, surfaces, question->count, question->options, 2))
          || (status = solve_panels (self, question, &self->coarse))
          || (status = mesh_build (&self->mesh, surfaces, question->count, question->options, 1))))
    return status;
  if ((status = solve_panels (self, question, &self->fine)))
    return status;
  if (part > 0)
    solution_extrapolate (&self->mesh, question->options.spacing, &self->fine, &self->coarse, part);
  return CORE_OK;
}

static CoreStatus
give_result (const Question *question, const Solution *solution, LatticeResult *result)
{
  Load sum = { 0 };

  for (size_t i = 0; i < question->count; i++)
    {
      sum.lift += solution->surfaces[i].company.lift * question->surfaces[i].pressure_ratio;
      sum.moment += solution->surfaces[i].company.moment * question->surfaces[i].pressure_ratio;
    }
  if (!(sum.lift > 0) || !isfinite (sum.lift) || !isfinite (sum.moment))
    return CORE_SINGULAR;
  *result = (LatticeResult) { .lift_slope = sum.lift / question->reference_area, .neutral_point_x = sum.moment / sum.lift,
                              .roll_damping = solution->roll_moment / (question->reference_area * question->reference_span),
                              .span_efficiency = solution->span_efficiency };
  return CORE_OK;
}

static LatticeShare
share_of (const Question *question, const Solved *solved, size_t i, double own_area)
{
  LatticeShare share = { .lift_slope = solved->company.lift * question->surfaces[i].pressure_ratio / question->reference_area,
                         .centre_x = solved->company.moment / solved->company.lift,
                         .alone_lift_slope = NAN, .alone_centre_x = NAN, .downwash_gradient = NAN };

  if (question->wants & LATTICE_ALONE)
    {
      share.alone_lift_slope = solved->alone.lift / own_area;
      share.alone_centre_x = solved->alone.moment / solved->alone.lift;
      share.downwash_gradient = 1 - solved->company.lift / solved->alone.lift;
    }
  return share;
}

CoreStatus
lattice_solve (Lattice *self, const LatticeSurface surfaces[], size_t count, LatticeOptions options, unsigned wants,
               double reference_area, double reference_span, LatticeShare shares[], LatticeResult *result)
{
  const Question question = { .surfaces = surfaces, .count = count, .options = options, .wants = wants,
                              .reference_area = reference_area, .reference_span = reference_span };
  CoreStatus status;

  assert (count > 0);
  if (!(reference_area > 0 && reference_span > 0))
    return CORE_OUT_OF_RANGE;
  self->is_solved = false;
  if ((status = solve_question (self, &question)) || (status = give_result (&question, &self->fine, result)))
    return status;
  for (size_t i = 0; i < count; i++)
    shares[i] = share_of (&question, &self->fine.surfaces[i], i, self->mesh.surfaces[i].area);
  self->is_solved = true;
  return CORE_OK;
}

void
lattice_upwash (const Lattice *self, const double x[], size_t count, double z, double upwash[])
{
  assert (self->is_solved);
  for (size_t i = 0; i < count; i++)
    upwash[i] = 0;
  influence_upwash (&self->mesh, self->company, x, count, z, upwash);
}
