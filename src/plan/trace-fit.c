#include "plan/trace-fit.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>
#include "geometry/curve-fit.h"
#include "geometry/half-ellipse.h"
#include "geometry/stretch.h"

/* mm and radians. A node looks at 2.5 mm of line each way; a corner turns by 5.5 degrees at least. */
static const double WINDOW = 1.2, REACH = 2.5, LEAST_TURN = 5.5 * M_PI / 180;
/* Of the tolerance, as a rule, and where the print is at fault; and how much of the line that may be. What is to count as an ellipse must be
 * one, and not only come near. */
static const double ELLIPTIC = 0.35, FAR = 2.5, AT_FAULT = 0.02;
/* An elliptical tip is tried from so many stations; what is smaller than the last is a rounded corner. */
static const double TIP_STATIONS[] = { 0.3, 0.5, 0.65, 0.75, 0.82, 0.88, 0.92 };
/* Of the half-span: a centre so near the axis lies on it. */
static const double ON_AXIS = 0.01;

/* mm: how far from the aftmost place a body's after end may have its corner, from look to look; where the run's way is looked at beside it,
 * and over how much. Radians: less is a round end. */
static const double AFTER_REACH = 15, AFTER_STEP = 0.1, BESIDE_TURN = 0.3, TURN_OVER = 2, AFTER_CORNER = 40 * M_PI / 180;

static CurveFitOptions
options_for (double tolerance)
{
  return (CurveFitOptions) { .tolerance = tolerance, .window = WINDOW, .reach = REACH, .least_turn = LEAST_TURN };
}

static double
half_span (const DrawnRun *run)
{
  double most = 0;

  for (size_t i = 0; i < run->count; i++)
    most = fmax (most, run->places[i].y);
  return most;
}

static bool
is_elliptic (const DrawnRun *run, double from, bool held, double tolerance, HalfEllipse *ellipse)
{
  double at_fault;

  return !half_ellipse_fit (run, from, held, tolerance, ellipse)
         && half_ellipse_miss (run, ellipse, WINDOW, FAR * tolerance, &at_fault) <= ELLIPTIC * tolerance && at_fault <= AT_FAULT;
}

static bool
find_ellipse (const DrawnRun *run, double tolerance, HalfEllipse *ellipse)
{
  const double span = half_span (run);

  if (is_elliptic (run, 0, true, tolerance, ellipse))
    return true;
  for (size_t i = 0; i < sizeof TIP_STATIONS / sizeof *TIP_STATIONS; i++)
    if (is_elliptic (run, TIP_STATIONS[i] * span, false, tolerance, ellipse) && ellipse->centre.y > ON_AXIS * span
        && ellipse->centre.y < (1 + TIP_STATIONS[i]) / 2 * span)
      return true;
  return false;
}

/* A part of the run as a run of its own, whose first or last place is put where it meets the ellipse. */
static CoreStatus
fit_part (const DrawnRun *run, Point *places, size_t first, size_t last, double tolerance, FittedCurve *made)
{
  double *along = malloc ((last - first + 1) * sizeof *along);

  if (!along)
    return CORE_NO_MEMORY;
  drawn_run_lengths (places + first, last - first + 1, along);
  const DrawnRun part = { .places = places + first, .weights = run->weights + first, .along = along, .count = last - first + 1 };
  const CurveFitOptions options = options_for (tolerance);
  const CoreStatus status = curve_fit (&part, &options, made);
  free (along);
  return status;
}

static CoreStatus
join (const FittedCurve *ahead, const HalfEllipse *ellipse, const FittedCurve *behind, Outline **outline)
{
  const Point tip = { ellipse->centre.x, ellipse->centre.y + ellipse->outboard };
  const Point aft = { ellipse->centre.x + ellipse->behind, ellipse->centre.y };
  Segment *segments = malloc ((ahead->count + behind->count + 2) * sizeof *segments);
  size_t count = 0;

  if (!segments)
    return CORE_NO_MEMORY;
  for (size_t i = 0; i < ahead->count; i++)
    segments[count++] = ahead->segments[i];
  segments[count++] = segment_arc (ellipse->centre, ellipse->ahead, ellipse->outboard, tip);
  segments[count++] = segment_arc (ellipse->centre, ellipse->behind, ellipse->outboard, aft);
  for (size_t i = 0; i < behind->count; i++)
    segments[count++] = behind->segments[i];
  const CoreStatus status = outline_new (ahead->start, segments, count, NULL, outline);
  free (segments);
  return status;
}

/* Inboard of the ellipse's centre, lines and curves; none where it stands on the axis. */
static CoreStatus
fit_about_ellipse (const DrawnRun *run, Point *places, double tolerance, const HalfEllipse *ellipse, Outline **outline)
{
  const Point fore = { ellipse->centre.x - ellipse->ahead, ellipse->centre.y }, aft = { ellipse->centre.x + ellipse->behind, fore.y };
  FittedCurve ahead = { .start = fore }, behind = { .start = aft };
  size_t first = 0, last = run->count - 1;
  CoreStatus status = CORE_OK;

  if (fore.y > 0)
    {
      while (first + 1 < run->count && places[first].y < fore.y)
        first++;
      while (last > first && places[last].y < aft.y)
        last--;
      if (first < 2 || last + 3 > run->count)
        return CORE_OUT_OF_RANGE;
      const Point was[2] = { places[first], places[last] };
      places[first] = fore;
      places[last] = aft;
      status = fit_part (run, places, 0, first, tolerance, &ahead);
      if (!status)
        status = fit_part (run, places, last, run->count - 1, tolerance, &behind);
      places[first] = was[0];
      places[last] = was[1];
    }
  if (!status)
    status = join (&ahead, ellipse, &behind, outline);
  fitted_curve_clear (&ahead);
  fitted_curve_clear (&behind);
  return status;
}

/* How sharply the run turns there, radians. */
static double
turn_at (const DrawnRun *run, double along)
{
  RunPassage before, after;

  if (drawn_run_passage (run, along - BESIDE_TURN, TURN_OVER, PASSAGE_BEHIND, &before)
      || drawn_run_passage (run, along + BESIDE_TURN, TURN_OVER, PASSAGE_AHEAD, &after))
    return 0;
  return fabs (atan2 (point_cross (before.direction, after.direction), point_dot (before.direction, after.direction)));
}

/* The place where it goes back: the aftmost, or the sharpest corner near it, since a part that begins beside one loses it. */
static size_t
find_after_end (const DrawnRun *run)
{
  size_t aft = 0;
  double sharpest = AFTER_CORNER;

  for (size_t i = 1; i < run->count; i++)
    if (run->places[i].x > run->places[aft].x)
      aft = i;
  const double middle = run->along[aft];
  for (double along = middle - AFTER_REACH; along <= middle + AFTER_REACH; along += AFTER_STEP)
    {
      const double turn = along > 0 && along < run->along[run->count - 1] ? turn_at (run, along) : 0;
      if (turn <= sharpest)
        continue;
      sharpest = turn;
      aft = drawn_run_at (run, along);
    }
  return aft;
}

/* Forth along the top to the after end and back below: a fit that begins where it ends would have nothing between its ends. */
static CoreStatus
fit_round (const DrawnRun *run, Point *places, double tolerance, Outline **outline)
{
  FittedCurve above = { .count = 0 }, below = { .count = 0 };
  const size_t aft = find_after_end (run);

  if (aft < 2 || aft + 3 > run->count)
    return CORE_OUT_OF_RANGE;
  CoreStatus status = fit_part (run, places, 0, aft, tolerance, &above);
  if (!status)
    status = fit_part (run, places, aft, run->count - 1, tolerance, &below);
  Segment *segments = status ? NULL : malloc ((above.count + below.count) * sizeof *segments);
  if (!status && !segments)
    status = CORE_NO_MEMORY;
  if (!status)
    {
      memcpy (segments, above.segments, above.count * sizeof *segments);
      memcpy (segments + above.count, below.segments, below.count * sizeof *segments);
      status = outline_new (above.start, segments, above.count + below.count, NULL, outline);
    }
  free (segments);
  fitted_curve_clear (&above);
  fitted_curve_clear (&below);
  return status;
}

CoreStatus
trace_fit (const DrawnRun *run, Point *places, bool half, double tolerance, Outline **outline)
{
  const CurveFitOptions options = options_for (tolerance);
  HalfEllipse ellipse;
  FittedCurve fitted;

  if (!half)
    return fit_round (run, places, tolerance, outline);
  if (find_ellipse (run, tolerance, &ellipse) && !fit_about_ellipse (run, places, tolerance, &ellipse, outline))
    return CORE_OK;
  CoreStatus status = curve_fit (run, &options, &fitted);
  if (status)
    return status;
  status = outline_new (fitted.start, fitted.segments, fitted.count, NULL, outline);
  fitted_curve_clear (&fitted);
  return status;
}
