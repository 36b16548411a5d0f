#include "app/message-start.h"

/* One at a time is shown of the two rows of buttons, and which is not known before the dialog has its width: in the row of one beneath the other the
 * last response stands first, and would have the keyboard. */
static void
button_shown (GtkWidget *button)
{
  gtk_widget_grab_focus (button);
  /* Who answers by keys sees which answer Return gives. */
  gtk_window_set_focus_visible (GTK_WINDOW (gtk_widget_get_root (button)), TRUE);
}

static void
buttons_begin_at (GtkWidget *widget, const char *label)
{
  if (GTK_IS_BUTTON (widget) && g_strcmp0 (gtk_button_get_label (GTK_BUTTON (widget)), label) == 0)
    g_signal_connect_after (widget, "map", G_CALLBACK (button_shown), NULL);
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    buttons_begin_at (child, label);
}

void
message_start_at (AdwMessageDialog *dialog, const char *response)
{
  adw_message_dialog_set_default_response (dialog, response);
  buttons_begin_at (GTK_WIDGET (dialog), adw_message_dialog_get_response_label (dialog, response));
}
