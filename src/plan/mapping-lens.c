#include "plan/mapping-private.h"

/* Within these a picture does not fold over itself anywhere: at its corner the least is -4/27; places
 * a little beside the picture are still somewhere. */
static const double K1_LEAST = -0.12, K1_MOST = 0.4;
/* A place this near a side of the rectangle, as a fraction of it, belongs to that side. */
static const double NEAR_A_SIDE = 0.02;

/* No place in a picture is known better than this, px. */
static const double FINEST_SIGMA_PX = 0.02;
/* A lens is undone when k1 is beyond this many times what the places explain of it: a scan has none, and should not seem to. */
static const double BEYOND_PLACES = 1.25;

enum { STEPS = 52 };

typedef struct { const Knowns *knowns; Mapping mapping; size_t places; } Bending;

/* The places of one line with the lens undone, and as far as each is magnified by it. */
typedef struct { Point at[KNOWN_PLACES_MOST + 2]; double even[KNOWN_PLACES_MOST + 2]; size_t count; } Places;

static void
places_add (Places *places, const Mapping *mapping, Point px)
{
  const Point at = mapping_undo_lens (mapping, px), way = point_scale (point_sub (at, mapping->lens_centre), 1 / mapping->lens_radius);

  places->even[places->count] = 1 + mapping->k1 * dot (way, way);
  places->at[places->count++] = at;
}

/* Whether the place lies beside the side a b, not beyond its ends by more than a little. */
static bool
is_beside (Point place, Point a, Point b)
{
  const Point side = point_sub (b, a), way = point_sub (place, a);
  const double length2 = dot (side, side);

  return fabs (cross (side, way)) <= NEAR_A_SIDE * length2 && dot (side, way) >= -NEAR_A_SIDE * length2
         && dot (side, way) <= (1 + NEAR_A_SIDE) * length2;
}

/* A line along a side of the rectangle goes through the corners at its ends. */
static void
places_add_corners (Places *places, const Mapping *mapping, const StraightLine *line, const KnownRectangle *rectangle)
{
  for (int i = 0; rectangle && i < 4; i++)
    {
      const Point a = rectangle->corners[i], b = rectangle->corners[(i + 1) % 4];
      bool along = true;

      for (size_t k = 0; along && k < line->count; k++)
        along = is_beside (line->places[k], a, b);
      if (!along)
        continue;
      places_add (places, mapping, a);
      places_add (places, mapping, b);
      return;
    }
}

static Places
places_of (const Bending *bending, size_t line)
{
  const StraightLine *straight = &bending->knowns->straight[line];
  Places places = { .count = 0 };

  for (size_t i = 0; i < straight->count; i++)
    places_add (&places, &bending->mapping, straight->places[i]);
  places_add_corners (&places, &bending->mapping, straight, bending->knowns->rectangle);
  return places;
}

/* The sum of squared distances, px of the file, from the line that leaves the least (total least squares). */
static double
bend_of (const Places *places)
{
  Point middle = { 0, 0 };
  double xx = 0, xy = 0, yy = 0, sum = 0, angle;

  for (size_t i = 0; i < places->count; i++)
    middle = point_add (middle, point_scale (places->at[i], 1.0 / (double) places->count));
  for (size_t i = 0; i < places->count; i++)
    {
      const Point way = point_sub (places->at[i], middle);

      xx += way.x * way.x, xy += way.x * way.y, yy += way.y * way.y;
    }
  angle = atan2 (2 * xy, xx - yy) / 2;
  for (size_t i = 0; i < places->count; i++)
    {
      const double off = cross ((Point) { cos (angle), sin (angle) }, point_sub (places->at[i], middle)) * places->even[i];

      sum += off * off;
    }
  return sum;
}

static double
bend_with (Bending *bending, double k1)
{
  double sum = 0;

  bending->mapping.k1 = k1;
  bending->places = 0;
  for (size_t i = 0; i < bending->knowns->straight_count; i++)
    {
      const Places places = places_of (bending, i);

      sum += bend_of (&places);
      bending->places += places.count;
    }
  return sum;
}

/* Where the bend is least between the two: by golden section, from the best of evenly spaced beginnings. */
static double
least_bend (Bending *bending)
{
  const double golden = (sqrt (5) - 1) / 2, step = (K1_MOST - K1_LEAST) / STEPS;
  double best = 0, least = bend_with (bending, 0), from, to;

  for (int i = 0; i <= STEPS; i++)
    {
      const double bend = bend_with (bending, K1_LEAST + i * step);

      if (bend < least)
        least = bend, best = K1_LEAST + i * step;
    }
  from = fmax (best - step, K1_LEAST);
  to = fmin (best + step, K1_MOST);
  while (to - from > 1e-7)
    {
      const double low = to - golden * (to - from), high = from + golden * (to - from);

      if (bend_with (bending, low) < bend_with (bending, high))
        to = high;
      else
        from = low;
    }
  return (from + to) / 2;
}

/* Newton's last steps on the slope of the bend, by ever closer differences: golden section alone stops at the root of what a number
 * resolves. */
static double
refine (Bending *bending, double k1)
{
  for (double step = 1e-4; step > 5e-7; step /= 10)
    {
      const double before = bend_with (bending, k1 - step), here = bend_with (bending, k1), behind = bend_with (bending, k1 + step);
      const double curvature = before - 2 * here + behind;

      if (!(curvature > 0))
        break;
      k1 -= step * fmax (-1, fmin (1, (behind - before) / 2 / curvature));
    }
  return k1;
}

/* What the places explain of k1. The bend is a sum of squares, so that half its second derivative is what Gauss and Newton need. With
 * places enough their own scatter says how good they are; else they are clicks. */
static double
k1_click (Bending *bending, double k1, double least)
{
  const double step = 1e-3;
  const double half = (bend_with (bending, k1 - step) - 2 * least + bend_with (bending, k1 + step)) / (2 * step * step);
  const double freedom = (double) bending->places - 2 * (double) bending->knowns->straight_count - 1;
  const double scatter = freedom >= 6 ? fmin (CLICK_SIGMA_PX, sqrt (least / freedom)) : CLICK_SIGMA_PX;
  const double sigma = fmax (scatter, FINEST_SIGMA_PX);

  return half > 0 ? 2 * sigma / sqrt (half) : INFINITY;
}

CoreStatus
mapping_find_lens (const Knowns *knowns, Mapping *mapping, MappingMisfit *misfit)
{
  Bending bending = { .knowns = knowns, .mapping = *mapping };
  double straight, k1, bent;

  if (knowns->straight_count == 0)
    return CORE_OK;
  straight = bend_with (&bending, 0);
  k1 = refine (&bending, least_bend (&bending));
  bent = bend_with (&bending, k1);
  misfit->lens_k1 = k1;
  misfit->lens_k1_click = k1_click (&bending, k1, bent);
  misfit->bend_before_px = sqrt (straight / (double) bending.places);
  misfit->bend_after_px = misfit->bend_before_px;
  misfit->lens_used = fabs (k1) > BEYOND_PLACES * misfit->lens_k1_click && k1 > K1_LEAST && k1 < K1_MOST;
  if (misfit->lens_used)
    {
      mapping->k1 = k1;
      misfit->bend_after_px = sqrt (bent / (double) bending.places);
    }
  return CORE_OK;
}
