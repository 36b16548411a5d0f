#include "app/selection-key.h"
#include "app/bay-rows.h"
#include "app/budget-fields.h"
#include "app/control-fields.h"
#include "app/lead-fields.h"
#include "app/nose-fields.h"
#include "app/piece-fields.h"
#include "app/power-fields.h"
#include "app/structure-line.h"

/* Whether its bends run as usual is said at the top of the page. */
static char *
lead_key (TrammelSession *session)
{
  const Lead *lead = lead_selected (session);
  LeadPoint point;
  const bool chosen = lead_point_selected (session, &point);

  return g_strdup_printf ("lead %s %s %s %s %d %d %d %d", lead->piece.id, lead->from, lead->to, lead->also != NULL ? lead->also : "", chosen,
                          chosen && point.joint, chosen && point.via == LEAD_NO_VIA, lead_usual (session));
}

/* All but the lines of a structure. */
static char *
thing_key (TrammelSession *session, bool has_plan)
{
  const Selection *selection = trammel_session_selection (session);
  const Surface *surface = trammel_session_selected_surface (session);
  const Part *part = trammel_session_selected_part (session);
  const Figures *figures = trammel_session_figures (session);

  if (selection->point != SHEET_POINT_NONE)
    return g_strdup_printf ("point %d", selection->point);
  if (selection_is_empty (selection) || selection->ids == NULL)
    return g_strdup_printf ("aeroplane %zu %zu %d %d %zu %zu", figures->balance.mark_count,
                            aeroplane_count (trammel_session_aeroplane (session), PIECE_MARK), has_plan, aeroplane_takes_total (session),
                            budget_fields (session).count, power_fields (session).count);
  if (aeroplane_plan_by_id (trammel_session_aeroplane (session), selection_single (selection)) != NULL)
    return g_strdup_printf ("plan %d", has_plan);
  if (bay_selected (session) != NULL)
    return g_strdup_printf ("bay %s", selection->ids[0]);
  if (control_selected (session) != NULL)
    return g_strdup_printf ("control %s %s %d %d %zu %zu", surface->piece.id, selection->control, surface->role,
                            control_selected (session)->kind, control_place (session), control_roll_fields (session).count);
  if (surface != NULL)
    return g_strdup_printf ("surface %s %s %d %d %d %d %zu %zu", surface->piece.id, surface->traced != NULL ? surface->traced : "",
                            surface->role, surface->root_open, surface->provisional,
                            surface == aeroplane_reference_wing (trammel_session_aeroplane (session)), selection->node_count,
                            selection->node_count > 0 ? selection->nodes[0] : 0);
  if (part != NULL)
    return g_strdup_printf ("part %s %s %d %d %zu %zu %zu", part->piece.id, part->class_name, part->has_rail, part->aboard, part_hatch_fields (session).count,
                            part_stand_fields (session).count, part_nose_fields (session).count);
  if (lead_selected (session) != NULL)
    return lead_key (session);
  if (trammel_session_selected_body (session) != NULL)
    return g_strdup_printf ("body %s %d %zu %zu", selection->ids[0], selection->side, selection->node_count,
                            selection->node_count > 0 ? selection->nodes[0] : 0);
  return g_strdup_printf ("several %u", g_strv_length (selection->ids));
}

char *
selection_key (TrammelSession *session, bool has_plan)
{
  g_autofree char *thing = thing_key (session, has_plan), *lines = structure_lines_key (session);

  return g_strconcat (thing, lines, NULL);
}
