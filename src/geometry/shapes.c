#include "geometry/shapes.h"

#include <stdlib.h>

static CoreStatus
taper_verify (const double station[], const double leading_x[], const double chord[], size_t count)
{
  if (count < 2)
    return CORE_OUT_OF_RANGE;
  for (size_t i = 0; i < count; i++)
    if (!isfinite (station[i]) || !isfinite (leading_x[i]) || !isfinite (chord[i]))
      return CORE_NOT_FINITE;
  for (size_t i = 0; i < count; i++)
    {
      const bool rises = i == 0 || station[i] > station[i - 1];
      const bool chord_allowed = i + 1 < count ? chord[i] > 0 : chord[i] >= 0;

      if (!rises || !chord_allowed)
        return CORE_OUT_OF_RANGE;
    }
  return CORE_OK;
}

CoreStatus
shape_taper (const double station[], const double leading_x[], const double chord[], size_t count, Outline **made)
{
  CoreStatus status = taper_verify (station, leading_x, chord, count);
  Segment *segments;
  size_t used = 0;

  if (status)
    return status;
  segments = malloc (2 * count * sizeof *segments);
  if (!segments)
    return CORE_NO_MEMORY;
  for (size_t i = 1; i < count; i++)
    segments[used++] = segment_line ((Point) { leading_x[i], station[i] });
  for (size_t i = count; i-- > 0;)
    if (chord[i] > 0)
      segments[used++] = segment_line ((Point) { leading_x[i] + chord[i], station[i] });
  status = outline_new ((Point) { leading_x[0], station[0] }, segments, used, NULL, made);
  free (segments);
  return status;
}

static Segment
edge_to (Point to, Point centre, double rx, double ry)
{
  return rx > 0 ? segment_arc (centre, rx, ry, to) : segment_line (to);
}

CoreStatus
shape_ellipse (double x_root, double semispan, double ahead, double behind, Outline **made)
{
  const Point centre = { x_root + ahead, 0 };
  const Point tip = { centre.x, semispan }, trailing = { centre.x + behind, 0 };
  const Segment edges[2] = { edge_to (tip, centre, ahead, semispan), edge_to (trailing, centre, behind, semispan) };

  if (!isfinite (x_root) || !isfinite (semispan) || !isfinite (ahead) || !isfinite (behind))
    return CORE_NOT_FINITE;
  if (!(semispan > 0 && ahead >= 0 && behind >= 0 && ahead + behind > 0))
    return CORE_OUT_OF_RANGE;
  return outline_new ((Point) { x_root, 0 }, edges, 2, NULL, made);
}
