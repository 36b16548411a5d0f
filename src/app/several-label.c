#include "trammel-config.h"
#include "app/several-label.h"
#include <glib/gi18n-lib.h>

GtkWidget *
several_label_new (guint count)
{
  g_autofree char *words = g_strdup_printf (ngettext ("%u thing selected", "%u things selected", count), count);
  GtkWidget *label = gtk_label_new (words);

  gtk_widget_add_css_class (label, "dim-label");
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  return label;
}
