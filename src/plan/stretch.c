#include "plan/stretch.h"

#include <math.h>
#include <stdlib.h>
#include "plan/ink-cut.h"
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

/* The part behind the first click only gave the direction. */
static CoreStatus
take (const StretchRequest *request, const InkCut *cut, const FollowedLine *line, Point from, double px_per_mm, double scale, Stretch *made)
{
  const size_t first = request->has_behind ? followed_line_nearest (line, from) : 0, count = line->count - first;
  const Sureness sureness = sureness_of (line, first, line->count - 1, px_per_mm);
  Point *places = malloc (count * sizeof *places);

  if (!places)
    return CORE_NO_MEMORY;
  for (size_t i = 0; i < count; i++)
    places[i] = point_scale (point_add (point_scale (line->places[first + i], cut->coarser), cut->corner), scale);
  *made = (Stretch) { .places = places, .count = count, .lost = sureness.lost, .sigma = sureness.sigma / px_per_mm };
  return CORE_OK;
}

CoreStatus
stretch_follow (const Ink *ink, const StretchRequest *request, Stretch *made)
{
  const double reduced = ink_reduced (ink), length = point_distance (request->from, request->to) / reduced;
  const double px_per_mm = length / mm_along (request);
  const int coarser = coarser_for (length, px_per_mm);
  Point clicks[3];
  size_t count = 0;
  InkCut cut;
  FollowedLine line;

  if (!(px_per_mm > 0) || !isfinite (px_per_mm))
    return CORE_OUT_OF_RANGE;
  if (request->has_behind)
    clicks[count++] = point_scale (request->behind, 1 / reduced);
  clicks[count++] = point_scale (request->from, 1 / reduced);
  clicks[count++] = point_scale (request->to, 1 / reduced);
  CoreStatus status = ink_cut (ink, box_about (clicks, count, BESIDE * px_per_mm + SHARE * length), coarser, &cut);
  if (status)
    return status;
  for (size_t i = 0; i < count; i++)
    clicks[i] = point_scale (point_sub (clicks[i], cut.corner), 1.0 / coarser);
  const FollowOptions options = { .px_per_mm = px_per_mm / coarser, .click_sigma = request->click_sigma / reduced / coarser,
                                  .holds_on = request->holds_on, .goes_on = request->goes_on, .data = request->data };
  status = follow_line (cut.ink, clicks, count, &options, &line);
  if (!status)
    {
      status = take (request, &cut, &line, clicks[count - 2], options.px_per_mm, reduced, made);
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
