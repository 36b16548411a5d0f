#include "trammel-config.h"
#include "app/page-chooser.h"
#include <adwaita.h>
#include <glib/gi18n-lib.h>
#include "app/first-frame.h"
#include "app/page-item.h"

enum { THUMB_WIDTH = 170, THUMB_HEIGHT = 180, WIDTH = 640, HEIGHT = 520 };

typedef struct {
  GtkWidget *window, *grid;
  PageDrawer *drawer;
  GtkSingleSelection *pages;
  PageChoice choice;
  bool answered;
} Chooser;

/* It goes with its window. */
static void
chooser_answer (Chooser *self, int page)
{
  const PageChoice choice = self->choice;

  if (self->answered)
    return;
  self->answered = true;
  gtk_window_destroy (GTK_WINDOW (self->window));
  choice.chosen (page, choice.data);
}

static void
chooser_free (gpointer data)
{
  Chooser *self = data;

  page_drawer_stop (self->drawer);
  g_free (self);
}

static void
chooser_open (Chooser *self)
{
  TrammelPageItem *item = gtk_single_selection_get_selected_item (self->pages);

  if (item != NULL)
    chooser_answer (self, trammel_page_item_page (item));
}

static void
chooser_cancel (Chooser *self)
{
  chooser_answer (self, 0);
}

static gboolean
chooser_closed (Chooser *self)
{
  chooser_answer (self, 0);
  return TRUE;
}

/* One page in the grid: its picture over its words */

static void
page_setup (GtkSignalListItemFactory *factory, GtkListItem *cell)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  GtkWidget *picture = gtk_picture_new (), *words = gtk_label_new (NULL);

  gtk_widget_set_size_request (picture, THUMB_WIDTH, THUMB_HEIGHT);
  gtk_accessible_update_property (GTK_ACCESSIBLE (picture), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Page"), -1);
  gtk_widget_add_css_class (box, "page-cell");
  gtk_label_set_wrap (GTK_LABEL (words), TRUE);
  gtk_label_set_justify (GTK_LABEL (words), GTK_JUSTIFY_CENTER);
  gtk_box_append (GTK_BOX (box), picture);
  gtk_box_append (GTK_BOX (box), words);
  gtk_list_item_set_child (cell, box);
}

static void
page_bind (GtkSignalListItemFactory *factory, GtkListItem *cell)
{
  TrammelPageItem *item = gtk_list_item_get_item (cell);
  GtkWidget *box = gtk_list_item_get_child (cell), *picture = gtk_widget_get_first_child (box);
  GBinding *shown = g_object_bind_property (item, "picture", picture, "paintable", G_BINDING_SYNC_CREATE);
  GBinding *said = g_object_bind_property (item, "words", gtk_widget_get_last_child (box), "label", G_BINDING_SYNC_CREATE);

  g_object_set_data (G_OBJECT (cell), "shown", shown);
  g_object_set_data (G_OBJECT (cell), "said", said);
  trammel_page_item_show (item, true);
}

static void
page_unbind (GtkSignalListItemFactory *factory, GtkListItem *cell)
{
  g_binding_unbind (g_object_get_data (G_OBJECT (cell), "shown"));
  g_binding_unbind (g_object_get_data (G_OBJECT (cell), "said"));
  trammel_page_item_show (gtk_list_item_get_item (cell), false);
}

static GtkWidget *
chooser_grid (Chooser *self)
{
  GListStore *items = g_list_store_new (TRAMMEL_TYPE_PAGE_ITEM);
  GtkListItemFactory *factory = gtk_signal_list_item_factory_new ();
  GtkWidget *scroller = gtk_scrolled_window_new ();

  for (int page = 1; page <= self->choice.pages; page++) {
    g_autoptr (TrammelPageItem) item = trammel_page_item_new (self->drawer, page);

    g_list_store_append (items, item);
  }
  g_signal_connect (factory, "setup", G_CALLBACK (page_setup), NULL);
  g_signal_connect (factory, "bind", G_CALLBACK (page_bind), NULL);
  g_signal_connect (factory, "unbind", G_CALLBACK (page_unbind), NULL);
  self->pages = gtk_single_selection_new (G_LIST_MODEL (items));
  self->grid = gtk_grid_view_new (GTK_SELECTION_MODEL (self->pages), factory);
  gtk_grid_view_set_max_columns (GTK_GRID_VIEW (self->grid), 6);
  gtk_grid_view_set_min_columns (GTK_GRID_VIEW (self->grid), 2);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->grid), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Pages"), -1);
  g_signal_connect_swapped (self->grid, "activate", G_CALLBACK (chooser_open), self);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), self->grid);
  gtk_accessible_update_property (GTK_ACCESSIBLE (scroller), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Pages"), -1);
  gtk_widget_set_vexpand (scroller, TRUE);
  return scroller;
}

static GtkWidget *
chooser_button (Chooser *self, const char *label, GCallback pressed)
{
  GtkWidget *button = gtk_button_new_with_mnemonic (label);

  g_signal_connect_swapped (button, "clicked", pressed, self);
  return button;
}

static GtkWidget *
chooser_header (Chooser *self)
{
  GtkWidget *header = adw_header_bar_new ();
  GtkWidget *open = chooser_button (self, _("_Open Page"), G_CALLBACK (chooser_open));

  adw_header_bar_set_show_start_title_buttons (ADW_HEADER_BAR (header), FALSE);
  adw_header_bar_set_show_end_title_buttons (ADW_HEADER_BAR (header), FALSE);
  adw_header_bar_set_title_widget (ADW_HEADER_BAR (header), adw_window_title_new (_("Choose a Page"), self->choice.name));
  adw_header_bar_pack_start (ADW_HEADER_BAR (header), chooser_button (self, _("_Cancel"), G_CALLBACK (chooser_cancel)));
  gtk_widget_add_css_class (open, "suggested-action");
  adw_header_bar_pack_end (ADW_HEADER_BAR (header), open);
  return header;
}

/* Escape leaves, as everywhere. */
static void
chooser_add_keys (Chooser *self)
{
  GtkEventController *keys = gtk_shortcut_controller_new ();

  gtk_shortcut_controller_add_shortcut (GTK_SHORTCUT_CONTROLLER (keys),
                                        gtk_shortcut_new (gtk_shortcut_trigger_parse_string ("Escape"), gtk_named_action_new ("window.close")));
  gtk_widget_add_controller (self->window, keys);
}

/* There is no first page to take the keyboard before there is a grid. */
static void
chooser_focus (GtkWidget *window)
{
  Chooser *self = g_object_get_data (G_OBJECT (window), "trammel-pages");

  gtk_widget_child_focus (self->grid, GTK_DIR_TAB_FORWARD);
}

GtkWidget *
page_chooser_present (GtkWindow *parent, const PageChoice *choice)
{
  Chooser *self = g_new0 (Chooser, 1);
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);

  self->choice = *choice;
  self->drawer = page_drawer_new (choice->file, choice->units);
  self->window = adw_window_new ();
  gtk_window_set_title (GTK_WINDOW (self->window), _("Choose a Page"));
  gtk_window_set_transient_for (GTK_WINDOW (self->window), parent);
  gtk_window_set_modal (GTK_WINDOW (self->window), TRUE);
  gtk_window_set_destroy_with_parent (GTK_WINDOW (self->window), TRUE);
  gtk_window_set_default_size (GTK_WINDOW (self->window), WIDTH, HEIGHT);
  gtk_box_append (GTK_BOX (box), chooser_header (self));
  gtk_box_append (GTK_BOX (box), chooser_grid (self));
  adw_window_set_content (ADW_WINDOW (self->window), box);
  chooser_add_keys (self);
  self->choice.name = NULL;
  g_object_set_data_full (G_OBJECT (self->window), "trammel-pages", self, chooser_free);
  g_signal_connect_swapped (self->window, "close-request", G_CALLBACK (chooser_closed), self);
  gtk_window_present (GTK_WINDOW (self->window));
  first_frame_then (self->window, chooser_focus);
  return self->window;
}

void
page_chooser_dismiss (GtkWidget *chooser)
{
  Chooser *self = g_object_get_data (G_OBJECT (chooser), "trammel-pages");

  self->answered = true;
  gtk_window_destroy (GTK_WINDOW (chooser));
}
