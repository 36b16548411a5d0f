#include "app/first-frame.h"

typedef struct {
  void (*act) (GtkWidget *widget);
  gint64 first;              /* that frame's count; -1: not yet begun */
} Then;

static gboolean
first_frame_tick (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  Then *then = data;

  if (then->first < 0)
    then->first = gdk_frame_clock_get_frame_counter (clock);
  if (gdk_frame_clock_get_frame_counter (clock) == then->first)
    return G_SOURCE_CONTINUE;
  then->act (widget);
  return G_SOURCE_REMOVE;
}

void
first_frame_then (GtkWidget *widget, void (*act) (GtkWidget *widget))
{
  Then *then = g_new (Then, 1);

  *then = (Then) { act, -1 };
  gtk_widget_add_tick_callback (widget, first_frame_tick, then, g_free);
}
