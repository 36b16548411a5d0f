#include "plan/mapping-private.h"

static const Point NOWHERE = { NAN, NAN };

/* ρ with ρ (1 + k1 ρ²) = distorted, on the branch that begins at 0; NAN beyond its end. */
static double
undistorted_radius (double k1, double distorted)
{
  double radius = distorted;

  if (k1 < 0 && distorted >= 2.0 / 3 / sqrt (-3 * k1))
    return NAN;
  for (int i = 0; i < 50; i++)
    {
      const double step = (radius * (1 + k1 * radius * radius) - distorted) / (1 + 3 * k1 * radius * radius);

      radius -= step;
      if (!(fabs (step) > 1e-16 * (1 + fabs (radius))))
        break;
    }
  return radius;
}

Point
mapping_undo_lens (const Mapping *mapping, Point px)
{
  const Point way = point_sub (px, mapping->lens_centre);
  const double distorted = hypot (way.x, way.y) / mapping->lens_radius;

  if (mapping->k1 == 0 || distorted == 0)
    return px;
  return point_add (mapping->lens_centre, point_scale (way, undistorted_radius (mapping->k1, distorted) / distorted));
}

static Point
through_lens (const Mapping *mapping, Point straight)
{
  const Point way = point_sub (straight, mapping->lens_centre);
  const double radius = hypot (way.x, way.y) / mapping->lens_radius;

  if (mapping->k1 == 0)
    return straight;
  if (1 + 3 * mapping->k1 * radius * radius <= 0)
    return NOWHERE;
  return point_add (mapping->lens_centre, point_scale (way, 1 + mapping->k1 * radius * radius));
}

Point
mapping_to_mm (const Mapping *mapping, Point px)
{
  const double *h = mapping->h;
  const Point at = mapping_undo_lens (mapping, px);
  const double depth = h[6] * at.x + h[7] * at.y + h[8];

  if (!(depth > 0))
    return NOWHERE;
  return (Point) { (h[0] * at.x + h[1] * at.y + h[2]) / depth, (h[3] * at.x + h[4] * at.y + h[5]) / depth };
}

Point
mapping_to_px (const Mapping *mapping, Point mm)
{
  const double *h = mapping->h;
  /* Rows of h less the place times the last row: two equations of the straight picture's place. */
  const double a = h[0] - mm.x * h[6], b = h[1] - mm.x * h[7], c = h[2] - mm.x * h[8];
  const double d = h[3] - mm.y * h[6], e = h[4] - mm.y * h[7], f = h[5] - mm.y * h[8];
  const double determinant = a * e - b * d;
  const Point straight = { (b * f - c * e) / determinant, (c * d - a * f) / determinant };

  if (!point_is_finite (straight) || !(h[6] * straight.x + h[7] * straight.y + h[8] > 0))
    return NOWHERE;
  return through_lens (mapping, straight);
}

static MappingJacobian
homography_jacobian (const double h[9], Point at)
{
  const double depth = h[6] * at.x + h[7] * at.y + h[8];
  const double x = (h[0] * at.x + h[1] * at.y + h[2]) / depth, y = (h[3] * at.x + h[4] * at.y + h[5]) / depth;

  if (!(depth > 0))
    return (MappingJacobian) { NAN, NAN, NAN, NAN };
  return (MappingJacobian) { (h[0] - x * h[6]) / depth, (h[1] - x * h[7]) / depth, (h[3] - y * h[6]) / depth, (h[4] - y * h[7]) / depth };
}

MappingJacobian
mapping_jacobian (const Mapping *mapping, Point px)
{
  const Point at = mapping_undo_lens (mapping, px), way = point_scale (point_sub (at, mapping->lens_centre), 1 / mapping->lens_radius);
  const MappingJacobian outer = homography_jacobian (mapping->h, at);
  const double even = 1 + mapping->k1 * dot (way, way), twice = 2 * mapping->k1;
  /* The lens's own derivatives, symmetric; theirs are the inverse's wanted here. */
  const double xx = even + twice * way.x * way.x, xy = twice * way.x * way.y, yy = even + twice * way.y * way.y;
  const double determinant = xx * yy - xy * xy;

  if (mapping->k1 == 0)
    return outer;
  return (MappingJacobian) {
    (outer.xx * yy - outer.xy * xy) / determinant, (outer.xy * xx - outer.xx * xy) / determinant,
    (outer.yx * yy - outer.yy * xy) / determinant, (outer.yy * xx - outer.yx * xy) / determinant,
  };
}

double
mapping_mm_per_px (const Mapping *mapping, Point px, Point direction)
{
  const MappingJacobian at = mapping_jacobian (mapping, px);

  return hypot (at.xx * direction.x + at.xy * direction.y, at.yx * direction.x + at.yy * direction.y) / hypot (direction.x, direction.y);
}

static bool
same (double one, double other)
{
  return one == other || (isnan (one) && isnan (other));
}

bool
mapping_equal (const Mapping *one, const Mapping *other)
{
  for (int i = 0; i < 9; i++)
    if (!same (one->h[i], other->h[i]))
      return false;
  return same (one->lens_centre.x, other->lens_centre.x) && same (one->lens_centre.y, other->lens_centre.y)
         && same (one->lens_radius, other->lens_radius) && same (one->k1, other->k1);
}
