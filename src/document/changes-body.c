#include "document/body-size.h"

#include <math.h>
#include "document/changes-private.h"

/* Every place p becomes scale * p + shift. */
typedef struct { Point scale, shift; } Stretch;

static double
along (const Outline *outline)
{
  const Box box = outline_bounds (outline);

  return box.max.x - box.min.x;
}

static double
across (const Outline *outline)
{
  const Box box = outline_bounds (outline);

  return box.max.y - box.min.y;
}

static const Outline *
length_outline (const Body *body)
{
  return body->outline ? body->outline : body->side_outline;
}

BodySize
body_size (const Body *body)
{
  const Outline *outline = length_outline (body);

  return (BodySize) { .length = outline ? along (outline) : NAN,
                      .width = body->outline ? 2 * outline_bounds (body->outline).max.y : NAN,
                      .height = body->side_outline ? across (body->side_outline) : NAN };
}

/* One of a body's outlines, and the click that it passes; no outline stays none. */
static bool
outline_stretched (Outline **outline, PassedClick *passed, const Stretch *by)
{
  Outline *made = NULL;

  if (!*outline)
    return true;
  if (outline_mapped (*outline, by->scale, by->shift, &made) != CORE_OK)
    return false;
  outline_unref (*outline);
  *outline = made;
  if (passed->by > 0)
    passed->at = (Point) { by->scale.x * passed->at.x + by->shift.x, by->scale.y * passed->at.y + by->shift.y };
  return true;
}

/* Rounding does not count: a body that has that size stays the same. */
static bool
is_stretch (double scale)
{
  return isfinite (scale) && scale > 0 && fabs (scale - 1) >= 1e-12;
}

/* Takes the body; NULL where it would be no outline any more. */
static Aeroplane *
stretched_to (const Aeroplane *self, const Body *old, Body *takes, bool sound)
{
  if (sound)
    return changed_to (self, &old->piece, &takes->piece);
  piece_unref (&takes->piece);
  return NULL;
}

Aeroplane *
change_body_length (const Aeroplane *self, const char *id, double length)
{
  const Body *old = aeroplane_body_by_id (self, id);
  const double scale = old ? length / body_size (old).length : NAN;
  Stretch by;
  Body *next;
  double nose;
  bool sound;

  if (!isfinite (scale) || scale <= 0)
    return NULL;
  if (!is_stretch (scale))
    return aeroplane_ref (self);
  nose = outline_bounds (length_outline (old)).min.x;
  by = (Stretch) { .scale = { scale, 1 }, .shift = { nose - scale * nose, 0 } };
  next = (Body *) piece_dup (&old->piece);
  sound = outline_stretched (&next->outline, &next->passed, &by) && outline_stretched (&next->side_outline, &next->side_passed, &by);
  for (size_t i = 0; i < next->former_count; i++)
    next->formers[i].place = by.scale.x * next->formers[i].place + by.shift.x;
  return stretched_to (self, old, next, sound);
}

Aeroplane *
change_body_width (const Aeroplane *self, const char *id, double width)
{
  const Body *old = aeroplane_body_by_id (self, id);
  const double scale = old ? width / body_size (old).width : NAN;
  Body *next;

  if (!isfinite (scale) || scale <= 0)
    return NULL;
  if (!is_stretch (scale))
    return aeroplane_ref (self);
  next = (Body *) piece_dup (&old->piece);
  return stretched_to (self, old, next, outline_stretched (&next->outline, &next->passed, &(Stretch) { { 1, scale }, { 0, 0 } }));
}

/* The height that stays. */
static double
height_kept (const Aeroplane *self, const Body *body)
{
  const Box box = outline_bounds (body->side_outline);
  const double lines[] = { aeroplane_count (self, PIECE_THRUST) > 0 ? ((const Thrust *) aeroplane_nth (self, PIECE_THRUST, 0))->z : 0, 0 };

  for (size_t i = 0; i < sizeof lines / sizeof *lines; i++)
    if (lines[i] >= box.min.y && lines[i] <= box.max.y)
      return lines[i];
  return (box.min.y + box.max.y) / 2;
}

Aeroplane *
change_body_height (const Aeroplane *self, const char *id, double height)
{
  const Body *old = aeroplane_body_by_id (self, id);
  const double scale = old ? height / body_size (old).height : NAN;
  double kept;
  Body *next;

  if (!isfinite (scale) || scale <= 0)
    return NULL;
  if (!is_stretch (scale))
    return aeroplane_ref (self);
  kept = height_kept (self, old);
  next = (Body *) piece_dup (&old->piece);
  return stretched_to (self, old, next, outline_stretched (&next->side_outline, &next->side_passed,
                                                           &(Stretch) { { 1, scale }, { 0, kept - scale * kept } }));
}
