#include "balance/weighed.h"

#include <math.h>

/* Variances of the sum and of the moment about where it balances, and their covariance. */
typedef struct { double mass, both, moment; } Covariance;

typedef struct {
  MassItem *items;
  const bool *on_scale;
  size_t count;
  double about;                 /* m: moments are about it */
} Heap;

static double
place_variance (const MassItem *item)
{
  return isnan (item->x_sigma) ? 0 : item->x_sigma * item->x_sigma;
}

static double
heap_mass (const Heap *heap, double *moment)
{
  double mass = 0;

  *moment = 0;
  for (size_t i = 0; i < heap->count; i++)
    if (heap->on_scale[i])
      {
        mass += heap->items[i].mass;
        *moment += heap->items[i].mass * (heap->items[i].x - heap->about);
      }
  return mass;
}

static Covariance
heap_covariance (const Heap *heap)
{
  Covariance sum = { 0, 0, 0 };

  for (size_t i = 0; i < heap->count; i++)
    if (heap->on_scale[i])
      {
        const MassItem *item = &heap->items[i];
        const double arm = item->x - heap->about, of_mass = item->mass_sigma * item->mass_sigma;

        sum.mass += of_mass;
        sum.both += arm * of_mass;
        sum.moment += arm * arm * of_mass + item->mass * item->mass * place_variance (item);
      }
  return sum;
}

/* (S + R)⁻¹, with the scale's own variances in R; what nobody has balanced weighs nothing in it. */
static Covariance
weight_of (const Covariance *known, const Weighed *weighed)
{
  const double mass = known->mass + weighed->mass_sigma * weighed->mass_sigma;

  if (isnan (weighed->x))
    return (Covariance) { 1 / mass, 0, 0 };
  const double moment = known->moment + pow (weighed->mass * weighed->x_sigma, 2), determinant = mass * moment - known->both * known->both;
  return (Covariance) { moment / determinant, -known->both / determinant, mass / determinant };
}

/* What is left of a variance: S - S W S. */
static double
left_of (double a, double b, const Covariance *weight)
{
  return fmax (0, a * a * weight->mass + 2 * a * b * weight->both + b * b * weight->moment);
}

/* Alike for all: by mass first, and by place what its moment has left. */
static void
lower_deviations (const Heap *heap, const Covariance *known, const Covariance *weight)
{
  const double mass_left = known->mass - left_of (known->mass, known->both, weight);
  const double moment_left = known->moment - left_of (known->both, known->moment, weight);
  const double by_mass = known->mass > 0 ? fmax (0, mass_left) / known->mass : 1;
  double by_arms = 0, by_places = 0;

  for (size_t i = 0; i < heap->count; i++)
    if (heap->on_scale[i])
      {
        const MassItem *item = &heap->items[i];
        by_arms += by_mass * pow ((item->x - heap->about) * item->mass_sigma, 2);
        by_places += item->mass * item->mass * place_variance (item);
      }
  const double by_place = by_places > 0 ? fmin (1, fmax (0, moment_left - by_arms) / by_places) : 1;
  for (size_t i = 0; i < heap->count; i++)
    if (heap->on_scale[i])
      {
        heap->items[i].mass_sigma *= sqrt (by_mass);
        heap->items[i].x_sigma *= sqrt (by_place);
      }
}

static double
mass_change (const Heap *heap, const MassItem *item, double by_mass, double by_moment)
{
  return item->mass_sigma * item->mass_sigma * (by_mass + (item->x - heap->about) * by_moment);
}

static bool
all_stay_positive (const Heap *heap, double by_mass, double by_moment)
{
  for (size_t i = 0; i < heap->count; i++)
    if (heap->on_scale[i] && heap->items[i].mass > 0
        && !(heap->items[i].mass + mass_change (heap, &heap->items[i], by_mass, by_moment) > 0))
      return false;
  return true;
}

/* Its own moments of inertia go with its mass. */
static void
set_mass (MassItem *item, double mass)
{
  const double ratio = item->mass > 0 ? mass / item->mass : 1;

  item->mass = mass;
  item->own_roll *= ratio;
  item->own_pitch *= ratio;
  item->own_yaw *= ratio;
}

static void
correct_each (const Heap *heap, double by_mass, double by_moment)
{
  for (size_t i = 0; i < heap->count; i++)
    if (heap->on_scale[i])
      {
        MassItem *item = &heap->items[i];
        const double change = mass_change (heap, item, by_mass, by_moment);

        item->x += item->mass * place_variance (item) * by_moment;
        set_mass (item, item->mass + change);
      }
}

static void
correct_in_proportion (const Heap *heap, double mass, double moment, const Weighed *weighed)
{
  for (size_t i = 0; i < heap->count; i++)
    if (heap->on_scale[i])
      {
        set_mass (&heap->items[i], heap->items[i].mass * weighed->mass / mass);
        if (!isnan (weighed->x))
          heap->items[i].x -= moment / mass;
      }
}

CoreStatus
weighed_correct (MassItem items[], const bool on_scale[], size_t count, const Weighed *weighed)
{
  Heap heap = { items, on_scale, count, 0 };
  double moment, mass = heap_mass (&heap, &moment);

  if (!(mass > 0) || !(weighed->mass > 0))
    return CORE_OUT_OF_RANGE;
  heap.about = isnan (weighed->x) ? moment / mass : weighed->x;
  mass = heap_mass (&heap, &moment);
  const Covariance known = heap_covariance (&heap), weight = weight_of (&known, weighed);
  const double more = weighed->mass - mass, turn = isnan (weighed->x) ? 0 : -moment;
  const double by_mass = weight.mass * more + weight.both * turn, by_moment = weight.both * more + weight.moment * turn;

  if (!isfinite (by_mass) || !isfinite (by_moment))
    return CORE_NOT_FINITE;
  if (all_stay_positive (&heap, by_mass, by_moment))
    correct_each (&heap, by_mass, by_moment);
  else
    correct_in_proportion (&heap, mass, moment, weighed);
  lower_deviations (&heap, &known, &weight);
  return CORE_OK;
}
