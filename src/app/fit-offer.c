#include "trammel-config.h"
#include "app/fit-offer.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/caption.h"
#include "figures/unweighed.h"
#include "figures/usual-whole.h"

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

typedef struct {
  TrammelSession *session;
  GtkMenuButton *button;
  GtkWidget *list, *foot;
  GtkWidget *airframe;          /* whether to lay down the usual airframe first; NULL where it weighs something, or none can be laid down */
} Offer;

static bool
offer_builds (const Offer *self)
{
  return self->airframe != NULL && gtk_check_button_get_active (GTK_CHECK_BUTTON (self->airframe));
}

static void
offer_chosen (GtkListBox *list, GtkListBoxRow *row, Offer *self)
{
  g_autoptr (Catalogue) catalogue = catalogue_load (NULL);
  const UsualFit choice = (UsualFit) gtk_list_box_row_get_index (row);
  TrammelSession *session = self->session;
  Aeroplane *fitted = usual_fit_whole (trammel_session_aeroplane (session), catalogue, choice, offer_builds (self));

  gtk_menu_button_popdown (self->button);
  trammel_session_do (session, fitted, _("Usual Fit"));
}

static GtkWidget *
offer_label (const char *words, const char *css_class)
{
  GtkWidget *label = gtk_label_new (words);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  if (css_class != NULL)
    gtk_widget_add_css_class (label, css_class);
  return label;
}

/* A choice, and beneath it what of it is left out. */
static GtkWidget *
offer_words (const char *name, const char *left_out)
{
  GtkWidget *words = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);

  gtk_box_append (GTK_BOX (words), offer_label (name, NULL));
  if (left_out != NULL)
    gtk_box_append (GTK_BOX (words), caption_new (left_out));
  gtk_widget_set_hexpand (words, TRUE);
  return words;
}

static GtkWidget *
offer_row (const Offer *self, const Catalogue *catalogue, const Aeroplane *built, UsualFit choice)
{
  g_autoptr (Aeroplane) fitted = usual_fit (built, catalogue, choice, false);
  g_autofree char *mass = units_mass (trammel_session_units (self->session), parts_mass (fitted) - parts_mass (built));
  const char *left_out = usual_fit_lacks_fin (built, choice) ? _("No fin is drawn: the rudder's servo is left out.") : NULL;
  g_autofree char *description = left_out != NULL ? g_strdup_printf ("%s. %s", mass, left_out) : g_strdup (mass);
  GtkWidget *row = gtk_list_box_row_new (), *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 18);

  gtk_box_append (GTK_BOX (box), offer_words (usual_fit_name (choice), left_out));
  gtk_box_append (GTK_BOX (box), offer_label (mass, "dim-label"));
  gtk_widget_add_css_class (box, "list-piece");
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, usual_fit_name (choice),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, description, -1);
  return row;
}

/* What it would weigh depends on whether the airframe comes first: parts are chosen for what they are to carry. */
static void
offer_refill (Offer *self)
{
  const Aeroplane *now = trammel_session_aeroplane (self->session);
  g_autoptr (Catalogue) catalogue = catalogue_load (NULL);
  g_autoptr (Aeroplane) airframe = offer_builds (self) ? usual_airframe (now) : NULL;
  const Aeroplane *built = airframe != NULL ? airframe : now;
  g_autofree char *mass = units_mass (trammel_session_units (self->session), usual_all_up (built));
  g_autofree char *words = g_strdup_printf
    (_("Classes for a model of about %s all-up. Change each as you like; undo takes all away at once."), mass);
  GtkListBoxRow *row;

  while ((row = gtk_list_box_get_row_at_index (GTK_LIST_BOX (self->list), 0)) != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (self->list), GTK_WIDGET (row));
  for (UsualFit choice = 0; choice < USUAL_FIT_COUNT; choice++)
    gtk_list_box_append (GTK_LIST_BOX (self->list), offer_row (self, catalogue, built, choice));
  gtk_label_set_text (GTK_LABEL (self->foot), words);
}

const char *
fit_offer_airframe_words (void)
{
  return _("Wing, tail and body get the usual lines of wood and covering, and the battery goes to where it then balances");
}

/* On at first: parts alone balance far ahead of what they are built into. */
static GtkWidget *
offer_airframe (Offer *self)
{
  const Aeroplane *now = trammel_session_aeroplane (self->session);
  g_autoptr (Aeroplane) built = airframe_is_weighed (now) ? NULL : usual_airframe (now);
  GtkWidget *check;

  if (built == NULL)
    return NULL;
  g_autofree char *mass = units_mass (trammel_session_units (self->session), structures_mass (built));
  g_autofree char *words = g_strdup_printf (_("With the usual airframe, about %s"), mass);
  check = gtk_check_button_new_with_label (words);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (check), TRUE);
  gtk_widget_set_tooltip_text (check, fit_offer_airframe_words ());
  g_signal_connect_swapped (check, "toggled", G_CALLBACK (offer_refill), self);
  return check;
}

static GtkWidget *
offer_foot (void)
{
  GtkWidget *label = offer_label (NULL, "dim-label");

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 40);
  gtk_widget_add_css_class (label, "popover-foot");
  return label;
}

static GtkWidget *
offer_list (Offer *self)
{
  GtkWidget *list = gtk_list_box_new ();

  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list), GTK_SELECTION_NONE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (list), GTK_ACCESSIBLE_PROPERTY_LABEL, _("What Is to Be Controlled"), -1);
  g_signal_connect (list, "row-activated", G_CALLBACK (offer_chosen), self);
  return list;
}

/* Made anew each time: masses depend on what is drawn by then. */
static void
offer_choices (GtkMenuButton *button, gpointer data)
{
  GtkWidget *popover = gtk_popover_new (), *column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 8);
  Offer *self = g_new0 (Offer, 1);

  self->session = data;
  self->button = button;
  self->list = offer_list (self);
  self->foot = offer_foot ();
  self->airframe = offer_airframe (self);
  offer_refill (self);
  gtk_box_append (GTK_BOX (column), self->list);
  if (self->airframe != NULL)
    gtk_box_append (GTK_BOX (column), self->airframe);
  gtk_box_append (GTK_BOX (column), self->foot);
  gtk_popover_set_child (GTK_POPOVER (popover), column);
  g_object_set_data_full (G_OBJECT (popover), "trammel-offer", self, g_free);
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
