#include "trammel-config.h"
#include "drawing/export.h"
#include <glib/gi18n-lib.h>
#include <string.h>
#include "document/writer.h"
#include "drawing/export-sheet.h"
#include "figures/report.h"

static const int least_dpi = 30, greatest_dpi = 1200;

G_DEFINE_QUARK (trammel-export-error, export_error)

static const char *const endings[] = {
  [EXPORT_PNG] = ".png", [EXPORT_PDF] = ".pdf", [EXPORT_SVG] = ".svg", [EXPORT_CSV] = ".csv", [EXPORT_JSON] = ".json" };

bool
export_format_of (const char *path, ExportFormat *format)
{
  const char *ending = strrchr (path, '.');

  for (size_t i = 0; ending != NULL && i < G_N_ELEMENTS (endings); i++)
    if (g_ascii_strcasecmp (ending, endings[i]) == 0)
      {
        *format = i;
        return true;
      }
  return false;
}

ExportOptions
export_default_options (const char *path)
{
  ExportOptions options = { .format = EXPORT_PNG, .units = { LENGTH_MM, MASS_G }, .paper = "a4", .dpi = 150 };

  export_format_of (path, &options.format);
  return options;
}

bool
export_paper_size (const char *name, double *width_mm, double *height_mm)
{
  const Paper *paper = paper_find (name);

  if (paper == NULL)
    return false;
  *width_mm = paper->width;
  *height_mm = paper->height;
  return true;
}

static GBytes *
bytes_of_text (char *takes)
{
  return g_bytes_new_take (takes, strlen (takes));
}

static GBytes *
drawn_bytes (const WallSheetLayout *layout, const WallSheet *sheet, const ExportOptions *options, GError **error)
{
  switch (options->format)
    {
    case EXPORT_PNG: return sheet_png (layout, sheet, options->dpi, error);
    case EXPORT_PDF: return sheet_pdf (layout, sheet, error);
    default:         return sheet_svg (layout, sheet, error);
    }
}

static GBytes *
sheet_bytes (const Figures *figures, const ExportOptions *options, GError **error)
{
  const WallSheet sheet = {
    .figures = figures, .units = options->units, .paper = paper_find (options->paper), .portrait = options->portrait, .date = options->date };
  WallSheetLayout *layout;
  GBytes *bytes = NULL;

  if (sheet.paper == NULL)
    {
      g_autofree char *known = paper_words (", ");

      /* Translators: behind the colon a list of words that stay as they are, "a4, a3, letter" */
      g_set_error (error, EXPORT_ERROR, EXPORT_ERROR_PAPER, _("No paper is called “%s”. Known are: %s."), options->paper, known);
      return NULL;
    }
  if (options->format == EXPORT_PNG && (options->dpi < least_dpi || options->dpi > greatest_dpi))
    {
      g_set_error (error, EXPORT_ERROR, EXPORT_ERROR_FORMAT, _("A picture has %d to %d dots an inch, not %d."), least_dpi, greatest_dpi, options->dpi);
      return NULL;
    }
  layout = wall_sheet_layout_new (&sheet);
  if (layout != NULL)
    bytes = drawn_bytes (layout, &sheet, options, error);
  else
    g_set_error (error, EXPORT_ERROR, EXPORT_ERROR_DRAWING, _("The wall sheet has no room on %s paper; take a larger one."), sheet.paper->title);
  wall_sheet_layout_free (layout);
  return bytes;
}

GBytes *
export_bytes (const Figures *figures, const ExportOptions *options, GError **error)
{
  switch (options->format)
    {
    case EXPORT_CSV:  return bytes_of_text (report_list_csv (figures, options->list));
    case EXPORT_JSON: return bytes_of_text (report_json (figures));
    case EXPORT_PNG: case EXPORT_PDF: case EXPORT_SVG: return sheet_bytes (figures, options, error);
    }
  g_set_error_literal (error, EXPORT_ERROR, EXPORT_ERROR_FORMAT, _("What is exported is a PNG, PDF, SVG, CSV or JSON file."));
  return NULL;
}

bool
export_write (const Figures *figures, const ExportOptions *options, const char *path, GError **error)
{
  g_autoptr (GBytes) bytes = export_bytes (figures, options, error);
  size_t length;
  const void *data = bytes != NULL ? g_bytes_get_data (bytes, &length) : NULL;

  return bytes != NULL && writer_replace_file (path, data, length, false, error);
}
