#include "trammel-config.h"
#include "app/application.h"
#include <adwaita.h>
#include <glib/gi18n-lib.h>
#include "app/brought-io.h"
#include "app/help-window.h"
#include "app/plan-kind.h"
#include "app/window.h"
#include "document/data-path.h"
#include "document/reader.h"
#include "trammel-resources.h"

struct _TrammelApplication {
  AdwApplication parent;
  TrammelSettings *settings;
};

G_DEFINE_FINAL_TYPE (TrammelApplication, trammel_application, ADW_TYPE_APPLICATION)

/* Windows */

static TrammelWindow *
application_new_window (TrammelApplication *self)
{
  const bool first = gtk_application_get_windows (GTK_APPLICATION (self)) == NULL;
  TrammelWindow *window = trammel_window_new (GTK_APPLICATION (self), self->settings);

  gtk_window_present (GTK_WINDOW (window));
  if (first)
    trammel_window_offer_recovery (window);
  return window;
}

/* The window in front if it holds nothing yet, else a new one, not shown before there is something to show beside the others. */
static TrammelWindow *
application_free_window (TrammelApplication *self)
{
  GtkWindow *front = gtk_application_get_active_window (GTK_APPLICATION (self));

  if (front == NULL)
    return application_new_window (self);
  if (TRAMMEL_IS_WINDOW (front) && trammel_window_is_untouched (TRAMMEL_WINDOW (front)))
    return TRAMMEL_WINDOW (front);
  return trammel_window_new (GTK_APPLICATION (self), self->settings);
}

/* Where a sentence is read, or a plan laid down: the window in front. */
static TrammelWindow *
application_front_window (TrammelApplication *self)
{
  GtkWindow *front = gtk_application_get_active_window (GTK_APPLICATION (self));

  if (front != NULL && TRAMMEL_IS_WINDOW (front) && gtk_widget_get_visible (GTK_WIDGET (front)))
    return TRAMMEL_WINDOW (front);
  for (GList *each = gtk_application_get_windows (GTK_APPLICATION (self)); each != NULL; each = each->next)
    if (TRAMMEL_IS_WINDOW (each->data) && gtk_widget_get_visible (each->data))
      return each->data;
  return application_new_window (self);
}

static GtkWindow *
application_window_of (TrammelApplication *self, const char *path)
{
  for (GList *each = gtk_application_get_windows (GTK_APPLICATION (self)); each != NULL; each = each->next)
    if (TRAMMEL_IS_WINDOW (each->data)
        && g_strcmp0 (trammel_session_path (trammel_window_session (TRAMMEL_WINDOW (each->data))), path) == 0)
      return each->data;
  return NULL;
}

/* A document wants a window of its own; a plan goes beneath the sheet in front. */
static void
application_open_path (TrammelApplication *self, const char *path)
{
  GtkWindow *already = application_window_of (self, path);

  if (!g_str_has_suffix (path, ".trammel") && (plan_kind_of_file (path) || brought_io_takes (path))) {
    trammel_window_take (application_front_window (self), path);
    return;
  }
  if (already == NULL)
    trammel_window_open_file (application_free_window (self), path);
  else
    gtk_window_present (already);
}

static void
trammel_application_activate (GApplication *application)
{
  GtkWindow *front = gtk_application_get_active_window (GTK_APPLICATION (application));

  if (front == NULL)
    application_new_window (TRAMMEL_APPLICATION (application));
  else
    gtk_window_present (front);
}

static void
trammel_application_open (GApplication *application, GFile **files, int count, const char *hint)
{
  TrammelApplication *self = TRAMMEL_APPLICATION (application);

  for (int i = 0; i < count; i++) {
    g_autofree char *path = g_file_get_path (files[i]);

    if (path != NULL)
      application_open_path (self, path);
    else
      trammel_window_tell (application_front_window (self), _("This place cannot be read as a file; copy the document to this computer first."));
  }
}

/* Actions */

static void
new_window (GSimpleAction *action, GVariant *parameter, gpointer application)
{
  application_new_window (application);
}

static void
open_path (GSimpleAction *action, GVariant *path, gpointer application)
{
  application_open_path (application, g_variant_get_string (path, NULL));
}

static void
open_example (GSimpleAction *action, GVariant *name, gpointer application)
{
  g_autofree char *file = g_strconcat ("examples/", g_variant_get_string (name, NULL), ".trammel", NULL);
  g_autofree char *path = data_path (file);
  g_autoptr (GError) error = NULL;
  Aeroplane *example = reader_read_file (path, NULL, &error);
  TrammelWindow *window;

  if (example == NULL) {
    trammel_window_tell (application_front_window (application), error->message);
    return;
  }
  window = application_free_window (application);
  trammel_window_open_copy (window, example);
  gtk_window_present (GTK_WINDOW (window));
}

static void
open_folder (GSimpleAction *action, GVariant *path, gpointer application)
{
  g_autofree char *uri = g_filename_to_uri (g_variant_get_string (path, NULL), NULL, NULL);

  if (uri != NULL)
    gtk_show_uri (gtk_application_get_active_window (application), uri, GDK_CURRENT_TIME);
}

static void
show_help (GSimpleAction *action, GVariant *parameter, gpointer application)
{
  GtkWindow *window = gtk_application_get_active_window (application);

  help_window_present (application, TRAMMEL_IS_WINDOW (window) ? trammel_window_help_page (TRAMMEL_WINDOW (window)) : NULL);
}

static void
show_about (GSimpleAction *action, GVariant *parameter, gpointer application)
{
  GtkWidget *about = g_object_new (ADW_TYPE_ABOUT_WINDOW,
    "transient-for", gtk_application_get_active_window (application), "modal", TRUE,
    "application-name", "Trammel", "application-icon", TRAMMEL_ID, "version", TRAMMEL_VERSION,
    "comments", _("Turns the plan of a small aeroplane into the mark where it must balance. Its figures are estimates: check the "
                  "balance on the bench before every first flight."),
    "license-type", GTK_LICENSE_GPL_3_0, NULL);

  gtk_window_present (GTK_WINDOW (about));
}

/* Each window asks for itself; the last one to go ends the program. */
static void
quit (GSimpleAction *action, GVariant *parameter, gpointer application)
{
  g_autoptr (GList) windows = g_list_copy (gtk_application_get_windows (application));

  for (GList *each = windows; each != NULL; each = each->next)
    if (TRAMMEL_IS_WINDOW (each->data))
      gtk_window_close (each->data);
}

static const struct { const char *action, *keys[4]; } accelerators[] = {
  { "app.new",             { "<Control>n" } },
  { "app.quit",            { "<Control>q" } },
  { "app.help",            { "F1" } },
  { "win.open",            { "<Control>o" } },
  { "win.save",            { "<Control>s" } },
  { "win.save-as",         { "<Control><Shift>s" } },
  { "win.export",          { "<Control>e" } },
  { "win.print",           { "<Control>p" } },
  { "win.close",           { "<Control>w" } },
  { "win.show-panel",      { "F9" } },
  { "win.preferences",     { "<Control>comma" } },
  { "win.show-help-overlay", { "<Control>question" } },
  { "win.focus-next",      { "F6" } },
  { "win.focus-previous",  { "<Shift>F6" } },
  { "win.read-answer",     { "<Control><Shift>a" } },
  { "sheet.zoom-in",       { "<Control>plus", "<Control>equal", "<Control>KP_Add" } },
  { "sheet.zoom-out",      { "<Control>minus", "<Control>KP_Subtract" } },
  { "sheet.true-size",     { "<Control>0", "<Control>KP_0" } },
};

static void
trammel_application_startup (GApplication *application)
{
  static const GActionEntry entries[] = {
    { .name = "new",          .activate = new_window },
    { .name = "open-path",    .activate = open_path, .parameter_type = "s" },
    { .name = "open-example", .activate = open_example, .parameter_type = "s" },
    { .name = "open-folder",  .activate = open_folder, .parameter_type = "s" },
    { .name = "help",         .activate = show_help },
    { .name = "about",        .activate = show_about },
    { .name = "quit",         .activate = quit },
  };

  G_APPLICATION_CLASS (trammel_application_parent_class)->startup (application);
  TRAMMEL_APPLICATION (application)->settings = trammel_settings_new ();
  g_action_map_add_action_entries (G_ACTION_MAP (application), entries, G_N_ELEMENTS (entries), application);
  for (size_t i = 0; i < G_N_ELEMENTS (accelerators); i++)
    gtk_application_set_accels_for_action (GTK_APPLICATION (application), accelerators[i].action, (const char *const *) accelerators[i].keys);
  gtk_window_set_default_icon_name (TRAMMEL_ID);
}

static void
trammel_application_finalize (GObject *object)
{
  g_clear_object (&TRAMMEL_APPLICATION (object)->settings);
  G_OBJECT_CLASS (trammel_application_parent_class)->finalize (object);
}

static void
trammel_application_class_init (TrammelApplicationClass *klass)
{
  GApplicationClass *application_class = G_APPLICATION_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = trammel_application_finalize;
  application_class->startup = trammel_application_startup;
  application_class->activate = trammel_application_activate;
  application_class->open = trammel_application_open;
}

static void
trammel_application_init (TrammelApplication *self)
{
}

TrammelApplication *
trammel_application_new (void)
{
  trammel_register_resource ();
  return g_object_new (TRAMMEL_TYPE_APPLICATION, "application-id", TRAMMEL_ID, "flags", G_APPLICATION_HANDLES_OPEN, NULL);
}

TrammelSettings *
trammel_application_settings (TrammelApplication *self)
{
  return self->settings;
}

int
application_main (int argc, char **argv)
{
  g_autoptr (TrammelApplication) application = NULL;

  if (!gtk_init_check ()) {
    g_printerr (_("trammel: there is no display to open a window on. “trammel report FILE” needs none; see “trammel --help”.\n"));
    return 1;
  }
  g_set_application_name ("Trammel");
  g_set_prgname (TRAMMEL_ID);
  application = trammel_application_new ();
  return g_application_run (G_APPLICATION (application), argc, argv);
}
