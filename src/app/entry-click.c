#include "app/entry-click.h"

static const char fresh_key[] = "trammel-fresh-click";

void
entry_select_all (GtkWidget *entry)
{
  gtk_editable_select_region (GTK_EDITABLE (entry), -1, 0);
}

/* Once the keyboard's own way of selecting all is done. */
static gboolean
entry_to_front (gpointer data)
{
  GtkEditable *entry = data;
  int from, to;

  if (!gtk_editable_get_selection_bounds (entry, &from, &to))
    {
      if ((gtk_widget_get_state_flags (data) & GTK_STATE_FLAG_FOCUS_WITHIN) == 0)
        gtk_editable_set_position (entry, 0);
    }
  else if (from == 0 && to == (int) g_utf8_strlen (gtk_editable_get_text (entry), -1))
    entry_select_all (data);
  return G_SOURCE_REMOVE;
}

static void
entry_focus_moved (GtkWidget *entry)
{
  g_idle_add_full (G_PRIORITY_HIGH_IDLE, entry_to_front, g_object_ref (entry), g_object_unref);
}

void
entry_show_beginning (GtkWidget *entry)
{
  GtkEventController *focus = gtk_event_controller_focus_new ();

  g_signal_connect_swapped (focus, "enter", G_CALLBACK (entry_focus_moved), entry);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (entry_focus_moved), entry);
  gtk_widget_add_controller (entry, focus);
}

/* The entry's own gesture takes the press for itself, so that no gesture beside it would hear of the release. */
static gboolean
entry_event (GtkWidget *entry, GdkEvent *event)
{
  const GdkEventType type = gdk_event_get_event_type (event);
  const bool inside = (gtk_widget_get_state_flags (entry) & GTK_STATE_FLAG_FOCUS_WITHIN) != 0;

  if (type == GDK_BUTTON_PRESS || type == GDK_TOUCH_BEGIN)
    g_object_set_data (G_OBJECT (entry), fresh_key, GINT_TO_POINTER (!inside));
  else if ((type == GDK_BUTTON_RELEASE || type == GDK_TOUCH_END) && g_object_get_data (G_OBJECT (entry), fresh_key) != NULL) {
    g_object_set_data (G_OBJECT (entry), fresh_key, NULL);
    if (inside && !gtk_editable_get_selection_bounds (GTK_EDITABLE (entry), NULL, NULL))
      entry_select_all (entry);
  }
  return GDK_EVENT_PROPAGATE;
}

void
entry_select_on_click (GtkWidget *entry)
{
  GtkEventController *events = gtk_event_controller_legacy_new ();

  gtk_event_controller_set_propagation_phase (events, GTK_PHASE_CAPTURE);
  g_signal_connect_swapped (events, "event", G_CALLBACK (entry_event), entry);
  gtk_widget_add_controller (entry, events);
}

/* A text keeps these keys to itself even while it has nothing to undo: they are met on their way down to it. */
void
entry_leave_undo (GtkWidget *entry)
{
  static const struct { const char *keys, *action; } keys[] = {
    { "<Control>z", "win.undo" }, { "<Control><Shift>z", "win.redo" }, { "<Control>y", "win.redo" },
  };
  GtkEventController *shortcuts = gtk_shortcut_controller_new ();

  gtk_editable_set_enable_undo (GTK_EDITABLE (entry), FALSE);
  gtk_event_controller_set_propagation_phase (shortcuts, GTK_PHASE_CAPTURE);
  for (size_t i = 0; i < G_N_ELEMENTS (keys); i++)
    gtk_shortcut_controller_add_shortcut (GTK_SHORTCUT_CONTROLLER (shortcuts),
                                          gtk_shortcut_new (gtk_shortcut_trigger_parse_string (keys[i].keys),
                                                            gtk_named_action_new (keys[i].action)));
  gtk_widget_add_controller (entry, shortcuts);
}
