#include "app/entry-click.h"

static const char fresh_key[] = "trammel-fresh-click";

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
      gtk_editable_select_region (GTK_EDITABLE (entry), 0, -1);
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
