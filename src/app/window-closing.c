#include "trammel-config.h"
#include "app/window-private.h"
#include <glib/gi18n-lib.h>
#include "app/message-start.h"

static void
window_keep_place (TrammelWindow *self)
{
  WindowPlace place = { .maximized = gtk_window_is_maximized (GTK_WINDOW (self)) };

  gtk_window_get_default_size (GTK_WINDOW (self), &place.width, &place.height);
  trammel_settings_set_window_place (trammel_session_settings (self->session), place);
}

void
window_close_now (TrammelWindow *self)
{
  window_keep_place (self);
  window_recovery_end (self);
  gtk_window_destroy (GTK_WINDOW (self));
}

static void
close_after_question (gpointer window)
{
  window_close_now (window);
  g_object_unref (window);
}

static void
close_answered (TrammelWindow *self, const char *response)
{
  /* The question still leans on this window while it answers. */
  if (g_str_equal (response, "discard"))
    g_idle_add_once (close_after_question, g_object_ref (self));
  self->close_when_saved = g_str_equal (response, "save");
  if (self->close_when_saved)
    window_save (self);
}

static void
window_ask_to_save (TrammelWindow *self)
{
  GtkWidget *dialog = adw_message_dialog_new (GTK_WINDOW (self), _("Save Changes?"), NULL);
  AdwMessageDialog *question = ADW_MESSAGE_DIALOG (dialog);

  adw_message_dialog_format_body (question, _("“%s” has changes that are not saved. Discarding loses them for good."),
                                  gtk_window_get_title (GTK_WINDOW (self)));
  adw_message_dialog_add_responses (question, "cancel", _("_Cancel"), "discard", _("_Discard"), "save", _("_Save"), NULL);
  adw_message_dialog_set_response_appearance (question, "discard", ADW_RESPONSE_DESTRUCTIVE);
  adw_message_dialog_set_response_appearance (question, "save", ADW_RESPONSE_SUGGESTED);
  adw_message_dialog_set_close_response (question, "cancel");
  message_start_at (question, "save");
  g_signal_connect_swapped (dialog, "response", G_CALLBACK (close_answered), self);
  gtk_window_present (GTK_WINDOW (dialog));
}

static gboolean
close_requested (TrammelWindow *self)
{
  if (trammel_session_is_saved (self->session))
    window_close_now (self);
  else
    window_ask_to_save (self);
  return TRUE;
}

void
window_closing_begin (TrammelWindow *self)
{
  const WindowPlace place = trammel_settings_window_place (trammel_session_settings (self->session));

  gtk_window_set_default_size (GTK_WINDOW (self), place.width, place.height);
  if (place.maximized)
    gtk_window_maximize (GTK_WINDOW (self));
  g_signal_connect_swapped (self, "close-request", G_CALLBACK (close_requested), self);
}
