#include "app/export-memory.h"
#include <gtk/gtk.h>
#include "app/export-sheets.h"

/* As a sheet was left. */
typedef struct { bool chosen; ExportOptions options; } Left;

typedef struct {
  ExportOptions options;
  Left left[EXPORT_SHEET_COUNT];
  char *folder;                 /* NULL: nothing was written yet */
} Memory;

static void
memory_free (gpointer data)
{
  Memory *memory = data;

  g_free (memory->folder);
  g_free (memory);
}

static bool
paper_here_is_letter (void)
{
  return g_str_equal (gtk_paper_size_get_default (), GTK_PAPER_NAME_LETTER);
}

static Memory *
memory_new (TrammelSettings *settings)
{
  Memory *memory = g_new0 (Memory, 1);

  memory->options = export_default_options ("");
  g_strlcpy (memory->options.paper, paper_here_is_letter () ? "letter" : "a4", sizeof memory->options.paper);
  memory->options.units = trammel_settings_units (settings);
  return memory;
}

/* NULL before anything was chosen or written: units that are changed until then are followed. */
static Memory *
memory_of (TrammelSettings *settings)
{
  return g_object_get_data (G_OBJECT (settings), "export-memory");
}

static Memory *
memory_need (TrammelSettings *settings)
{
  Memory *memory = memory_of (settings);

  if (memory == NULL) {
    memory = memory_new (settings);
    g_object_set_data_full (G_OBJECT (settings), "export-memory", memory, memory_free);
  }
  return memory;
}

ExportOptions
export_memory_read (TrammelSettings *settings)
{
  const PrinterReading reading = trammel_settings_printer_reading (settings);
  const Memory *kept = memory_of (settings);
  Memory *usual = kept == NULL ? memory_new (settings) : NULL;
  ExportOptions options = kept != NULL ? kept->options : usual->options;

  g_clear_pointer (&usual, memory_free);
  options.read_short = reading.short_side;
  options.read_long = reading.long_side;
  return options;
}

void
export_memory_keep (TrammelSettings *settings, const ExportOptions *options)
{
  Memory *memory = memory_need (settings);

  memory->options = *options;
  memory->left[options->sheet] = (Left) { true, *options };
  trammel_settings_set_printer_reading (settings, (PrinterReading) { options->read_short, options->read_long });
}

void
export_memory_recall (TrammelSettings *settings, ExportOptions *options)
{
  const Memory *kept = memory_of (settings);
  const Left *left = kept != NULL && kept->left[options->sheet].chosen ? &kept->left[options->sheet] : NULL;

  options->format = left != NULL ? left->options.format : export_sheet_format (options->sheet, 0)->format;
  if (left == NULL)
    return;
  g_strlcpy (options->paper, left->options.paper, sizeof options->paper);
  options->portrait = left->options.portrait;
}

char *
export_memory_folder (TrammelSettings *settings)
{
  const Memory *kept = memory_of (settings);

  return kept != NULL && kept->folder != NULL && g_file_test (kept->folder, G_FILE_TEST_IS_DIR) ? g_strdup (kept->folder) : NULL;
}

void
export_memory_keep_folder (TrammelSettings *settings, const char *path)
{
  Memory *memory = memory_need (settings);

  g_free (memory->folder);
  memory->folder = g_path_get_dirname (path);
}
