#include "trammel-config.h"
#include "app/export-place.h"
#include <glib/gi18n-lib.h>
#include <string.h>
#include "app/export-page.h"
#include "app/export-sheets.h"

/* One count under way. */
typedef struct {
  Figures *figures;
  ExportOptions options;
  char *path;
  FilesTold told;
  gpointer asked;
} Look;

static void
look_free (gpointer data)
{
  Look *look = data;

  figures_unref (look->figures);
  g_free (look->path);
  g_free (look);
}

static void
count_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  const Look *look = data;
  g_autoptr (ExportPage) page = export_page_new (look->figures, &look->options, NULL);

  g_task_return_int (task, page != NULL ? (gssize) page->count : 0);
}

/* What cannot be laid out is not written either, and whoever writes it says why. */
static void
counted (GObject *source, GAsyncResult *result, gpointer data)
{
  const Look *look = g_task_get_task_data (G_TASK (result));
  const gssize pages = g_task_propagate_int (G_TASK (result), NULL);

  look->told (pages > 0 ? export_paths_in_the_way (&look->options, look->path, (size_t) pages) : g_ptr_array_new_with_free_func (g_free), look->asked);
}

/* Each a file of its own. */
static bool
is_in_pages (const ExportOptions *options)
{
  return options->sheet != EXPORT_CUTTING && (options->format == EXPORT_PNG || options->format == EXPORT_SVG);
}

void
export_place_look (const Figures *figures, const ExportOptions *options, const char *path, size_t pages, FilesTold told, gpointer asked)
{
  g_autoptr (GTask) task = NULL;
  Look *look;

  if (options->sheet == EXPORT_WALL_SHEET)
    pages = 1;
  if (pages > 0 || !is_in_pages (options)) {
    told (export_paths_in_the_way (options, path, pages), asked);
    return;
  }
  look = g_new (Look, 1);
  *look = (Look) { figures_ref (figures), *options, g_strdup (path), told, asked };
  task = g_task_new (NULL, NULL, counted, NULL);
  g_task_set_task_data (task, look, look_free);
  g_task_run_in_thread (task, count_in_thread);
}

char *
export_place_exchanged (const ExportOptions *options, const char *typed)
{
  g_autofree char *meant = export_sheet_path (options, typed), *name = g_path_get_basename (typed), *new_name = g_path_get_basename (meant);
  ExportFormat format;

  if (g_str_equal (meant, typed) || g_str_has_prefix (meant, typed) || !export_format_of (typed, &format))
    return NULL;
  /* Translators: "cut.svg", "cut.png", and the ending ".png" */
  return g_strdup_printf (_("The export is called “%1$s”, not “%2$s”: that sheet has no %3$s files."), new_name, name, strrchr (name, '.'));
}
