#include "document/changes-private.h"
#include <math.h>
#include "document/kept-follow.h"

Aeroplane *
changed_to (const Aeroplane *self, const Piece *old, Piece *takes)
{
  if (piece_equal (old, takes))
    {
      piece_unref (takes);
      return aeroplane_ref (self);
    }
  return aeroplane_with_replaced (self, old, takes);
}

Aeroplane *
change_surface_outline (const Aeroplane *self, const char *id, Outline *takes)
{
  const Surface *old = aeroplane_surface_by_id (self, id);
  Surface *next;

  if (!old || !takes)
    {
      outline_unref (takes);
      return NULL;
    }
  next = (Surface *) piece_dup (&old->piece);
  next->provisional = old->provisional && outline_equal (old->outline, takes);
  if (!outline_equal (old->outline, takes))
    next->passed = (PassedClick) { .by = 0 };
  kept_follow_outline (&next->piece, INNER_NODE, old->outline, takes);
  outline_unref (next->outline);
  next->outline = takes;
  return changed_to (self, &old->piece, &next->piece);
}

static Aeroplane *
change_body (const Aeroplane *self, const char *id, InnerKind node, Outline *takes)
{
  const Body *old = aeroplane_body_by_id (self, id);
  Outline **place;
  Body *next;

  if (!old || !takes)
    {
      outline_unref (takes);
      return NULL;
    }
  next = (Body *) piece_dup (&old->piece);
  place = node == INNER_NODE ? &next->outline : &next->side_outline;
  if (!outline_equal (*place, takes))
    *(node == INNER_NODE ? &next->passed : &next->side_passed) = (PassedClick) { .by = 0 };
  kept_follow_outline (&next->piece, node, *place, takes);
  outline_unref (*place);
  *place = takes;
  return changed_to (self, &old->piece, &next->piece);
}

Aeroplane *
change_body_outline (const Aeroplane *self, const char *id, Outline *takes)
{
  return change_body (self, id, INNER_NODE, takes);
}

Aeroplane *
change_body_side (const Aeroplane *self, const char *id, Outline *takes)
{
  return change_body (self, id, INNER_SIDE_NODE, takes);
}

/* A fresh copy whose outline is mapped; NULL where geometry refuses. */
static Surface *
surface_mapped (const Surface *old, Point scale, Point shift)
{
  Outline *outline = NULL;
  Surface *next;

  if (outline_mapped (old->outline, scale, shift, &outline) != CORE_OK)
    return NULL;
  next = (Surface *) piece_dup (&old->piece);
  outline_unref (next->outline);
  next->outline = outline;
  if (next->passed.by > 0)
    next->passed.at = (Point) { scale.x * next->passed.at.x + shift.x, scale.y * next->passed.at.y + shift.y };
  return next;
}

Aeroplane *
change_parts_moved_with (Aeroplane *takes, const char *id, double dx, double dz)
{
  Aeroplane *now = takes;

  for (size_t i = 0; now && i < aeroplane_count (now, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (now, i);
      Aeroplane *last = now;
      Part *next;

      if (!part->of || g_strcmp0 (part->of, id) != 0)
        continue;
      next = (Part *) piece_dup (&part->piece);
      next->x += dx;
      next->z += dz;
      next->rail_from += part->has_rail ? dx : 0;
      next->rail_to += part->has_rail ? dx : 0;
      now = changed_to (last, &part->piece, &next->piece);
      aeroplane_unref (last);
    }
  return leads_moved_with (structures_moved_with (now, id, dx, dz), id, dx);
}

Aeroplane *
change_surface_moved (const Aeroplane *self, const char *id, double dx, double dz)
{
  const Surface *old = aeroplane_surface_by_id (self, id);
  Surface *next = old && isfinite (dx) && isfinite (dz) ? surface_mapped (old, (Point) { 1, 1 }, (Point) { dx, 0 }) : NULL;

  if (!next)
    return NULL;
  next->z += dz;
  for (size_t i = 0; i < next->control_count; i++)
    {
      next->controls[i].hinge_inner_x += dx;
      next->controls[i].hinge_outer_x += dx;
    }
  return change_parts_moved_with (changed_to (self, &old->piece, &next->piece), id, dx, dz);
}

static void
surface_map_stations (Surface *surface, double scale, double shift)
{
  for (size_t i = 0; i < surface->rib_count; i++)
    surface->ribs[i].place = scale * surface->ribs[i].place + shift;
  for (size_t i = 0; i < surface->break_count; i++)
    surface->breaks[i].from = scale * surface->breaks[i].from + shift;
  for (size_t i = 0; i < surface->control_count; i++)
    {
      surface->controls[i].inner = scale * surface->controls[i].inner + shift;
      surface->controls[i].outer = scale * surface->controls[i].outer + shift;
    }
}

/* Where a surface grows from across: a wing from the centre line, a fin from its foot, which stays. */
static double
surface_foot (const Surface *self)
{
  return self->role == ROLE_FIN ? outline_bounds (self->outline).min.y : 0;
}

Aeroplane *
change_surface_scaled (const Aeroplane *self, const char *id, double scale, double about_x)
{
  const Surface *old = aeroplane_surface_by_id (self, id);
  const double foot = old ? surface_foot (old) : 0;
  const Point shift = { about_x - scale * about_x, foot - scale * foot };
  Surface *next;

  if (!old || !isfinite (scale) || scale <= 0 || !isfinite (about_x))
    return NULL;
  if (fabs (scale - 1) < 1e-12)      /* rounding: it is as large already */
    return aeroplane_ref (self);
  next = surface_mapped (old, (Point) { scale, scale }, shift);
  if (!next)
    return NULL;
  surface_map_stations (next, scale, shift.y);
  for (size_t i = 0; i < next->control_count; i++)
    {
      next->controls[i].hinge_inner_x = scale * next->controls[i].hinge_inner_x + shift.x;
      next->controls[i].hinge_outer_x = scale * next->controls[i].hinge_outer_x + shift.x;
    }
  return changed_to (self, &old->piece, &next->piece);
}

Aeroplane *
change_surface_span (const Aeroplane *self, const char *id, double span)
{
  const Surface *old = aeroplane_surface_by_id (self, id);
  Box box;
  double foot, height, scale;
  Surface *next;

  if (!old || !isfinite (span))
    return NULL;
  box = outline_bounds (old->outline);
  foot = surface_foot (old);
  height = old->role == ROLE_FIN ? span : span / 2;
  scale = height / (box.max.y - foot);
  if (!isfinite (scale) || scale <= 0)
    return NULL;
  if (fabs (scale - 1) < 1e-12)      /* rounding: it has that span */
    return aeroplane_ref (self);
  next = surface_mapped (old, (Point) { 1, scale }, (Point) { 0, foot - scale * foot });
  if (!next)
    return NULL;
  surface_map_stations (next, scale, foot - scale * foot);
  return changed_to (self, &old->piece, &next->piece);
}

static Part *
part_copy (const Aeroplane *self, const char *id, const Part **old)
{
  *old = aeroplane_part_by_id (self, id);
  return *old ? (Part *) piece_dup (&(*old)->piece) : NULL;
}

Aeroplane *
change_part_place (const Aeroplane *self, const char *id, double x, double y, double z)
{
  const Part *old;
  Part *next = isfinite (x) && isfinite (y) && isfinite (z) ? part_copy (self, id, &old) : NULL;

  if (!next)
    return NULL;
  next->x = x;
  next->y = y;
  next->z = z;
  return changed_to (self, &old->piece, &next->piece);
}

Aeroplane *
change_part_rail (const Aeroplane *self, const char *id, double from, double to)
{
  const Part *old;
  Part *next = isfinite (from) && isfinite (to) ? part_copy (self, id, &old) : NULL;

  if (!next)
    return NULL;
  next->has_rail = true;
  next->rail_from = fmin (from, to);
  next->rail_to = fmax (from, to);
  return changed_to (self, &old->piece, &next->piece);
}

Aeroplane *
change_part_aboard (const Aeroplane *self, const char *id, bool aboard)
{
  const Part *old;
  Part *next = part_copy (self, id, &old);

  if (!next)
    return NULL;
  next->aboard = aboard;
  return changed_to (self, &old->piece, &next->piece);
}

Aeroplane *
change_part_turned (const Aeroplane *self, const char *id, double degrees)
{
  const Part *old;
  Part *next = isfinite (degrees) ? part_copy (self, id, &old) : NULL;

  if (!next)
    return NULL;
  next->turn = remainder (next->turn + degrees, 360);
  next->turn = next->turn <= -180 ? next->turn + 360 : next->turn;
  return changed_to (self, &old->piece, &next->piece);
}

Aeroplane *
change_mark_station (const Aeroplane *self, size_t mark, double station)
{
  const size_t count = aeroplane_count (self, PIECE_MARK);
  const Mark *old;
  Mark *next;

  if (!isfinite (station) || (mark >= count && count > 0))
    return NULL;
  if (count == 0)
    return aeroplane_with_added (self, &mark_new (station)->piece);
  old = aeroplane_mark (self, mark);
  next = (Mark *) piece_dup (&old->piece);
  next->station = station;
  return changed_to (self, &old->piece, &next->piece);
}
