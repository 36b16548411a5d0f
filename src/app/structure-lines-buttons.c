#include "trammel-config.h"
#include "app/structure-line.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/covering-offer.h"
#include "app/piece-controls.h"
#include "app/sheet-weighing.h"
#include "app/wrapped-button.h"
#include "document/changes.h"
#include "document/material-class.h"
#include "figures/usual-lines.h"

/* What is done to whole lines. */

static GtkWidget *
button_of (TrammelSession *session, const char *words, GCallback clicked)
{
  GtkWidget *button = wrapped_button_new (words);

  g_signal_connect_object (button, "clicked", clicked, session, G_CONNECT_SWAPPED);
  return button;
}

/* `second` may be NULL. */
static GtkWidget *
row_of (GtkOrientation orientation, GtkWidget *first, GtkWidget *second)
{
  GtkWidget *row = gtk_box_new (orientation, 8);

  gtk_widget_add_css_class (row, "field");
  gtk_widget_set_margin_top (row, 6);
  gtk_widget_set_margin_bottom (row, 6);
  gtk_box_set_homogeneous (GTK_BOX (row), second != NULL);
  gtk_box_append (GTK_BOX (row), first);
  gtk_widget_set_hexpand (first, TRUE);
  if (second != NULL)
    gtk_box_append (GTK_BOX (row), second);
  return row;
}

static void
line_remove (TrammelSession *session)
{
  const Structure *structure = structure_selected (session);
  const int place = structure_line_open (session);

  if (place < 0)
    return;
  structure_line_set_open (session, -1);
  trammel_session_do (session, change_structure_item_removed (trammel_session_aeroplane (session), structure->piece.id, (size_t) place),
                      _("Remove Line"));
}

GtkWidget *
structure_line_buttons (TrammelSession *session)
{
  const StructureItem *item = structure_line (session);
  GtkWidget *remove = button_of (session, _("Remove Line"), G_CALLBACK (line_remove));

  if (item != NULL && structure_line_kind (item) == LINE_SOLID)
    return row_of (GTK_ORIENTATION_VERTICAL, sheet_weighing_new (session), remove);
  return row_of (GTK_ORIENTATION_HORIZONTAL, remove, NULL);
}

static void
lines_lay_down (TrammelSession *session)
{
  const char *of = selection_single (trammel_session_selection (session));

  structure_line_set_open (session, -1);
  trammel_session_do (session, usual_lines_laid (trammel_session_aeroplane (session), of), _("Lay Down the Usual Lines"));
}

/* Adding one: by its material, or as pieces, or glue. */

/* What the list offers behind the materials. */
enum { OTHER_PIECES, OTHER_GLUE, OTHERS };

static const char *
other_name (int other)
{
  return other == OTHER_GLUE ? _("Glue") : _("Pieces, by What They Weigh");
}

/* A beginning that a hand can see and change: a sheet of 1/16 in as large as what is traced, covering all round. */
static StructureItem
line_of_material (const MaterialClass *material, bool of_surface)
{
  StructureItem item = structure_item (NULL);

  item.material = g_strdup (material->word);
  item.of = isnan (material->density) || !of_surface ? TRACED_SKIN : TRACED_PLAN;
  if (!isnan (material->density))
    item.thickness = 25.4 / 16;
  return item;
}

static StructureItem
line_of_other (int other)
{
  StructureItem item = structure_item (other == OTHER_GLUE ? _("Glue") : _("Pieces"));

  if (other == OTHER_GLUE)
    item.of_others = 0.08;
  else
    item.mass = 1;
  return item;
}

static guint
material_count (void)
{
  guint count = 0;

  while (material_classes ()[count].word != NULL)
    count++;
  return count;
}

static void
line_chosen (GtkListBox *list, GtkListBoxRow *row, TrammelSession *session)
{
  const guint chosen = (guint) gtk_list_box_row_get_index (row), count = material_count ();
  const bool of_surface = trammel_session_selected_surface (session) != NULL;
  const char *of = selection_single (trammel_session_selection (session));
  StructureItem item = chosen < count ? line_of_material (&material_classes ()[chosen], of_surface)
                                      : line_of_other ((int) (chosen - count));
  const Structure *old = structure_selected (session);

  gtk_popover_popdown (GTK_POPOVER (gtk_widget_get_ancestor (GTK_WIDGET (list), GTK_TYPE_POPOVER)));
  if (old != NULL)
    structure_line_set_open (session, (int) old->item_count);
  trammel_session_do (session, change_structure_item_added (trammel_session_aeroplane (session), of, &item), _("Add Line"));
  structure_item_clear (&item);
}

static GtkWidget *
choice_row (const char *words, const char *remark)
{
  GtkWidget *row = gtk_list_box_row_new (), *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);
  GtkWidget *name = gtk_label_new (words), *beside = gtk_label_new (remark);

  gtk_label_set_xalign (GTK_LABEL (name), 0);
  gtk_widget_set_hexpand (name, TRUE);
  gtk_widget_add_css_class (beside, "dim-label");
  gtk_box_append (GTK_BOX (box), name);
  gtk_box_append (GTK_BOX (box), beside);
  gtk_widget_add_css_class (box, "list-piece");
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, words, -1);
  return row;
}

static GtkWidget *
choices_list (TrammelSession *session)
{
  GtkWidget *list = gtk_list_box_new ();

  for (const MaterialClass *class = material_classes (); class->word != NULL; class++) {
    g_autofree char *remark = isnan (class->density) ? g_strdup_printf (_("%.0f g/m²"), class->area_density)
                                                     : g_strdup_printf (_("%.0f kg/m³"), class->density);
    gtk_list_box_append (GTK_LIST_BOX (list), choice_row (_(class->name), remark));
  }
  for (int other = 0; other < OTHERS; other++)
    gtk_list_box_append (GTK_LIST_BOX (list), choice_row (other_name (other), NULL));
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list), GTK_SELECTION_NONE);
  g_signal_connect_object (list, "row-activated", G_CALLBACK (line_chosen), session, 0);
  return list;
}

static void
choices_open (GtkMenuButton *button, gpointer session)
{
  GtkWidget *popover = gtk_popover_new (), *scroller = gtk_scrolled_window_new ();

  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scroller), TRUE);
  gtk_scrolled_window_set_max_content_height (GTK_SCROLLED_WINDOW (scroller), 420);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), choices_list (session));
  gtk_widget_set_size_request (scroller, 330, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (scroller), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Materials"), -1);
  gtk_popover_set_child (GTK_POPOVER (popover), scroller);
  gtk_menu_button_set_popover (button, popover);
}

/* What is done to all lines, and beneath it which covering they could have. */
static GtkWidget *
with_coverings (TrammelSession *session, GtkWidget *row)
{
  GtkWidget *coverings = covering_offer_new (session), *rows;

  if (coverings == NULL)
    return row;
  rows = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  gtk_box_append (GTK_BOX (rows), row);
  gtk_box_append (GTK_BOX (rows), row_of (GTK_ORIENTATION_HORIZONTAL, coverings, NULL));
  return rows;
}

GtkWidget *
structure_lines_buttons (TrammelSession *session)
{
  const Structure *structure = structure_selected (session);
  GtkWidget *add = gtk_menu_button_new ();

  gtk_menu_button_set_label (GTK_MENU_BUTTON (add), _("Add Line"));
  gtk_menu_button_set_create_popup_func (GTK_MENU_BUTTON (add), choices_open, g_object_ref (session), g_object_unref);
  if (structure != NULL && structure->item_count > 0)
    return with_coverings (session, row_of (GTK_ORIENTATION_HORIZONTAL, add, NULL));
  return with_coverings (session, row_of (GTK_ORIENTATION_HORIZONTAL, add,
                                          button_of (session, _("Usual Lines"), G_CALLBACK (lines_lay_down))));
}
