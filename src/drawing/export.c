#include "trammel-config.h"
#include "drawing/export.h"
#include <glib/gi18n-lib.h>
#include <string.h>
#include "document/writer.h"
#include "drawing/export-cutting.h"
#include "drawing/export-sheet.h"
#include "drawing/paper.h"
#include "figures/report.h"

static const int least_dpi = 30, greatest_dpi = 1200;

G_DEFINE_QUARK (trammel-export-error, export_error)

static const char *const endings[] = {
  [EXPORT_PNG] = ".png", [EXPORT_PDF] = ".pdf", [EXPORT_SVG] = ".svg", [EXPORT_CSV] = ".csv", [EXPORT_JSON] = ".json",
  [EXPORT_DXF] = ".dxf" };

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

char *
export_path_with (const char *path, ExportFormat format)
{
  g_autofree char *name = g_path_get_basename (path);
  const char *ending = strrchr (name, '.');
  ExportFormat other;
  /* A name that is nothing but an ending is a name. */
  const size_t cut = ending != NULL && ending != name && export_format_of (name, &other) ? strlen (ending) : 0;

  return g_strdup_printf ("%.*s%s", (int) (strlen (path) - cut), path, endings[format]);
}

ExportOptions
export_default_options (const char *path)
{
  ExportOptions options = { .format = EXPORT_PNG, .units = { LENGTH_MM, MASS_G }, .paper = "a4", .dpi = 150,
                            .read_short = 100, .read_long = 100 };

  export_format_of (path, &options.format);
  options.sheet = options.format == EXPORT_DXF ? EXPORT_CUTTING : EXPORT_WALL_SHEET;
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
drawn_bytes (const SheetPages *pages, size_t page, const ExportOptions *options, GError **error)
{
  switch (options->format)
    {
    case EXPORT_PNG: return sheet_png (pages, page, options->dpi, error);
    case EXPORT_PDF: return sheet_pdf (pages, error);
    default:         return sheet_svg (pages, page, error);
    }
}

/* The pages, where the options make sense. */
static SheetPages *
pages_of (const Figures *figures, const ExportOptions *options, GError **error)
{
  if (options->format != EXPORT_PNG || (options->dpi >= least_dpi && options->dpi <= greatest_dpi))
    return sheet_pages_new (figures, options, error);
  g_set_error (error, EXPORT_ERROR, EXPORT_ERROR_FORMAT, _("A picture has %d to %d dots an inch, not %d."), least_dpi, greatest_dpi, options->dpi);
  return NULL;
}

static GBytes *
sheet_bytes (const Figures *figures, const ExportOptions *options, GError **error)
{
  g_autoptr (SheetPages) pages = pages_of (figures, options, error);

  return pages != NULL ? drawn_bytes (pages, MIN (options->page, sheet_pages_count (pages) - 1), options, error) : NULL;
}

static bool
format_is_drawn (ExportFormat format)
{
  return format == EXPORT_PNG || format == EXPORT_PDF || format == EXPORT_SVG || format == EXPORT_DXF;
}

static bool
is_for_cutting (const ExportOptions *options)
{
  return options->format == EXPORT_DXF || (options->sheet == EXPORT_CUTTING && format_is_drawn (options->format));
}

GBytes *
export_bytes (const Figures *figures, const ExportOptions *options, GError **error)
{
  if (is_for_cutting (options))
    return export_cutting (figures, options, error);
  switch (options->format)
    {
    case EXPORT_CSV:  return bytes_of_text (report_list_csv (figures, options->list));
    case EXPORT_JSON: return bytes_of_text (report_json (figures));
    case EXPORT_PNG: case EXPORT_PDF: case EXPORT_SVG: return sheet_bytes (figures, options, error);
    case EXPORT_DXF: break;
    }
  g_set_error_literal (error, EXPORT_ERROR, EXPORT_ERROR_FORMAT, _("What is exported is a PNG, PDF, SVG, DXF, CSV or JSON file."));
  return NULL;
}

/* Where page `page` of several goes: OUT.png becomes OUT-1.png and so on. */
static char *
page_path (const char *path, size_t page)
{
  const char *ending = strrchr (path, '.'), *slash = strrchr (path, G_DIR_SEPARATOR);
  const int stem = ending != NULL && (slash == NULL || slash < ending) ? (int) (ending - path) : (int) strlen (path);

  return g_strdup_printf ("%.*s-%zu%s", stem, path, page + 1, path + stem);
}

static void
add_if_there (GPtrArray *paths, char *takes)
{
  if (g_file_test (takes, G_FILE_TEST_EXISTS))
    g_ptr_array_add (paths, takes);
  else
    g_free (takes);
}

GPtrArray *
export_paths_in_the_way (const ExportOptions *options, const char *path, size_t pages)
{
  enum { MOST_PAGES = 200 };    /* of a sheet whose pages nobody has counted */
  GPtrArray *paths = g_ptr_array_new_with_free_func (g_free);
  const bool in_pages = (options->format == EXPORT_PNG || options->format == EXPORT_SVG) && !is_for_cutting (options);
  const size_t most = !in_pages ? 1 : pages > 0 ? pages : MOST_PAGES;

  if (!in_pages || pages <= 1)
    add_if_there (paths, g_strdup (path));
  for (size_t page = 0; most > 1 && page < most; page++)
    add_if_there (paths, page_path (path, page));
  return paths;
}

static void
file_free (gpointer data)
{
  ExportFile *file = data;

  g_free (file->path);
  g_bytes_unref (file->bytes);
  g_free (file);
}

/* Behind the others, unless there are no bytes. Both are taken. */
static bool
add_file (GPtrArray *files, char *path, GBytes *bytes)
{
  if (bytes == NULL)
    {
      g_free (path);
      return false;
    }
  ExportFile *file = g_new (ExportFile, 1);
  *file = (ExportFile) { path, bytes };
  g_ptr_array_add (files, file);
  return true;
}

static bool
add_pages (GPtrArray *files, const Figures *figures, const ExportOptions *options, const char *path, GError **error)
{
  g_autoptr (SheetPages) pages = pages_of (figures, options, error);
  const size_t count = pages == NULL ? 0 : options->format == EXPORT_PDF ? 1 : sheet_pages_count (pages);
  bool made = pages != NULL;

  for (size_t page = 0; made && page < count; page++)
    made = add_file (files, count > 1 ? page_path (path, page) : g_strdup (path), drawn_bytes (pages, page, options, error));
  return made;
}

GPtrArray *
export_files (const Figures *figures, const ExportOptions *options, const char *path, GError **error)
{
  g_autoptr (GPtrArray) files = g_ptr_array_new_with_free_func (file_free);
  const bool pages = format_is_drawn (options->format) && !is_for_cutting (options);
  const bool made = pages ? add_pages (files, figures, options, path, error)
                    : add_file (files, g_strdup (path), export_bytes (figures, options, error));

  return made ? g_steal_pointer (&files) : NULL;
}

GPtrArray *
export_files_in_the_way (const GPtrArray *files)
{
  GPtrArray *paths = g_ptr_array_new ();

  for (guint i = 0; i < files->len; i++)
    {
      const ExportFile *file = files->pdata[i];

      if (g_file_test (file->path, G_FILE_TEST_EXISTS))
        g_ptr_array_add (paths, file->path);
    }
  return paths;
}

bool
export_files_write (const GPtrArray *files, GError **error)
{
  for (guint i = 0; i < files->len; i++)
    {
      const ExportFile *file = files->pdata[i];
      size_t length;
      const void *data = g_bytes_get_data (file->bytes, &length);

      if (!writer_replace_file (file->path, data, length, false, error))
        return false;
    }
  return true;
}

bool
export_write (const Figures *figures, const ExportOptions *options, const char *path, GError **error)
{
  g_autoptr (GPtrArray) files = export_files (figures, options, path, error);

  return files != NULL && export_files_write (files, error);
}
