#include "plan/blunt-end.h"

#include <math.h>
#include "plan/stretch.h"

/* Radians: how far a cut may be raked, from try to try, and how finely that is told in the end. */
static const double RAKED = 36 * M_PI / 180, RAKE_STEP = 1 * M_PI / 180, FINEST = 0.05 * M_PI / 180;
/* Deviations of the click: how far off it a cut is looked for, how far beyond its end it may lie. What one off costs, squared, in mm of a
 * cut. */
static const double BESIDE = 3, BEYOND = 2.5, OFF_COSTS = 1;
/* mm: the shortest cut, how far one may go on without ink, the longest; from look to look along it. */
static const double SHORTEST = 2.5, GAP = 0.8, LONGEST = 250, STEP = 0.25;
/* mm: where the line that leaves a cut is looked at, past the cut's own width; radians from the cut: it turns so much at least. */
static const double LEAVES_FROM = 1, LEAVES_TO = 4, LEAVES_STEP = 0.25, LEAST_TURN = 35 * M_PI / 180, TURN_STEP = 4 * M_PI / 180;
/* Of such a look: so much of it is inked. The ink's unit: less is no line. */
static const double INKED = 0.85, FAINTEST = 64;
/* Of the way to the neighbour: with so little unseen it runs there; with more than that it does not. */
static const double SEEN = 0.12, LOST = 0.4;
enum { MOST_TRIED = 4 };

/* In the ink's px. A cut runs through `at` along `way`, so far either way. */
typedef struct { Point at, way; double ends[2]; } Cut;

typedef struct {
  const Ink *ink;
  const TraceRequest *request;
  const EndClick *click;
  double reduced, mm;         /* file px and mm: of one ink px, of ink px a mm */
  Point at, inwards;          /* ink px; the way along the axis into the body, of length 1 */
} Search;

static bool
is_inked (const Search *self, Point place)
{
  return place.x >= 0 && place.y >= 0 && place.x <= ink_width (self->ink) && place.y <= ink_height (self->ink)
         && ink_at (self->ink, place) >= FAINTEST;
}

/* How far the ink goes on that way, ink px. */
static double
goes_on (const Search *self, Point from, Point way)
{
  double last = 0;

  for (double along = 0; along <= LONGEST * self->mm && along - last <= GAP * self->mm; along++)
    if (is_inked (self, point_add (from, point_scale (way, along))))
      last = along;
  return last;
}

static Point
turned (Point way, double by)
{
  return (Point) { way.x * cos (by) - way.y * sin (by), way.x * sin (by) + way.y * cos (by) };
}

static double
worth (const Search *self, const Cut *cut, double off)
{
  const double sigmas = off / (self->request->click_sigma / self->reduced);

  return (cut->ends[0] + cut->ends[1]) / self->mm - OFF_COSTS * sigmas * sigmas;
}

/* Takes that cut if it is worth more than the best; whether it is. A click at a corner may lie beyond it, so its neighbours on the way are
 * asked, too. */
static bool
try_cut_from (const Search *self, double rake, double off, double along, double *most, Cut *best)
{
  Cut cut = { .way = turned (self->inwards, M_PI / 2 + rake) };

  cut.at = point_add (point_add (self->at, point_scale (self->inwards, off)), point_scale (cut.way, along));

  if (!is_inked (self, cut.at))
    return false;
  cut.ends[0] = goes_on (self, cut.at, cut.way);
  cut.ends[1] = goes_on (self, cut.at, point_scale (cut.way, -1));
  if (worth (self, &cut, off) <= *most)
    return false;
  *most = worth (self, &cut, off);
  *best = cut;
  return true;
}

static bool
try_cut (const Search *self, double rake, double off, double *most, Cut *best)
{
  const double beyond = BEYOND * self->request->click_sigma / self->reduced;
  bool found = false;

  for (int side = -1; side <= 1; side++)
    found |= try_cut_from (self, rake, off, side * beyond, most, best);
  return found;
}

static bool
find_cut (const Search *self, Cut *best)
{
  const double beside = floor (BESIDE * self->request->click_sigma / self->reduced);
  double most = SHORTEST, rake = NAN, off = 0;

  for (double turn = -RAKED; turn <= RAKED + RAKE_STEP / 2; turn += RAKE_STEP)
    for (double aside = -beside; aside <= beside; aside++)
      if (try_cut (self, turn, aside, &most, best))
        {
          rake = turn;
          off = aside;
        }
  for (double step = RAKE_STEP / 2; step > FINEST && !isnan (rake); step /= 2)
    for (int side = -1; side <= 1; side += 2)
      if (try_cut (self, rake + side * step, off, &most, best))
        {
          rake += side * step;
          break;
        }
  return !isnan (rake);
}

/* Whether a line leaves the cut at a place into the body. */
static bool
line_leaves (const Search *self, Point place, Point outwards)
{
  for (double turn = LEAST_TURN; turn <= M_PI - LEAST_TURN; turn += TURN_STEP)
    {
      const double side = outwards.x * self->inwards.y > outwards.y * self->inwards.x ? 1 : -1;
      const Point way = turned (outwards, side * turn);
      int inked = 0, looks = 0;
      for (double along = LEAVES_FROM; along <= LEAVES_TO; along += LEAVES_STEP, looks++)
        inked += is_inked (self, point_add (place, point_scale (way, along * self->mm)));
      if (inked >= INKED * looks)
        return true;
    }
  return false;
}

/* The share of the way from the neighbour to there along which no line is seen. */
static double
lost_to (const Search *self, Point neighbour, Point corner)
{
  const StretchRequest request = { .mapping = self->request->mapping, .from = neighbour, .to = point_scale (corner, self->reduced),
                                   .click_sigma = self->request->click_sigma, .goes_on = self->request->goes_on,
                                   .data = self->request->data };
  Stretch stretch;

  if (stretch_follow (self->ink, &request, &stretch))
    return 1;
  const double lost = stretch.lost;
  stretch_clear (&stretch);
  return lost;
}

/* From the cut's end inwards, each place where a line leaves is tried: the middle of the looks that show one. */
static bool
find_corner (const Search *self, const Cut *cut, int end, Point neighbour, Point *corner)
{
  const Point outwards = point_scale (cut->way, end ? -1 : 1);
  const double step = STEP * self->mm;
  double from = NAN, least = LOST;
  bool found = false;
  int tried = 0;

  for (double along = cut->ends[end] + step; along > -step && tried < MOST_TRIED && least > SEEN; along -= step)
    {
      const bool leaves = along > 0 && line_leaves (self, point_add (cut->at, point_scale (outwards, along)), outwards);
      if (leaves && isnan (from))
        from = along;
      if (leaves || isnan (from))
        continue;
      const Point place = point_add (cut->at, point_scale (outwards, fmin ((from + along + step) / 2, cut->ends[end])));
      const double lost = lost_to (self, neighbour, place);
      from = NAN;
      tried++;
      if (lost >= least)
        continue;
      least = lost;
      *corner = point_scale (place, self->reduced);
      found = true;
    }
  return found;
}

/* Which neighbour the cut's first end leads to: the shorter way in all. */
static int
neighbour_of_first (const Search *self, const Cut *cut)
{
  const Point first = point_add (cut->at, point_scale (cut->way, cut->ends[0]));
  const Point second = point_sub (cut->at, point_scale (cut->way, cut->ends[1]));
  Point neighbours[2];

  for (int i = 0; i < 2; i++)
    neighbours[i] = point_scale (self->click->neighbours[i], 1 / self->reduced);
  return point_distance (first, neighbours[0]) + point_distance (second, neighbours[1])
         <= point_distance (first, neighbours[1]) + point_distance (second, neighbours[0]) ? 0 : 1;
}

/* The ink px that a step along the axis from the click is, into the body. */
static Point
inwards_of (const TraceRequest *request, const EndClick *click)
{
  const Point middle = point_mix (click->neighbours[0], click->neighbours[1], 0.5);
  const Point own = axis_frame_own (&request->frame, mapping_to_mm (request->mapping, click->at));
  const Point body = axis_frame_own (&request->frame, mapping_to_mm (request->mapping, middle));
  const Point on = { own.x + (body.x > own.x ? 1 : -1), own.y };
  const Point way = point_sub (mapping_to_px (request->mapping, axis_frame_paper (&request->frame, on)), click->at);

  return point_scale (way, 1 / hypot (way.x, way.y));
}

void
blunt_end_find (const Ink *ink, const TraceRequest *request, double mm_a_px, const EndClick *click, Point corners[2], bool found[2])
{
  const double reduced = ink_reduced (ink);
  const Search self = { .ink = ink, .request = request, .click = click, .reduced = reduced, .mm = 1 / (mm_a_px * reduced),
                        .at = point_scale (click->at, 1 / reduced), .inwards = inwards_of (request, click) };
  Cut cut;

  found[0] = found[1] = false;
  if (!point_is_finite (self.inwards) || !find_cut (&self, &cut))
    return;
  const int first = neighbour_of_first (&self, &cut);
  for (int end = 0; end < 2; end++)
    {
      const int which = end == 0 ? first : 1 - first;
      found[which] = find_corner (&self, &cut, end, click->neighbours[which], &corners[which]);
    }
}
