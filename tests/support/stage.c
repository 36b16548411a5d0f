#include "support/stage.h"
#include <string.h>
#include <glib/gstdio.h>
#include "app/strip.h"
#include "document/reader.h"

static struct { TrammelApplication *application; char *folder; GPtrArray *paths; } stage;

TrammelApplication *
stage_application (void)
{
  return stage.application;
}

void
stage_raise (void)
{
  GError *error = NULL;

  stage.folder = g_dir_make_tmp ("trammel-test-XXXXXX", NULL);
  stage.paths = g_ptr_array_new_with_free_func (g_free);
  stage.application = trammel_application_new ();
  ck_assert_msg (g_application_register (G_APPLICATION (stage.application), NULL, &error), "%s", error == NULL ? "" : error->message);
  trammel_settings_set_units (trammel_application_settings (stage.application), (Units) { LENGTH_MM, MASS_G });
  trammel_settings_set_flag (trammel_application_settings (stage.application), CAUTIONS_READ, true);
  trammel_settings_set_window_place (trammel_application_settings (stage.application), (WindowPlace) { 1280, 800, false });
}

static void
folder_remove (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL) {
    g_autofree char *path = g_build_filename (folder, name, NULL);
    g_remove (path);
  }
  g_rmdir (folder);
}

static void
activation_ignore (GApplication *application)
{
  g_signal_stop_emission_by_name (application, "activate");
}

/* Who opened a chooser of files holds it, and lets it go once it is answered; where it is hidden, that is under way. */
static void
window_strike (GtkWindow *window)
{
  if (!GTK_IS_FILE_CHOOSER_DIALOG (window)) {
    gtk_window_set_transient_for (window, NULL);        /* kept here beyond its parent, it would look for that in the end */
    gtk_window_destroy (window);
  } else if (gtk_widget_get_mapped (GTK_WIDGET (window))) {
    gtk_dialog_response (GTK_DIALOG (window), GTK_RESPONSE_CANCEL);
  }
}

/* Every window goes, asked or not; then the program itself, so that a leak is seen. Without windows running it is ending it. */
void
stage_strike (void)
{
  GList *windows = gtk_window_list_toplevels ();

  for (GList *each = windows; each != NULL; each = each->next)
    g_object_ref (each->data);
  for (GList *each = windows; each != NULL; each = each->next)
    window_strike (each->data);
  g_list_free_full (windows, g_object_unref);
  gui_settle ();
  g_signal_connect (stage.application, "activate", G_CALLBACK (activation_ignore), NULL);
  g_application_run (G_APPLICATION (stage.application), 0, NULL);
  g_clear_object (&stage.application);
  gui_settle ();
  folder_remove (stage.folder);
  g_clear_pointer (&stage.folder, g_free);
  g_clear_pointer (&stage.paths, g_ptr_array_unref);
}

const char *
stage_path (const char *name)
{
  char *path = g_build_filename (stage.folder, name, NULL);

  g_ptr_array_add (stage.paths, path);
  return path;
}

const char *
stage_example (const char *example, const char *name)
{
  g_autofree char *file = g_strconcat (example, ".trammel", NULL);
  g_autofree char *from = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "data", "examples", file, NULL);
  const char *to = stage_path (name);
  g_autofree char *text = NULL;
  gsize length;

  ck_assert (g_file_get_contents (from, &text, &length, NULL));
  ck_assert (g_file_set_contents (to, text, (gssize) length, NULL));
  return to;
}

/* The newest window that holds the file; of nothing, the newest. */
static GtkWindow *
window_holding (const char *path)
{
  for (GList *each = gtk_application_get_windows (GTK_APPLICATION (stage.application)); each != NULL; each = each->next)
    if (TRAMMEL_IS_WINDOW (each->data)
        && (path == NULL || g_strcmp0 (trammel_session_path (trammel_window_session (each->data)), path) == 0))
      return each->data;
  return NULL;
}

static bool
window_has_loaded (gpointer path)
{
  return window_holding (path) != NULL;
}

TrammelWindow *
stage_open (const char *path)
{
  g_autoptr (GFile) file = path == NULL ? NULL : g_file_new_for_path (path);

  if (path == NULL)
    g_application_activate (G_APPLICATION (stage.application));
  else
    g_application_open (G_APPLICATION (stage.application), &file, 1, "");
  ck_assert_msg (gui_wait (window_has_loaded, (gpointer) path), "%s does not open", path);
  gui_present (window_holding (path));
  return TRAMMEL_WINDOW (window_holding (path));
}

TrammelWindow *
stage_racer (void)
{
  return stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
}

TrammelWindow *
stage_window (const char *title)
{
  GtkWindow *window = gui_await_window (title);

  ck_assert (TRAMMEL_IS_WINDOW (window));
  gui_present (window);
  return TRAMMEL_WINDOW (window);
}

const Aeroplane *
stage_aeroplane (TrammelWindow *window)
{
  return trammel_session_aeroplane (trammel_window_session (window));
}

const char *
stage_state (TrammelWindow *window)
{
  return adw_window_title_get_subtitle (ADW_WINDOW_TITLE (gui_find_type (GTK_WIDGET (window), ADW_TYPE_WINDOW_TITLE)));
}

typedef struct { TrammelWindow *window; const char *words; } Said;

static bool
state_is (gpointer data)
{
  const Said *said = data;

  return g_str_equal (stage_state (said->window), said->words);
}

void
stage_await_state (TrammelWindow *window, const char *state)
{
  ck_assert_msg (gui_wait (state_is, &(Said) { window, state }), "the header says “%s”, not “%s”", stage_state (window), state);
}

static bool
strip_says (gpointer data)
{
  const Said *said = data;
  GtkWidget *strip = gui_find_type (GTK_WIDGET (said->window), TRAMMEL_TYPE_STRIP);
  const char *sentence = strip == NULL ? NULL : trammel_strip_sentence (TRAMMEL_STRIP (strip));

  return sentence != NULL && strstr (sentence, said->words) != NULL;
}

void
stage_await_strip (TrammelWindow *window, const char *words)
{
  ck_assert_msg (gui_wait (strip_says, &(Said) { window, words }), "no strip says “%s”", words);
}

Aeroplane *
stage_read (const char *path)
{
  GError *error = NULL;
  Aeroplane *aeroplane = reader_read_file (path, NULL, &error);

  ck_assert_msg (aeroplane != NULL, "%s", error == NULL ? "" : error->message);
  return aeroplane;
}

static bool
chooser_is_gone (gpointer title)
{
  return !gui_window_is_there (title);
}

void
stage_choose (const char *chooser_title, const char *path, bool saving)
{
  GtkWindow *chooser = gui_await_window (chooser_title);

  gui_present (chooser);
  gui_wait_ms (300);              /* it lists its folder first */
  if (!saving)
    gui_type ("/");
  gui_key ("<Control>a");
  gui_type (path);
  gui_wait_ms (200);              /* and looks the name up */
  gui_key ("Return");
  ck_assert_msg (gui_wait (chooser_is_gone, (gpointer) chooser_title), "the chooser stays");
}

void
stage_pick (GtkWindow *dialog, const char *row, const char *line)
{
  gui_click (gui_await (GTK_WIDGET (dialog), row));
  gui_click (gui_await (GTK_WIDGET (dialog), line));
}

static GtkWidget *
question_now (void)
{
  g_autoptr (GList) windows = gtk_window_list_toplevels ();

  for (GList *each = windows; each != NULL; each = each->next)
    if (ADW_IS_MESSAGE_DIALOG (each->data) && gtk_widget_get_mapped (each->data))
      return each->data;
  return NULL;
}

static bool
question_is_there (gpointer nothing)
{
  return question_now () != NULL;
}

bool
stage_is_asking (void)
{
  return question_now () != NULL;
}

GtkWidget *
stage_answer (const char *heading, const char *answer)
{
  ck_assert_msg (gui_wait (question_is_there, NULL), "nothing asks “%s”", heading);
  gui_present (GTK_WINDOW (question_now ()));
  ck_assert_str_eq (adw_message_dialog_get_heading (ADW_MESSAGE_DIALOG (question_now ())), heading);
  return gui_await (question_now (), answer);
}

int
stage_window_count (void)
{
  int count = 0;

  for (GList *each = gtk_application_get_windows (GTK_APPLICATION (stage.application)); each != NULL; each = each->next)
    count += TRAMMEL_IS_WINDOW (each->data) ? 1 : 0;
  return count;
}

GdkContentProvider *
stage_dragged_file (GtkDragSource *source, double x, double y, gpointer path)
{
  GFile *file = g_file_new_for_path (path);
  GSList *files = g_slist_append (NULL, file);
  GValue value = G_VALUE_INIT;
  GdkContentProvider *content;

  g_value_init (&value, GDK_TYPE_FILE_LIST);
  g_value_take_boxed (&value, gdk_file_list_new_from_list (files));
  content = gdk_content_provider_new_for_value (&value);
  g_value_unset (&value);
  g_slist_free_full (files, g_object_unref);
  return content;
}

int
stage_run (const char *name, TCase *const *cases, size_t count)
{
  Suite *suite = suite_create (name);

  gui_begin ();
  for (size_t i = 0; i < count; i++) {
    tcase_set_timeout (cases[i], 120);
    tcase_add_checked_fixture (cases[i], stage_raise, stage_strike);
    suite_add_tcase (suite, cases[i]);
  }
  return gui_run (suite);
}
