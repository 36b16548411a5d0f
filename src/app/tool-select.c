#include "app/tool.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/dimension-field.h"
#include "app/part-group.h"
#include "app/pull.h"
#include "app/rubber-band.h"
#include "app/sheet-command.h"

typedef struct {
  Tool tool;
  Hit hit;              /* what was pressed on; its words belong to the tool */
  char *id, *control;
  bool shift;
  bool was_selected;    /* before the press */
  bool again;           /* pressed where the last click selected `hit`: what lies beneath is wanted */
  bool clicked;         /* there was a click, and here: */
  Point click;          /* mm */
  bool banding;
  Point corner;         /* where the band began */
  gint64 clicked_at;    /* µs */
} SelectTool;

static const Box no_band = { { 1, 1 }, { -1, -1 } };

static TrammelSession *
select_session (Tool *tool)
{
  return trammel_sheet_canvas_session (tool->sheet);
}

static void
select_remember (SelectTool *self, Hit hit)
{
  g_autofree char *id = self->id, *control = self->control;      /* what the hit tells may be the last one's */

  self->hit = hit;
  self->hit.id = self->id = g_strdup (hit.id);
  self->hit.control = self->control = g_strdup (hit.control);
}

static bool
select_hit_is_selected (const Selection *selection, const Hit *hit)
{
  switch (hit->kind) {
    case HIT_NODE:
    case HIT_LEAD_POINT: return selection_has_node (selection, hit->id, false, hit->index);
    case HIT_MARK:    return selection->mark == (int) hit->index;
    case HIT_POINT:   return selection->point == (SheetPoint) hit->index;
    case HIT_CONTROL: return selection->control != NULL && g_strcmp0 (selection->control, hit->control) == 0;
    default:          return selection_has (selection, hit->id) && selection->control == NULL;
  }
}

/* Of a part in a group all of it, unless it was narrowed to that part. */
static Selection
select_only (const Hit *hit, const Aeroplane *aeroplane)
{
  switch (hit->kind) {
    case HIT_NODE:
    case HIT_LEAD_POINT: return selection_of_node (hit->id, false, hit->index);
    case HIT_MARK:    return selection_of_mark ((int) hit->index);
    case HIT_POINT:   return selection_of_point ((SheetPoint) hit->index);
    case HIT_CONTROL: return selection_of_control (hit->id, hit->control);
    case HIT_PART:    return part_group_selection (aeroplane, hit->id);
    case HIT_SEGMENT:
    case HIT_SURFACE:
    case HIT_LEAD:
    case HIT_BODY:    return selection_of (hit->id);
    default:          return selection_none ();
  }
}

/* Handles, ends and figures belong to what is selected already. */
static bool
select_hit_selects (const Hit *hit)
{
  switch (hit->kind) {
    case HIT_NODE: case HIT_SEGMENT: case HIT_PART: case HIT_MARK: case HIT_POINT: case HIT_CONTROL:
    case HIT_SURFACE: case HIT_BODY: case HIT_LEAD: case HIT_LEAD_POINT:
      return true;
    default:
      return false;
  }
}

/* What may lie over one another. */
static bool
select_hit_stacks (const Hit *hit)
{
  return select_hit_selects (hit) && hit->kind != HIT_NODE && hit->kind != HIT_SEGMENT && hit->kind != HIT_LEAD_POINT;
}

/* A hand that clicks twice means one place, though it is not quite still. Nodes and lines that the first click has shown come first. */
static bool
select_is_again (SelectTool *self, const ToolEvent *event, const Hit *hit)
{
  const double near_px = event->finger ? 9 : 3;

  return self->clicked && !event->shift && select_hit_stacks (hit) && select_hit_stacks (&self->hit)
         && point_distance (event->place, self->click) * trammel_sheet_canvas_view (self->tool.sheet)->scale <= near_px
         && select_hit_is_selected (trammel_session_selection (select_session (&self->tool)), &self->hit);
}

static void
select_press (Tool *tool, const ToolEvent *event)
{
  SelectTool *self = (SelectTool *) tool;
  const Hit hit = tool_hit (tool, event);

  trammel_sheet_canvas_set_hint (tool->sheet, NULL);
  self->shift = event->shift;
  self->again = select_is_again (self, event, &hit);
  self->clicked = false;
  if (!self->again)
    select_remember (self, hit);
  self->was_selected = select_hit_is_selected (trammel_session_selection (select_session (tool)), &self->hit);
  if (!event->shift && !self->was_selected && select_hit_selects (&self->hit))
    trammel_session_select (select_session (tool), select_only (&self->hit, trammel_session_aeroplane (select_session (tool))));
}

static void
select_toggle (SelectTool *self)
{
  TrammelSession *session = select_session (&self->tool);
  Selection selection = selection_copy (trammel_session_selection (session));

  if (self->hit.kind == HIT_NODE || self->hit.kind == HIT_LEAD_POINT)
    selection_toggle_node (&selection, self->id, false, self->hit.index);
  else if (self->id != NULL && self->hit.kind != HIT_CONTROL)
    selection_toggle (&selection, self->id);
  trammel_session_select (session, selection);
}

static void
select_keep_spot (SelectTool *self)
{
  OutlineSpot *spot = trammel_sheet_canvas_spot (self->tool.sheet);

  outline_spot_clear (spot);
  if (self->hit.kind != HIT_SEGMENT)
    return;
  *spot = (OutlineSpot) { .id = g_strdup (self->id), .segment = self->hit.index, .t = self->hit.t };
  trammel_sheet_canvas_set_hint (self->tool.sheet, _("Insert adds a node where the line was clicked."));
}

/* A second click on a part of a group, wherever on it, means that part alone; a third in the same place what lies beneath it. */
static bool
select_narrow (SelectTool *self)
{
  TrammelSession *session = select_session (&self->tool);
  const Part *part = self->hit.kind == HIT_PART ? aeroplane_part_by_id (trammel_session_aeroplane (session), self->id) : NULL;
  const Selection *selection = trammel_session_selection (session);

  if (part == NULL || part->group == NULL || selection_single (selection) != NULL || !selection_has (selection, self->id))
    return false;
  trammel_session_select (session, selection_of (self->id));
  return true;
}

/* What has been clicked; of a part of a group all of it, and how that part alone is had. */
static void
select_take (SelectTool *self)
{
  TrammelSession *session = select_session (&self->tool);

  trammel_session_select (session, select_only (&self->hit, trammel_session_aeroplane (session)));
  if (self->hit.kind == HIT_PART && selection_single (trammel_session_selection (session)) == NULL)
    trammel_sheet_canvas_set_hint (self->tool.sheet, _("These parts move as one. Click again for this part alone."));
}

/* Two quick clicks on a lead's line bend it there; two slow ones mean what lies beneath. */
static bool
select_bends (SelectTool *self, const ToolEvent *event)
{
  const gint64 before = self->clicked_at;
  int quick_ms = 400;

  self->clicked_at = g_get_monotonic_time ();
  g_object_get (gtk_widget_get_settings (GTK_WIDGET (self->tool.sheet)), "gtk-double-click-time", &quick_ms, NULL);
  return self->again && self->hit.kind == HIT_LEAD && self->clicked_at - before <= quick_ms * 1000
         && sheet_command_bend (self->tool.sheet, self->id, event->place);
}

static void
select_click (Tool *tool, const ToolEvent *event)
{
  SelectTool *self = (SelectTool *) tool;
  const bool bent = select_bends (self, event);

  self->clicked = !bent;
  self->click = event->place;
  if (bent)
    return;
  if ((self->again || (self->was_selected && !self->shift)) && select_narrow (self))
    return;
  if (self->again)
    select_remember (self, tool_hit_beneath (tool, event, &self->hit));
  if (self->hit.kind == HIT_DIMENSION)
    dimension_field_open (tool->sheet, &self->hit);
  else if (self->shift && select_hit_selects (&self->hit))
    select_toggle (self);
  else if (select_hit_selects (&self->hit))
    select_take (self);
  else if ((self->hit.kind == HIT_NOTHING || self->hit.kind == HIT_DATUM) && !self->shift)
    trammel_session_select (select_session (tool), selection_none ());
  select_keep_spot (self);
}

static void
select_grab (Tool *tool, const ToolEvent *from)
{
  SelectTool *self = (SelectTool *) tool;
  TrammelSession *session = select_session (tool);
  Grip *grip;

  if (self->shift && !self->was_selected && select_hit_selects (&self->hit))
    select_toggle (self);
  grip = grip_new (trammel_session_aeroplane (session), &self->hit, trammel_session_selection (session), false);
  if (grip != NULL)
    pull_begin_on_sheet (tool->sheet, grip, from->place);
  self->banding = grip == NULL;
  self->corner = from->place;
}

static Box
select_band (const SelectTool *self, Point to)
{
  return (Box) { { fmin (self->corner.x, to.x), fmin (self->corner.y, to.y) }, { fmax (self->corner.x, to.x), fmax (self->corner.y, to.y) } };
}

static void
select_pull (Tool *tool, const ToolEvent *event)
{
  SelectTool *self = (SelectTool *) tool;
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);

  if (pull != NULL)
    pull_to (pull, event->place, (PullManner) { event->shift, event->loose });
  else if (self->banding) {
    trammel_sheet_canvas_overlay (tool->sheet)->band = select_band (self, event->place);
    trammel_sheet_canvas_refresh (tool->sheet);
  }
}

static void
select_end_band (SelectTool *self)
{
  self->banding = false;
  trammel_sheet_canvas_overlay (self->tool.sheet)->band = no_band;
  trammel_sheet_canvas_refresh (self->tool.sheet);
}

static void
select_drop (Tool *tool, const ToolEvent *event)
{
  SelectTool *self = (SelectTool *) tool;
  TrammelSession *session = select_session (tool);
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);

  if (pull != NULL) {
    pull_drop (pull);
    if (self->hit.kind == HIT_LEAD)
      sheet_command_select_bend (tool->sheet, self->id, event->place);
  } else if (self->banding) {
    trammel_session_select (session, rubber_band_selection (trammel_session_aeroplane (session), trammel_session_selection (session),
                                                            select_band (self, event->place), self->shift));
    select_end_band (self);
  }
}

static bool
select_cancel (Tool *tool)
{
  SelectTool *self = (SelectTool *) tool;
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);
  const bool banding = self->banding;

  if (pull != NULL)
    pull_cancel (pull);
  if (banding)
    select_end_band (self);
  return pull != NULL || banding;
}

static void
select_hover (Tool *tool, const ToolEvent *event)
{
  const HitKind kind = tool_hit (tool, event).kind;

  gtk_widget_set_cursor_from_name (GTK_WIDGET (tool->sheet), kind == HIT_DIMENSION ? "text" : "default");
}

static void
select_finish (Tool *tool)
{
  SelectTool *self = (SelectTool *) tool;

  g_free (self->id);
  g_free (self->control);
}

const ToolKind tool_select = {
  .word = "select", .name = N_("Select"), .letter = N_("S"), .cursor = "default", .group = 0, .size = sizeof (SelectTool),
  .hint = N_("Click or drag a thing; drag over several; click a figure to type it."),
  .press = select_press, .click = select_click, .grab = select_grab, .pull = select_pull, .drop = select_drop, .hover = select_hover,
  .cancel = select_cancel, .finish = select_finish,
};
