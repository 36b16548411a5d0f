#include "trammel-config.h"
#include "app/start-page.h"
#include <glib/gi18n-lib.h>

static GtkWidget *
start_button (const char *label, const char *action, const char *style)
{
  GtkWidget *button = gtk_button_new_with_mnemonic (label);

  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), action);
  if (style != NULL)
    gtk_widget_add_css_class (button, style);
  return button;
}

GtkWidget *
start_page_new (void)
{
  GtkWidget *page = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12), *scrolled = gtk_scrolled_window_new ();
  GtkWidget *heading = gtk_label_new (_("Where Must It Balance?"));
  GtkWidget *example = start_button (_("Look at the _Example"), "app.open-example", "flat");

  gtk_actionable_set_action_target (GTK_ACTIONABLE (example), "s", "saltmarsh-racer");
  gtk_widget_set_name (page, "start-page");
  gtk_widget_add_css_class (page, "start-page");
  gtk_widget_add_css_class (heading, "title-1");
  gtk_label_set_wrap (GTK_LABEL (heading), TRUE);
  gtk_label_set_justify (GTK_LABEL (heading), GTK_JUSTIFY_CENTER);
  gtk_widget_set_margin_bottom (heading, 12);
  gtk_widget_set_margin_top (example, 12);
  gtk_box_append (GTK_BOX (page), heading);
  gtk_box_append (GTK_BOX (page), start_button (_("Open a _Plan…"), "win.open-plan", "suggested-action"));
  gtk_box_append (GTK_BOX (page), start_button (_("Start from _Numbers…"), "win.start-from-numbers", NULL));
  gtk_box_append (GTK_BOX (page), start_button (_("_Draw an Outline"), "win.draw-outline", NULL));
  gtk_box_append (GTK_BOX (page), start_button (_("Empty _Sheet"), "win.empty-sheet", NULL));
  gtk_box_append (GTK_BOX (page), example);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_width (GTK_SCROLLED_WINDOW (scrolled), TRUE);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scrolled), TRUE);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), page);
  gtk_accessible_update_property (GTK_ACCESSIBLE (scrolled), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Ways to Start"), -1);
  return scrolled;
}
