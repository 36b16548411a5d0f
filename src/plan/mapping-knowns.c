#include "plan/mapping-private.h"

static CoreStatus
size_check (double size)
{
  if (!isfinite (size))
    return CORE_NOT_FINITE;
  return size > 0 ? CORE_OK : CORE_OUT_OF_RANGE;
}

static CoreStatus
ends_check (Point a, Point b, double picture)
{
  if (!point_is_finite (a) || !point_is_finite (b))
    return CORE_NOT_FINITE;
  return point_distance (a, b) > AS_GOOD_AS_NOTHING * picture ? CORE_OK : CORE_SINGULAR;
}

static CoreStatus
lengths_check (const Knowns *knowns, double picture)
{
  CoreStatus status;

  if (knowns->length_count > KNOWN_LENGTHS_MOST)
    return CORE_TOO_MANY;
  for (size_t i = 0; i < knowns->length_count; i++)
    if ((status = size_check (knowns->lengths[i].mm)) || (status = ends_check (knowns->lengths[i].a, knowns->lengths[i].b, picture)))
      return status;
  return CORE_OK;
}

static CoreStatus
rectangle_check (const KnownRectangle *rectangle)
{
  CoreStatus status;

  if ((status = size_check (rectangle->width)) || (status = size_check (rectangle->height)))
    return status;
  for (int i = 0; i < 4; i++)
    if (!point_is_finite (rectangle->corners[i]))
      return CORE_NOT_FINITE;
  return corners_check (rectangle->corners);
}

static CoreStatus
line_check (const StraightLine *line, double picture)
{
  double reach = 0;

  if (line->count < 3)
    return CORE_OUT_OF_RANGE;
  if (line->count > KNOWN_PLACES_MOST)
    return CORE_TOO_MANY;
  for (size_t i = 0; i < line->count; i++)
    {
      if (!point_is_finite (line->places[i]))
        return CORE_NOT_FINITE;
      reach = fmax (reach, point_distance (line->places[i], line->places[0]));
    }
  return reach > AS_GOOD_AS_NOTHING * picture ? CORE_OK : CORE_SINGULAR;
}

CoreStatus
knowns_check (const Knowns *knowns)
{
  const double picture = hypot (knowns->width_px, knowns->height_px);
  CoreStatus status;

  if ((status = size_check (knowns->width_px)) || (status = size_check (knowns->height_px)))
    return status;
  if (!isnan (knowns->mm_per_px) && (status = size_check (knowns->mm_per_px)))
    return status;
  if ((status = lengths_check (knowns, picture)))
    return status;
  if (knowns->rectangle && (status = rectangle_check (knowns->rectangle)))
    return status;
  if (knowns->straight_count > KNOWN_LINES_MOST)
    return CORE_TOO_MANY;
  for (size_t i = 0; i < knowns->straight_count; i++)
    if ((status = line_check (&knowns->straight[i], picture)))
      return status;
  return knowns->has_level ? ends_check (knowns->level[0], knowns->level[1], picture) : CORE_OK;
}
