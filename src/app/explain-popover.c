#include "trammel-config.h"
#include "app/explain-popover.h"
#include <glib/gi18n-lib.h>

/* px, and letters of a line */
enum { MOST_HEIGHT = 460, STEP = 36, LINE_LETTERS = 33, FORMULA_LETTERS = 29, FOOT_LETTERS = 37, VALUE_LETTERS = 16,
       LABEL_LETTERS = 18 };

static GtkWidget *
popover_label (const char *text, const char *css_class, int letters)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_wrap_mode (GTK_LABEL (label), PANGO_WRAP_WORD_CHAR);
  gtk_label_set_width_chars (GTK_LABEL (label), letters);
  gtk_label_set_max_width_chars (GTK_LABEL (label), letters);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  if (css_class != NULL)
    gtk_widget_add_css_class (label, css_class);
  return label;
}

static GtkWidget *
popover_inputs (const Explanation *explanation)
{
  GtkWidget *grid = gtk_grid_new ();

  gtk_grid_set_column_spacing (GTK_GRID (grid), 12);
  gtk_grid_set_row_spacing (GTK_GRID (grid), 3);
  for (size_t i = 0; i < explanation->input_count; i++) {
    const char *text = explanation->inputs[i].text;
    GtkWidget *label = popover_label (explanation->inputs[i].label, NULL, LABEL_LETTERS);
    GtkWidget *value = popover_label (text, "explain-value", (int) MIN (g_utf8_strlen (text, -1), VALUE_LETTERS));

    gtk_widget_set_hexpand (label, TRUE);
    gtk_widget_set_valign (value, GTK_ALIGN_START);
    gtk_label_set_wrap_mode (GTK_LABEL (value), PANGO_WRAP_WORD);      /* a figure and its unit do not part */
    gtk_label_set_xalign (GTK_LABEL (value), 1);
    gtk_label_set_justify (GTK_LABEL (value), GTK_JUSTIFY_RIGHT);
    gtk_grid_attach (GTK_GRID (grid), label, 0, (int) i, 1, 1);
    gtk_grid_attach (GTK_GRID (grid), value, 1, (int) i, 1, 1);
  }
  return grid;
}

/* "Source", dim, with what it is beneath. */
static void
popover_add_foot (GtkWidget *column, const char *heading, const char *text)
{
  GtkWidget *part;

  if (text == NULL)
    return;
  part = gtk_box_new (GTK_ORIENTATION_VERTICAL, 1);
  gtk_box_append (GTK_BOX (part), popover_label (heading, "explain-heading", FOOT_LETTERS));
  gtk_box_append (GTK_BOX (part), popover_label (text, "explain-foot", FOOT_LETTERS));
  gtk_box_append (GTK_BOX (column), part);
}

/* What a screen reader says when it opens. */
static char *
popover_words (const Explanation *explanation)
{
  GString *words = g_string_new (NULL);

  g_string_append_printf (words, "%s: %s. %s.", explanation->title, explanation->result, explanation->formula);
  for (size_t i = 0; i < explanation->input_count; i++)
    g_string_append_printf (words, " %s: %s.", explanation->inputs[i].label, explanation->inputs[i].text);
  g_string_append_printf (words, " %s: %s %s: %s", _("Source"), explanation->source, _("Limits"), explanation->limits);
  if (explanation->owed != NULL)
    g_string_append_printf (words, " %s: %s", _("Deviation"), explanation->owed);
  return g_string_free (words, FALSE);
}

static gboolean
popover_key (GtkScrolledWindow *scrolled, guint key)
{
  GtkAdjustment *upright = gtk_scrolled_window_get_vadjustment (scrolled);
  const double step = key == GDK_KEY_Down ? STEP : key == GDK_KEY_Up ? -STEP : 0;

  if (step == 0)
    return FALSE;
  gtk_adjustment_set_value (upright, gtk_adjustment_get_value (upright) + step);
  return TRUE;
}

static GtkWidget *
popover_column (const Explanation *explanation)
{
  GtkWidget *column = g_object_new (GTK_TYPE_BOX, "orientation", GTK_ORIENTATION_VERTICAL, "spacing", 10, "focusable", TRUE,
                                    "accessible-role", GTK_ACCESSIBLE_ROLE_GROUP, NULL);
  g_autofree char *result = g_strdup_printf ("= %s", explanation->result), *words = popover_words (explanation);

  gtk_widget_add_css_class (column, "explain");
  gtk_box_append (GTK_BOX (column), popover_label (explanation->title, "heading", LINE_LETTERS));
  gtk_box_append (GTK_BOX (column), popover_label (explanation->formula, "explain-formula", FORMULA_LETTERS));
  gtk_box_append (GTK_BOX (column), popover_inputs (explanation));
  gtk_box_append (GTK_BOX (column), popover_label (result, "explain-result", FORMULA_LETTERS));
  gtk_box_append (GTK_BOX (column), gtk_separator_new (GTK_ORIENTATION_HORIZONTAL));
  popover_add_foot (column, _("What the ± is owed to"), explanation->owed);
  popover_add_foot (column, _("Limits"), explanation->limits);
  popover_add_foot (column, _("Source"), explanation->source);
  gtk_accessible_update_property (GTK_ACCESSIBLE (column), GTK_ACCESSIBLE_PROPERTY_LABEL, words, -1);
  return column;
}

/* As high as it is at its width: a popover asks for the height of narrow lines, and would be too high. Once it has a parent, whose
 * letters it takes. */
static void
popover_fit (GtkScrolledWindow *scrolled, GtkWidget *column)
{
  int width, height;

  gtk_widget_measure (column, GTK_ORIENTATION_HORIZONTAL, -1, NULL, &width, NULL, NULL);
  gtk_widget_measure (column, GTK_ORIENTATION_VERTICAL, width, NULL, &height, NULL, NULL);
  gtk_scrolled_window_set_min_content_width (scrolled, width);
  gtk_scrolled_window_set_max_content_height (scrolled, MIN (height, MOST_HEIGHT));
}

GtkWidget *
explain_popover_new (const Explanation *explanation, GtkWidget *parent)
{
  GtkWidget *popover = gtk_popover_new (), *scrolled = gtk_scrolled_window_new (), *column = popover_column (explanation);
  GtkEventController *keys = gtk_event_controller_key_new ();

  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scrolled), TRUE);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), column);
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (popover_key), scrolled);
  gtk_widget_add_controller (scrolled, keys);
  gtk_popover_set_child (GTK_POPOVER (popover), scrolled);
  gtk_widget_add_css_class (popover, "explain-popover");
  gtk_accessible_update_property (GTK_ACCESSIBLE (popover), GTK_ACCESSIBLE_PROPERTY_LABEL, explanation->title, -1);
  gtk_widget_set_parent (popover, parent);
  popover_fit (GTK_SCROLLED_WINDOW (scrolled), column);
  return popover;
}
