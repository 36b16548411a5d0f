#include "aero/lattice-private.h"

#include <math.h>
#include <string.h>
#include "aero/influence.h"
#include "aero/linear.h"
#include "aero/wake.h"

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

  if (!stations_reserve (&self->slab, &self->slab_room, matrix + rolling + block * block + 8 * n, sizeof *self->slab)
      || !stations_reserve (&self->pivots, &self->pivot_room, n, sizeof *self->pivots)
      || !stations_reserve (&self->fine.surfaces, &self->fine.room, self->mesh.surface_count, sizeof (Solved))
      || !stations_reserve (&self->coarse.surfaces, &self->coarse.room, self->mesh.surface_count, sizeof (Solved)))
    return CORE_NO_MEMORY;
  self->company = self->slab;
  self->pitching = self->company + n;
  self->alone = self->pitching + n;
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

/* The flow through every panel while the nose rises about x = 0: what lies aft goes down. */
static void
set_pitching (const Mesh *mesh, double right[])
{
  for (size_t i = 0; i < mesh->panel_count; i++)
    right[i] = -mesh->nz[i] * mesh->x[i];
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
  set_pitching (mesh, self->pitching);
  if ((status = linear_solve ((int) mesh->panel_count, wants & LATTICE_PITCH ? 2 : 1, self->matrix, self->pivots, self->company)))
    return status;
  if (!several)
    memcpy (self->alone, self->company, mesh->panel_count * sizeof *self->alone);
  if (!(wants & LATTICE_ROLL))
    return CORE_OK;
  set_rolling (mesh, reference_span, self->roll);
  return linear_solve ((int) mesh->panel_count, 1, self->rolling, self->pivots, self->roll);
}

/* Joukowski's law on the bound vortices of both sides; each acts at its middle. */
Load
lattice_load_of_surface (const Mesh *mesh, const MeshSurface *surface, const double circulation[])
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

/* Rolling moment of the lift and the side force on both sides of one surface, over dynamic pressure. */
static double
roll_moment (const Lattice *self, const MeshSurface *surface)
{
  const Mesh *mesh = &self->mesh;
  const double axis_z = mesh->strips[0].inner_z;
  double sum = 0;

  for (size_t s = surface->strip; s < surface->strip + surface->strip_count; s++)
    {
      const MeshStrip *strip = &mesh->strips[s];
      const double y = (strip->inner_y + strip->outer_y) / 2, z = (strip->inner_z + strip->outer_z) / 2 - axis_z;
      const double arm = y * (strip->outer_y - strip->inner_y) + z * (strip->outer_z - strip->inner_z);

      for (size_t i = strip->panel; i < strip->panel + strip->panel_count; i++)
        sum -= 16 * M_PI * self->roll[i] * arm;
    }
  return sum;
}

/* Solves with the panels that are laid out. */
CoreStatus
lattice_solve_panels (Lattice *self, const Question *question, Solution *solution)
{
  const Mesh *mesh = &self->mesh;
  CoreStatus status;

  if ((status = make_room (self, question->wants))
      || (status = solve_systems (self, question->wants, question->reference_span)))
    return status;
  for (size_t i = 0; i < mesh->surface_count; i++)
    {
      solution->surfaces[i].company = lattice_load_of_surface (mesh, &mesh->surfaces[i], self->company);
      solution->surfaces[i].alone = lattice_load_of_surface (mesh, &mesh->surfaces[i], self->alone);
      solution->surfaces[i].pitching = lattice_load_of_surface (mesh, &mesh->surfaces[i], self->pitching);
      solution->surfaces[i].roll_moment = question->wants & LATTICE_ROLL ? roll_moment (self, &mesh->surfaces[i]) : NAN;
    }
  solution->span_efficiency = question->wants & LATTICE_FAR_WAKE ? wake_span_efficiency (mesh, self->alone) : NAN;
  return CORE_OK;
}
