#include "trammel-config.h"
#include "app/cautions-card.h"
#include <glib/gi18n-lib.h>
#include "figures/cautions.h"

static void
card_understood (GtkWidget *card, GtkButton *button)
{
  TrammelSettings *settings = g_object_get_data (G_OBJECT (card), "settings");

  trammel_settings_set_flag (settings, CAUTIONS_READ, true);
  /* The button that had the keyboard is gone. */
  gtk_widget_activate_action (card, "win.focus-sheet", NULL);
}

/* Another window's card goes with this one's. */
static void
card_follow (GtkWidget *card, TrammelSettings *settings)
{
  gtk_widget_set_visible (card, !trammel_settings_flag (settings, CAUTIONS_READ));
}

static GtkWidget *
card_label (const char *text)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 62);
  return label;
}

/* One paragraph, so that the card leaves the sheet as much room as it can; in a low window it scrolls beside its button. */
static GtkWidget *
card_build_words (void)
{
  GtkWidget *words = gtk_box_new (GTK_ORIENTATION_VERTICAL, 3), *scrolled = gtk_scrolled_window_new ();
  GtkWidget *heading = card_label (_("Before You Build and Fly"));
  g_autoptr (GString) paragraph = g_string_new (NULL);

  for (size_t i = 0; cautions_sentence (i) != NULL; i++)
    g_string_append_printf (paragraph, i == 0 ? "%s" : " %s", cautions_sentence (i));
  gtk_widget_add_css_class (heading, "heading");
  gtk_box_append (GTK_BOX (words), heading);
  gtk_box_append (GTK_BOX (words), card_label (paragraph->str));
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_width (GTK_SCROLLED_WINDOW (scrolled), TRUE);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scrolled), TRUE);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (scrolled), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Before You Build and Fly"), -1);
  gtk_widget_set_hexpand (scrolled, TRUE);
  return scrolled;
}

GtkWidget *
cautions_card_new (TrammelSettings *settings)
{
  GtkWidget *card, *button;

  if (trammel_settings_flag (settings, CAUTIONS_READ))
    return NULL;
  card = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);
  button = gtk_button_new_with_mnemonic (_("_Understood"));
  gtk_widget_add_css_class (card, "card");
  gtk_widget_add_css_class (card, "cautions");
  gtk_widget_set_valign (button, GTK_ALIGN_END);
  gtk_box_append (GTK_BOX (card), card_build_words ());
  gtk_box_append (GTK_BOX (card), button);
  g_object_set_data_full (G_OBJECT (card), "settings", g_object_ref (settings), g_object_unref);
  g_signal_connect_object (button, "clicked", G_CALLBACK (card_understood), card, G_CONNECT_SWAPPED);
  g_signal_connect_object (settings, "changed", G_CALLBACK (card_follow), card, G_CONNECT_SWAPPED);
  return card;
}
