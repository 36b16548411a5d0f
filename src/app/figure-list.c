#include "trammel-config.h"
#include "app/figure-list.h"
#include <glib/gi18n-lib.h>
#include "app/group.h"
#include "app/list-rows.h"
#include "app/tooltip.h"

/* More rows nobody reads, and all of them are laid out anew when one changes; copied and saved is all of it. */
enum { MOST_ROWS = 300, UNSORTED = -1 };

struct _TrammelFigureList {
  GtkBox parent;
  TrammelSession *session;
  ReportList list;
  GtkWidget *group, *header, *beneath;
  GtkWidget *heads[LIST_COLUMNS];
  ListRows *rows;               /* as shown */
  PlacesMemo *memo;
  int sorted;                   /* the column; UNSORTED: as the list itself is */
  bool descending;
  bool stale;                   /* something changed while nobody saw it */
};

G_DEFINE_FINAL_TYPE (TrammelFigureList, trammel_figure_list, GTK_TYPE_BOX)

static GtkListBox *
figure_list_box (TrammelFigureList *self)
{
  return trammel_group_list (TRAMMEL_GROUP (self->group));
}

static GtkWidget *
cell_new (guint column)
{
  GtkWidget *cell = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (cell), column == 0 ? 0 : 1);
  gtk_widget_set_hexpand (cell, column == 0);
  gtk_label_set_ellipsize (GTK_LABEL (cell), PANGO_ELLIPSIZE_END);
  return cell;
}

/* Gives the figures the shares of the list's width that they need: what is said in words takes more than a number. */
static void
place_figures (GtkWidget *line, const int shares[LIST_COLUMNS])
{
  GtkWidget *figures = gtk_widget_get_last_child (line), *cell = gtk_widget_get_first_child (figures);
  GtkLayoutManager *grid = gtk_widget_get_layout_manager (figures);
  int column = 0;

  for (guint i = 1; i < LIST_COLUMNS; i++, cell = gtk_widget_get_next_sibling (cell)) {
    GtkLayoutChild *place = gtk_layout_manager_get_layout_child (grid, cell);

    g_object_set (place, "column", column, "column-span", shares[i], NULL);
    column += shares[i];
  }
}

/* A name is too long to stand beside three figures: they stand below it. */
static GtkWidget *
line_new (GtkWidget *cells[LIST_COLUMNS])
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0), *figures = gtk_grid_new ();

  gtk_grid_set_column_homogeneous (GTK_GRID (figures), TRUE);
  gtk_box_append (GTK_BOX (line), cells[0]);
  for (int i = 1; i < LIST_COLUMNS; i++) {
    if (i > 1)
      gtk_widget_set_margin_start (cells[i], 4);
    gtk_grid_attach (GTK_GRID (figures), cells[i], i, 0, 1, 1);
  }
  gtk_box_append (GTK_BOX (line), figures);
  gtk_widget_add_css_class (line, "figure-line");
  return line;
}

static void
add_row (TrammelFigureList *self)
{
  GtkWidget *row = gtk_list_box_row_new (), *cells[LIST_COLUMNS];

  for (guint i = 0; i < LIST_COLUMNS; i++)
    cells[i] = cell_new (i);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), line_new (cells));
  place_figures (gtk_list_box_row_get_child (GTK_LIST_BOX_ROW (row)), self->rows->shares);
  gtk_list_box_append (figure_list_box (self), row);
}

/* What stands there already costs nothing, also in a drag. */
static void
write_cell (GtkWidget *cell, const char *text)
{
  if (!g_str_equal (gtk_label_get_text (GTK_LABEL (cell)), text))
    gtk_label_set_text (GTK_LABEL (cell), text);
}

static void
write_row (GtkListBoxRow *row, const ListRow *from)
{
  GtkWidget *line = gtk_list_box_row_get_child (row), *cell = gtk_widget_get_first_child (gtk_widget_get_last_child (line));

  write_cell (gtk_widget_get_first_child (line), from->cells[0]);
  for (guint i = 1; i < LIST_COLUMNS; i++, cell = gtk_widget_get_next_sibling (cell))
    write_cell (cell, from->cells[i]);
  tooltip_set (GTK_WIDGET (row), from->words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, from->words, -1);
}

/* An arrow where it is sorted by that. */
static void
write_head (TrammelFigureList *self, guint column)
{
  const char *title = self->rows->titles[column], *unit = self->rows->units[column];
  const bool sorted = self->sorted == (int) column;
  g_autofree char *text = g_strdup_printf ("%s%s%s%s", sorted ? self->descending ? "↓ " : "↑ " : "", title, *unit ? ", " : "", unit);
  /* Translators: “%s” is the heading of a column */
  g_autofree char *name = g_strdup_printf (_("Sort by “%s”"), title);

  write_cell (gtk_button_get_child (GTK_BUTTON (self->heads[column])), text);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->heads[column]), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->heads[column]), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  !sorted ? "" : self->descending ? _("the greatest first") : _("the least first"), -1);
}

static bool
is_chosen (const Selection *selection, const ListRow *row)
{
  if (row->ids == NULL || row->ids[0] == NULL || selection->node_count > 0)
    return false;
  for (char **id = row->ids; *id != NULL; id++)
    if (!selection_has (selection, *id))
      return false;
  return true;
}

static void
mark_chosen (TrammelFigureList *self)
{
  const Selection *selection = trammel_session_selection (self->session);
  GtkListBoxRow *row;

  gtk_list_box_unselect_all (figure_list_box (self));
  for (int i = 0; (row = gtk_list_box_get_row_at_index (figure_list_box (self), i)) != NULL; i++)
    if (is_chosen (selection, g_ptr_array_index (self->rows->rows, (guint) i)))
      gtk_list_box_select_row (figure_list_box (self), row);
}

static void
fit_rows (TrammelFigureList *self, guint count)
{
  GtkListBoxRow *row;

  for (guint i = 0; i < count; i++)
    if (gtk_list_box_get_row_at_index (figure_list_box (self), (int) i) == NULL)
      add_row (self);
  while ((row = gtk_list_box_get_row_at_index (figure_list_box (self), (int) count)) != NULL)
    gtk_list_box_remove (figure_list_box (self), GTK_WIDGET (row));
}

/* What is said in place of rows, or beneath them. */
static void
write_beneath (TrammelFigureList *self)
{
  const ListRows *rows = self->rows;
  const char *words = rows->empty != NULL ? rows->empty : rows->beneath;

  write_cell (self->beneath, words != NULL ? words : "");
  gtk_widget_set_visible (self->beneath, words != NULL);
  gtk_widget_set_visible (self->header, rows->empty == NULL);
  gtk_widget_set_visible (GTK_WIDGET (figure_list_box (self)), rows->empty == NULL);
}

static void
follow (TrammelFigureList *self)
{
  ListRows *rows;
  guint count;

  self->stale = !gtk_widget_get_mapped (GTK_WIDGET (self));
  if (self->stale)
    return;
  rows = list_rows_new (trammel_session_figures (self->session), trammel_session_units (self->session), self->list,
                        self->memo);
  g_clear_pointer (&self->rows, list_rows_free);
  self->rows = rows;
  if (self->sorted != UNSORTED)
    list_rows_sort (rows, (guint) self->sorted, self->descending);
  count = MIN (rows->rows->len, MOST_ROWS);
  fit_rows (self, count);
  place_figures (self->header, rows->shares);
  for (guint i = 0; i < LIST_COLUMNS; i++)
    write_head (self, i);
  for (guint i = 0; i < count; i++)
    write_row (gtk_list_box_get_row_at_index (figure_list_box (self), (int) i), g_ptr_array_index (rows->rows, i));
  write_beneath (self);
  mark_chosen (self);
}

static void
follow_selection (TrammelFigureList *self)
{
  if (self->rows != NULL && gtk_widget_get_mapped (GTK_WIDGET (self)))
    mark_chosen (self);
  else
    self->stale = true;
}

static void
row_chosen (TrammelFigureList *self, GtkListBoxRow *row)
{
  const ListRow *of = g_ptr_array_index (self->rows->rows, (guint) gtk_list_box_row_get_index (row));
  Selection chosen;

  if (of->ids == NULL || of->ids[0] == NULL) {
    mark_chosen (self);
    return;
  }
  chosen = selection_of (of->ids[0]);
  for (char **id = of->ids + 1; *id != NULL; id++)
    selection_toggle (&chosen, *id);
  trammel_session_select (self->session, chosen);
}

/* Names from A on, figures from the greatest; then the other way round; then as the list itself is. */
static void
head_pressed (GtkWidget *head, TrammelFigureList *self)
{
  int column = 0;

  while (self->heads[column] != head)
    column++;
  if (self->sorted != column) {
    self->sorted = column;
    self->descending = column > 0;
  } else if (self->descending == (column > 0))
    self->descending = !self->descending;
  else
    self->sorted = UNSORTED;
  follow (self);
}

static void
copy (GtkWidget *widget, const char *action, GVariant *parameter)
{
  TrammelFigureList *self = TRAMMEL_FIGURE_LIST (widget);
  g_autofree char *text = self->rows != NULL ? list_rows_text (self->rows) : NULL;

  if (text != NULL)
    gdk_clipboard_set_text (gtk_widget_get_clipboard (widget), text);
}

static GtkWidget *
menu_new (TrammelFigureList *self, const char *heading)
{
  GMenu *menu = g_menu_new ();
  GtkWidget *button = gtk_menu_button_new ();
  /* Translators: “%s” is a list's heading */
  g_autofree char *name = g_strdup_printf (_("Copy or save “%s”"), heading);
  g_autofree char *save = g_strdup_printf ("win.save-list('%s')", report_list_word (self->list));

  g_menu_append (menu, _("_Copy"), "list.copy");
  g_menu_append (menu, _("_Save as CSV…"), save);
  gtk_menu_button_set_icon_name (GTK_MENU_BUTTON (button), "view-more-symbolic");
  gtk_menu_button_set_menu_model (GTK_MENU_BUTTON (button), G_MENU_MODEL (menu));
  gtk_widget_add_css_class (button, "flat");
  gtk_widget_set_tooltip_text (button, name);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  g_object_unref (menu);
  return button;
}

static void
add_header (TrammelFigureList *self)
{
  for (guint i = 0; i < LIST_COLUMNS; i++) {
    GtkWidget *head = gtk_button_new ();

    gtk_button_set_child (GTK_BUTTON (head), cell_new (i));
    gtk_widget_add_css_class (head, "flat");
    gtk_widget_add_css_class (head, "figure-head");
    g_signal_connect (head, "clicked", G_CALLBACK (head_pressed), self);
    self->heads[i] = head;
  }
  self->header = line_new (self->heads);
  gtk_widget_add_css_class (self->header, "figure-heads");
}

static void
trammel_figure_list_map (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (trammel_figure_list_parent_class)->map (widget);
  if (TRAMMEL_FIGURE_LIST (widget)->stale)
    follow (TRAMMEL_FIGURE_LIST (widget));
}

static void
trammel_figure_list_dispose (GObject *object)
{
  TrammelFigureList *self = TRAMMEL_FIGURE_LIST (object);

  g_clear_pointer (&self->rows, list_rows_free);
  g_clear_pointer (&self->memo, places_memo_free);
  g_clear_object (&self->session);
  G_OBJECT_CLASS (trammel_figure_list_parent_class)->dispose (object);
}

static void
trammel_figure_list_class_init (TrammelFigureListClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = trammel_figure_list_dispose;
  widget_class->map = trammel_figure_list_map;
  gtk_widget_class_install_action (widget_class, "list.copy", NULL, copy);
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_c, GDK_CONTROL_MASK, "list.copy", NULL);
}

static void
trammel_figure_list_init (TrammelFigureList *self)
{
  self->sorted = UNSORTED;
  self->stale = true;
  self->memo = places_memo_new ();
}

static void
fill (TrammelFigureList *self, const char *heading)
{
  self->group = trammel_group_new (heading);
  gtk_widget_set_hexpand (self->group, TRUE);
  trammel_group_add_to_heading (TRAMMEL_GROUP (self->group), menu_new (self, heading));
  add_header (self);
  gtk_box_insert_child_after (GTK_BOX (self->group), self->header, gtk_widget_get_first_child (self->group));
  gtk_list_box_set_selection_mode (figure_list_box (self), GTK_SELECTION_MULTIPLE);
  self->beneath = gtk_label_new (NULL);
  gtk_label_set_wrap (GTK_LABEL (self->beneath), TRUE);
  gtk_label_set_xalign (GTK_LABEL (self->beneath), 0);
  gtk_widget_add_css_class (self->beneath, "dim-label");
  gtk_widget_add_css_class (self->beneath, "figure-beneath");
  gtk_box_append (GTK_BOX (self->group), self->beneath);
  gtk_box_append (GTK_BOX (self), self->group);
}

GtkWidget *
trammel_figure_list_new (TrammelSession *session, ReportList list, const char *heading)
{
  TrammelFigureList *self = g_object_new (TRAMMEL_TYPE_FIGURE_LIST, NULL);

  self->session = g_object_ref (session);
  self->list = list;
  fill (self, heading);
  g_signal_connect_swapped (figure_list_box (self), "row-activated", G_CALLBACK (row_chosen), self);
  g_signal_connect_object (session, "changed", G_CALLBACK (follow), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (session, "selection-changed", G_CALLBACK (follow_selection), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_session_settings (session), "changed", G_CALLBACK (follow), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}
