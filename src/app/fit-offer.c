#include "trammel-config.h"
#include "app/fit-offer.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/usual-fit.h"

bool
fit_offer_is_useful (const Aeroplane *aeroplane)
{
  return aeroplane_count (aeroplane, PIECE_PART) == 0 && !isnan (usual_all_up (aeroplane));
}

static TrammelSession *
offer_session (gpointer button)
{
  return g_object_get_data (G_OBJECT (button), "trammel-session");
}

static void
offer_chosen (GtkListBox *list, GtkListBoxRow *row, GtkMenuButton *button)
{
  g_autoptr (Catalogue) catalogue = catalogue_load (NULL);
  const UsualFit choice = (UsualFit) gtk_list_box_row_get_index (row);
  TrammelSession *session = offer_session (button);

  gtk_menu_button_popdown (button);
  trammel_session_do (session, usual_fit (trammel_session_aeroplane (session), catalogue, choice, false), _("Usual Fit"));
}

static GtkWidget *
offer_row (TrammelSession *session, const Catalogue *catalogue, UsualFit choice)
{
  const Aeroplane *now = trammel_session_aeroplane (session);
  g_autoptr (Aeroplane) fitted = usual_fit (now, catalogue, choice, false);
  g_autofree char *mass = units_mass (trammel_session_units (session), parts_mass (fitted) - parts_mass (now));
  GtkWidget *row = gtk_list_box_row_new (), *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 18);
  GtkWidget *name = gtk_label_new (usual_fit_name (choice)), *added = gtk_label_new (mass);

  gtk_label_set_xalign (GTK_LABEL (name), 0);
  gtk_widget_set_hexpand (name, TRUE);
  gtk_widget_add_css_class (added, "dim-label");
  gtk_box_append (GTK_BOX (box), name);
  gtk_box_append (GTK_BOX (box), added);
  gtk_widget_add_css_class (box, "list-piece");
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, usual_fit_name (choice),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, mass, -1);
  return row;
}

static GtkWidget *
offer_foot (TrammelSession *session)
{
  g_autofree char *mass = units_mass (trammel_session_units (session), usual_all_up (trammel_session_aeroplane (session)));
  g_autofree char *words = g_strdup_printf
    (_("Classes for a model of about %s all-up. Change each as you like; undo takes all away at once."), mass);
  GtkWidget *label = gtk_label_new (words);

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 40);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_add_css_class (label, "dim-label");
  return label;
}

/* Made anew each time: masses depend on what is drawn by then. */
static void
offer_choices (GtkMenuButton *button, gpointer data)
{
  TrammelSession *session = data;
  g_autoptr (Catalogue) catalogue = catalogue_load (NULL);
  GtkWidget *popover = gtk_popover_new (), *column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 8), *list = gtk_list_box_new ();

  for (UsualFit choice = 0; choice < USUAL_FIT_COUNT; choice++)
    gtk_list_box_append (GTK_LIST_BOX (list), offer_row (session, catalogue, choice));
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list), GTK_SELECTION_NONE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (list), GTK_ACCESSIBLE_PROPERTY_LABEL, _("What Is to Be Controlled"), -1);
  g_signal_connect (list, "row-activated", G_CALLBACK (offer_chosen), button);
  gtk_box_append (GTK_BOX (column), list);
  gtk_box_append (GTK_BOX (column), offer_foot (session));
  gtk_popover_set_child (GTK_POPOVER (popover), column);
  gtk_menu_button_set_popover (button, popover);
}

static void
offer_follow (GtkWidget *button)
{
  gtk_widget_set_visible (button, fit_offer_is_useful (trammel_session_settled (offer_session (button))));
}

GtkWidget *
fit_offer_new (TrammelSession *session)
{
  GtkWidget *button = gtk_menu_button_new ();

  g_object_set_data_full (G_OBJECT (button), "trammel-session", g_object_ref (session), g_object_unref);
  gtk_menu_button_set_label (GTK_MENU_BUTTON (button), _("Usual Fit…"));
  gtk_widget_set_tooltip_text (button, _("Everything such a model carries, each in its usual place"));
  gtk_menu_button_set_direction (GTK_MENU_BUTTON (button), GTK_ARROW_UP);
  gtk_menu_button_set_create_popup_func (GTK_MENU_BUTTON (button), offer_choices, session, NULL);
  g_signal_connect_object (session, "changed", G_CALLBACK (offer_follow), button, G_CONNECT_SWAPPED);
  offer_follow (button);
  return button;
}

/* Whether all of it is in the window, which a panel that slides in is not yet. */
static bool
is_in_sight (GtkWidget *button)
{
  GtkWidget *window = GTK_WIDGET (gtk_widget_get_root (button));
  graphene_rect_t bounds;

  return window != NULL && gtk_widget_get_mapped (button) && gtk_widget_get_width (button) > 0
         && gtk_widget_compute_bounds (button, window, &bounds) && bounds.origin.x >= 0
         && bounds.origin.x + bounds.size.width <= (float) gtk_widget_get_width (window);
}

/* A popover needs a place to point at. A panel that does not come within some seconds is not coming. */
static gboolean
offer_pop_up (GtkWidget *button, GdkFrameClock *clock, gpointer frames)
{
  if (!is_in_sight (button))
    return ++*(int *) frames < 300 ? G_SOURCE_CONTINUE : G_SOURCE_REMOVE;
  gtk_menu_button_popup (GTK_MENU_BUTTON (button));
  return G_SOURCE_REMOVE;
}

void
fit_offer_open (GtkWidget *button)
{
  gtk_widget_add_tick_callback (button, offer_pop_up, g_new0 (int, 1), g_free);
}
