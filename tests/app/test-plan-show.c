/* A plan beneath the sheet: how it is shown, saved with its document or beside it. */
#include <string.h>
#include <glib/gstdio.h>
#include "app/plan-strip.h"
#include "support/plan-stage.h"

/* The control of the panel's row of that label, with the keyboard: the row need not be in view before. */
static GtkWidget *
reach (TrammelWindow *window, const char *label, GType type)
{
  GtkWidget *control = gui_find_type (gtk_widget_get_ancestor (gui_await (GTK_WIDGET (window), label), GTK_TYPE_LIST_BOX_ROW), type);

  gtk_widget_grab_focus (control);
  gui_settle ();
  return control;
}

static void
turn (TrammelWindow *window, const char *label)
{
  reach (window, label, GTK_TYPE_SWITCH);
  gui_key ("space");
}

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

static bool
is_settled (gpointer window)
{
  return !trammel_session_is_previewing (trammel_window_session (window));
}

START_TEST (its_strength_is_seen_at_once_and_one_step)
{
  TrammelWindow *window = stage_open (NULL);

  open_plan (window, draw_plan ("wing.png", 600, 400));
  ck_assert_double_eq (plan_in_hand (window)->strength, 75);
  reach (window, "Strength", GTK_TYPE_SCALE);
  gui_key ("Left");
  gui_key ("Left");
  gui_key ("Left");
  ck_assert_double_eq (plan_in_hand (window)->strength, 60);
  ck_assert_double_eq (trammel_sheet_canvas_scene (plan_canvas (window)).plan->strength, 0.6);
  ck_assert (gui_wait (is_settled, window));
  ck_assert_str_eq (undo_label (window), "Plan Strength");
  gui_key ("<Control>z");
  ck_assert_double_eq (plan_in_hand (window)->strength, 75);
  ck_assert_str_eq (undo_label (window), "Open Plan");
}
END_TEST

START_TEST (the_wheel_over_its_strength_moves_the_panel_alone)
{
  TrammelWindow *window = stage_open (NULL);
  GtkWidget *slider;

  open_plan (window, draw_plan ("wing.png", 600, 400));
  slider = reach (window, "Strength", GTK_TYPE_SCALE);
  gui_scroll (slider, 20, 10, 2);
  ck_assert_double_eq (plan_in_hand (window)->strength, 75);
}
END_TEST

START_TEST (hidden_it_is_not_drawn_but_stays)
{
  TrammelWindow *window = stage_open (NULL);

  open_plan (window, draw_plan ("wing.png", 600, 400));
  ck_assert_ptr_nonnull (trammel_sheet_canvas_scene (plan_canvas (window)).plan);
  turn (window, "Hidden");
  ck_assert_ptr_null (trammel_sheet_canvas_scene (plan_canvas (window)).plan);
  ck_assert_str_eq (undo_label (window), "Hide Plan");
  gui_key ("<Control>z");
  ck_assert_ptr_nonnull (trammel_sheet_canvas_scene (plan_canvas (window)).plan);
}
END_TEST

static bool
colours_are_there (gpointer window)
{
  return trammel_plan_store_scanned (plan_store (window), 2) != NULL;
}

START_TEST (as_scanned_it_has_its_own_colours)
{
  TrammelWindow *window = stage_open (NULL);
  const SheetPlan *shown;

  open_plan (window, draw_plan ("wing.png", 600, 400));
  turn (window, "As Scanned");
  ck_assert (gui_wait (colours_are_there, window));
  shown = trammel_sheet_canvas_scene (plan_canvas (window)).plan;
  ck_assert_double_eq_tol (ink_at (ink_levels_ink (shown->scanned[0]), (Point) { 300, 200 }), 0.93 * 255, 1.5);
  ck_assert_double_eq_tol (ink_at (ink_levels_ink (shown->scanned[2]), (Point) { 300, 200 }), 0.72 * 255, 1.5);
  turn (window, "As Scanned");
  ck_assert (!colours_are_there (window));
  ck_assert_ptr_nonnull (trammel_plan_store_ink (plan_store (window)));
}
END_TEST

START_TEST (removed_it_comes_back_with_undo)
{
  TrammelWindow *window = stage_open (NULL);

  open_plan (window, draw_plan ("wing.png", 600, 400));
  gtk_widget_grab_focus (gui_await (GTK_WIDGET (window), "Remove Plan"));
  gui_settle ();
  gui_key ("Return");
  ck_assert_int_eq (plan_count (window), 0);
  ck_assert_ptr_null (trammel_plan_store_ink (plan_store (window)));
  ck_assert_ptr_null (gui_find (GTK_WIDGET (window), "Remove Plan"));
  gui_key ("<Control>z");
  await_plan (window);
}
END_TEST

START_TEST (an_edit_that_is_none_of_its_picture_decodes_nothing_anew)
{
  TrammelWindow *window = stage_open (NULL);
  const InkLevels *ink;

  open_plan (window, draw_plan ("wing.png", 600, 400));
  ink = trammel_plan_store_ink (plan_store (window));
  turn (window, "Locked in Place");
  turn (window, "Cling to the Line");
  ck_assert (!plan_in_hand (window)->locked && !plan_in_hand (window)->cling);
  ck_assert_ptr_eq (trammel_plan_store_ink (plan_store (window)), ink);
  ck_assert (isnan (trammel_plan_store_progress (plan_store (window))));
}
END_TEST

START_TEST (the_list_selects_a_plan_and_delete_removes_it)
{
  TrammelWindow *window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));

  open_plan (window, draw_plan ("wing.png", 600, 400));
  gtk_widget_grab_focus (gui_await (GTK_WIDGET (window), "wing.png, plan"));
  gui_settle ();
  gui_key ("Return");
  gui_await (GTK_WIDGET (window), "Remove Plan");
  gui_key ("Delete");
  ck_assert_int_eq (plan_count (window), 0);
  gui_key ("<Control>z");
  ck_assert_int_eq (plan_count (window), 1);
}
END_TEST

/* With its document */

START_TEST (a_small_picture_travels_within_its_document)
{
  TrammelWindow *window = stage_open (NULL);
  const char *path = draw_plan ("wing.png", 600, 400), *document = stage_path ("kept.trammel");

  open_plan (window, path);
  save_as (window, document);
  ck_assert_int_eq (g_unlink (path), 0);
  window = open_again (document);
  await_plan (window);
  ck_assert_ptr_null (trammel_plan_store_fault (plan_store (window)));
}
END_TEST

static const char *
draw_large_elsewhere (char **folder)
{
  const char *path;

  *folder = g_dir_make_tmp ("trammel-plan-XXXXXX", NULL);
  path = g_build_filename (*folder, "noise.png", NULL);
  draw_grey_plan (path, 3200, 3000, true);
  return path;
}

static void
forget_elsewhere (char *folder, const char *path)
{
  g_unlink (path);
  g_rmdir (folder);
  g_free (folder);
  g_free ((char *) path);
}

START_TEST (a_large_picture_is_copied_beside_its_document_when_that_is_saved)
{
  TrammelWindow *window = stage_open (NULL);
  const char *document = stage_path ("beside.trammel");
  char *folder;
  const char *path = draw_large_elsewhere (&folder);
  g_autoptr (Aeroplane) saved = NULL;

  trammel_window_open_plan (window, path);
  await_plan (window);
  gui_await (GTK_WIDGET (window), "noise.png will be copied beside the document when it is saved");
  save_as (window, document);
  gui_await (GTK_WIDGET (window), "The plan noise.png was copied beside the document");
  saved = stage_read (document);
  ck_assert_str_eq (aeroplane_plan (saved, 0)->file, "noise.png");
  ck_assert (g_str_has_prefix (aeroplane_plan (saved, 0)->checksum, "sha256:"));
  ck_assert_ptr_null (aeroplane_plan (saved, 0)->image);
  forget_elsewhere (folder, path);
  await_plan (open_again (document));
}
END_TEST

/* What is copied has to be what was looked at: another picture under its name would make every mark wrong. */
START_TEST (a_picture_that_changed_before_it_was_copied_is_not_put_beside_the_document)
{
  TrammelWindow *window = stage_open (NULL);
  const char *document = stage_path ("beside.trammel");
  char *folder;
  const char *path = draw_large_elsewhere (&folder);

  trammel_window_open_plan (window, path);
  await_plan (window);
  ck_assert (g_file_set_contents (path, "another", -1, NULL));
  save_as (window, document);
  stage_await_strip (window, "the plan noise.png could not be copied beside it: it has changed since it was put here.");
  ck_assert (!g_file_test (stage_path ("noise.png"), G_FILE_TEST_EXISTS));
  forget_elsewhere (folder, path);
}
END_TEST

START_TEST (another_file_of_its_name_beside_the_document_is_never_replaced)
{
  TrammelWindow *window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
  char *folder;
  const char *path = draw_large_elsewhere (&folder), *other = stage_path ("noise.png");
  g_autofree char *text = NULL;

  ck_assert (g_file_set_contents (other, "mine", -1, NULL));
  trammel_window_open_plan (window, path);
  ck_assert_str_eq (await_plan (window)->file, "noise-2.png");
  gui_key ("<Control>s");
  stage_await_state (window, "");
  ck_assert (g_file_get_contents (other, &text, NULL, NULL));
  ck_assert_str_eq (text, "mine");
  ck_assert (g_file_test (stage_path ("noise-2.png"), G_FILE_TEST_EXISTS));
  forget_elsewhere (folder, path);
}
END_TEST

/* Loading the library that draws SVG took longer and more memory than all else a plan's strip is made of. */
static void
assert_drawn_by_the_build (GtkWidget *widget)
{
  const char *name = GTK_IS_IMAGE (widget) ? gtk_image_get_icon_name (GTK_IMAGE (widget)) : NULL;

  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    assert_drawn_by_the_build (child);
  if (name == NULL || !gtk_widget_get_mapped (widget))
    return;
  for (GtkTextDirection direction = GTK_TEXT_DIR_LTR; direction <= GTK_TEXT_DIR_RTL; direction++) {
    GtkIconTheme *theme = gtk_icon_theme_get_for_display (gtk_widget_get_display (widget));
    const int size = gtk_widget_get_height (widget) < gtk_widget_get_width (widget) ? gtk_widget_get_height (widget) : gtk_widget_get_width (widget);
    g_autoptr (GtkIconPaintable) icon = gtk_icon_theme_lookup_icon (theme, name, NULL, size, 1, direction, 0);
    g_autoptr (GFile) file = gtk_icon_paintable_get_file (icon);
    g_autofree char *uri = g_file_get_uri (file);

    ck_assert_msg (g_str_has_suffix (uri, ".png"), "%s", uri);
  }
}

START_TEST (no_icon_of_an_opened_plans_strip_has_to_be_drawn_from_svg)
{
  TrammelWindow *window = stage_open (NULL);

  open_plan (window, draw_plan ("wing.png", 600, 400));
  gui_wait_ms (300);
  assert_drawn_by_the_build (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_PLAN_STRIP));
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("plan-show");
  TCase *tests = tcase_create ("plans");

  gui_begin ();
  tcase_set_timeout (tests, 240);
  tcase_add_checked_fixture (tests, stage_raise, stage_strike);
  tcase_add_test (tests, no_icon_of_an_opened_plans_strip_has_to_be_drawn_from_svg);
  tcase_add_test (tests, its_strength_is_seen_at_once_and_one_step);
  tcase_add_test (tests, the_wheel_over_its_strength_moves_the_panel_alone);
  tcase_add_test (tests, hidden_it_is_not_drawn_but_stays);
  tcase_add_test (tests, as_scanned_it_has_its_own_colours);
  tcase_add_test (tests, removed_it_comes_back_with_undo);
  tcase_add_test (tests, an_edit_that_is_none_of_its_picture_decodes_nothing_anew);
  tcase_add_test (tests, the_list_selects_a_plan_and_delete_removes_it);
  tcase_add_test (tests, a_small_picture_travels_within_its_document);
  tcase_add_test (tests, a_large_picture_is_copied_beside_its_document_when_that_is_saved);
  tcase_add_test (tests, a_picture_that_changed_before_it_was_copied_is_not_put_beside_the_document);
  tcase_add_test (tests, another_file_of_its_name_beside_the_document_is_never_replaced);
  suite_add_tcase (suite, tests);
  return gui_run (suite);
}
