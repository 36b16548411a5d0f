#include "drawing/sheet-hit-private.h"
#include "figures/lead-route.h"

bool
hit_find_lead_point (const HitQuery *q, Hit *hit)
{
  const Lead *lead = aeroplane_lead_by_id (q->aeroplane, selection_single (q->scene->selection));
  g_autoptr (GArray) points = lead ? lead_points (q->aeroplane, lead) : NULL;
  double nearest = nextafter (q->radius, INFINITY);

  for (guint i = 0; points && i < points->len; i++)
    {
      const double far = point_distance (q->px, view_to_screen (q->view, g_array_index (points, LeadPoint, i).place));

      if (far >= nearest)
        continue;
      *hit = (Hit) { .kind = HIT_LEAD_POINT, .id = lead->piece.id, .index = i };
      nearest = far;
    }
  return hit->kind != HIT_NOTHING;
}

static double
px_to_leg (const HitQuery *q, const Lead *lead, LeadLeg leg)
{
  g_autoptr (GArray) route = lead_route (q->aeroplane, lead, leg);
  double nearest = INFINITY;

  for (guint i = 1; route && i < route->len; i++)
    nearest = fmin (nearest, hit_to_stretch (q->px, view_to_screen (q->view, g_array_index (route, Point, i - 1)),
                                                view_to_screen (q->view, g_array_index (route, Point, i))));
  return nearest;
}

static bool
find_lead_of (const HitQuery *q, bool selected, double radius, Hit *hit)
{
  double nearest = radius;

  for (size_t i = aeroplane_count (q->aeroplane, PIECE_LEAD); i-- > 0;)
    {
      const Lead *lead = aeroplane_lead (q->aeroplane, i);

      if (!lead->piece.id || selection_has (q->scene->selection, lead->piece.id) != selected)
        continue;
      for (int leg = 0; leg < lead_leg_count (lead); leg++)
        {
          const double far = px_to_leg (q, lead, leg);

          if (far >= nearest)
            continue;
          *hit = (Hit) { .kind = HIT_LEAD, .id = lead->piece.id, .place = view_from_screen (q->view, q->px.x, q->px.y) };
          nearest = far;
        }
    }
  return hit->kind != HIT_NOTHING;
}

/* One after another, whether it is selected or not. */
bool
hit_find_any_lead (const HitQuery *q, Hit *hit)
{
  return find_lead_of (q, true, q->radius / 2, hit) || find_lead_of (q, false, q->radius / 2, hit);
}

bool
hit_find_selected_lead (const HitQuery *q, Hit *hit)
{
  return find_lead_of (q, true, q->radius / 2, hit);
}

bool
hit_find_lead (const HitQuery *q, Hit *hit)
{
  return find_lead_of (q, false, q->radius / 3, hit);
}
