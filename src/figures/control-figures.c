#include "figures/control-figures.h"

#include <math.h>
#include "figures/surface-figures.h"

/* Legendre's nodes and weights, eight points on −1..1: exact to degree 15, so polynomial edges come out exactly and a round tip
 * inside the control to about 1e-4 of its area. Abramowitz and Stegun, table 25.4. */
static const double gauss_at[4]     = { 0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363 };
static const double gauss_weight[4] = { 0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763 };

typedef struct {
  const Surface *surface;
  const Control *control;
} Hinge;

/* How much of the chord lies behind the hinge line; 0 where there is no surface. */
static double
depth_at (const Hinge *hinge, double station)
{
  const Control *control = hinge->control;
  const double along = (station - control->inner) / (control->outer - control->inner);
  const double hinge_x = control->hinge_inner_x + along * (control->hinge_outer_x - control->hinge_inner_x);
  StationCut cut;

  if (planform_cut (hinge->surface->outline, surface_sides (hinge->surface), station, &cut) != CORE_OK)
    return 0;
  return fmax (0, cut.trailing_x - fmax (hinge_x, cut.leading_x));
}

static double
area_between (const Hinge *hinge, double from, double to)
{
  const double middle = (from + to) / 2, half = (to - from) / 2;
  double sum = 0;

  for (int i = 0; i < 4; i++)
    sum += gauss_weight[i] * (depth_at (hinge, middle - half * gauss_at[i]) + depth_at (hinge, middle + half * gauss_at[i]));
  return sum * half;
}

/* Interval by interval between the stations where the outline changes kind. */
static double
area_behind (const Hinge *hinge)
{
  const PlanformSides sides = surface_sides (hinge->surface);
  const size_t count = planform_breaks (hinge->surface->outline, sides, NULL, 0);
  g_autofree double *breaks = g_new (double, count);
  double from = hinge->control->inner, area = 0;

  planform_breaks (hinge->surface->outline, sides, breaks, count);
  for (size_t i = 0; i < count; i++)
    if (breaks[i] > from && breaks[i] < hinge->control->outer)
      {
        area += area_between (hinge, from, breaks[i]);
        from = breaks[i];
      }
  return area + area_between (hinge, from, hinge->control->outer);
}

ControlFigures
control_figures_of (const SurfaceFigures *surface, const Control *control)
{
  const Hinge hinge = { surface->surface, control };
  ControlFigures made = { .surface = surface->surface, .control = control, .area_mm2 = NAN, .area_share_percent = NAN,
                          .roll_rate_deg_s = NAN };

  if (!isfinite (surface->area_mm2) || !(control->outer > control->inner))
    return made;
  made.area_mm2 = area_behind (&hinge) * (surface_is_horizontal (surface->surface) ? 2 : 1);
  made.area_share_percent = 100 * made.area_mm2 / surface->area_mm2;
  return made;
}
