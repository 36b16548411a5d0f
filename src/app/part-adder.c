#include "trammel-config.h"
#include "app/part-adder.h"
#include <glib/gi18n-lib.h>
#include "app/part-room.h"

/* Where a class usually stands: a share of the way from the nose (0) to the wing's leading edge (1) and beyond (the wing's root chord is
 * the next whole step). Common practice, no source. */
static const struct { const char *word; double share; } places[] = {
  { "propeller",  0.00 }, { "spinner",  0.00 }, { "motor",      0.20 }, { "controller", 0.50 },
  { "battery",    0.75 }, { "ballast",  0.10 }, { "receiver",   1.35 }, { "servo",      1.55 },
  { "cowl",       0.20 }, { "canopy",   1.20 }, { "pilot",      1.25 }, { "undercarriage", 1.05 },
};

typedef struct { double nose, leading, trailing; } PartReach;

static PartReach
part_reach (const Aeroplane *aeroplane)
{
  const Surface *wing = aeroplane_reference_wing (aeroplane);
  const Body *body = aeroplane_count (aeroplane, PIECE_BODY) > 0 ? aeroplane_body (aeroplane, 0) : NULL;
  PartReach room = { 0, 100, 200 };

  if (wing != NULL) {
    room.leading = outline_node (wing->outline, 0).x;
    room.trailing = outline_node (wing->outline, outline_node_count (wing->outline) - 1).x;
  }
  if (body != NULL && body->outline != NULL)
    room.nose = outline_bounds (body->outline).min.x;
  else
    room.nose = MIN (0, room.leading);
  return room;
}

static double
part_usual_x (const Aeroplane *aeroplane, const char *word)
{
  const PartReach room = part_reach (aeroplane);
  double share = 1.2;

  for (size_t i = 0; i < G_N_ELEMENTS (places); i++)
    if (g_str_equal (places[i].word, word))
      share = places[i].share;
  if (share <= 1)
    return round (room.nose + share * (room.leading - room.nose));
  return round (room.leading + (share - 1) * (room.trailing - room.leading));
}

Aeroplane *
part_adder_with (const Aeroplane *aeroplane, const char *class_word, char **id)
{
  const PartClass *class = part_class_find (class_word);
  Part *part;

  if (class == NULL)
    return NULL;
  *id = aeroplane_free_id (aeroplane, class->word);
  part = part_new (*id, class->word);
  part->mass = class->mass;
  part->length = class->length;
  part->width = class->width;
  part->height = class->height;
  part->x = part_room_x (aeroplane, class, part_usual_x (aeroplane, class->word));
  return aeroplane_with_added (aeroplane, &part->piece);
}

typedef struct {
  TrammelSession *session;
  void (*chosen) (gpointer data, const char *word);
  gpointer data;
  GtkMenuButton *button;
} PartAdder;

static void
part_adder_free (gpointer data)
{
  PartAdder *adder = data;

  g_object_unref (adder->session);
  g_free (adder);
}

static void
part_adder_chosen (GtkListBox *list, GtkListBoxRow *row, gpointer data)
{
  PartAdder *adder = data;
  const PartClass *class = part_classes () + gtk_list_box_row_get_index (row);
  g_autofree char *id = NULL;
  Aeroplane *next = part_adder_with (trammel_session_aeroplane (adder->session), class->word, &id);

  gtk_menu_button_popdown (adder->button);
  trammel_session_do (adder->session, next, _("Add Part"));
  trammel_session_select (adder->session, selection_of (id));
  if (adder->chosen != NULL)
    adder->chosen (adder->data, class->word);
}

static GtkWidget *
part_adder_row (const PartClass *class, Units units)
{
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);
  g_autofree char *mass = units_mass (units, class->mass);
  GtkWidget *name = gtk_label_new (_(class->name)), *grams = gtk_label_new (mass);

  gtk_label_set_xalign (GTK_LABEL (name), 0);
  gtk_widget_set_hexpand (name, TRUE);
  gtk_widget_add_css_class (grams, "dim-label");
  gtk_box_append (GTK_BOX (box), name);
  gtk_box_append (GTK_BOX (box), grams);
  gtk_widget_add_css_class (box, "list-piece");
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, _(class->name), -1);
  return row;
}

static GtkWidget *
part_adder_list (PartAdder *adder)
{
  const Units units = trammel_session_units (adder->session);
  GtkWidget *list = gtk_list_box_new ();

  for (const PartClass *class = part_classes (); class->word != NULL; class++)
    gtk_list_box_append (GTK_LIST_BOX (list), part_adder_row (class, units));
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list), GTK_SELECTION_NONE);
  g_signal_connect (list, "row-activated", G_CALLBACK (part_adder_chosen), adder);
  return list;
}

/* The list is made anew each time it opens: it speaks in the units of the moment, and at the start nobody waits for it. */
static void
part_adder_open (GtkMenuButton *button, gpointer data)
{
  GtkWidget *popover = gtk_popover_new (), *scroller = gtk_scrolled_window_new ();

  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scroller), TRUE);
  gtk_scrolled_window_set_max_content_height (GTK_SCROLLED_WINDOW (scroller), 420);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), part_adder_list (data));
  gtk_widget_set_size_request (scroller, 240, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (scroller), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Classes of Parts"), -1);
  gtk_popover_set_child (GTK_POPOVER (popover), scroller);
  gtk_menu_button_set_popover (button, popover);
}

GtkWidget *
part_adder_new (TrammelSession *session, void (*chosen) (gpointer data, const char *word), gpointer data)
{
  GtkWidget *button = gtk_menu_button_new ();
  PartAdder *adder = g_new0 (PartAdder, 1);

  *adder = (PartAdder) { g_object_ref (session), chosen, data, GTK_MENU_BUTTON (button) };
  gtk_menu_button_set_create_popup_func (GTK_MENU_BUTTON (button), part_adder_open, adder, part_adder_free);
  gtk_menu_button_set_label (GTK_MENU_BUTTON (button), _("Add a Part"));
  return button;
}
