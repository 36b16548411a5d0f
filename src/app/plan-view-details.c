#include "app/plan-view-details.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "app/choice-list.h"
#include "app/plan-edit.h"
#include "app/plan-view-edit.h"

typedef struct {
  TrammelSheetCanvas *sheet;
  GtkWidget *button;
  GtkWidget *shows, *side, *flipped, *place, *remove;       /* NULL until first opened */
  GtkWidget *shows_words, *side_words;
  bool refreshing;
} Details;

static const char key[] = "trammel-plan-view-details";

static const char *
side_name (ViewSide side)
{
  switch (side) {
    case VIEW_STARBOARD: return _("Starboard Half");
    case VIEW_PORT:      return _("Port Half");
    default:             return _("Both Halves");
  }
}

static bool
has_halves (ViewShows shows)
{
  return shows != VIEW_FIN && shows != VIEW_BODY_SIDE;
}

static void
details_changed (Details *self)
{
  PlanView wanted;
  bool there;

  if (self->refreshing || plan_edit_plan (self->sheet) == NULL)
    return;
  wanted = plan_view_shown (self->sheet, &there);
  if (there)
    wanted.shows = (ViewShows) gtk_drop_down_get_selected (GTK_DROP_DOWN (self->shows));
  wanted.side = (ViewSide) gtk_drop_down_get_selected (GTK_DROP_DOWN (self->side));
  wanted.flipped = gtk_check_button_get_active (GTK_CHECK_BUTTON (self->flipped));
  plan_view_set (self->sheet, wanted);
}

static void
details_place (Details *self)
{
  gtk_menu_button_popdown (GTK_MENU_BUTTON (self->button));
  plan_view_place (self->sheet);
}

static void
details_remove (Details *self)
{
  gtk_menu_button_popdown (GTK_MENU_BUTTON (self->button));
  plan_view_remove (self->sheet);
}

/* A list with its name before it; both in the grid's next row. */
static GtkWidget *
details_list (Details *self, GtkGrid *grid, int row, const char *name, const char *const words[], GtkWidget **label)
{
  GtkWidget *list = choice_list_new_of_words (words);

  *label = gtk_label_new (name);
  gtk_label_set_xalign (GTK_LABEL (*label), 0);
  gtk_widget_set_hexpand (list, TRUE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (list), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (list)), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  g_signal_connect_swapped (list, "notify::selected", G_CALLBACK (details_changed), self);
  gtk_grid_attach (grid, *label, 0, row, 1, 1);
  gtk_grid_attach (grid, list, 1, row, 1, 1);
  return list;
}

static GtkWidget *
details_button (Details *self, GtkGrid *grid, int row, const char *label, GCallback clicked)
{
  GtkWidget *button = gtk_button_new_with_label (label);

  g_signal_connect_swapped (button, "clicked", clicked, self);
  gtk_grid_attach (grid, button, 0, row, 2, 1);
  return button;
}

static void
details_build (Details *self, GtkGrid *grid)
{
  const char *shows[VIEW_SHOWS_COUNT + 1] = { NULL }, *sides[VIEW_SIDE_COUNT + 1] = { NULL };

  for (int i = 0; i < VIEW_SHOWS_COUNT; i++)
    shows[i] = view_shows_name ((ViewShows) i);
  for (int i = 0; i < VIEW_SIDE_COUNT; i++)
    sides[i] = side_name ((ViewSide) i);
  self->shows = details_list (self, grid, 0, _("What the View Shows"), shows, &self->shows_words);
  self->side = details_list (self, grid, 1, _("Half Drawn"), sides, &self->side_words);
  self->flipped = gtk_check_button_new_with_label (_("Flipped: drawn from below, or nose to the right"));
  g_signal_connect_swapped (self->flipped, "toggled", G_CALLBACK (details_changed), self);
  gtk_grid_attach (grid, self->flipped, 0, 2, 2, 1);
  self->place = details_button (self, grid, 3, _("Click Its Place in the Side View"), G_CALLBACK (details_place));
  self->remove = details_button (self, grid, 4, _("Remove View"), G_CALLBACK (details_remove));
}

static void
details_fill (Details *self)
{
  bool there;
  const PlanView shown = plan_view_shown (self->sheet, &there);

  self->refreshing = true;
  gtk_drop_down_set_selected (GTK_DROP_DOWN (self->shows), shown.shows);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (self->side), shown.side);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (self->flipped), shown.flipped);
  gtk_widget_set_visible (self->shows, there);
  gtk_widget_set_visible (self->shows_words, there);
  gtk_widget_set_visible (self->side, has_halves (shown.shows));
  gtk_widget_set_visible (self->side_words, has_halves (shown.shows));
  gtk_widget_set_visible (self->place, there && plan_view_can_be_placed (self->sheet));
  gtk_widget_set_visible (self->remove, there);
  self->refreshing = false;
}

static void
details_open (GtkMenuButton *button, gpointer data)
{
  Details *self = data;
  GtkWidget *grid, *popover;

  if (self->shows == NULL) {
    grid = gtk_grid_new ();
    popover = gtk_popover_new ();
    gtk_grid_set_row_spacing (GTK_GRID (grid), 6);
    gtk_grid_set_column_spacing (GTK_GRID (grid), 12);
    details_build (self, GTK_GRID (grid));
    gtk_popover_set_child (GTK_POPOVER (popover), grid);
    gtk_menu_button_set_popover (button, popover);
  }
  if (plan_edit_plan (self->sheet) != NULL)
    details_fill (self);
}

GtkWidget *
plan_view_details_new (TrammelSheetCanvas *sheet)
{
  Details *self = g_new0 (Details, 1);

  *self = (Details) { .sheet = sheet, .button = gtk_menu_button_new () };
  g_object_set_data_full (G_OBJECT (self->button), key, self, g_free);
  gtk_menu_button_set_create_popup_func (GTK_MENU_BUTTON (self->button), details_open, self, NULL);
  gtk_widget_set_focus_on_click (self->button, FALSE);
  gtk_widget_set_tooltip_text (self->button, _("About This View"));
  return self->button;
}

/* A menu button makes a new label of every word it is given, and what a pointer is on its way to must not go. */
static void
details_say (GtkWidget *button, const char *words)
{
  if (g_strcmp0 (gtk_menu_button_get_label (GTK_MENU_BUTTON (button)), words) != 0)
    gtk_menu_button_set_label (GTK_MENU_BUTTON (button), words);
}

void
plan_view_details_refresh (GtkWidget *button)
{
  Details *self = g_object_get_data (G_OBJECT (button), key);
  bool there;
  const PlanView shown = plan_view_shown (self->sheet, &there);
  const char *words = has_halves (shown.shows) ? side_name (shown.side) : _("Details");
  /* Translators: which half of a thing a view of a plan shows. */
  g_autofree char *flipped = g_strdup_printf (_("%s, Flipped"), words);

  details_say (button, shown.flipped ? flipped : words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, _("About This View"), -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (button)), GTK_ACCESSIBLE_PROPERTY_LABEL, _("About This View"), -1);
  if (self->shows != NULL)
    details_fill (self);
}
