#include "support/plan-camera.h"

#include <math.h>

enum { BORDER_PX = 12 };

static Point
flat (const PlanCamera *self, Point mm)
{
  const double w = self->h[6] * mm.x + self->h[7] * mm.y + 1;

  return (Point) { (self->h[0] * mm.x + self->h[1] * mm.y + self->h[2]) / w, (self->h[3] * mm.x + self->h[4] * mm.y + self->h[5]) / w };
}

Point
plan_camera_px (const PlanCamera *self, Point mm)
{
  const Point way = point_sub (flat (self, mm), self->centre);
  const double r2 = (way.x * way.x + way.y * way.y) / (self->radius * self->radius);

  return point_add (self->centre, point_scale (way, 1 + self->k1 * r2));
}

PlanCamera
plan_camera_for (const SheetRecipe *recipe, int *width, int *height)
{
  const double scale = recipe->dpi / 25.4, turn = recipe->skew_degrees * M_PI / 180, stretch = 1 + recipe->stretch_x;
  PlanCamera self = { .h = { scale * stretch * cos (turn), -scale * stretch * sin (turn), 0, scale * sin (turn), scale * cos (turn), 0,
                         0.2 * recipe->tilt / SHEET_WIDTH, -recipe->tilt / SHEET_HEIGHT }, .k1 = recipe->k1, .radius = 1 };
  Point least = { INFINITY, INFINITY }, most = { -INFINITY, -INFINITY };

  for (int i = 0; i < 4; i++)
    {
      const Point corner = flat (&self, (Point) { i % 2 * SHEET_WIDTH, i / 2 * SHEET_HEIGHT });
      least = (Point) { fmin (least.x, corner.x), fmin (least.y, corner.y) };
      most = (Point) { fmax (most.x, corner.x), fmax (most.y, corner.y) };
    }
  for (int i = 0; i < 3; i++)
    {
      self.h[i] += (BORDER_PX - least.x) * (i < 2 ? self.h[6 + i] : 1);
      self.h[3 + i] += (BORDER_PX - least.y) * (i < 2 ? self.h[6 + i] : 1);
    }
  *width = (int) ceil (most.x - least.x) + 2 * BORDER_PX;
  *height = (int) ceil (most.y - least.y) + 2 * BORDER_PX;
  self.centre = (Point) { *width / 2.0, *height / 2.0 };
  self.radius = hypot (*width, *height) / 2;
  return self;
}

double
plan_camera_scale (const PlanCamera *self)
{
  const Point middle = { SHEET_WIDTH / 2, SHEET_HEIGHT / 2 };

  return (point_distance (plan_camera_px (self, middle), plan_camera_px (self, (Point) { middle.x + 1, middle.y }))
          + point_distance (plan_camera_px (self, middle), plan_camera_px (self, (Point) { middle.x, middle.y + 1 }))) / 2;
}
