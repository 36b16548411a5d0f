#include "app/tool.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/part-adder.h"
#include "app/place-entry.h"
#include "app/pull.h"

typedef struct {
  Tool tool;
  Part *ghost;          /* under the pointer; NULL: the pointer is elsewhere */
  PlaceEntry *entry;
} PartTool;

static const double centre_line_px = 6;

static TrammelSession *
part_session (Tool *tool)
{
  return trammel_sheet_canvas_session (tool->sheet);
}

static Point
part_aim (Tool *tool, const ToolEvent *event)
{
  const double near = centre_line_px / trammel_sheet_canvas_view (tool->sheet)->scale;
  Point place = trammel_sheet_canvas_snapped (tool->sheet, event->place, NULL, SNAP_WHOLE, event->loose);

  if (event->shift || (!event->loose && fabs (place.y) <= near))
    place.y = 0;
  return place;
}

static void
part_clear_ghost (PartTool *self)
{
  trammel_sheet_canvas_overlay (self->tool.sheet)->part_ghost = NULL;
  if (self->ghost != NULL)
    piece_unref (&self->ghost->piece);
  self->ghost = NULL;
  trammel_sheet_canvas_refresh (self->tool.sheet);
}

static void
part_show_ghost (PartTool *self, Point place)
{
  Part *pattern = trammel_sheet_canvas_part_pattern (self->tool.sheet);

  part_clear_ghost (self);
  self->ghost = (Part *) piece_dup (&pattern->piece);
  piece_unref (&pattern->piece);
  self->ghost->x = place.x;
  self->ghost->y = place.y;
  trammel_sheet_canvas_overlay (self->tool.sheet)->part_ghost = self->ghost;
}

/* The aeroplane with the part there; its id is the caller's. */
static Aeroplane *
part_added (Tool *tool, Point place, char **id)
{
  const Aeroplane *now = trammel_session_aeroplane (part_session (tool));
  Part *pattern = trammel_sheet_canvas_part_pattern (tool->sheet);
  Aeroplane *added = part_adder_at (now, pattern, place, id);

  piece_unref (&pattern->piece);
  return added;
}

static char *
part_step_name (Tool *tool)
{
  Part *pattern = trammel_sheet_canvas_part_pattern (tool->sheet);
  char *label = part_adder_step (pattern);

  piece_unref (&pattern->piece);
  return label;
}

static void
part_put (Tool *tool, Point place)
{
  Part *pattern = trammel_sheet_canvas_part_pattern (tool->sheet);
  g_autofree char *sentence = NULL;

  part_clear_ghost ((PartTool *) tool);
  sentence = part_adder_put (part_session (tool), pattern, &place);
  if (sentence != NULL)
    trammel_sheet_canvas_set_hint (tool->sheet, sentence);
  piece_unref (&pattern->piece);
}

/* A lead is nothing that is held. */
static bool
part_is_lead (Tool *tool)
{
  Part *pattern = trammel_sheet_canvas_part_pattern (tool->sheet);
  const bool is_lead = part_adder_is_lead (pattern);

  piece_unref (&pattern->piece);
  return is_lead;
}

static void
part_press (Tool *tool, const ToolEvent *event)
{
  place_entry_close (&((PartTool *) tool)->entry);
}

static void
part_click (Tool *tool, const ToolEvent *event)
{
  part_put (tool, part_aim (tool, event));
}

/* Put and moved in one: one step that is called after the putting. */
static void
part_put_and_hold (Tool *tool, const ToolEvent *from)
{
  TrammelSession *session = part_session (tool);
  g_autofree char *label = part_step_name (tool), *id = NULL;
  Aeroplane *next = part_added (tool, part_aim (tool, from), &id);
  Selection selected;
  Grip *grip;
  Pull *pull;
  Hit hit;

  if (next == NULL)
    return;
  part_clear_ghost ((PartTool *) tool);
  selected = selection_of (id);
  hit = (Hit) { .kind = HIT_PART, .id = id };
  grip = grip_new (next, &hit, &selected, false);
  trammel_session_preview (session, next);
  trammel_session_select (session, selected);
  pull = pull_begin_on_sheet (tool->sheet, grip, grip_place (grip));
  pull_set_label (pull, label);
}

static void
part_grab (Tool *tool, const ToolEvent *from)
{
  if (part_is_lead (tool))
    part_put (tool, part_aim (tool, from));
  else
    part_put_and_hold (tool, from);
}

static void
part_pull (Tool *tool, const ToolEvent *event)
{
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);

  if (pull != NULL)
    pull_to (pull, event->shift ? (Point) { event->place.x, 0 } : event->place, (PullManner) { false, event->loose });
}

static void
part_drop (Tool *tool, const ToolEvent *event)
{
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);

  if (pull != NULL)
    pull_drop (pull);
}

static void
part_hover (Tool *tool, const ToolEvent *event)
{
  part_show_ghost ((PartTool *) tool, part_aim (tool, event));
}

static void
part_leave (Tool *tool)
{
  trammel_sheet_canvas_clear_guides (tool->sheet);
  part_clear_ghost ((PartTool *) tool);
}

static bool
part_key (Tool *tool, guint keyval, GdkModifierType state)
{
  Point place = { 0, 0 };

  if (trammel_sheet_canvas_pull (tool->sheet) != NULL)
    return false;
  trammel_sheet_canvas_pointer (tool->sheet, &place);
  return place_entry_key (&((PartTool *) tool)->entry, tool, keyval, state, place, part_put);
}

static bool
part_cancel (Tool *tool)
{
  Pull *pull = trammel_sheet_canvas_pull (tool->sheet);

  if (pull != NULL)
    pull_cancel (pull);
  return pull != NULL;
}

static void
part_finish (Tool *tool)
{
  place_entry_close (&((PartTool *) tool)->entry);
  part_clear_ghost ((PartTool *) tool);
}

/* A part's place is worth something once there is a surface to balance. */
static bool
part_is_useful (const Aeroplane *aeroplane)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    if (outline_check (aeroplane_surface (aeroplane, i)->outline, NULL) == CORE_OK)
      return true;
  return false;
}

const ToolKind tool_part = {
  .word = "part", .help = "parts", .name = N_("Part"), .letter = N_("P"), .cursor = "crosshair", .group = 2, .draws = true,
  .size = sizeof (PartTool),
  .hint = N_("Click where the part's middle is. Shift keeps it on the centre line."),
  .is_useful = part_is_useful, .press = part_press, .click = part_click, .grab = part_grab, .pull = part_pull, .drop = part_drop,
  .hover = part_hover, .leave = part_leave, .key = part_key, .cancel = part_cancel, .finish = part_finish,
};
