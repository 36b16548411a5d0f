#include "app/window-private.h"
#include "app/sheet-canvas.h"

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

/* Where nothing else has a use for it Esc leaves for the sheet, where it goes on: leaves a tool, selects nothing. */
static bool
window_leaves_for_sheet (TrammelWindow *self, guint keyval)
{
  GtkWidget *focus = gtk_window_get_focus (GTK_WINDOW (self));

  return keyval == GDK_KEY_Escape && focus != NULL && !TRAMMEL_IS_SHEET_CANVAS (focus) && !gtk_widget_get_visible (self->start_page)
         && gtk_widget_get_ancestor (focus, GTK_TYPE_POPOVER) == NULL;
}

static gboolean
window_key_pressed (GtkEventControllerKey *controller, guint keyval, guint code, GdkModifierType state, TrammelWindow *self)
{
  if (window_leaves_for_sheet (self, keyval)) {
    trammel_sheet_area_focus (TRAMMEL_SHEET_AREA (self->area));
    return TRUE;
  }
  if ((state & (GDK_CONTROL_MASK | GDK_ALT_MASK | GDK_SUPER_MASK)) || !g_unichar_isalpha (gdk_keyval_to_unicode (keyval))
      || window_types_elsewhere (self))
    return FALSE;
  return trammel_sheet_area_hand_on (TRAMMEL_SHEET_AREA (self->area), controller);
}

/* Nobody, or one that is not to be seen: a row of a menu that has been closed. */
static bool
window_keys_are_lost (TrammelWindow *self)
{
  GtkWidget *focus = gtk_window_get_focus (GTK_WINDOW (self));

  return focus == NULL || !gtk_widget_get_mapped (focus);
}

/* The toolkit itself moves the keyboard from a list that was closed to what opened it, but not before the next frame. */
static gboolean
window_give_sheet_the_keys (GtkWidget *window, GdkFrameClock *clock, gpointer data)
{
  TrammelWindow *self = TRAMMEL_WINDOW (window);
  int *frames = data;

  if (--*frames > 0)
    return G_SOURCE_CONTINUE;
  if ((window_keys_are_lost (self) || self->menu_closed) && gtk_widget_get_mapped (window) && !gtk_widget_get_visible (self->start_page))
    trammel_sheet_area_focus (TRAMMEL_SHEET_AREA (self->area));
  self->menu_closed = false;
  return G_SOURCE_REMOVE;
}

/* The button of a menu that is closed gets the keyboard, be it that one of its rows has opened another window. Where the sheet had it when
 * the menu was opened it gets it back. */
static bool
window_menu_was_over_sheet (TrammelWindow *self, GtkWidget *focus)
{
  const bool was_in_menu = self->in_menu;

  self->in_menu = focus != NULL && gtk_widget_get_ancestor (focus, GTK_TYPE_POPOVER) != NULL;
  if (focus == NULL || self->in_menu)
    return false;
  if (gtk_widget_get_ancestor (focus, GTK_TYPE_MENU_BUTTON) != NULL)
    return was_in_menu && self->sheet_had_keys;
  self->sheet_had_keys = TRAMMEL_IS_SHEET_CANVAS (focus);
  return false;
}

static void
window_focus_changed (TrammelWindow *self)
{
  self->menu_closed = window_menu_was_over_sheet (self, gtk_window_get_focus (GTK_WINDOW (self))) || self->menu_closed;
  if (self->menu_closed || window_keys_are_lost (self)) {
    int *frames = g_new (int, 1);

    *frames = 3;
    gtk_widget_add_tick_callback (GTK_WIDGET (self), window_give_sheet_the_keys, frames, g_free);
  }
}

void
window_keys_begin (TrammelWindow *self)
{
  GtkEventController *controller = gtk_event_controller_key_new ();

  g_signal_connect (self, "notify::focus-widget", G_CALLBACK (window_focus_changed), NULL);
  g_signal_connect (self, "notify::is-active", G_CALLBACK (window_focus_changed), NULL);
  g_signal_connect (controller, "key-pressed", G_CALLBACK (window_key_pressed), self);
  gtk_widget_add_controller (GTK_WIDGET (self), controller);
}
