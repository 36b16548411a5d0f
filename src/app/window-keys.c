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
