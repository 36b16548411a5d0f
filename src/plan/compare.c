#include "plan/compare.h"

#include <math.h>
#include <stdlib.h>
#include "geometry/ascending.h"

/* mm: from place to place of the outline that the line is looked for along; from spot to spot. */
static const double PACE = 5, STEP = 1;
/* mm: so near the axis its own line and its ribs are printed, too. */
static const double BESIDE_AXIS = 1.5;
/* mm: an outline may be as far off its line as a click, and further. */
static const double SIGMA = 0.7;
static const double SEEN = 0.3;

typedef struct {
  const Ink *ink;
  const CompareRequest *request;
  double reduced, px_per_mm;
} Work;

static Point
to_ink (const Work *work, Point own)
{
  return point_scale (mapping_to_px (work->request->mapping, axis_frame_paper (&work->request->frame, own)), 1 / work->reduced);
}

static Point
to_own (const Work *work, Point place)
{
  return axis_frame_own (&work->request->frame, mapping_to_mm (work->request->mapping, point_scale (place, work->reduced)));
}

static bool
in_picture (const Work *work, Point place)
{
  return place.x >= 0 && place.y >= 0 && place.x <= ink_width (work->ink) && place.y <= ink_height (work->ink);
}

/* Places along the outline, the ink's px; those that the picture does not show are left out. */
static size_t
pace_outline (const Work *work, Point *places, size_t room)
{
  const Outline *outline = work->request->outline;
  size_t count = 0;

  for (size_t i = 0; i < outline_segment_count (outline); i++)
    {
      const Segment *segment = outline_segment (outline, i);
      const Point from = outline_node (outline, i);
      const size_t steps = (size_t) ceil (segment_length (from, segment) / PACE) + 1;
      for (size_t step = i > 0; step <= steps && count < room; step++)
        {
          const Point own = segment_at (from, segment, (double) step / (double) steps), place = to_ink (work, own);
          if (point_is_finite (place) && in_picture (work, place) && (!work->request->half || own.y >= BESIDE_AXIS / 2)
              && (count == 0 || point_distance (place, places[count - 1]) > 1))
            places[count++] = place;
        }
    }
  return count;
}

static size_t
paces_at_most (const Outline *outline)
{
  size_t room = 2;

  for (size_t i = 0; i < outline_segment_count (outline); i++)
    room += (size_t) ceil (segment_length (outline_node (outline, i), outline_segment (outline, i)) / PACE) + 3;
  return room;
}

static CoreStatus
sum_up (Comparison *self)
{
  double *sorted = malloc ((self->count + 1) * sizeof *sorted);

  if (!sorted)
    return CORE_NO_MEMORY;
  self->within = self->most = NAN;
  for (size_t i = 0; i < self->count; i++)
    {
      sorted[i] = self->spots[i].off;
      if (isnan (self->most) || self->spots[i].off > self->most)
        {
          self->most = self->spots[i].off;
          self->most_at = self->spots[i].drawn;
        }
    }
  qsort (sorted, self->count, sizeof *sorted, ascending_doubles);
  if (self->count > 0)
    self->within = sorted[(self->count - 1) * 19 / 20];
  free (sorted);
  return CORE_OK;
}

static CoreStatus
measure (const Work *work, const FollowedLine *line, Comparison *made)
{
  const size_t step = work->px_per_mm * STEP > 1 ? (size_t) round (work->px_per_mm * STEP) : 1;
  size_t asked = 0;

  made->spots = malloc ((line->count / step + 1) * sizeof *made->spots);
  if (!made->spots)
    return CORE_NO_MEMORY;
  for (size_t i = step / 2; i < line->count; i += step)
    {
      const Point printed = to_own (work, line->places[i]);
      size_t segment;
      double t;
      if (!point_is_finite (printed) || (work->request->half && printed.y < BESIDE_AXIS))
        continue;
      asked++;
      if (line->weights[i] < SEEN)
        continue;
      const double off = outline_nearest (work->request->outline, printed, &segment, &t);
      const Point drawn = segment_at (outline_node (work->request->outline, segment),
                                      outline_segment (work->request->outline, segment), t);
      made->spots[made->count++] = (CompareSpot) { .drawn = drawn, .printed = printed, .off = off };
    }
  made->seen = asked > 0 ? (double) made->count / (double) asked : 0;
  return sum_up (made);
}

/* Of the ink's px, about, from the length of the way. */
static double
px_per_mm (const Work *work, const Point places[], size_t count)
{
  double px = 0, mm = 0;

  for (size_t i = 1; i < count; i++)
    {
      px += point_distance (places[i], places[i - 1]);
      mm += point_distance (to_own (work, places[i]), to_own (work, places[i - 1]));
    }
  return px / mm;
}

CoreStatus
compare_outline (const Ink *ink, const CompareRequest *request, Comparison *made)
{
  Work work = { .ink = ink, .request = request, .reduced = ink_reduced (ink) };
  const size_t room = paces_at_most (request->outline);
  Point *places = malloc (room * sizeof *places);
  Comparison self = { .count = 0 };
  FollowedLine line;

  if (!places)
    return CORE_NO_MEMORY;
  const size_t count = pace_outline (&work, places, room);
  CoreStatus status = count < 2 ? CORE_OUT_OF_RANGE : CORE_OK;
  if (!status)
    {
      work.px_per_mm = px_per_mm (&work, places, count);
      const FollowOptions options = { .px_per_mm = work.px_per_mm, .click_sigma = SIGMA * work.px_per_mm,
                                      .goes_on = request->goes_on, .data = request->data };
      status = follow_line (ink, places, count, &options, &line);
    }
  free (places);
  if (status)
    return status;
  status = measure (&work, &line, &self);
  followed_line_clear (&line);
  if (status)
    comparison_clear (&self);
  else
    *made = self;
  return status;
}

void
comparison_clear (Comparison *self)
{
  free (self->spots);
  *self = (Comparison) { .count = 0 };
}
