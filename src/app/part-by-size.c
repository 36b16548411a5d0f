#include "trammel-config.h"
#include "app/part-by-size.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/choice-list.h"
#include "app/entry-click.h"
#include "document/part-size.h"

enum { PACK, MOTOR, PROPELLER, THINGS };

/* How each number of a thing is read. */
typedef enum { ASK_NUMBER, ASK_LENGTH, ASK_INCHES } Ask;

static const struct {
  const char *class_name;
  struct { const char *label, *usual; Ask ask; } numbers[2];     /* labels marked for translation; usual in millimetres where a length */
  const char *refused;
} things[THINGS] = {
  [PACK]      = { "battery", { { N_("Cells in series"), "2", ASK_NUMBER }, { N_("Capacity, mAh"), "450", ASK_NUMBER } },
                  N_("A pack has 1 to 12 cells of 20 to 20,000 mAh.") },
  [MOTOR]     = { "motor", { { N_("Can, diameter"), "28", ASK_LENGTH }, { N_("Can, length"), "18", ASK_LENGTH } },
                  N_("A can is 5 to 100 mm wide and 5 to 100 mm long.") },
  [PROPELLER] = { "propeller", { { N_("Diameter, in"), "7", ASK_INCHES }, { N_("Pitch, in"), "4", ASK_INCHES } },
                  N_("A propeller is 1 to 30 in across, with a pitch of up to 30 in.") },
};

typedef struct {
  TrammelSession *session;
  PartChosen chosen;
  gpointer data;
  GtkWidget *thing, *labels[2], *entries[2], *blades, *stiff, *extra[2], *result, *add;
  bool filling;
} BySize;

static void
by_size_free (gpointer data)
{
  BySize *self = data;

  g_object_unref (self->session);
  g_free (self);
}

static guint
by_size_thing (const BySize *self)
{
  return gtk_drop_down_get_selected (GTK_DROP_DOWN (self->thing));
}

/* In the unit it is meant in: a plain number, mm, or inches. */
static bool
by_size_read (const BySize *self, int which, double *value)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->entries[which]));
  const Units inches = { LENGTH_INCH, MASS_G };

  switch (things[by_size_thing (self)].numbers[which].ask) {
  case ASK_NUMBER:
    return units_parse_number (text, value, NULL);
  case ASK_LENGTH:
    return units_parse_length (trammel_session_units (self->session), text, value, NULL);
  case ASK_INCHES:
    if (!units_parse_length (inches, text, value, NULL))
      return false;
    *value /= 25.4;
    return true;
  }
  return false;
}

static bool
by_size_reckon (const BySize *self, const double numbers[2], PartSize *size)
{
  switch (by_size_thing (self)) {
  case PACK:
    return part_size_pack (numbers[0], numbers[1], size);
  case MOTOR:
    return part_size_motor (numbers[0], numbers[1], size);
  default:
    return numbers[1] > 0 && numbers[1] <= 30
           && part_size_propeller (numbers[0], 2 + (int) gtk_drop_down_get_selected (GTK_DROP_DOWN (self->blades)),
                                   gtk_drop_down_get_selected (GTK_DROP_DOWN (self->stiff)) == 0, size);
  }
}

/* A new string. */
static char *
by_size_name (const BySize *self, const double numbers[2])
{
  const char *first = gtk_editable_get_text (GTK_EDITABLE (self->entries[0]));
  const char *second = gtk_editable_get_text (GTK_EDITABLE (self->entries[1]));

  switch (by_size_thing (self)) {
  case PACK:
    return g_strdup_printf (_("Battery %.0fS %.0f mAh"), numbers[0], numbers[1]);
  case MOTOR:
    return g_strdup_printf (_("Motor %s × %s %s"), first, second, units_length_name (trammel_session_units (self->session)));
  default:
    return g_strdup_printf (_("Propeller %s × %s in"), first, second);
  }
}

/* The part as it is typed; NULL while it can be none. */
static Part *
by_size_pattern (const BySize *self)
{
  double numbers[2];
  PartSize size;
  Part *part;

  if (!by_size_read (self, 0, &numbers[0]) || !by_size_read (self, 1, &numbers[1]) || !by_size_reckon (self, numbers, &size))
    return NULL;
  part = part_new (NULL, things[by_size_thing (self)].class_name);
  part->name = by_size_name (self, numbers);
  part->mass = size.mass;
  part->mass_sigma = size.mass_sigma;
  part->length = size.length;
  part->width = size.width;
  part->height = size.height;
  if (by_size_thing (self) == PACK) {
    part->cells = numbers[0];
    part->capacity = numbers[1];
  }
  if (by_size_thing (self) == PROPELLER)
    part->pitch = numbers[1] * 25.4;
  return part;
}

static char *
by_size_words (const BySize *self, const Part *pattern)
{
  const Units units = trammel_session_units (self->session);
  g_autofree char *mass = units_mass (units, pattern->mass), *sigma = units_mass_deviation (units, pattern->mass_sigma);
  g_autofree char *size = units_size (units, pattern->length, pattern->width, pattern->height);

  return g_strdup_printf ("%s ± %s, %s %s", mass, sigma, size, units_length_name (units));
}

static void
by_size_show (BySize *self)
{
  Part *pattern;
  g_autofree char *words = NULL;

  if (self->filling)
    return;
  pattern = by_size_pattern (self);
  words = pattern != NULL ? by_size_words (self, pattern) : g_strdup (_(things[by_size_thing (self)].refused));
  gtk_label_set_text (GTK_LABEL (self->result), words);
  gtk_widget_set_sensitive (self->add, pattern != NULL);
  if (pattern != NULL)
    piece_unref (&pattern->piece);
}

static void
by_size_add (BySize *self)
{
  Part *pattern = by_size_pattern (self);

  if (pattern == NULL)
    return;
  self->chosen (self->data, pattern);
  piece_unref (&pattern->piece);
}

static void
by_size_ask (BySize *self)
{
  const guint thing = by_size_thing (self);
  const Units units = trammel_session_units (self->session);

  self->filling = true;
  for (int i = 0; i < 2; i++) {
    const bool length = things[thing].numbers[i].ask == ASK_LENGTH;
    g_autofree char *usual = length ? units_length_figure (units, g_ascii_strtod (things[thing].numbers[i].usual, NULL))
                                    : g_strdup (things[thing].numbers[i].usual);
    g_autofree char *label = length ? g_strdup_printf ("%s, %s", _(things[thing].numbers[i].label), units_length_name (units))
                                    : g_strdup (_(things[thing].numbers[i].label));

    gtk_label_set_text (GTK_LABEL (self->labels[i]), label);
    gtk_accessible_update_property (GTK_ACCESSIBLE (self->entries[i]), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
    gtk_editable_set_text (GTK_EDITABLE (self->entries[i]), usual);
    gtk_widget_set_visible (self->extra[i], thing == PROPELLER);
  }
  self->filling = false;
  by_size_show (self);
}

static GtkWidget *
by_size_choice (BySize *self, const char *const *words, const char *name, GCallback changed)
{
  GtkWidget *choice = choice_list_new_of_words (words);

  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (choice)), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  g_signal_connect_swapped (choice, "notify::selected", changed, self);
  return choice;
}

static GtkWidget *
by_size_row (GtkWidget *column, GtkWidget *label, GtkWidget *control)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_box_append (GTK_BOX (row), label);
  gtk_box_append (GTK_BOX (row), control);
  gtk_box_append (GTK_BOX (column), row);
  return row;
}

static void
by_size_add_entry (BySize *self, GtkWidget *column, int which)
{
  self->labels[which] = gtk_label_new (NULL);
  self->entries[which] = gtk_entry_new ();
  gtk_editable_set_width_chars (GTK_EDITABLE (self->entries[which]), 9);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (self->entries[which]), 9);
  entry_select_on_click (self->entries[which]);
  g_signal_connect_swapped (self->entries[which], "changed", G_CALLBACK (by_size_show), self);
  g_signal_connect_swapped (self->entries[which], "activate", G_CALLBACK (by_size_add), self);
  by_size_row (column, self->labels[which], self->entries[which]);
}

static void
by_size_add_foot (BySize *self, GtkWidget *column)
{
  self->result = gtk_label_new (NULL);
  self->add = gtk_button_new_with_label (_("Add"));
  gtk_label_set_xalign (GTK_LABEL (self->result), 0);
  gtk_label_set_wrap (GTK_LABEL (self->result), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (self->result), 44);
  gtk_widget_add_css_class (self->add, "suggested-action");
  g_signal_connect_swapped (self->add, "clicked", G_CALLBACK (by_size_add), self);
  gtk_box_append (GTK_BOX (column), self->result);
  gtk_box_append (GTK_BOX (column), self->add);
}

GtkWidget *
part_by_size_new (TrammelSession *session, PartChosen chosen, gpointer data)
{
  const char *const names[] = { _("Battery pack"), _("Motor"), _("Propeller"), NULL };
  const char *const blades[] = { _("two"), _("three"), NULL }, *const kinds[] = { _("stiff"), _("thin"), NULL };
  GtkWidget *column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 8);
  BySize *self = g_new0 (BySize, 1);

  *self = (BySize) { .session = g_object_ref (session), .chosen = chosen, .data = data };
  g_object_set_data_full (G_OBJECT (column), "trammel-by-size", self, by_size_free);
  self->thing = by_size_choice (self, names, _("What it is"), G_CALLBACK (by_size_ask));
  self->blades = by_size_choice (self, blades, _("Blades"), G_CALLBACK (by_size_show));
  self->stiff = by_size_choice (self, kinds, _("Kind of blades"), G_CALLBACK (by_size_show));
  by_size_row (column, gtk_label_new (_("What it is")), self->thing);
  for (int i = 0; i < 2; i++)
    by_size_add_entry (self, column, i);
  self->extra[0] = by_size_row (column, gtk_label_new (_("Blades")), self->blades);
  self->extra[1] = by_size_row (column, gtk_label_new (_("Kind of blades")), self->stiff);
  by_size_add_foot (self, column);
  by_size_ask (self);
  return column;
}
