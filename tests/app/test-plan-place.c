/* A view's place under a real hand: what makes it a guess no more, and what does not. */
#include "app/status-line.h"
#include "drawing/selection.h"
#include "app/plan-remark.h"
#include "support/plan-hand.h"

/* A tailplane traced in the view that nobody has placed. */
static void
trace_a_tail (void)
{
  const Segment segments[] = { segment_line ((Point) { 92, 40 }), segment_line ((Point) { 110, 40 }), segment_line ((Point) { 112, 0 }) };
  const NodeKind kinds[] = { NODE_CORNER, NODE_CORNER, NODE_CORNER, NODE_CORNER };
  Outline *outline = NULL;
  Surface *surface;

  ck_assert_int_eq (outline_new ((Point) { 90, 0 }, segments, 3, kinds, &outline), CORE_OK);
  surface = surface_new ("tail", ROLE_TAILPLANE, outline);
  surface->traced = g_strdup ("tail-view");
  trammel_session_do (hand_session (), aeroplane_with_added (hand_aeroplane (), &surface->piece), "Trace");
}

static void
begin_with_a_guess (void)
{
  begin_with (plan_with_a_guess ());
  trammel_plan_store_choose (plans (), plan ()->piece.id, "tail-view");
  trace_a_tail ();
}

static double
root (void)
{
  return outline_node (hand_surface ("tail")->outline, 0).x;
}

static void
type_root (const char *text)
{
  GtkWidget *window = GTK_WIDGET (hand_window ());

  if (gui_find (window, "Root, aft of datum, mm") == NULL)
    gui_key ("F9");      /* an empty sheet has the panel folded away */
  trammel_session_select (hand_session (), selection_of ("tail"));
  gui_settle ();
  gtk_widget_grab_focus (gui_await (window, "Root, aft of datum, mm"));
  gui_settle ();
  gui_key ("<Control>a");
  gui_type (text);
  gui_key ("Return");
  gui_settle ();
}

START_TEST (a_root_station_typed_in_the_panel_takes_the_guessed_view_along)
{
  begin_with_a_guess ();
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  type_root ("104.5");
  ck_assert_double_eq (root (), 104.5);
  ck_assert_double_eq_tol (plan ()->views[1].x, 104.5, 1e-9);
  ck_assert (!plan ()->views[1].for_now);
  undoes ("Move Surface", before_it);
  /* The usual place, typed, is a place all the same. */
  type_root ("90.0");
  ck_assert (!plan ()->views[1].for_now);
  ck_assert_double_eq (plan ()->views[1].x, 90);
}
END_TEST

START_TEST (a_view_dragged_away_and_back_is_a_guess_as_before)
{
  begin_with_a_guess ();
  step ("View");
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  hand_press ((Point) { 100, -60 });
  hand_move ((Point) { 120, -60 });
  hand_move ((Point) { 118, -60 });
  ck_assert_double_gt (root (), 100);
  hand_move ((Point) { 100, -60 });
  hand_release ();
  ck_assert (plan ()->views[1].for_now);
  ck_assert (aeroplane_equal (hand_aeroplane (), before_it));
}
END_TEST

START_TEST (a_view_nudged_away_and_back_is_a_guess_as_before)
{
  begin_with_a_guess ();
  step ("View");
  g_autoptr (Aeroplane) before_it = aeroplane_ref (hand_aeroplane ());
  /* Two ends of both axes, then the places of both views. */
  for (int i = 0; i < 6; i++)
    gui_key ("Tab");
  gui_key ("Down");
  ck_assert (!plan ()->views[1].for_now);
  gui_key ("Up");
  ck_assert (plan ()->views[1].for_now);
  gui_wait_ms (900);
  ck_assert (aeroplane_equal (hand_aeroplane (), before_it));
}
END_TEST

START_TEST (a_guessed_place_offers_the_click_in_the_side_view_where_the_guess_is_told)
{
  GtkWidget *button;

  begin_with (plan_with_a_side_view (true));
  trammel_plan_store_choose (plans (), plan ()->piece.id, "wing-view");
  step ("View");
  gui_await (strip (), "It stands where such a part usually does: drag the plan to its own place, or click that in the side view.");
  button = gui_await (strip (), "Click Its Place in the Side View");
  gui_click (button);
  ck_assert_str_eq (trammel_plan_store_view (plans ())->id, "side");
  ck_assert_ptr_null (gui_find (strip (), "Click Its Place in the Side View"));
  hand_look ((Point) { 100, 0 }, 2);
  hand_click (on_sheet ((Point) { 500, 390 }));
  ck_assert (!plan ()->views[1].for_now);
  gui_settle ();
  /* Known once, it is offered no more; the details of the view have it still. */
  ck_assert_ptr_null (gui_find (strip (), "Click Its Place in the Side View"));
}
END_TEST

START_TEST (a_guessed_place_on_a_sheet_without_a_side_view_asks_for_one)
{
  static const char asks[] = "Does the sheet show the body from the side? Add that view with +: the place of this one can then be clicked in it.";

  begin_with_a_guess ();
  step ("View");
  gui_await (strip (), asks);
  trammel_plan_store_choose (plans (), plan ()->piece.id, "wing-view");
  gui_settle ();
  ck_assert_ptr_null (gui_find (strip (), asks));
}
END_TEST

static Plan *
plan_with_a_guessed_fin (void)
{
  Plan *made = new_plan (false);
  Plan *fin = plan_with_view (made, (PlanView) { .shows = VIEW_FIN, .fore = upright_from, .aft = upright_to, .x = -27, .for_now = true });

  piece_unref (&made->piece);
  return fin;
}

static const char no_view[] = "This sheet has no view in hand: what you draw clings to no line, counts as the right half on either side, and stays as "
                              "it is when the plan is corrected; step View sets one to trace in.";
static const char no_length[] = "No length is known yet: the outline will be wrong in size until step Known Length tells one, and then goes along "
                                "with it.";

START_TEST (a_missing_side_view_does_not_push_out_that_the_place_is_a_guess)
{
  static const char guess[] = "The forward end of its axis stands 27\u00a0mm ahead of the datum, a guess: step View takes it to its own place.";
  static const char side[] = "What is traced here stands in the side view, which is switched off: the menu shows it.";
  g_autofree char *with_side = g_strjoin ("\n", no_length, guess, NULL), *without = g_strjoin ("\n", no_length, guess, side, NULL);

  begin_with (plan_with_a_guessed_fin ());
  step ("Trace");
  gui_await (strip (), with_side);
  trammel_settings_set_flag (trammel_session_settings (hand_session ()), SHOW_SIDE_VIEW, false);
  gui_await (strip (), without);
  trammel_settings_set_flag (trammel_session_settings (hand_session ()), SHOW_SIDE_VIEW, true);
}
END_TEST

static bool
axis_is_in_sight (gpointer data)
{
  const SheetView *seen = trammel_sheet_canvas_view (hand_sheet ());
  const PlanView *in_hand = trammel_plan_store_view (plans ());
  const Point fore = view_to_screen (seen, on_sheet (in_hand->fore)), aft = view_to_screen (seen, on_sheet (in_hand->aft));

  return fmin (fmin (fore.x, fore.y), fmin (aft.x, aft.y)) >= 0 && fmax (fore.x, aft.x) <= seen->width && fmax (fore.y, aft.y) <= seen->height;
}

START_TEST (a_view_chosen_in_the_list_comes_into_sight)
{
  SheetView seen;

  begin_with_a_guess ();
  step ("View");
  hand_look ((Point) { 900, 300 }, 3);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (gui_await (strip (), "View in Hand")), 1);
  ck_assert (gui_wait (axis_is_in_sight, NULL));
  ck_assert_str_eq (trammel_plan_store_view (plans ())->id, "wing-view");
  ck_assert_double_eq (trammel_sheet_canvas_view (hand_sheet ())->scale, 3);
  /* What is in sight stays where it is. */
  hand_look ((Point) { 60, 0 }, 2);
  seen = *trammel_sheet_canvas_view (hand_sheet ());
  gtk_drop_down_set_selected (GTK_DROP_DOWN (gui_await (strip (), "View in Hand")), 2);
  gui_wait_ms (600);
  /* What the strip says may take a line more. */
  ck_assert_double_eq_tol (trammel_sheet_canvas_view (hand_sheet ())->origin_y, seen.origin_y, 60);
}
END_TEST

START_TEST (only_a_view_in_which_something_was_traced_has_its_step_ticked)
{
  begin_with_a_guess ();
  step ("View");
  ck_assert_ptr_null (gui_find (strip (), "4"));
  gtk_drop_down_set_selected (GTK_DROP_DOWN (gui_await (strip (), "View in Hand")), 1);
  gui_await (strip (), "4");
}
END_TEST

/* Of the Plan tool, and of the Outline tool over a plan. */
static const char *const steps[] = { "View", "Trace" };

START_TEST (help_opens_at_the_page_about_plans)
{
  GtkWindow *help;

  begin_with_a_guess ();
  step (steps[_i]);
  gui_key ("F1");
  help = gui_await_window ("Help");
  gui_present (help);
  gui_await (gui_await (GTK_WIDGET (help), "Page"), "Trace a Plan");
  gui_key ("Escape");
  gui_settle ();
}
END_TEST

START_TEST (the_strip_and_the_status_line_do_not_say_the_same_twice)
{
  GtkWidget *status = gui_find_type (GTK_WIDGET (hand_window ()), TRAMMEL_TYPE_STATUS_LINE);
  const char *hint;

  begin_with_a_guess ();
  hint = trammel_sheet_canvas_hint (hand_sheet ());
  gui_await (strip (), hint);
  ck_assert_ptr_null (gui_find (status, hint));
  gui_click (gui_await (strip (), "Done"));
  gui_settle ();
  gui_await (status, trammel_sheet_canvas_hint (hand_sheet ()));
}
END_TEST

START_TEST (a_row_of_the_list_of_views_has_its_words_for_a_name)
{
  GtkWidget *list;

  begin_with_a_guess ();
  step ("View");
  list = gui_await (strip (), "View in Hand");
  gui_click (list);
  gui_settle ();
  list = gui_find_type (list, GTK_TYPE_LIST_VIEW);
  ck_assert_ptr_nonnull (list);
  ck_assert (gtk_test_accessible_has_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (list)), GTK_ACCESSIBLE_PROPERTY_LABEL));
  ck_assert_ptr_null (gtk_test_accessible_check_property (GTK_ACCESSIBLE (gtk_widget_get_first_child (list)),
                                                          GTK_ACCESSIBLE_PROPERTY_LABEL, "Whole sheet"));
  gui_key ("Escape");
}
END_TEST

/* The tool is taken with the strip closed. */
static void
draw_from_select (void)
{
  trammel_sheet_canvas_set_tool (hand_sheet (), "select");
  gtk_widget_grab_focus (GTK_WIDGET (hand_sheet ()));
  gui_settle ();
  gui_key ("o");
  gui_settle ();
}

START_TEST (before_a_plan_has_a_view_and_a_length_the_strip_says_what_an_outline_lacks)
{
  begin ();
  draw_from_select ();
  g_autofree char *both = g_strdup_printf ("%s\n%s", no_view, "No length is known yet: the size is a guess until step Known Length tells it.");
  ck_assert_ptr_nonnull (gui_await (strip (), both));
  begin_with (plan_with_a_guess ());
  draw_from_select ();
  g_autofree char *remark = plan_remark (hand_sheet (), true);
  ck_assert_msg (g_str_has_prefix (remark, no_length), "%s", remark);
  ck_assert_ptr_nonnull (gui_await (strip (), remark));
  step ("Known Length");
  set_level_length ("200");
  draw_from_select ();
  ck_assert (!plan_remark_is_pressing (hand_sheet ()));
  ck_assert (!trammel_plan_work_is_told (trammel_plan_work_of (hand_sheet ())));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("places");

  tcase_add_test (tests, a_root_station_typed_in_the_panel_takes_the_guessed_view_along);
  tcase_add_test (tests, a_view_dragged_away_and_back_is_a_guess_as_before);
  tcase_add_test (tests, a_view_nudged_away_and_back_is_a_guess_as_before);
  tcase_add_test (tests, a_guessed_place_offers_the_click_in_the_side_view_where_the_guess_is_told);
  tcase_add_test (tests, a_guessed_place_on_a_sheet_without_a_side_view_asks_for_one);
  tcase_add_test (tests, a_missing_side_view_does_not_push_out_that_the_place_is_a_guess);
  tcase_add_test (tests, a_view_chosen_in_the_list_comes_into_sight);
  tcase_add_test (tests, only_a_view_in_which_something_was_traced_has_its_step_ticked);
  tcase_add_loop_test (tests, help_opens_at_the_page_about_plans, 0, G_N_ELEMENTS (steps));
  tcase_add_test (tests, the_strip_and_the_status_line_do_not_say_the_same_twice);
  tcase_add_test (tests, a_row_of_the_list_of_views_has_its_words_for_a_name);
  tcase_add_test (tests, before_a_plan_has_a_view_and_a_length_the_strip_says_what_an_outline_lacks);
  return hand_run ("plan-place", &tests, 1);
}
