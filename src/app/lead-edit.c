#include "app/lead-edit.h"
#include <math.h>
#include "document/changes.h"
#include "drawing/hit.h"

bool
lead_edit_point (const Aeroplane *aeroplane, const char *id, size_t index, LeadPoint *point)
{
  const Lead *lead = aeroplane_lead_by_id (aeroplane, id);
  g_autoptr (GArray) points = lead != NULL ? lead_points (aeroplane, lead) : NULL;

  if (points == NULL || index >= points->len)
    return false;
  *point = g_array_index (points, LeadPoint, index);
  return true;
}

/* With the places of that leg's usual way given; the aeroplane itself where they are. */
static Aeroplane *
with_leg_given (const Aeroplane *aeroplane, const char *id, LeadLeg leg)
{
  const Lead *lead = aeroplane_lead_by_id (aeroplane, id);
  g_autoptr (GArray) points = lead_points (aeroplane, lead);
  Aeroplane *next = aeroplane_ref (aeroplane);

  for (guint i = 0; i < points->len; i++) {
    const LeadPoint *point = &g_array_index (points, LeadPoint, i);
    const LeadVia via = { point->place, leg };
    Aeroplane *last = next;

    if (point->joint || point->leg != leg || point->via != LEAD_NO_VIA)
      continue;
    next = change_lead_via_added (last, id, aeroplane_lead_by_id (last, id)->via_count, via);
    aeroplane_unref (last);
  }
  return next;
}

Aeroplane *
lead_edit_moved (const Aeroplane *aeroplane, const char *id, size_t index, Point place)
{
  g_autoptr (Aeroplane) given = NULL;
  LeadPoint point;
  Lead *next;

  if (!lead_edit_point (aeroplane, id, index, &point))
    return NULL;
  given = point.joint ? aeroplane_ref (aeroplane) : with_leg_given (aeroplane, id, point.leg);
  lead_edit_point (given, id, index, &point);
  next = (Lead *) piece_dup (&aeroplane_lead_by_id (given, id)->piece);
  if (point.joint) {
    next->joint_x = place.x;
    next->joint_y = place.y;
  } else
    next->via[point.via].place = place;
  return change_lead (given, id, next);
}

/* The leg and the stretch of it that are nearest to a place: the stretch begins at the end's or place's number `stretch` of the leg. */
static bool
nearest_stretch (const Aeroplane *aeroplane, const Lead *lead, Point place, LeadLeg *leg, guint *stretch)
{
  double nearest = INFINITY;

  for (int i = 0; i < lead_leg_count (lead); i++) {
    g_autoptr (GArray) route = lead_route (aeroplane, lead, i);

    for (guint k = 0; route != NULL && k + 1 < route->len; k++) {
      const double far = hit_to_stretch (place, g_array_index (route, Point, k), g_array_index (route, Point, k + 1));

      if (far >= nearest)
        continue;
      nearest = far;
      *leg = i;
      *stretch = k;
    }
  }
  return isfinite (nearest);
}

/* Of the leg's own places, the number among all and in the file of the one that follows `stretch`; behind the last where none does. */
static void
place_behind (const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg, guint stretch, size_t *index, size_t *via)
{
  g_autoptr (GArray) points = lead_points (aeroplane, lead);
  guint met = 0, i = 0;

  for (; i < points->len; i++) {
    const LeadPoint *point = &g_array_index (points, LeadPoint, i);

    if (point->joint || point->leg < leg)
      continue;
    if (point->leg > leg || met++ == stretch)
      break;
  }
  *index = i;
  *via = i < points->len && g_array_index (points, LeadPoint, i).leg == leg ? g_array_index (points, LeadPoint, i).via : lead->via_count;
}

Aeroplane *
lead_edit_added (const Aeroplane *aeroplane, const char *id, Point place, size_t *index)
{
  const Lead *lead = aeroplane_lead_by_id (aeroplane, id);
  g_autoptr (Aeroplane) given = NULL;
  LeadLeg leg = LEG_FROM;
  guint stretch = 0;
  size_t via;

  if (lead == NULL || !nearest_stretch (aeroplane, lead, place, &leg, &stretch))
    return NULL;
  given = with_leg_given (aeroplane, id, leg);
  place_behind (given, aeroplane_lead_by_id (given, id), leg, stretch, index, &via);
  return change_lead_via_added (given, id, via, (LeadVia) { place, leg });
}

Aeroplane *
lead_edit_removed (const Aeroplane *aeroplane, const char *id, size_t index)
{
  LeadPoint point;
  Lead *next;

  if (!lead_edit_point (aeroplane, id, index, &point))
    return NULL;
  if (!point.joint)
    return change_lead_via_removed (aeroplane, id, point.via);
  next = (Lead *) piece_dup (&aeroplane_lead_by_id (aeroplane, id)->piece);
  next->joint_x = next->joint_y = NAN;
  return change_lead (aeroplane, id, next);
}

/* From the last to the first, so that the others keep their numbers. */
Aeroplane *
lead_edit_all_removed (const Aeroplane *aeroplane, const Selection *selection)
{
  Aeroplane *left = NULL;

  for (size_t i = selection->node_count; i-- > 0;) {
    Aeroplane *next = lead_edit_removed (left != NULL ? left : aeroplane, selection->ids[0], selection->nodes[i]);

    if (next == NULL)
      continue;
    aeroplane_unref (left);
    left = next;
  }
  return left;
}

Point
lead_edit_middle (const Aeroplane *aeroplane, const char *id, size_t index)
{
  const Lead *lead = aeroplane_lead_by_id (aeroplane, id);
  LeadPoint at = { .via = LEAD_NO_VIA };
  const bool one = lead_edit_point (aeroplane, id, index, &at);
  Point middle = { NAN, NAN };
  double longest = 0;

  for (int leg = 0; lead != NULL && leg < lead_leg_count (lead); leg++) {
    g_autoptr (GArray) route = lead_route (aeroplane, lead, leg);

    for (guint i = 0; route != NULL && i + 1 < route->len; i++) {
      const Point a = g_array_index (route, Point, i), b = g_array_index (route, Point, i + 1);

      if (point_distance (a, b) <= longest || (one && point_distance (a, at.place) > 0 && point_distance (b, at.place) > 0))
        continue;
      longest = point_distance (a, b);
      middle = point_mix (a, b, 0.5);
    }
  }
  return middle;
}
