#include "plan/trace-round.h"

#include <math.h>
#include <stdlib.h>
#include "geometry/stretch.h"
#include "plan/blunt-end.h"

/* Radians: the clicks turn so much at least where one stands alone at an end. */
static const double ALONE = 75 * M_PI / 180;
/* mm, and deviations of a click: a corner so near a click is that click. */
static const double NEAR = 1, NEAR_SIGMAS = 3;
/* mm: clicks no further behind the foremost one are as far forward. */
static const double FOREMOST = 3;

static Point
own_of (const TraceRequest *request, Point px)
{
  return axis_frame_own (&request->frame, mapping_to_mm (request->mapping, px));
}

/* Of the clicks on the way, where the last is the first again: the one before, the one behind. */
static size_t
before (const TraceRequest *request, size_t i)
{
  return i == 0 ? request->click_count - 2 : i - 1;
}

static size_t
behind (const TraceRequest *request, size_t i)
{
  return i + 2 == request->click_count ? 0 : i + 1;
}

static bool
is_drawn (const TraceRequest *request, size_t stretch)
{
  return request->drawn && request->drawn[stretch];
}

static bool
stands_alone (const TraceRequest *request, size_t i)
{
  const Point at = own_of (request, request->clicks[i]);
  const Point in = point_sub (at, own_of (request, request->clicks[before (request, i)]));
  const Point out = point_sub (own_of (request, request->clicks[behind (request, i)]), at);

  return !is_drawn (request, before (request, i)) && !is_drawn (request, i) && in.x * out.x <= 0
         && fabs (atan2 (point_cross (in, out), point_dot (in, out))) >= ALONE;
}

static bool
is_clicked (const TraceRequest *request, double mm_a_px, Point place)
{
  const double near = fmax (NEAR / mm_a_px, NEAR_SIGMAS * request->click_sigma);

  for (size_t i = 0; i + 1 < request->click_count; i++)
    if (point_distance (request->clicks[i], place) < near)
      return true;
  return false;
}

static void
append (RoundClicks *self, Point click, bool drawn)
{
  self->clicks[self->count] = click;
  self->drawn[self->count++] = drawn;
}

/* A click with the corners beside it; between two corners it says nothing that they do not. */
static void
append_end (const Ink *ink, const TraceRequest *request, double mm_a_px, size_t i, RoundClicks *made)
{
  const EndClick click = { request->clicks[i], { request->clicks[before (request, i)], request->clicks[behind (request, i)] } };
  Point corners[2];
  bool found[2];

  blunt_end_find (ink, request, mm_a_px, &click, corners, found);
  for (int side = 0; side < 2; side++)
    found[side] = found[side] && !is_clicked (request, mm_a_px, corners[side]);
  if (found[0])
    append (made, corners[0], false);
  if (!found[0] || !found[1])
    append (made, click.at, false);
  if (found[1])
    append (made, corners[1], false);
}

/* The first as clicked, if it is forward; else of those that are, the upper one. */
static size_t
find_start (const TraceRequest *request, const RoundClicks *self)
{
  double foremost = INFINITY, highest = -INFINITY;
  size_t start = 0;

  for (size_t i = 0; i < self->count; i++)
    foremost = fmin (foremost, own_of (request, self->clicks[i]).x);
  for (size_t i = 0; i < self->count; i++)
    {
      const Point own = own_of (request, self->clicks[i]);
      if (own.x > foremost + FOREMOST || own.y <= highest)
        continue;
      highest = own.y;
      start = i;
    }
  return start;
}

static void
turn_round (RoundClicks *self, const RoundClicks *from, size_t start)
{
  for (size_t i = 0; i <= from->count; i++)
    append (self, from->clicks[(start + i) % from->count], from->drawn[(start + i) % from->count]);
}

static CoreStatus
make_room (RoundClicks *self, size_t room)
{
  *self = (RoundClicks) { .clicks = malloc (room * sizeof *self->clicks), .drawn = malloc (room * sizeof *self->drawn) };
  return self->clicks && self->drawn ? CORE_OK : CORE_NO_MEMORY;
}

CoreStatus
round_clicks (const Ink *ink, const TraceRequest *request, double mm_a_px, RoundClicks *made)
{
  const size_t room = 3 * request->click_count;
  RoundClicks with_corners, self;
  CoreStatus status = make_room (&with_corners, room), other = make_room (&self, room);

  if (!status && !other)
    {
      for (size_t i = 0; i + 1 < request->click_count; i++)
        if (stands_alone (request, i))
          append_end (ink, request, mm_a_px, i, &with_corners);
        else
          append (&with_corners, request->clicks[i], is_drawn (request, i));
      turn_round (&self, &with_corners, find_start (request, &with_corners));
      *made = self;
    }
  else
    round_clicks_clear (&self);
  round_clicks_clear (&with_corners);
  return status ? status : other;
}

void
round_clicks_clear (RoundClicks *self)
{
  free (self->clicks);
  free (self->drawn);
  *self = (RoundClicks) { .count = 0 };
}
