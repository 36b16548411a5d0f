#include "app/focus-scroller.h"
#include <adwaita.h>

/* A row of an open list belongs to the content, too, but floats above it on a surface of its own. */
static bool
scroller_holds (GtkWidget *content, GtkWidget *focus)
{
  return focus != NULL && gtk_widget_is_ancestor (focus, content) && gtk_widget_get_native (focus) == gtk_widget_get_native (content);
}

static GtkWidget *
scroller_content (GtkScrolledWindow *scroller)
{
  return gtk_viewport_get_child (GTK_VIEWPORT (gtk_scrolled_window_get_child (scroller)));
}

/* Within the content: against the viewport a place is where it was laid out last, and what has been scrolled since would count twice. */
static void
scroller_bring (GtkScrolledWindow *scroller, GtkWidget *widget)
{
  GtkAdjustment *adjustment = gtk_scrolled_window_get_vadjustment (scroller);
  graphene_rect_t place;

  if (gtk_widget_compute_bounds (widget, scroller_content (scroller), &place))
    gtk_adjustment_clamp_page (adjustment, place.origin.y, place.origin.y + place.size.height);
}

/* Frames begin with this, and end with what they lay out: what is asked for in one is in its place in the next but one. */
static gboolean
scroller_bring_in_time (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  int *frames = data;
  GtkWidget *scroller = gtk_widget_get_ancestor (widget, GTK_TYPE_SCROLLED_WINDOW);

  if (--*frames > 0)
    return G_SOURCE_CONTINUE;
  if (scroller != NULL)
    scroller_bring (GTK_SCROLLED_WINDOW (scroller), widget);
  return G_SOURCE_REMOVE;
}

void
focus_scroller_show (GtkWidget *widget)
{
  int *frames = g_new (int, 1);

  *frames = 3;
  gtk_widget_add_tick_callback (widget, scroller_bring_in_time, frames, g_free);
}

static void
scroller_follow (GtkScrolledWindow *scroller, GParamSpec *property, GtkRoot *root)
{
  GtkWidget *focus = gtk_root_get_focus (root);

  if (!scroller_holds (scroller_content (scroller), focus))
    return;
  /* The text of an entry alone would leave the entry's frame cut off. */
  focus = GTK_IS_TEXT (focus) ? gtk_widget_get_parent (focus) : focus;
  /* One that was made a moment ago seems to stand at the top until it is laid out. */
  if (gtk_widget_get_width (focus) == 0)
    focus_scroller_show (focus);
  else
    scroller_bring (scroller, focus);
}

static void
scroller_realized (GtkWidget *scroller)
{
  g_signal_connect_object (gtk_widget_get_root (scroller), "notify::focus-widget", G_CALLBACK (scroller_follow), scroller, G_CONNECT_SWAPPED);
}

static void
scroller_unrealized (GtkWidget *scroller)
{
  g_signal_handlers_disconnect_by_func (gtk_widget_get_root (scroller), scroller_follow, scroller);
}

GtkWidget *
focus_scroller_new (GtkWidget *takes, const char *name)
{
  GtkWidget *scroller = gtk_scrolled_window_new (), *viewport = gtk_viewport_new (NULL, NULL), *content = adw_bin_new ();

  gtk_viewport_set_scroll_to_focus (GTK_VIEWPORT (viewport), FALSE);
  /* Places are counted from it: it has neither margin nor padding of its own, and what it holds may have both. */
  adw_bin_set_child (ADW_BIN (content), takes);
  gtk_viewport_set_child (GTK_VIEWPORT (viewport), content);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), viewport);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_accessible_update_property (GTK_ACCESSIBLE (scroller), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  gtk_widget_set_name (scroller, "panel-scroller");
  gtk_widget_set_vexpand (scroller, TRUE);
  g_signal_connect (scroller, "realize", G_CALLBACK (scroller_realized), NULL);
  g_signal_connect (scroller, "unrealize", G_CALLBACK (scroller_unrealized), NULL);
  return scroller;
}
