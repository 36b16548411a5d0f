/* A trace over a plan under a real hand. What is printed is drawn by the test, and so the truth. */
#include <math.h>
#include "app/comparing.h"
#include "app/strip.h"
#include "app/trace-telling.h"
#include "app/trace-unseen.h"
#include "app/tool.h"
#include "app/traced.h"
#include "document/changes.h"
#include "geometry/planform.h"
#include "support/drawn-plan.h"
#include "support/shapes.h"
#include "support/sheet-hand.h"

/* Half an elliptical wing: root 40, 85 to the tip. */
static Outline *
printed_wing (void)
{
  return ellipse_from (0, 85, 16, 24);
}

/* Where a person clicks on it, on the sheet: beside the line, not on it. */
static const Point clicks[] = { { 100.4, 0.3 }, { 104.4, 60 }, { 116.3, 84.4 }, { 133.3, 60 }, { 139.7, 0.2 } };

static TrammelPlanStore *
store (void)
{
  return trammel_sheet_canvas_plan_store (hand_sheet ());
}

static bool
ink_is_there (gpointer data)
{
  return trammel_plan_store_ink (store ()) != NULL;
}

static void
begin_on (DrawnPlan plan)
{
  Outline *printed = printed_wing ();

  plan.outline = printed;
  trammel_session_open (hand_session (), aeroplane_on_plan (&plan), NULL);
  outline_unref (printed);
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.empty-sheet", NULL);
  ck_assert (gui_wait (ink_is_there, NULL));
  trammel_sheet_canvas_set_tool (hand_sheet (), "outline");
  hand_look ((Point) { 120, 0 }, 3.5);
  gui_settle ();
}

static void
begin (void)
{
  begin_on ((DrawnPlan) { .starboard = 1, .shows = VIEW_WING, .side = VIEW_STARBOARD });
}

static const SheetTrace *
shown (void)
{
  ck_assert_ptr_nonnull (trammel_sheet_canvas_overlay (hand_sheet ())->trace);
  return trammel_sheet_canvas_overlay (hand_sheet ())->trace;
}

static bool
proposal_reaches (gpointer place)
{
  const SheetTrace *trace = trammel_sheet_canvas_overlay (hand_sheet ())->trace;

  return trace != NULL && trace->proposal_count > 0
         && point_distance (trace->proposal[trace->proposal_count - 1], *(const Point *) place) < 3;
}

static bool
rests (gpointer data)
{
  return !trammel_traced_is_busy (trammel_traced_of (hand_session ()));
}

static void
trace_with (const Point places[], size_t count, double side)
{
  for (size_t i = 0; i < count; i++)
    hand_click ((Point) { places[i].x, side * places[i].y });
  ck_assert (gui_wait (rests, NULL));
  gui_settle ();
}

static const Surface *
wing (void)
{
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 1);
  return aeroplane_surface (hand_aeroplane (), 0);
}

static double
area_of (const Outline *outline)
{
  Planform planform;

  ck_assert_int_eq (planform_measure (outline, PLANFORM_CARRIED, &planform), CORE_OK);
  return planform.area;
}

static void
expect_printed_wing (void)
{
  Outline *printed = printed_wing ();

  ck_assert_double_eq_tol (area_of (wing ()->outline) / area_of (printed), 1, 0.005);
  ck_assert_double_eq_tol (outline_node (wing ()->outline, 0).x, 100, 0.3);
  ck_assert_double_eq (outline_node (wing ()->outline, 0).y, 0);
  outline_unref (printed);
}

START_TEST (five_clicks_trace_the_wing_within_half_a_per_cent_of_its_area)
{
  g_autofree char *before = NULL;

  begin ();
  before = hand_text ();
  trace_with (clicks, 5, 1);
  expect_printed_wing ();
  ck_assert_int_eq (wing ()->role, ROLE_WING);
  ck_assert_str_eq (wing ()->traced, "view");
  ck_assert_str_eq (hand_selected (), wing ()->piece.id);
  hand_undoes ("Trace Wing", before);
}
END_TEST

START_TEST (ahead_of_the_last_click_a_proposal_clings_to_the_line_and_the_plate_says_how_sure)
{
  Point there = { 101.9, 40 };

  begin ();
  hand_click (clicks[0]);
  hand_move ((Point) { 103.1, 40 });
  ck_assert (gui_wait (proposal_reaches, &there));
  ck_assert_double_eq_tol (shown ()->proposal[shown ()->proposal_count - 1].x, 101.9, 0.3);
  ck_assert (!shown ()->by_hand);
  ck_assert_ptr_nonnull (hand_plate ("On the line, sure to 0.1\u00a0mm"));
  ck_assert_str_eq (hand_plate ("Station"), "40");
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 0);
}
END_TEST

static bool
plate_says_lost (gpointer data)
{
  return hand_plate ("Line lost: click closer together") != NULL;
}

START_TEST (where_no_line_is_printed_the_plate_says_that_it_is_lost)
{
  begin ();
  hand_click ((Point) { 115, 10 });
  hand_move ((Point) { 118, 60 });
  ck_assert (gui_wait (plate_says_lost, NULL));
}
END_TEST

START_TEST (backspace_takes_the_last_point_back_and_the_trace_goes_on_from_the_one_before)
{
  begin ();
  hand_click (clicks[0]);
  hand_click (clicks[1]);
  hand_click ((Point) { 118, 30 });
  ck_assert_uint_eq (shown ()->click_count, 3);
  gui_key ("BackSpace");
  ck_assert_uint_eq (shown ()->click_count, 2);
  trace_with (clicks + 2, 3, 1);
  expect_printed_wing ();
}
END_TEST

START_TEST (undo_takes_back_the_clicks_in_hand_before_the_step_that_is_finished)
{
  begin ();
  trace_with (clicks, 5, 1);
  hand_click (clicks[0]);
  hand_click (clicks[1]);
  gui_key ("<Control>z");
  ck_assert_uint_eq (shown ()->click_count, 1);
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.undo", NULL);
  ck_assert_uint_eq (shown ()->click_count, 0);
  expect_printed_wing ();
  gui_key ("<Control>z");
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 0);
}
END_TEST

START_TEST (with_ctrl_a_stretch_lets_go_of_the_line_and_is_kept_straight)
{
  Outline *printed = printed_wing ();
  size_t segment;
  double t;

  begin ();
  hand_click (clicks[0]);
  hand_click ((Point) { 107, 70 });
  gui_key_down ("Control_L");
  hand_move ((Point) { 129, 71 });
  ck_assert (shown ()->by_hand);
  hand_click ((Point) { 129.5, 70 });
  gui_key_up ("Control_L");
  trace_with (clicks + 3, 2, 1);
  ck_assert_double_lt (outline_nearest (wing ()->outline, (Point) { 118, 70 }, &segment, &t), 0.4);
  ck_assert_double_lt (area_of (wing ()->outline), 0.95 * area_of (printed));
  outline_unref (printed);
}
END_TEST

START_TEST (places_are_typed_by_station_and_aft_of_datum_as_in_other_tools)
{
  begin ();
  hand_move ((Point) { 110, 30 });
  gui_type ("0\t");
  gui_type ("100\n");
  ck_assert_uint_eq (shown ()->click_count, 1);
  gui_type ("60.2\t");
  gui_type ("104.7\n");
  ck_assert_double_eq_tol (shown ()->clicks[1].x, 104.7, 1e-6);
  ck_assert_double_eq_tol (shown ()->clicks[1].y, 60.2, 1e-6);
  trace_with (clicks + 2, 3, 1);
  expect_printed_wing ();
}
END_TEST

START_TEST (a_station_typed_lies_on_the_side_that_is_traced)
{
  begin_on ((DrawnPlan) { .port = 1, .shows = VIEW_WING, .side = VIEW_PORT });
  hand_click (clicks[0]);
  gui_type ("60\t");
  gui_type ("104.7\n");
  ck_assert_double_eq_tol (fabs (shown ()->clicks[1].y), 60, 1e-6);
  ck_assert (shown ()->clicks[0].y * shown ()->clicks[1].y >= 0);
}
END_TEST

START_TEST (return_ends_it_where_the_clicks_are)
{
  begin ();
  trace_with (clicks, 4, 1);
  hand_click ((Point) { 139.4, 2.6 });
  ck_assert (gui_wait (rests, NULL));
  if (aeroplane_count (hand_aeroplane (), PIECE_SURFACE) == 0)
    gui_key ("Return");
  ck_assert (gui_wait (rests, NULL));
  gui_settle ();
  expect_printed_wing ();
}
END_TEST

START_TEST (esc_leaves_what_was_accepted_and_a_click_goes_on_with_it)
{
  begin ();
  hand_click (clicks[0]);
  hand_click (clicks[1]);
  hand_click (clicks[2]);
  gui_key ("Escape");
  ck_assert (gui_wait (rests, NULL));
  gui_settle ();
  ck_assert_int_eq (outline_check (wing ()->outline, NULL), CORE_OPEN);
  ck_assert_str_eq (trammel_sheet_canvas_tool (hand_sheet ())->kind->word, "outline");
  trace_with (clicks + 3, 2, 1);
  expect_printed_wing ();
}
END_TEST

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

START_TEST (where_no_line_is_to_be_seen_is_dashed_as_long_as_the_strip_says_so)
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
  doubt_what_was_traced ();
  ck_assert_ptr_nonnull (doubt ());
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.close-strip", NULL);
  ck_assert_ptr_null (doubt ());
}
END_TEST

START_TEST (an_outline_off_its_print_is_unseen_and_one_on_it_is_seen)
{
  g_autoptr (GCancellable) nobody = g_cancellable_new ();
  Outline *printed = printed_wing (), *aft = NULL;
  const TraceOrder *order;
  GArray *seen, *unseen;

  begin ();
  trace_with (clicks, 5, 1);
  order = trammel_traced_order (trammel_traced_of (hand_session ()));
  ck_assert_int_eq (outline_mapped (printed, (Point) { 1, 1 }, (Point) { 12, 0 }, &aft), CORE_OK);
  seen = trace_unseen (order, printed, nobody);
  unseen = trace_unseen (order, aft, nobody);
  ck_assert_uint_eq (seen->len, 0);
  ck_assert_uint_gt (unseen->len, 100);
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
  ck_assert (trammel_traced_is_fresh (traced, wing ()));
  ck_assert_double_eq_tol (trammel_traced_tolerance (traced), 0.125, 0.01);        /* half a pixel of a quarter of a millimetre */
  trammel_traced_set_tolerance (traced, 1.5);
  ck_assert (gui_wait (rests, NULL));
  ck_assert_double_eq (trammel_traced_tolerance (traced), 1.5);
  hand_undoes ("Change Tolerance", before);
}
END_TEST

static Aeroplane *
with_dihedral (double degrees)
{
  Surface *next = (Surface *) piece_dup (&wing ()->piece);

  next->dihedral = degrees;
  return aeroplane_with_replaced (hand_aeroplane (), &wing ()->piece, &next->piece);
}

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

static ToolEvent
event_at (Point place)
{
  const Point px = hand_px (place);

  return (ToolEvent) { .x = px.x, .y = px.y, .place = place };
}

/* A click that has done its work when this returns: what it set off is still under way. */
static void
click_at_once (Point place)
{
  Tool *tool = trammel_sheet_canvas_tool (hand_sheet ());
  const ToolEvent event = event_at (place);

  tool->kind->press (tool, &event);
  tool->kind->click (tool, &event);
}

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

static bool
line_is_accepted (gpointer data)
{
  return shown ()->accepted_count > 3;
}

START_TEST (a_click_faster_than_the_line_does_not_take_the_line_to_where_the_pointer_was)
{
  Point there = { 101.9, 40 };
  const ToolEvent on = event_at ((Point) { 104.4, 60 });
  Tool *tool;

  begin ();
  hand_click (clicks[0]);
  hand_move ((Point) { 103.1, 40 });
  ck_assert (gui_wait (proposal_reaches, &there));
  tool = trammel_sheet_canvas_tool (hand_sheet ());
  tool->kind->hover (tool, &on);
  tool->kind->press (tool, &on);
  tool->kind->click (tool, &on);
  ck_assert (gui_wait (line_is_accepted, NULL));
  ck_assert_double_gt (shown ()->accepted[shown ()->accepted_count - 1].y, 58);
}
END_TEST

START_TEST (beyond_the_picture_no_line_is_proposed)
{
  begin ();
  hand_click (clicks[0]);
  hand_move ((Point) { 103.1, 40 });
  ck_assert (shown ()->has_aim);
  hand_move ((Point) { 80, 20 });
  ck_assert (!shown ()->has_aim);
  ck_assert_uint_eq (shown ()->proposal_count, 0);
}
END_TEST

START_TEST (a_slender_body_s_outline_ends_only_on_its_axis_and_aft_of_the_last_click)
{
  begin_on ((DrawnPlan) { .starboard = 1, .shows = VIEW_BODY_TOP, .side = VIEW_BOTH });
  hand_click ((Point) { 100.4, 5 });
  hand_click ((Point) { 120, 14 });
  hand_move ((Point) { 130, 5 });
  ck_assert (!shown ()->has_ring);
  hand_move ((Point) { 110, 0.5 });
  ck_assert (!shown ()->has_ring);
  hand_move ((Point) { 150, 0.5 });
  ck_assert (shown ()->has_ring);
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
  Point before;

  begin ();
  trammel_sheet_canvas_set_tool (hand_sheet (), "select");
  trammel_sheet_canvas_fit (hand_sheet (), false);
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

START_TEST (while_h_is_held_the_pointer_says_only_how_far)
{
  Point there = { 101.9, 40 };

  begin ();
  hand_click (clicks[0]);
  hand_click ((Point) { 100.5, 15 });
  gui_key_down ("h");
  hand_move ((Point) { 104.5, 40 });
  ck_assert (gui_wait (proposal_reaches, &there));
  ck_assert_double_eq_tol (shown ()->proposal[shown ()->proposal_count - 1].x, 101.9, 0.4);
  hand_click ((Point) { 104.5, 40 });
  gui_key_up ("h");
  ck_assert_uint_eq (shown ()->click_count, 3);
  ck_assert_double_eq_tol (shown ()->clicks[2].x, 101.9, 0.4);
  gui_key ("BackSpace");
  ck_assert_uint_eq (shown ()->click_count, 2);
}
END_TEST

int
main (void)
{
  TCase *tcase = tcase_create ("trace");

  tcase_add_test (tcase, five_clicks_trace_the_wing_within_half_a_per_cent_of_its_area);
  tcase_add_test (tcase, ahead_of_the_last_click_a_proposal_clings_to_the_line_and_the_plate_says_how_sure);
  tcase_add_test (tcase, where_no_line_is_printed_the_plate_says_that_it_is_lost);
  tcase_add_test (tcase, backspace_takes_the_last_point_back_and_the_trace_goes_on_from_the_one_before);
  tcase_add_test (tcase, undo_takes_back_the_clicks_in_hand_before_the_step_that_is_finished);
  tcase_add_test (tcase, with_ctrl_a_stretch_lets_go_of_the_line_and_is_kept_straight);
  tcase_add_test (tcase, places_are_typed_by_station_and_aft_of_datum_as_in_other_tools);
  tcase_add_test (tcase, a_station_typed_lies_on_the_side_that_is_traced);
  tcase_add_test (tcase, return_ends_it_where_the_clicks_are);
  tcase_add_test (tcase, esc_leaves_what_was_accepted_and_a_click_goes_on_with_it);
  tcase_add_test (tcase, another_trace_in_the_same_view_takes_the_place_of_the_first);
  tcase_add_test (tcase, a_half_drawn_at_port_comes_out_as_the_right_half);
  tcase_add_test (tcase, a_half_seen_from_below_comes_out_as_the_right_half);
  tcase_add_test (tcase, two_halves_traced_one_after_the_other_are_averaged_and_their_difference_is_told);
  tcase_add_test (tcase, a_root_off_the_centre_line_is_asked_about_and_may_be_left_open);
  tcase_add_test (tcase, a_body_is_not_asked_about_a_root);
  tcase_add_test (tcase, where_no_line_is_to_be_seen_is_dashed_as_long_as_the_strip_says_so);
  tcase_add_test (tcase, an_outline_off_its_print_is_unseen_and_one_on_it_is_seen);
  tcase_add_test (tcase, a_traced_outline_is_compared_with_its_line_and_so_is_a_node_pulled_off_it);
  tcase_add_test (tcase, another_tolerance_traces_again_in_a_step_of_its_own);
  tcase_add_test (tcase, a_panel_drawn_flat_is_shortened_by_its_dihedral_when_that_is_chosen);
  tcase_add_test (tcase, what_is_only_on_offer_meanwhile_does_not_come_along_with_a_trace);
  tcase_add_test (tcase, a_trace_that_comes_when_the_plan_is_another_is_dropped_and_said_so);
  tcase_add_test (tcase, undo_while_a_trace_is_worked_out_keeps_it_from_landing_and_undoes_nothing_else);
  tcase_add_test (tcase, undo_in_another_tool_keeps_a_trace_from_landing_too);
  tcase_add_test (tcase, a_click_faster_than_the_line_does_not_take_the_line_to_where_the_pointer_was);
  tcase_add_test (tcase, beyond_the_picture_no_line_is_proposed);
  tcase_add_test (tcase, a_slender_body_s_outline_ends_only_on_its_axis_and_aft_of_the_last_click);
  tcase_add_test (tcase, a_panel_shortened_by_its_dihedral_is_compared_as_it_was_drawn);
  tcase_add_test (tcase, once_a_strip_is_answered_letters_choose_tools_again);
  tcase_add_test (tcase, the_sheet_stays_where_it_is_on_the_screen_when_a_strip_opens_and_closes);
  tcase_add_test (tcase, while_h_is_held_the_pointer_says_only_how_far);
  return hand_run ("app trace-window", &tcase, 1);
}
