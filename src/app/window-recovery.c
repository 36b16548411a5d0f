#include "trammel-config.h"
#include "app/window-private.h"
#include <glib/gi18n-lib.h>
#include <glib/gstdio.h>
#include "app/document-io.h"
#include "app/message-start.h"

static void
window_journal_failed (const char *sentence, gpointer window)
{
  trammel_window_tell (window, sentence);
}

/* The youngest that is left over; NULL when there is none. The list frees it. */
static const JournalEntry *
orphans_first (const GPtrArray *orphans)
{
  return orphans->len == 0 ? NULL : orphans->pdata[0];
}

/* By its name, else by its file's. */
static char *
orphan_sentence (const JournalEntry *orphan)
{
  g_autofree char *file = orphan->path != NULL ? g_path_get_basename (orphan->path) : NULL;
  const char *name = orphan->name != NULL && *orphan->name != '\0' ? orphan->name : file;

  if (name == NULL)
    return g_strdup (_("Unsaved work on an aeroplane without a name was found."));
  /* Translators: %s is the name of an aeroplane, or of its file. */
  return g_strdup_printf (_("Unsaved work on “%s” was found."), name);
}

void
trammel_window_offer_recovery (TrammelWindow *self)
{
  g_autoptr (GPtrArray) orphans = journal_list_orphans ();
  const JournalEntry *orphan = orphans_first (orphans);
  g_autofree char *sentence = NULL;

  self->offers_recovery = orphan != NULL;
  if (orphan == NULL)
    return;
  sentence = orphan_sentence (orphan);
  trammel_strip_show (self->strip, sentence, (StripButton) { _("_Restore"), "win.restore-work" },
                      (StripButton) { _("_Discard…"), "win.discard-work" });
}

/* Restoring: first what the file holds, then the work as one step, so that undo leads back to the file. */

static void
window_take_up (TrammelWindow *self, const JournalEntry *orphan, Aeroplane *saved, const FileStamp *stamp)
{
  g_autoptr (GError) error = NULL;
  Journal *journal;
  Aeroplane *work = journal_recover (orphan, &journal, &error);

  if (work == NULL) {
    aeroplane_unref (saved);
    trammel_window_tell (self, error->message);
    return;
  }
  if (saved != NULL)
    window_hold (self, saved, orphan->path, stamp);
  recorder_adopt (self->recorder, journal);
  trammel_session_do (self->session, work, _("Restore Unsaved Work"));
  trammel_session_mark_saved_as (self->session, saved, trammel_session_path (self->session));
  trammel_sheet_area_fit (TRAMMEL_SHEET_AREA (self->area));
  trammel_window_offer_recovery (self);
}

static void
saved_arrived (GObject *nothing, GAsyncResult *result, gpointer window)
{
  g_autoptr (TrammelWindow) self = window;
  g_autoptr (GPtrArray) orphans = journal_list_orphans ();
  const JournalEntry *orphan = orphans_first (orphans);
  FileStamp stamp;
  Aeroplane *saved = document_read_finish (result, &stamp, NULL);

  self->opening = false;
  if (!window_is_gone (self) && orphan != NULL && g_strcmp0 (orphan->path, document_read_path (result)) == 0)
    window_take_up (self, orphan, saved, &stamp);
  else
    aeroplane_unref (saved);
}

static void
window_restore_first (TrammelWindow *self)
{
  g_autoptr (GPtrArray) orphans = journal_list_orphans ();
  const JournalEntry *orphan = orphans_first (orphans);

  if (orphan == NULL)
    return;
  if (orphan->path == NULL) {
    window_take_up (self, orphan, NULL, NULL);
    return;
  }
  self->opening = true;
  document_read_async (orphan->path, saved_arrived, g_object_ref (self));
}

static void
restore_work (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  if (!trammel_window_is_untouched (self)) {
    self = trammel_window_new (gtk_window_get_application (window), trammel_session_settings (self->session));
    gtk_window_present (GTK_WINDOW (self));
  }
  window_restore_first (self);
}

/* Discarding cannot be taken back, so it is asked about. */

static void
discard_answered (TrammelWindow *self, const char *response)
{
  g_autoptr (GPtrArray) orphans = journal_list_orphans ();
  const JournalEntry *orphan = orphans_first (orphans);

  if (g_str_equal (response, "discard") && orphan != NULL)
    g_unlink (orphan->file);
  if (!window_is_gone (self))
    trammel_window_offer_recovery (self);
}

static void
discard_work (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  GtkWidget *dialog = adw_message_dialog_new (window, _("Discard Unsaved Work?"),
                                              _("It cannot be brought back afterwards. The saved document stays as it is."));
  AdwMessageDialog *question = ADW_MESSAGE_DIALOG (dialog);

  adw_message_dialog_add_responses (question, "cancel", _("_Cancel"), "discard", _("_Discard"), NULL);
  adw_message_dialog_set_response_appearance (question, "discard", ADW_RESPONSE_DESTRUCTIVE);
  adw_message_dialog_set_close_response (question, "cancel");
  message_start_at (question, "cancel");
  g_signal_connect_object (dialog, "response", G_CALLBACK (discard_answered), window, G_CONNECT_SWAPPED);
  gtk_window_present (GTK_WINDOW (dialog));
}

void
window_recovery_begin (TrammelWindow *self)
{
  static const GActionEntry entries[] = {
    { .name = "restore-work", .activate = restore_work },
    { .name = "discard-work", .activate = discard_work },
  };

  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
  self->recorder = recorder_new (self->session, window_journal_failed, self);
}

void
window_recovery_end (TrammelWindow *self)
{
  g_clear_pointer (&self->recorder, recorder_end);
}
