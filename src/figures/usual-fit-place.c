#include "figures/usual-fit-place.h"

#include <math.h>
#include "document/part-box.h"
#include "figures/surface-figures.h"
#include "figures/wing-through.h"

static const double FREE_NOSE = 0.9;       /* of the root chord, ahead of the wing, where no body is drawn; common practice */
static const double FREE_RAIL = 30;

bool
fit_ground_begin (FitGround *self, const Aeroplane *aeroplane)
{
  const Surface *wing = aeroplane_reference_wing (aeroplane);
  const Body *body = aeroplane_count (aeroplane, PIECE_BODY) > 0 ? aeroplane_body (aeroplane, 0) : NULL;
  Planform planform;

  if (!wing || planform_measure (wing->outline, surface_sides (wing), &planform) != CORE_OK)
    return false;
  const Point first = outline_node (wing->outline, 0), last = outline_node (wing->outline, outline_node_count (wing->outline) - 1);
  *self = (FitGround) { .leading = fmin (first.x, last.x), .chord = fabs (last.x - first.x) };
  if (!(self->chord > 0))
    self->chord = planform.mean_chord;
  self->body = body ? body_profile_new (body) : NULL;
  if (self->body && !body_profile_ends (self->body, &self->nose, &self->tail))
    g_clear_pointer (&self->body, body_profile_free);
  if (!self->body)
    {
      self->nose = round (self->leading - FREE_NOSE * self->chord);
      self->tail = INFINITY;
    }
  self->made = aeroplane_ref (aeroplane);
  return true;
}

void
fit_ground_end (FitGround *self)
{
  body_profile_free (self->body);
  self->body = NULL;
}

static bool
is_free (const FitGround *self, const Part *part)
{
  const Point own = part_extent (part);

  for (size_t i = 0; i < aeroplane_count (self->made, PIECE_PART); i++)
    {
      const Part *other = aeroplane_part (self->made, i);
      const Point its = part_extent (other);

      if (other != part && part_stands_clear (other) && g_strcmp0 (other->piece.id, part->piece.id) != 0
          && fabs (other->x - part->x) < (its.x + own.x) / 2 && fabs (other->y - part->y) < (its.y + own.y) / 2)
        return false;
    }
  return true;
}

/* Where more of it is left, above the wing or beneath. */
static BodyClear
roomier_beside (BodyClear clear, const WingThrough *through)
{
  const BodyClear above = body_clear_above (clear, through), beneath = body_clear_beneath (clear, through);

  return above.top - above.bottom < beneath.top - beneath.bottom ? beneath : above;
}

/* Whether the body holds it there, clear of a wing through it; its height is then brought between floor and top. */
static bool
is_inside (const FitGround *self, Part *part)
{
  const Point own = part_extent (part);
  BodyClear clear;
  WingThrough through;

  if (!self->body)
    return part->x - own.x / 2 >= self->nose;
  clear = body_profile_clear (self->body, part->x - own.x / 2, part->x + own.x / 2);
  if (!isnan (clear.half_width) && fabs (part->y) + own.y / 2 > clear.half_width)
    return false;
  if (isnan (clear.bottom))
    return true;
  if (wings_through (self->made, part, (Point) { part->x, part->y }, own.x, own.y, &through))
    clear = roomier_beside (clear, &through);
  if (clear.top - clear.bottom < part->height)
    return false;
  part->z = fmin (fmax (part->z, clear.bottom + part->height / 2), clear.top - part->height / 2);
  return true;
}

static bool
has_room_at (const FitGround *self, Part *part, double x, const double *sides)
{
  const double z = part->z;

  for (const double *y = sides; !isnan (*y); y++)
    {
      part->x = x;
      part->y = *y;
      part->z = z;
      if (is_free (self, part) && is_inside (self, part))
        return true;
    }
  part->z = z;
  return false;
}

static bool
find_room (const FitGround *self, Part *part, double usual, int step, const double *sides)
{
  const double reach = isfinite (self->tail) ? self->tail - self->nose : 6 * self->chord;

  for (double away = 0; away <= reach; away++)
    if ((step >= 0 && has_room_at (self, part, usual + away, sides)) || (step <= 0 && has_room_at (self, part, usual - away, sides)))
      return true;
  return false;
}

const Part *
fit_add (FitGround *self, Part *takes)
{
  g_autofree char *stem = takes->piece.id;
  Aeroplane *next;

  takes->piece.id = aeroplane_free_id (self->made, stem);
  next = aeroplane_with_added (self->made, &takes->piece);
  aeroplane_unref (self->made);
  self->made = next;
  return takes;
}

const Part *
fit_put (FitGround *self, Part *takes, double usual, int step, const double *sides)
{
  usual = round (usual);
  if (!find_room (self, takes, usual, step, sides) && !(step != 0 && find_room (self, takes, usual, 0, sides)))
    {
      takes->x = usual;
      takes->y = sides[0];
    }
  return fit_add (self, takes);
}

/* How far a part can be moved that way, whole millimetres. */
static double
free_way (const FitGround *self, const Part *part, double direction)
{
  const double most = self->body ? self->tail - self->nose : FREE_RAIL, sides[] = { part->y, NAN };
  Part *moved = (Part *) piece_dup (&part->piece);
  double way = 0;

  while (way < most && has_room_at (self, moved, part->x + direction * (way + 1), sides) && fabs (moved->z - part->z) < 0.5)
    way++;
  piece_unref (&moved->piece);
  return way;
}

void
fit_rail (FitGround *self, const char *id)
{
  const Part *part = aeroplane_part_by_id (self->made, id);
  Part *next = (Part *) piece_dup (&part->piece);
  Aeroplane *made;

  next->rail_from = part->x - free_way (self, part, -1);
  next->rail_to = part->x + free_way (self, part, 1);
  next->has_rail = next->rail_to > next->rail_from;
  made = aeroplane_with_replaced (self->made, &part->piece, &next->piece);
  aeroplane_unref (self->made);
  self->made = made;
}

void
fit_group (FitGround *self, const char *part, const char *fastening)
{
  const char *ids[] = { part, fastening };
  g_autofree char *name = aeroplane_free_group (self->made, part), *kept = g_strdup (fastening);

  ids[1] = kept;
  for (size_t i = 0; i < G_N_ELEMENTS (ids); i++)
    {
      const Part *old = aeroplane_part_by_id (self->made, ids[i]);
      Part *next = (Part *) piece_dup (&old->piece);
      Aeroplane *made;

      g_free (next->group);
      next->group = g_strdup (name);
      made = aeroplane_with_replaced (self->made, &old->piece, &next->piece);
      aeroplane_unref (self->made);
      self->made = made;
    }
}
