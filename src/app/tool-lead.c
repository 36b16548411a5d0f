#include "app/tool.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "document/changes.h"
#include "figures/names.h"

/* A lead is clicked from part to part, and between them where it bends. Without a bend it runs as usual. */
typedef struct {
  Tool tool;
  char *from;           /* the part that it begins at; NULL: not begun */
  GArray *places;       /* of Point, mm: where it begins, its bends, and last where the pointer would have it go on */
} LeadTool;

static TrammelSession *
lead_session (LeadTool *self)
{
  return trammel_sheet_canvas_session (self->tool.sheet);
}

static const Part *
lead_part_at (LeadTool *self, const ToolEvent *event)
{
  const Hit hit = tool_hit (&self->tool, event);

  return hit.kind == HIT_PART ? aeroplane_part_by_id (trammel_session_aeroplane (lead_session (self)), hit.id) : NULL;
}

static void
lead_show (LeadTool *self)
{
  SheetOverlay *overlay = trammel_sheet_canvas_overlay (self->tool.sheet);

  overlay->lead = self->from != NULL ? (const Point *) (void *) self->places->data : NULL;
  overlay->lead_count = self->from != NULL ? self->places->len : 0;
  trammel_sheet_canvas_refresh (self->tool.sheet);
}

static void
lead_forget (LeadTool *self)
{
  g_clear_pointer (&self->from, g_free);
  g_array_set_size (self->places, 0);
  trammel_sheet_canvas_clear_guides (self->tool.sheet);
  lead_show (self);
}

static void
lead_begin (Tool *tool)
{
  ((LeadTool *) tool)->places = g_array_new (FALSE, FALSE, sizeof (Point));
}

static void
lead_start (LeadTool *self, const Part *part)
{
  const Point at = { part->x, part->y };
  g_autofree char *hint = g_strdup_printf (_("From %s: click where it bends, then the part where it ends. Esc leaves it."),
                                           piece_name (&part->piece));

  self->from = g_strdup (part->piece.id);
  g_array_append_val (self->places, at);
  g_array_append_val (self->places, at);      /* the pointer's */
  trammel_sheet_canvas_set_hint (self->tool.sheet, hint);
  lead_show (self);
}

static void
lead_end (LeadTool *self, const Part *part)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (lead_session (self));
  Lead *lead = lead_new (self->from, part->piece.id);
  g_autofree char *id = aeroplane_free_id (aeroplane, "lead");

  lead->piece.id = g_strdup (id);
  lead->via_count = self->places->len - 2;
  lead->via = g_new0 (LeadVia, lead->via_count);
  for (size_t i = 0; i < lead->via_count; i++)
    lead->via[i].place = g_array_index (self->places, Point, i + 1);
  trammel_session_do (lead_session (self), aeroplane_with_added (aeroplane, &lead->piece), _("Add Lead"));
  lead_forget (self);
  trammel_session_select (lead_session (self), selection_of (id));
  trammel_sheet_canvas_set_hint (self->tool.sheet, _("Type in the panel how long it is; click the next part for another lead."));
}

static Point
lead_aim (LeadTool *self, const ToolEvent *event)
{
  return trammel_sheet_canvas_snapped (self->tool.sheet, event->place, NULL, SNAP_WHOLE, event->loose);
}

static void
lead_click (Tool *tool, const ToolEvent *event)
{
  LeadTool *self = (LeadTool *) tool;
  const Part *part = lead_part_at (self, event);
  Point place;

  if (self->from == NULL && part != NULL && part->piece.id != NULL)
    lead_start (self, part);
  else if (self->from == NULL)
    trammel_sheet_canvas_set_hint (tool->sheet, _("A lead begins at a part: click one."));
  else if (part != NULL && part->piece.id != NULL && g_strcmp0 (part->piece.id, self->from) != 0)
    lead_end (self, part);
  else if (part == NULL) {
    place = lead_aim (self, event);
    g_array_insert_val (self->places, self->places->len - 1, place);
    lead_show (self);
  }
}

static void
lead_hover (Tool *tool, const ToolEvent *event)
{
  LeadTool *self = (LeadTool *) tool;
  const Part *part = lead_part_at (self, event);

  gtk_widget_set_cursor_from_name (GTK_WIDGET (tool->sheet), part != NULL || self->from != NULL ? "crosshair" : "not-allowed");
  if (self->from == NULL)
    return;
  g_array_index (self->places, Point, self->places->len - 1) = part != NULL ? (Point) { part->x, part->y } : lead_aim (self, event);
  lead_show (self);
}

/* The last bend, then the beginning. */
static bool
lead_take_back (Tool *tool)
{
  LeadTool *self = (LeadTool *) tool;

  if (self->from == NULL)
    return false;
  if (self->places->len > 2) {
    g_array_remove_index (self->places, self->places->len - 2);
    lead_show (self);
  } else
    lead_forget (self);
  return true;
}

static bool
lead_key (Tool *tool, guint keyval, GdkModifierType state)
{
  return keyval == GDK_KEY_BackSpace && lead_take_back (tool);
}

static bool
lead_cancel (Tool *tool)
{
  LeadTool *self = (LeadTool *) tool;
  const bool busy = self->from != NULL;

  lead_forget (self);
  return busy;
}

/* The part that it begins at may be gone. */
static void
lead_changed (Tool *tool)
{
  LeadTool *self = (LeadTool *) tool;

  if (self->from != NULL && aeroplane_part_by_id (trammel_session_aeroplane (lead_session (self)), self->from) == NULL)
    lead_forget (self);
}

static void
lead_finish (Tool *tool)
{
  LeadTool *self = (LeadTool *) tool;

  if (self->places == NULL)
    return;
  lead_forget (self);
  g_array_unref (self->places);
}

static bool
lead_is_useful (const Aeroplane *aeroplane)
{
  return aeroplane_count (aeroplane, PIECE_PART) > 1;
}

const ToolKind tool_lead = {
  .word = "lead", .help = "leads", .name = N_("Lead"), .letter = N_("L"), .cursor = "crosshair", .group = 2, .draws = true,
  .size = sizeof (LeadTool),
  .hint = N_("Click a part, then where the lead bends, then the part where it ends."),
  .is_useful = lead_is_useful, .begin = lead_begin, .click = lead_click, .hover = lead_hover, .key = lead_key, .take_back = lead_take_back,
  .cancel = lead_cancel, .changed = lead_changed, .finish = lead_finish,
};
