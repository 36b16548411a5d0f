#include "figures/lead-route.h"

#include <math.h>
#include "figures/surface-figures.h"

/* mm: nearer to the centre line than that a part is on it. */
static const double ON_CENTRE = 1;

/* One end of a leg: a part, or the joint. */
typedef struct { Point at; double z; const Surface *in; bool joint; } End;

static bool
part_end (const Aeroplane *aeroplane, const char *id, End *end)
{
  const Part *part = aeroplane_part_by_id (aeroplane, id);
  const Surface *surface = part && part->of ? aeroplane_surface_by_id (aeroplane, part->of) : NULL;

  if (!part)
    return false;
  *end = (End) { .at = { part->x, part->y }, .z = part->z, .in = surface && surface_is_horizontal (surface) ? surface : NULL };
  return true;
}

/* Where the way from there inboard along the wing reaches the centre line. */
static Point
saddle_of (const End *end)
{
  const PlanformSides sides = surface_sides (end->in);
  const double root = fmax (0, end->in->root_open ? outline_bounds (end->in->outline).min.y : 0);
  StationCut own, inner;

  if (planform_cut (end->in->outline, sides, fabs (end->at.y), &own) != CORE_OK || !(own.chord > 0)
      || planform_cut (end->in->outline, sides, root, &inner) != CORE_OK)
    return (Point) { end->at.x, 0 };
  return (Point) { inner.leading_x + (end->at.x - own.leading_x) / own.chord * inner.chord, 0 };
}

static bool
is_out_in_wing (const End *end)
{
  return end->in && fabs (end->at.y) >= ON_CENTRE;
}

/* Whether the way to the other end stays in this one's half of the wing. */
static bool
stays_in_wing (const End *end, const End *other)
{
  const double halves = end->at.y * other->at.y;

  if (other->joint)
    return halves >= 0 && surface_covers (end->in, other->at);
  return other->in == end->in && halves > 0;
}

Point
lead_joint (const Aeroplane *aeroplane, const Lead *lead)
{
  End one, other;

  if (isfinite (lead->joint_x) && isfinite (lead->joint_y))
    return (Point) { lead->joint_x, lead->joint_y };
  if (!part_end (aeroplane, lead->from, &one) || !part_end (aeroplane, lead->also, &other))
    return (Point) { NAN, NAN };
  if (is_out_in_wing (&one) && is_out_in_wing (&other))
    return point_mix (saddle_of (&one), saddle_of (&other), 0.5);
  return point_mix (one.at, other.at, 0.5);
}

static bool
joint_end (const Aeroplane *aeroplane, const Lead *lead, End *end)
{
  End one, other;

  if (!part_end (aeroplane, lead->from, &one) || !part_end (aeroplane, lead->also, &other))
    return false;
  *end = (End) { .at = lead_joint (aeroplane, lead), .z = (one.z + other.z) / 2, .joint = true };
  return true;
}

static bool
leg_ends (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg, End ends[2])
{
  if (!lead_is_joined (lead))
    return leg == LEG_FROM && part_end (aeroplane, lead->from, &ends[0]) && part_end (aeroplane, lead->to, &ends[1]);
  if (leg == LEG_TO)
    return joint_end (aeroplane, lead, &ends[0]) && part_end (aeroplane, lead->to, &ends[1]);
  return part_end (aeroplane, lead_leg_part (lead, leg), &ends[0]) && joint_end (aeroplane, lead, &ends[1]);
}

int
lead_leg_count (const Lead *lead)
{
  return lead_is_joined (lead) ? LEG_COUNT : 1;
}

/* A plain lead's places are all on its one leg. */
static LeadLeg
leg_of_via (const Lead *lead, size_t i)
{
  return lead_is_joined (lead) ? lead->via[i].leg : LEG_FROM;
}

/* Those on one leg, from its first end on. */
static void
add_leg_points (const Lead *lead, LeadLeg leg, const End ends[2], GArray *points)
{
  const guint before = points->len;

  for (size_t i = 0; i < lead->via_count; i++)
    if (leg_of_via (lead, i) == leg)
      {
        const LeadPoint point = { .place = lead->via[i].place, .leg = leg, .via = i };
        g_array_append_val (points, point);
      }
  if (points->len > before)
    return;
  for (int i = 0; i < 2; i++)
    if (is_out_in_wing (&ends[i]) && !stays_in_wing (&ends[i], &ends[1 - i]))
      {
        const LeadPoint point = { .place = saddle_of (&ends[i]), .leg = leg, .via = LEAD_NO_VIA };
        g_array_append_val (points, point);
      }
}

GArray *
lead_points (const Aeroplane *aeroplane, const Lead *lead)
{
  GArray *points = g_array_new (FALSE, FALSE, sizeof (LeadPoint));
  const LeadPoint joint = { .place = lead_joint (aeroplane, lead), .leg = LEG_TO, .via = LEAD_NO_VIA, .joint = true };
  End ends[2];

  if (lead_is_joined (lead) && point_is_finite (joint.place))
    g_array_append_val (points, joint);
  for (int leg = 0; leg < LEG_COUNT; leg++)
    if (leg_ends (aeroplane, lead, leg, ends))
      add_leg_points (lead, leg, ends, points);
  return points;
}

bool
lead_runs_as_usual (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (LeadPoint));
  End ends[2];

  if (leg_ends (aeroplane, lead, leg, ends))
    add_leg_points (lead, leg, ends, points);
  return points->len > 0 && g_array_index (points, LeadPoint, 0).via == LEAD_NO_VIA;
}

GArray *
lead_route (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (LeadPoint));
  GArray *route;
  End ends[2];

  if (!leg_ends (aeroplane, lead, leg, ends))
    return NULL;
  add_leg_points (lead, leg, ends, points);
  route = g_array_new (FALSE, FALSE, sizeof (Point));
  g_array_append_val (route, ends[0].at);
  for (guint i = 0; i < points->len; i++)
    g_array_append_val (route, g_array_index (points, LeadPoint, i).place);
  g_array_append_val (route, ends[1].at);
  return route;
}

double
lead_rise (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg)
{
  End ends[2];

  return leg_ends (aeroplane, lead, leg, ends) ? ends[1].z - ends[0].z : NAN;
}

/* Asked of every leg for each step of a part that is moved: the ends are looked up once. */
double
lead_way (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (LeadPoint));
  double length = 0;
  End ends[2];
  Point last;

  if (!leg_ends (aeroplane, lead, leg, ends))
    return NAN;
  add_leg_points (lead, leg, ends, points);
  last = ends[0].at;
  for (guint i = 0; i < points->len; i++)
    {
      const Point next = g_array_index (points, LeadPoint, i).place;

      length += point_distance (last, next);
      last = next;
    }
  return hypot (length + point_distance (last, ends[1].at), ends[1].z - ends[0].z);
}

double
lead_way_along (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg, const GArray *route)
{
  double length = 0;

  for (guint i = 1; i < route->len; i++)
    length += point_distance (g_array_index (route, Point, i - 1), g_array_index (route, Point, i));
  return hypot (length, lead_rise (aeroplane, lead, leg));
}

/* In the plane of a wing or tail that one of them is fixed to; NAN elsewhere. */
static double
height_in_surface (const End ends[2], Point at)
{
  for (int i = 0; i < 2; i++)
    if (surface_covers (ends[i].in, at))
      return ends[i].in->z + surface_lift (ends[i].in, fabs (at.y));
  return NAN;
}

/* Those that are not known go evenly from the last that is to the next. */
static void
even_out (double heights[], const Point places[], guint count)
{
  for (guint i = 1; i < count; i++)
    {
      double ahead = 0;
      guint next = i;

      for (; next < count && isnan (heights[next]); next++)
        ahead += point_distance (places[next - 1], places[next]);
      if (next == i || next == count)
        continue;
      const double step = point_distance (places[i - 1], places[i]), all = ahead + point_distance (places[next - 1], places[next]);
      heights[i] = heights[i - 1] + (all > 0 ? step / all : 0) * (heights[next] - heights[i - 1]);
    }
}

GArray *
lead_route_from_side (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg)
{
  GArray *route = lead_route (aeroplane, lead, leg);
  End ends[2];

  if (!route || !leg_ends (aeroplane, lead, leg, ends))
    return route;
  const guint last = route->len - 1;
  Point *places = (Point *) (void *) route->data;
  g_autofree double *heights = g_new (double, route->len);
  for (guint i = 1; i < last; i++)
    heights[i] = height_in_surface (ends, places[i]);
  heights[0] = ends[0].z;
  heights[last] = ends[1].z;
  even_out (heights, places, route->len);
  for (guint i = 0; i <= last; i++)
    places[i].y = heights[i];
  return route;
}

/* The place half-way along. */
static Point
route_middle (const GArray *route)
{
  const Point *places = (const Point *) (void *) route->data;
  double left = 0;

  for (guint i = 1; i < route->len; i++)
    left += point_distance (places[i - 1], places[i]) / 2;
  for (guint i = 1; i < route->len; i++)
    {
      const double length = point_distance (places[i - 1], places[i]);

      if (left <= length)
        return length > 0 ? point_mix (places[i - 1], places[i], left / length) : places[i];
      left -= length;
    }
  return places[route->len - 1];
}

bool
lead_mass_place (const Aeroplane *aeroplane, const Lead *lead, double place[3])
{
  const LeadLeg leg = lead_is_joined (lead) ? LEG_TO : LEG_FROM;
  g_autoptr (GArray) route = lead_route (aeroplane, lead, leg);
  End ends[2];
  Point at;

  if (!route || !leg_ends (aeroplane, lead, leg, ends))
    return false;
  at = ends[0].joint ? ends[0].at : route_middle (route);
  place[0] = at.x;
  place[1] = at.y;
  place[2] = ends[0].joint ? ends[0].z : (ends[0].z + ends[1].z) / 2;
  return true;
}
