#include "app/start-room.h"

/* Of the height: what the card takes at most. */
static const double MOST_FOR_CARD = 0.55;

static int
wanted (GtkWidget *widget, GtkOrientation orientation, int for_size)
{
  int size;

  gtk_widget_measure (widget, orientation, for_size, NULL, &size, NULL, NULL);
  return size;
}

static GtkWidget *
shown_card (GtkWidget *table)
{
  for (GtkWidget *child = gtk_widget_get_first_child (table); child != NULL; child = gtk_widget_get_next_sibling (child))
    if (gtk_widget_has_css_class (child, "cautions"))
      return gtk_widget_get_visible (child) ? child : NULL;
  return NULL;
}

/* As wide as it likes to be, as high as it then is, at most `room`; across in the middle. */
static GdkRectangle
place_in (GtkWidget *widget, int width, int room)
{
  const int own = MIN (width, wanted (widget, GTK_ORIENTATION_HORIZONTAL, -1));

  return (GdkRectangle) { (width - own) / 2, 0, own, MIN (room, wanted (widget, GTK_ORIENTATION_VERTICAL, own)) };
}

static gboolean
start_room_place (GtkOverlay *table, GtkWidget *widget, GdkRectangle *place, GtkWidget *page)
{
  const int width = gtk_widget_get_width (GTK_WIDGET (table)), height = gtk_widget_get_height (GTK_WIDGET (table));
  GtkWidget *card = shown_card (GTK_WIDGET (table));
  const GdkRectangle below = card != NULL ? place_in (card, width, (int) (MOST_FOR_CARD * height)) : (GdkRectangle) { 0, 0, 0, 0 };

  if (widget == card) {
    *place = below;
    place->y = height - below.height;
    return TRUE;
  }
  if (widget != page)
    return FALSE;
  *place = place_in (page, width, height - below.height);
  place->y = (height - below.height - place->height) / 2;
  return TRUE;
}

void
start_room_share (GtkOverlay *table, GtkWidget *page)
{
  g_signal_connect_object (table, "get-child-position", G_CALLBACK (start_room_place), page, 0);
}
