#include "aero/handbook.h"

#include <assert.h>
#include <math.h>
#include <stdbool.h>

enum { taper_halvings = 60 };

/* Tip over root beyond which a wing is no straight taper that the formulas were fitted to. */
static const double greatest_taper = 2;

double
handbook_lift_slope (double aspect_ratio, double half_chord_sweep, double section_ratio)
{
  const double tangent = tan (half_chord_sweep), a = aspect_ratio / section_ratio;

  return 2 * M_PI * aspect_ratio / (2 + sqrt (a * a * (1 + tangent * tangent) + 4));
}

double
handbook_downwash (double aspect_ratio, double taper, double quarter_chord_sweep, double arm_over_span, double height_over_span)
{
  const double by_aspect = 1 / aspect_ratio - 1 / (1 + pow (aspect_ratio, 1.7));
  const double by_taper = (10 - 3 * taper) / 7;
  const double by_place = (1 - fabs (height_over_span)) / cbrt (2 * arm_over_span);

  return 4.44 * pow (by_aspect * by_taper * by_place * sqrt (cos (quarter_chord_sweep)), 1.19);
}

double
handbook_tail_volume (double tail_area, double arm, double area, double chord)
{
  return tail_area * arm / (area * chord);
}

/* A surface and the straight-tapered wing that stands for it. */
typedef struct {
  Planform planform;
  double z, pressure_ratio;
  double taper, half_chord_sweep, quarter_chord_sweep;
  double quarter_x;            /* quarter MAC */
  double lift_slope;           /* on its own area */
} Taper;

/* S / (MAC · station) of a straight taper, which falls as the tip grows: 4.5 for a point, 4 for a rectangle. */
static double
taper_fullness (double taper)
{
  const double sum = 1 + taper;

  return 4.5 * sum * sum * sum / ((1 + 2 * taper) * (1 + taper + taper * taper));
}

static double
taper_of_fullness (double fullness)
{
  double low = 0, high = greatest_taper;

  for (int i = 0; i < taper_halvings; i++)
    {
      const double middle = (low + high) / 2;

      if (taper_fullness (middle) > fullness)
        low = middle;
      else
        high = middle;
    }
  return (low + high) / 2;
}

/* Taper from area, MAC and its station; the leading edge's sweep from the root's leading edge to the MAC's; the span
 * that carries the area then gives the sweeps further aft. */
static CoreStatus
taper_of_surface (const HandbookSurface *surface, Taper *made)
{
  const Planform *planform = &made->planform;
  const CoreStatus status = planform_measure (surface->outline, surface->sides, &made->planform);
  const double root = surface->sides == PLANFORM_OPEN ? fmax (outline_node (surface->outline, 0).y, 0) : 0;
  StationCut cut;
  CoreStatus cut_status;
  double station, root_chord, leading, fall;

  if (status)
    return status;
  if ((cut_status = planform_cut (surface->outline, surface->sides, root, &cut)))
    return cut_status;
  station = planform->mac_station - root;
  made->z = surface->z;
  made->pressure_ratio = surface->pressure_ratio;
  made->taper = taper_of_fullness ((planform->area) / (planform->mac * station));
  root_chord = 1.5 * planform->mac * (1 + made->taper) / (1 + made->taper + made->taper * made->taper);
  leading = (planform->mac_leading_edge_x - cut.leading_x) / station;
  fall = root_chord * (1 - made->taper) * (1 + 2 * made->taper) / (3 * station * (1 + made->taper));
  made->half_chord_sweep = atan (leading - fall / 2);
  made->quarter_chord_sweep = atan (leading - fall / 4);
  made->quarter_x = planform->mac_leading_edge_x + planform->mac / 4;
  made->lift_slope = handbook_lift_slope (planform->aspect_ratio, made->half_chord_sweep, 1);
  return CORE_OK;
}

/* Clear of each other fore and aft, MAC behind MAC: the downwash formula grows without bound as its arm shrinks, and two
 * wings of a biplane are not in each other's wake. */
static bool
taper_is_behind (const Taper *rear, const Taper *front)
{
  return rear->planform.mac_leading_edge_x >= front->planform.mac_leading_edge_x + front->planform.mac;
}

/* The share of free flow that is left to `rear`, 1 - dε/dα. A front surface of less span washes only so much of the rear. */
static CoreStatus
taper_flow (const Taper *rear, const Taper *front, double *flow)
{
  const double span = front->planform.span;
  const double height = (rear->z - front->z) / span;
  const double washed = fmin (1, span / rear->planform.span);
  double downwash;

  if (fabs (height) >= 1)
    return CORE_OUT_OF_RANGE;
  downwash = handbook_downwash (front->planform.aspect_ratio, front->taper, front->quarter_chord_sweep,
                                (rear->quarter_x - front->quarter_x) / span, height);
  if (downwash >= 1)
    return CORE_OUT_OF_RANGE;
  *flow *= 1 - washed * downwash;
  return CORE_OK;
}

/* Lift slope on the reference area in company, and its moment about x = 0. */
typedef struct { double lift, moment; } Lift;

static void
lift_add (Lift *sum, const Taper *taper, double flow, double reference_area)
{
  const double lift = taper->lift_slope * taper->pressure_ratio * flow * taper->planform.area / reference_area;

  sum->lift += lift;
  sum->moment += lift * taper->quarter_x;
}

CoreStatus
handbook_neutral_point (const HandbookSurface surfaces[], size_t count, double *neutral_point_x, double *lift_slope)
{
  Taper wing, other;
  Lift sum = { 0 };
  double wing_flow = 1;
  CoreStatus status;

  assert (count > 0);
  if ((status = taper_of_surface (&surfaces[0], &wing)))
    return status;
  for (size_t i = 1; i < count; i++)
    {
      double flow = 1;

      if ((status = taper_of_surface (&surfaces[i], &other)))
        return status;
      if (taper_is_behind (&other, &wing) && (status = taper_flow (&other, &wing, &flow)))
        return status;
      if (taper_is_behind (&wing, &other) && (status = taper_flow (&wing, &other, &wing_flow)))
        return status;
      lift_add (&sum, &other, flow, wing.planform.area);
    }
  lift_add (&sum, &wing, wing_flow, wing.planform.area);
  if (!(sum.lift > 0) || !isfinite (sum.moment))
    return CORE_OUT_OF_RANGE;
  *neutral_point_x = sum.moment / sum.lift;
  if (lift_slope)
    *lift_slope = sum.lift;
  return CORE_OK;
}
