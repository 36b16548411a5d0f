#include "drawing/view.h"
#include <math.h>

static const double least_scale = 0.05, greatest_scale = 80;      /* px a mm */

Point
view_to_screen (const SheetView *view, Point place)
{
  return (Point) { view->origin_x + place.y * view->scale, view->origin_y + place.x * view->scale };
}

Point
view_from_screen (const SheetView *view, double x, double y)
{
  return (Point) { (y - view->origin_y) / view->scale, (x - view->origin_x) / view->scale };
}

static double
bounded_scale (double scale)
{
  return fmin (fmax (scale, least_scale), greatest_scale);
}

/* The scale at which `length` mm fill what the margins leave of `room` px. */
static double
filling_scale (double room, double margin, double length)
{
  return length > 0 ? fmax (room - 2 * margin, 1) / length : INFINITY;
}

SheetView
view_fitted (const SheetView *view, Box box, double margin)
{
  SheetView fitted = *view;
  const Point middle = point_mix (box.min, box.max, 0.5);

  if (box.min.x > box.max.x || box.min.y > box.max.y)
    return fitted;
  fitted.scale = bounded_scale (fmin (filling_scale (view->width, margin, box.max.y - box.min.y),
                                      filling_scale (view->height, margin, box.max.x - box.min.x)));
  fitted.origin_x = view->width / 2 - middle.y * fitted.scale;
  fitted.origin_y = view->height / 2 - middle.x * fitted.scale;
  return fitted;
}

SheetView
view_zoomed (const SheetView *view, double factor, double x, double y)
{
  SheetView zoomed = *view;

  zoomed.scale = bounded_scale (view->scale * factor);
  zoomed.origin_x = x + (view->origin_x - x) * zoomed.scale / view->scale;
  zoomed.origin_y = y + (view->origin_y - y) * zoomed.scale / view->scale;
  return zoomed;
}

SheetView
view_panned (const SheetView *view, double dx, double dy)
{
  SheetView panned = *view;

  panned.origin_x += dx;
  panned.origin_y += dy;
  return panned;
}
