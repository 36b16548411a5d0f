#include "document/part-room.h"
#include <math.h>
#include "document/part-class.h"

/* A stretch of the centre line. */
typedef struct { double from, to; } Reach;

static bool
part_is_in_the_way (const Part *part, const Part *wanted)
{
  const bool alike = g_strcmp0 (part->class_name, wanted->class_name) == 0;

  if (!alike && !(part_class_keeps_clear (part->class_name) && part_class_keeps_clear (wanted->class_name)))
    return false;
  return fabs (part->y) < (part->width + wanted->width) / 2 || part->y == 0;
}

/* Half the least distance from its middle to that of a new one; things without a size are told apart by 10 mm. */
static double
part_distance (const Part *part, const Part *wanted)
{
  return fmax ((part->length + wanted->length) / 2, 10);
}

static bool
place_is_free (const Aeroplane *aeroplane, const Part *wanted, double x)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++) {
    const Part *part = aeroplane_part (aeroplane, i);

    if (part_is_in_the_way (part, wanted) && fabs (part->x - x) < part_distance (part, wanted))
      return false;
  }
  return true;
}

/* Where the middle of the box may stand; everywhere without a body, or in one that is shorter than the box. */
static Reach
body_reach (const Aeroplane *aeroplane, const Part *wanted)
{
  const Body *body = aeroplane_count (aeroplane, PIECE_BODY) > 0 ? aeroplane_body (aeroplane, 0) : NULL;
  const Outline *outline = body == NULL ? NULL : body->outline != NULL ? body->outline : body->side_outline;
  Reach reach = { -INFINITY, INFINITY };

  if (outline == NULL || !part_class_keeps_clear (wanted->class_name))
    return reach;
  reach = (Reach) { outline_bounds (outline).min.x + wanted->length / 2, outline_bounds (outline).max.x - wanted->length / 2 };
  return reach.from <= reach.to ? reach : (Reach) { -INFINITY, INFINITY };
}

double
part_room_x (const Aeroplane *aeroplane, const Part *wanted, double usual)
{
  const Reach reach = body_reach (aeroplane, wanted);
  double best = INFINITY;

  usual = fmin (fmax (usual, ceil (reach.from)), floor (reach.to));
  if (place_is_free (aeroplane, wanted, usual))
    return usual;
  /* The nearest room begins where some part ends. */
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++) {
    const Part *part = aeroplane_part (aeroplane, i);
    const double away = part_distance (part, wanted), places[] = { ceil (part->x + away), floor (part->x - away) };

    for (size_t side = 0; side < G_N_ELEMENTS (places); side++)
      if (places[side] >= reach.from && places[side] <= reach.to && fabs (places[side] - usual) < fabs (best - usual)
          && place_is_free (aeroplane, wanted, places[side]))
        best = places[side];
  }
  return isfinite (best) ? best : usual;
}
