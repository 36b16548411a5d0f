#include "trammel-config.h"
#include "app/window-private.h"
#include <glib/gi18n-lib.h>
#include "app/document-io.h"
#include "app/file-chooser.h"
#include "app/plan-beside.h"
#include "app/recent.h"

/* The file that the session stands for */

static void
window_file_changed (gpointer window)
{
  TrammelWindow *self = window;

  /* Our own writing is seen before we are told that it is done. */
  if (self->saving)
    return;
  trammel_strip_show (self->strip, _("Changed by another program."), (StripButton) { _("_Reload"), "win.reload" },
                      (StripButton) { _("_Keep Mine"), "win.keep-mine" });
}

static void
window_watch (TrammelWindow *self, const char *path, const FileStamp *stamp)
{
  g_clear_pointer (&self->watch, file_watch_free);
  self->watch = file_watch_new (path, stamp, window_file_changed, self);
}

void
window_hold (TrammelWindow *self, Aeroplane *takes, const char *path, const FileStamp *stamp)
{
  trammel_session_open (self->session, takes, path);
  window_watch (self, path, stamp);
}

/* Opening */

/* A window that was drawn upon while the disk took its time keeps what was drawn. */
static TrammelWindow *
window_free_for_opened (TrammelWindow *self)
{
  TrammelWindow *other;

  if (trammel_session_is_saved (self->session))
    return self;
  other = trammel_window_new (gtk_window_get_application (GTK_WINDOW (self)), trammel_session_settings (self->session));
  gtk_window_present (GTK_WINDOW (other));
  return other;
}

/* A window for this file alone that nobody has seen yet has nothing to stay for; the reason is read in the one in front. */
static void
window_say_unreadable (TrammelWindow *self, const char *sentence)
{
  TrammelWindow *front = NULL;

  for (GList *each = gtk_application_get_windows (gtk_window_get_application (GTK_WINDOW (self))); each != NULL && front == NULL; each = each->next)
    if (TRAMMEL_IS_WINDOW (each->data) && gtk_widget_get_visible (each->data))
      front = each->data;
  if (front == NULL)
    gtk_window_present (GTK_WINDOW (self));
  if (front == NULL || gtk_widget_get_visible (GTK_WIDGET (self))) {
    trammel_window_tell (self, sentence);
    return;
  }
  trammel_window_tell (front, sentence);
  gtk_window_destroy (GTK_WINDOW (self));
}

static void
window_show_opened (TrammelWindow *self, Aeroplane *takes, const char *path, const FileStamp *stamp)
{
  window_strip_done (self);
  window_hold (self, takes, path, stamp);
  trammel_sheet_area_fit (TRAMMEL_SHEET_AREA (self->area));
  if (!gtk_widget_get_visible (GTK_WIDGET (self)))
    gtk_window_present (GTK_WINDOW (self));
}

static void
open_arrived (GObject *nothing, GAsyncResult *result, gpointer window)
{
  g_autoptr (TrammelWindow) self = window;
  g_autoptr (GError) error = NULL;
  const char *path = document_read_path (result);
  FileStamp stamp;
  Aeroplane *aeroplane = document_read_finish (result, &stamp, &error);

  self->opening = false;
  if (window_is_gone (self)) {
    aeroplane_unref (aeroplane);
    return;
  }
  if (aeroplane == NULL) {
    recent_forget_missing (path);
    window_say_unreadable (self, error->message);
    return;
  }
  window_show_opened (window_free_for_opened (self), aeroplane, path, &stamp);
  recent_add (path);
}

void
trammel_window_open_file (TrammelWindow *self, const char *path)
{
  self->opening = true;
  document_read_async (path, open_arrived, g_object_ref (self));
}

void
trammel_window_open_copy (TrammelWindow *self, Aeroplane *takes)
{
  g_clear_pointer (&self->watch, file_watch_free);
  trammel_session_open (self->session, takes, NULL);
  trammel_sheet_area_fit (TRAMMEL_SHEET_AREA (self->area));
}

static void
file_chosen (const char *path, gpointer window)
{
  g_autoptr (GFile) file = g_file_new_for_path (path);
  GFile *files[] = { file };

  if (!trammel_window_take (window, path))
    g_application_open (G_APPLICATION (gtk_window_get_application (window)), files, 1, "");
}

static void
open_file (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  file_chooser_open (window, file_chosen, window);
}

/* One step like any other: what was here before comes back with undo. */
static void
reload_arrived (GObject *nothing, GAsyncResult *result, gpointer window)
{
  g_autoptr (TrammelWindow) self = window;
  g_autoptr (GError) error = NULL;
  FileStamp stamp;
  Aeroplane *aeroplane = document_read_finish (result, &stamp, &error);

  if (window_is_gone (self)) {
    aeroplane_unref (aeroplane);
    return;
  }
  if (aeroplane == NULL) {
    trammel_window_tell (self, error->message);
    return;
  }
  trammel_session_do (self->session, aeroplane, _("Reload"));
  trammel_session_mark_saved (self->session, document_read_path (result));
  window_watch (self, document_read_path (result), &stamp);
}

static void
reload (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  if (trammel_session_path (self->session) != NULL)
    document_read_async (trammel_session_path (self->session), reload_arrived, g_object_ref (self));
}

static void
keep_mine (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  if (self->watch == NULL)
    return;
  file_watch_accept_now (self->watch);
  trammel_session_mark_saved_as (self->session, NULL, trammel_session_path (self->session));
}

/* Saving */

/* Plans too large to travel within the document were copied beside it. */
static void
window_say_beside (TrammelWindow *self, const PlanBeside *beside)
{
  bool failed;
  g_autofree char *word = plan_beside_word (beside, &failed);

  if (word != NULL && failed)
    trammel_window_tell (self, word);
  else if (word != NULL)
    trammel_window_toast (self, word, NULL, NULL);
}

static void
window_saved (TrammelWindow *self, GAsyncResult *result, const FileStamp *stamp)
{
  const char *path = document_write_path (result);

  trammel_session_mark_saved_as (self->session, document_write_aeroplane (result), path);
  window_say_beside (self, document_write_beside (result));
  window_watch (self, path, stamp);
  recent_add (path);
  if (self->close_when_saved)
    gtk_window_close (GTK_WINDOW (self));
  self->close_when_saved = false;
}

static void
save_arrived (GObject *nothing, GAsyncResult *result, gpointer window)
{
  g_autoptr (TrammelWindow) self = window;
  g_autoptr (GError) error = NULL;
  FileStamp stamp;

  self->saving = false;
  if (window_is_gone (self))
    return;
  if (document_write_finish (result, &stamp, &error)) {
    window_saved (self, result, &stamp);
    return;
  }
  self->close_when_saved = false;
  if (g_error_matches (error, DOCUMENT_IO_ERROR, DOCUMENT_IO_ERROR_CHANGED))
    window_file_changed (self);
  else
    trammel_window_tell (self, error->message);
}

static void
window_save_to (TrammelWindow *self, const char *path, const FileStamp *known)
{
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (self));

  if (self->saving)
    return;
  /* What is still being typed counts: a field takes its text when it is left. */
  gtk_root_set_focus (GTK_ROOT (self), NULL);
  gtk_root_set_focus (GTK_ROOT (self), focus);
  self->saving = true;
  document_write_async (trammel_session_settled (self->session), path, known,
                        plan_beside_new (trammel_sheet_area_plan_store (TRAMMEL_SHEET_AREA (self->area)),
                                         trammel_session_settled (self->session), trammel_session_path (self->session)),
                        save_arrived, g_object_ref (self));
}

static void
save_place_chosen (const char *path, gpointer window)
{
  window_save_to (window, path, NULL);
}

static void
save_place_refused (gpointer window)
{
  TRAMMEL_WINDOW (window)->close_when_saved = false;
}

static void
window_save_as (TrammelWindow *self)
{
  g_autofree char *title = trammel_session_title (self->session);

  file_chooser_save (GTK_WINDOW (self), &(SaveChoice) {
    .heading = _("Save As"), .folder_of = trammel_session_path (self->session), .name = title, .ending = ".trammel",
    .kind = _("Trammel documents"), .chosen = save_place_chosen, .refused = save_place_refused, .data = self });
}

void
window_save (TrammelWindow *self)
{
  const char *path = trammel_session_path (self->session);

  if (path == NULL)
    window_save_as (self);
  else
    window_save_to (self, path, self->watch == NULL ? NULL : file_watch_known (self->watch));
}

static void
save (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  window_save (window);
}

static void
save_as (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  window_save_as (window);
}

/* Documents and plans dropped anywhere on the window */

/* A plan goes beneath the sheet that it was dropped on, an outline upon it. */
static bool
dropped_upon (TrammelWindow *self, GFile *file)
{
  g_autofree char *path = g_file_get_path (file);

  return path != NULL && trammel_window_take (self, path);
}

bool
window_take_files (TrammelWindow *self, GSList *list)
{
  g_autoptr (GPtrArray) files = g_ptr_array_new ();

  for (GSList *each = list; each != NULL; each = each->next)
    if (!dropped_upon (self, each->data))
      g_ptr_array_add (files, each->data);
  if (files->len > 0)
    g_application_open (G_APPLICATION (gtk_window_get_application (GTK_WINDOW (self))), (GFile **) files->pdata, (int) files->len, "");
  return list != NULL;
}

static gboolean
files_dropped (GtkDropTarget *target, const GValue *value, double x, double y, gpointer window)
{
  return window_take_files (window, g_value_get_boxed (value));
}

void
window_files_begin (TrammelWindow *self)
{
  static const GActionEntry entries[] = {
    { .name = "open",      .activate = open_file },
    { .name = "save",      .activate = save },
    { .name = "save-as",   .activate = save_as },
    { .name = "reload",    .activate = reload },
    { .name = "keep-mine", .activate = keep_mine },
  };
  g_autoptr (GMenuModel) recent = recent_menu ();
  GtkDropTarget *drop = gtk_drop_target_new (GDK_TYPE_FILE_LIST, GDK_ACTION_COPY);

  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
  g_signal_connect (drop, "drop", G_CALLBACK (files_dropped), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (drop));
  adw_split_button_set_menu_model (self->open_button, recent);
}
