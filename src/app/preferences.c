#include "trammel-config.h"
#include "app/preferences.h"
#include <adwaita.h>
#include <glib/gi18n-lib.h>
#include "app/row-names.h"

/* Units */

static const char *const length_names[] = { N_("Millimetres"), N_("Inches"), NULL };
static const char *const mass_names[]   = { N_("Grams"), N_("Ounces"), NULL };

static GtkWidget *
choice_row (const char *title, const char *const names[], guint chosen)
{
  g_autoptr (GtkStringList) list = gtk_string_list_new (NULL);

  for (size_t i = 0; names[i] != NULL; i++)
    gtk_string_list_append (list, _(names[i]));
  return g_object_new (ADW_TYPE_COMBO_ROW, "title", title, "use-underline", TRUE, "model", list, "selected", chosen, NULL);
}

static void
length_chosen (AdwComboRow *row, GParamSpec *property, TrammelSettings *settings)
{
  Units units = trammel_settings_units (settings);

  units.length = adw_combo_row_get_selected (row) == 1 ? LENGTH_INCH : LENGTH_MM;
  trammel_settings_set_units (settings, units);
}

static void
mass_chosen (AdwComboRow *row, GParamSpec *property, TrammelSettings *settings)
{
  Units units = trammel_settings_units (settings);

  units.mass = adw_combo_row_get_selected (row) == 1 ? MASS_OZ : MASS_G;
  trammel_settings_set_units (settings, units);
}

static GtkWidget *
units_group (TrammelSettings *settings)
{
  GtkWidget *group = adw_preferences_group_new ();
  const Units units = trammel_settings_units (settings);
  GtkWidget *length = choice_row (_("_Lengths"), length_names, units.length == LENGTH_INCH ? 1 : 0);
  GtkWidget *mass = choice_row (_("_Masses"), mass_names, units.mass == MASS_OZ ? 1 : 0);

  adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (group), _("Units"));
  adw_preferences_group_set_description (ADW_PREFERENCES_GROUP (group), _("What is shown and typed. Documents keep millimetres and grams."));
  g_signal_connect_object (length, "notify::selected", G_CALLBACK (length_chosen), settings, 0);
  g_signal_connect_object (mass, "notify::selected", G_CALLBACK (mass_chosen), settings, 0);
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), length);
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), mass);
  return group;
}

/* The sheet */

static const struct { SettingsFlag flag; const char *title, *subtitle; } sheet_flags[] = {
  { SHOW_GRID,      N_("_Grid"),      NULL },
  { SHOW_NAMES,     N_("_Names"),     NULL },
  { SHOW_FIGURES,   N_("_Figures"),   NULL },
  { SHOW_SIDE_VIEW, N_("Side _View"), NULL },
  { SNAPPING,       N_("S_napping"),  N_("Holding Ctrl lets go of it for a moment.") },
};

static void
switch_set (GtkSwitch *knob, GParamSpec *property, TrammelSettings *settings)
{
  const SettingsFlag flag = GPOINTER_TO_INT (g_object_get_data (G_OBJECT (knob), "flag"));

  trammel_settings_set_flag (settings, flag, gtk_switch_get_active (knob));
}

static GtkWidget *
switch_row (TrammelSettings *settings, size_t index)
{
  GtkWidget *row = adw_action_row_new (), *knob = gtk_switch_new ();
  const SettingsFlag flag = sheet_flags[index].flag;

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), _(sheet_flags[index].title));
  adw_preferences_row_set_use_underline (ADW_PREFERENCES_ROW (row), TRUE);
  if (sheet_flags[index].subtitle != NULL)
    adw_action_row_set_subtitle (ADW_ACTION_ROW (row), _(sheet_flags[index].subtitle));
  gtk_switch_set_active (GTK_SWITCH (knob), trammel_settings_flag (settings, flag));
  gtk_widget_set_valign (knob, GTK_ALIGN_CENTER);
  g_object_set_data (G_OBJECT (knob), "flag", GINT_TO_POINTER (flag));
  g_signal_connect_object (knob, "notify::active", G_CALLBACK (switch_set), settings, 0);
  adw_action_row_add_suffix (ADW_ACTION_ROW (row), knob);
  adw_action_row_set_activatable_widget (ADW_ACTION_ROW (row), knob);
  return row;
}

static GtkWidget *
sheet_group (TrammelSettings *settings)
{
  GtkWidget *group = adw_preferences_group_new ();

  adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (group), _("Sheet"));
  for (size_t i = 0; i < G_N_ELEMENTS (sheet_flags); i++)
    adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), switch_row (settings, i));
  return group;
}

void
preferences_present (GtkWindow *parent, TrammelSettings *settings)
{
  GtkWidget *window = adw_preferences_window_new ();
  GtkWidget *page = adw_preferences_page_new ();

  adw_preferences_page_add (ADW_PREFERENCES_PAGE (page), ADW_PREFERENCES_GROUP (units_group (settings)));
  adw_preferences_page_add (ADW_PREFERENCES_PAGE (page), ADW_PREFERENCES_GROUP (sheet_group (settings)));
  adw_preferences_window_add (ADW_PREFERENCES_WINDOW (window), ADW_PREFERENCES_PAGE (page));
  adw_preferences_window_set_search_enabled (ADW_PREFERENCES_WINDOW (window), FALSE);
  gtk_window_set_title (GTK_WINDOW (window), _("Preferences"));
  gtk_window_set_default_size (GTK_WINDOW (window), 520, 620);
  gtk_window_set_transient_for (GTK_WINDOW (window), parent);
  gtk_window_set_modal (GTK_WINDOW (window), TRUE);
  row_names_give (page, _("Preferences"));
  gtk_window_present (GTK_WINDOW (window));
}
