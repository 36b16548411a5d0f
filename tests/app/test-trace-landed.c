/* What a trace comes to on the aeroplane: halves, roots, bodies, a plan that is another meanwhile. */
#include "support/trace-hand.h"

START_TEST (another_trace_in_the_same_view_takes_the_place_of_the_first)
{
  begin ();
  trace_with (clicks, 5, 1);
  trace_with (clicks, 5, 1);
  expect_printed_wing ();
}
END_TEST

START_TEST (a_half_drawn_at_port_comes_out_as_the_right_half)
{
  begin_on ((DrawnPlan) { .port = 1, .shows = VIEW_WING, .side = VIEW_PORT });
  trace_with (clicks, 5, 1);
  expect_printed_wing ();
}
END_TEST

START_TEST (a_half_seen_from_below_comes_out_as_the_right_half)
{
  begin_on ((DrawnPlan) { .port = 1, .shows = VIEW_TAILPLANE, .side = VIEW_STARBOARD, .flipped = true });
  trace_with (clicks, 5, 1);
  expect_printed_wing ();
  ck_assert_int_eq (wing ()->role, ROLE_TAILPLANE);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Trace Tailplane");
}
END_TEST

START_TEST (two_halves_traced_one_after_the_other_are_averaged_and_their_difference_is_told)
{
  begin_on ((DrawnPlan) { .starboard = 1, .port = 1.02, .shows = VIEW_WING, .side = VIEW_BOTH });
  trace_with (clicks, 5, 1);
  ck_assert_double_eq_tol (outline_bounds (wing ()->outline).max.y, 85, 0.25);
  trace_with (clicks, 5, -1);
  ck_assert_double_eq_tol (outline_bounds (wing ()->outline).max.y, 85.85, 0.25);
  stage_await_strip (hand_window (), "Both halves are averaged: they differ by 1.");
}
END_TEST

START_TEST (a_root_off_the_centre_line_is_asked_about_and_may_be_left_open)
{
  static const Point off[] = { { 100.4, 12 }, { 104.4, 72 }, { 116.3, 96.4 }, { 133.3, 72 }, { 139.7, 12 } };

  begin_on ((DrawnPlan) { .starboard = 1, .shows = VIEW_WING, .side = VIEW_STARBOARD, .root = 12 });
  trace_with (off, 5, 1);
  stage_await_strip (hand_window (), "The root was traced 12");
  ck_assert (!wing ()->root_open);
  gui_click (gui_await (GTK_WIDGET (hand_window ()), "Leave the Gap"));
  ck_assert (wing ()->root_open);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Leave Root Open");
}
END_TEST

START_TEST (a_body_is_not_asked_about_a_root)
{
  static const Point blunt[] = { { 100.4, 12 }, { 104.4, 72 }, { 116.3, 96.4 }, { 133.3, 72 }, { 139.7, 12 } };

  begin_on ((DrawnPlan) { .starboard = 1, .shows = VIEW_BODY_TOP, .side = VIEW_BOTH, .root = 12 });
  /* Its own words are said before the pointer comes. */
  ck_assert_str_eq (trammel_sheet_canvas_hint (hand_sheet ()), "Click the nose on the printed line, then along it to the tail.");
  trace_with (blunt, 5, 1);
  gui_key ("Return");
  ck_assert (gui_wait (rests, NULL));
  ck_assert_ptr_null (gui_find (GTK_WIDGET (hand_window ()), "Leave the Gap"));
}
END_TEST

START_TEST (a_panel_drawn_flat_is_shortened_by_its_dihedral_when_that_is_chosen)
{
  double flat_span;

  begin ();
  trace_with (clicks, 5, 1);
  trammel_session_do (hand_session (), with_dihedral (8), "Change Dihedral");
  flat_span = outline_bounds (wing ()->outline).max.y;
  trammel_traced_set_flat (trammel_traced_of (hand_session ()), true);
  ck_assert_double_eq_tol (outline_bounds (wing ()->outline).max.y, flat_span * cos (8 * G_PI / 180), 1e-6);
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), "Shorten by the Dihedral");
  trammel_session_undo (hand_session ());
  ck_assert_double_eq (outline_bounds (wing ()->outline).max.y, flat_span);
}
END_TEST

START_TEST (a_hinge_line_printed_on_a_panel_drawn_flat_is_shortened_with_it)
{
  static const Point printed[][2] = {
    { { 31.3, 20.4 }, { 24.2, 70.2 } }, { { 31.3, 20.4 }, { 39.2, 20.4 } }, { { 24.2, 70.2 }, { 29.5, 70.2 } } };
  const double shortened = cos (20 * G_PI / 180);

  begin_on ((DrawnPlan) { .starboard = 1, .shows = VIEW_WING, .side = VIEW_STARBOARD, .inner = printed, .inner_count = 3 });
  trace_with (clicks, 5, 1);
  trammel_session_do (hand_session (), with_dihedral (20), "Change Dihedral");
  trammel_traced_set_flat (trammel_traced_of (hand_session ()), true);
  trammel_sheet_canvas_set_tool (hand_sheet (), "hinge");
  hand_click ((Point) { 132.2, 21.1 });
  hand_click ((Point) { 123.2, 69.2 });
  ck_assert_uint_eq (wing ()->control_count, 1);
  ck_assert_double_eq_tol (wing ()->controls[0].inner, 20.4 * shortened, 0.2);
  ck_assert_double_eq_tol (wing ()->controls[0].outer, 70.2 * shortened, 0.2);
  ck_assert_double_eq_tol (wing ()->controls[0].hinge_inner_x, 131.3, 0.1);
  ck_assert_double_eq_tol (wing ()->controls[0].hinge_outer_x, 124.2, 0.1);
}
END_TEST

START_TEST (what_is_only_on_offer_meanwhile_does_not_come_along_with_a_trace)
{
  begin ();
  for (size_t i = 0; i < 4; i++)
    hand_click (clicks[i]);
  trammel_session_propose (hand_session (), aeroplane_with_added (hand_aeroplane (), &body_new ("offered")->piece));
  trace_with (clicks + 4, 1, 1);
  expect_printed_wing ();
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_BODY), 0);
}
END_TEST

/* The plan with its view elsewhere. */
static Aeroplane *
with_view_moved (void)
{
  const Plan *plan = trammel_plan_store_plan (store ());
  Plan *next = (Plan *) piece_dup (&plan->piece);

  next->views[0].x += 30;
  return aeroplane_with_replaced (hand_aeroplane (), &plan->piece, &next->piece);
}

START_TEST (a_trace_that_comes_when_the_plan_is_another_is_dropped_and_said_so)
{
  const bool drawn[4] = { false };
  TraceGround *ground;
  TraceOrder *order;
  Point px[5];

  begin ();
  ground = trace_ground_new (store ());
  for (size_t i = 0; i < 5; i++)
    px[i] = placing_px (&ground->placing, clicks[i]);
  order = trace_order_new (ground, px, drawn, 5, 2, false);
  trammel_traced_trace (trammel_traced_of (hand_session ()), order, GTK_WIDGET (hand_sheet ()));
  trammel_session_do (hand_session (), with_view_moved (), "Place View");
  ck_assert (gui_wait (rests, NULL));
  stage_await_strip (hand_window (), "The plan was changed meanwhile: trace again.");
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 0);
  trace_order_unref (order);
  trace_ground_unref (ground);
}
END_TEST

START_TEST (undo_while_a_trace_is_worked_out_keeps_it_from_landing_and_undoes_nothing_else)
{
  begin ();
  trammel_session_do (hand_session (), aeroplane_with_added (hand_aeroplane (), &body_new ("before")->piece), "Add Body");
  for (size_t i = 0; i < 4; i++)
    hand_click (clicks[i]);
  click_at_once (clicks[4]);
  ck_assert (trammel_traced_is_busy (trammel_traced_of (hand_session ())));
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.undo", NULL);
  ck_assert (gui_wait (rests, NULL));
  gui_settle ();
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 0);
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_BODY), 1);
  /* The clicks are in hand again, and can be ended with or taken back. */
  ck_assert_uint_eq (shown ()->click_count, 5);
  gui_key ("<Control>z");
  ck_assert_uint_eq (shown ()->click_count, 4);
  trace_with (clicks + 4, 1, 1);
  expect_printed_wing ();
}
END_TEST

START_TEST (undo_in_another_tool_keeps_a_trace_from_landing_too)
{
  begin ();
  trammel_session_do (hand_session (), aeroplane_with_added (hand_aeroplane (), &body_new ("before")->piece), "Add Body");
  for (size_t i = 0; i < 4; i++)
    hand_click (clicks[i]);
  click_at_once (clicks[4]);
  trammel_sheet_canvas_set_tool (hand_sheet (), "select");
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.undo", NULL);
  ck_assert (gui_wait (rests, NULL));
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 0);
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_BODY), 1);
}
END_TEST

START_TEST (a_trace_that_is_taken_back_leaves_the_tolerance_of_what_stands)
{
  TrammelTraced *traced = NULL;

  begin ();
  traced = trammel_traced_of (hand_session ());
  trace_with (clicks, 5, 1);
  trammel_traced_set_tolerance (traced, 1.5);
  ck_assert (gui_wait (rests, NULL));
  for (size_t i = 0; i < 4; i++)
    hand_click (clicks[i]);
  click_at_once (clicks[4]);
  ck_assert (trammel_traced_is_busy (traced));
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.undo", NULL);
  ck_assert (gui_wait (rests, NULL));
  ck_assert (trammel_traced_is_fresh (traced, &wing ()->piece));
  ck_assert_double_eq (trammel_traced_tolerance (traced), 1.5);
}
END_TEST

int
main (void)
{
  TCase *tcase = tcase_create ("trace");

  tcase_add_test (tcase, another_trace_in_the_same_view_takes_the_place_of_the_first);
  tcase_add_test (tcase, a_half_drawn_at_port_comes_out_as_the_right_half);
  tcase_add_test (tcase, a_half_seen_from_below_comes_out_as_the_right_half);
  tcase_add_test (tcase, two_halves_traced_one_after_the_other_are_averaged_and_their_difference_is_told);
  tcase_add_test (tcase, a_root_off_the_centre_line_is_asked_about_and_may_be_left_open);
  tcase_add_test (tcase, a_body_is_not_asked_about_a_root);
  tcase_add_test (tcase, a_panel_drawn_flat_is_shortened_by_its_dihedral_when_that_is_chosen);
  tcase_add_test (tcase, a_hinge_line_printed_on_a_panel_drawn_flat_is_shortened_with_it);
  tcase_add_test (tcase, what_is_only_on_offer_meanwhile_does_not_come_along_with_a_trace);
  tcase_add_test (tcase, a_trace_that_comes_when_the_plan_is_another_is_dropped_and_said_so);
  tcase_add_test (tcase, undo_while_a_trace_is_worked_out_keeps_it_from_landing_and_undoes_nothing_else);
  tcase_add_test (tcase, undo_in_another_tool_keeps_a_trace_from_landing_too);
  tcase_add_test (tcase, a_trace_that_is_taken_back_leaves_the_tolerance_of_what_stands);
  return hand_run ("app trace-landed", &tcase, 1);
}
