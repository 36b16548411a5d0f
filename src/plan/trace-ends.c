#include "plan/trace-ends.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>
#include "geometry/drawn-run.h"

/* mm: what is left out beside the axis; over how much the line is looked at; how far it is carried on at most before it goes straight
 * across. */
static const double LEFT_OUT = 0.6, LOOKED_AT = 6, CARRIED = 3;

/* Where the run goes on to cross the station y = root. */
static Point
meets_station (const DrawnRun *run, PassageSides side, double along, double root)
{
  const Point end = run->places[side == PASSAGE_AHEAD ? 0 : run->count - 1];
  RunPassage passage;

  if (drawn_run_passage (run, along, LOOKED_AT, side, &passage) || !(fabs (passage.direction.y) > 0))
    return (Point) { end.x, root };
  const double way = (root - passage.place.y) / passage.direction.y;
  if (fabs (way) > CARRIED)
    return (Point) { end.x, root };
  return (Point) { passage.place.x + way * passage.direction.x - passage.curvature * way * way / 2 * passage.direction.y, root };
}

size_t
carry_ends_to_station (Point places[], double weights[], size_t count, double root)
{
  size_t first = 0, last = count - 1;
  double *along = malloc (count * sizeof *along);

  while (first + 2 < last && places[first].y < root + LEFT_OUT)
    first++;
  while (last > first + 2 && places[last].y < root + LEFT_OUT)
    last--;
  if (!along)
    return count;
  const size_t kept = last - first + 1;
  memmove (places + 1, places + first, kept * sizeof *places);
  memmove (weights + 1, weights + first, kept * sizeof *weights);
  drawn_run_lengths (places + 1, kept, along);
  const DrawnRun run = { .places = places + 1, .weights = weights + 1, .along = along, .count = kept };
  places[kept + 1] = meets_station (&run, PASSAGE_BEHIND, along[kept - 1], root);
  places[0] = meets_station (&run, PASSAGE_AHEAD, 0, root);
  weights[0] = weights[kept + 1] = 0;
  free (along);
  return kept + 2;
}

/* mm: how straight a cut is, and how high at least; and how far a line goes on to its point. Before it the line runs along the axis rather
 * than across; and so much of the cut is printed. */
static const double STRAIGHT = 0.6, LEAST_CUT = 1, TO_POINT = 8, ALONG = 0.6, PRINTED = 0.3;

typedef struct { double weight, x; } CutSeen;

/* How well the cut's places were seen, in the mean, and where the cut stands by them. */
static CutSeen
look_at_cut (const Point places[], const double weights[], size_t from, size_t end)
{
  double sum = 0, moment = 0;

  for (size_t i = from; i < end; i++)
    {
      sum += weights[i];
      moment += weights[i] * places[i].x;
    }
  return (CutSeen) { sum / (double) (end - from), sum > 0 ? moment / sum : places[end - 1].x };
}

/* How the line comes to the cut, which begins with the place of that number; false where it runs across itself, as about a round end. */
static bool
comes_along (const Point places[], const double weights[], size_t cut, RunPassage *passage)
{
  double *along = malloc (cut * sizeof *along);
  bool found = false;

  if (along)
    {
      drawn_run_lengths (places, cut, along);
      const DrawnRun run = { .places = places, .weights = weights, .along = along, .count = cut };
      found = !drawn_run_passage (&run, along[cut - 1], LOOKED_AT / 2, PASSAGE_BEHIND, passage) && fabs (passage->direction.y) <= ALONG
              && passage->direction.x > 0;
    }
  free (along);
  return found;
}

size_t
leave_out_cut (Point places[], double weights[], size_t count, double root, bool *is_cut)
{
  const size_t end = count - 1;      /* the place on the axis */
  size_t cut = end - 1;
  RunPassage passage;

  *is_cut = false;
  while (cut > 3 && fabs (places[cut - 1].x - places[end - 1].x) < STRAIGHT)
    cut--;
  if (cut < 4 || places[cut].y - root < LEAST_CUT || !comes_along (places, weights, cut, &passage))
    return count;
  const CutSeen seen = look_at_cut (places, weights, cut, end);
  const double x = seen.weight < PRINTED ? places[end - 1].x : seen.x;
  const double slope = passage.direction.y / passage.direction.x, y = passage.place.y + slope * (x - passage.place.x);
  const double on = slope < 0 ? (root - y) / slope : INFINITY;
  const bool pointed = cut + 1 < end && seen.weight < PRINTED && on <= TO_POINT;
  places[cut] = pointed ? (Point) { x + on, root } : (Point) { x, y };
  weights[cut] = 0;
  *is_cut = !pointed;
  return cut + 1;
}
