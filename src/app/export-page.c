#include "trammel-config.h"
#include "app/export-page.h"
#include <glib/gi18n-lib.h>
#include "app/export-sheets.h"
#include "drawing/cutting-page.h"
#include "drawing/cutting-size.h"
#include "drawing/export-cutting.h"
#include "drawing/sheet-pages.h"

/* The longer side, about twice what is seen: shrinking smooths the thin lines. */
static const double longest_px = 1400;

static cairo_surface_t *
page_surface (const SheetPages *pages, size_t page)
{
  double width, height, px_per_mm;
  cairo_surface_t *surface;
  cairo_t *cr;

  sheet_pages_size (pages, page, &width, &height);
  px_per_mm = longest_px / MAX (width, height);
  surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, MAX ((int) (width * px_per_mm + 0.5), 1), MAX ((int) (height * px_per_mm + 0.5), 1));
  cr = cairo_create (surface);
  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_paint (cr);
  cairo_scale (cr, px_per_mm, px_per_mm);
  sheet_pages_draw (pages, page, cr);
  cairo_destroy (cr);
  cairo_surface_flush (surface);
  return surface;
}

static GdkTexture *
page_texture (const SheetPages *pages, size_t page)
{
  cairo_surface_t *surface = page_surface (pages, page);
  const int width = cairo_image_surface_get_width (surface), height = cairo_image_surface_get_height (surface);
  const size_t stride = cairo_image_surface_get_stride (surface);
  const guchar *data = cairo_image_surface_get_data (surface);
  GdkTexture *texture = NULL;

  if (data != NULL && cairo_surface_status (surface) == CAIRO_STATUS_SUCCESS) {
    g_autoptr (GBytes) bytes = g_bytes_new (data, stride * height);
    texture = gdk_memory_texture_new (width, height, GDK_MEMORY_DEFAULT, bytes, stride);
  }
  cairo_surface_destroy (surface);
  return texture;
}

/* The page that is asked for, and what else is told of it. */
static ExportPage *
page_of (const SheetPages *pages, const ExportOptions *options, GError **error)
{
  ExportPage *self = g_new0 (ExportPage, 1);

  self->count = sheet_pages_count (pages);
  self->page = MIN (options->page, self->count - 1);
  self->picture = page_texture (pages, self->page);
  self->subject = g_strdup (sheet_pages_subject (pages));
  if (self->picture != NULL)
    return self;
  g_set_error_literal (error, EXPORT_ERROR, EXPORT_ERROR_DRAWING, _("There is no memory to draw the page in; close something and look again."));
  export_page_free (self);
  return NULL;
}

static ExportPage *
cut_page (const Figures *figures, const ExportOptions *options, GError **error)
{
  Cutting *cutting = export_cutting_sheet (figures, options, error);
  g_autoptr (SheetPages) pages = NULL;
  g_autofree char *size = NULL;
  ExportPage *self;
  unsigned layers;

  if (cutting == NULL)
    return NULL;
  size = cutting_size_text (cutting, options->units);
  layers = cutting_layers_used (cutting);
  pages = cutting_page_of (cutting);
  self = page_of (pages, options, error);
  if (self != NULL) {
    self->size = g_steal_pointer (&size);
    self->layers = layers;
  }
  return self;
}

ExportPage *
export_page_among (SheetPages *takes, const ExportOptions *options, GError **error)
{
  ExportPage *self = page_of (takes, options, error);

  if (self != NULL)
    self->pages = takes;
  else
    sheet_pages_free (takes);
  return self;
}

static ExportPage *
drawn_page (const Figures *figures, const ExportOptions *options, GError **error)
{
  SheetPages *pages;

  if (options->sheet == EXPORT_CUTTING)
    return cut_page (figures, options, error);
  pages = sheet_pages_new (figures, options, error);
  return pages != NULL ? export_page_among (pages, options, error) : NULL;
}

ExportPage *
export_page_new (const Figures *figures, const ExportOptions *options, GError **error)
{
  ExportPage *self;
  GBytes *text;

  if (export_is_drawn (options))
    return drawn_page (figures, options, error);
  text = export_bytes (figures, options, error);
  if (text == NULL)
    return NULL;
  self = g_new0 (ExportPage, 1);
  self->text = text;
  self->count = 1;
  return self;
}

void
export_page_free (ExportPage *self)
{
  if (self == NULL)
    return;
  g_clear_object (&self->picture);
  g_clear_pointer (&self->text, g_bytes_unref);
  g_free (self->subject);
  g_free (self->size);
  sheet_pages_free (self->pages);
  g_free (self);
}
