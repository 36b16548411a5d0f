#include "trammel-config.h"
#include "app/window-private.h"
#include <glib/gi18n-lib.h>

void
trammel_window_tell (TrammelWindow *self, const char *sentence)
{
  if (window_is_gone (self))
    return;
  trammel_strip_show (self->strip, sentence, (StripButton) { _("_Close"), "win.close-strip" }, (StripButton) { .label = NULL });
}

bool
trammel_window_tells (TrammelWindow *self, const char *sentence)
{
  return !window_is_gone (self) && g_strcmp0 (trammel_strip_sentence (self->strip), sentence) == 0;
}

void
trammel_window_tell_no_more (TrammelWindow *self, const char *sentence)
{
  if (trammel_window_tells (self, sentence))
    window_strip_done (self);
}

void
trammel_window_ask (TrammelWindow *self, const char *sentence, StripButton first, StripButton second)
{
  if (!window_is_gone (self))
    trammel_strip_show (self->strip, sentence, first, second);
}

void
trammel_window_tell_busy (TrammelWindow *self, const char *sentence, GCancellable *cancellable)
{
  if (window_is_gone (self))
    return;
  if (sentence == NULL) {
    if (self->busy != cancellable)
      return;
    trammel_window_tell_no_more (self, self->busy_words);
    g_clear_object (&self->busy);
    return;
  }
  g_set_object (&self->busy, cancellable);
  g_free (self->busy_words);
  self->busy_words = g_strdup (sentence);
  trammel_strip_show (self->strip, sentence, (StripButton) { _("_Cancel"), "win.cancel-work" }, (StripButton) { .label = NULL });
}

void
window_strip_done (TrammelWindow *self)
{
  trammel_strip_hide (self->strip);
  if (self->offers_recovery)
    trammel_window_offer_recovery (self);
}

static void
close_strip (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  window_strip_done (window);
}

static void
cancel_work (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  if (self->busy != NULL)
    g_cancellable_cancel (self->busy);
}

/* The keyboard does not stay on a button that has been pressed: letters choose tools again. */
static void
window_strip_answered (TrammelWindow *self)
{
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (self));

  if (!window_is_gone (self) && (focus == NULL || gtk_widget_is_ancestor (focus, GTK_WIDGET (self->strip))))
    trammel_sheet_area_focus (TRAMMEL_SHEET_AREA (self->area));
}

void
window_strip_begin (TrammelWindow *self)
{
  static const GActionEntry entries[] = {
    { .name = "close-strip", .activate = close_strip },
    { .name = "cancel-work", .activate = cancel_work },
  };

  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
  g_signal_connect_object (self->strip, "answered", G_CALLBACK (window_strip_answered), self, G_CONNECT_SWAPPED);
}
