#include "plan/stretch.h"

#include <math.h>
#include <stdlib.h>
#include "plan/ink-cut.h"
#include "plan/line-beside.h"
#include "plan/sureness.h"

/* The path's cost grows with the length and the third power of the px a mm: what is longer than this, px, is halved. */
static const double LONG = 420, LONGEST_COARSER = 700;
/* Never below this many px a mm: a line must remain one. */
static const double COARSEST = 2.2;
/* mm of picture beside the way, and its share of the way's length: wider than any corridor. */
static const double BESIDE = 3.5, SHARE = 0.35;

static double
mm_along (const StretchRequest *request)
{
  return point_distance (mapping_to_mm (request->mapping, request->from), mapping_to_mm (request->mapping, request->to));
}

static int
coarser_for (double length_px, double px_per_mm)
{
  int coarser = 1;

  if (length_px > LONG && px_per_mm / 2 >= COARSEST)
    coarser = 2;
  if (length_px / 2 > LONGEST_COARSER && px_per_mm / 4 >= COARSEST)
    coarser = 4;
  return coarser;
}

/* The longest from place to place. */
static double
longest_of (const StretchRequest *request)
{
  double longest = point_distance (request->from, request->to);

  for (size_t i = 0; i < request->behind_count; i++)
    longest = fmax (longest, point_distance (request->behind[i], i + 1 < request->behind_count ? request->behind[i + 1] : request->from));
  return request->has_ahead ? fmax (longest, point_distance (request->to, request->ahead)) : longest;
}

static Box
box_about (const Point places[], size_t count, double beside)
{
  Box box = { places[0], places[0] };

  for (size_t i = 1; i < count; i++)
    {
      box.min = (Point) { fmin (box.min.x, places[i].x), fmin (box.min.y, places[i].y) };
      box.max = (Point) { fmax (box.max.x, places[i].x), fmax (box.max.y, places[i].y) };
    }
  return (Box) { point_sub (box.min, (Point) { beside, beside }), point_add (box.max, (Point) { beside, beside }) };
}

/* The clicks of a stretch in the cut's px; the parts behind and ahead of it only give the direction. */
typedef struct { Point places[STRETCH_BEHIND + 3]; size_t count, from, to; } Clicks;

static Clicks
clicks_of (const StretchRequest *request, double reduced)
{
  Clicks self = { .from = request->behind_count, .to = request->behind_count + 1 };

  for (size_t i = 0; i < request->behind_count; i++)
    self.places[self.count++] = request->behind[i];
  self.places[self.count++] = request->from;
  self.places[self.count++] = request->to;
  if (request->has_ahead)
    self.places[self.count++] = request->ahead;
  for (size_t i = 0; i < self.count; i++)
    self.places[i] = point_scale (self.places[i], 1 / reduced);
  return self;
}

static CoreStatus
take (const Clicks *clicks, const InkCut *cut, const FollowedLine *line, double px_per_mm, double scale, Stretch *made)
{
  const size_t first = clicks->from > 0 ? followed_line_nearest (line, clicks->places[clicks->from]) : 0;
  const size_t end = clicks->to + 1 < clicks->count ? followed_line_nearest (line, clicks->places[clicks->to]) : line->count - 1;
  const size_t last = end > first ? end : first, count = last - first + 1;
  const Sureness sureness = sureness_of (line, first, last, px_per_mm);
  Point *places = malloc (count * sizeof *places);

  if (!places)
    return CORE_NO_MEMORY;
  for (size_t i = 0; i < count; i++)
    places[i] = point_scale (point_add (point_scale (line->places[first + i], cut->coarser), cut->corner), scale);
  *made = (Stretch) { .places = places, .count = count, .lost = sureness.lost, .sigma = sureness.sigma / px_per_mm,
                      .missed = followed_line_missed (line, first, last, clicks->places[clicks->to], px_per_mm) / px_per_mm };
  return CORE_OK;
}

CoreStatus
stretch_follow (const Ink *ink, const StretchRequest *request, Stretch *made)
{
  const double reduced = ink_reduced (ink), length = point_distance (request->from, request->to) / reduced;
  const double px_per_mm = length / mm_along (request);
  const int coarser = coarser_for (longest_of (request) / reduced, px_per_mm);
  Clicks clicks = clicks_of (request, reduced);
  InkCut cut;
  FollowedLine line;

  if (!(px_per_mm > 0) || !isfinite (px_per_mm))
    return CORE_OUT_OF_RANGE;
  CoreStatus status = ink_cut (ink, box_about (clicks.places, clicks.count, BESIDE * px_per_mm + SHARE * length), coarser, &cut);
  if (status)
    return status;
  for (size_t i = 0; i < clicks.count; i++)
    clicks.places[i] = point_scale (point_sub (clicks.places[i], cut.corner), 1.0 / coarser);
  const FollowOptions options = { .px_per_mm = px_per_mm / coarser, .click_sigma = request->click_sigma / reduced / coarser,
                                  .holds_on = request->holds_on, .goes_on = request->goes_on, .data = request->data };
  status = follow_line (cut.ink, clicks.places, clicks.count, &options, &line);
  if (!status && !request->holds_on)
    status = take_line_beside (cut.ink, clicks.places, clicks.count, &options, &line);
  if (!status)
    {
      status = take (&clicks, &cut, &line, options.px_per_mm, reduced, made);
      followed_line_clear (&line);
    }
  ink_unref (cut.ink);
  return status;
}

void
stretch_clear (Stretch *self)
{
  free (self->places);
  *self = (Stretch) { .count = 0 };
}
