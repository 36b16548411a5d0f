#include "app/tool-hinge.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/hinge-words.h"
#include "app/pull.h"
#include "document/changes.h"

/* Two ends make a control: clicked one after the other, or both in one drag. An end of the control that is selected is dragged. */

static TrammelSession *
hinge_session (HingeTool *self)
{
  return trammel_sheet_canvas_session (self->tool.sheet);
}

static void
hinge_begin_line (HingeTool *self)
{
  self->first = self->second;
  self->first.own = (Point) { self->line.hinge_inner_x, self->line.inner };
  self->begun = true;
}

/* What is put is selected, so that the panel shows it and its ends can be dragged. */
static void
hinge_add (HingeTool *self)
{
  TrammelSession *session = hinge_session (self);
  g_autofree char *surface = g_strdup (self->seat.id), *id = NULL;
  Aeroplane *next = change_control_added (trammel_session_settled (session), surface, &self->line, &id);

  if (next == NULL)
    return;
  self->begun = false;
  hinge_tool_hide (self);
  trammel_session_do (session, next, hinge_words_added (self->line.kind));
  trammel_session_select (session, selection_of_control (surface, id));
  trammel_sheet_canvas_set_hint (self->tool.sheet, NULL);
}

/* A line that cannot be put says why, and waits for another second end. */
static void
hinge_put (HingeTool *self)
{
  if (hinge_tool_surface (self) == NULL) {
    if (!self->edge_on)
      trammel_sheet_canvas_set_hint (self->tool.sheet, _("There is no surface here: click within a wing, a tailplane or a fin."));
    return;
  }
  if (self->begun && self->fault == HINGE_SOUND) {
    hinge_add (self);
    return;
  }
  if (!self->begun)
    hinge_begin_line (self);
  hinge_tool_show (self);
}

static void
hinge_press (Tool *tool, const ToolEvent *event)
{
  place_entry_close (&((HingeTool *) tool)->entry);
}

/* Across the sheet are stations, across the side view heights: a place of the one says nothing in the other. */
static bool
hinge_is_elsewhere (HingeTool *self, const ToolEvent *event)
{
  return self->begun && self->seat.upright != (event->strip != NULL);
}

static void
hinge_click (Tool *tool, const ToolEvent *event)
{
  HingeTool *self = (HingeTool *) tool;

  if (hinge_is_elsewhere (self, event)) {
    trammel_sheet_canvas_set_hint (tool->sheet, self->seat.upright ? _("The first end stands in the side view: click the other one there, too.")
                                                                   : _("The first end stands on the sheet: click the other one there, too."));
    return;
  }
  hinge_tool_aim (self, event, true);
  hinge_tool_show (self);
  hinge_put (self);
}

static bool
hinge_grab_end (HingeTool *self, const ToolEvent *from)
{
  TrammelSheetCanvas *sheet = self->tool.sheet;
  TrammelSession *session = hinge_session (self);
  Hit hit;

  if (self->begun || from->strip != NULL)
    return false;
  hit = tool_hit (&self->tool, from);
  if (hit.kind != HIT_HINGE_END)
    return false;
  hinge_tool_hide (self);
  pull_begin_on_sheet (sheet, grip_new (trammel_session_aeroplane (session), &hit, trammel_session_selection (session), false),
                       from->place);
  return true;
}

static void
hinge_grab (Tool *tool, const ToolEvent *from)
{
  HingeTool *self = (HingeTool *) tool;

  if (self->begun || hinge_grab_end (self, from))
    return;
  hinge_tool_aim (self, from, true);
  if (hinge_tool_surface (self) != NULL)
    hinge_begin_line (self);
}

static void
hinge_hover (Tool *tool, const ToolEvent *event)
{
  HingeTool *self = (HingeTool *) tool;

  if (self->entry != NULL)
    return;
  if (hinge_is_elsewhere (self, event)) {
    hinge_tool_hide (self);
    return;
  }
  hinge_tool_aim (self, event, false);
  hinge_tool_show (self);
}

static void
hinge_pull (Tool *tool, const ToolEvent *event)
{
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);

  if (pull != NULL)
    pull_to (pull, event->place, (PullManner) { event->shift, event->loose });
  else
    hinge_hover (tool, event);
}

static void
hinge_drop (Tool *tool, const ToolEvent *event)
{
  HingeTool *self = (HingeTool *) tool;
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);

  if (pull != NULL) {
    trammel_sheet_canvas_clear_guides (tool->sheet);
    pull_drop (pull);
    trammel_sheet_canvas_set_hint (tool->sheet, NULL);
  } else if (self->begun)
    hinge_click (tool, event);
}

static void
hinge_leave (Tool *tool)
{
  HingeTool *self = (HingeTool *) tool;

  if (self->entry == NULL && trammel_sheet_canvas_pull (tool->sheet) == NULL)
    hinge_tool_hide (self);
}

static bool
hinge_take_back (Tool *tool)
{
  HingeTool *self = (HingeTool *) tool;

  if (!self->begun)
    return false;
  self->begun = false;
  place_entry_close (&self->entry);
  hinge_tool_hide (self);
  trammel_sheet_canvas_set_hint (tool->sheet, NULL);
  return true;
}

static void
hinge_typed (Tool *tool, Point place)
{
  HingeTool *self = (HingeTool *) tool;

  hinge_tool_aim_at (self, place);
  hinge_tool_show (self);
  hinge_put (self);
}

static bool
hinge_key (Tool *tool, guint keyval, GdkModifierType state)
{
  HingeTool *self = (HingeTool *) tool;
  Point place = { 0, 0 };

  if (keyval == GDK_KEY_BackSpace && hinge_take_back (tool))
    return true;
  if (hinge_tool_surface (self) != NULL) {
    const bool fin = !surface_is_horizontal (hinge_tool_surface (self));
    const PlaceStand stand = { fin ? _("Height") : _("Station"), self->over, self->at };

    return place_entry_key_at (&self->entry, tool, keyval, state, self->second.own, hinge_typed, &stand);
  }
  trammel_sheet_canvas_pointer (tool->sheet, &place);
  place.y = fabs (place.y);
  return place_entry_key (&self->entry, tool, keyval, state, place, hinge_typed);
}

static bool
hinge_cancel (Tool *tool)
{
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);

  if (pull == NULL)
    return hinge_take_back (tool);
  pull_cancel (pull);
  return true;
}

/* What is drawn of it belonged to the aeroplane as it was. */
static void
hinge_changed (Tool *tool)
{
  HingeTool *self = (HingeTool *) tool;

  if (self->begun && hinge_tool_surface (self) == NULL)
    hinge_take_back (tool);
  else if (trammel_sheet_canvas_overlay (tool->sheet)->hinge != NULL)
    hinge_tool_hide (self);
}

static void
hinge_finish (Tool *tool)
{
  HingeTool *self = (HingeTool *) tool;

  place_entry_close (&self->entry);
  hinge_tool_hide (self);
  hinge_seat_clear (&self->seat);
  trace_ground_unref (self->ground);
}

/* From the first closed surface on. */
static bool
hinge_is_useful (const Aeroplane *aeroplane)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++) {
    const CoreStatus status = outline_check (aeroplane_surface (aeroplane, i)->outline, NULL);

    if (status == CORE_OK || status == CORE_MULTI_VALUED)
      return true;
  }
  return false;
}

const ToolKind tool_hinge = {
  .word = "hinge", .help = "draw", .name = N_("Hinge Line"), .letter = N_("H"), .cursor = "crosshair", .group = 1, .draws = true,
  .in_side_view = true,
  .size = sizeof (HingeTool),
  .hint = N_("Click both ends of a hinge line, or drag along it; a fin's in the side view."),
  .is_useful = hinge_is_useful, .press = hinge_press, .click = hinge_click, .grab = hinge_grab, .pull = hinge_pull, .drop = hinge_drop,
  .hover = hinge_hover, .leave = hinge_leave, .key = hinge_key, .take_back = hinge_take_back, .cancel = hinge_cancel,
  .changed = hinge_changed, .finish = hinge_finish,
};
