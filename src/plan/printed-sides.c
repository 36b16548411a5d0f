#include "plan/printed-sides.h"

#include <math.h>
#include <stdlib.h>
#include "geometry/ascending.h"
#include "geometry/least-squares.h"
#include "plan/follow.h"
#include "plan/straight-search.h"

/* Most of a side must be printed, half of an axis (a broken line), and its places lie on one smooth curve to within so many px. */
static const double LEAST_FOUND = 0.8, LEAST_AXIS = 0.5, MOST_SCATTER = 0.7;
/* A place counts where there is a line about as strong as usual. */
static const double LEAST_WEIGHT = 0.5;
/* px: no hand misses a corner by more; a line further off, as the shadow along a paper's edge, is another. */
static const double MOST_MISSED = 1.5 * MAPPING_CLICK_PX;
/* px: how far a side lies off its chord, a lens' bend included, one standard deviation. */
static const double OFF_CHORD = 4;
/* px: an axis is straight. */
static const double MOST_BENT_AXIS = 0.6;
/* Deviations of a click: an axis' end that is further off is another line's. */
static const double MOST_MISSED_SIGMAS = 2.25;
/* px: beyond this sides and corners are not those of one rectangle. */
static const double MOST_BENT = 0.7;
/* Beside the corners other lines end, and arrows: this share of a side is left out at each end. */
static const double LEFT_OUT = 0.02;

enum { FACTORS = 4, LEAST_IN_STRETCH = 5, MEETINGS = 4, CHORD_PIECES = 16 };

/* A side as a curve over its chord: off = Σ factors[i] tⁱ, t from 0 at one corner to 1 at the other. */
typedef struct {
  Point from, along, beside;                 /* along has the chord's length, beside length 1 */
  double most_missed;                        /* px: how far off its corners it may end */
  double factors[FACTORS];
  bool found;
} Side;

static Side
side_between (Point a, Point b)
{
  const Point way = point_sub (b, a);
  const double length = hypot (way.x, way.y);

  return (Side) { .from = a, .along = way, .beside = { -way.y / length, way.x / length }, .most_missed = MOST_MISSED };
}

static double
side_t (const Side *side, Point place)
{
  const Point way = point_sub (place, side->from);

  return (way.x * side->along.x + way.y * side->along.y) / (side->along.x * side->along.x + side->along.y * side->along.y);
}

static double
side_off (const Side *side, Point place)
{
  const Point way = point_sub (place, side->from);

  return way.x * side->beside.x + way.y * side->beside.y;
}

static Point
side_at (const Side *side, double t)
{
  const double *f = side->factors, off = f[0] + t * (f[1] + t * (f[2] + t * f[3]));

  return point_add (point_add (side->from, point_scale (side->along, t)), point_scale (side->beside, off));
}

static Point
side_direction (const Side *side, double t)
{
  const double *f = side->factors;

  return point_add (side->along, point_scale (side->beside, f[1] + t * (2 * f[2] + t * 3 * f[3])));
}

/* The median place of each stretch in which a line is seen most of the way; how many there are. `offs` has room for the whole line. */
static size_t
medians (const Side *side, const FollowedLine *line, double *offs, Point places[SIDE_PLACES])
{
  size_t made = 0, i = 0;

  for (size_t stretch = 0; stretch < SIDE_PLACES; stretch++)
    {
      const double middle = LEFT_OUT + (1 - 2 * LEFT_OUT) * ((double) stretch + 0.5) / SIDE_PLACES;
      const double end = LEFT_OUT + (1 - 2 * LEFT_OUT) * ((double) stretch + 1) / SIDE_PLACES;
      size_t seen = 0, passed = 0;

      for (; i < line->count && side_t (side, line->places[i]) < end; i++)
        if (side_t (side, line->places[i]) >= LEFT_OUT)
          {
            passed++;
            if (line->weights[i] >= LEAST_WEIGHT)
              offs[seen++] = side_off (side, line->places[i]);
          }
      if (seen < LEAST_IN_STRETCH || 2 * seen < passed)
        continue;
      qsort (offs, seen, sizeof *offs, ascending_doubles);
      places[made++] = point_add (point_add (side->from, point_scale (side->along, middle)), point_scale (side->beside, offs[seen / 2]));
    }
  return made;
}

static bool
fit_cubic (Side *side, const Point places[], size_t count)
{
  LeastSquares sums;

  least_squares_begin (&sums, FACTORS);
  for (size_t i = 0; i < count; i++)
    {
      const double t = side_t (side, places[i]);

      least_squares_add (&sums, (double[]) { 1, t, t * t, t * t * t }, side_off (side, places[i]), 1);
    }
  return least_squares_solve (&sums, side->factors, NULL);
}

static bool
ends_at_its_corners (const Side *side)
{
  const double *f = side->factors;

  return fabs (f[0]) <= side->most_missed && fabs (f[0] + f[1] + f[2] + f[3]) <= side->most_missed;
}

/* Leaves out the places that lie off the curve, the worst first, until it passes all that are left closely. */
static size_t
fit_side (Side *side, double share, Point places[], size_t count)
{
  const size_t least = (size_t) ceil (share * SIDE_PLACES);

  while (count >= least && fit_cubic (side, places, count))
    {
      size_t worst = 0;
      double most = -1;

      for (size_t i = 0; i < count; i++)
        {
          const double off = point_distance (places[i], side_at (side, side_t (side, places[i])));

          if (off > most)
            most = off, worst = i;
        }
      if (most <= MOST_SCATTER)
        {
          side->found = ends_at_its_corners (side);
          return side->found ? count : 0;
        }
      for (size_t i = worst; i + 1 < count; i++)
        places[i] = places[i + 1];
      count--;
    }
  return 0;
}

static CoreStatus
find_side (const Ink *ink, Side *side, double share, const FollowOptions *options, Point places[SIDE_PLACES], size_t *count)
{
  const double reduced = ink_reduced (ink);
  Point chord[CHORD_PIECES + 1];
  FollowedLine line;
  CoreStatus status;

  for (int i = 0; i <= CHORD_PIECES; i++)
    chord[i] = point_scale (point_add (side->from, point_scale (side->along, (double) i / CHORD_PIECES)), 1 / reduced);
  if ((status = follow_line (ink, chord, CHORD_PIECES + 1, options, &line)))
    return status;
  for (size_t i = 0; i < line.count; i++)
    line.places[i] = point_scale (line.places[i], reduced);
  double *offs = malloc (line.count * sizeof *offs);
  if (offs)
    *count = fit_side (side, share, places, medians (side, &line, offs, places));
  else
    status = CORE_NO_MEMORY;
  free (offs);
  followed_line_clear (&line);
  return status;
}

/* The straight line closest to the places. */
static void
fit_line (Side *side, const Point places[], size_t count)
{
  LeastSquares sums;

  least_squares_begin (&sums, 2);
  for (size_t i = 0; i < count; i++)
    least_squares_add (&sums, (double[]) { 1, side_t (side, places[i]) }, side_off (side, places[i]), 1);
  least_squares_solve (&sums, side->factors, NULL);
}

/* Where the sides before and behind a corner meet, by the tangents at the places nearest to it, again and again. */
static Point
meeting (const Side *before, const Side *behind, Point corner)
{
  Point at = corner;

  for (int i = 0; i < MEETINGS; i++)
    {
      const double t = side_t (before, at), u = side_t (behind, at);
      const Point a = side_at (before, t), b = side_at (behind, u), p = side_direction (before, t), q = side_direction (behind, u);
      const double turn = p.x * q.y - p.y * q.x;

      at = point_add (a, point_scale (p, ((b.x - a.x) * q.y - (b.y - a.y) * q.x) / turn));
    }
  return point_distance (at, corner) <= 2 * MOST_MISSED ? at : corner;
}

/* px a mm: a corridor as wide as for a fine scan is wide enough, however wrong the typed size is; wider ones take their time. */
static const double FINEST = 15;

CoreStatus
printed_sides_find (const Ink *ink, const KnownRectangle *clicked, InkGoesOn goes_on, void *data, PrintedSides *made)
{
  const int wide = known_rectangle_widths (clicked->corners);
  Side sides[4];

  *made = (PrintedSides) { .rectangle = *clicked };
  for (int i = 0; i < 4; i++)
    {
      const Point a = clicked->corners[i], b = clicked->corners[(i + 1) % 4], way = point_sub (b, a);
      const double mm = i % 2 == wide ? clicked->width : clicked->height, px = hypot (way.x, way.y);
      const FollowOptions options = { .px_per_mm = fmin (px / mm / ink_reduced (ink), FINEST), .click_sigma = OFF_CHORD / ink_reduced (ink),
                                      .goes_on = goes_on, .data = data };
      size_t count = 0;

      if (!(px > 0))
        return CORE_SINGULAR;
      sides[i] = side_between (a, b);
      const CoreStatus status = find_side (ink, &sides[i], LEAST_FOUND, &options, made->places[i], &count);
      if (status)
        return status;
      if (sides[i].found)
        made->lines[made->line_count++] = (StraightLine) { made->places[i], count };
    }
  for (int i = 0; i < 4; i++)
    if (sides[i].found && sides[(i + 3) % 4].found)
      made->rectangle.corners[i] = meeting (&sides[(i + 3) % 4], &sides[i], clicked->corners[i]);
  return CORE_OK;
}

CoreStatus
mapping_solve_printed (const Ink *ink, const Knowns *knowns, InkGoesOn goes_on, void *data, Mapping *mapping,
                       MappingMisfit *misfit)
{
  Knowns printed = *knowns;
  PrintedSides sides;
  MappingMisfit found;
  Mapping made;

  if (!knowns->rectangle || knowns->straight_count)
    return mapping_solve (knowns, mapping, misfit);
  CoreStatus status = printed_sides_find (ink, knowns->rectangle, goes_on, data, &sides);
  if (status)
    return status;
  printed.rectangle = &sides.rectangle;
  printed.straight = sides.lines;
  printed.straight_count = sides.line_count;
  status = sides.line_count ? mapping_solve (&printed, &made, &found) : CORE_SINGULAR;
  if (status || found.bend_after_px > MOST_BENT)
    return mapping_solve (knowns, mapping, misfit);
  *mapping = made;
  if (misfit)
    *misfit = found;
  return CORE_OK;
}

/* Broken into dashes beside a rib, it cannot be followed. */
static bool
search_axis (const Ink *ink, ViewAxis clicked, double px_per_mm, double click_sigma, ViewAxis *axis)
{
  const double reduced = ink_reduced (ink);
  Point ends[2] = { point_scale (clicked.fore, 1 / reduced), point_scale (clicked.aft, 1 / reduced) };

  if (!straight_search (ink, ends, px_per_mm / reduced, click_sigma / reduced))
    return false;
  *axis = (ViewAxis) { point_scale (ends[0], reduced), point_scale (ends[1], reduced) };
  return true;
}

bool
printed_axis (const Ink *ink, const AxisClicks *clicked, InkGoesOn goes_on, void *data, ViewAxis *axis)
{
  const FollowOptions options = { .px_per_mm = fmin (clicked->px_per_mm / ink_reduced (ink), FINEST),
                                  .click_sigma = clicked->sigma / ink_reduced (ink), .goes_on = goes_on, .data = data };
  Side side = side_between (clicked->axis.fore, clicked->axis.aft);
  Point places[SIDE_PLACES];
  size_t count;

  if (!(point_distance (clicked->axis.fore, clicked->axis.aft) > 0))
    return false;
  side.most_missed = fmax (MOST_MISSED, MOST_MISSED_SIGMAS * clicked->sigma);
  if (find_side (ink, &side, LEAST_AXIS, &options, places, &count))
    return false;
  if (!side.found)
    return search_axis (ink, clicked->axis, clicked->px_per_mm, clicked->sigma, axis);
  side.factors[2] = side.factors[3] = 0;
  fit_line (&side, places, count);
  for (size_t i = 0; i < count; i++)
    if (point_distance (places[i], side_at (&side, side_t (&side, places[i]))) > MOST_BENT_AXIS)
      return search_axis (ink, clicked->axis, clicked->px_per_mm, clicked->sigma, axis);
  *axis = (ViewAxis) { side_at (&side, 0), side_at (&side, 1) };
  return true;
}
