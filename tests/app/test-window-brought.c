/* "Bring In Outline…" in a real window: from the menu's chooser, a file opened, the clipboard; turned, used, given up, undone. */
#include <string.h>
#include "app/brought-strip.h"
#include "app/strip.h"
#include "support/stage.h"

static const char drawing[] =
  "<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>"
  "<path id='wing' d='M400 60L720 80L720 150L400 190L80 150L80 80z'/>"
  "<path id='tail' d='M300 300L330 290L470 290L500 300L500 350L300 350z'/></svg>";
static const char table[] = "x;y\n0;0\n12,5;100\n30;240\n60;250\n110;245\n130;0\n";

static const char *
file_of (const char *name, const char *text)
{
  const char *path = stage_path (name);

  ck_assert (g_file_set_contents (path, text, -1, NULL));
  return path;
}

static const Surface *
surface_at (TrammelWindow *window, size_t i)
{
  ck_assert_uint_gt (aeroplane_count (stage_aeroplane (window), PIECE_SURFACE), i);
  return aeroplane_surface (stage_aeroplane (window), i);
}

static double
half_span (TrammelWindow *window)
{
  return outline_bounds (surface_at (window, 0)->outline).max.y;
}

static bool
something_is_there (gpointer window)
{
  return aeroplane_piece_count (stage_aeroplane (window)) > 0;
}

static bool
nothing_is_there (gpointer window)
{
  return aeroplane_piece_count (stage_aeroplane (window)) == 0;
}

static bool
strip_has_gone (gpointer window)
{
  return gui_find_type (window, TRAMMEL_TYPE_BROUGHT_STRIP) == NULL;
}

static GtkWidget *
button (TrammelWindow *window, const char *label)
{
  return gui_await (gui_await (GTK_WIDGET (window), "Bring In Outline"), label);
}

/* As the desktop opens a file with the program that is running. */
static void
open_with_the_program (const char *path)
{
  g_autoptr (GFile) file = g_file_new_for_path (path);

  g_application_open (G_APPLICATION (stage_application ()), &file, 1, "");
}

/* Through the chooser, as the menu opens it. */
static TrammelWindow *
bring (const char *path)
{
  TrammelWindow *window = stage_open (NULL);

  gtk_widget_activate_action (GTK_WIDGET (window), "win.bring-in-outline", NULL);
  stage_choose ("Bring In Outline", path, false);
  ck_assert (gui_wait (something_is_there, window));
  gui_settle ();
  return window;
}

START_TEST (a_drawing_is_offered_at_once_and_used_in_one_step)
{
  TrammelWindow *window = bring (file_of ("parts.svg", drawing));

  gui_await (GTK_WIDGET (window), "1 of 2: wing, 640 × 130\u00A0mm");
  ck_assert_double_eq_tol (half_span (window), 320, 1e-9);
  ck_assert_str_eq (stage_state (window), "");
  gui_click (button (window, "Use This"));
  ck_assert (gui_wait (strip_has_gone, window));
  ck_assert_str_eq (stage_state (window), "Not yet saved");
  ck_assert_str_eq (trammel_session_undo_label (trammel_window_session (window)), "Bring In Outline");
  ck_assert_ptr_nonnull (trammel_session_selected_surface (trammel_window_session (window)));
  gui_key ("<Control>z");
  ck_assert (gui_wait (nothing_is_there, window));
  gui_key ("<Control><Shift>z");
  ck_assert (gui_wait (something_is_there, window));
  ck_assert_double_eq_tol (half_span (window), 320, 1e-9);
}
END_TEST

START_TEST (return_uses_what_is_offered_and_escape_gives_it_up)
{
  TrammelWindow *window = bring (file_of ("parts.svg", drawing));

  gui_key ("Escape");
  ck_assert (gui_wait (strip_has_gone, window));
  ck_assert_uint_eq (aeroplane_piece_count (stage_aeroplane (window)), 0);
  ck_assert_ptr_null (trammel_session_undo_label (trammel_window_session (window)));
  gtk_widget_activate_action (GTK_WIDGET (window), "win.bring-in-outline", NULL);
  stage_choose ("Bring In Outline", stage_path ("parts.svg"), false);
  ck_assert (gui_wait (something_is_there, window));
  gui_settle ();
  gui_key ("Return");
  ck_assert (gui_wait (strip_has_gone, window));
  ck_assert_str_eq (trammel_session_undo_label (trammel_window_session (window)), "Bring In Outline");
}
END_TEST

START_TEST (next_line_turn_and_mirror_change_the_proposal)
{
  TrammelWindow *window = bring (file_of ("parts.svg", drawing));
  Outline *before;

  gui_click (button (window, "Next Line"));
  gui_await (GTK_WIDGET (window), "2 of 2: tail, 200 × 60\u00A0mm");
  ck_assert_double_eq_tol (half_span (window), 100, 1e-9);
  before = outline_ref (surface_at (window, 0)->outline);
  gui_click (button (window, "Mirror"));
  ck_assert (!outline_equal (before, surface_at (window, 0)->outline));
  ck_assert_double_eq_tol (half_span (window), 100, 1e-9);
  gui_click (button (window, "Mirror"));
  ck_assert (outline_equal (before, surface_at (window, 0)->outline));
  outline_unref (before);
  /* Lying on its side it has a straight root, and is one half. */
  gui_click (button (window, "Turn"));
  gui_await (GTK_WIDGET (window), "One half is drawn, closed along its root.");
  ck_assert_double_eq_tol (half_span (window), 60, 1e-9);
}
END_TEST

START_TEST (what_it_is_can_be_chosen_from_the_keyboard)
{
  TrammelWindow *window = bring (file_of ("parts.svg", drawing));

  gtk_widget_grab_focus (button (window, "What it is"));
  gui_key ("space");
  gui_key ("Down");
  gui_key ("Return");
  gui_settle ();
  ck_assert_int_eq (surface_at (window, 0)->role, ROLE_TAILPLANE);
  gui_click (button (window, "Cancel"));
  ck_assert (gui_wait (nothing_is_there, window));
}
END_TEST

START_TEST (a_table_that_does_not_name_its_unit_is_asked_for_it)
{
  TrammelWindow *window = stage_open (NULL);
  GtkWidget *unit;

  open_with_the_program (file_of ("half.csv", table));
  ck_assert (gui_wait (something_is_there, window));
  gui_settle ();
  ck_assert_double_eq_tol (half_span (window), 250, 1e-9);
  unit = button (window, "What the file’s numbers are in");
  gtk_widget_grab_focus (unit);
  gui_key ("space");
  gui_key ("Down");
  gui_key ("Return");
  gui_settle ();
  ck_assert_double_eq_tol (half_span (window), 250 * 25.4, 1e-6);
}
END_TEST

START_TEST (a_table_from_the_clipboard_is_offered)
{
  TrammelWindow *window = stage_open (NULL);

  gui_click (gui_await (GTK_WIDGET (window), "Empty Sheet"));
  gdk_clipboard_set_text (gtk_widget_get_clipboard (GTK_WIDGET (window)), "0\t0\n10\t300\n80\t300\n120\t0\n");
  gui_settle ();
  gui_key ("<Control>v");
  ck_assert (gui_wait (something_is_there, window));
  ck_assert_double_eq_tol (half_span (window), 300, 1e-9);
}
END_TEST

START_TEST (a_file_that_is_broken_is_one_sentence_and_the_document_stays)
{
  TrammelWindow *window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
  const Aeroplane *before = stage_aeroplane (window);

  gtk_widget_activate_action (GTK_WIDGET (window), "win.bring-in-outline", NULL);
  stage_choose ("Bring In Outline", file_of ("broken.dxf", "0\nSECTION\n2\nENTITIES\n0\nLINE\n8\nA\n10\n1,5\n"), false);
  stage_await_strip (window, "broken.dxf:10:");
  ck_assert_ptr_eq (stage_aeroplane (window), before);
  ck_assert_str_eq (stage_state (window), "");
  ck_assert_ptr_null (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_BROUGHT_STRIP));
}
END_TEST

START_TEST (a_file_opened_beside_a_document_is_offered_in_its_window)
{
  TrammelWindow *window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
  const size_t pieces = aeroplane_piece_count (stage_aeroplane (window));

  open_with_the_program (file_of ("half.csv", table));
  button (window, "Use This");
  ck_assert_int_eq (stage_window_count (), 1);
  ck_assert_str_eq (stage_state (window), "");
  gui_click (button (window, "Cancel"));
  ck_assert (gui_wait (strip_has_gone, window));
  ck_assert_uint_eq (aeroplane_piece_count (stage_aeroplane (window)), pieces);
}
END_TEST

START_TEST (another_hand_takes_the_sheet_and_the_offer_goes)
{
  TrammelWindow *window = bring (file_of ("parts.svg", drawing));

  trammel_session_abandon (trammel_window_session (window));
  ck_assert (gui_wait (strip_has_gone, window));
  ck_assert_uint_eq (aeroplane_piece_count (stage_aeroplane (window)), 0);
}
END_TEST

static bool
a_plan_is_there (gpointer window)
{
  return aeroplane_count (stage_aeroplane (window), PIECE_PLAN) == 1;
}

/* Packed or not. */
static const struct { const char *name, *asks; } drawings[] = { { "parts.svg", "parts.svg holds lines" }, { "parts.svgz", "parts.svgz holds lines" } };

START_TEST (an_svg_that_is_opened_may_be_a_plan_or_an_outline)
{
  TrammelWindow *window = stage_open (NULL);

  open_with_the_program (file_of (drawings[_i].name, drawing));
  stage_await_strip (window, drawings[_i].asks);
  ck_assert (nothing_is_there (window));
  gui_click (gui_await (GTK_WIDGET (window), "Use As Plan"));
  ck_assert (gui_wait (a_plan_is_there, window));
  gui_key ("<Control>z");
  gui_settle ();
  open_with_the_program (stage_path (drawings[_i].name));
  gui_click (gui_await (GTK_WIDGET (window), "Bring In As Outline"));
  ck_assert (gui_wait (something_is_there, window));
  ck_assert_int_eq (aeroplane_count (stage_aeroplane (window), PIECE_PLAN), 0);
  ck_assert_double_eq_tol (half_span (window), 320, 0.1);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("window-brought");
  TCase *tests = tcase_create ("brought");

  gui_begin ();
  tcase_set_timeout (tests, 240);
  tcase_add_checked_fixture (tests, stage_raise, stage_strike);
  tcase_add_loop_test (tests, an_svg_that_is_opened_may_be_a_plan_or_an_outline, 0, 2);
  tcase_add_test (tests, a_drawing_is_offered_at_once_and_used_in_one_step);
  tcase_add_test (tests, return_uses_what_is_offered_and_escape_gives_it_up);
  tcase_add_test (tests, next_line_turn_and_mirror_change_the_proposal);
  tcase_add_test (tests, what_it_is_can_be_chosen_from_the_keyboard);
  tcase_add_test (tests, a_table_that_does_not_name_its_unit_is_asked_for_it);
  tcase_add_test (tests, a_table_from_the_clipboard_is_offered);
  tcase_add_test (tests, a_file_that_is_broken_is_one_sentence_and_the_document_stays);
  tcase_add_test (tests, a_file_opened_beside_a_document_is_offered_in_its_window);
  tcase_add_test (tests, another_hand_takes_the_sheet_and_the_offer_goes);
  suite_add_tcase (suite, tests);
  return gui_run (suite);
}
