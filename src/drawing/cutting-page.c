#include "trammel-config.h"
#include "drawing/cutting-page.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <stdio.h>
#include "drawing/export-cutting.h"
#include "drawing/lettering-font.h"
#include "drawing/outline-path.h"
#include "drawing/template-word.h"

/* Of the longer side: a hairline would not be seen. */
static const double line_share = 1.0 / 1000;

typedef struct { Cutting *cutting; Look look; } Page;

static Colour
layer_colour (int layer)
{
  unsigned rgb = 0;

  sscanf (cutting_layer (layer)->rgb, "#%x", &rgb);
  return (Colour) { (rgb >> 16 & 255) / 255.0, (rgb >> 8 & 255) / 255.0, (rgb & 255) / 255.0, 1 };
}

static void
draw_lines (cairo_t *cr, const FlatPiece *piece, int layer)
{
  for (guint i = 0; i < piece->lines->len; i++)
    {
      const FlatLine *line = &g_array_index (piece->lines, FlatLine, i);

      if ((int) line->purpose != layer)
        continue;
      cairo_new_path (cr);
      outline_path_stretch (cr, line->start, line->segments, line->count);
      if (line->closed)
        cairo_close_path (cr);
      cairo_stroke (cr);
    }
}

static void
draw_words (const SheetPen *pen, const FlatPiece *piece, int layer)
{
  for (guint i = 0; i < piece->words->len; i++)
    if (cutting_word_layer (&g_array_index (piece->words, FlatWord, i)) == layer)
      template_word_draw (pen, &g_array_index (piece->words, FlatWord, i), false);
}

static void
draw_layer (cairo_t *cr, const Look *paper, const Cutting *cutting, int layer)
{
  Look look = *paper;

  look.graphite = layer_colour (layer);
  look_set_source (cr, look.graphite);
  const SheetPen pen = { .cr = cr, .look = &look, .lettering = lettering_begin (cr, &look), .figure_caps = caps_figure };
  for (guint i = 0; i < cutting->pieces->len; i++)
    {
      draw_lines (cr, cutting->pieces->pdata[i], layer);
      draw_words (&pen, cutting->pieces->pdata[i], layer);
    }
}

static size_t
page_count (const void *layout)
{
  return 1;
}

static void
page_size (const void *layout, size_t page, double *width, double *height)
{
  const Page *self = layout;

  *width = self->cutting->width;
  *height = self->cutting->height;
}

static void
page_draw (const void *layout, size_t page, cairo_t *cr)
{
  const Page *self = layout;

  cairo_save (cr);
  cairo_set_line_width (cr, fmax (self->cutting->width, self->cutting->height) * line_share);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  for (int i = 0; i < CUTTING_LAYER_COUNT; i++)
    draw_layer (cr, &self->look, self->cutting, cutting_layer_order (i));
  cairo_restore (cr);
}

static void
page_free (void *takes)
{
  Page *self = takes;

  cutting_free (self->cutting);
  g_free (self);
}

SheetPages *
cutting_page_of (Cutting *takes)
{
  static const SheetPagesKind kind = { .count = page_count, .size = page_size, .draw = page_draw, .free = page_free };
  Page *self = g_new (Page, 1);

  lettering_font_add ();
  *self = (Page) { .cutting = takes, .look = look_for_paper () };
  return sheet_pages_of (&kind, self, takes->title, _("Files for cutting"));
}

SheetPages *
cutting_page (const Figures *figures, const ExportOptions *options, GError **error)
{
  Cutting *cutting = export_cutting_sheet (figures, options, error);

  return cutting != NULL ? cutting_page_of (cutting) : NULL;
}
