#include "trammel-config.h"
#include "app/help-window.h"
#include <adwaita.h>
#include <glib/gi18n-lib.h>
#include "app/help-page.h"

/* In the order of the list at the side. */
static const char *const page_ids[] = { "index", "numbers", "draw", "plan", "bring-in", "parts", "leads", "arrange", "mark", "sheets", "export", "cautions", "keys" };

typedef struct {
  GtkWidget *window, *list, *content, *scrolled;
} HelpWindow;

/* The page in the first of the person's languages that has it. */
static GPtrArray *
page_load (const char *id)
{
  const char *const *languages = g_get_language_names ();

  for (size_t i = 0; languages[i] != NULL; i++) {
    g_autofree char *path = g_strdup_printf ("/org/trammel/Trammel/help/%s/%s.page", languages[i], id);
    g_autoptr (GBytes) bytes = g_resources_lookup_data (path, 0, NULL);
    gsize length;
    const char *text = bytes == NULL ? NULL : g_bytes_get_data (bytes, &length);

    if (text != NULL)
      return help_page_read (text, (gssize) length, NULL);
  }
  return NULL;
}

static GtkWidget *
block_label (const HelpBlock *block)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_markup (GTK_LABEL (label), block->markup);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_selectable (GTK_LABEL (label), FALSE);
  gtk_widget_set_hexpand (label, TRUE);
  if (block->kind == HELP_TITLE)
    gtk_widget_add_css_class (label, "title-1");
  if (block->kind == HELP_HEADING)
    gtk_widget_add_css_class (label, "title-4");
  if (block->kind == HELP_TERM)
    gtk_widget_add_css_class (label, "heading");
  if (block->kind == HELP_HEADING || block->kind == HELP_TERM)
    gtk_widget_set_margin_top (label, 12);
  return label;
}

/* A bullet or a number hangs before its paragraph. */
static GtkWidget *
block_hang (const HelpBlock *block, GtkWidget *label)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  g_autofree char *sign = block->kind == HELP_STEP ? g_strdup_printf ("%d.", block->number) : g_strdup ("•");
  GtkWidget *before = gtk_label_new (sign);

  gtk_widget_set_valign (before, GTK_ALIGN_START);
  gtk_label_set_width_chars (GTK_LABEL (before), 2);
  gtk_label_set_xalign (GTK_LABEL (before), 1);
  gtk_box_append (GTK_BOX (row), before);
  gtk_box_append (GTK_BOX (row), label);
  return row;
}

static void
help_turn_to (HelpWindow *help, const char *id)
{
  for (size_t i = 0; i < G_N_ELEMENTS (page_ids); i++)
    if (g_str_equal (page_ids[i], id))
      gtk_list_box_select_row (GTK_LIST_BOX (help->list), gtk_list_box_get_row_at_index (GTK_LIST_BOX (help->list), (int) i));
}

static gboolean
link_followed (GtkLabel *label, const char *id, HelpWindow *help)
{
  help_turn_to (help, id);
  return TRUE;
}

static GtkWidget *
block_widget (const HelpBlock *block, HelpWindow *help)
{
  GtkWidget *label = block_label (block);

  g_signal_connect (label, "activate-link", G_CALLBACK (link_followed), help);
  if (block->kind == HELP_NOTE) {
    GtkWidget *card = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
    gtk_widget_add_css_class (card, "card");
    gtk_widget_add_css_class (card, "help-note");
    gtk_box_append (GTK_BOX (card), label);
    return card;
  }
  return block->kind == HELP_STEP || block->kind == HELP_BULLET ? block_hang (block, label) : label;
}

static void
help_show (HelpWindow *help, const char *id)
{
  g_autoptr (GPtrArray) page = page_load (id);
  GtkWidget *old;

  while ((old = gtk_widget_get_first_child (help->content)) != NULL)
    gtk_box_remove (GTK_BOX (help->content), old);
  for (guint i = 0; page != NULL && i < page->len; i++)
    gtk_box_append (GTK_BOX (help->content), block_widget (page->pdata[i], help));
  gtk_adjustment_set_value (gtk_scrolled_window_get_vadjustment (GTK_SCROLLED_WINDOW (help->scrolled)), 0);
}

static void
row_selected (GtkListBox *list, GtkListBoxRow *row, HelpWindow *help)
{
  if (row != NULL)
    help_show (help, page_ids[gtk_list_box_row_get_index (row)]);
}

static void
list_add (GtkWidget *list, const char *id)
{
  g_autoptr (GPtrArray) page = page_load (id);
  g_autofree char *title = page == NULL ? g_strdup (id) : help_page_title (page);
  GtkWidget *label = gtk_label_new (NULL), *row;

  gtk_label_set_markup (GTK_LABEL (label), title);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  gtk_list_box_append (GTK_LIST_BOX (list), label);
  row = gtk_widget_get_parent (label);
  gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, gtk_label_get_text (GTK_LABEL (label)), -1);
}

static GtkWidget *
help_build_list (HelpWindow *help)
{
  help->list = gtk_list_box_new ();
  gtk_widget_add_css_class (help->list, "navigation-sidebar");
  gtk_widget_set_size_request (help->list, 210, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (help->list), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Pages"), -1);
  for (size_t i = 0; i < G_N_ELEMENTS (page_ids); i++)
    list_add (help->list, page_ids[i]);
  g_signal_connect (help->list, "row-selected", G_CALLBACK (row_selected), help);
  return help->list;
}

static GtkWidget *
help_build_page (HelpWindow *help)
{
  GtkWidget *clamp = adw_clamp_new ();

  help->content = gtk_box_new (GTK_ORIENTATION_VERTICAL, 9);
  help->scrolled = gtk_scrolled_window_new ();
  gtk_widget_add_css_class (help->content, "help-page");
  gtk_accessible_update_property (GTK_ACCESSIBLE (help->scrolled), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Page"), -1);
  adw_clamp_set_child (ADW_CLAMP (clamp), help->content);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (help->scrolled), clamp);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (help->scrolled), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_widget_set_hexpand (help->scrolled, TRUE);
  return help->scrolled;
}

static GtkWidget *
help_build (HelpWindow *help)
{
  GtkWidget *all = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0), *middle = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  GtkWidget *page = help_build_page (help);

  gtk_box_append (GTK_BOX (all), adw_header_bar_new ());
  gtk_box_append (GTK_BOX (middle), help_build_list (help));
  gtk_box_append (GTK_BOX (middle), gtk_separator_new (GTK_ORIENTATION_VERTICAL));
  gtk_box_append (GTK_BOX (middle), page);
  gtk_widget_set_vexpand (middle, TRUE);
  gtk_box_append (GTK_BOX (all), middle);
  return all;
}

static void
window_close_on (GtkWidget *window, guint key, GdkModifierType held)
{
  GtkEventController *keys = gtk_shortcut_controller_new ();

  gtk_shortcut_controller_add_shortcut (GTK_SHORTCUT_CONTROLLER (keys),
    gtk_shortcut_new (gtk_keyval_trigger_new (key, held), gtk_named_action_new ("window.close")));
  gtk_widget_add_controller (window, keys);
}

static HelpWindow *
help_window_new (void)
{
  HelpWindow *help = g_new0 (HelpWindow, 1);
  g_autoptr (GtkWindowGroup) group = gtk_window_group_new ();

  help->window = g_object_new (ADW_TYPE_WINDOW, "title", _("Help"), "default-width", 860, "default-height", 640, NULL);
  adw_window_set_content (ADW_WINDOW (help->window), help_build (help));
  window_close_on (help->window, GDK_KEY_Escape, 0);
  window_close_on (help->window, GDK_KEY_w, GDK_CONTROL_MASK);
  g_object_set_data_full (G_OBJECT (help->window), "help", help, g_free);
  /* A dialog that waits for an answer holds the windows of its group, and this one is read beside it. */
  gtk_window_group_add_window (group, GTK_WINDOW (help->window));
  gtk_list_box_select_row (GTK_LIST_BOX (help->list), gtk_list_box_get_row_at_index (GTK_LIST_BOX (help->list), 0));
  return help;
}

static void
help_window_gone (gpointer application, GObject *window)
{
  g_object_set_data (application, "help-window", NULL);
}

/* It belongs to the program, not to a document: closing a document leaves it open, and it alone does not keep the program running. */
void
help_window_present (GtkApplication *application, const char *page)
{
  GtkWindow *there = g_object_get_data (G_OBJECT (application), "help-window");

  if (there == NULL) {
    there = GTK_WINDOW (help_window_new ()->window);
    g_object_set_data (G_OBJECT (application), "help-window", there);
    g_object_weak_ref (G_OBJECT (there), help_window_gone, application);
    g_signal_connect_object (application, "shutdown", G_CALLBACK (gtk_window_destroy), there, G_CONNECT_SWAPPED);
  }
  if (page != NULL)
    help_turn_to (g_object_get_data (G_OBJECT (there), "help"), page);
  gtk_window_present (there);
}
