#include "app/tool.h"

static const double catch_px = 12, finger_catch_px = 22;

const ToolKind *const *
tool_kinds (void)
{
  static const ToolKind *const kinds[] = {
    &tool_select, &tool_move_sheet, &tool_outline, &tool_hinge, &tool_part, &tool_rail, &tool_lead, &tool_former, &tool_mark, &tool_dimension,
    &tool_plan, NULL,
  };

  return kinds;
}

const ToolKind *
tool_kind_find (const char *word)
{
  for (const ToolKind *const *kind = tool_kinds (); *kind != NULL; kind++)
    if (g_strcmp0 ((*kind)->word, word) == 0)
      return *kind;
  return NULL;
}

bool
tool_kind_is_useful (const ToolKind *kind, const Aeroplane *aeroplane)
{
  return kind->is_useful == NULL || kind->is_useful (aeroplane);
}

Tool *
tool_new (const char *word, TrammelSheetCanvas *sheet)
{
  const ToolKind *kind = tool_kind_find (word);
  Tool *self;

  if (kind == NULL)
    kind = &tool_select;
  self = g_malloc0 (kind->size);
  self->kind = kind;
  self->sheet = sheet;
  return self;
}

void
tool_free (Tool *self)
{
  if (self == NULL)
    return;
  if (self->kind->finish != NULL)
    self->kind->finish (self);
  g_free (self);
}

static double
tool_catch (const ToolEvent *event)
{
  return event->finger ? finger_catch_px : catch_px;
}

Hit
tool_hit (const Tool *self, const ToolEvent *event)
{
  const SheetScene scene = trammel_sheet_canvas_scene (self->sheet);

  return sheet_hit (&scene, event->x, event->y, tool_catch (event));
}

Hit
tool_hit_beneath (const Tool *self, const ToolEvent *event, const Hit *above)
{
  const SheetScene scene = trammel_sheet_canvas_scene (self->sheet);

  return sheet_hit_beneath (&scene, event->x, event->y, tool_catch (event), above);
}
