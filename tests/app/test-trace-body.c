/* Where a body traced from above ends: beside its axis, whichever way it was ended; what is said of how it keeps to its line. What is printed is
 * drawn by the test. */
#include "app/trace-words.h"
#include "support/trace-hand.h"

static const Point pointed[] = { { 0, 0 }, { 3, 9 }, { 15, 11 }, { 50, 0 } };
static const Point blunt[] = { { 0, 0 }, { 3, 9 }, { 15, 11 }, { 50, 1.5 }, { 50, 0 } };

static void
begin_on_view (ViewShows shows, const Point printed[], size_t count, double scale)
{
  DrawnPlan plan = { .starboard = 1, .port = 1, .shows = shows, .side = VIEW_BOTH, .outline = polygon_from (printed, count) };

  trammel_session_open (hand_session (), aeroplane_on_plan (&plan), NULL);
  outline_unref ((Outline *) plan.outline);
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.empty-sheet", NULL);
  ck_assert (gui_wait (ink_is_there, NULL));
  trammel_sheet_canvas_set_tool (hand_sheet (), "outline");
  hand_look ((Point) { 125, 0 }, scale);
  gui_settle ();
}

static void
begin_on_body (const Point printed[], size_t count, double scale)
{
  begin_on_view (VIEW_BODY_TOP, printed, count, scale);
}

static const Outline *
body (void)
{
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_BODY), 1);
  return aeroplane_body (hand_aeroplane (), 0)->outline;
}

static void
trace_body (const Point printed[], size_t count, Point tail, double scale)
{
  begin_on_body (printed, count, scale);
  hand_click ((Point) { 100.4, 0.4 });
  hand_click ((Point) { 103.2, 9 });
  hand_click ((Point) { 115, 11 });
  hand_click (tail);
}

static void
await_body (void)
{
  ck_assert (gui_wait (rests, NULL));
  gui_settle ();
}

static void
expect_node (size_t from_end, Point wanted, double tolerance)
{
  const Point got = outline_node (body (), outline_node_count (body ()) - 1 - from_end);

  ck_assert_msg (point_distance (got, wanted) <= tolerance, "(%g, %g), wanted (%g, %g)", got.x, got.y, wanted.x, wanted.y);
}

START_TEST (a_tail_printed_blunt_stays_blunt_and_ends_on_the_axis)
{
  trace_body (blunt, G_N_ELEMENTS (blunt), (Point) { 150, 1.5 }, 3);
  await_body ();
  expect_node (1, (Point) { 150, 1.5 }, 0.3);
  expect_node (0, (Point) { 150, 0 }, 0.3);
  ck_assert_double_eq (outline_node (body (), outline_node_count (body ()) - 1).y, 0);
}
END_TEST

START_TEST (a_tail_printed_pointed_comes_out_pointed)
{
  trace_body (pointed, G_N_ELEMENTS (pointed), (Point) { 149.8, 0.3 }, 3);
  await_body ();
  expect_node (0, (Point) { 150, 0 }, 0.3);
  expect_node (1, (Point) { 115, 11 }, 0.5);
}
END_TEST

static const char *const keys[] = { "Return", "Escape" };

/* Seen so large that the click itself is not near enough to end it. */
START_TEST (a_body_clicked_to_its_tail_beside_the_axis_is_whole_whoever_ends_it)
{
  trace_body (blunt, G_N_ELEMENTS (blunt), (Point) { 150, 1.5 }, 6);
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_BODY), 0);
  gui_key (keys[_i]);
  await_body ();
  ck_assert_double_eq (outline_node (body (), 0).y, 0);
  expect_node (1, (Point) { 150, 1.5 }, 0.3);
  expect_node (0, (Point) { 150, 0 }, 0.3);
}
END_TEST

START_TEST (a_body_left_on_the_way_stays_unfinished)
{
  trace_body (blunt, G_N_ELEMENTS (blunt), (Point) { 140, 4.2 }, 6);
  gui_key ("Escape");
  await_body ();
  ck_assert_double_gt (outline_node (body (), outline_node_count (body ()) - 1).y, 3.5);
}
END_TEST

static const Units millimetres = { LENGTH_MM, MASS_G };

static bool
is_compared (gpointer data)
{
  return trammel_comparing_result (trammel_comparing_of (hand_session ())) != NULL;
}

static char *
keeps_to_its_line (void)
{
  TrammelComparing *comparing = trammel_comparing_of (hand_session ());
  ViewShows shows;
  const Point worst = trammel_comparing_worst (comparing, &shows);

  return trace_words_compared (millimetres, trammel_comparing_result (comparing), shows, worst);
}

static void
trace_in (ViewShows shows)
{
  if (shows == VIEW_BODY_TOP) {
    trace_body (blunt, G_N_ELEMENTS (blunt), (Point) { 150, 1.5 }, 3);
  } else {
    static const Point round[] = { { 100.4, 0.4 }, { 103.2, 9 }, { 115, 11 }, { 150, 0 }, { 115, -11 }, { 103.2, -9 }, { 100.4, 0.4 } };

    begin_on_view (shows, pointed, G_N_ELEMENTS (pointed), 3);
    for (size_t i = 0; i < G_N_ELEMENTS (round); i++)
      hand_click (round[i]);
  }
  await_body ();
  /* An empty sheet has the panel folded away. */
  g_autoptr (GVariant) shown = g_action_group_get_action_state (G_ACTION_GROUP (hand_window ()), "show-panel");
  if (!g_variant_get_boolean (shown))
    gui_key ("F9");
  gui_settle ();
  ck_assert (gui_wait (is_compared, NULL));
  gui_settle ();
}

static const struct { ViewShows shows; const char *says, *tolerance; } views[] = {
  { VIEW_BODY_TOP, "The outline from above keeps to the line within ", "Tolerance from above" },
  { VIEW_BODY_SIDE, "The outline from the side keeps to the line within ", "Tolerance from the side" },
};

START_TEST (the_panel_says_how_a_body_keeps_to_its_line_and_traces_it_again)
{
  GtkWidget *window = GTK_WIDGET (hand_window ()), *entry = NULL;
  g_autofree char *before = NULL, *keeps = NULL;

  trace_in (views[_i].shows);
  keeps = keeps_to_its_line ();
  ck_assert_msg (g_str_has_prefix (keeps, views[_i].says) && g_str_has_suffix (keeps, " aft of the datum."), "%s", keeps);
  ck_assert_ptr_nonnull (gui_await (window, keeps));
  entry = gtk_widget_get_next_sibling (gtk_widget_get_ancestor (gui_await (window, views[_i].tolerance), GTK_TYPE_LABEL));
  ck_assert_ptr_nonnull (entry);
  before = hand_text ();
  gtk_editable_set_text (GTK_EDITABLE (entry), "1.5");
  g_signal_emit_by_name (entry, "activate");
  await_body ();
  ck_assert_double_eq (trammel_traced_tolerance (trammel_traced_of (hand_session ())), 1.5);
  hand_undoes ("Change Tolerance", before);
}
END_TEST

START_TEST (a_body_that_may_be_another_line_is_not_said_to_keep_to_its_own)
{
  g_autofree char *keeps = NULL;
  Body *doubtful = NULL;

  trace_in (VIEW_BODY_TOP);
  keeps = keeps_to_its_line ();
  doubtful = (Body *) piece_dup (&aeroplane_body (hand_aeroplane (), 0)->piece);
  doubtful->passed = (PassedClick) { 3, { 130, 8 }, false };
  trammel_session_do (hand_session (), aeroplane_with_replaced (hand_aeroplane (), &aeroplane_body (hand_aeroplane (), 0)->piece,
                                                                &doubtful->piece), "Doubt");
  gui_settle ();
  ck_assert_ptr_null (gui_find (GTK_WIDGET (hand_window ()), keeps));
}
END_TEST

static const struct { ViewShows shows; const char *says; } passed[] = {
  { VIEW_WING, "The outline passes your click at station 8 mm by 3.0 mm" }, { VIEW_FIN, "The outline passes your click at height 8 mm by 3.0 mm" },
  { VIEW_BODY_TOP, "The outline passes your click 130 mm aft of the datum by 3.0 mm" },
  { VIEW_BODY_SIDE, "The outline passes your click 130 mm aft of the datum by 3.0 mm" },
};

START_TEST (a_click_that_is_passed_is_told_by_where_it_is_on_what_is_traced)
{
  const TraceGround ground = { .shows = passed[_i].shows, .placing = { .x = 100 } };
  const TraceResult result = { .passed = { 3, { 30, 8 }, false } };
  g_autofree char *says = trace_words_done (millimetres, &ground, &result);

  g_auto (GStrv) words = g_strsplit (says, "\u00a0", -1);
  g_autofree char *plain = g_strjoinv (" ", words);

  ck_assert_msg (g_str_has_prefix (plain, passed[_i].says), "%s", plain);
}
END_TEST

static const struct { ViewShows shows; const char *says; } aside[] = {
  { VIEW_WING, "The outline goes aside at station 8 mm by 3.0 mm over bare paper" },
  { VIEW_FIN, "The outline goes aside at height 8 mm by 3.0 mm over bare paper" },
  { VIEW_BODY_SIDE, "The outline runs out and back 130 mm aft of the datum, by 3.0 mm: if that is a fin" },
};

START_TEST (what_goes_aside_or_runs_up_a_fin_is_told_by_where_it_is_on_what_is_traced)
{
  const TraceGround ground = { .shows = aside[_i].shows, .placing = { .x = 100 } };
  const TraceResult result = { .passed = { 3, { 30, 8 }, true } };
  g_autofree char *says = trace_words_done (millimetres, &ground, &result);
  g_auto (GStrv) words = g_strsplit (says, "\u00a0", -1);
  g_autofree char *plain = g_strjoinv (" ", words);

  ck_assert_msg (g_str_has_prefix (plain, aside[_i].says), "%s", plain);
}
END_TEST

int
main (void)
{
  TCase *tcase = tcase_create ("trace");

  tcase_add_test (tcase, a_tail_printed_blunt_stays_blunt_and_ends_on_the_axis);
  tcase_add_test (tcase, a_tail_printed_pointed_comes_out_pointed);
  tcase_add_loop_test (tcase, a_body_clicked_to_its_tail_beside_the_axis_is_whole_whoever_ends_it, 0, G_N_ELEMENTS (keys));
  tcase_add_test (tcase, a_body_left_on_the_way_stays_unfinished);
  tcase_add_loop_test (tcase, the_panel_says_how_a_body_keeps_to_its_line_and_traces_it_again, 0, G_N_ELEMENTS (views));
  tcase_add_test (tcase, a_body_that_may_be_another_line_is_not_said_to_keep_to_its_own);
  tcase_add_loop_test (tcase, a_click_that_is_passed_is_told_by_where_it_is_on_what_is_traced, 0, G_N_ELEMENTS (passed));
  tcase_add_loop_test (tcase, what_goes_aside_or_runs_up_a_fin_is_told_by_where_it_is_on_what_is_traced, 0, G_N_ELEMENTS (aside));
  return hand_run ("app trace-body", &tcase, 1);
}
