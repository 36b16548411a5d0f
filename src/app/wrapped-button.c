#include "app/wrapped-button.h"

GtkWidget *
wrapped_button_new (const char *words)
{
  GtkWidget *button = gtk_button_new_with_label (words);
  GtkLabel *label = GTK_LABEL (gtk_button_get_child (GTK_BUTTON (button)));

  gtk_label_set_wrap (label, TRUE);
  gtk_label_set_justify (label, GTK_JUSTIFY_CENTER);
  return button;
}
