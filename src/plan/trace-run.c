#include "plan/trace-run.h"
#include "plan/cornered.h"
#include "plan/line-beside.h"
#include "plan/line-kept.h"
#include "plan/sharpen.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

static const double SHARP = 55 * M_PI / 180;

/* Stretches of one kind that follow each other. */
typedef struct {
  size_t from, to;            /* clicks */
  bool drawn;
  FollowedLine line;          /* the ink's px */
} Part;

/* How far the whole is, from how far one look at a part is, which leads from one share of it to another. */
typedef struct { const TraceRequest *request; size_t part, count; double from, to; } Share;

/* Of a part: what is done when its line was followed by the clicks, and when the line beside it was looked for; the rest is whether it keeps
 * to its line. */
static const double BY_CLICKS = 0.7, BESIDE = 0.85;

static bool
goes_on (double done, void *data)
{
  const Share *share = data;
  const double of_part = share->from + done * (share->to - share->from);

  return !share->request->goes_on
         || share->request->goes_on (((double) share->part + of_part) / (double) share->count, share->request->data);
}

static bool
is_drawn (const TraceRequest *request, size_t stretch)
{
  return request->drawn && request->drawn[stretch];
}

/* Whether the clicks turn sharply there. A body's blunt nose and tail are so short that one run bent about both their corners would leave
 * them for a line ahead. */
static bool
is_corner (const TraceRequest *request, size_t click)
{
  if (!request->goes_round || click == 0)
    return false;
  const Point in = point_sub (request->clicks[click], request->clicks[click - 1]);
  const Point out = point_sub (request->clicks[click + 1], request->clicks[click]);

  return fabs (atan2 (in.x * out.y - in.y * out.x, in.x * out.x + in.y * out.y)) > SHARP;
}

static size_t
find_parts (const TraceRequest *request, Part *parts)
{
  size_t count = 0;

  for (size_t click = 0; click + 1 < request->click_count; click++)
    if (count > 0 && parts[count - 1].drawn == is_drawn (request, click) && !is_corner (request, click))
      parts[count - 1].to = click + 1;
    else
      parts[count++] = (Part) { .from = click, .to = click + 1, .drawn = is_drawn (request, click) };
  return count;
}

/* A place for each px. */
static CoreStatus
draw_straight (const Point clicks[], size_t count, FollowedLine *made)
{
  double length = 0;

  for (size_t i = 1; i < count; i++)
    length += ceil (point_distance (clicks[i], clicks[i - 1]));
  made->places = malloc (((size_t) length + 1) * sizeof *made->places);
  made->weights = malloc (((size_t) length + 1) * sizeof *made->weights);
  if (!made->places || !made->weights)
    return CORE_NO_MEMORY;
  made->places[made->count++] = clicks[0];
  for (size_t i = 1; i < count; i++)
    {
      const size_t steps = (size_t) ceil (point_distance (clicks[i], clicks[i - 1]));
      for (size_t step = 1; step <= steps; step++)
        made->places[made->count++] = point_mix (clicks[i - 1], clicks[i], (double) step / (double) steps);
    }
  for (size_t i = 0; i < made->count; i++)
    made->weights[i] = 1;
  return CORE_OK;
}

/* Straight parts last: their ends are known by then. */
static CoreStatus
draw_parts (const TraceRequest *request, Point *clicks, Part *parts, size_t count)
{
  CoreStatus status = CORE_OK;

  for (size_t i = 0; !status && i < count; i++)
    {
      Part *part = &parts[i];
      if (!part->drawn)
        continue;
      if (i > 0)
        clicks[part->from] = parts[i - 1].line.places[parts[i - 1].line.count - 1];
      if (i + 1 < count)
        clicks[part->to] = parts[i + 1].line.places[0];
      status = draw_straight (clicks + part->from, part->to - part->from + 1, &part->line);
    }
  return status;
}

/* Where two followed parts meet at a corner, each has gone on a little beyond it or stopped short. */
static CoreStatus
sharpen_joints (const Ink *ink, double px_per_mm, const Part *parts, size_t count, FollowedLine *line)
{
  CoreStatus status = CORE_OK;
  size_t place = 0;

  for (size_t i = 1; !status && i < count; i++)
    {
      place += parts[i - 1].line.count;
      if (!parts[i - 1].drawn && !parts[i].drawn)
        status = sharpen_corner_at (ink, px_per_mm, place, line);
    }
  return status;
}

static CoreStatus
join (const Ink *ink, double px_per_mm, const Part *parts, size_t count, double reduced, FollowedLine *made)
{
  FollowedLine line = { .half_width = NAN };
  size_t room = 0;

  for (size_t i = 0; i < count; i++)
    room += parts[i].line.count;
  line.places = malloc (room * sizeof *line.places);
  line.weights = malloc (room * sizeof *line.weights);
  if (!line.places || !line.weights)
    {
      followed_line_clear (&line);
      return CORE_NO_MEMORY;
    }
  for (size_t i = 0; i < count; i++)
    {
      memcpy (line.places + line.count, parts[i].line.places, parts[i].line.count * sizeof *line.places);
      memcpy (line.weights + line.count, parts[i].line.weights, parts[i].line.count * sizeof *line.weights);
      line.count += parts[i].line.count;
      if (!parts[i].drawn)
        line.half_width = parts[i].line.half_width * reduced;
    }
  const CoreStatus status = sharpen_joints (ink, px_per_mm, parts, count, &line);
  for (size_t i = 0; i < line.count; i++)
    line.places[i] = point_scale (line.places[i], reduced);
  if (status)
    followed_line_clear (&line);
  else
    *made = line;
  return status;
}

static CoreStatus
follow_part (const Ink *ink, const Point clicks[], const FollowOptions *options, Share *share, Part *part)
{
  const size_t count = part->to - part->from + 1;

  share->from = 0;
  share->to = BY_CLICKS;
  CoreStatus status = follow_cornered (ink, clicks + part->from, count, options, &part->line);
  share->from = BY_CLICKS;
  share->to = BESIDE;
  if (!status)
    status = take_line_beside (ink, clicks + part->from, count, options, &part->line);
  share->from = BESIDE;
  share->to = 1;
  return status ? status : take_line_kept (ink, clicks + part->from, count, options, &part->line);
}

CoreStatus
trace_run (const Ink *ink, const TraceRequest *request, double mm_a_px, FollowedLine *made)
{
  const double reduced = ink_reduced (ink);
  Share share = { .request = request };
  const FollowOptions options = { .px_per_mm = 1 / (mm_a_px * reduced), .click_sigma = request->click_sigma / reduced,
                                  .stands_alone = request->goes_round, .goes_on = goes_on, .data = &share };
  Point *clicks = malloc (request->click_count * sizeof *clicks);
  Part *parts = malloc (request->click_count * sizeof *parts);
  CoreStatus status = clicks && parts ? CORE_OK : CORE_NO_MEMORY;

  for (size_t i = 0; !status && i < request->click_count; i++)
    clicks[i] = point_scale (request->clicks[i], 1 / reduced);
  share.count = status ? 0 : find_parts (request, parts);
  for (; !status && share.part < share.count; share.part++)
    if (!parts[share.part].drawn)
      status = follow_part (ink, clicks, &options, &share, &parts[share.part]);
  if (!status)
    status = draw_parts (request, clicks, parts, share.count);
  if (!status)
    status = join (ink, options.px_per_mm, parts, share.count, reduced, made);
  for (size_t i = 0; i < share.count; i++)
    followed_line_clear (&parts[i].line);
  free (clicks);
  free (parts);
  return status;
}
