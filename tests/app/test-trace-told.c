/* What is told of an outline that was traced: where no line was seen, how it lies over its print, its tolerance. */
#include "app/strip.h"
#include "app/trace-words.h"
#include "figures/passed-click.h"
#include "support/trace-hand.h"

static const SheetDoubt *
doubt (void)
{
  return trammel_sheet_canvas_overlay (hand_sheet ())->doubt;
}

/* As if a third of what was just traced were printed nowhere. */
static void
doubt_what_was_traced (void)
{
  const Point places[] = { { 2, 40 }, { 3, 50 }, { 5, 60 }, { NAN, NAN } };
  TraceResult result = { .status = CORE_OK, .lost = 0.33, .unseen = g_array_new (FALSE, FALSE, sizeof (Point)) };

  g_array_append_vals (result.unseen, places, G_N_ELEMENTS (places));
  trace_telling_result (GTK_WIDGET (hand_sheet ()), (Units) { LENGTH_MM, MASS_G }, trammel_traced_order (trammel_traced_of (hand_session ())),
                        &result);
  g_array_unref (result.unseen);
  gui_settle ();
}

START_TEST (where_no_line_is_to_be_seen_is_dashed_as_long_as_that_outline_stands)
{
  static const char says[] = "Along 33\u00a0% of the outline no printed line is to be seen: look at it where it is dashed.";

  begin ();
  trace_with (clicks, 5, 1);
  doubt_what_was_traced ();
  stage_await_strip (hand_window (), says);
  ck_assert_uint_eq (doubt ()->count, 4);
  ck_assert_double_eq (doubt ()->places[0].x, 102);
  /* With the outline go the dashes and the sentence. */
  trammel_session_undo (hand_session ());
  gui_settle ();
  ck_assert_ptr_null (doubt ());
  ck_assert (!trammel_window_tells (hand_window (), says));
  trammel_session_redo (hand_session ());
  ck_assert_ptr_nonnull (doubt ());
  doubt_what_was_traced ();
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.close-strip", NULL);
  ck_assert (!trammel_window_tells (hand_window (), says));
  ck_assert_ptr_nonnull (doubt ());
}
END_TEST

START_TEST (the_dashes_lie_over_their_own_view_of_the_plan_and_over_no_other)
{
  TrammelPlanStore *store = NULL;

  begin ();
  trace_with (clicks, 5, 1);
  doubt_what_was_traced ();
  store = trammel_sheet_canvas_plan_store (hand_sheet ());
  g_autofree char *plan_id = g_strdup (trammel_plan_store_plan (store)->piece.id), *view_id = g_strdup (trammel_plan_store_view (store)->id);
  /* As when a further view is added: the whole sheet, upright. */
  trammel_plan_store_choose (store, plan_id, NULL);
  ck_assert_ptr_null (doubt ());
  trammel_session_undo (hand_session ());
  trammel_plan_store_choose (store, plan_id, view_id);
  ck_assert_ptr_null (doubt ());
  trammel_session_redo (hand_session ());
  ck_assert_ptr_nonnull (doubt ());
}
END_TEST

START_TEST (the_question_about_a_root_goes_with_the_wing_that_it_is_of)
{
  const TraceResult result = { .status = CORE_OK };
  TraceOrder order;

  begin ();
  trace_with (clicks, 5, 1);
  order = *trammel_traced_order (trammel_traced_of (hand_session ()));
  order.ends_on_root = true;
  order.root = 7;
  g_autofree char *asks = trace_words_root ((Units) { LENGTH_MM, MASS_G }, 7);
  trace_telling_result (GTK_WIDGET (hand_sheet ()), (Units) { LENGTH_MM, MASS_G }, &order, &result);
  stage_await_strip (hand_window (), asks);
  trammel_session_undo (hand_session ());
  gui_settle ();
  ck_assert (!trammel_window_tells (hand_window (), asks));
}
END_TEST

/* What else is told of an outline: passing a click far off, going aside, and made of two halves. */
static const TraceResult told[] = {
  { .passed = { 3, { 5, 60 }, false } }, { .passed = { 3, { 5, 60 }, true } }, { .difference = { .most = 2, .at = { 5, 40 } } },
};
static const bool of_halves[] = { false, false, true };

START_TEST (what_is_told_of_an_outline_goes_with_it_when_it_is_undone)
{
  TraceResult result = told[_i];

  begin ();
  trace_with (clicks, 5, 1);
  result.mean = of_halves[_i] ? wing ()->outline : NULL;
  g_autofree char *says = trace_words_done ((Units) { LENGTH_MM, MASS_G }, trammel_traced_order (trammel_traced_of (hand_session ()))->ground,
                                              &result);
  trace_telling_result (GTK_WIDGET (hand_sheet ()), (Units) { LENGTH_MM, MASS_G }, trammel_traced_order (trammel_traced_of (hand_session ())),
                        &result);
  gui_settle ();
  stage_await_strip (hand_window (), says);
  trammel_session_undo (hand_session ());
  gui_settle ();
  ck_assert (!trammel_window_tells (hand_window (), says));
}
END_TEST

START_TEST (an_outline_off_its_print_is_unseen_and_one_on_it_is_seen)
{
  g_autoptr (GCancellable) nobody = g_cancellable_new ();
  Outline *printed = printed_wing (), *aft = NULL;
  const TraceOrder *order;
  GArray *seen, *unseen;
  double share, other;

  begin ();
  trace_with (clicks, 5, 1);
  order = trammel_traced_order (trammel_traced_of (hand_session ()));
  ck_assert_int_eq (outline_mapped (printed, (Point) { 1, 1 }, (Point) { 12, 0 }, &aft), CORE_OK);
  seen = trace_unseen (order, printed, nobody, &share);
  unseen = trace_unseen (order, aft, nobody, &other);
  ck_assert_uint_eq (seen->len, 0);
  ck_assert_uint_gt (unseen->len, 100);
  ck_assert_double_eq (share, 0);
  ck_assert_double_gt (other, 0.5);
  ck_assert (isnan (g_array_index (unseen, Point, unseen->len - 1).x));
  g_array_unref (seen);
  g_array_unref (unseen);
  outline_unref (printed);
  outline_unref (aft);
}
END_TEST

static const Comparison *
comparison (void)
{
  return trammel_comparing_result (trammel_comparing_of (hand_session ()));
}

static bool
is_compared (gpointer within)
{
  return comparison () != NULL && (comparison ()->most < 0.4) == *(bool *) within;
}

START_TEST (a_traced_outline_is_compared_with_its_line_and_so_is_a_node_pulled_off_it)
{
  bool near = true, off = false;
  Point tip;

  begin ();
  trace_with (clicks, 5, 1);
  ck_assert (gui_wait (is_compared, &near));
  ck_assert_double_lt (comparison ()->within, 0.2);
  trammel_sheet_canvas_set_tool (hand_sheet (), "select");
  tip = outline_node (wing ()->outline, 1);
  hand_drag (tip, (Point) { tip.x, tip.y + 2 });
  ck_assert (gui_wait (is_compared, &off));
  ck_assert_double_gt (comparison ()->most, 1.2);
  ck_assert_double_lt (comparison ()->most, 2.1);
  ck_assert_double_gt (comparison ()->most_at.y, 60);
  ck_assert_ptr_nonnull (trammel_sheet_canvas_overlay (hand_sheet ())->departures);
}
END_TEST

static char *
compared_words (Units units)
{
  ViewShows shows;
  const Point worst = trammel_comparing_worst (trammel_comparing_of (hand_session ()), &shows);

  return trace_words_compared (units, comparison (), shows, worst);
}

static bool
is_passed (gpointer by)
{
  return (wing ()->passed.by > 0) == *(bool *) by;
}

START_TEST (an_outline_that_passes_a_click_is_not_said_to_keep_to_its_line_until_it_is_accepted)
{
  static const Point far[] = { { 100.4, 0.3 }, { 104.4, 60 }, { 116.3, 84.4 }, { 137.6, 60 }, { 139.7, 0.2 } };
  GtkWidget *window = GTK_WIDGET (hand_window ());
  const Units units = { LENGTH_MM, MASS_G };
  bool near = true, passed = true;
  TrammelStrip *bar = NULL;

  begin ();
  hand_look ((Point) { 120, 40 }, 8);      /* a hand misses by less there */
  trace_with (far, 5, 1);
  ck_assert (gui_wait (is_passed, &passed));
  ck_assert_double_eq_tol (wing ()->passed.at.y, 60, 0.2);
  ck_assert_double_eq_tol (wing ()->passed.at.x, 137.6, 0.2);
  ck_assert (gui_wait (is_compared, &near));
  gui_key ("F9");      /* an empty sheet has the panel folded away */
  gui_settle ();
  g_autofree char *says = passed_clicks_of (&wing ()->piece, units), *keeps = NULL;
  keeps = compared_words (units);
  ck_assert_ptr_nonnull (gui_await (window, says));
  ck_assert_ptr_null (gui_find (window, keeps));
  stage_await_strip (hand_window (), "passes your click");
  bar = TRAMMEL_STRIP (gui_find_type (window, TRAMMEL_TYPE_STRIP));
  gui_click (gui_await (window, "Accept the Outline"));
  ck_assert_double_eq (wing ()->passed.by, 0);
  gui_settle ();
  ck_assert_ptr_null (trammel_strip_sentence (bar));
  ck_assert_ptr_nonnull (gui_find (window, keeps));
  trammel_traced_set_tolerance (trammel_traced_of (hand_session ()), 0.5);
  ck_assert (gui_wait (rests, NULL));
  ck_assert_double_eq (wing ()->passed.by, 0);
  trammel_session_undo (hand_session ());
  trammel_session_undo (hand_session ());
  ck_assert_double_gt (wing ()->passed.by, 2);
}
END_TEST

START_TEST (another_tolerance_traces_again_in_a_step_of_its_own)
{
  g_autofree char *before = NULL;
  TrammelTraced *traced = NULL;

  begin ();
  traced = trammel_traced_of (hand_session ());
  hand_click (clicks[0]);
  hand_click (clicks[1]);
  gui_key_down ("Control_L");
  hand_click (clicks[3]);
  gui_key_up ("Control_L");
  trace_with (clicks + 4, 1, 1);
  before = hand_text ();
  ck_assert (trammel_traced_is_fresh (traced, &wing ()->piece));
  ck_assert_double_eq_tol (trammel_traced_tolerance (traced), 0.125, 0.01);        /* half a pixel of a quarter of a millimetre */
  trammel_traced_set_tolerance (traced, 1.5);
  ck_assert (gui_wait (rests, NULL));
  ck_assert_double_eq (trammel_traced_tolerance (traced), 1.5);
  hand_undoes ("Change Tolerance", before);
}
END_TEST

START_TEST (a_panel_shortened_by_its_dihedral_is_compared_as_it_was_drawn)
{
  bool near = true;

  begin ();
  trace_with (clicks, 5, 1);
  trammel_session_do (hand_session (), with_dihedral (20), "Change Dihedral");
  trammel_traced_set_flat (trammel_traced_of (hand_session ()), true);
  gui_wait_ms (200);
  ck_assert (gui_wait (is_compared, &near));
  trammel_session_undo (hand_session ());
  gui_wait_ms (200);
  ck_assert (gui_wait (is_compared, &near));
}
END_TEST

START_TEST (once_a_strip_is_answered_letters_choose_tools_again)
{
  begin ();
  trammel_window_tell (hand_window (), "A remark.");
  gui_click (gui_await (gui_find_type (GTK_WIDGET (hand_window ()), TRAMMEL_TYPE_STRIP), "Close"));
  gui_key ("s");
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "select");
}
END_TEST

/* Where a place of the sheet stands in the window, px. */
static Point
in_window (Point place)
{
  const Point px = hand_px (place);
  graphene_point_t at;

  ck_assert (gtk_widget_compute_point (GTK_WIDGET (hand_sheet ()), GTK_WIDGET (hand_window ()),
                                       &GRAPHENE_POINT_INIT ((float) px.x, (float) px.y), &at));
  return (Point) { at.x, at.y };
}

START_TEST (the_sheet_stays_where_it_is_on_the_screen_when_a_strip_opens_and_closes)
{
  SheetView looked_at;
  Point before;

  begin ();
  trammel_sheet_canvas_set_tool (hand_sheet (), "select");
  trammel_sheet_canvas_fit (hand_sheet (), false);
  hand_await_layout ();
  looked_at = view_panned (trammel_sheet_canvas_view (hand_sheet ()), 0, 120);
  trammel_sheet_canvas_set_view (hand_sheet (), looked_at);      /* somebody chose it: it is no longer fitted */
  hand_await_layout ();
  before = in_window (clicks[2]);
  trammel_sheet_canvas_set_tool (hand_sheet (), "plan");
  gui_wait_ms (300);
  ck_assert_double_lt (point_distance (in_window (clicks[2]), before), 1);
  trammel_sheet_canvas_set_tool (hand_sheet (), "select");
  gui_wait_ms (300);
  ck_assert_double_lt (point_distance (in_window (clicks[2]), before), 1);
}
END_TEST

/* From the sheet, whose plate and words go as it leaves. */
START_TEST (the_pointer_goes_over_from_a_trace_to_what_is_said_about_its_view)
{
  GtkWidget *about;

  begin ();
  trammel_sheet_canvas_set_tool (hand_sheet (), "plan");
  gui_settle ();
  gui_click (gui_await (GTK_WIDGET (hand_window ()), "Trace"));
  hand_look ((Point) { 120, 0 }, 3.5);
  gui_settle ();
  about = gui_await (GTK_WIDGET (hand_window ()), "About This View");
  hand_click (clicks[0]);
  hand_move (clicks[1]);
  ck_assert_ptr_nonnull (hand_plate ("Station"));
  gui_move_to (about, gtk_widget_get_width (about) / 3.0, gtk_widget_get_height (about) / 2.0);
  gui_settle ();
  ck_assert_ptr_null (hand_plate ("Station"));
  ck_assert_ptr_eq (gui_find (GTK_WIDGET (hand_window ()), "About This View"), about);
}
END_TEST

int
main (void)
{
  TCase *tcase = tcase_create ("trace");

  tcase_add_test (tcase, where_no_line_is_to_be_seen_is_dashed_as_long_as_that_outline_stands);
  tcase_add_test (tcase, the_dashes_lie_over_their_own_view_of_the_plan_and_over_no_other);
  tcase_add_test (tcase, the_question_about_a_root_goes_with_the_wing_that_it_is_of);
  tcase_add_loop_test (tcase, what_is_told_of_an_outline_goes_with_it_when_it_is_undone, 0, G_N_ELEMENTS (told));
  tcase_add_test (tcase, an_outline_off_its_print_is_unseen_and_one_on_it_is_seen);
  tcase_add_test (tcase, a_traced_outline_is_compared_with_its_line_and_so_is_a_node_pulled_off_it);
  tcase_add_test (tcase, an_outline_that_passes_a_click_is_not_said_to_keep_to_its_line_until_it_is_accepted);
  tcase_add_test (tcase, another_tolerance_traces_again_in_a_step_of_its_own);
  tcase_add_test (tcase, a_panel_shortened_by_its_dihedral_is_compared_as_it_was_drawn);
  tcase_add_test (tcase, once_a_strip_is_answered_letters_choose_tools_again);
  tcase_add_test (tcase, the_sheet_stays_where_it_is_on_the_screen_when_a_strip_opens_and_closes);
  tcase_add_test (tcase, the_pointer_goes_over_from_a_trace_to_what_is_said_about_its_view);
  return hand_run ("app trace-told", &tcase, 1);
}
