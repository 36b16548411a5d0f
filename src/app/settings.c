#include "app/settings.h"
#include <langinfo.h>

struct _TrammelSettings {
  GObject parent;
  GKeyFile *file;
  char *path;
};

G_DEFINE_FINAL_TYPE (TrammelSettings, trammel_settings, G_TYPE_OBJECT)

static guint changed_signal;

static const struct { const char *group, *key; gboolean initially; } flags[SETTINGS_FLAG_COUNT] = {
  [SHOW_GRID]      = { "view", "grid",      TRUE },
  [SHOW_NAMES]     = { "view", "names",     TRUE },
  [SHOW_FIGURES]   = { "view", "figures",   TRUE },
  [SHOW_SIDE_VIEW] = { "view", "side-view", TRUE },
  [SHOW_PANEL]     = { "view", "panel",     TRUE },
  [SNAPPING]       = { "drawing", "snapping", TRUE },
  [ENLARGED_VIEW]  = { "drawing", "enlarged-view", TRUE },
  [CAUTIONS_READ]  = { "first-run", "cautions-read", FALSE },
};

static void
trammel_settings_finalize (GObject *object)
{
  TrammelSettings *self = TRAMMEL_SETTINGS (object);

  g_key_file_free (self->file);
  g_free (self->path);
  G_OBJECT_CLASS (trammel_settings_parent_class)->finalize (object);
}

static void
trammel_settings_class_init (TrammelSettingsClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = trammel_settings_finalize;
  changed_signal = g_signal_new ("changed", TRAMMEL_TYPE_SETTINGS, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
trammel_settings_init (TrammelSettings *self)
{
  self->file = g_key_file_new ();
  self->path = g_build_filename (g_get_user_config_dir (), "trammel", "settings.ini", NULL);
  /* A missing or damaged file means the usual choices. */
  g_key_file_load_from_file (self->file, self->path, G_KEY_FILE_KEEP_COMMENTS, NULL);
}

TrammelSettings *
trammel_settings_new (void)
{
  return g_object_new (TRAMMEL_TYPE_SETTINGS, NULL);
}

static void
settings_write (TrammelSettings *self)
{
  g_autofree char *folder = g_path_get_dirname (self->path);

  /* A choice that cannot be kept still holds for this sitting. */
  if (g_mkdir_with_parents (folder, 0700) == 0)
    g_key_file_save_to_file (self->file, self->path, NULL);
}

static void
settings_keep (TrammelSettings *self)
{
  settings_write (self);
  g_signal_emit (self, changed_signal, 0);
}

static bool
settings_locale_measures_in_inches (void)
{
  /* LC_MEASUREMENT: 2 is the customary system of the United States. */
  return nl_langinfo (_NL_MEASUREMENT_MEASUREMENT)[0] == 2;
}

Units
trammel_settings_units (TrammelSettings *self)
{
  const bool inches = settings_locale_measures_in_inches ();
  g_autofree char *length = g_key_file_get_string (self->file, "units", "length", NULL);
  g_autofree char *mass = g_key_file_get_string (self->file, "units", "mass", NULL);

  return (Units) {
    .length = length == NULL ? (inches ? LENGTH_INCH : LENGTH_MM) : g_str_equal (length, "inch") ? LENGTH_INCH : LENGTH_MM,
    .mass = mass == NULL ? (inches ? MASS_OZ : MASS_G) : g_str_equal (mass, "oz") ? MASS_OZ : MASS_G,
  };
}

void
trammel_settings_set_units (TrammelSettings *self, Units units)
{
  g_key_file_set_string (self->file, "units", "length", units.length == LENGTH_INCH ? "inch" : "mm");
  g_key_file_set_string (self->file, "units", "mass", units.mass == MASS_OZ ? "oz" : "g");
  settings_keep (self);
}

bool
trammel_settings_flag (TrammelSettings *self, SettingsFlag flag)
{
  g_autoptr (GError) missing = NULL;
  const gboolean on = g_key_file_get_boolean (self->file, flags[flag].group, flags[flag].key, &missing);

  return missing != NULL ? flags[flag].initially : on;
}

void
trammel_settings_set_flag (TrammelSettings *self, SettingsFlag flag, bool on)
{
  if (trammel_settings_flag (self, flag) == on)
    return;
  g_key_file_set_boolean (self->file, flags[flag].group, flags[flag].key, on);
  settings_keep (self);
}

static double
settings_reading (TrammelSettings *self, const char *key)
{
  const double mm = g_key_file_get_double (self->file, "printer", key, NULL);

  /* 0 where there is none; no printer is further off than a tenth. */
  return mm >= 90 && mm <= 110 ? mm : 100;
}

PrinterReading
trammel_settings_printer_reading (TrammelSettings *self)
{
  return (PrinterReading) { .short_side = settings_reading (self, "100-mm-short-side"), .long_side = settings_reading (self, "100-mm-long-side") };
}

void
trammel_settings_set_printer_reading (TrammelSettings *self, PrinterReading reading)
{
  const PrinterReading before = trammel_settings_printer_reading (self);

  if (before.short_side == reading.short_side && before.long_side == reading.long_side)
    return;
  g_key_file_set_double (self->file, "printer", "100-mm-short-side", reading.short_side);
  g_key_file_set_double (self->file, "printer", "100-mm-long-side", reading.long_side);
  settings_write (self);
}

static int
settings_length (TrammelSettings *self, const char *key, int usual)
{
  const int px = g_key_file_get_integer (self->file, "window", key, NULL);

  /* 0 where there is none; a size that no screen has comes from a damaged file. */
  return px >= 100 && px <= 32767 ? px : usual;
}

WindowPlace
trammel_settings_window_place (TrammelSettings *self)
{
  return (WindowPlace) {
    .width = settings_length (self, "width", 1280),
    .height = settings_length (self, "height", 800),
    .maximized = g_key_file_get_boolean (self->file, "window", "maximized", NULL),
  };
}

void
trammel_settings_set_window_place (TrammelSettings *self, WindowPlace place)
{
  g_key_file_set_integer (self->file, "window", "width", place.width);
  g_key_file_set_integer (self->file, "window", "height", place.height);
  g_key_file_set_boolean (self->file, "window", "maximized", place.maximized);
  settings_write (self);
}
