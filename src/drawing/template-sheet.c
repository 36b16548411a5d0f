#include "trammel-config.h"
#include "drawing/template-sheet.h"
#include <glib/gi18n-lib.h>
#include "drawing/lettering-font.h"
#include "drawing/template-one-page.h"
#include "drawing/template-paper.h"
#include "drawing/template-tile-page.h"

struct TemplateLayout {
  TemplateSheet sheet;           /* pieces held, words copies */
  TemplateNotes notes;
  TemplatePaper paper;           /* of tiles */
  TemplatePlaces places;
  Look look;
  GArray *pages;                 /* size_t: which tile each is; none on one page */
};

static SheetPen
pen_of (cairo_t *cr, const TemplateLayout *self)
{
  return (SheetPen) { .cr = cr, .look = &self->look, .lettering = lettering_begin (cr, &self->look), .figure_caps = caps_figure };
}

static bool
is_possible (const TemplateSheet *sheet, GError **error)
{
  TemplatePaper paper;

  if (sheet->pieces->len == 0)
    g_set_error_literal (error, EXPORT_ERROR, EXPORT_ERROR_DRAWING, _("There is nothing to cut out yet: draw a wing first."));
  else if (!sheet->one_page && !template_paper_divide (sheet, &paper))
    g_set_error (error, EXPORT_ERROR, EXPORT_ERROR_PAPER,
                 _("%s paper leaves no room for the template beside its margins and control lines; take a larger one."), _(sheet->paper->title));
  else
    return true;
  return false;
}

static void
place_all (TemplateLayout *self)
{
  const SheetPen pen = pen_of (NULL, self);
  const bool tiled = !self->sheet.one_page;

  self->places = template_place (&pen, self->sheet.pieces, &self->notes, tiled ? &self->paper.step : NULL);
  for (size_t i = 0; tiled && i < self->places.tiles.columns * self->places.tiles.rows; i++)
    if (self->places.tiles.drawn[i])
      g_array_append_val (self->pages, i);
  if (!tiled)
    {
      const Point size = template_one_page_size (&self->sheet, &self->places);
      self->sheet.portrait = size.y > size.x;
    }
}

TemplateLayout *
template_layout_new (const TemplateSheet *sheet, GError **error)
{
  if (!is_possible (sheet, error))
    return NULL;
  TemplateLayout *self = g_new0 (TemplateLayout, 1);
  lettering_font_add ();
  self->sheet = *sheet;
  self->sheet.pieces = g_ptr_array_ref ((GPtrArray *) sheet->pieces);
  self->sheet.title = g_strdup (sheet->title);
  self->sheet.date = g_strdup (sheet->date);
  self->notes = template_notes_of (&self->sheet);
  self->look = look_for_paper ();
  self->pages = g_array_new (FALSE, FALSE, sizeof (size_t));
  if (!sheet->one_page)
    template_paper_divide (sheet, &self->paper);
  place_all (self);
  return self;
}

void
template_layout_free (TemplateLayout *self)
{
  if (self == NULL)
    return;
  template_places_clear (&self->places);
  g_array_unref (self->pages);
  g_ptr_array_unref ((GPtrArray *) self->sheet.pieces);
  g_free ((char *) self->sheet.title);
  g_free ((char *) self->sheet.date);
  g_free (self);
}

size_t
template_layout_count (const TemplateLayout *self)
{
  return self->sheet.one_page ? 1 : self->pages->len;
}

void
template_layout_size (const TemplateLayout *self, size_t page, double *width, double *height)
{
  const Paper *paper = self->sheet.paper;
  const Point correction = template_correction (&self->sheet);
  const Point size = self->sheet.one_page ? template_one_page_size (&self->sheet, &self->places) : (Point) { 0, 0 };

  *width = self->sheet.one_page ? size.x * correction.x : self->sheet.portrait ? paper->height : paper->width;
  *height = self->sheet.one_page ? size.y * correction.y : self->sheet.portrait ? paper->width : paper->height;
}

/* Arcs are drawn as curves; finer ones than cairo takes by itself, lest their error could be measured. */
void
template_layout_draw (const TemplateLayout *self, size_t page, cairo_t *cr)
{
  const Point correction = template_correction (&self->sheet);
  const double fineness = 0.01;
  const TemplateTilePage tile = { &self->sheet, &self->paper, &self->places, &self->notes };

  cairo_save (cr);
  cairo_new_path (cr);
  cairo_set_tolerance (cr, fineness);
  cairo_scale (cr, correction.x, correction.y);
  const SheetPen pen = pen_of (cr, self);
  if (self->sheet.one_page)
    template_one_page_draw (&pen, &self->sheet, &self->places, &self->notes);
  else
    template_tile_page_draw (&pen, &tile, g_array_index (self->pages, size_t, page), page, self->pages->len);
  cairo_restore (cr);
}

static size_t
pages_count (const void *layout)
{
  return template_layout_count (layout);
}

static void
pages_size (const void *layout, size_t page, double *width, double *height)
{
  template_layout_size (layout, page, width, height);
}

static void
pages_draw (const void *layout, size_t page, cairo_t *cr)
{
  template_layout_draw (layout, page, cr);
}

static void
pages_free (void *takes)
{
  template_layout_free (takes);
}

const SheetPagesKind *
template_pages_kind (void)
{
  static const SheetPagesKind kind = { .count = pages_count, .size = pages_size, .draw = pages_draw, .free = pages_free };

  return &kind;
}
