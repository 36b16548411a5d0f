#include "plan/sharpen.h"

#include <math.h>
#include <stdbool.h>
#include <stdlib.h>
#include "geometry/drawn-run.h"
#include "geometry/stretch.h"

/* mm: how far before and behind the legs begin (they are measured over twice that), from look to look, how far they may have to go. */
static const double GAP = 2.5, STEP = 0.5, FARTHEST = 6;
/* mm: the same where a corner is known to be, the nearest first. */
static const double KNOWN_GAPS[] = { 1, 1.7, 2.5 };
static const double LEAST_TURN = 20 * M_PI / 180;
/* Of the ink where a leg begins: less is no line. */
static const double INKED = 0.6;
enum { LOOKS = 12, ROUNDS = 4 };

/* Two legs, how far each has to go on, and where they meet. */
typedef struct { RunPassage behind, ahead; double on, back; Point meeting; double turn; } Bend;

/* A leg carried on by t, as it bends. */
static RunPassage
leg_at (const RunPassage *leg, double t)
{
  const Point d = leg->direction, across = { -d.y, d.x };
  const double turn = leg->curvature * t;

  return (RunPassage) { .place = point_add (leg->place, point_add (point_scale (d, t), point_scale (across, turn * t / 2))),
                        .direction = { d.x * cos (turn) - d.y * sin (turn), d.x * sin (turn) + d.y * cos (turn) } };
}

/* Where the two meet: the tangents' meeting again and again. */
static bool
legs_meet (Bend *bend)
{
  bend->on = bend->back = 0;
  for (int i = 0; i < ROUNDS; i++)
    {
      const RunPassage one = leg_at (&bend->behind, bend->on), other = leg_at (&bend->ahead, bend->back);
      const Point way = point_sub (other.place, one.place);
      const double cross = point_cross (one.direction, other.direction);
      bend->turn = atan2 (cross, point_dot (one.direction, other.direction));
      if (fabs (bend->turn) < LEAST_TURN)
        return false;
      bend->on += point_cross (way, other.direction) / cross;
      bend->back += point_cross (way, one.direction) / cross;
    }
  bend->meeting = leg_at (&bend->behind, bend->on).place;
  return bend->on > 0 && bend->back < 0;
}

static bool
bend_at (const DrawnRun *run, double along, double gap, double scale, Bend *bend)
{
  const double measured = 2 * gap;

  return !drawn_run_passage (run, along - gap * scale, measured * scale, PASSAGE_BEHIND, &bend->behind)
         && !drawn_run_passage (run, along + gap * scale, measured * scale, PASSAGE_AHEAD, &bend->ahead) && legs_meet (bend)
         && bend->on < FARTHEST * scale && bend->back > -FARTHEST * scale;
}

/* Whether there is a line all along a leg, its end included; a few places of it may be crossed or broken. */
static bool
is_inked (const Ink *ink, const RunPassage *leg, double to)
{
  const double usual = (ink_at (ink, leg->place) + ink_at (ink, leg_at (leg, to / 10).place)) / 2;
  int inked = 0;

  for (int i = 1; i <= LOOKS; i++)
    inked += ink_at (ink, leg_at (leg, to * i / LOOKS).place) >= INKED * usual;
  return usual > 0 && inked >= LOOKS - 2 && ink_at (ink, leg_at (leg, to).place) >= INKED * usual;
}

static bool
is_printed (const Ink *ink, const Bend *bend)
{
  return is_inked (ink, &bend->behind, bend->on) && is_inked (ink, &bend->ahead, bend->back);
}

/* The places between the two legs' beginnings, spread evenly over them. */
static void
put_corner (const DrawnRun *run, double along, double gap, const Bend *bend, FollowedLine *line)
{
  const size_t first = drawn_run_at (run, along - gap), last = drawn_run_at (run, along + gap);

  for (size_t i = first; i <= last; i++)
    {
      const double way = (bend->on - bend->back) * (double) (i - first) / (double) (last - first);
      line->places[i] = way < bend->on ? leg_at (&bend->behind, way).place : leg_at (&bend->ahead, way - bend->on + bend->back).place;
      line->weights[i] = 1;
    }
}

/* The sharpest of the bends that begin within a gap of this one. */
static double
sharpest_from (const DrawnRun *run, double along, double scale, Bend *bend)
{
  double best = along;
  Bend tried;

  for (double at = along; at < along + 2 * GAP * scale && at < run->along[run->count - 1] - 1.5 * GAP * scale; at += STEP * scale)
    if (bend_at (run, at, GAP, scale, &tried) && fabs (tried.turn) > fabs (bend->turn))
      {
        *bend = tried;
        best = at;
      }
  return best;
}

CoreStatus
sharpen_corners (const Ink *ink, double px_per_mm, FollowedLine *line)
{
  double *along = malloc (line->count * sizeof *along);

  if (!along)
    return CORE_NO_MEMORY;
  drawn_run_lengths (line->places, line->count, along);
  const DrawnRun run = { .places = line->places, .weights = line->weights, .along = along, .count = line->count };
  const double end = along[line->count - 1] - 1.5 * GAP * px_per_mm;
  for (double at = 1.5 * GAP * px_per_mm; at < end; at += STEP * px_per_mm)
    {
      Bend bend;
      if (!bend_at (&run, at, GAP, px_per_mm, &bend))
        continue;
      at = sharpest_from (&run, at, px_per_mm, &bend);
      if (is_printed (ink, &bend))
        put_corner (&run, at, GAP * px_per_mm, &bend, line);
      at += 2 * GAP * px_per_mm;
    }
  free (along);
  return CORE_OK;
}

CoreStatus
sharpen_corner_at (const Ink *ink, double px_per_mm, size_t place, FollowedLine *line)
{
  double *along = malloc (line->count * sizeof *along);
  bool found = false;

  if (!along)
    return CORE_NO_MEMORY;
  drawn_run_lengths (line->places, line->count, along);
  const DrawnRun run = { .places = line->places, .weights = line->weights, .along = along, .count = line->count };
  for (size_t i = 0; !found && i < sizeof KNOWN_GAPS / sizeof *KNOWN_GAPS; i++)
    {
      const double gap = KNOWN_GAPS[i] * px_per_mm;
      Bend bend;
      found = along[place] > 1.5 * gap && along[place] < along[line->count - 1] - 1.5 * gap
              && bend_at (&run, along[place], KNOWN_GAPS[i], px_per_mm, &bend) && is_printed (ink, &bend);
      if (found)
        put_corner (&run, along[place], gap, &bend, line);
    }
  free (along);
  return CORE_OK;
}
