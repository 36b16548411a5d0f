#include "trammel-config.h"
#include "app/window-private.h"
#include <glib/gi18n-lib.h>
#include "app/brought-io.h"
#include "app/brought-strip.h"
#include "app/file-chooser.h"

static void
window_brought_used (TrammelWindow *self)
{
  trammel_sheet_area_focus (TRAMMEL_SHEET_AREA (self->area));
}

/* The keyboard does not stay on what has gone. */
static void
window_brought_gone (TrammelWindow *self)
{
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (self));

  if (focus == NULL || gtk_widget_is_ancestor (focus, self->brought))
    trammel_sheet_area_focus (TRAMMEL_SHEET_AREA (self->area));
}

/* Made when it is first needed. */
static TrammelBroughtStrip *
window_brought_strip (TrammelWindow *self)
{
  if (self->brought == NULL) {
    self->brought = trammel_brought_strip_new (self->session);
    gtk_box_insert_child_after (GTK_BOX (gtk_widget_get_parent (GTK_WIDGET (self->strip))), self->brought, GTK_WIDGET (self->strip));
    g_signal_connect_object (self->brought, "used", G_CALLBACK (window_brought_used), self, G_CONNECT_SWAPPED);
    g_signal_connect_object (self->brought, "gone", G_CALLBACK (window_brought_gone), self, G_CONNECT_SWAPPED);
  }
  return TRAMMEL_BROUGHT_STRIP (self->brought);
}

static void
window_offer (TrammelWindow *self, Brought *takes)
{
  window_dismiss_start_page (self);
  trammel_brought_strip_offer (window_brought_strip (self), takes);
  trammel_sheet_area_fit (TRAMMEL_SHEET_AREA (self->area));
}

static void
file_arrived (GObject *nothing, GAsyncResult *result, gpointer window)
{
  g_autoptr (TrammelWindow) self = window;
  g_autoptr (GError) error = NULL;
  Brought *brought = brought_io_finish (result, &error);

  if (window_is_gone (self))
    brought_free (brought);
  else if (brought == NULL)
    trammel_window_tell (self, error->message);
  else
    window_offer (self, brought);
}

/* Whatever else was copied is no business of ours: then it is said as for any paste. */
static void
text_arrived (GObject *nothing, GAsyncResult *result, gpointer window)
{
  g_autoptr (TrammelWindow) self = window;
  Brought *brought = brought_io_finish (result, NULL);

  if (window_is_gone (self))
    brought_free (brought);
  else if (brought == NULL)
    trammel_window_toast (self, _("What was copied is no part of an aeroplane"), NULL, NULL);
  else
    window_offer (self, brought);
}

void
trammel_window_bring (TrammelWindow *self, const char *path)
{
  brought_io_read_async (path, file_arrived, g_object_ref (self));
}

void
window_bring_text (TrammelWindow *self, GBytes *text)
{
  brought_io_text_async (text, _("Clipboard"), text_arrived, g_object_ref (self));
}

static void
chosen (const char *path, gpointer window)
{
  trammel_window_bring (window, path);
}

static void
bring_in_outline (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  file_chooser_open_outline (window, chosen, window);
}

void
window_brought_begin (TrammelWindow *self)
{
  static const GActionEntry entries[] = { { .name = "bring-in-outline", .activate = bring_in_outline } };

  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
}
