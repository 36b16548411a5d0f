#include "trammel-config.h"
#include "app/part-list.h"
#include <glib/gi18n-lib.h>
#include "app/part-by-size.h"
#include "document/catalogue.h"
#include "document/part-class.h"

/* A list at work; it goes with its column. */
typedef struct {
  TrammelSession *session;
  PartChosen chosen;
  gpointer data;
  Catalogue *catalogue;
  GtkWidget *search, *list, *nothing;
} PartList;

static Part *
pattern_ref (Part *pattern)
{
  return (Part *) piece_ref (&pattern->piece);
}

static void
pattern_unref (Part *pattern)
{
  piece_unref (&pattern->piece);
}

typedef Part TrammelPartPattern;
G_DEFINE_BOXED_TYPE (TrammelPartPattern, trammel_part_pattern, pattern_ref, pattern_unref)

/* What a row stands for: an entry, or a class as a whole. One of the two is NULL. */
typedef struct { const CatalogueEntry *entry; const PartClass *class; } PartRow;

static const PartRow *
row_of (gpointer row)
{
  return g_object_get_data (G_OBJECT (row), "trammel-part");
}

static Part *
row_pattern (gpointer row)
{
  const PartRow *of = row_of (row);

  return of->entry != NULL ? catalogue_entry_part (of->entry) : part_class_part (of->class->word);
}

static void
part_list_free (gpointer data)
{
  PartList *self = data;

  g_object_unref (self->session);
  catalogue_unref (self->catalogue);
  g_free (self);
}

/* A class is what was asked for when its own name or word was. */
static bool
class_matches (const PartClass *class, const char *words)
{
  const CatalogueEntry entry = { .id = (char *) class->word, .class_name = (char *) class->word, .name = (char *) _(class->name) };

  return catalogue_entry_matches (&entry, words);
}

static gboolean
row_is_wanted (GtkListBoxRow *row, gpointer data)
{
  const char *words = gtk_editable_get_text (GTK_EDITABLE (((PartList *) data)->search));
  const PartRow *of = row_of (row);

  return of->entry != NULL ? catalogue_entry_matches (of->entry, words) : class_matches (of->class, words);
}

static void
list_take (PartList *self, GtkListBoxRow *row)
{
  Part *pattern = row_pattern (row);

  self->chosen (self->data, pattern);
  piece_unref (&pattern->piece);
}

static void
list_activated (GtkListBox *list, GtkListBoxRow *row, PartList *self)
{
  list_take (self, row);
}

static GtkListBoxRow *
list_first (PartList *self)
{
  GtkListBoxRow *row;

  for (int i = 0; (row = gtk_list_box_get_row_at_index (GTK_LIST_BOX (self->list), i)) != NULL; i++)
    if (row_is_wanted (row, self))
      return row;
  return NULL;
}

static void
search_changed (GtkSearchEntry *search, PartList *self)
{
  gtk_list_box_invalidate_filter (GTK_LIST_BOX (self->list));
  gtk_widget_set_visible (self->nothing, list_first (self) == NULL);
}

static void
search_done (GtkSearchEntry *search, PartList *self)
{
  GtkListBoxRow *first = list_first (self);

  if (first != NULL)
    list_take (self, first);
}

static gboolean
search_key (GtkEventControllerKey *keys, guint keyval, guint code, GdkModifierType state, PartList *self)
{
  GtkListBoxRow *first = keyval == GDK_KEY_Down || keyval == GDK_KEY_KP_Down ? list_first (self) : NULL;

  return first != NULL && gtk_widget_grab_focus (GTK_WIDGET (first));
}

static void
search_stopped (GtkSearchEntry *search, PartList *self)
{
  GtkWidget *popover = gtk_widget_get_ancestor (GTK_WIDGET (search), GTK_TYPE_POPOVER);

  if (popover != NULL)
    gtk_popover_popdown (GTK_POPOVER (popover));
}

static GdkContentProvider *
row_dragged (GtkDragSource *source, double x, double y, gpointer row)
{
  Part *pattern = row_pattern (row);
  GdkContentProvider *provider = gdk_content_provider_new_typed (TRAMMEL_TYPE_PART_PATTERN, pattern);

  piece_unref (&pattern->piece);
  return provider;
}

/* The list lies over what a part is dragged to: it fades, and goes when the hand lets go. */
static void
row_drag_begun (GtkDragSource *source, GdkDrag *drag, GtkWidget *row)
{
  GtkWidget *popover = gtk_widget_get_ancestor (row, GTK_TYPE_POPOVER);

  if (popover != NULL)
    gtk_widget_set_opacity (popover, 0.25);
}

static void
row_drag_ended (GtkDragSource *source, GdkDrag *drag, gboolean delete_data, GtkWidget *row)
{
  GtkWidget *popover = gtk_widget_get_ancestor (row, GTK_TYPE_POPOVER);

  if (popover == NULL)
    return;
  gtk_widget_set_opacity (popover, 1);
  gtk_popover_popdown (GTK_POPOVER (popover));
}

static void
row_add_drag (GtkWidget *row)
{
  GtkDragSource *source = gtk_drag_source_new ();

  g_signal_connect (source, "prepare", G_CALLBACK (row_dragged), row);
  g_signal_connect (source, "drag-begin", G_CALLBACK (row_drag_begun), row);
  g_signal_connect (source, "drag-end", G_CALLBACK (row_drag_ended), row);
  gtk_widget_add_controller (row, GTK_EVENT_CONTROLLER (source));
}

static GtkWidget *
row_label (const char *text, const char *css_class)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  if (css_class != NULL)
    gtk_widget_add_css_class (label, css_class);
  return label;
}

/* Its size, "" without one. A new string. */
static char *
pattern_size (const Part *pattern, Units units)
{
  g_autofree char *size = units_size (units, pattern->length, pattern->width, pattern->height);

  return pattern->length > 0 ? g_strdup_printf ("%s %s", size, units_length_name (units)) : g_strdup ("");
}

static void
row_say (GtkWidget *row, const char *name, const char *mass, const char *size)
{
  g_autofree char *figures = *size != '\0' ? g_strdup_printf ("%s, %s", mass, size) : g_strdup (mass);

  gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, name,
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, figures, -1);
}

static GtkWidget *
part_row (PartRow of, Units units)
{
  GtkWidget *row = gtk_list_box_row_new (), *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12), *label;
  const char *name = of.entry != NULL ? of.entry->name : _(of.class->name);
  Part *pattern;
  g_autofree char *mass = NULL, *size = NULL;

  g_object_set_data_full (G_OBJECT (row), "trammel-part", g_memdup2 (&of, sizeof of), g_free);
  pattern = row_pattern (row);
  mass = units_mass (units, pattern->mass);
  size = pattern_size (pattern, units);
  label = row_label (name, of.entry == NULL ? "part-class" : NULL);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_box_append (GTK_BOX (box), label);
  gtk_box_append (GTK_BOX (box), row_label (size, "dim-label"));
  gtk_box_append (GTK_BOX (box), label = row_label (mass, NULL));
  gtk_label_set_xalign (GTK_LABEL (label), 1);
  gtk_label_set_width_chars (GTK_LABEL (label), 6);
  gtk_widget_add_css_class (box, of.entry != NULL ? "list-node" : "list-piece");
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  if (of.entry != NULL)
    gtk_widget_set_tooltip_text (row, of.entry->use);
  row_say (row, name, mass, size);
  row_add_drag (row);
  piece_unref (&pattern->piece);
  return row;
}

/* Each class with what the catalogue has of it behind. */
static void
list_fill (PartList *self)
{
  const Units units = trammel_session_units (self->session);

  for (const PartClass *class = part_classes (); class->word != NULL; class++) {
    gtk_list_box_append (GTK_LIST_BOX (self->list), part_row ((PartRow) { NULL, class }, units));
    for (size_t i = 0; i < catalogue_count (self->catalogue); i++)
      if (g_str_equal (catalogue_entry (self->catalogue, i)->class_name, class->word))
        gtk_list_box_append (GTK_LIST_BOX (self->list), part_row ((PartRow) { catalogue_entry (self->catalogue, i), NULL }, units));
  }
}

static GtkWidget *
list_scroller (PartList *self)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();

  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scroller), TRUE);
  gtk_scrolled_window_set_min_content_height (GTK_SCROLLED_WINDOW (scroller), 260);
  gtk_scrolled_window_set_max_content_height (GTK_SCROLLED_WINDOW (scroller), 400);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), self->list);
  gtk_widget_set_size_request (scroller, 380, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (scroller), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Catalogue of Parts"), -1);
  return scroller;
}

/* Down leaves the field for the list before the field itself takes it. */
static void
list_make_search (PartList *self)
{
  GtkEventController *keys = gtk_event_controller_key_new ();

  self->search = gtk_search_entry_new ();
  g_object_set (self->search, "placeholder-text", _("Search: 2s, servo, 7 × 4"), NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->search), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Search the Catalogue"), -1);
  gtk_event_controller_set_propagation_phase (keys, GTK_PHASE_CAPTURE);
  g_signal_connect (keys, "key-pressed", G_CALLBACK (search_key), self);
  gtk_widget_add_controller (self->search, keys);
  g_signal_connect (self->search, "changed", G_CALLBACK (search_changed), self);
  g_signal_connect (self->search, "activate", G_CALLBACK (search_done), self);
  g_signal_connect (self->search, "stop-search", G_CALLBACK (search_stopped), self);
}

/* What is wrong with a catalogue, one sentence: the first. NULL when nothing is. */
static GtkWidget *
list_problem (const GPtrArray *problems)
{
  GtkWidget *label = problems->len > 0 ? row_label (g_ptr_array_index (problems, 0), "error") : NULL;

  if (label != NULL) {
    gtk_label_set_wrap (GTK_LABEL (label), TRUE);
    gtk_label_set_wrap_mode (GTK_LABEL (label), PANGO_WRAP_WORD_CHAR);
    gtk_label_set_max_width_chars (GTK_LABEL (label), 44);
  }
  return label;
}

static GtkWidget *
list_leaf (PartList *self, const GPtrArray *problems)
{
  GtkWidget *leaf = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6), *problem = list_problem (problems);

  self->list = gtk_list_box_new ();
  self->nothing = row_label (_("Nothing in the catalogue is called so."), "dim-label");
  list_make_search (self);
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (self->list), GTK_SELECTION_NONE);
  gtk_widget_set_margin_end (self->list, 14);      /* the scroll bar lies there */
  list_fill (self);
  gtk_list_box_set_filter_func (GTK_LIST_BOX (self->list), row_is_wanted, self, NULL);
  g_signal_connect (self->list, "row-activated", G_CALLBACK (list_activated), self);
  gtk_widget_set_visible (self->nothing, FALSE);
  gtk_box_append (GTK_BOX (leaf), self->search);
  gtk_box_append (GTK_BOX (leaf), self->nothing);
  gtk_box_append (GTK_BOX (leaf), list_scroller (self));
  if (problem != NULL)
    gtk_box_append (GTK_BOX (leaf), problem);
  return leaf;
}

static void
leaf_turned (GtkToggleButton *by_size, GtkStack *leaves)
{
  gtk_stack_set_visible_child_name (leaves, gtk_toggle_button_get_active (by_size) ? "size" : "list");
}

GtkWidget *
part_list_new (TrammelSession *session, PartChosen chosen, gpointer data)
{
  PartList *self = g_new0 (PartList, 1);
  g_autoptr (GPtrArray) problems = g_ptr_array_new_with_free_func (g_free);
  GtkWidget *column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 8), *leaves = gtk_stack_new ();
  GtkWidget *by_size = gtk_toggle_button_new_with_label (_("By Size…"));

  *self = (PartList) { .session = g_object_ref (session), .chosen = chosen, .data = data, .catalogue = catalogue_load (problems) };
  gtk_stack_add_named (GTK_STACK (leaves), list_leaf (self, problems), "list");
  gtk_stack_add_named (GTK_STACK (leaves), part_by_size_new (session, chosen, data), "size");
  gtk_widget_set_tooltip_text (by_size, _("A pack by its cells, a motor by its can, a propeller by its diameter"));
  g_signal_connect (by_size, "toggled", G_CALLBACK (leaf_turned), leaves);
  gtk_box_append (GTK_BOX (column), leaves);
  gtk_box_append (GTK_BOX (column), by_size);
  g_object_set_data_full (G_OBJECT (column), "trammel-part-list", self, part_list_free);
  return column;
}
