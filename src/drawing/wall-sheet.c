#include "trammel-config.h"
#include "drawing/wall-sheet.h"
#include <glib/gi18n-lib.h>
#include "drawing/lettering-font.h"
#include "drawing/wall-sheet-frame.h"
#include "drawing/wall-sheet-layout.h"
#include "drawing/wall-sheet-title.h"

struct WallSheetLayout {
  WallSheet sheet;               /* figures held, date a copy */
  Look look;
  SheetBlocks blocks[2];         /* in text size, in small print */
  SheetArrangement arrangement;
};

void
wall_sheet_size (const WallSheet *sheet, double *width, double *height)
{
  *width = sheet->portrait ? sheet->paper->height : sheet->paper->width;
  *height = sheet->portrait ? sheet->paper->width : sheet->paper->height;
}

const char *
wall_sheet_title (const WallSheet *sheet)
{
  const char *name = aeroplane_traits (sheet->figures->aeroplane).name;

  return name != NULL && name[0] != '\0' ? name : _("Unnamed");
}

WallSheetLayout *
wall_sheet_layout_new (const WallSheet *sheet)
{
  WallSheetLayout *self = g_new0 (WallSheetLayout, 1);

  lettering_font_add ();
  self->sheet = *sheet;
  self->sheet.figures = figures_ref (sheet->figures);
  self->sheet.date = g_strdup (sheet->date);
  self->look = look_for_paper ();
  if (layout_arrange (&self->sheet, &self->look, self->blocks, &self->arrangement))
    return self;
  wall_sheet_layout_free (self);
  return NULL;
}

void
wall_sheet_layout_free (WallSheetLayout *self)
{
  if (self == NULL)
    return;
  plan_notes_clear (&self->arrangement.notes);
  sheet_blocks_clear (self->blocks);
  figures_unref ((Figures *) self->sheet.figures);
  g_free ((char *) self->sheet.date);
  g_free (self);
}

void
wall_sheet_layout_size (const WallSheetLayout *self, double *width, double *height)
{
  wall_sheet_size (&self->sheet, width, height);
}

double
wall_sheet_layout_scale (const WallSheetLayout *self)
{
  return self->arrangement.scale;
}

bool
wall_sheet_layout_has_section (const WallSheetLayout *self)
{
  return self->arrangement.blocks[BLOCK_SECTION].form < SECTION_FORM_MISSING;
}

void
wall_sheet_draw (const WallSheetLayout *self, cairo_t *cr)
{
  const SheetArrangement *arrangement = &self->arrangement;
  SheetPen pen;

  cairo_save (cr);
  cairo_new_path (cr);
  pen = pen_begin (cr, &self->sheet, &self->look);
  views_draw (&pen, arrangement);
  for (int kind = 0; kind < BLOCK_COUNT; kind++)
    if (arrangement->blocks[kind].form >= 0)
      sheet_block_draw (&pen, &self->blocks[arrangement->small], kind, arrangement->blocks[kind].form, arrangement->blocks[kind].box.min);
  wall_title_draw (&pen, arrangement->scale, wall_sheet_layout_has_section (self));
  wall_frame_draw (&pen);
  cairo_restore (cr);
}
