#include "app/tool.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

typedef struct { Tool tool; bool begun, done; Point from; } DimensionTool;

static Point
dimension_aim (DimensionTool *self, const ToolEvent *event)
{
  const Point place = trammel_sheet_canvas_snapped (self->tool.sheet, event->place, NULL, SNAP_WHOLE, event->loose);

  if (!self->begun || !event->shift)
    return place;
  if (fabs (place.x - self->from.x) >= fabs (place.y - self->from.y))
    return (Point) { place.x, self->from.y };
  return (Point) { self->from.x, place.y };
}

static void
dimension_say (DimensionTool *self, Point to)
{
  const Units units = trammel_session_units (trammel_sheet_canvas_session (self->tool.sheet));
  g_autofree char *distance = units_length (units, point_distance (self->from, to));
  g_autofree char *along = units_length (units, fabs (to.x - self->from.x)), *across = units_length (units, fabs (to.y - self->from.y));
  /* Translators: three lengths with their units: "Distance 123 mm, 45 mm along and 110 mm across." */
  g_autofree char *hint = g_strdup_printf (_("Distance %s, %s along and %s across."), distance, along, across);

  trammel_sheet_canvas_set_hint (self->tool.sheet, hint);
}

static void
dimension_show (DimensionTool *self, Point to)
{
  SheetOverlay *overlay = trammel_sheet_canvas_overlay (self->tool.sheet);

  overlay->has_dimension = true;
  overlay->dimension_from_x = self->from.x;
  overlay->dimension_from_y = self->from.y;
  overlay->dimension_to_x = to.x;
  overlay->dimension_to_y = to.y;
  trammel_sheet_canvas_refresh (self->tool.sheet);
  dimension_say (self, to);
}

static void
dimension_begin (DimensionTool *self, const ToolEvent *event)
{
  self->begun = self->done = false;
  self->from = dimension_aim (self, event);
  self->begun = true;
  dimension_show (self, self->from);
}

static void
dimension_end (DimensionTool *self, const ToolEvent *event)
{
  dimension_show (self, dimension_aim (self, event));
  self->done = true;
  trammel_sheet_canvas_clear_guides (self->tool.sheet);
}

static void
dimension_click (Tool *tool, const ToolEvent *event)
{
  DimensionTool *self = (DimensionTool *) tool;

  if (self->begun && !self->done)
    dimension_end (self, event);
  else
    dimension_begin (self, event);
}

static void
dimension_grab (Tool *tool, const ToolEvent *from)
{
  DimensionTool *self = (DimensionTool *) tool;

  /* Press, drag, release measures in one; after a first click it is the second point that is dragged. */
  if (!self->begun || self->done)
    dimension_begin (self, from);
}

static void
dimension_hover (Tool *tool, const ToolEvent *event)
{
  DimensionTool *self = (DimensionTool *) tool;

  if (self->begun && !self->done)
    dimension_show (self, dimension_aim (self, event));
  else
    dimension_aim (self, event);
}

static void
dimension_drop (Tool *tool, const ToolEvent *event)
{
  dimension_end ((DimensionTool *) tool, event);
}

static void
dimension_leave (Tool *tool)
{
  trammel_sheet_canvas_clear_guides (tool->sheet);
}

static bool
dimension_cancel (Tool *tool)
{
  DimensionTool *self = (DimensionTool *) tool;
  const bool shown = self->begun;

  self->begun = self->done = false;
  trammel_sheet_canvas_overlay (tool->sheet)->has_dimension = false;
  trammel_sheet_canvas_set_hint (tool->sheet, NULL);
  trammel_sheet_canvas_clear_guides (tool->sheet);
  return shown;
}

static bool
dimension_take_back (Tool *tool)
{
  DimensionTool *self = (DimensionTool *) tool;

  return self->begun && !self->done && dimension_cancel (tool);
}

const ToolKind tool_dimension = {
  .word = "dimension", .name = N_("Dimension"), .letter = N_("D"), .cursor = "crosshair", .group = 3, .draws = true, .size = sizeof (DimensionTool),
  .hint = N_("Click two points to measure between them. Shift measures straight along or across."),
  .click = dimension_click, .grab = dimension_grab, .pull = dimension_hover, .drop = dimension_drop, .hover = dimension_hover,
  .leave = dimension_leave, .take_back = dimension_take_back, .cancel = dimension_cancel,
};
