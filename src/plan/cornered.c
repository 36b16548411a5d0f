#include "plan/cornered.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>
#include "plan/sharpen.h"
#include "plan/sureness.h"

/* The clicks turn by so much at least where a corner may be; a rounded tip's do too, but there the line is seen. */
static const double LEAST_TURN = 30 * M_PI / 180;
/* mm beside the click on both sides; what of the line there was not seen, from which on a corner may have been cut; what is left of that when
 * the line is followed from the click. */
static const double BESIDE = 7, CUT = 0.05, BETTER = 0.5;
/* Of the whole work: what is done when the line was followed once; of what is left then, what each further time does: one is mostly the
 * last, but how many there will be nobody knows. */
static const double FIRST_SHARE = 0.6, NEXT_SHARE = 0.8;

typedef struct {
  const Ink *ink;
  const Point *clicks;
  size_t count;
  const FollowOptions *options;
  bool *corner;                /* of each click: the line is followed up to it and from it on */
  double *lost;                /* of each click with a corner: about it, when the line was followed in one */
} Corners;

/* The share done of one look among several. */
typedef struct { const FollowOptions *options; double from, to; } Look;

static bool
look_goes_on (double done, void *data)
{
  const Look *look = data;

  return !look->options->goes_on || look->options->goes_on (look->from + done * (look->to - look->from), look->options->data);
}

static CoreStatus
follow_part (const Corners *self, size_t from, size_t to, double done, double until, FollowedLine *made)
{
  Look look = { .options = self->options, .from = done, .to = until };
  FollowOptions options = *self->options;

  options.goes_on = look_goes_on;
  options.data = &look;
  return follow_line (self->ink, self->clicks + from, to - from + 1, &options, made);
}

static double
turn_at (const Point clicks[], size_t i)
{
  const Point in = point_sub (clicks[i], clicks[i - 1]), out = point_sub (clicks[i + 1], clicks[i]);

  return fabs (atan2 (in.x * out.y - in.y * out.x, in.x * out.x + in.y * out.y));
}

/* How much of the line beside a click was not seen, 0 to 1. */
static double
lost_about (const Corners *self, const FollowedLine *line, Point click)
{
  const size_t at = followed_line_nearest (line, click), reach = (size_t) ceil (BESIDE * self->options->px_per_mm);
  const size_t from = at > reach ? at - reach : 0, to = at + reach < line->count ? at + reach : line->count - 1;
  double lost = 0;

  for (size_t i = from; i <= to; i++)
    lost += 1 - fmin (line->weights[i], 1);
  return lost / (double) (to - from + 1);
}

/* Where the clicks turn and the line turns with them. */
static CoreStatus
sharpen_at_clicks (const Corners *self, FollowedLine *line)
{
  CoreStatus status = CORE_OK;

  for (size_t i = 1; !status && i + 1 < self->count; i++)
    if (turn_at (self->clicks, i) >= LEAST_TURN)
      status = sharpen_corner_at (self->ink, self->options->px_per_mm, followed_line_nearest (line, self->clicks[i]), line);
  return status;
}

static size_t
find_corners (Corners *self, const FollowedLine *line)
{
  size_t found = 0;

  for (size_t i = 1; i + 1 < self->count; i++)
    {
      self->lost[i] = turn_at (self->clicks, i) >= LEAST_TURN ? lost_about (self, line, self->clicks[i]) : 0;
      self->corner[i] = self->lost[i] > CUT;
      found += self->corner[i];
    }
  return found;
}

static CoreStatus
append (FollowedLine *to, const FollowedLine *more)
{
  Point *places = realloc (to->places, (to->count + more->count) * sizeof *places);
  if (places)
    to->places = places;
  double *weights = realloc (to->weights, (to->count + more->count) * sizeof *weights);
  if (weights)
    to->weights = weights;
  if (!places || !weights)
    return CORE_NO_MEMORY;
  memcpy (to->places + to->count, more->places, more->count * sizeof *places);
  memcpy (to->weights + to->count, more->weights, more->count * sizeof *weights);
  to->count += more->count;
  to->half_width = more->half_width;
  return CORE_OK;
}

/* From corner to corner. */
static CoreStatus
follow_between (const Corners *self, double done, double until, FollowedLine *made)
{
  FollowedLine whole = { .half_width = NAN };
  CoreStatus status = CORE_OK;
  size_t from = 0;

  for (size_t to = 1; !status && to < self->count; to++)
    if (to + 1 == self->count || self->corner[to])
      {
        const double last = (double) (self->count - 1), share = until - done;
        FollowedLine part;
        status = follow_part (self, from, to, done + share * (double) from / last, done + share * (double) to / last, &part);
        if (!status)
          {
            status = append (&whole, &part);
            followed_line_clear (&part);
          }
        from = to;
      }
  if (status)
    followed_line_clear (&whole);
  else
    *made = whole;
  return status;
}

/* Leaves the corners about which a line is seen now; how many there are. */
static size_t
keep_better (Corners *self, const FollowedLine *line)
{
  size_t kept = 0;

  for (size_t i = 1; i + 1 < self->count; i++)
    {
      self->corner[i] = self->corner[i] && lost_about (self, line, self->clicks[i]) <= BETTER * self->lost[i];
      kept += self->corner[i];
    }
  return kept;
}

/* `line` was followed in one; it is changed for what is seen better. */
static CoreStatus
follow_again (Corners *self, size_t found, FollowedLine *line)
{
  FollowedLine again;
  double done = FIRST_SHARE;

  while (found > 0)
    {
      const double until = done + NEXT_SHARE * (1 - done);
      CoreStatus status = follow_between (self, done, until, &again);
      if (status)
        return status;
      const size_t kept = keep_better (self, &again);
      if (kept == found)
        {
          followed_line_clear (line);
          *line = again;
          return CORE_OK;
        }
      followed_line_clear (&again);
      found = kept;
      done = until;
    }
  return CORE_OK;
}

CoreStatus
follow_cornered (const Ink *ink, const Point clicks[], size_t count, const FollowOptions *options, FollowedLine *made)
{
  Corners self = { .ink = ink, .clicks = clicks, .count = count, .options = options };
  FollowedLine line;
  CoreStatus status = count < 3 ? follow_line (ink, clicks, count, options, made) : follow_part (&self, 0, count - 1, 0, FIRST_SHARE, &line);

  if (status || count < 3)
    return status;
  self.corner = calloc (count, sizeof *self.corner);
  self.lost = calloc (count, sizeof *self.lost);
  status = self.corner && self.lost ? follow_again (&self, find_corners (&self, &line), &line) : CORE_NO_MEMORY;
  if (!status)
    status = sharpen_at_clicks (&self, &line);
  free (self.corner);
  free (self.lost);
  if (status)
    followed_line_clear (&line);
  else
    *made = line;
  return status;
}
