#include "app/tool.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/place-entry.h"
#include "app/pull.h"
#include "document/changes.h"

typedef struct { Tool tool; size_t mark; bool port; PlaceEntry *entry; } MarkTool;

static TrammelSession *
mark_session (Tool *tool)
{
  return trammel_sheet_canvas_session (tool->sheet);
}

/* The mark that is meant: the one pressed on, else the selected one, else the first. */
static void
mark_press (Tool *tool, const ToolEvent *event)
{
  MarkTool *self = (MarkTool *) tool;
  const Hit hit = tool_hit (tool, event);
  const int selected = trammel_session_selection (mark_session (tool))->mark;

  place_entry_close (&self->entry);
  self->mark = hit.kind == HIT_MARK ? hit.index : selected >= 0 ? (size_t) selected : 0;
  self->port = event->place.y < 0;
}

static void
mark_set (Tool *tool, double station)
{
  MarkTool *self = (MarkTool *) tool;
  TrammelSession *session = mark_session (tool);
  const bool first = aeroplane_count (trammel_session_aeroplane (session), PIECE_MARK) == 0;

  trammel_session_do (session, change_mark_station (trammel_session_aeroplane (session), self->mark, fabs (station)),
                      first ? _("Add Balance Mark") : _("Move Balance Mark"));
  trammel_session_select (session, selection_of_mark ((int) self->mark));
}

static void
mark_click (Tool *tool, const ToolEvent *event)
{
  mark_set (tool, trammel_sheet_canvas_snapped (tool->sheet, event->place, NULL, SNAP_WHOLE, event->loose).y);
  trammel_sheet_canvas_clear_guides (tool->sheet);
}

static void
mark_typed (Tool *tool, Point place)
{
  mark_set (tool, place.y);
}

/* Held at the very place of the mark, so that the mark comes to the hand. */
static void
mark_grab (Tool *tool, const ToolEvent *from)
{
  MarkTool *self = (MarkTool *) tool;
  TrammelSession *session = mark_session (tool);
  const Hit hit = { .kind = HIT_MARK, .index = self->mark, .port = self->port };
  Grip *grip = grip_new (trammel_session_aeroplane (session), &hit, trammel_session_selection (session), false);
  const Point place = grip_place (grip);
  Pull *pull = pull_begin_on_sheet (tool->sheet, grip, place);

  if (!point_is_finite (place))
    pull_set_label (pull, _("Add Balance Mark"));
}

static void
mark_pull (Tool *tool, const ToolEvent *event)
{
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);

  if (pull != NULL)
    pull_to (pull, event->place, (PullManner) { false, event->loose });
}

static void
mark_drop (Tool *tool, const ToolEvent *event)
{
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);

  if (pull == NULL)
    return;
  pull_drop (pull);
  trammel_session_select (mark_session (tool), selection_of_mark ((int) ((MarkTool *) tool)->mark));
}

static void
mark_hover (Tool *tool, const ToolEvent *event)
{
  trammel_sheet_canvas_snapped (tool->sheet, event->place, NULL, SNAP_WHOLE, event->loose);
  trammel_sheet_canvas_overlay (tool->sheet)->guide_x = NAN;
}

static void
mark_leave (Tool *tool)
{
  trammel_sheet_canvas_clear_guides (tool->sheet);
}

static bool
mark_key (Tool *tool, guint keyval, GdkModifierType state)
{
  MarkTool *self = (MarkTool *) tool;
  const int selected = trammel_session_selection (mark_session (tool))->mark;
  Point place = { 0, 0 };

  if (trammel_sheet_canvas_pull (tool->sheet) != NULL)
    return false;
  self->mark = selected >= 0 ? (size_t) selected : 0;
  trammel_sheet_canvas_pointer (tool->sheet, &place);
  return place_entry_key (&self->entry, tool, keyval, state, (Point) { place.x, fabs (place.y) }, mark_typed);
}

static bool
mark_cancel (Tool *tool)
{
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);

  if (pull != NULL)
    pull_cancel (pull);
  return pull != NULL;
}

static void
mark_finish (Tool *tool)
{
  place_entry_close (&((MarkTool *) tool)->entry);
}

static bool
mark_is_useful (const Aeroplane *aeroplane)
{
  const Surface *wing = aeroplane_reference_wing (aeroplane);

  return wing != NULL && outline_check (wing->outline, NULL) == CORE_OK;
}

const ToolKind tool_mark = {
  .word = "balance-mark", .help = "mark", .name = N_("Balance Mark"), .letter = N_("K"), .cursor = "col-resize", .group = 3, .draws = true,
  .size = sizeof (MarkTool), .hint = N_("Click at the station where fingers or pins reach the wing, or drag the mark there."),
  .is_useful = mark_is_useful, .press = mark_press, .click = mark_click, .grab = mark_grab, .pull = mark_pull, .drop = mark_drop,
  .hover = mark_hover, .leave = mark_leave, .key = mark_key, .cancel = mark_cancel, .finish = mark_finish,
};
