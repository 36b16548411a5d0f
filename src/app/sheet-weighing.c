#include "trammel-config.h"
#include "app/sheet-weighing.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/structure-line.h"
#include "figures/structure-figures.h"

/* A sheet as shops sell it, mm: 36 × 3 in. */
static const double usual_length = 914.4, usual_width = 76.2;

enum { ENTRY_MASS, ENTRY_LENGTH, ENTRY_WIDTH, ENTRY_THICKNESS, ENTRIES };

typedef struct {
  TrammelSession *session;
  GtkMenuButton *button;
  GtkWidget *entries[ENTRIES];
  GtkWidget *says, *accept;
  double density;               /* kg/m³; NAN while the entries do not tell */
} Weighing;

static bool
entry_read (const Weighing *self, int entry, double *value)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->entries[entry]));
  const Units units = trammel_session_units (self->session);

  return entry == ENTRY_MASS ? units_parse_mass (units, text, value, NULL) : units_parse_length (units, text, value, NULL);
}

static void
weighing_tell (Weighing *self)
{
  double read[ENTRIES];
  bool all = true;
  g_autofree char *text = NULL;

  for (int i = 0; i < ENTRIES; i++)
    all = entry_read (self, i, &read[i]) && all;
  self->density = all ? sheet_density_of (read[ENTRY_MASS], read[ENTRY_LENGTH], read[ENTRY_WIDTH], read[ENTRY_THICKNESS]) : NAN;
  self->density = round (10 * self->density) / 10;
  if (isnan (self->density))
    text = g_strdup (_("Type what the sheet weighs and measures."));
  else
    /* Translators: a density, twice */
    text = g_strdup_printf (_("%.1f kg/m³, that is %.1f lb/ft³"), self->density, density_lb_ft3 (self->density));
  gtk_label_set_text (GTK_LABEL (self->says), text);
  gtk_widget_set_sensitive (self->accept, self->density >= 1 && self->density <= 20000);
}

static void
weighing_accept (Weighing *self)
{
  const StructureItem *item = structure_line (self->session);
  StructureItem next;

  if (item == NULL || isnan (self->density) || !gtk_widget_get_sensitive (self->accept))
    return;
  next = *item;
  next.density = self->density;
  next.density_weighed = true;
  gtk_menu_button_popdown (self->button);
  trammel_session_do (self->session, structure_line_changed (self->session, &next), _("Weigh a Sheet"));
}

static void
weighing_add_entry (Weighing *self, GtkGrid *grid, int row, const char *words, double value)
{
  const Units units = trammel_session_units (self->session);
  const char *unit = row == ENTRY_MASS ? units_mass_name (units) : units_length_name (units);
  g_autofree char *text = row == ENTRY_MASS ? g_strdup ("") : units_length_exact (units, value);
  g_autofree char *name = g_strdup_printf ("%s, %s", words, unit);
  GtkWidget *label = gtk_label_new (words), *entry = gtk_entry_new ();

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_editable_set_text (GTK_EDITABLE (entry), text);
  gtk_editable_set_width_chars (GTK_EDITABLE (entry), 8);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (entry), 8);
  gtk_editable_set_alignment (GTK_EDITABLE (entry), 1.0f);
  gtk_accessible_update_property (GTK_ACCESSIBLE (entry), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  g_signal_connect_swapped (entry, "changed", G_CALLBACK (weighing_tell), self);
  g_signal_connect_swapped (entry, "activate", G_CALLBACK (weighing_accept), self);
  gtk_grid_attach (grid, label, 0, row, 1, 1);
  gtk_grid_attach (grid, entry, 1, row, 1, 1);
  gtk_grid_attach (grid, gtk_label_new (unit), 2, row, 1, 1);
  self->entries[row] = entry;
}

static GtkWidget *
weighing_grid (Weighing *self)
{
  const StructureItem *item = structure_line (self->session);
  GtkGrid *grid = GTK_GRID (gtk_grid_new ());
  const double values[ENTRIES] = { NAN, usual_length, usual_width, item != NULL ? item->thickness : NAN };
  const char *const words[ENTRIES] = { _("Sheet weighs"), _("Sheet's length"), _("Sheet's width"), _("Sheet's thickness") };

  gtk_grid_set_row_spacing (grid, 6);
  gtk_grid_set_column_spacing (grid, 12);
  self->says = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->says), 0);
  self->accept = gtk_button_new_with_label (_("Take This Density"));
  gtk_widget_add_css_class (self->accept, "suggested-action");
  g_signal_connect_swapped (self->accept, "clicked", G_CALLBACK (weighing_accept), self);
  for (int i = 0; i < ENTRIES; i++)
    self->entries[i] = NULL;
  for (int i = 0; i < ENTRIES; i++)
    weighing_add_entry (self, grid, i, words[i], values[i]);
  gtk_grid_attach (grid, self->says, 0, ENTRIES, 3, 1);
  gtk_grid_attach (grid, self->accept, 0, ENTRIES + 1, 3, 1);
  weighing_tell (self);
  return GTK_WIDGET (grid);
}

/* Made anew each time it opens: it speaks in the units of the moment. */
static void
weighing_open (GtkMenuButton *button, gpointer data)
{
  Weighing *self = data;
  GtkWidget *popover = gtk_popover_new ();

  gtk_popover_set_child (GTK_POPOVER (popover), weighing_grid (self));
  gtk_menu_button_set_popover (button, popover);
}

static void
weighing_free (gpointer data)
{
  Weighing *self = data;

  g_object_unref (self->session);
  g_free (self);
}

GtkWidget *
sheet_weighing_new (TrammelSession *session)
{
  GtkWidget *button = gtk_menu_button_new ();
  Weighing *self = g_new0 (Weighing, 1);

  self->session = g_object_ref (session);
  self->button = GTK_MENU_BUTTON (button);
  gtk_menu_button_set_label (GTK_MENU_BUTTON (button), _("Weigh a Sheet"));
  gtk_menu_button_set_create_popup_func (GTK_MENU_BUTTON (button), weighing_open, self, weighing_free);
  return button;
}
