#include "app/export-memory.h"
#include <gtk/gtk.h>

static const char memory_key[] = "export-memory";

static bool
paper_here_is_letter (void)
{
  return g_str_equal (gtk_paper_size_get_default (), GTK_PAPER_NAME_LETTER);
}

static ExportOptions
usual_options (TrammelSettings *settings)
{
  ExportOptions options = export_default_options ("");

  g_strlcpy (options.paper, paper_here_is_letter () ? "letter" : "a4", sizeof options.paper);
  options.units = trammel_settings_units (settings);
  return options;
}

ExportOptions
export_memory_read (TrammelSettings *settings)
{
  const ExportOptions *kept = g_object_get_data (G_OBJECT (settings), memory_key);
  ExportOptions options = kept != NULL ? *kept : usual_options (settings);
  const PrinterReading reading = trammel_settings_printer_reading (settings);

  options.read_short = reading.short_side;
  options.read_long = reading.long_side;
  return options;
}

void
export_memory_keep (TrammelSettings *settings, const ExportOptions *options)
{
  ExportOptions *kept = g_new (ExportOptions, 1);

  *kept = *options;
  g_object_set_data_full (G_OBJECT (settings), memory_key, kept, g_free);
  trammel_settings_set_printer_reading (settings, (PrinterReading) { options->read_short, options->read_long });
}
