#include "app/tool.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

typedef struct { Tool tool; double x, y; } MoveSheetTool;

static void
move_sheet_grab (Tool *tool, const ToolEvent *from)
{
  MoveSheetTool *self = (MoveSheetTool *) tool;

  self->x = from->x;
  self->y = from->y;
}

static void
move_sheet_pull (Tool *tool, const ToolEvent *event)
{
  MoveSheetTool *self = (MoveSheetTool *) tool;
  const double dx = event->x - self->x, dy = event->y - self->y;

  self->x = event->x;
  self->y = event->y;
  if (dx != 0 || dy != 0)
    trammel_sheet_canvas_pan (tool->sheet, dx, dy);
}

const ToolKind tool_move_sheet = {
  .word = "move-sheet", .name = N_("Move Sheet"), .letter = N_("M"), .cursor = "grab", .group = 0, .size = sizeof (MoveSheetTool),
  .hint = N_("Drag the sheet. With any other tool, hold Space and drag."),
  .grab = move_sheet_grab, .pull = move_sheet_pull,
};
