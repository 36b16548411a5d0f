#include "app/choice-list.h"

static GtkWidget *
find_below (GtkWidget *root, GType type)
{
  GtkWidget *found = g_type_is_a (G_OBJECT_TYPE (root), type) ? root : NULL;

  for (GtkWidget *child = gtk_widget_get_first_child (root); child != NULL && found == NULL; child = gtk_widget_get_next_sibling (child))
    found = find_below (child, type);
  return found;
}

/* A row of the list; NULL when it is not made. */
static GtkWidget *
row_at (GtkWidget *rows, guint at)
{
  GtkWidget *row = gtk_widget_get_first_child (rows);

  for (guint i = 0; row != NULL && i < at; i++)
    row = gtk_widget_get_next_sibling (row);
  return row;
}

/* Rows are made, and used again for other words, by the list: they are named whenever it opens. */
static void
rows_name (GtkWidget *rows)
{
  for (GtkWidget *row = gtk_widget_get_first_child (rows); row != NULL; row = gtk_widget_get_next_sibling (row)) {
    GtkWidget *words = find_below (row, GTK_TYPE_LABEL);

    if (words != NULL)
      gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, gtk_label_get_label (GTK_LABEL (words)), -1);
  }
}

static void
list_opened (GtkWidget *list, GtkWidget *popover)
{
  GtkWidget *rows = find_below (popover, GTK_TYPE_LIST_VIEW), *chosen = NULL;
  guint at;

  if (rows == NULL)
    return;
  g_object_get (list, "selected", &at, NULL);
  chosen = at == GTK_INVALID_LIST_POSITION ? NULL : row_at (rows, at);
  rows_name (rows);
  if (chosen != NULL)
    gtk_widget_grab_focus (chosen);
}

void
choice_list_attend (GtkWidget *list)
{
  GtkWidget *popover = find_below (list, GTK_TYPE_POPOVER);

  if (popover != NULL)
    g_signal_connect_object (popover, "map", G_CALLBACK (list_opened), list, G_CONNECT_AFTER | G_CONNECT_SWAPPED);
}

GtkWidget *
choice_list_new (GListModel *takes)
{
  GtkWidget *list = gtk_drop_down_new (takes, NULL);

  choice_list_attend (list);
  return list;
}

GtkWidget *
choice_list_new_of_words (const char *const words[])
{
  return choice_list_new (G_LIST_MODEL (gtk_string_list_new (words)));
}
