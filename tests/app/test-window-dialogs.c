/* What the window asks and shows: the ways to start, the cautions, preferences, help, and where the keyboard goes. */
#include <string.h>
#include <glib/gstdio.h>
#include "app/strip.h"
#include "support/stage.h"

static GtkWidget *
find (TrammelWindow *window, const char *words)
{
  return gui_await (GTK_WIDGET (window), words);
}

/* Starting */

START_TEST (draw_an_outline_takes_the_tool_and_leaves_the_sheet_free)
{
  TrammelWindow *window = stage_open (NULL);

  gui_click (find (window, "Draw an Outline"));
  ck_assert_ptr_null (gui_find (GTK_WIDGET (window), "Where Must It Balance?"));
  ck_assert (gtk_toggle_button_get_active (GTK_TOGGLE_BUTTON (find (window, "Outline"))));
}
END_TEST

START_TEST (start_from_numbers_makes_a_wing_in_one_step)
{
  TrammelWindow *window = stage_open (NULL);

  gui_click (find (window, "Start from Numbers…"));
  ck_assert_ptr_null (gui_find (GTK_WIDGET (window), "Where Must It Balance?"));
  gui_key ("Return");
  gui_settle ();
  ck_assert_ptr_nonnull (gui_find (GTK_WIDGET (window), "Span"));
}
END_TEST

START_TEST (what_has_nothing_to_act_on_cannot_be_pressed)
{
  TrammelWindow *window = stage_open (NULL);

  ck_assert (!gtk_widget_get_sensitive (find (window, "Print or Export…")));
  gui_click (find (window, "Look at the Example"));
  ck_assert (gtk_widget_get_sensitive (gui_find (GTK_WIDGET (stage_window ("Saltmarsh Racer")), "Print or Export…")));
}
END_TEST

START_TEST (cautions_lie_on_the_sheet_until_understood_and_hold_nothing_up)
{
  TrammelSettings *settings = trammel_application_settings (stage_application ());
  TrammelWindow *window;

  trammel_settings_set_flag (settings, CAUTIONS_READ, false);
  window = stage_open (NULL);
  find (window, "Before You Build and Fly");
  gui_click (find (window, "Look at the Example"));
  stage_window ("Saltmarsh Racer");
  gui_click (find (window, "Understood"));
  ck_assert (trammel_settings_flag (settings, CAUTIONS_READ));
  ck_assert_ptr_null (gui_find (GTK_WIDGET (window), "Before You Build and Fly"));
  ck_assert_ptr_eq (gtk_root_get_focus (GTK_ROOT (window)), find (window, "Sheet"));
}
END_TEST

/* Preferences */

START_TEST (units_chosen_in_preferences_are_the_windows_at_once)
{
  TrammelWindow *window = stage_racer ();
  GtkWindow *preferences;

  gui_key ("<Control>comma");
  preferences = gui_await_window ("Preferences");
  gui_present (preferences);
  stage_pick (preferences, "Lengths", "Inches");
  stage_pick (preferences, "Masses", "Ounces");
  ck_assert_int_eq (trammel_session_units (trammel_window_session (window)).length, LENGTH_INCH);
  ck_assert_int_eq (trammel_session_units (trammel_window_session (window)).mass, MASS_OZ);
  gui_key ("Escape");
  gui_present (GTK_WINDOW (window));
  gui_await (GTK_WIDGET (window), "in");
  gui_await (GTK_WIDGET (window), "oz");
}
END_TEST

START_TEST (each_switch_of_the_sheet_is_kept)
{
  static const struct { const char *title; SettingsFlag flag; } switches[] = {
    { "Grid", SHOW_GRID }, { "Names", SHOW_NAMES }, { "Figures", SHOW_FIGURES }, { "Side View", SHOW_SIDE_VIEW }, { "Snapping", SNAPPING },
  };
  TrammelSettings *settings = trammel_application_settings (stage_application ());
  GtkWindow *preferences;

  stage_racer ();
  gui_key ("<Control>comma");
  preferences = gui_await_window ("Preferences");
  gui_present (preferences);
  for (size_t i = 0; i < G_N_ELEMENTS (switches); i++) {
    const bool before = trammel_settings_flag (settings, switches[i].flag);
    gui_click (gui_await (GTK_WIDGET (preferences), switches[i].title));
    ck_assert_msg (trammel_settings_flag (settings, switches[i].flag) != before, "%s does nothing", switches[i].title);
    gui_click (gui_await (GTK_WIDGET (preferences), switches[i].title));
    ck_assert (trammel_settings_flag (settings, switches[i].flag) == before);
  }
}
END_TEST

START_TEST (the_view_menu_and_the_preferences_are_one_choice)
{
  TrammelSettings *settings = trammel_application_settings (stage_application ());
  TrammelWindow *window = stage_racer ();
  g_autoptr (GVariant) state = NULL;

  gui_key ("F10");
  gui_click (find (window, "View"));
  gui_click (find (window, "Grid"));
  ck_assert (!trammel_settings_flag (settings, SHOW_GRID));
  trammel_settings_set_flag (settings, SHOW_GRID, true);
  state = g_action_group_get_action_state (G_ACTION_GROUP (window), "show-grid");
  ck_assert (g_variant_get_boolean (state));
}
END_TEST

/* Help */

START_TEST (help_opens_with_its_key_follows_its_list_and_closes_with_escape)
{
  GtkWindow *help;

  stage_racer ();
  gui_key ("F1");
  help = gui_await_window ("Help");
  gui_present (help);
  gui_await (GTK_WIDGET (help), "Where Must It Balance?");
  gui_click (gui_await (GTK_WIDGET (help), "Cautions"));
  gui_await (GTK_WIDGET (help), "Keep clear of propellers; take the propeller off for bench work.");
  gui_key ("Escape");
  gui_settle ();
  ck_assert (!gui_window_is_there ("Help"));
}
END_TEST

/* A tool's key, and what the help's page about it begins with. */
static const struct { const char *key, *says; } tools[] = { { "o", "Draw Outlines" }, { "p", "Parts and Masses" }, { "s", "Where Must It Balance?" } };

START_TEST (the_key_for_help_opens_the_page_about_the_tool_in_hand)
{
  GtkWindow *help;
  GtkWidget *page;

  stage_racer ();
  gui_key (tools[_i].key);
  gui_settle ();
  gui_key ("F1");
  help = gui_await_window ("Help");
  gui_present (help);
  page = gui_await (GTK_WIDGET (help), "Page");
  gui_await (page, tools[_i].says);
  gui_key ("Escape");
  gui_settle ();
}
END_TEST

START_TEST (about_and_shortcuts_open_from_menu_and_key)
{
  TrammelWindow *window = stage_racer ();

  gui_key ("F10");
  gui_click (find (window, "About Trammel"));
  gui_present (gui_await_window_type (ADW_TYPE_ABOUT_WINDOW));
  gui_key ("Escape");
  gui_present (GTK_WINDOW (window));
  gui_key ("<Control>question");
  gui_present (gui_await_window_type (GTK_TYPE_SHORTCUTS_WINDOW));
  gui_key ("Escape");
}
END_TEST

/* The keyboard's way, and the panel */

static bool
focus_is_below (TrammelWindow *window, const char *words)
{
  GtkWidget *focus = gtk_root_get_focus (GTK_ROOT (window)), *place = find (window, words);

  return focus != NULL && (focus == place || gtk_widget_is_ancestor (focus, place));
}

START_TEST (f6_goes_from_tools_to_sheet_to_panel_and_back)
{
  TrammelWindow *window = stage_racer ();

  gtk_widget_grab_focus (find (window, "Sheet"));
  gui_key ("F6");
  ck_assert (gtk_widget_is_ancestor (gtk_root_get_focus (GTK_ROOT (window)), gui_find_type (GTK_WIDGET (window), ADW_TYPE_FLAP)));
  ck_assert (!focus_is_below (window, "Sheet") && !focus_is_below (window, "Drawing Tools"));
  gui_key ("F6");
  ck_assert (focus_is_below (window, "Drawing Tools"));
  gui_key ("F6");
  ck_assert (focus_is_below (window, "Sheet"));
  gui_key ("<Shift>F6");
  ck_assert (focus_is_below (window, "Drawing Tools"));
}
END_TEST

static GtkWidget *
racers_sheet (TrammelWindow *window)
{
  return find (window, "Sheet");
}

/* What is typed and not yet taken goes back with it. */
START_TEST (esc_leaves_a_field_of_the_panel_and_esc_again_selects_nothing)
{
  TrammelWindow *window = stage_racer ();

  gtk_widget_grab_focus (racers_sheet (window));
  gui_key ("Tab");
  gui_settle ();
  ck_assert (!selection_is_empty (trammel_session_selection (trammel_window_session (window))));
  for (int typed = 0; typed < 2; typed++) {
    g_autoptr (Aeroplane) before = aeroplane_ref ((Aeroplane *) stage_aeroplane (window));

    gui_key ("Return");
    ck_assert (!focus_is_below (window, "Sheet"));
    if (typed)
      gui_type ("7");
    gui_key ("Escape");
    ck_assert (focus_is_below (window, "Sheet"));
    ck_assert (aeroplane_equal (stage_aeroplane (window), before));
    ck_assert (!selection_is_empty (trammel_session_selection (trammel_window_session (window))));
  }
  gui_key ("Escape");
  ck_assert (selection_is_empty (trammel_session_selection (trammel_window_session (window))));
}
END_TEST

START_TEST (f9_folds_the_panel_away_and_the_fold_is_remembered)
{
  TrammelSettings *settings = trammel_application_settings (stage_application ());
  TrammelWindow *window = stage_racer ();

  gui_key ("F9");
  ck_assert (!trammel_settings_flag (settings, SHOW_PANEL));
  ck_assert_ptr_null (gui_find (GTK_WIDGET (window), "Static Margin"));
  gui_click (find (window, "Side panel"));
  ck_assert (trammel_settings_flag (settings, SHOW_PANEL));
  find (window, "Static Margin");
}
END_TEST

START_TEST (the_answer_takes_the_keyboard_even_from_a_folded_panel)
{
  TrammelWindow *window = stage_racer ();

  gui_key ("F9");
  gui_key ("<Control><Shift>a");
  find (window, "Static Margin");
  gui_settle ();
  ck_assert (!focus_is_below (window, "Sheet"));
}
END_TEST

typedef struct { GtkInscription *zoom; const char *text; } ZoomTold;

static bool
zoom_is_told (gpointer data)
{
  const ZoomTold *told = data;

  return g_str_equal (gtk_inscription_get_text (told->zoom), told->text);
}

static bool
zoom_is_not_told (gpointer data)
{
  return !zoom_is_told (data);
}

START_TEST (zoom_follows_its_keys_from_anywhere)
{
  TrammelWindow *window = stage_racer ();
  GtkInscription *zoom = GTK_INSCRIPTION (gui_find_type (find (window, "Zoom"), GTK_TYPE_INSCRIPTION));
  g_autofree char *before = g_strdup (gtk_inscription_get_text (zoom));
  ZoomTold as_before = { zoom, before }, true_size = { zoom, "100\u00a0%" };

  gui_key ("<Control>plus");
  ck_assert (gui_wait (zoom_is_not_told, &as_before));
  gui_key ("<Control>minus");
  ck_assert (gui_wait (zoom_is_told, &as_before));
  gui_key ("<Control>0");
  ck_assert (gui_wait (zoom_is_told, &true_size));
}
END_TEST

START_TEST (of_two_works_under_way_the_end_of_the_first_does_not_hide_the_other)
{
  TrammelWindow *window = stage_racer ();
  g_autoptr (GCancellable) first = g_cancellable_new (), second = g_cancellable_new ();

  trammel_window_tell_busy (window, "Looking…", first);
  trammel_window_tell_busy (window, "Looking again…", second);
  trammel_window_tell_busy (window, NULL, first);
  ck_assert (trammel_window_tells (window, "Looking again…"));
  gui_click (find (window, "Cancel"));
  ck_assert (g_cancellable_is_cancelled (second));
  ck_assert (!g_cancellable_is_cancelled (first));
  trammel_window_tell_busy (window, NULL, second);
  ck_assert (!trammel_window_tells (window, "Looking again…"));
}
END_TEST

START_TEST (the_end_of_a_work_does_not_hide_what_was_said_meanwhile)
{
  TrammelWindow *window = stage_racer ();
  g_autoptr (GCancellable) work = g_cancellable_new ();

  trammel_window_tell_busy (window, "Looking…", work);
  trammel_window_tell (window, "Nobody has read this yet.");
  trammel_window_tell_busy (window, NULL, work);
  ck_assert (trammel_window_tells (window, "Nobody has read this yet."));
}
END_TEST

static TCase *
case_of_starting (void)
{
  TCase *tests = tcase_create ("starting and help");

  tcase_add_test (tests, draw_an_outline_takes_the_tool_and_leaves_the_sheet_free);
  tcase_add_test (tests, start_from_numbers_makes_a_wing_in_one_step);
  tcase_add_test (tests, what_has_nothing_to_act_on_cannot_be_pressed);
  tcase_add_test (tests, cautions_lie_on_the_sheet_until_understood_and_hold_nothing_up);
  tcase_add_test (tests, help_opens_with_its_key_follows_its_list_and_closes_with_escape);
  tcase_add_loop_test (tests, the_key_for_help_opens_the_page_about_the_tool_in_hand, 0, G_N_ELEMENTS (tools));
  tcase_add_test (tests, about_and_shortcuts_open_from_menu_and_key);
  return tests;
}

static TCase *
case_of_choices (void)
{
  TCase *tests = tcase_create ("preferences and works under way");

  tcase_add_test (tests, of_two_works_under_way_the_end_of_the_first_does_not_hide_the_other);
  tcase_add_test (tests, the_end_of_a_work_does_not_hide_what_was_said_meanwhile);
  tcase_add_test (tests, units_chosen_in_preferences_are_the_windows_at_once);
  tcase_add_test (tests, each_switch_of_the_sheet_is_kept);
  tcase_add_test (tests, the_view_menu_and_the_preferences_are_one_choice);
  return tests;
}

static TCase *
case_of_places (void)
{
  TCase *tests = tcase_create ("keyboard");

  tcase_add_test (tests, f6_goes_from_tools_to_sheet_to_panel_and_back);
  tcase_add_test (tests, esc_leaves_a_field_of_the_panel_and_esc_again_selects_nothing);
  tcase_add_test (tests, f9_folds_the_panel_away_and_the_fold_is_remembered);
  tcase_add_test (tests, the_answer_takes_the_keyboard_even_from_a_folded_panel);
  tcase_add_test (tests, zoom_follows_its_keys_from_anywhere);
  return tests;
}

int
main (void)
{
  TCase *cases[] = { case_of_starting (), case_of_choices (), case_of_places () };

  return stage_run ("window-dialogs", cases, G_N_ELEMENTS (cases));
}
