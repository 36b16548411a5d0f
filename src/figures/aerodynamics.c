#include "figures/aerodynamics.h"

#include <math.h>
#include "figures/aerodynamics-notes.h"
#include "figures/control-figures.h"
#include "figures/notes.h"
#include "figures/surface-figures.h"
#include "figures/tail-volume.h"

static const unsigned kinds = 1u << PIECE_SURFACE | 1u << PIECE_BODY;

void
aerodynamics_clear (Aerodynamics *self)
{
  piece_key_clear (&self->key);
  g_clear_pointer (&self->surfaces, g_free);
  g_clear_pointer (&self->controls, g_free);
  g_clear_pointer (&self->spreads, g_free);
  neutral_point_solution_clear (&self->solution);
  g_clear_pointer (&self->notes, g_ptr_array_unref);
}

const SurfaceFigures *
aerodynamics_reference (const Aerodynamics *self)
{
  return self->reference < 0 ? NULL : &self->surfaces[self->reference];
}

const Spread *
aerodynamics_spread (const Aerodynamics *self, const char *id)
{
  for (size_t i = 0; i < self->spread_count; i++)
    if (g_strcmp0 (self->spreads[i].piece->id, id) == 0)
      return &self->spreads[i];
  return NULL;
}

static void
measure_surfaces (Aerodynamics *self)
{
  for (guint i = 0; i < self->key.pieces->len; i++)
    {
      const Piece *piece = g_ptr_array_index (self->key.pieces, i);

      if (piece->kind != PIECE_SURFACE)
        continue;
      SurfaceFigures *made = &self->surfaces[self->surface_count];

      *made = surface_figures_alone ((const Surface *) piece);
      if (made->surface->role == ROLE_WING && isfinite (made->area_mm2))
        {
          self->wing_area_mm2 += made->area_mm2;
          if (self->reference < 0)
            self->reference = (ptrdiff_t) self->surface_count;
        }
      self->surface_count++;
    }
}

static void
refer_surfaces (Aerodynamics *self)
{
  for (size_t i = 0; i < self->surface_count; i++)
    if (self->reference >= 0 && (ptrdiff_t) i != self->reference && isfinite (self->surfaces[i].area_mm2))
      surface_figures_refer (&self->surfaces[i], aerodynamics_reference (self));
}

/* A body is measured all round, which takes a tenth of all figures: only where it is another than the last time. */
static Spread
spread_again (const Aerodynamics *last, const Body *body)
{
  for (size_t i = 0; i < last->spread_count; i++)
    if (last->spreads[i].piece == &body->piece)      /* the last key still holds it, so the place is no other piece's */
      return last->spreads[i];
  return spread_of_body (body);
}

static void
measure_spreads (Aerodynamics *self, const Aerodynamics *last)
{
  for (size_t i = 0; i < self->surface_count; i++)
    self->spreads[self->spread_count++] = spread_of_surface (&self->surfaces[i]);
  for (guint i = 0; i < self->key.pieces->len; i++)
    {
      const Piece *piece = g_ptr_array_index (self->key.pieces, i);

      if (piece->kind == PIECE_BODY)
        self->spreads[self->spread_count++] = spread_again (last, (const Body *) piece);
    }
}

static void
measure_controls (Aerodynamics *self)
{
  GArray *made = g_array_new (FALSE, FALSE, sizeof (ControlFigures));

  for (size_t i = 0; i < self->surface_count; i++)
    for (size_t j = 0; j < self->surfaces[i].surface->control_count; j++)
      {
        const ControlFigures one = control_figures_of (&self->surfaces[i], &self->surfaces[i].surface->controls[j]);

        g_array_append_val (made, one);
      }
  self->control_count = made->len;
  self->controls = (ControlFigures *) (void *) g_array_free (made, FALSE);
}

static void
stretch (Aerodynamics *self, const Outline *outline)
{
  const Box box = outline_bounds (outline);

  self->nose_x = fmin (self->nose_x, box.min.x);      /* fmin and fmax take the number when the other is NAN */
  self->tail_x = fmax (self->tail_x, box.max.x);
}

static void
find_ends (Aerodynamics *self)
{
  for (guint i = 0; i < self->key.pieces->len; i++)
    {
      const Piece *piece = g_ptr_array_index (self->key.pieces, i);
      const Body *body = (const Body *) piece;

      if (piece->kind == PIECE_BODY && body->outline)
        stretch (self, body->outline);
      if (piece->kind == PIECE_BODY && body->side_outline)
        stretch (self, body->side_outline);
    }
  if (isfinite (self->nose_x))
    return;
  for (size_t i = 0; i < self->surface_count; i++)
    stretch (self, self->surfaces[i].surface->outline);
}

/* One wing, and nothing else that lies flat, of an aeroplane that will have a tail. */
static bool
is_wing_alone (const Aerodynamics *self)
{
  size_t horizontal = 0, wings = 0;

  for (size_t i = 0; i < self->surface_count; i++)
    {
      horizontal += surface_is_horizontal (self->surfaces[i].surface);
      wings += self->surfaces[i].surface->role == ROLE_WING;
    }
  return wings == 1 && horizontal == 1 && !self->tailless;
}

static void
solve (Aerodynamics *self, Lattice *lattice, const Aeroplane *aeroplane)
{
  const NeutralPointCase wanted = { .aeroplane = aeroplane, .surfaces = self->surfaces, .count = self->surface_count,
                                    .reference = aerodynamics_reference (self), .nose_x = self->nose_x };

  self->solution = neutral_point_solve (lattice, &wanted);
  self->wing_alone = is_wing_alone (self);
  self->tail_volume = tail_volume_of (self->surfaces, self->surface_count, aerodynamics_reference (self), self->wing_area_mm2);
  self->tail_volume_sigma = tail_volume_sigma_of (self->surfaces, self->surface_count, aerodynamics_reference (self), self->wing_area_mm2);
  aerodynamics_note (self);
}

void
aerodynamics_update (Aerodynamics *self, Lattice *lattice, const Aeroplane *aeroplane)
{
  const bool tailless = aeroplane_traits (aeroplane).tailless;
  PieceKey key = { .kinds = kinds };

  self->key.kinds = kinds;
  if (self->tailless == tailless && piece_key_matches (&self->key, aeroplane))
    return;
  Aerodynamics last = *self;
  piece_key_take (&key, aeroplane);
  *self = (Aerodynamics) { .key = key, .tailless = tailless, .reference = -1, .nose_x = NAN, .tail_x = NAN,
                           .surfaces = g_new0 (SurfaceFigures, key.pieces->len), .spreads = g_new0 (Spread, key.pieces->len),
                           .notes = notes_new () };
  measure_surfaces (self);
  refer_surfaces (self);
  measure_spreads (self, &last);
  aerodynamics_clear (&last);
  measure_controls (self);
  find_ends (self);
  solve (self, lattice, aeroplane);
}
