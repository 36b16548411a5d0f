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
typedef struct { Load company, alone; double area; } Solved;

struct Lattice {
  Mesh mesh;
  Solved *solved;               /* one a surface */
  double *matrix;               /* of all surfaces; then its factors */
  double *rolling;              /* the antisymmetric one */
  double *block;                /* of one surface by itself */
  double *inverse;
  double *company, *alone, *roll;   /* circulations over 4π V, a panel each */
  double *slab;
  int *pivots;
  size_t solved_room, slab_room, pivot_room;
  bool is_solved;
};

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
  free (self->solved);
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
      || !stations_reserve (&self->solved, &self->solved_room, self->mesh.surface_count, sizeof *self->solved))
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

static CoreStatus
sum_loads (Lattice *self, const LatticeSurface surfaces[], unsigned wants)
{
  const Mesh *mesh = &self->mesh;

  for (size_t i = 0; i < mesh->surface_count; i++)
    {
      Solved *solved = &self->solved[i];
      AreaMoments moments;
      CoreStatus status;

      solved->company = load_of_surface (mesh, &mesh->surfaces[i], self->company);
      if (!(wants & LATTICE_ALONE))
        continue;
      if ((status = planform_moments (surfaces[i].outline, surfaces[i].sides, &moments)))
        return status;
      solved->alone = load_of_surface (mesh, &mesh->surfaces[i], self->alone);
      solved->area = moments.area;
    }
  return CORE_OK;
}

static LatticeShare
share_of (const Solved *solved, double pressure_ratio, double reference_area, unsigned wants)
{
  LatticeShare share = { .lift_slope = solved->company.lift * pressure_ratio / reference_area,
                         .centre_x = solved->company.moment / solved->company.lift,
                         .alone_lift_slope = NAN, .alone_centre_x = NAN, .downwash_gradient = NAN };

  if (wants & LATTICE_ALONE)
    {
      share.alone_lift_slope = solved->alone.lift / solved->area;
      share.alone_centre_x = solved->alone.moment / solved->alone.lift;
      share.downwash_gradient = 1 - solved->company.lift / solved->alone.lift;
    }
  return share;
}

/* Rolling moment of the lift and the side force on both sides, over the reference area and span. */
static double
roll_damping (const Lattice *self, const LatticeSurface surfaces[], double reference_area, double reference_span)
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
  return sum / (reference_area * reference_span);
}

static CoreStatus
give_results (const Lattice *self, const LatticeSurface surfaces[], double reference_area, LatticeResult *result)
{
  Load sum = { 0 };

  for (size_t i = 0; i < self->mesh.surface_count; i++)
    {
      sum.lift += self->solved[i].company.lift * surfaces[i].pressure_ratio;
      sum.moment += self->solved[i].company.moment * surfaces[i].pressure_ratio;
    }
  if (!(sum.lift > 0) || !isfinite (sum.lift) || !isfinite (sum.moment))
    return CORE_SINGULAR;
  *result = (LatticeResult) { .lift_slope = sum.lift / reference_area, .neutral_point_x = sum.moment / sum.lift,
                              .roll_damping = NAN, .span_efficiency = NAN };
  return CORE_OK;
}

CoreStatus
lattice_solve (Lattice *self, const LatticeSurface surfaces[], size_t count, LatticeOptions options, unsigned wants,
               double reference_area, double reference_span, LatticeShare shares[], LatticeResult *result)
{
  LatticeResult made;
  CoreStatus status;

  assert (count > 0);
  if (!(reference_area > 0 && reference_span > 0) || options.spanwise < 1 || options.chordwise < 1)
    return CORE_OUT_OF_RANGE;
  self->is_solved = false;
  if ((status = mesh_build (&self->mesh, surfaces, count, options)) || (status = make_room (self, wants))
      || (status = solve_systems (self, wants, reference_span)) || (status = sum_loads (self, surfaces, wants))
      || (status = give_results (self, surfaces, reference_area, &made)))
    return status;
  if (wants & LATTICE_ROLL)
    made.roll_damping = roll_damping (self, surfaces, reference_area, reference_span);
  if (wants & LATTICE_FAR_WAKE)
    made.span_efficiency = wake_span_efficiency (&self->mesh, self->alone);
  for (size_t i = 0; i < count; i++)
    shares[i] = share_of (&self->solved[i], surfaces[i].pressure_ratio, reference_area, wants);
  *result = made;
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
