#include "drawing/side-leads.h"
#include <math.h>
#include "drawing/part-symbols.h"
#include "drawing/runs.h"
#include "drawing/sheet-places.h"
#include "figures/lead-need.h"

/* One leg's way in the strip's pixels; NULL where an end is not there. */
static GArray *
leg_px (const SideScene *side, const SheetView *view, const Lead *lead, LeadLeg leg)
{
  GArray *route = lead_route_from_side (side->scene->figures->aeroplane, lead, leg);

  for (guint i = 0; route && i < route->len; i++)
    g_array_index (route, Point, i) = view_to_screen (view, g_array_index (route, Point, i));
  return route;
}

/* An end at a part is drawn at its edge; at the joint there is none. */
static void
end_at_part (const SideScene *side, const SheetView *view, const char *id, Point *end, Point next)
{
  const Part *part = id ? aeroplane_part_by_id (side->scene->figures->aeroplane, id) : NULL;

  if (part)
    *end = lead_box_edge (part_symbol_box (side->scene->look, box_to_screen (view, side_part_box (part))), next);
}

static void
draw_leg (cairo_t *cr, const SideScene *side, const SheetView *view, const Lead *lead, LeadLeg leg)
{
  const Aeroplane *aeroplane = side->scene->figures->aeroplane;
  g_autoptr (GArray) route = leg_px (side, view, lead, leg);
  const LeadNeed need = lead_need_of (aeroplane, lead, leg);
  const bool joined = lead_is_joined (lead);

  if (!route)
    return;
  Point *places = (Point *) (void *) route->data;
  const guint last = route->len - 1;
  const double reach = lead_reach (places, route->len, lead_share_served (aeroplane, lead, leg, &need));
  end_at_part (side, view, joined && leg == LEG_TO ? NULL : lead_leg_part (lead, leg), &places[0], places[1]);
  end_at_part (side, view, joined && leg != LEG_TO ? NULL : lead->to, &places[last], places[last - 1]);
  draw_lead (cr, side->scene->look, places, route->len, reach, selection_has (side->scene->selection, lead->piece.id));
  if (joined && leg == LEG_TO)
    draw_lead_joint (cr, side->scene->look, places[0]);
}

void
draw_side_leads (cairo_t *cr, const SideScene *side, const SheetView *view)
{
  const Aeroplane *aeroplane = side->scene->figures->aeroplane;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_LEAD); i++)
    for (int leg = 0; leg < lead_leg_count (aeroplane_lead (aeroplane, i)); leg++)
      draw_leg (cr, side, view, aeroplane_lead (aeroplane, i), leg);
}

double
side_px_to_lead (const SideScene *side, const SheetView *view, const Lead *lead, Point px)
{
  double nearest = INFINITY;

  for (int leg = 0; leg < lead_leg_count (lead); leg++)
    {
      g_autoptr (GArray) route = leg_px (side, view, lead, leg);

      for (guint i = 1; route && i < route->len; i++)
        nearest = fmin (nearest, hit_to_stretch (px, g_array_index (route, Point, i - 1), g_array_index (route, Point, i)));
    }
  return nearest;
}
