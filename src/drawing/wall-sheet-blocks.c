#include "drawing/wall-sheet-blocks.h"
#include <math.h>
#include "drawing/wall-sheet-figures.h"
#include "drawing/wall-sheet-notes.h"
#include "drawing/wall-sheet-section.h"

static const double note_widths[BLOCK_FORMS] = { 92, 120, 76, 155 };
static const double missing_widths[BLOCK_FORMS] = { [SECTION_FORM_MISSING] = 80, 60, 110 };
static const struct { unsigned side_by_side, most; } part_forms[BLOCK_FORMS] = {
  { 1, G_MAXUINT }, { 2, G_MAXUINT }, { 3, G_MAXUINT }, [PARTS_FORM_SHORT] = { 2, 36 }, { 1, 12 }, { 1, 5 } };

static void
draw_parts (const SheetPen *pen, const SheetBlocks *self, int form, Point at)
{
  part_table_draw (pen, &self->parts, at, (PartTableStyle) { self->caps, part_forms[form].side_by_side, part_forms[form].most });
}

static void
draw_section (const SheetPen *pen, int form, Point at)
{
  if (form >= SECTION_FORM_MISSING)
    section_draw_missing (pen, at, missing_widths[form]);
  else
    section_draw (pen, at, form == SECTION_FORM_WHOLE ? SECTION_WHOLE : SECTION_BROKEN);
}

void
sheet_block_draw (const SheetPen *pen, const SheetBlocks *self, BlockKind kind, int form, Point at)
{
  switch (kind)
    {
    case BLOCK_SECTION:       draw_section (pen, form, at); break;
    case BLOCK_PARTS:         draw_parts (pen, self, form, at); break;
    case BLOCK_CONTROL_LINES: control_lines_draw (pen, at, form); break;
    case BLOCK_NOTES:         wall_notes_draw (pen, self->notes, at, note_widths[form]); break;
    case BLOCK_FIGURES:       figure_table_draw (pen, at, self->caps); break;
    case BLOCK_COUNT:         break;
    }
}

static bool
form_exists (const SheetBlocks *self, const WallSheet *sheet, BlockKind kind, int form)
{
  const bool has_section = section_mark (sheet) != NULL;

  switch (kind)
    {
    case BLOCK_SECTION:
      return form == SECTION_FORM_WHOLE ? has_section : form == SECTION_FORM_BROKEN ? has_section && section_can_break (sheet) : missing_widths[form] > 0;
    case BLOCK_PARTS:
      return self->parts.count > 0 && (form == 0 || (form < PARTS_FORM_SHORT ? self->parts.count >= 6u * form : self->parts.count > part_forms[form].most));
    case BLOCK_CONTROL_LINES:
      return form <= CONTROL_LINES_ALONG;
    case BLOCK_FIGURES:
      return form == 0;
    case BLOCK_NOTES:
      return note_widths[form] > 0;
    case BLOCK_COUNT:
      break;
    }
  return false;
}

/* As large as what it draws, from its own corner on. */
static Point
form_size (const SheetBlocks *self, const WallSheet *sheet, const Look *look, BlockKind kind, int form)
{
  cairo_surface_t *record = cairo_recording_surface_create (CAIRO_CONTENT_COLOR_ALPHA, NULL);
  cairo_t *cr = cairo_create (record);
  SheetPen pen = pen_begin (cr, sheet, look);
  double x, y, width, height;

  sheet_block_draw (&pen, self, kind, form, (Point) { 0, 0 });
  cairo_destroy (cr);
  cairo_recording_surface_ink_extents (record, &x, &y, &width, &height);
  cairo_surface_destroy (record);
  return (Point) { x + width, y + height };
}

static bool
is_table (BlockKind kind)
{
  return kind == BLOCK_PARTS || kind == BLOCK_FIGURES;
}

void
sheet_blocks_init (SheetBlocks both[2], const WallSheet *sheet, const Look *look, bool trays)
{
  for (int small = 0; small < 2; small++)
    {
      both[small] = (SheetBlocks) { .parts = part_list_of (sheet->figures), .notes = wall_notes_of (sheet), .caps = small ? caps_small : caps_text };
      both[small].parts.has_stands &= trays;
      both[small].parts.has_wings &= trays;
    }
  for (int kind = 0; kind < BLOCK_COUNT; kind++)
    for (int form = 0; form < BLOCK_FORMS; form++)
      if (form_exists (&both[0], sheet, kind, form))
        {
          both[0].size[kind][form] = form_size (&both[0], sheet, look, kind, form);
          both[1].size[kind][form] = is_table (kind) ? form_size (&both[1], sheet, look, kind, form) : both[0].size[kind][form];
        }
}

void
sheet_blocks_clear (SheetBlocks both[2])
{
  for (int small = 0; small < 2; small++)
    {
      part_list_clear (&both[small].parts);
      g_clear_pointer (&both[small].notes, g_strfreev);
    }
}
