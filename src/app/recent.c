#include "trammel-config.h"
#include "app/recent.h"
#include <glib/gi18n-lib.h>
#include <stdbool.h>
#include <gtk/gtk.h>

enum { MOST_SHOWN = 8 };
static const char document_type[] = "application/x-trammel+xml";

static char *
path_uri (const char *path)
{
  g_autoptr (GFile) file = g_file_new_for_path (path);

  return g_file_get_uri (file);
}

/* Who has switched off on the desktop that files are remembered means this program's, too. */
static bool
remembers (void)
{
  gboolean enabled = TRUE;

  g_object_get (gtk_settings_get_default (), "gtk-recent-files-enabled", &enabled, NULL);
  return enabled;
}

void
recent_add (const char *path)
{
  g_autofree char *uri = path_uri (path);
  char *groups[] = { NULL };
  GtkRecentData data = { .mime_type = (char *) document_type, .app_name = (char *) "Trammel", .app_exec = (char *) "trammel %f",
                         .groups = groups };

  if (remembers ())
    gtk_recent_manager_add_full (gtk_recent_manager_get_default (), uri, &data);
}

void
recent_forget_missing (const char *path)
{
  g_autofree char *uri = path_uri (path);

  if (!g_file_test (path, G_FILE_TEST_EXISTS))
    gtk_recent_manager_remove_item (gtk_recent_manager_get_default (), uri, NULL);
}

static int
later_first (gconstpointer a, gconstpointer b)
{
  return g_date_time_compare (gtk_recent_info_get_modified ((GtkRecentInfo *) b), gtk_recent_info_get_modified ((GtkRecentInfo *) a));
}

static void
section_add (GMenu *section, GtkRecentInfo *info)
{
  g_autofree char *path = g_filename_from_uri (gtk_recent_info_get_uri (info), NULL, NULL);
  g_autofree char *name = NULL;
  g_auto (GStrv) words = NULL;
  g_autofree char *label = NULL;
  g_autoptr (GMenuItem) item = NULL;

  if (path == NULL)
    return;
  name = g_path_get_basename (path);
  words = g_strsplit (name, "_", -1);
  label = g_strjoinv ("__", words);      /* doubled it stands for itself, single it would mark a letter */
  item = g_menu_item_new (label, NULL);
  g_menu_item_set_action_and_target (item, "app.open-path", "s", path);
  g_menu_append_item (section, item);
}

static GMenu *
recent_section (void)
{
  GMenu *section = g_menu_new ();
  GList *all = g_list_sort (gtk_recent_manager_get_items (gtk_recent_manager_get_default ()), later_first);

  for (GList *each = all; each != NULL && g_menu_model_get_n_items (G_MENU_MODEL (section)) < MOST_SHOWN; each = each->next)
    if (g_str_equal (gtk_recent_info_get_mime_type (each->data), document_type))
      section_add (section, each->data);
  g_list_free_full (all, (GDestroyNotify) gtk_recent_info_unref);
  return section;
}

/* Their names are invented and stay the same in every language. */
static const struct { const char *label, *action; } examples[] = {
  { "Saltmarsh Racer", "app.open-example::saltmarsh-racer" },
  { "Heron Tourer",    "app.open-example::heron-tourer" },
};

static GMenu *
example_section (void)
{
  GMenu *section = g_menu_new ();

  for (size_t i = 0; i < G_N_ELEMENTS (examples); i++)
    g_menu_append (section, examples[i].label, examples[i].action);
  return section;
}

static bool
section_equal (GMenuModel *a, GMenuModel *b)
{
  bool equal = g_menu_model_get_n_items (a) == g_menu_model_get_n_items (b);

  for (int i = 0; equal && i < g_menu_model_get_n_items (a); i++) {
    g_autoptr (GVariant) path_a = g_menu_model_get_item_attribute_value (a, i, G_MENU_ATTRIBUTE_TARGET, NULL);
    g_autoptr (GVariant) path_b = g_menu_model_get_item_attribute_value (b, i, G_MENU_ATTRIBUTE_TARGET, NULL);
    equal = g_variant_equal (path_a, path_b);
  }
  return equal;
}

/* The list tells of every writing of its file; the menu that a person may be reading changes only when it must. */
static bool
menu_lists (GMenu *menu, GMenu *recent)
{
  g_autoptr (GMenuModel) shown = NULL;

  if (g_menu_model_get_n_items (G_MENU_MODEL (menu)) < 2)
    return g_menu_model_get_n_items (G_MENU_MODEL (menu)) == 1 && g_menu_model_get_n_items (G_MENU_MODEL (recent)) == 0;
  shown = g_menu_model_get_item_link (G_MENU_MODEL (menu), 0, G_MENU_LINK_SECTION);
  return section_equal (shown, G_MENU_MODEL (recent));
}

static void
menu_fill (GMenu *menu)
{
  g_autoptr (GMenu) recent = recent_section ();
  g_autoptr (GMenu) example = example_section ();

  if (menu_lists (menu, recent))
    return;
  g_menu_remove_all (menu);
  if (g_menu_model_get_n_items (G_MENU_MODEL (recent)) > 0)
    g_menu_append_section (menu, _("Recent"), G_MENU_MODEL (recent));
  g_menu_append_section (menu, _("Examples"), G_MENU_MODEL (example));
}

GMenuModel *
recent_menu (void)
{
  GMenu *menu = g_menu_new ();

  menu_fill (menu);
  g_signal_connect_object (gtk_recent_manager_get_default (), "changed", G_CALLBACK (menu_fill), menu, G_CONNECT_SWAPPED);
  return G_MENU_MODEL (menu);
}
