#include "drawing/sheet-draft.h"
#include <math.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "drawing/handles.h"
#include "drawing/part-symbols.h"
#include "drawing/runs.h"
#include "figures/lead-need.h"

static void
draw_shortage (SheetDraft *draft, Point end, double missing)
{
  g_autofree char *length = units_length (draft->scene->units, missing);
  /* Translators: how much too short a lead is, "short by 112 mm" */
  g_autofree char *text = g_strdup_printf (_("short by %s"), length);
  const Letters tries[] = {
    { .text = text, .place = { end.x + 10, end.y }, .rise = LETTERS_AT_MIDDLE, .colour = draft->look->warning },
    { .text = text, .place = { end.x, end.y + 12 }, .across = 0.5, .rise = LETTERS_BELOW, .colour = draft->look->warning },
    { .text = text, .place = { end.x - 10, end.y }, .across = 1, .rise = LETTERS_AT_MIDDLE, .colour = draft->look->warning } };

  sheet_put_word (draft, tries, G_N_ELEMENTS (tries));
}

/* An end at a part is drawn at its edge; the joint is a point. */
static Point
drawn_end (const SheetDraft *draft, const Lead *lead, LeadLeg leg, bool first, Point at, Point next)
{
  const bool joint = lead_is_joined (lead) && first == (leg == LEG_TO);
  const Part *part = aeroplane_part_by_id (draft->aeroplane, first ? lead_leg_part (lead, leg == LEG_TO ? LEG_FROM : leg)
                                                             : lead_is_joined (lead) && leg != LEG_TO ? NULL : lead->to);

  if (joint || !part)
    return at;
  return lead_box_edge (part_symbol_box (draft->look, box_to_screen (draft->view, sheet_part_box (part))), next);
}

static void
draw_leg (SheetDraft *draft, const Lead *lead, LeadLeg leg)
{
  g_autoptr (GArray) route = lead_route (draft->aeroplane, lead, leg);
  const bool selected = selection_has (draft->selection, lead->piece.id);
  Point *places;

  if (!route)
    return;
  const LeadNeed need = lead_need_along (draft->aeroplane, lead, leg, lead_way_along (draft->aeroplane, lead, leg, route));
  places = (Point *) (void *) route->data;
  for (guint i = 0; i < route->len; i++)
    places[i] = view_to_screen (draft->view, places[i]);
  const double reach = lead_reach (places, route->len, lead_share_served (draft->aeroplane, lead, leg, &need));
  places[0] = drawn_end (draft, lead, leg, true, places[0], places[1]);
  places[route->len - 1] = drawn_end (draft, lead, leg, false, places[route->len - 1], places[route->len - 2]);
  draw_lead (draft->cr, draft->look, places, route->len, reach, selected && !draft->look->paper);
  if (isfinite (reach))
    draw_shortage (draft, places[leg == LEG_FROM && lead_is_joined (lead) ? 0 : route->len - 1], need.missing);
}

static void
draw_one_lead (SheetDraft *draft, const Lead *lead)
{
  const Point joint = lead_is_joined (lead) ? lead_joint (draft->aeroplane, lead) : (Point) { NAN, NAN };

  for (int leg = 0; leg < lead_leg_count (lead); leg++)
    draw_leg (draft, lead, leg);
  if (point_is_finite (joint))
    draw_lead_joint (draft->cr, draft->look, view_to_screen (draft->view, joint));
}

void
sheet_draw_leads (SheetDraft *draft)
{
  for (size_t i = 0; i < aeroplane_count (draft->aeroplane, PIECE_LEAD); i++)
    draw_one_lead (draft, aeroplane_lead (draft->aeroplane, i));
}

/* A square is a place that was put there, a circle one where the lead usually runs, a dotted circle the joint. */
void
sheet_draw_lead_points (const SheetDraft *draft, const Lead *lead)
{
  g_autoptr (GArray) points = lead_points (draft->aeroplane, lead);

  for (guint i = 0; i < points->len; i++)
    {
      const LeadPoint *point = &g_array_index (points, LeadPoint, i);
      const NodeKind kind = point->joint ? NODE_SYMMETRIC : point->via == LEAD_NO_VIA ? NODE_SMOOTH : NODE_CORNER;

      draw_node (draft->cr, draft->look, view_to_screen (draft->view, point->place), kind,
                 selection_has_node (draft->selection, lead->piece.id, false, i));
    }
}
