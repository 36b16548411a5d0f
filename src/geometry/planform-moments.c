#include "geometry/outline-private.h"
#include "geometry/planform.h"
#include "geometry/quadrature.h"

enum { AREA, X, Y, XX, YY, MOMENTS };

typedef struct {
  const Stretch *stretch;
  Point origin;
} Boundary;

/* Green's theorem: ∫ f dA = ∮ F dy with ∂F/∂x = f, all about the origin; dx the other way for the powers of y. */
static void
boundary_values (double t, const void *data, double values[])
{
  const Boundary *boundary = data;
  const Point p = point_sub (stretch_at (boundary->stretch, t), boundary->origin);
  const Point slope = stretch_slope (boundary->stretch, t);

  values[AREA] = p.x * slope.y;
  values[X] = p.x * p.x * slope.y / 2;
  values[Y] = -p.y * p.y * slope.x / 2;
  values[XX] = p.x * p.x * p.x * slope.y / 3;
  values[YY] = -p.y * p.y * p.y * slope.x / 3;
}

static void
boundary_add (const Outline *outline, Point origin, double sums[MOMENTS])
{
  const double side = box_larger_side (outline->bounds), least = 1e-10 * fabs (outline->area);

  for (size_t i = 0; i <= outline->count; i++)
    {
      const Boundary boundary = { .stretch = &outline->stretches[i], .origin = origin };
      const Quadrature quadrature = {
        .values = boundary_values, .data = &boundary, .count = MOMENTS,
        .accuracy = { least, least * side, least * side, least * side * side, least * side * side }
      };
      quadrature_add (&quadrature, 0, 1, sums);
    }
}

/* The rectangle between the root and the centre line, about the same origin. */
static void
carried_add (const Outline *outline, Point origin, double sums[MOMENTS])
{
  const Point first = outline->stretches[0].from, last = outline->stretches[outline->count].from;
  const double low = fmin (first.x, last.x) - origin.x, high = fmax (first.x, last.x) - origin.x;
  const double inner = -origin.y, root = (first.y + last.y) / 2 - origin.y;
  const double chord = high - low, width = root - inner;

  sums[AREA] += chord * width;
  sums[X] += chord * width * (low + high) / 2;
  sums[Y] += chord * width * (inner + root) / 2;
  sums[XX] += width * (high * high * high - low * low * low) / 3;
  sums[YY] += chord * (root * root * root - inner * inner * inner) / 3;
}

CoreStatus
planform_moments (const Outline *outline, PlanformSides sides, AreaMoments *moments)
{
  const CoreStatus status = outline_surface_status (outline, sides);
  const Point first = outline->stretches[0].from, last = outline->stretches[outline->count].from;
  const Point origin = point_mix (outline->bounds.min, outline->bounds.max, 0.5);
  const double halves = sides == PLANFORM_SINGLE ? 1 : 2, sign = outline->area < 0 ? -1 : 1;
  double sums[MOMENTS] = { 0 };

  if (status)
    return status;
  boundary_add (outline, origin, sums);
  for (size_t k = 0; k < MOMENTS; k++)
    sums[k] *= sign;
  if (sides == PLANFORM_CARRIED && (first.y + last.y) / 2 > 0)
    carried_add (outline, origin, sums);
  const double x = sums[X] / sums[AREA], y = sums[Y] / sums[AREA];
  *moments = (AreaMoments) {
    .area = halves * sums[AREA],
    .x = origin.x + x,
    .y = origin.y + y,
    .xx = halves * (sums[XX] - sums[AREA] * x * x),
    .yy = halves * (sums[YY] + sums[AREA] * origin.y * (2 * y + origin.y))
  };
  return CORE_OK;
}
