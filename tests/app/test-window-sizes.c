/* What a window of another size does with its room. */
#include <stdlib.h>
#include "app/panel.h"
#include "app/sheet-canvas.h"
#include "app/status-line.h"
#include "support/stage.h"

static TrammelWindow *
racer (void)
{
  return stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
}

static bool
window_is_laid_out (gpointer window)
{
  int width, height;

  gtk_window_get_default_size (window, &width, &height);
  return abs (gtk_widget_get_width (window) - width) < 30;      /* less a frame, where nobody draws shadows */
}

START_TEST (under_860_px_the_panel_folds_over_the_sheet_and_comes_back)
{
  TrammelSettings *settings = trammel_application_settings (stage_application ());
  TrammelWindow *window = racer ();
  AdwFlap *flap = ADW_FLAP (gui_find_type (GTK_WIDGET (window), ADW_TYPE_FLAP));

  gtk_window_set_default_size (GTK_WINDOW (window), 820, 640);
  ck_assert (gui_wait (window_is_laid_out, window));
  ck_assert (adw_flap_get_folded (flap));
  ck_assert (!adw_flap_get_reveal_flap (flap));
  ck_assert (trammel_settings_flag (settings, SHOW_PANEL));
  gtk_window_set_default_size (GTK_WINDOW (window), 1200, 640);
  ck_assert (gui_wait (window_is_laid_out, window));
  ck_assert (!adw_flap_get_folded (flap));
  ck_assert (adw_flap_get_reveal_flap (flap));
}
END_TEST

START_TEST (a_window_opens_as_large_as_the_last_was_closed)
{
  TrammelWindow *window = racer ();
  int width, height;

  gtk_window_set_default_size (GTK_WINDOW (window), 1111, 707);
  ck_assert (gui_wait (window_is_laid_out, window));
  gui_key ("<Control>w");
  gui_settle ();
  window = stage_open (NULL);
  gtk_window_get_default_size (GTK_WINDOW (window), &width, &height);
  ck_assert_int_le (abs (width - 1111), 30);
  ck_assert_int_le (abs (height - 707), 30);
}
END_TEST

static GtkWidget *
find (TrammelWindow *window, const char *words)
{
  return gui_await (GTK_WIDGET (window), words);
}

/* A small notebook's screen. */
static TrammelWindow *
racer_at_1024_by_600 (void)
{
  TrammelWindow *window = racer ();

  gtk_window_set_default_size (GTK_WINDOW (window), 1024, 600);
  ck_assert (gui_wait (window_is_laid_out, window));
  gui_settle ();
  return window;
}

static bool
panel_is_small (gpointer window)
{
  return gtk_widget_get_width (gui_find_type (window, TRAMMEL_TYPE_PANEL)) <= 302;
}

START_TEST (at_1024_px_the_panel_leaves_the_sheet_its_room)
{
  ck_assert (gui_wait (panel_is_small, racer_at_1024_by_600 ()));
}
END_TEST

static const char second_sentence[] = "Limits 33 and 44\u00a0mm; now it balances at 39\u00a0mm.";

static bool
second_sentence_is_away (gpointer window)
{
  return gui_find (window, second_sentence) == NULL;
}

START_TEST (in_a_low_window_the_answer_is_one_sentence_and_a_higher_one_has_both)
{
  TrammelWindow *window = racer ();

  find (window, second_sentence);
  gtk_window_set_default_size (GTK_WINDOW (window), 1024, 600);
  ck_assert (gui_wait (second_sentence_is_away, window));
  gtk_window_set_default_size (GTK_WINDOW (window), 1024, 720);
  find (window, second_sentence);
}
END_TEST

static bool
lies_in_window (GtkWidget *widget, TrammelWindow *window)
{
  double x, y;

  return gtk_widget_translate_coordinates (widget, GTK_WIDGET (window), 0, 0, &x, &y)
         && y + gtk_widget_get_height (widget) <= gtk_widget_get_height (GTK_WIDGET (window));
}

START_TEST (numbers_can_be_added_or_given_up_without_scrolling)
{
  TrammelWindow *window = racer_at_1024_by_600 ();

  gui_click (find (window, "Add Outline…"));
  ck_assert (lies_in_window (find (window, "Add to the Sheet"), window));
  ck_assert (lies_in_window (find (window, "Cancel"), window));
  gui_click (find (window, "Cancel"));
  find (window, "Add Outline…");
}
END_TEST

START_TEST (the_hint_stays_whole_where_the_pointers_place_has_no_room_beside_it)
{
  static const char hint[] = "Click or drag a thing; drag over several; click a figure to type it.";
  TrammelWindow *window = racer_at_1024_by_600 ();
  GtkWidget *words;

  ck_assert (gui_wait (panel_is_small, window));
  gui_move_to (find (window, "Sheet"), 480, 420);
  gui_settle ();
  words = gui_find (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STATUS_LINE), hint);
  ck_assert_ptr_nonnull (words);
  ck_assert (!pango_layout_is_ellipsized (gtk_label_get_layout (GTK_LABEL (words))));
}
END_TEST

/* On the screen of a small notebook, with nothing open. */
static TrammelWindow *
nothing_at_1024_by_600 (void)
{
  TrammelWindow *window;

  trammel_settings_set_flag (trammel_application_settings (stage_application ()), CAUTIONS_READ, false);
  window = stage_open (NULL);
  gtk_window_set_default_size (GTK_WINDOW (window), 1024, 600);
  ck_assert (gui_wait (window_is_laid_out, window));
  gui_settle ();
  return window;
}

static double
top_of (GtkWidget *widget, TrammelWindow *window)
{
  double x, y = 0;

  gtk_widget_translate_coordinates (widget, GTK_WIDGET (window), 0, 0, &x, &y);
  return y;
}

START_TEST (the_cautions_leave_every_way_to_start_to_be_seen)
{
  TrammelWindow *window = nothing_at_1024_by_600 ();
  GtkWidget *example = find (window, "Look at the Example");

  ck_assert_double_lt (top_of (example, window) + gtk_widget_get_height (example), top_of (find (window, "Before You Build and Fly"), window));
  ck_assert (lies_in_window (find (window, "Understood"), window));
}
END_TEST

static void
set_text_scale (double scale)
{
  g_object_set (gtk_settings_get_default (), "gtk-xft-dpi", (int) (96 * 1024 * scale), NULL);
  gui_settle ();
}

START_TEST (larger_text_is_larger_in_the_window_and_on_the_sheet)
{
  TrammelWindow *window = racer ();
  GtkWidget *export = find (window, "Print or Export…");
  const int before = gtk_widget_get_width (export);
  TrammelSheetCanvas *sheet = TRAMMEL_SHEET_CANVAS (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_SHEET_CANVAS));
  const double lettering = trammel_sheet_canvas_scene (sheet).look->text_size;

  set_text_scale (1.5);
  ck_assert_int_gt (gtk_widget_get_width (export), before * 5 / 4);
  ck_assert_double_eq_tol (trammel_sheet_canvas_scene (sheet).look->text_size / lettering, 1.5, 0.05);
  set_text_scale (1);
}
END_TEST

/* Whose file an icon is taken from at that size: its ending. */
static void
assert_icon_is_taken_from (const char *name, int size, int scale, const char *ending)
{
  GtkIconTheme *theme = gtk_icon_theme_get_for_display (gdk_display_get_default ());
  g_autoptr (GtkIconPaintable) icon = gtk_icon_theme_lookup_icon (theme, name, NULL, size, scale, GTK_TEXT_DIR_LTR, 0);
  g_autoptr (GFile) file = gtk_icon_paintable_get_file (icon);
  g_autofree char *uri = file != NULL ? g_file_get_uri (file) : NULL;

  ck_assert_msg (uri != NULL && g_str_has_suffix (uri, ending), "%s at %d px is %s", name, size, uri);
}

START_TEST (icons_come_drawn_at_their_usual_size_and_are_sharp_on_a_dense_screen)
{
  static const char *const of_sheet[] = { "select", "move-sheet", "outline", "part", "rail", "balance-mark", "dimension", "snapping",
                                          "zoom-in", "zoom-out" };

  for (size_t i = 0; i < G_N_ELEMENTS (of_sheet); i++) {
    g_autofree char *name = g_strdup_printf ("trammel-%s-symbolic", of_sheet[i]);

    assert_icon_is_taken_from (name, 16, 1, ".symbolic.png");
    assert_icon_is_taken_from (name, 16, 2, ".svg");
  }
  assert_icon_is_taken_from ("trammel-explain-symbolic", 14, 1, ".symbolic.png");
  assert_icon_is_taken_from ("trammel-explain-symbolic", 14, 2, ".svg");
  assert_icon_is_taken_from ("org.trammel.Trammel", 48, 1, ".png");
  assert_icon_is_taken_from ("org.trammel.Trammel", 128, 1, ".svg");
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("window-sizes");
  TCase *tests = tcase_create ("sizes");

  gui_begin ();
  tcase_set_timeout (tests, 120);
  tcase_add_checked_fixture (tests, stage_raise, stage_strike);
  tcase_add_test (tests, under_860_px_the_panel_folds_over_the_sheet_and_comes_back);
  tcase_add_test (tests, a_window_opens_as_large_as_the_last_was_closed);
  tcase_add_test (tests, at_1024_px_the_panel_leaves_the_sheet_its_room);
  tcase_add_test (tests, in_a_low_window_the_answer_is_one_sentence_and_a_higher_one_has_both);
  tcase_add_test (tests, numbers_can_be_added_or_given_up_without_scrolling);
  tcase_add_test (tests, the_hint_stays_whole_where_the_pointers_place_has_no_room_beside_it);
  tcase_add_test (tests, the_cautions_leave_every_way_to_start_to_be_seen);
  tcase_add_test (tests, larger_text_is_larger_in_the_window_and_on_the_sheet);
  tcase_add_test (tests, icons_come_drawn_at_their_usual_size_and_are_sharp_on_a_dense_screen);
  suite_add_tcase (suite, tests);
  return gui_run (suite);
}
