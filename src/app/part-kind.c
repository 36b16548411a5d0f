#include "trammel-config.h"
#include "app/part-kind.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/piece-controls.h"
#include "document/catalogue.h"
#include "figures/figures.h"

static const double SAME_MM = 0.5;

/* Where the part that balances the aeroplane belongs: the battery on its rail, else what else slides. NULL: nothing does. */
static const Solution *
balancing_solution (const Figures *figures)
{
  for (size_t i = 0; i < figures->solution_count; i++)
    if (g_strcmp0 (figures->solutions[i].part->class_name, "battery") == 0 && isfinite (figures->solutions[i].x_mm))
      return &figures->solutions[i];
  return figures->solution_count > 0 && isfinite (figures->solutions[0].x_mm) ? &figures->solutions[0] : NULL;
}

static char *
battery_words (double mm, Units units)
{
  g_autofree char *length = units_length (units, fabs (mm));

  if (fabs (mm) < SAME_MM)
    return g_strdup (_("The battery belongs where it did."));
  return mm > 0 ? g_strdup_printf (_("The battery then belongs %s further aft."), length)
                : g_strdup_printf (_("The battery then belongs %s further forward."), length);
}

static char *
slider_words (double mm, Units units)
{
  g_autofree char *length = units_length (units, fabs (mm));

  if (fabs (mm) < SAME_MM)
    return g_strdup (_("What slides belongs where it did."));
  return mm > 0 ? g_strdup_printf (_("What slides then belongs %s further aft."), length)
                : g_strdup_printf (_("What slides then belongs %s further forward."), length);
}

static char *
balance_words (double mm, Units units)
{
  g_autofree char *length = units_length (units, fabs (mm));

  if (fabs (mm) < SAME_MM)
    return g_strdup (_("The balance point stays where it is."));
  return mm > 0 ? g_strdup_printf (_("The balance point then lies %s further aft."), length)
                : g_strdup_printf (_("The balance point then lies %s further forward."), length);
}

/* What a change does to the balance, one sentence; NULL when nothing can be said. A new string. */
static char *
effect_words (const Figures *before, const Figures *after, Units units)
{
  const Solution *old = balancing_solution (before);
  const Solution *new = old != NULL ? figures_solution (after, old->part->piece.id) : NULL;

  if (new != NULL && isfinite (new->x_mm))
    return g_strcmp0 (old->part->class_name, "battery") == 0 ? battery_words (new->x_mm - old->x_mm, units)
                                                             : slider_words (new->x_mm - old->x_mm, units);
  if (isfinite (before->mass.x_mm) && isfinite (after->mass.x_mm))
    return balance_words (after->mass.x_mm - before->mass.x_mm, units);
  return NULL;
}

static GtkWidget *
kind_label (const char *text, const char *css_class)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  if (css_class != NULL)
    gtk_widget_add_css_class (label, css_class);
  return label;
}

static GtkWidget *
kind_row (const CatalogueEntry *entry, const char *effect, Units units)
{
  GtkWidget *row = gtk_list_box_row_new (), *column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 1);
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 18), *name = kind_label (entry->name, NULL);
  g_autofree char *mass = units_mass (units, entry->mass);

  gtk_widget_set_hexpand (name, TRUE);
  gtk_box_append (GTK_BOX (line), name);
  gtk_box_append (GTK_BOX (line), kind_label (mass, NULL));
  gtk_box_append (GTK_BOX (column), line);
  if (effect != NULL)
    gtk_box_append (GTK_BOX (column), kind_label (effect, "dim-label"));
  gtk_widget_add_css_class (column, "list-piece");
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), column);
  gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, entry->name, GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  effect != NULL ? effect : mass, -1);
  g_object_set_data_full (G_OBJECT (row), "trammel-kind", g_strdup (entry->id), g_free);
  return row;
}

static void
kind_chosen (GtkListBox *list, GtkListBoxRow *row, GtkWidget *button)
{
  TrammelSession *session = piece_control_choosing (button);
  const Part *part = session != NULL ? trammel_session_selected_part (session) : NULL;
  g_autoptr (Catalogue) catalogue = catalogue_load (NULL);
  const CatalogueEntry *entry = catalogue_find (catalogue, g_object_get_data (G_OBJECT (row), "trammel-kind"));

  gtk_menu_button_popdown (GTK_MENU_BUTTON (button));
  if (part != NULL && entry != NULL)
    trammel_session_do (session, catalogue_change_kind (catalogue, trammel_session_aeroplane (session), part->piece.id, entry),
                        _("Change Kind"));
}

/* All of its class, each tried out: surfaces stay as they are, so their figures are reckoned once. */
static void
kinds_fill (GtkWidget *list, TrammelSession *session, const Part *part)
{
  const Aeroplane *now = trammel_session_aeroplane (session);
  const Units units = trammel_session_units (session);
  g_autoptr (Catalogue) catalogue = catalogue_load (NULL);
  FiguresCache *cache = figures_cache_new ();
  g_autoptr (Figures) before = figures_of (cache, now);

  for (size_t i = 0; i < catalogue_count (catalogue); i++) {
    const CatalogueEntry *entry = catalogue_entry (catalogue, i);

    if (g_strcmp0 (entry->class_name, part->class_name) == 0) {
      g_autoptr (Aeroplane) changed = catalogue_change_kind (catalogue, now, part->piece.id, entry);
      g_autoptr (Figures) after = figures_of (cache, changed);
      g_autofree char *effect = effect_words (before, after, units);

      gtk_list_box_append (GTK_LIST_BOX (list), kind_row (entry, effect, units));
    }
  }
  figures_cache_free (cache);
}

static void
kind_open (GtkMenuButton *button, gpointer nothing)
{
  TrammelSession *session = piece_control_choosing (GTK_WIDGET (button));
  const Part *part = session != NULL ? trammel_session_selected_part (session) : NULL;
  GtkWidget *popover = gtk_popover_new (), *scroller = gtk_scrolled_window_new (), *list = gtk_list_box_new ();

  if (part != NULL)
    kinds_fill (list, session, part);
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list), GTK_SELECTION_NONE);
  gtk_widget_set_margin_end (list, 14);        /* the scroll bar lies there */
  g_signal_connect (list, "row-activated", G_CALLBACK (kind_chosen), button);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scroller), TRUE);
  gtk_scrolled_window_set_max_content_height (GTK_SCROLLED_WINDOW (scroller), 360);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), list);
  gtk_widget_set_size_request (scroller, 320, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (scroller), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Kinds of Its Class"), -1);
  gtk_popover_set_child (GTK_POPOVER (popover), scroller);
  gtk_menu_button_set_popover (button, popover);
}

/* A kind that the catalogue does not know stays, and is shown by its word. */
static void
kind_show (GtkWidget *control, TrammelSession *session)
{
  const Part *part = trammel_session_selected_part (session);
  const char *shown = g_object_get_data (G_OBJECT (control), "trammel-kind");
  g_autofree char *kind = g_strdup (part != NULL && part->kind != NULL ? part->kind : "");

  if (g_strcmp0 (shown, kind) == 0)
    return;
  g_autoptr (Catalogue) catalogue = catalogue_load (NULL);
  const CatalogueEntry *entry = catalogue_find (catalogue, kind);
  gtk_label_set_text (GTK_LABEL (gtk_menu_button_get_child (GTK_MENU_BUTTON (control))),
                      entry != NULL ? entry->name : *kind != '\0' ? kind : _("Choose…"));
  g_object_set_data_full (G_OBJECT (control), "trammel-kind", g_steal_pointer (&kind), g_free);
}

GtkWidget *
part_kind_control (TrammelSession *session)
{
  GtkWidget *control = gtk_menu_button_new (), *label = gtk_label_new (NULL);

  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 20);
  gtk_menu_button_set_child (GTK_MENU_BUTTON (control), label);
  gtk_menu_button_set_always_show_arrow (GTK_MENU_BUTTON (control), TRUE);
  piece_control_adopt (control, session, kind_show);
  gtk_menu_button_set_create_popup_func (GTK_MENU_BUTTON (control), kind_open, NULL, NULL);
  return control;
}
