#include "document/hinge.h"
#include <math.h>
#include "geometry/planform.h"

/* mm: what lies so near an edge lies on it. */
static const double ON_EDGE = 0.01;
enum { BETWEEN = 32 };

static PlanformSides
sides_of (const Surface *surface)
{
  if (!surface_is_horizontal (surface))
    return PLANFORM_SINGLE;
  return surface->root_open ? PLANFORM_OPEN : PLANFORM_CARRIED;
}

bool
hinge_edges (const Surface *surface, double station, double *leading_x, double *trailing_x)
{
  const double tip = outline_bounds (surface->outline).max.y;
  StationCut cut;

  if (station > tip && station <= tip + ON_EDGE)
    station = tip;
  if (planform_cut (surface->outline, sides_of (surface), station, &cut) != CORE_OK)
    return false;
  *leading_x = cut.leading_x;
  *trailing_x = cut.trailing_x;
  return true;
}

Point
hinge_onto (const Surface *surface, Point own)
{
  const Box box = outline_bounds (surface->outline);
  const double root = sides_of (surface) == PLANFORM_CARRIED ? 0 : box.min.y;
  const Point to = { own.x, fmin (fmax (own.y, root), box.max.y) };
  double leading, trailing;

  if (!hinge_edges (surface, to.y, &leading, &trailing))
    return own;
  return (Point) { fmin (fmax (to.x, leading), trailing), to.y };
}

double
hinge_x_at (const Control *control, double station)
{
  const double along = (station - control->inner) / (control->outer - control->inner);

  return control->hinge_inner_x + along * (control->hinge_outer_x - control->hinge_inner_x);
}

static HingeFault
fault_at (const Surface *surface, const Control *control, double station)
{
  const double x = hinge_x_at (control, station);
  double leading, trailing;

  if (!hinge_edges (surface, station, &leading, &trailing))
    return HINGE_BEYOND;
  if (x < leading - ON_EDGE)
    return HINGE_AHEAD;
  return x > trailing + ON_EDGE ? HINGE_BEHIND : HINGE_SOUND;
}

/* An end that is nowhere is said before what follows from it further in. */
static HingeFault
fault_of_ends (const Surface *surface, const Control *control, double *station)
{
  const double ends[] = { control->inner, control->outer };
  double leading, trailing;

  for (int i = 0; i < 2; i++)
    if (!hinge_edges (surface, ends[i], &leading, &trailing))
      {
        *station = ends[i];
        return HINGE_BEYOND;
      }
  return HINGE_SOUND;
}

static HingeFault
fault_between (const Surface *surface, const Control *control, double *station)
{
  const size_t count = planform_breaks (surface->outline, sides_of (surface), NULL, 0);
  g_autofree double *breaks = g_new (double, count + 1);
  HingeFault fault = HINGE_SOUND;

  planform_breaks (surface->outline, sides_of (surface), breaks, count);
  for (size_t i = 0; i < count && fault == HINGE_SOUND; i++)
    if (breaks[i] > control->inner && breaks[i] < control->outer)
      fault = fault_at (surface, control, *station = breaks[i]);
  for (int i = 0; i <= BETWEEN && fault == HINGE_SOUND; i++)
    fault = fault_at (surface, control, *station = control->inner + (control->outer - control->inner) * i / BETWEEN);
  return fault;
}

HingeFault
hinge_check (const Surface *surface, const Control *control, double *station)
{
  const CoreStatus outline = outline_check (surface->outline, NULL);
  double at = control->inner;
  HingeFault fault = HINGE_SOUND;

  if (outline != CORE_OK && outline != CORE_MULTI_VALUED)
    fault = HINGE_NO_SURFACE;
  else if (!isfinite (control->inner + control->outer + control->hinge_inner_x + control->hinge_outer_x))
    fault = HINGE_BEYOND;
  else if (control->outer < control->inner)
    fault = HINGE_BACKWARDS;
  else if (control->outer - control->inner < HINGE_LEAST_MM)
    fault = HINGE_NO_LENGTH;
  else if ((fault = fault_of_ends (surface, control, &at)) == HINGE_SOUND)
    fault = fault_between (surface, control, &at);
  if (station)
    *station = at;
  return fault;
}

double
hinge_chord (const Surface *surface, const Control *control, bool outer)
{
  double leading, trailing;

  if (!hinge_edges (surface, outer ? control->outer : control->inner, &leading, &trailing))
    return NAN;
  return trailing - (outer ? control->hinge_outer_x : control->hinge_inner_x);
}

static double
deepest (const Surface *surface, const Control *control)
{
  return fmax (hinge_chord (surface, control, false), hinge_chord (surface, control, true));
}

double
hinge_travel (const Surface *surface, const Control *control, double degrees)
{
  return deepest (surface, control) * sin (degrees * M_PI / 180);
}

double
hinge_turn (const Surface *surface, const Control *control, double travel_mm)
{
  return asin (travel_mm / deepest (surface, control)) * 180 / M_PI;
}

ControlKind
hinge_usual_kind (SurfaceRole role)
{
  static const ControlKind usual[ROLE_COUNT] = { [ROLE_WING] = CONTROL_AILERON, [ROLE_TAILPLANE] = CONTROL_ELEVATOR,
                                                 [ROLE_FOREPLANE] = CONTROL_ELEVATOR, [ROLE_FIN] = CONTROL_RUDDER };

  return usual[role];
}
