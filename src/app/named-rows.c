#include "app/named-rows.h"

static GtkWidget *
find_below (GtkWidget *root, GType type)
{
  GtkWidget *found = g_type_is_a (G_OBJECT_TYPE (root), type) ? root : NULL;

  for (GtkWidget *child = gtk_widget_get_first_child (root); child != NULL && found == NULL; child = gtk_widget_get_next_sibling (child))
    found = find_below (child, type);
  return found;
}

/* Rows are made, and used again for other words, by the list: they are named whenever it opens. */
static void
name_rows (GtkWidget *popover, gpointer nothing)
{
  GtkWidget *rows = find_below (popover, GTK_TYPE_LIST_VIEW);

  for (GtkWidget *row = rows != NULL ? gtk_widget_get_first_child (rows) : NULL; row != NULL; row = gtk_widget_get_next_sibling (row)) {
    GtkWidget *words = find_below (row, GTK_TYPE_LABEL);

    if (words != NULL)
      gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, gtk_label_get_label (GTK_LABEL (words)), -1);
  }
}

void
named_rows_of (GtkDropDown *list)
{
  GtkWidget *popover = find_below (GTK_WIDGET (list), GTK_TYPE_POPOVER);

  if (popover != NULL)
    g_signal_connect_after (popover, "map", G_CALLBACK (name_rows), NULL);
}
