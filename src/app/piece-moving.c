#include "app/piece-moving.h"
#include "document/changes.h"

static void
piece_moving_shift (Outline **outline, double dx, double dy)
{
  Outline *made = NULL;

  if (*outline == NULL || outline_mapped (*outline, (Point) { 1, 1 }, (Point) { dx, dy }, &made) != CORE_OK)
    return;
  outline_unref (*outline);
  *outline = made;
}

Aeroplane *
piece_moving_body (const Aeroplane *aeroplane, const char *id, double dx, double dz)
{
  const Body *old = aeroplane_body_by_id (aeroplane, id);
  Body *body;

  if (old == NULL)
    return NULL;
  body = (Body *) piece_dup (&old->piece);
  piece_moving_shift (&body->outline, dx, 0);
  piece_moving_shift (&body->side_outline, dx, dz);
  passed_click_move (&body->passed, dx, 0);
  passed_click_move (&body->side_passed, dx, dz);
  for (size_t i = 0; i < body->former_count; i++)
    body->formers[i].place += dx;
  return change_parts_moved_with (aeroplane_with_replaced (aeroplane, &old->piece, &body->piece), id, dx, dz);
}

static Aeroplane *
piece_moving_part (const Aeroplane *aeroplane, const Part *part, const double by[3], bool loose)
{
  const bool railed = part->has_rail && !loose;
  double x = part->x + by[0];

  /* A part that a hand has taken off its rail earlier comes back to it. */
  if (railed)
    x = fmin (fmax (x, part->rail_from), part->rail_to);
  return change_part_place (aeroplane, part->piece.id, x, railed ? part->y : part->y + by[1], part->z + by[2]);
}

Aeroplane *
piece_moving_moved (const Aeroplane *aeroplane, const char *id, const double by[3], bool loose)
{
  const Part *part = aeroplane_part_by_id (aeroplane, id);

  if (part != NULL)
    return piece_moving_part (aeroplane, part, by, loose);
  if (aeroplane_surface_by_id (aeroplane, id) != NULL)
    return change_surface_moved (aeroplane, id, by[0], by[2]);
  return piece_moving_body (aeroplane, id, by[0], by[2]);
}

bool
piece_moving_can (const Aeroplane *aeroplane, const char *id)
{
  return aeroplane_part_by_id (aeroplane, id) != NULL || aeroplane_surface_by_id (aeroplane, id) != NULL
         || aeroplane_body_by_id (aeroplane, id) != NULL;
}
