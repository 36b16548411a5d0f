#include "trammel-config.h"
#include "app/covering-offer.h"
#include <glib/gi18n-lib.h>
#include "app/choice-list.h"
#include "figures/coverings.h"

/* What the popover shows: of the figures that it was opened with, which nothing changes while it is open. */
typedef struct {
  TrammelSession *session;
  Figures *figures;
  GArray *wheres;
  guint where;                  /* the one looked at */
  GtkWidget *popover, *column, *list, *worth;
} CoveringOffer;

static void
offer_free (gpointer data)
{
  CoveringOffer *self = data;

  g_array_unref (self->wheres);
  figures_unref (self->figures);
  g_object_unref (self->session);
  g_free (self);
}

static CoveringWhere
offer_where (const CoveringOffer *self)
{
  return g_array_index (self->wheres, CoveringWhere, self->where);
}

static GtkWidget *
dim_label (const char *words)
{
  GtkWidget *label = gtk_label_new (words);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 44);
  gtk_widget_add_css_class (label, "dim-label");
  return label;
}

static GtkWidget *
offer_row_top (const CoveringFigures *covering, Units units)
{
  g_autofree char *mass = units_mass (units, covering->mass_g);
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 18), *name = gtk_label_new (_(covering->covering->name));

  gtk_label_set_xalign (GTK_LABEL (name), 0);
  gtk_widget_set_hexpand (name, TRUE);
  gtk_box_append (GTK_BOX (box), name);
  gtk_box_append (GTK_BOX (box), gtk_label_new (mass));
  return box;
}

/* Its name and mass; beneath, what it does. */
static GtkWidget *
offer_row (const Coverings *coverings, const CoveringFigures *covering, Units units)
{
  g_autofree char *does = covering->present ? g_strdup (_("as it is now")) : covering_text (coverings, covering, units);
  GtkWidget *row = gtk_list_box_row_new (), *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);

  gtk_box_append (GTK_BOX (box), offer_row_top (covering, units));
  if (does != NULL)
    gtk_box_append (GTK_BOX (box), dim_label (does));
  gtk_widget_add_css_class (box, "list-piece");
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, _(covering->covering->name),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, does != NULL ? does : "", -1);
  return row;
}

static void
offer_show (CoveringOffer *self)
{
  const Units units = trammel_session_units (self->session);
  const Coverings coverings = coverings_of (self->figures, offer_where (self));
  g_autofree char *worth = coverings_text (&coverings, units);
  GtkWidget *row;

  while ((row = gtk_widget_get_first_child (self->list)) != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (self->list), row);
  for (size_t i = 0; i < coverings.count; i++)
    gtk_list_box_append (GTK_LIST_BOX (self->list), offer_row (&coverings, &coverings.of[i], units));
  gtk_label_set_label (GTK_LABEL (self->worth), worth != NULL ? worth : "");
  gtk_widget_set_visible (self->worth, worth != NULL);
}

static void
offer_looked_at (GtkDropDown *choice, GParamSpec *property, CoveringOffer *self)
{
  self->where = gtk_drop_down_get_selected (choice);
  offer_show (self);
}

static void
offer_chosen (GtkListBox *list, GtkListBoxRow *row, CoveringOffer *self)
{
  const Coverings coverings = coverings_of (self->figures, offer_where (self));
  const MaterialClass *covering = coverings.of[gtk_list_box_row_get_index (row)].covering;
  Aeroplane *covered = covering_chosen (self->figures, coverings.where, covering);
  g_autoptr (TrammelSession) session = g_object_ref (self->session);

  gtk_popover_popdown (GTK_POPOVER (self->popover));
  trammel_session_do (session, covered, _("Cover"));
}

static GtkWidget *
offer_choice (CoveringOffer *self)
{
  GtkStringList *names = gtk_string_list_new (NULL);
  GtkWidget *choice;

  for (guint i = 0; i < self->wheres->len; i++)
    gtk_string_list_append (names, covering_where_name (g_array_index (self->wheres, CoveringWhere, i)));
  choice = choice_list_new (G_LIST_MODEL (names));
  gtk_drop_down_set_selected (GTK_DROP_DOWN (choice), self->where);
  gtk_accessible_update_property (GTK_ACCESSIBLE (choice), GTK_ACCESSIBLE_PROPERTY_LABEL, _("What Is Covered"), -1);
  g_signal_connect (choice, "notify::selected", G_CALLBACK (offer_looked_at), self);
  return choice;
}

static GtkWidget *
offer_scroller (GtkWidget *list)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();

  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scroller), TRUE);
  gtk_scrolled_window_set_max_content_height (GTK_SCROLLED_WINDOW (scroller), 380);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), list);
  gtk_widget_set_size_request (scroller, 360, -1);
  return scroller;
}

/* The piece that is selected among all that can be looked at; their count where it is none of them. */
static guint
where_selected (const GArray *wheres, const char *id)
{
  guint i = 0;

  for (; i < wheres->len; i++) {
    const Piece *of = g_array_index (wheres, CoveringWhere, i).of;

    if (of != NULL && g_strcmp0 (of->id, id) == 0)
      break;
  }
  return i;
}

static CoveringOffer *
offer_new (TrammelSession *session)
{
  CoveringOffer *self = g_new0 (CoveringOffer, 1);

  self->session = g_object_ref (session);
  self->figures = figures_ref (trammel_session_figures (session));
  self->wheres = covering_wheres (self->figures);
  self->where = MIN (where_selected (self->wheres, selection_single (trammel_session_selection (session))), self->wheres->len - 1);
  self->popover = gtk_popover_new ();
  self->column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 8);
  self->list = gtk_list_box_new ();
  self->worth = dim_label (NULL);
  gtk_widget_add_css_class (self->worth, "popover-foot");
  return self;
}

/* Made anew each time: what is told depends on the aeroplane. */
static void
offer_open (GtkMenuButton *button, gpointer session)
{
  CoveringOffer *self = offer_new (session);

  gtk_list_box_set_selection_mode (GTK_LIST_BOX (self->list), GTK_SELECTION_NONE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->list), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Coverings"), -1);
  g_signal_connect (self->list, "row-activated", G_CALLBACK (offer_chosen), self);
  gtk_box_append (GTK_BOX (self->column), offer_choice (self));
  gtk_box_append (GTK_BOX (self->column), offer_scroller (self->list));
  gtk_box_append (GTK_BOX (self->column), self->worth);
  g_object_set_data_full (G_OBJECT (self->popover), "covering-offer", self, offer_free);
  gtk_popover_set_child (GTK_POPOVER (self->popover), self->column);
  offer_show (self);
  gtk_menu_button_set_popover (button, self->popover);
}

GtkWidget *
covering_offer_new (TrammelSession *session)
{
  g_autoptr (GArray) wheres = covering_wheres (trammel_session_figures (session));
  GtkWidget *button;

  if (where_selected (wheres, selection_single (trammel_session_selection (session))) == wheres->len)
    return NULL;
  button = gtk_menu_button_new ();
  gtk_menu_button_set_label (GTK_MENU_BUTTON (button), _("Compare Coverings…"));
  gtk_widget_set_tooltip_text (button, _("What each weighs, and what it does to the balance"));
  gtk_menu_button_set_create_popup_func (GTK_MENU_BUTTON (button), offer_open, g_object_ref (session), g_object_unref);
  return button;
}
