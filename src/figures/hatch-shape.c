#include "figures/hatch-shape.h"

#include <math.h>
#include "balance/hatch.h"

enum { STEPS = 64 };

static const double LAND = 1e3 * HATCH_LAND;      /* mm */
static const double SAME = 0.5;                   /* mm: an edge so much shorter is not drawn apart */

/* What the body leaves a hole about the pack's middle, at each step from its forward edge to the after one; whether that is known. */
static bool
look_along (const HatchFigures *hatch, const BodyProfile *profile, double room[STEPS + 1])
{
  const double taken = fabs (hatch->part->y) + LAND;

  if (!profile)
    return false;
  body_profile_clear_half_widths (profile, hatch->from_mm, hatch->to_mm, STEPS + 1, room);
  for (int i = 0; i <= STEPS; i++)
    room[i] = 2 * (room[i] - taken);
  return !isnan (room[0] + room[STEPS]);
}

static int
widest (const double room[STEPS + 1])
{
  int best = STEPS / 2;

  for (int i = 0; i <= STEPS; i++)
    if (room[i] > room[best])
      best = i;
  return best;
}

/* From the widest place to an end: the last step at which there is room for all of it, and what a straight line from there leaves at the end. */
static int
narrow_to (const double room[STEPS + 1], double width, int from, int end, double *left)
{
  const int way = end > from ? 1 : -1;
  int full = from;

  *left = width;
  while (full != end && room[full + way] >= width)
    full += way;
  for (int i = full + way; full != end && (end - i) * way >= 0; i += way)
    *left = fmin (*left, width - fmax (width - room[i], 0) * (end - full) / (i - full));
  *left = fmax (*left, 0);
  return full;
}

void
hatch_narrow (HatchFigures *hatch, const BodyProfile *profile)
{
  const double step = (hatch->to_mm - hatch->from_mm) / STEPS;
  double room[STEPS + 1];

  hatch->from_width_mm = hatch->to_width_mm = hatch->width_mm;
  hatch->full_from_mm = hatch->from_mm;
  hatch->full_to_mm = hatch->to_mm;
  if (!look_along (hatch, profile, room))
    return;
  const int middle = widest (room);
  hatch->width_mm = fmax (fmin (hatch->width_mm, room[middle]), 0);
  hatch->full_from_mm = hatch->from_mm + step * narrow_to (room, hatch->width_mm, middle, 0, &hatch->from_width_mm);
  hatch->full_to_mm = hatch->from_mm + step * narrow_to (room, hatch->width_mm, middle, STEPS, &hatch->to_width_mm);
}

double
hatch_width_at (const HatchFigures *hatch, double x)
{
  if (x < hatch->full_from_mm)
    return hatch->from_width_mm + (hatch->width_mm - hatch->from_width_mm) * (x - hatch->from_mm) / (hatch->full_from_mm - hatch->from_mm);
  if (x > hatch->full_to_mm)
    return hatch->to_width_mm + (hatch->width_mm - hatch->to_width_mm) * (hatch->to_mm - x) / (hatch->to_mm - hatch->full_to_mm);
  return hatch->width_mm;
}

/* How much of a narrowing end is so wide or wider. */
static double
share_as_wide (double wide, double narrow, double width)
{
  return narrow >= width ? 1 : (wide - width) / (wide - narrow);
}

double
hatch_stretch (const HatchFigures *hatch, double width)
{
  if (hatch->width_mm < width)
    return 0;
  return hatch->full_to_mm - hatch->full_from_mm
         + (hatch->full_from_mm - hatch->from_mm) * share_as_wide (hatch->width_mm, hatch->from_width_mm, width)
         + (hatch->to_mm - hatch->full_to_mm) * share_as_wide (hatch->width_mm, hatch->to_width_mm, width);
}

size_t
hatch_hole (const HatchFigures *hatch, double less, HatchStation stations[HATCH_HOLE_STATIONS])
{
  const double from = hatch->from_mm + less, to = hatch->to_mm - less;
  size_t count = 0;

  stations[count++] = (HatchStation) { from, fmax (hatch->from_width_mm - 2 * less, 0) };
  if (hatch->full_from_mm > from + SAME)
    stations[count++] = (HatchStation) { hatch->full_from_mm, hatch->width_mm - 2 * less };
  if (hatch->full_to_mm < to - SAME && hatch->full_to_mm > hatch->full_from_mm + SAME)
    stations[count++] = (HatchStation) { hatch->full_to_mm, hatch->width_mm - 2 * less };
  stations[count++] = (HatchStation) { to, fmax (hatch->to_width_mm - 2 * less, 0) };
  return count;
}

size_t
hatch_frame (const HatchFigures *hatch, double rim, HatchStation stations[HATCH_FRAME_STATIONS])
{
  HatchStation hole[HATCH_HOLE_STATIONS];
  const size_t count = hatch_hole (hatch, 0, hole);
  BodyProfile *profile = hatch->body ? body_profile_new (hatch->body) : NULL;

  stations[0] = (HatchStation) { hatch->from_mm - rim, hatch->from_width_mm };
  for (size_t i = 0; i < count; i++)
    stations[i + 1] = hole[i];
  stations[count + 1] = (HatchStation) { hatch->to_mm + rim, hatch->to_width_mm };
  for (size_t i = 0; i < count + 2; i++)
    {
      const double inside = profile ? 2 * (body_profile_clear_half_width (profile, stations[i].x, stations[i].x) - fabs (hatch->part->y)) : NAN;

      stations[i].width = fmax (fmin (stations[i].width + 2 * rim, inside), 0);
    }
  body_profile_free (profile);
  return count + 2;
}

void
hatch_corners (const HatchStation stations[], size_t count, double middle, Point corners[])
{
  for (size_t i = 0; i < count; i++)
    {
      corners[i] = (Point) { stations[i].x, middle - stations[i].width / 2 };
      corners[2 * count - 1 - i] = (Point) { stations[i].x, middle + stations[i].width / 2 };
    }
}
