#include "app/tool.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/pull.h"
#include "app/sheet-command.h"
#include "document/changes.h"

typedef struct {
  Tool tool;
  char *id;             /* the part that is getting a rail; NULL: none */
  double from;          /* where one end was pressed down, mm */
  bool laying, laid;    /* the hand is at it; it has shown something */
} RailTool;

static TrammelSession *
rail_session (RailTool *self)
{
  return trammel_sheet_canvas_session (self->tool.sheet);
}

static void
rail_press (Tool *tool, const ToolEvent *event)
{
  RailTool *self = (RailTool *) tool;
  const Hit hit = tool_hit (tool, event);

  g_clear_pointer (&self->id, g_free);
  if (hit.kind != HIT_PART && hit.kind != HIT_RAIL_END)
    return;
  self->id = g_strdup (hit.id);
  trammel_session_select (rail_session (self), selection_of (hit.id));
}

static void
rail_click (Tool *tool, const ToolEvent *event)
{
  RailTool *self = (RailTool *) tool;
  const Part *part = aeroplane_part_by_id (trammel_session_aeroplane (rail_session (self)), self->id);

  if (part != NULL && !part->has_rail)
    sheet_command_add_rail (tool->sheet);
}

static double
rail_aim (RailTool *self, const ToolEvent *event)
{
  return trammel_sheet_canvas_snapped (self->tool.sheet, event->place, self->id, SNAP_WHOLE, event->loose).x;
}

/* One end of an existing rail is pulled; anywhere else on the part both ends are laid anew. */
static void
rail_grab (Tool *tool, const ToolEvent *from)
{
  RailTool *self = (RailTool *) tool;
  const Hit hit = tool_hit (tool, from);
  TrammelSession *session = rail_session (self);

  self->laying = self->id != NULL && hit.kind != HIT_RAIL_END;
  self->laid = false;
  self->from = rail_aim (self, from);
  if (hit.kind == HIT_RAIL_END)
    pull_begin_on_sheet (tool->sheet, grip_new (trammel_session_aeroplane (session), &hit, trammel_session_selection (session), false),
                         from->place);
}

/* A rail that does not hold its part's middle would move the part: it reaches at least that far. */
static void
rail_lay (RailTool *self, const ToolEvent *event)
{
  const Aeroplane *now = trammel_session_aeroplane (rail_session (self));
  const Part *part = aeroplane_part_by_id (now, self->id);
  const double to = rail_aim (self, event);

  if (part == NULL)
    return;
  trammel_session_preview (rail_session (self), change_part_rail (now, self->id, fmin (fmin (self->from, to), part->x),
                                                                  fmax (fmax (self->from, to), part->x)));
  self->laid = true;
}

/* An undo in the middle of it ends it. */
static void
rail_changed (Tool *tool)
{
  RailTool *self = (RailTool *) tool;

  if (self->laid && !trammel_session_is_previewing (rail_session (self)))
    self->laying = false;
}

static void
rail_pull (Tool *tool, const ToolEvent *event)
{
  RailTool *self = (RailTool *) tool;
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);

  if (pull != NULL)
    pull_to (pull, event->place, (PullManner) { event->shift, event->loose });
  else if (self->laying)
    rail_lay (self, event);
}

static void
rail_drop (Tool *tool, const ToolEvent *event)
{
  RailTool *self = (RailTool *) tool;
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);

  trammel_sheet_canvas_clear_guides (tool->sheet);
  if (pull != NULL)
    pull_drop (pull);
  else if (self->laying)
    trammel_session_settle (rail_session (self), _("Lay Rail"));
  self->laying = false;
}

static bool
rail_cancel (Tool *tool)
{
  RailTool *self = (RailTool *) tool;
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);
  const bool busy = pull != NULL || self->laying;

  trammel_sheet_canvas_clear_guides (tool->sheet);
  if (pull != NULL)
    pull_cancel (pull);
  else if (self->laying)
    trammel_session_abandon (rail_session (self));
  self->laying = false;
  return busy;
}

static void
rail_hover (Tool *tool, const ToolEvent *event)
{
  const HitKind kind = tool_hit (tool, event).kind;

  gtk_widget_set_cursor_from_name (GTK_WIDGET (tool->sheet), kind == HIT_PART || kind == HIT_RAIL_END ? "row-resize" : "not-allowed");
}

static void
rail_finish (Tool *tool)
{
  g_free (((RailTool *) tool)->id);
}

static bool
rail_is_useful (const Aeroplane *aeroplane)
{
  return aeroplane_count (aeroplane, PIECE_PART) > 0;
}

const ToolKind tool_rail = {
  .word = "rail", .help = "parts", .name = N_("Rail"), .letter = N_("R"), .cursor = "row-resize", .group = 2, .draws = true,
  .size = sizeof (RailTool),
  .hint = N_("Click a part to give it a rail, or drag along it to lay both ends."),
  .is_useful = rail_is_useful, .press = rail_press, .click = rail_click, .grab = rail_grab, .pull = rail_pull, .drop = rail_drop,
  .hover = rail_hover, .cancel = rail_cancel, .changed = rail_changed, .finish = rail_finish,
};
