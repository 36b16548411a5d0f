#include "plan/mapping-private.h"

/* Lengths so placed that two scales come out this many times worse than from equal lengths across each other cannot tell them. */
static const double WORSE_THAN_ACROSS = 5;

/* Paper and scanners stretch one way more than the other by some parts in a thousand. More than this, %, is a mistake. Common
 * practice, no source. */
static const double STRETCH_MOST = 3;
/* A residual beyond this many standard deviations is none of the clicks' doing. */
static const double BEYOND_CLICKS = 2.5;

/* The normal equations of u = sx², v = sy² from Δx² u + Δy² v = L². Each row is scaled so that its error is that of its pixels,
 * the same for all that are clicked alike: (Δx² u + Δy² v - L²) / 2L is the error in mm, and L / pixels is a millimetre's worth of pixels. */
typedef struct { double uu, uv, vv, u, v, pixels; } Normal;

/* One standard deviation of a length between two clicks, px. */
static double
sigma_of (const KnownLength *length)
{
  return fmax (length->click_sigma * M_SQRT2, LENGTH_SIGMA_PX);
}

/* How much a length counts beside one clicked as usual: its root, for rows that are squared. */
static double
share_of (const KnownLength *length)
{
  return LENGTH_SIGMA_PX / sigma_of (length);
}

static Normal
normal_of (const Knowns *knowns, const Point ways[])
{
  Normal sum = { 0 };

  for (size_t i = 0; i < knowns->length_count; i++)
    {
      const double pixels = hypot (ways[i].x, ways[i].y) * share_of (&knowns->lengths[i]), mm = knowns->lengths[i].mm;
      const double weight = pixels / (2 * mm * mm);
      const double u = ways[i].x * ways[i].x * weight, v = ways[i].y * ways[i].y * weight, wanted = pixels / 2;

      sum.uu += u * u, sum.uv += u * v, sum.vv += v * v;
      sum.u += u * wanted, sum.v += v * wanted;
      sum.pixels += pixels * pixels;
    }
  return sum;
}

/* Least squares on the pixels, Σ (L / s - pixels)². mm per px. */
static double
one_scale (const Knowns *knowns, const Point ways[])
{
  double above = 0, below = 0;

  for (size_t i = 0; i < knowns->length_count; i++)
    {
      const double mm = knowns->lengths[i].mm, share = share_of (&knowns->lengths[i]);

      above += share * share * mm * mm;
      below += share * share * mm * hypot (ways[i].x, ways[i].y);
    }
  return above / below;
}

static Normal
normal_through (const Knowns *knowns, const Mapping *mapping)
{
  Point ways[KNOWN_LENGTHS_MOST] = { { 0, 0 } };

  for (size_t i = 0; i < knowns->length_count; i++)
    ways[i] = point_sub (mapping_undo_lens (mapping, knowns->lengths[i].b), mapping_undo_lens (mapping, knowns->lengths[i].a));
  return normal_of (knowns, ways);
}

/* Both scales and what is to be said of their difference; false when the lengths cannot tell them. */
static bool
two_scales (const Normal *normal, MappingMisfit *misfit, double scales[2])
{
  const double determinant = normal->uu * normal->vv - normal->uv * normal->uv;
  const double u = (normal->u * normal->vv - normal->v * normal->uv) / determinant;
  const double v = (normal->v * normal->uu - normal->u * normal->uv) / determinant;
  const double spread = (normal->uu / (v * v) + normal->vv / (u * u) + 2 * normal->uv / (u * v)) / determinant;
  const double sigma = LENGTH_SIGMA_PX * sqrt (spread) / 2;      /* of sy / sx */
  const double across = LENGTH_SIGMA_PX * 2 / sqrt (normal->pixels);      /* the same if half of them lay along, half across */

  misfit->badly_conditioned = !(determinant > 0) || !(u > 0) || !(v > 0) || !(sigma <= WORSE_THAN_ACROSS * across);
  if (!(determinant > 0) || !(u > 0) || !(v > 0) || !isfinite (sigma))
    return false;
  scales[0] = sqrt (u), scales[1] = sqrt (v);
  misfit->difference_percent = 100 * (scales[1] / scales[0] - 1);
  misfit->difference_click_percent = 100 * 2 * sigma;
  misfit->explained = fabs (misfit->difference_percent) <= misfit->difference_click_percent;
  return !misfit->badly_conditioned;
}

static void
scale_set (Mapping *mapping, double x, double y)
{
  const double h[9] = { x, 0, 0, 0, y, 0, 0, 0, 1 };

  for (int i = 0; i < 9; i++)
    mapping->h[i] = h[i];
}

CoreStatus
mapping_from_lengths (const Knowns *knowns, Mapping *mapping, MappingMisfit *misfit)
{
  Point ways[KNOWN_LENGTHS_MOST] = { { 0, 0 } };
  Normal normal;
  double scales[2], one;
  bool can_tell;

  for (size_t i = 0; i < knowns->length_count; i++)
    ways[i] = point_sub (mapping_undo_lens (mapping, knowns->lengths[i].b), mapping_undo_lens (mapping, knowns->lengths[i].a));
  normal = normal_of (knowns, ways);
  one = one_scale (knowns, ways);
  can_tell = knowns->length_count > 1 && two_scales (&normal, misfit, scales);
  misfit->maker = MADE_BY_LENGTHS;
  misfit->each_way = can_tell && knowns->scales != SCALES_ONE && (knowns->scales == SCALES_EACH || !misfit->explained);
  if (misfit->each_way)
    scale_set (mapping, scales[0], scales[1]);
  else
    scale_set (mapping, one, one);
  return isfinite (one) ? CORE_OK : CORE_SINGULAR;
}

/* How much of its own figure a length has settled by itself, 0 to 1: what is left cannot be a residual (its leverage). */
static double
leverage (const Knowns *knowns, const Mapping *mapping, const MappingMisfit *misfit, const Normal *normal, size_t i)
{
  const Point way = point_sub (mapping_undo_lens (mapping, knowns->lengths[i].b), mapping_undo_lens (mapping, knowns->lengths[i].a));
  const double pixels = hypot (way.x, way.y) * share_of (&knowns->lengths[i]), weight = pixels / (2 * knowns->lengths[i].mm * knowns->lengths[i].mm);
  const double u = way.x * way.x * weight, v = way.y * way.y * weight;

  if (misfit->maker != MADE_BY_LENGTHS)
    return 0;
  if (!misfit->each_way)
    return pixels * pixels / normal->pixels;
  return (u * u * normal->vv + v * v * normal->uu - 2 * u * v * normal->uv) / (normal->uu * normal->vv - normal->uv * normal->uv);
}

static bool
scales_too_different (const MappingMisfit *misfit)
{
  return misfit->maker == MADE_BY_LENGTHS && misfit->each_way && fabs (misfit->difference_percent) > STRETCH_MOST
         && fabs (misfit->difference_percent) > misfit->difference_click_percent + STRETCH_MOST / 2;
}

void
mapping_check_lengths (const Knowns *knowns, const Mapping *mapping, MappingMisfit *misfit)
{
  const Normal normal = normal_through (knowns, mapping);
  const double of_corners = misfit->maker == MADE_BY_RECTANGLE ? misfit->rectangle_click_percent : 0;

  misfit->length_count = knowns->length_count;
  for (size_t i = 0; i < knowns->length_count; i++)
    {
      const KnownLength *known = &knowns->lengths[i];
      LengthMisfit *length = &misfit->lengths[i];
      const double free_part = fmax (0, 1 - leverage (knowns, mapping, misfit, &normal, i));

      length->residual_mm = point_distance (mapping_to_mm (mapping, known->a), mapping_to_mm (mapping, known->b)) - known->mm;
      length->residual_percent = 100 * length->residual_mm / known->mm;
      length->click_percent = 100 * 2 * sigma_of (known) / point_distance (known->a, known->b);
      length->disagrees = scales_too_different (misfit)
        || (free_part > 1e-6
            && fabs (length->residual_percent) > BEYOND_CLICKS / 2 * hypot (length->click_percent * sqrt (free_part), of_corners));
      misfit->any_disagrees = misfit->any_disagrees || length->disagrees;
    }
}
