#include "app/row-names.h"
#include <adwaita.h>
#include "app/choice-list.h"

/* The title without the sign of its access key. */
static char *
row_title (AdwPreferencesRow *row)
{
  g_auto (GStrv) pieces = g_strsplit (adw_preferences_row_get_title (row), "_", -1);

  return g_strjoinv ("", pieces);
}

static void
widget_name (GtkWidget *widget, const char *name)
{
  if (name != NULL && *name != '\0')
    gtk_accessible_update_property (GTK_ACCESSIBLE (widget), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
}

static void
names_give (GtkWidget *widget, const char *row, const char *lists)
{
  g_autofree char *title = ADW_IS_PREFERENCES_ROW (widget) ? row_title (ADW_PREFERENCES_ROW (widget)) : NULL;

  if (title != NULL)
    row = title;
  if (ADW_IS_COMBO_ROW (widget))
    choice_list_attend (widget);
  if (GTK_IS_LIST_BOX (widget) || GTK_IS_SCROLLED_WINDOW (widget))
    widget_name (widget, lists);
  else if (title != NULL || GTK_IS_LIST_VIEW (widget) || GTK_IS_TEXT (widget) || GTK_IS_SPIN_BUTTON (widget) || GTK_IS_SWITCH (widget))
    widget_name (widget, row);
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    names_give (child, row, lists);
}

void
row_names_give (GtkWidget *root, const char *lists)
{
  names_give (root, NULL, lists);
}
