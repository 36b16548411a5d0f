#include "plan/mapping-private.h"

Mapping
mapping_plain (double width_px, double height_px)
{
  return (Mapping) {
    .h = { 1, 0, 0, 0, 1, 0, 0, 0, 1 },
    .lens_centre = { width_px / 2, height_px / 2 }, .lens_radius = hypot (width_px, height_px) / 2,
  };
}

MappingMisfit
misfit_nothing (void)
{
  return (MappingMisfit) {
    .difference_percent = NAN, .difference_click_percent = NAN, .rectangle_click_percent = NAN, .true_size_percent = NAN,
    .lens_k1 = NAN, .lens_k1_click = NAN, .bend_before_px = NAN, .bend_after_px = NAN,
  };
}

/* The scale of the picture's own size, before anything else. */
static CoreStatus
from_true_size (const Knowns *knowns, Mapping *mapping, MappingMisfit *misfit)
{
  if (isnan (knowns->mm_per_px))
    return CORE_SINGULAR;
  mapping->h[0] = mapping->h[4] = knowns->mm_per_px;
  misfit->maker = MADE_BY_TRUE_SIZE;
  return CORE_OK;
}

static CoreStatus
make (const Knowns *knowns, Mapping *mapping, MappingMisfit *misfit)
{
  if (knowns->rectangle)
    return mapping_from_rectangle (knowns, mapping, misfit);
  if (knowns->length_count > 0)
    return mapping_from_lengths (knowns, mapping, misfit);
  return from_true_size (knowns, mapping, misfit);
}

/* A homography is only known but for a factor; with this one the picture's middle is before the paper, at a depth of 1. */
static bool
face_the_paper (Mapping *mapping)
{
  double *h = mapping->h;
  const double depth = h[6] * mapping->lens_centre.x + h[7] * mapping->lens_centre.y + h[8];

  for (int i = 0; i < 9; i++)
    h[i] /= depth;
  for (int i = 0; i < 9; i++)
    if (!isfinite (h[i]))
      return false;
  return true;
}

/* Turns the paper about its origin, so that the line runs along the nearest of its axes. */
static CoreStatus
turn_level (const Knowns *knowns, Mapping *mapping)
{
  const Point way = point_sub (mapping_to_mm (mapping, knowns->level[1]), mapping_to_mm (mapping, knowns->level[0]));
  const double angle = atan2 (way.y, way.x), quarter = acos (-1) / 2, turn = angle - quarter * round (angle / quarter);
  const double c = cos (turn), s = sin (turn);

  if (!knowns->has_level)
    return CORE_OK;
  if (!point_is_finite (way) || hypot (way.x, way.y) == 0)
    return CORE_SINGULAR;
  for (int i = 0; i < 3; i++)
    {
      const double x = mapping->h[i], y = mapping->h[3 + i];

      mapping->h[i] = c * x + s * y;
      mapping->h[3 + i] = c * y - s * x;
    }
  return CORE_OK;
}

static void
tell_scales (const Knowns *knowns, const Mapping *mapping, MappingMisfit *misfit)
{
  misfit->scale_x = mapping_mm_per_px (mapping, mapping->lens_centre, (Point) { 1, 0 });
  misfit->scale_y = mapping_mm_per_px (mapping, mapping->lens_centre, (Point) { 0, 1 });
  if (misfit->maker != MADE_BY_TRUE_SIZE)
    misfit->true_size_percent = 100 * (sqrt (misfit->scale_x * misfit->scale_y) / knowns->mm_per_px - 1);
}

CoreStatus
mapping_solve (const Knowns *knowns, Mapping *mapping, MappingMisfit *misfit)
{
  Mapping made;
  MappingMisfit left = misfit_nothing ();
  CoreStatus status = knowns_check (knowns);

  if (status)
    return status;
  made = mapping_plain (knowns->width_px, knowns->height_px);
  if ((status = mapping_find_lens (knowns, &made, &left)) || (status = make (knowns, &made, &left)))
    return status;
  if (!face_the_paper (&made))
    return CORE_SINGULAR;
  if ((status = turn_level (knowns, &made)))
    return status;
  mapping_check_lengths (knowns, &made, &left);
  tell_scales (knowns, &made, &left);
  *mapping = made;
  if (misfit)
    *misfit = left;
  return CORE_OK;
}
