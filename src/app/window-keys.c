#include "app/window-private.h"

/* These belong to a text field while it has the keyboard (cut, copy, undo of what was typed), so they are met on the way back up from
 * the focused widget. Keys that mean the same everywhere are the application's accelerators. */
static const struct { const char *keys, *action; } keys[] = {
  { "<Control>z",        "win.undo" },
  { "<Control><Shift>z", "win.redo" },
  { "<Control>y",        "win.redo" },
  { "<Control>x",        "win.cut" },
  { "<Control>c",        "win.copy" },
  { "<Control>v",        "win.paste" },
  { "<Control>a",        "win.select-all" },
  { "Delete",            "win.delete" },
  { "KP_Delete",         "win.delete" },
};

void
window_keys_install (GtkWidgetClass *klass)
{
  for (size_t i = 0; i < G_N_ELEMENTS (keys); i++)
    gtk_widget_class_add_shortcut (klass, gtk_shortcut_new (gtk_shortcut_trigger_parse_string (keys[i].keys),
                                                            gtk_named_action_new (keys[i].action)));
}

/* A menu that is open has its own letters. */
static bool
window_types_elsewhere (TrammelWindow *self)
{
  GtkWidget *focus = gtk_window_get_focus (GTK_WINDOW (self));

  return gtk_widget_get_visible (self->start_page)
         || (focus != NULL && (GTK_IS_EDITABLE (focus) || GTK_IS_TEXT_VIEW (focus) || gtk_widget_get_ancestor (focus, GTK_TYPE_POPOVER) != NULL));
}

static gboolean
window_letter_pressed (GtkEventControllerKey *controller, guint keyval, guint code, GdkModifierType state, TrammelWindow *self)
{
  if ((state & (GDK_CONTROL_MASK | GDK_ALT_MASK | GDK_SUPER_MASK)) || !g_unichar_isalpha (gdk_keyval_to_unicode (keyval))
      || window_types_elsewhere (self))
    return FALSE;
  return trammel_sheet_area_hand_on (TRAMMEL_SHEET_AREA (self->area), controller);
}

void
window_keys_begin (TrammelWindow *self)
{
  GtkEventController *controller = gtk_event_controller_key_new ();

  g_signal_connect (controller, "key-pressed", G_CALLBACK (window_letter_pressed), self);
  gtk_widget_add_controller (GTK_WIDGET (self), controller);
}
