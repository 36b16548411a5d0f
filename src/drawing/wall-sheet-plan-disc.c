#include "drawing/wall-sheet-plan-disc.h"
#include <math.h>
#include "drawing/symbols.h"

static const double arms = 1.55, margin = 0.8;      /* how far its arms reach, in its radius; beyond them, mm */

PlanDisc
plan_disc_of (const SheetPen *pen, const SheetView *view)
{
  const MassFigures *mass = &pen->sheet->figures->mass;
  const double radius = balance_disc_radius (pen->look, DISC_ON_SHEET);

  if (!isfinite (mass->x_mm) || !isfinite (mass->y_mm))
    return (PlanDisc) { { 0, 0 }, 0, 0 };
  return (PlanDisc) { sheet_px (view, mass->x_mm, mass->y_mm), radius + margin, arms * radius + margin };
}

Box
plan_disc_box (const PlanDisc *self)
{
  return (Box) { { self->at.x - self->keep, self->at.y - self->keep }, { self->at.x + self->keep, self->at.y + self->keep } };
}

double
plan_distance_to_line (Point p, Point a, Point b)
{
  const Point way = point_sub (b, a), out = point_sub (p, a);
  const double length2 = way.x * way.x + way.y * way.y, t = length2 > 0 ? (way.x * out.x + way.y * out.y) / length2 : 0;

  return point_distance (p, point_mix (a, b, fmin (1, fmax (0, t))));
}

double
plan_disc_cost (const PlanDisc *self, Point on_part, Point balloon, double radius)
{
  const double rounding = 0.1, of_mm = 6, near = plan_distance_to_line (self->at, on_part, balloon);
  const double end = fmin (point_distance (self->at, on_part), self->keep);

  if (self->keep <= 0 || (near >= end - rounding && point_distance (self->at, balloon) >= self->keep + radius))
    return 0;
  if (near < fmin (end - rounding, self->disc) || point_distance (self->at, balloon) < self->keep + radius)
    return INFINITY;
  return of_mm * (end - near);
}

Point
plan_disc_anchor (const PlanDisc *self, const SheetView *view, const Part *part)
{
  static const Point shares[] = { { 0, 0 }, { -0.3, 0 }, { 0.3, 0 }, { 0, -0.3 }, { 0, 0.3 }, { -0.4, 0 }, { 0.4, 0 } };
  const Point extent = part_extent (part);
  Point best = sheet_px (view, part->x, part->y);

  for (size_t i = 0; i < G_N_ELEMENTS (shares) && point_distance (self->at, best) < self->keep; i++)
    {
      const Point at = sheet_px (view, part->x + shares[i].x * extent.x, part->y + shares[i].y * extent.y);

      if (point_is_finite (at) && point_distance (self->at, at) > point_distance (self->at, best))
        best = at;
    }
  return best;
}
