#include "plan/follow.h"

#include <math.h>
#include <stdlib.h>
#include "plan/least-path.h"
#include "plan/line-centre.h"
#include "plan/line-strength.h"
#include "plan/sharpen.h"
#include "plan/through-clicks.h"

/* A corridor's half width and rows, mm and px: wide about what the clicks promise, then twice about what was found. A turn of a radian
 * costs as much as so many millimetres without a line: much at first, so that no gap tempts onto the line beside, less when that is
 * settled. */
typedef struct { double half_width_mm, share_of_spacing, pitch, turning; bool centred; } Pass;
static const Pass PASSES[] = { { 2.0, 0.06, 1, 25, false }, { 1.6, 0, 0.5, 12, false }, { 0.9, 0, 0.5, 12, true } };
enum { PASS_COUNT = sizeof PASSES / sizeof *PASSES, LEAST_STRIDE = 4, MOST_STRIDE = 24 };
/* Where a line's width and usual strength are looked for, mm from the run, or in deviations of the clicks it was drawn through; the smoothing
 * of a path before it is a spine, mm. */
static const double NEAR = 0.7, CLICKS_OFF = 1.5, SMOOTHING = 1.5;
/* How much more a turn costs where the present line is to be kept to. */
static const double HOLDING = 3;
/* Of the strength of what is seen further off: what is less is no line, and what tells nothing of a line's width. */
static const double HARDLY = 0.1, LITTLE = 0.5;
/* mm: over five of these a line is as faint or as fresh as it is. */
static const double STRETCH = 4;

/* px a mm: a picture in which a line is less than a pixel or more than a hundred wide is none to follow. Of the picture: how far beyond it a
 * click may be. */
static const double COARSEST = 0.2, FINEST = 250, BESIDE = 1;

typedef struct {
  const Ink *ink;
  const Point *clicks;
  size_t click_count;
  const FollowOptions *options;
  double spacing;             /* the longest between clicks, px */
} Work;

static LeastPathPull
pull_of (const Work *work, const Corridor *corridor, Point click)
{
  const size_t column = corridor_nearest (corridor, click);
  const Point off = point_sub (click, corridor->spine[column]), across = corridor->across[column];

  return (LeastPathPull) { .column = column, .row = corridor->half + (off.x * across.x + off.y * across.y) / corridor->pitch,
                           .sigma = work->options->click_sigma / corridor->pitch, .rows_per_mm = INFINITY };
}

static CoreStatus
find_path (const Work *work, const Pass *pass, const Corridor *corridor, const float *strength, double *rows)
{
  const int stride = (int) fmin (fmax (round (work->options->px_per_mm), LEAST_STRIDE), MOST_STRIDE);
  LeastPathPull *pulls = malloc (work->click_count * sizeof *pulls);
  const double turning = pass->turning * (work->options->holds_on ? HOLDING : 1);
  const LeastPathOptions options = { .stride = stride, .steepest = stride, .turning = turning * corridor->pitch / stride,
                                     .pulls = pulls, .pull_count = work->click_count - work->options->holds_on };

  for (size_t i = 0; pulls && i < work->click_count; i++)
    pulls[i] = pull_of (work, corridor, work->clicks[i]);
  if (pulls)
    pulls[0].rows_per_mm = pulls[work->click_count - 1].rows_per_mm = work->options->px_per_mm / corridor->pitch;
  const CoreStatus status = pulls ? least_path (corridor, strength, &options, rows) : CORE_NO_MEMORY;
  free (pulls);
  return status;
}

/* The path as places, evened out so that it can be a spine. */
static void
read_places (const Corridor *corridor, const double *rows, int smoothing, Point *places)
{
  const size_t each_way = (size_t) smoothing;

  for (size_t column = 0; column < corridor->columns; column++)
    {
      const size_t reach = each_way < column ? each_way : column;
      const size_t most = corridor->columns - 1 - column, within = reach < most ? reach : most;
      Point sum = { 0, 0 };
      for (size_t i = column - within; i <= column + within; i++)
        sum = point_add (sum, corridor_place (corridor, i, rows[i]));
      places[column] = point_scale (sum, 1 / (double) (2 * within + 1));
    }
}

/* How far from the run the line is that it follows, where no other runs beside it. Few clicks on a bent line leave it by more
 * than any click is off: where hardly anything is seen so near in most of its length, and something is further off, it is that. */
static double
reach_of (const Corridor *corridor, double near, float *room)
{
  const double far = corridor->half * corridor->pitch, sigma = line_sigma (corridor, far);

  if (isnan (sigma))
    return near;
  line_strength (corridor, sigma, room);
  return line_usual_strength (corridor, room, near) < HARDLY * line_usual_strength (corridor, room, far) ? far : near;
}

/* Half the line's width, px, as it is seen near the run; where little is to be seen there, since few clicks on a bent line leave it far
 * off, as it is seen in the whole corridor: what is left near the run is a shade, or nothing. */
static double
width_of_line (const Corridor *corridor, double near, float *room)
{
  const double far = corridor->half * corridor->pitch, narrow = line_sigma (corridor, near), wide = line_sigma (corridor, far);

  if (isnan (narrow) || isnan (wide))
    return NAN;
  line_strength (corridor, narrow, room);
  const double seen = line_usual_strength (corridor, room, near);
  line_strength (corridor, wide, room);
  return seen < LITTLE * line_usual_strength (corridor, room, far) ? wide : narrow;
}

/* Takes places and weights in the place of those that were. */
static void
made_become (FollowedLine *made, Point *places, double *weights, size_t count)
{
  free (made->places);
  free (made->weights);
  *made = (FollowedLine) { .places = places, .weights = weights, .count = count, .half_width = made->half_width };
}

/* One corridor along the run; the run becomes what was found in it, made->count places. */
static CoreStatus
follow_once (const Work *work, const Pass *pass, const Corridor *corridor, FollowedLine *made)
{
  const double scale = work->options->px_per_mm;
  /* At first the line may lie as far off as a click. */
  double near = pass == PASSES ? fmax (NEAR * scale, CLICKS_OFF * work->options->click_sigma) : NEAR * scale;
  float *strength = malloc (corridor->columns * (size_t) corridor_rows (corridor) * sizeof *strength);
  double *rows = malloc (corridor->columns * sizeof *rows), *weights = calloc (corridor->columns, sizeof *weights);
  Point *places = malloc (corridor->columns * sizeof *places);
  CoreStatus status = strength && rows && weights && places ? CORE_OK : CORE_NO_MEMORY;

  if (!status)
    {
      const double reach = pass == PASSES && work->options->stands_alone ? reach_of (corridor, near, strength) : near;
      if (isnan (made->half_width))
        made->half_width = width_of_line (corridor, reach, strength);
      near = reach;
      status = isnan (made->half_width) ? CORE_NO_MEMORY : line_strength (corridor, made->half_width, strength);
    }
  if (!status)
    status = line_strength_even (corridor, near, (size_t) ceil (STRETCH * scale), strength);
  if (!status)
    status = find_path (work, pass, corridor, strength, rows);
  if (!status && pass->centred)
    status = line_centre (corridor, strength, made->half_width, (int) round (scale / 2), rows, weights);
  if (!status)
    {
      read_places (corridor, rows, pass->centred ? 0 : (int) round (SMOOTHING * scale), places);
      made_become (made, places, weights, corridor->columns);
    }
  else
    {
      free (places);
      free (weights);
    }
  free (strength);
  free (rows);
  return status;
}

static CoreStatus
follow_passes (const Work *work, FollowedLine *made)
{
  const FollowOptions *options = work->options;

  for (int i = 0; i < PASS_COUNT; i++)
    {
      Corridor corridor;
      const double half_width = PASSES[i].half_width_mm * options->px_per_mm + PASSES[i].share_of_spacing * work->spacing;

      if (options->goes_on && !options->goes_on ((double) i / PASS_COUNT, options->data))
        return CORE_CANCELLED;
      CoreStatus status = corridor_along (work->ink, made->places, made->count, half_width, PASSES[i].pitch,
                                          (int) round (options->px_per_mm), &corridor);
      if (status)
        return status;
      status = follow_once (work, &PASSES[i], &corridor, made);
      corridor_clear (&corridor);
      if (status)
        return status;
    }
  return sharpen_corners (work->ink, options->px_per_mm, made);
}

/* A click far beyond the picture is a slip, and a corridor there would only cost. */
static bool
is_near_picture (const Ink *ink, Point click)
{
  const double beside = BESIDE * fmax (ink_width (ink), ink_height (ink));

  return click.x > -beside && click.y > -beside && click.x < ink_width (ink) + beside && click.y < ink_height (ink) + beside;
}

static CoreStatus
check (const Ink *ink, const Point clicks[], size_t count, const FollowOptions *options)
{
  if (count < 2)
    return CORE_TOO_FEW_NODES;
  if (count > FOLLOW_MOST_CLICKS)
    return CORE_TOO_MANY;
  for (size_t i = 0; i < count; i++)
    if (!point_is_finite (clicks[i]))
      return CORE_NOT_FINITE;
  for (size_t i = 0; i < count; i++)
    if (!is_near_picture (ink, clicks[i]))
      return CORE_OUT_OF_RANGE;
  return options->px_per_mm >= COARSEST && options->px_per_mm <= FINEST && options->click_sigma > 0
         && isfinite (options->click_sigma) ? CORE_OK : CORE_OUT_OF_RANGE;
}

CoreStatus
follow_line (const Ink *ink, const Point clicks[], size_t count, const FollowOptions *options, FollowedLine *made)
{
  Work work = { .ink = ink, .clicks = clicks, .click_count = count, .options = options };
  FollowedLine line = { .half_width = NAN };

  CoreStatus status = check (ink, clicks, count, options);
  if (status)
    return status;
  for (size_t i = 1; i < count; i++)
    work.spacing = fmax (work.spacing, point_distance (clicks[i], clicks[i - 1]));
  status = through_clicks (clicks, count, &line.places, &line.count);
  if (!status)
    status = follow_passes (&work, &line);
  if (status)
    followed_line_clear (&line);
  else
    *made = line;
  return status;
}

void
followed_line_clear (FollowedLine *self)
{
  free (self->places);
  free (self->weights);
  *self = (FollowedLine) { 0 };
}
