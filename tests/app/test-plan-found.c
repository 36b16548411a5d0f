/* A plan whose picture is not where it was, or not what it was: missed, found again, kept. */
#include <string.h>
#include <glib/gstdio.h>
#include "support/plan-stage.h"

static const char *
undo_label (TrammelWindow *window)
{
  return trammel_session_undo_label (trammel_window_session (window));
}

static const Plan *
plan_in_hand (TrammelWindow *window)
{
  return trammel_plan_store_plan (plan_store (window));
}

static TrammelWindow *
open_without_its_picture (void)
{
  const char *document = stage_path ("missing.trammel");

  ck_assert (g_file_set_contents (document, "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\" name=\"Thistle\">"
                                  "<plan id=\"p\" name=\"Saltmarsh.png\" file=\"Saltmarsh.png\" width=\"600\" height=\"400\"/></aeroplane>", -1, NULL));
  return stage_open (document);
}

START_TEST (a_missing_plan_is_said_and_the_sheet_works_on)
{
  TrammelWindow *window = open_without_its_picture ();

  stage_await_strip (window, "The plan Saltmarsh.png is missing.");
  ck_assert_ptr_null (trammel_sheet_canvas_scene (plan_canvas (window)).plan);
  gtk_widget_grab_focus (gui_find_type (gtk_widget_get_ancestor (gui_await (GTK_WIDGET (window), "Locked in Place"), GTK_TYPE_LIST_BOX_ROW),
                                        GTK_TYPE_SWITCH));
  gui_settle ();
  gui_key ("space");
  ck_assert (!plan_in_hand (window)->locked);
  ck_assert_str_eq (stage_state (window), "Edited");
}
END_TEST

START_TEST (a_missing_plan_is_found_by_the_hand_that_knows_where_it_is)
{
  TrammelWindow *window = open_without_its_picture ();

  stage_await_strip (window, "The plan Saltmarsh.png is missing.");
  gui_click (gui_await (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP), "Find…"));
  stage_choose ("Find the Plan", draw_plan ("found.png", 600, 400), false);
  await_plan (window);
  ck_assert_int_eq (plan_count (window), 1);
  ck_assert_str_eq (plan_in_hand (window)->name, "Saltmarsh.png");
  ck_assert_ptr_null (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP));
  ck_assert_str_eq (undo_label (window), "Find Plan");
}
END_TEST

/* Another picture in the place of one that is missing */

static void
find (TrammelWindow *window, const char *path)
{
  stage_await_strip (window, "is missing.");
  gui_click (gui_await (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP), "Find…"));
  stage_choose ("Find the Plan", path, false);
  await_plan (window);
}

/* A plan with a known length whose picture is missing; `size` are the attributes that say how large it was. */
static TrammelWindow *
open_marked (const char *size)
{
  const char *document = stage_path ("marked.trammel");
  g_autofree char *text = g_strdup_printf ("<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\"><plan id=\"p\" file=\"gone.png\" %s>"
                                           "<length x1=\"10\" y1=\"10\" x2=\"510\" y2=\"10\" mm=\"100\"/></plan></aeroplane>", size);

  ck_assert (g_file_set_contents (document, text, -1, NULL));
  return stage_open (document);
}

START_TEST (a_better_scan_of_the_sheet_takes_the_marks_along)
{
  TrammelWindow *window = open_marked ("width=\"600\" height=\"400\"");

  find (window, draw_plan ("finer.png", 1200, 800));
  ck_assert_double_eq (plan_in_hand (window)->lengths[0].b.x, 1020);
}
END_TEST

START_TEST (a_picture_of_another_shape_leaves_the_marks_and_says_so)
{
  TrammelWindow *window = open_marked ("width=\"600\" height=\"400\"");

  find (window, draw_plan ("square.png", 600, 600));
  gui_await (GTK_WIDGET (window), "This picture has another shape than the one before, and the marks stay where they were: check the lengths.");
  ck_assert_double_eq (plan_in_hand (window)->lengths[0].b.x, 510);
}
END_TEST

START_TEST (where_the_size_before_is_not_known_the_marks_stay_and_that_is_said)
{
  TrammelWindow *window = open_marked ("");

  find (window, draw_plan ("found.png", 1200, 800));
  gui_await (GTK_WIDGET (window),
             "How large the picture before was is not known, and the marks stay where they were: check the lengths.");
  ck_assert_double_eq (plan_in_hand (window)->lengths[0].b.x, 510);
}
END_TEST

/* Changed where it lies */

/* A plan of 600 × 400 px with a known length, whose picture is another now, of that width. */
static TrammelWindow *
open_changed (int width)
{
  const char *document = stage_path ("changed.trammel");
  TrammelWindow *window;

  draw_plan ("wing.png", width, 400);
  ck_assert (g_file_set_contents (document, "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\">"
                                  "<plan id=\"p\" file=\"wing.png\" checksum=\"sha256:"
                                  "0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef\" width=\"600\" height=\"400\">"
                                  "<length x1=\"10\" y1=\"10\" x2=\"510\" y2=\"10\" mm=\"100\"/></plan></aeroplane>",
                                  -1, NULL));
  window = stage_open (document);
  await_plan (window);
  stage_await_strip (window, "The plan wing.png has changed since it was put here");
  return window;
}

START_TEST (a_picture_that_has_changed_is_shown_and_said_to_be_another)
{
  TrammelWindow *window = open_changed (500);
  GtkWidget *strip = gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP);

  ck_assert_ptr_null (gui_find (strip, "Keep Marks"));
  ck_assert_ptr_nonnull (gui_find (strip, "Find…"));
}
END_TEST

START_TEST (the_marks_of_a_changed_picture_of_the_same_size_can_be_kept_in_one_step)
{
  TrammelWindow *window = open_changed (600);
  GtkWidget *strip = gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP);

  stage_await_strip (window, "Keep its marks only where they still lie on the same lines.");
  gui_click (gui_await (strip, "Keep Marks"));
  ck_assert_str_eq (undo_label (window), "Keep the Plan’s Marks");
  ck_assert_uint_eq (plan_in_hand (window)->length_count, 1);
  ck_assert (!g_str_has_prefix (plan_in_hand (window)->checksum, "sha256:0123456789"));
  ck_assert_ptr_null (trammel_plan_store_fault (plan_store (window)));
  ck_assert_ptr_nonnull (trammel_plan_store_ink (plan_store (window)));
  gui_key ("<Control>s");
  stage_await_state (window, "");
  ck_assert_ptr_null (trammel_plan_store_fault (plan_store (open_again (stage_path ("changed.trammel")))));
}
END_TEST

START_TEST (undone_the_picture_whose_marks_were_kept_is_another_again)
{
  TrammelWindow *window = open_changed (600);

  gui_click (gui_await (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP), "Keep Marks"));
  gui_key ("<Control>z");
  stage_await_strip (window, "The plan wing.png has changed since it was put here");
}
END_TEST

START_TEST (a_picture_outside_the_documents_folder_is_not_opened)
{
  const char *document = stage_path ("hostile.trammel");
  TrammelWindow *window;

  ck_assert (g_file_set_contents (document, "<aeroplane xmlns=\"urn:trammel:aeroplane\" version=\"1\">"
                                  "<plan id=\"p\" file=\"../outside.png\" width=\"600\" height=\"400\"/></aeroplane>", -1, NULL));
  window = stage_open (document);
  stage_await_strip (window, "lies outside the document’s folder");
  ck_assert_ptr_null (trammel_plan_store_ink (plan_store (window)));
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("plan-found");
  TCase *tests = tcase_create ("plans");

  gui_begin ();
  tcase_set_timeout (tests, 240);
  tcase_add_checked_fixture (tests, stage_raise, stage_strike);
  tcase_add_test (tests, a_missing_plan_is_said_and_the_sheet_works_on);
  tcase_add_test (tests, a_missing_plan_is_found_by_the_hand_that_knows_where_it_is);
  tcase_add_test (tests, a_better_scan_of_the_sheet_takes_the_marks_along);
  tcase_add_test (tests, a_picture_of_another_shape_leaves_the_marks_and_says_so);
  tcase_add_test (tests, where_the_size_before_is_not_known_the_marks_stay_and_that_is_said);
  tcase_add_test (tests, a_picture_that_has_changed_is_shown_and_said_to_be_another);
  tcase_add_test (tests, the_marks_of_a_changed_picture_of_the_same_size_can_be_kept_in_one_step);
  tcase_add_test (tests, undone_the_picture_whose_marks_were_kept_is_another_again);
  tcase_add_test (tests, a_picture_outside_the_documents_folder_is_not_opened);
  suite_add_tcase (suite, tests);
  return gui_run (suite);
}
