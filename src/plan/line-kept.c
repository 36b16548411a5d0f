#include "plan/line-kept.h"

#include <math.h>
#include <stdlib.h>
#include "geometry/stretch.h"
#include "plan/line-leads.h"
#include "plan/line-onward.h"
#include "plan/sureness.h"

/* mm, and the share of its way over that shows a line: such a step goes over to another line. */
static const double LEAST = 2.5, BARE = 0.65;
/* mm: how long before a step its line is no longer quite straight; over how much its direction is taken. */
static const double BENDING = 1.5, REACH = 6;
/* mm: how much less another way must go over, and how much further from the clicks it may be, all of them together. */
static const double GAIN = 2, FROM_CLICKS = 1.5;
/* Of the line whose place it takes: how dark it must be; so dark, it is the better one even if it goes over as much: what is left to go over
 * is looked at next. So much darker tells one of two from the other. mm: lines nearer than that are one. */
static const double AS_DARK = 0.75, MUCH_DARKER = 1.4, AS_MUCH = 0.5, DARKER = 1.2, APART = 1;
/* Pieces of a line that goes on. */
enum { MOST_LOOKS = 10, FEWEST = 3 };

/* How good a way is: mm that it goes over in all, and from its clicks in all. */
typedef struct { double over, from_clicks; } Merit;

/* Another way, and how dark its line is, of the one whose place it takes. */
typedef struct { FollowedLine line; double dark; Merit merit; bool is_good; } Other;

typedef struct {
  LedWay way;                  /* its line the present one */
  FollowOptions options;       /* of the looks */
  const FollowOptions *whole;
  DrawnRun run;
  double *along;
  Merit merit;
  int looks;
} Kept;

bool
line_step_goes_over (const LineStep *step)
{
  return fabs (step->aside) >= LEAST && step->seen < BARE;
}

/* What one look has done, of all there may be. */
static bool
look_goes_on (double done, void *data)
{
  const Kept *self = data;

  return !self->whole->goes_on || self->whole->goes_on ((self->looks + done) / MOST_LOOKS, self->whole->data);
}

static CoreStatus
run_along (const FollowedLine *line, double **along, DrawnRun *run)
{
  *along = malloc (line->count * sizeof **along);
  if (!*along)
    return CORE_NO_MEMORY;
  drawn_run_lengths (line->places, line->count, *along);
  *run = (DrawnRun) { line->places, line->weights, *along, line->count };
  return CORE_OK;
}

static Merit
merit_of (const LedWay *way, const DrawnRun *run, const FollowedLine *line)
{
  const double px_per_mm = way->options->px_per_mm;
  Merit merit = { 0, 0 };
  double at = 0;
  LineStep step;

  while (line_step_next (run, px_per_mm, &at, &step))
    if (line_step_goes_over (&step))
      merit.over += fabs (step.aside);
  for (size_t i = 0; i < way->click_count; i++)
    merit.from_clicks += point_distance (way->clicks[i], line->places[followed_line_nearest (line, way->clicks[i])]) / px_per_mm;
  return merit;
}

/* How strongly the present line is printed where the other one would take its place, in the mean; NAN where nowhere. */
static double
strength_beside (const LedWay *way, const LineOnward *onward)
{
  const double px_per_mm = way->options->px_per_mm, apart = APART * px_per_mm;
  const FollowedLine *line = way->line;
  double sum = 0;
  size_t count = 0;

  for (size_t i = 1; i < onward->count; i++)
    {
      const Point from = line->places[followed_line_nearest (line, onward->places[i - 1])];
      const Point to = line->places[followed_line_nearest (line, onward->places[i])];
      if (point_distance (from, onward->places[i - 1]) < apart || point_distance (to, onward->places[i]) < apart
          || point_distance (from, to) < apart)
        continue;
      sum += line_print_strength (way->ink, from, to, line->half_width, px_per_mm);
      count++;
    }
  return count > 0 ? sum / (double) count : NAN;
}

static CoreStatus
judge (const Kept *self, Other *other)
{
  const double gain = other->dark > MUCH_DARKER ? -AS_MUCH : GAIN;
  double *along;
  DrawnRun run;
  const CoreStatus status = run_along (&other->line, &along, &run);

  if (status)
    return status;
  other->merit = merit_of (&self->way, &run, &other->line);
  other->is_good = other->merit.over <= self->merit.over - gain && other->merit.from_clicks <= self->merit.from_clicks + FROM_CLICKS
                   && !(other->dark < AS_DARK);
  free (along);
  return CORE_OK;
}

/* The line that comes to a step as it goes on beyond it, or the line behind it as it comes from before it. */
static CoreStatus
look_onward (const Kept *self, const LineStep *step, PassageSides side, LineOnward *onward)
{
  const double px_per_mm = self->way.options->px_per_mm;
  const bool on = side == PASSAGE_BEHIND;
  const double at = on ? self->run.along[step->before] - BENDING * px_per_mm : self->run.along[step->behind] + BENDING * px_per_mm;
  RunPassage passage;

  *onward = (LineOnward) { .count = 0 };
  if (drawn_run_passage (&self->run, at, REACH * px_per_mm, side, &passage))
    return CORE_OK;
  if (!on)
    passage.direction = point_scale (passage.direction, -1);
  return line_onward (self->way.ink, &passage, self->way.line, px_per_mm, onward);
}

static CoreStatus
try_side (Kept *self, const LineStep *step, PassageSides side, Other *other)
{
  LineOnward onward;
  CoreStatus status = look_onward (self, step, side, &onward);

  if (!status && onward.count >= FEWEST && self->looks < MOST_LOOKS)
    {
      other->dark = onward.strength / strength_beside (&self->way, &onward);
      status = follow_led (&self->way, step, &onward, &other->line);
      self->looks++;
      if (!status && other->line.count > 0)
        status = judge (self, other);
    }
  line_onward_clear (&onward);
  return status;
}

/* Whether a step goes towards what the clicks enclose. */
static bool
goes_inwards (const LedWay *way, const LineStep *step)
{
  double area = 0;

  for (size_t i = 1; i + 1 < way->click_count; i++)
    area += point_cross (point_sub (way->clicks[i], way->clicks[0]), point_sub (way->clicks[i + 1], way->clicks[0]));
  return step->aside * area > 0;
}

/* The darker of both; of lines as dark, the outer one. */
static Other *
better_of (const Kept *self, const LineStep *step, Other others[2])
{
  const double darker = others[0].dark / others[1].dark;

  if (!others[0].is_good || !others[1].is_good)
    return others[0].is_good ? &others[0] : &others[1];
  if (darker > DARKER || darker < 1 / DARKER)
    return darker > 1 ? &others[0] : &others[1];
  return &others[goes_inwards (&self->way, step) ? 0 : 1];
}

static CoreStatus
try_both (Kept *self, const LineStep *step, FollowedLine *line, bool *better)
{
  Other others[2] = { { .is_good = false } };
  CoreStatus status = try_side (self, step, PASSAGE_BEHIND, &others[0]);

  if (!status)
    status = try_side (self, step, PASSAGE_AHEAD, &others[1]);
  Other *best = better_of (self, step, others);
  *better = !status && best->is_good;
  if (*better)
    {
      const FollowedLine was = *line;
      *line = best->line;
      best->line = was;
    }
  followed_line_clear (&others[0].line);
  followed_line_clear (&others[1].line);
  return status;
}

static CoreStatus
keep_once (Kept *self, FollowedLine *line, bool *better)
{
  LineStep step;
  double at = 0;
  CoreStatus status = run_along (line, &self->along, &self->run);

  if (status)
    return status;
  self->merit = merit_of (&self->way, &self->run, line);
  while (!status && !*better && line_step_next (&self->run, self->way.options->px_per_mm, &at, &step))
    if (line_step_goes_over (&step))
      status = try_both (self, &step, line, better);
  free (self->along);
  return status;
}

CoreStatus
take_line_kept (const Ink *ink, const Point clicks[], size_t count, const FollowOptions *options, FollowedLine *line)
{
  Kept self = { .way = { ink, clicks, count, NULL, line }, .options = *options, .whole = options };
  CoreStatus status = CORE_OK;
  bool better = true;

  self.options.goes_on = look_goes_on;
  self.options.data = &self;
  self.way.options = &self.options;
  while (!status && better && self.looks < MOST_LOOKS)
    {
      better = false;
      status = keep_once (&self, line, &better);
    }
  return status;
}
