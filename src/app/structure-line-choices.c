#include "trammel-config.h"
#include "app/structure-line.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/piece-controls.h"
#include "document/material-class.h"
#include "figures/names.h"

/* The choices of the open line, and every line's header. */

/* Materials: nothing chosen where a density is typed without one. */

static void
material_show (GtkWidget *control, TrammelSession *session)
{
  const StructureItem *item = structure_line (session);
  const MaterialClass *class = item != NULL ? material_class_find (item->material) : NULL;

  gtk_drop_down_set_selected (GTK_DROP_DOWN (control), class != NULL ? (guint) (class - material_classes ()) : GTK_INVALID_LIST_POSITION);
}

/* A material tells its density, and forgets the one that was typed or weighed of another. */
static void
material_chosen (GtkWidget *control)
{
  TrammelSession *session = piece_control_choosing (control);
  const StructureItem *item = session != NULL ? structure_line (session) : NULL;
  const guint chosen = gtk_drop_down_get_selected (GTK_DROP_DOWN (control));
  StructureItem next;

  if (item == NULL || chosen == GTK_INVALID_LIST_POSITION || g_strcmp0 (item->material, material_classes ()[chosen].word) == 0)
    return;
  next = *item;
  next.material = (char *) material_classes ()[chosen].word;
  next.density = next.area_density = next.density_sigma = NAN;
  next.density_weighed = false;
  trammel_session_do (session, structure_line_changed (session, &next), _("Change Material"));
}

GtkWidget *
structure_line_material (TrammelSession *session)
{
  GtkStringList *names = gtk_string_list_new (NULL);

  for (const MaterialClass *class = material_classes (); class->word != NULL; class++)
    gtk_string_list_append (names, _(class->name));
  return piece_choice_control (session, names, _("Material"), material_show, material_chosen);
}

/* What is traced */

typedef struct { ItemTraced of; const char *name; } Measure;
static const Measure of_surface[] = {
  { TRACED_NONE, N_("Its Own Size") }, { TRACED_PLAN, N_("Area Traced") }, { TRACED_SKIN, N_("Both Sides") }, { TRACED_RIBS, N_("Ribs") },
  { TRACED_SPAN, N_("Span") }, { 0, NULL } };
static const Measure of_body[] = {
  { TRACED_NONE, N_("Its Own Size") }, { TRACED_PLAN, N_("Area from Above") }, { TRACED_SKIN, N_("All Round") },
  { TRACED_FORMERS, N_("Formers") }, { TRACED_LENGTH, N_("Length of Body") }, { 0, NULL } };

static const Measure *
measures_of (TrammelSession *session)
{
  return trammel_session_selected_surface (session) != NULL ? of_surface : of_body;
}

static void
measure_show (GtkWidget *control, TrammelSession *session)
{
  const StructureItem *item = structure_line (session);
  const Measure *measures = measures_of (session);
  guint at = GTK_INVALID_LIST_POSITION;

  for (guint i = 0; item != NULL && measures[i].name != NULL; i++)
    at = measures[i].of == item->of ? i : at;
  gtk_drop_down_set_selected (GTK_DROP_DOWN (control), at);
}

static void
measure_chosen (GtkWidget *control)
{
  TrammelSession *session = piece_control_choosing (control);
  const StructureItem *item = session != NULL ? structure_line (session) : NULL;
  const guint chosen = gtk_drop_down_get_selected (GTK_DROP_DOWN (control));
  StructureItem next;

  if (item == NULL || chosen == GTK_INVALID_LIST_POSITION || item->of == measures_of (session)[chosen].of)
    return;
  next = *item;
  next.of = measures_of (session)[chosen].of;
  trammel_session_do (session, structure_line_changed (session, &next), _("Change Line"));
}

GtkWidget *
structure_line_measure (TrammelSession *session)
{
  GtkStringList *names = gtk_string_list_new (NULL);

  for (const Measure *measure = measures_of (session); measure->name != NULL; measure++)
    gtk_string_list_append (names, _(measure->name));
  return piece_choice_control (session, names, _("Goes by"), measure_show, measure_chosen);
}

/* A line's header */

static int
header_place (GtkWidget *header)
{
  return GPOINTER_TO_INT (g_object_get_data (G_OBJECT (header), "place"));
}

static void
header_show (GtkWidget *header, TrammelSession *session)
{
  const StructureFigures *figures = structure_selected_figures (session);
  const int place = header_place (header);
  GtkWidget *box = gtk_button_get_child (GTK_BUTTON (header));
  GtkWidget *mass = gtk_widget_get_last_child (box);
  GtkLabel *name = GTK_LABEL (gtk_widget_get_prev_sibling (mass));
  g_autofree char *grams = NULL, *said = NULL;

  if (figures == NULL || place >= (int) figures->structure->item_count)
    return;
  grams = units_mass (trammel_session_units (session), g_array_index (figures->items_g, double, place));
  gtk_label_set_text (name, structure_item_name (&figures->structure->items[place]));
  gtk_label_set_text (GTK_LABEL (mass), grams);
  said = g_strdup_printf ("%s, %s", gtk_label_get_text (name), grams);
  gtk_accessible_update_property (GTK_ACCESSIBLE (header), GTK_ACCESSIBLE_PROPERTY_LABEL, said, -1);
  gtk_accessible_update_state (GTK_ACCESSIBLE (header), GTK_ACCESSIBLE_STATE_EXPANDED, place == structure_line_open (session), -1);
}

static void
header_clicked (GtkWidget *header, TrammelSession *session)
{
  structure_line_press (session, header_place (header));
}

GtkWidget *
structure_line_header (TrammelSession *session, int place)
{
  GtkWidget *header = gtk_button_new (), *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *name = gtk_label_new (NULL), *mass = gtk_label_new (NULL);
  const bool open = place == structure_line_open (session);

  gtk_label_set_xalign (GTK_LABEL (name), 0);
  gtk_label_set_ellipsize (GTK_LABEL (name), PANGO_ELLIPSIZE_END);
  gtk_widget_set_hexpand (name, TRUE);
  gtk_widget_add_css_class (mass, "dim-label");
  gtk_box_append (GTK_BOX (box), gtk_image_new_from_icon_name (open ? "pan-down-symbolic" : "pan-end-symbolic"));
  gtk_box_append (GTK_BOX (box), name);
  gtk_box_append (GTK_BOX (box), mass);
  gtk_widget_add_css_class (header, "flat");
  gtk_button_set_child (GTK_BUTTON (header), box);
  g_object_set_data (G_OBJECT (header), "place", GINT_TO_POINTER (place));
  g_signal_connect_object (header, "clicked", G_CALLBACK (header_clicked), session, 0);
  piece_control_adopt (header, session, header_show);
  return header;
}
