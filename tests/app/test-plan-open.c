/* Pictures and pages become plans: from a file, a drop, the clipboard; what is broken, large or not wanted any more. */
#include <string.h>
#include <glib/gstdio.h>
#include <cairo-pdf.h>
#include "support/pictures.h"
#include "app/panel.h"
#include "app/plan-work.h"
#include "app/tool.h"
#include "support/plan-stage.h"

/* The whole picture of 600 × 400 px is in view, and fills most of it. */
static void
assert_all_in_view (TrammelWindow *window)
{
  const SheetView *view = trammel_sheet_canvas_view (plan_canvas (window));
  Placing placing;
  Point near, far;

  ck_assert (trammel_plan_store_placing (plan_store (window), &placing));
  near = view_to_screen (view, placing_sheet (&placing, (Point) { 0, 0 }));
  far = view_to_screen (view, placing_sheet (&placing, (Point) { 600, 400 }));
  ck_assert (near.x >= 0 && near.y >= 0 && far.x <= view->width && far.y <= view->height);
  ck_assert (far.x - near.x > 0.6 * view->width || far.y - near.y > 0.6 * view->height);
}

static const char *
tool_in_hand (TrammelWindow *window)
{
  return trammel_sheet_canvas_tool (plan_canvas (window))->kind->word;
}

static PlanStep
step_in_hand (TrammelWindow *window)
{
  return trammel_plan_work_step (trammel_plan_work_of (plan_canvas (window)));
}

START_TEST (an_opened_picture_leads_on_to_its_known_length)
{
  TrammelWindow *window = stage_open (NULL);

  open_plan (window, draw_plan ("wing.png", 600, 400));
  gui_wait_ms (300);
  ck_assert_str_eq (tool_in_hand (window), "plan");
  ck_assert_int_eq (step_in_hand (window), PLAN_STEP_LENGTH);
  gui_await (GTK_WIDGET (window), "Click both ends of a length you know. Ctrl lets go of what is printed.");
  assert_all_in_view (window);
}
END_TEST

static int
panel_width (TrammelWindow *window)
{
  return gtk_widget_get_width (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_PANEL));
}

START_TEST (a_plan_of_a_long_name_makes_the_panel_no_wider)
{
  TrammelWindow *window = stage_open (NULL);
  const int before = panel_width (window);

  open_plan (window, draw_plan ("the-wing-of-the-second-prototype-as-scanned-at-the-library-in-october.png", 600, 400));
  gui_wait_ms (300);
  ck_assert_int_eq (panel_width (window), before);
}
END_TEST

START_TEST (a_picture_opened_on_an_empty_sheet_becomes_a_plan_that_is_all_in_view)
{
  TrammelWindow *window = stage_open (NULL);
  const Plan *plan = open_plan (window, draw_plan ("wing.png", 600, 400));

  ck_assert_str_eq (plan->name, "wing.png");
  ck_assert_double_eq (plan->width, 600);
  ck_assert_double_eq (plan->height, 400);
  ck_assert_str_eq (plan->image_type, "image/png");
  assert_all_in_view (window);
}
END_TEST

START_TEST (fit_sheet_takes_in_the_plan_where_nothing_else_is_drawn)
{
  TrammelWindow *window = stage_open (NULL);

  open_plan (window, draw_plan ("wing.png", 600, 400));
  for (int i = 0; i < 8; i++)
    gui_key ("<Control>plus");
  gui_key ("Right");
  gui_key ("Home");
  gui_wait_ms (300);              /* longer than the view glides */
  assert_all_in_view (window);
}
END_TEST

START_TEST (opening_a_plan_is_one_step_of_that_name)
{
  TrammelWindow *window = stage_open (NULL);

  open_plan (window, draw_plan ("wing.png", 600, 400));
  ck_assert_str_eq (trammel_session_undo_label (trammel_window_session (window)), "Open Plan");
  gui_key ("<Control>z");
  ck_assert_int_eq (plan_count (window), 0);
  ck_assert_ptr_null (trammel_plan_store_ink (plan_store (window)));
  gui_key ("<Control><Shift>z");
  await_plan (window);
  ck_assert_int_eq (plan_count (window), 1);
}
END_TEST

START_TEST (the_start_page_opens_a_plan_first_of_all)
{
  TrammelWindow *window = stage_open (NULL);

  gui_click (gui_await (GTK_WIDGET (window), "Open a Plan…"));
  stage_choose ("Open a Plan", draw_plan ("wing.png", 600, 400), false);
  await_plan (window);
  ck_assert_ptr_null (gui_find (GTK_WIDGET (window), "Open a Plan…"));
}
END_TEST

START_TEST (a_plan_goes_beneath_the_aeroplane_that_is_open_and_a_second_beside_the_first)
{
  TrammelWindow *window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
  const Plan *second;

  open_plan (window, draw_plan ("wing.png", 600, 400));
  gui_key ("<Control>o");
  stage_choose ("Open", draw_plan ("body.png", 500, 300), false);
  gui_await (GTK_WIDGET (window), "Shown");
  second = await_plan (window);
  ck_assert_str_eq (second->name, "body.png");
  ck_assert_int_eq (plan_count (window), 2);
  ck_assert_int_eq (stage_window_count (), 1);
}
END_TEST

/* Dropping and pasting */

START_TEST (a_picture_dropped_on_the_sheet_becomes_a_plan)
{
  TrammelWindow *window = stage_open (NULL);
  GtkWidget *handle = gui_await (GTK_WIDGET (window), "Where Must It Balance?");
  GtkDragSource *source = gtk_drag_source_new ();

  /* A file manager's part is played by a label of ours. */
  g_signal_connect (source, "prepare", G_CALLBACK (stage_dragged_file), (gpointer) draw_plan ("dropped.png", 600, 400));
  gtk_widget_add_controller (handle, GTK_EVENT_CONTROLLER (source));
  gui_drag (handle, (GuiDrag) { 20, 10, 120, 300 });
  ck_assert_str_eq (await_plan (window)->name, "dropped.png");
}
END_TEST

START_TEST (a_copied_picture_is_pasted_as_a_plan_within_the_document)
{
  TrammelWindow *window = stage_open (NULL);
  g_autoptr (GdkTexture) texture = gdk_texture_new_from_filename (draw_plan ("copied.png", 320, 240), NULL);
  const Plan *plan;

  gtk_widget_grab_focus (GTK_WIDGET (plan_canvas (window)));
  gdk_clipboard_set_texture (gtk_widget_get_clipboard (GTK_WIDGET (window)), texture);
  gui_key ("<Control>v");
  plan = await_plan (window);
  ck_assert_double_eq (plan->width, 320);
  ck_assert_ptr_nonnull (plan->image);
  ck_assert_str_eq (plan->image_type, "image/png");
}
END_TEST

START_TEST (a_picture_file_copied_in_a_file_manager_is_pasted_as_a_plan)
{
  TrammelWindow *window = stage_open (NULL);
  g_autoptr (GdkContentProvider) content = stage_dragged_file (NULL, 0, 0, (gpointer) draw_plan ("copied.png", 320, 240));

  gtk_widget_grab_focus (GTK_WIDGET (plan_canvas (window)));
  gdk_clipboard_set_content (gtk_widget_get_clipboard (GTK_WIDGET (window)), content);
  gui_key ("<Control>v");
  ck_assert_str_eq (await_plan (window)->name, "copied.png");
}
END_TEST

/* What cannot be had */

START_TEST (a_broken_picture_is_one_sentence_and_the_document_stays)
{
  TrammelWindow *window = stage_open (stage_example ("saltmarsh-racer", "racer.trammel"));
  const char *path = draw_plan ("broken.png", 600, 400);
  g_autofree char *bytes = NULL;
  gsize length;

  ck_assert (g_file_get_contents (path, &bytes, &length, NULL));
  ck_assert (g_file_set_contents (path, bytes, (gssize) length / 2, NULL));
  gui_key ("<Control>o");
  stage_choose ("Open", path, false);
  stage_await_strip (window, "broken.png: The file breaks off in the middle of its picture");
  ck_assert_int_eq (plan_count (window), 0);
  ck_assert_str_eq (stage_state (window), "");
  ck_assert_ptr_null (trammel_session_undo_label (trammel_window_session (window)));
}
END_TEST

START_TEST (a_text_that_is_called_a_picture_is_said_to_be_none)
{
  TrammelWindow *window = stage_open (NULL);
  const char *path = stage_path ("letter.jpg");

  ck_assert (g_file_set_contents (path, "Dear builder", -1, NULL));
  gui_key ("<Control>o");
  stage_choose ("Open", path, false);
  stage_await_strip (window, "letter.jpg: The file is neither a picture");
  ck_assert_int_eq (plan_count (window), 0);
}
END_TEST

/* What is refused says why, by its name, and what to do about it. */
static const struct { const char *name, *bytes; size_t length; const char *says; } refused[] = {
  { "empty.png", "", 0, "empty.png: The file is empty." },
  { "cut.png", "\x89PNG\r\n\x1a\n\0\0\0\xdIHDR", 16, "cut.png: The file breaks off in the middle of its picture: copy it again" },
  { "cut.gif", "GIF89a\1\0\1\0\0\0\0,", 14, "cut.gif: The file breaks off in the middle of its picture" },
  { "cut.pdf", "%PDF-1.4 and nothing more", 25, "cut.pdf: The file breaks off in the middle of its picture" },
  { "damaged.pdf", "%PDF-1.4 and nothing that a page could be\n%%EOF", 47, "damaged.pdf: The file is damaged: open it in a picture program" },
  { "damaged.svg", "<svg><path></svg>", 17, "damaged.svg: The file is damaged" },
  { "nothing.svg", "<svg xmlns='http://www.w3.org/2000/svg' width='0' height='0'/>", 62,
    "nothing.svg: The picture has no width or no height." },
};

START_TEST (each_picture_that_is_refused_says_its_sentence)
{
  TrammelWindow *window = stage_open (NULL);
  const char *path = stage_path (refused[_i].name);

  ck_assert (g_file_set_contents (path, refused[_i].bytes, (gssize) refused[_i].length, NULL));
  trammel_window_open_plan (window, path);
  stage_await_strip (window, refused[_i].says);
  ck_assert_int_eq (plan_count (window), 0);
  ck_assert_ptr_null (trammel_session_undo_label (trammel_window_session (window)));
}
END_TEST

/* Large ones */

static bool
stop_is_offered (gpointer window)
{
  return gui_find (window, "Stop") != NULL || plan_is_there (window);
}

START_TEST (a_large_picture_shows_how_far_it_is_and_can_be_stopped)
{
  TrammelWindow *window = stage_open (NULL);
  const char *path = stage_path ("large.png");

  draw_grey_plan (path, 10000, 9000, false);
  trammel_window_open_plan (window, path);
  ck_assert (gui_wait (stop_is_offered, window));
  ck_assert_ptr_nonnull (gui_find_type (gui_find_type (GTK_WIDGET (window), TRAMMEL_TYPE_STRIP), GTK_TYPE_PROGRESS_BAR));
  gui_click (gui_find (GTK_WIDGET (window), "Stop"));
  ck_assert_ptr_null (gui_find (GTK_WIDGET (window), "Stop"));
  gui_wait_ms (300);
  ck_assert_int_eq (plan_count (window), 0);
  ck_assert (!plan_is_there (window));
}
END_TEST

START_TEST (a_picture_too_large_to_be_shown_whole_is_reduced_and_says_so)
{
  TrammelWindow *window = stage_open (NULL);
  const char *path = stage_path ("large.png");
  const Plan *plan;

  draw_grey_plan (path, 10000, 9000, false);
  trammel_window_open_plan (window, path);
  plan = await_plan (window);
  gui_await (GTK_WIDGET (window), "The picture is large: 2 × 2 of its pixels are shown as one");
  ck_assert_double_eq (plan->width, 10000);       /* marks count the file's own pixels */
  ck_assert_int_eq (ink_width (ink_levels_ink (trammel_plan_store_ink (plan_store (window)))), 5000);
}
END_TEST

static bool
two_plans (gpointer window)
{
  return plan_count (window) == 2;
}

START_TEST (plans_asked_for_one_upon_the_other_come_one_after_the_other)
{
  TrammelWindow *window = stage_open (NULL);
  const char *large = stage_path ("large.png"), *small = draw_plan ("small.png", 600, 400);

  draw_grey_plan (large, 5000, 4000, false);
  trammel_window_open_plan (window, large);
  trammel_window_open_plan (window, small);
  ck_assert (gui_wait (two_plans, window));
  ck_assert_str_eq (aeroplane_plan (stage_aeroplane (window), 0)->name, "large.png");
  ck_assert_str_eq (await_plan (window)->name, "small.png");
}
END_TEST

/* Pages */

static const char *
draw_pages (const char *name, int count)
{
  const char *path = stage_path (name);
  cairo_surface_t *surface = cairo_pdf_surface_create (path, 595.2756, 841.8898);      /* A4 in points */
  cairo_t *cr = cairo_create (surface);

  for (int i = 0; i < count; i++) {
    if (i == 1)
      cairo_pdf_surface_set_size (surface, 841.8898, 595.2756);
    cairo_rectangle (cr, 72, 72, 144, 144 + i);
    cairo_stroke (cr);
    cairo_show_page (cr);
  }
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  return path;
}

START_TEST (a_page_is_chosen_by_its_picture_and_its_true_size_and_lies_true_to_size)
{
  TrammelWindow *window = stage_open (NULL);
  const Plan *plan;
  Mapping mapping;
  bool is_true;

  gui_key ("<Control>o");
  stage_choose ("Open", draw_pages ("kit.pdf", 3), false);
  gui_present (gui_await_window ("Choose a Page"));
  gui_await (GTK_WIDGET (gui_await_window ("Choose a Page")), "Page 1, 210 × 297 mm");
  gui_await (GTK_WIDGET (gui_await_window ("Choose a Page")), "Page 2, 297 × 210 mm");
  gui_key ("Right");
  gui_key ("Return");
  plan = await_plan (window);
  ck_assert_str_eq (plan->name, "kit.pdf, page 2");
  ck_assert_double_eq (plan->page, 2);
  ck_assert (trammel_plan_store_mapping (plan_store (window), &mapping, NULL, &is_true));
  ck_assert (is_true);
  ck_assert_double_eq_tol (plan->width * mapping_mm_per_px (&mapping, (Point) { 0, 0 }, (Point) { 1, 0 }), 297, 0.1);
  ck_assert_str_eq (tool_in_hand (window), "plan");
  ck_assert_int_eq (step_in_hand (window), PLAN_STEP_VIEW);
  gui_await (GTK_WIDGET (window), "The page is true to size: it is 297 × 210\u00a0mm.");
}
END_TEST

START_TEST (a_page_of_a_tiff_is_chosen_likewise_and_comes_again_with_its_document)
{
  TrammelWindow *window = stage_open (NULL);
  const char *path = stage_path ("scans.tif"), *document = stage_path ("scans.trammel");
  Bytes tiff = tiff_of_pages (3, true);

  ck_assert (g_file_set_contents (path, (const char *) tiff.bytes, (gssize) tiff.length, NULL));
  bytes_free (tiff);
  gui_key ("<Control>o");
  stage_choose ("Open", path, false);
  gui_present (gui_await_window ("Choose a Page"));
  gui_await (GTK_WIDGET (gui_await_window ("Choose a Page")), "Page 3");
  gui_key ("Right");
  gui_key ("Return");
  ck_assert_double_eq (await_plan (window)->width, 12);
  save_as (window, document);
  ck_assert_double_eq (await_plan (open_again (document))->page, 2);
}
END_TEST

START_TEST (choosing_no_page_opens_nothing)
{
  TrammelWindow *window = stage_open (NULL);

  gui_key ("<Control>o");
  stage_choose ("Open", draw_pages ("kit.pdf", 2), false);
  gui_present (gui_await_window ("Choose a Page"));
  gui_key ("Escape");
  ck_assert (!gui_window_is_there ("Choose a Page"));
  ck_assert_int_eq (plan_count (window), 0);
  ck_assert_ptr_null (gui_find (GTK_WIDGET (window), "Stop"));
}
END_TEST

START_TEST (a_thousand_pages_are_as_quickly_asked_about_as_two)
{
  TrammelWindow *window = stage_open (NULL);
  const Plan *plan;

  gui_key ("<Control>o");
  stage_choose ("Open", draw_pages ("catalogue.pdf", 1000), false);
  gui_present (gui_await_window ("Choose a Page"));
  gui_key ("End");
  gui_await (GTK_WIDGET (gui_await_window ("Choose a Page")), "Page 1000, 297 × 210 mm");
  gui_key ("Return");
  plan = await_plan (window);
  ck_assert_double_eq (plan->page, 1000);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("plan-open");
  TCase *tests = tcase_create ("plans");

  gui_begin ();
  tcase_set_timeout (tests, 240);
  tcase_add_checked_fixture (tests, stage_raise, stage_strike);
  tcase_add_test (tests, a_picture_opened_on_an_empty_sheet_becomes_a_plan_that_is_all_in_view);
  tcase_add_test (tests, a_plan_of_a_long_name_makes_the_panel_no_wider);
  tcase_add_test (tests, an_opened_picture_leads_on_to_its_known_length);
  tcase_add_test (tests, fit_sheet_takes_in_the_plan_where_nothing_else_is_drawn);
  tcase_add_test (tests, opening_a_plan_is_one_step_of_that_name);
  tcase_add_test (tests, the_start_page_opens_a_plan_first_of_all);
  tcase_add_test (tests, a_plan_goes_beneath_the_aeroplane_that_is_open_and_a_second_beside_the_first);
  tcase_add_test (tests, a_picture_dropped_on_the_sheet_becomes_a_plan);
  tcase_add_test (tests, a_copied_picture_is_pasted_as_a_plan_within_the_document);
  tcase_add_test (tests, a_picture_file_copied_in_a_file_manager_is_pasted_as_a_plan);
  tcase_add_test (tests, a_broken_picture_is_one_sentence_and_the_document_stays);
  tcase_add_test (tests, a_text_that_is_called_a_picture_is_said_to_be_none);
  tcase_add_loop_test (tests, each_picture_that_is_refused_says_its_sentence, 0, G_N_ELEMENTS (refused));
  tcase_add_test (tests, a_large_picture_shows_how_far_it_is_and_can_be_stopped);
  tcase_add_test (tests, a_picture_too_large_to_be_shown_whole_is_reduced_and_says_so);
  tcase_add_test (tests, plans_asked_for_one_upon_the_other_come_one_after_the_other);
  tcase_add_test (tests, a_page_is_chosen_by_its_picture_and_its_true_size_and_lies_true_to_size);
  tcase_add_test (tests, a_page_of_a_tiff_is_chosen_likewise_and_comes_again_with_its_document);
  tcase_add_test (tests, choosing_no_page_opens_nothing);
  tcase_add_test (tests, a_thousand_pages_are_as_quickly_asked_about_as_two);
  suite_add_tcase (suite, tests);
  return gui_run (suite);
}
