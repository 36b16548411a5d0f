/* Hinge lines drawn over a plan under a real hand. What is printed is drawn by the test, and so the truth. */
#include <math.h>
#include "app/comparing.h"
#include "app/tool.h"
#include "app/traced.h"
#include "document/changes.h"
#include "document/hinge.h"
#include "support/drawn-plan.h"
#include "support/shapes.h"
#include "support/sheet-hand.h"

/* Half an elliptical wing: root 40, 85 to the tip; the hinge line printed in it with its cuts to the trailing edge, and a rib. */
static const Point inner[][2] = {
  { { 31.3, 20.4 }, { 24.2, 70.2 } }, { { 31.3, 20.4 }, { 39.2, 20.4 } }, { { 24.2, 70.2 }, { 29.5, 70.2 } }, { { 2, 45 }, { 36.3, 45 } },
};
static const double inner_station = 20.4, outer_station = 70.2;

static double
printed_x (double station)
{
  return 100 + 31.3 + (station - 20.4) * (24.2 - 31.3) / (70.2 - 20.4);
}

static Outline *
half_wing (double x_root)
{
  return ellipse_from (x_root, 85, 16, 24);
}

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

/* The plan, and upon it the surface that was traced there. */
static void
begin_on (DrawnPlan plan, SurfaceRole role)
{
  Outline *printed = half_wing (0);
  g_autoptr (Aeroplane) beneath = NULL;
  Surface *surface = surface_new ("surface", role, half_wing (100));

  plan.outline = printed;
  plan.inner = inner;
  plan.inner_count = G_N_ELEMENTS (inner);
  beneath = aeroplane_on_plan (&plan);
  outline_unref (printed);
  surface->traced = g_strdup ("view");
  trammel_session_open (hand_session (), aeroplane_with_added (beneath, &surface->piece), NULL);
  ck_assert (gui_wait (ink_is_there, NULL));
  gui_key ("h");
  hand_look ((Point) { 120, 0 }, 3.5);
  gui_settle ();
}

static void
begin (void)
{
  begin_on ((DrawnPlan) { .starboard = 1, .shows = VIEW_WING, .side = VIEW_STARBOARD }, ROLE_WING);
}

static const Control *
only_control (void)
{
  ck_assert_uint_eq (hand_surface ("surface")->control_count, 1);
  return &hand_surface ("surface")->controls[0];
}

/* 0.05 mm is a fifth of a pixel of this picture; a corner is known to a third of one. */
static void
expect_printed (void)
{
  const Control *control = only_control ();

  ck_assert_double_eq_tol (control->inner, inner_station, 0.15);
  ck_assert_double_eq_tol (control->outer, outer_station, 0.15);
  ck_assert_double_eq_tol (control->hinge_inner_x, printed_x (control->inner), 0.05);
  ck_assert_double_eq_tol (control->hinge_outer_x, printed_x (control->outer), 0.05);
}

static void
click_along (double side)
{
  hand_click ((Point) { 100 + 32.2, side * 21.1 });
  hand_click ((Point) { 100 + 23.2, side * 69.2 });
}

START_TEST (two_clicks_beside_a_printed_hinge_line_lay_it_on_the_line_and_its_ends_on_the_cuts)
{
  g_autofree char *before = NULL;

  begin ();
  before = hand_text ();
  click_along (1);
  expect_printed ();
  ck_assert_int_eq (only_control ()->kind, CONTROL_AILERON);
  hand_undoes ("Add Aileron", before);
}
END_TEST

static const struct { const char *because; DrawnPlan plan; SurfaceRole role; double side; } drawn[] = {
  { "the port half", { .port = 1, .shows = VIEW_WING, .side = VIEW_PORT }, ROLE_WING, 1 },
  { "seen from below", { .port = 1, .shows = VIEW_TAILPLANE, .side = VIEW_STARBOARD, .flipped = true }, ROLE_TAILPLANE, 1 },
  { "turned by half", { .starboard = 1, .shows = VIEW_WING, .side = VIEW_STARBOARD, .upside_down = true }, ROLE_WING, 1 },
  { "both halves, drawn on the port one", { .starboard = 1, .port = 1, .shows = VIEW_WING, .side = VIEW_BOTH }, ROLE_WING, -1 },
  { "a fin on its side", { .starboard = 1, .shows = VIEW_FIN, .side = VIEW_STARBOARD }, ROLE_FIN, 1 },
  { "a fin drawn to the other side", { .port = 1, .shows = VIEW_FIN, .side = VIEW_STARBOARD }, ROLE_FIN, -1 },
};

START_TEST (however_a_view_is_drawn_the_hinge_line_lands_where_its_outline_does)
{
  begin_on (drawn[_i].plan, drawn[_i].role);
  click_along (drawn[_i].side);
  expect_printed ();
  ck_assert_int_eq (only_control ()->kind, hinge_usual_kind (drawn[_i].role));
}
END_TEST

START_TEST (between_its_ends_a_click_keeps_its_station_and_the_line_its_place)
{
  begin ();
  hand_click ((Point) { printed_x (33) + 0.8, 33 });
  hand_move ((Point) { printed_x (58) - 0.7, 58 });
  ck_assert_ptr_nonnull (hand_plate ("On the printed line"));
  ck_assert_str_eq (hand_plate ("Station"), "58");
  hand_click ((Point) { printed_x (58) - 0.7, 58 });
  ck_assert_double_eq_tol (only_control ()->inner, 33, 1e-9);
  ck_assert_double_eq_tol (only_control ()->outer, 58, 1e-9);
  ck_assert_double_eq_tol (only_control ()->hinge_inner_x, printed_x (33), 0.05);
  ck_assert_double_eq_tol (only_control ()->hinge_outer_x, printed_x (58), 0.05);
}
END_TEST

START_TEST (an_end_near_the_crossing_with_a_printed_rib_stands_on_the_rib)
{
  begin ();
  hand_click ((Point) { printed_x (45) + 0.9, 45.8 });
  hand_click ((Point) { 100 + 23.4, 69.5 });
  ck_assert_double_eq_tol (only_control ()->inner, 45, 0.15);
  ck_assert_double_eq_tol (only_control ()->hinge_inner_x, printed_x (45), 0.06);
}
END_TEST

START_TEST (with_ctrl_the_ends_let_go_of_what_is_printed)
{
  begin ();
  gui_key_down ("Control_L");
  hand_click ((Point) { 130, 26 });
  hand_click ((Point) { 127, 60 });
  gui_key_up ("Control_L");
  ck_assert_double_eq_tol (only_control ()->hinge_inner_x, 130, 0.2);
  ck_assert_double_eq_tol (only_control ()->hinge_outer_x, 127, 0.2);
}
END_TEST

START_TEST (on_bare_paper_the_ends_stand_where_they_are_clicked)
{
  begin ();
  hand_click ((Point) { 120, 26 });
  hand_move ((Point) { 120, 60 });
  ck_assert_ptr_null (hand_plate ("On the printed line"));
  hand_click ((Point) { 120, 60 });
  ck_assert_double_eq (only_control ()->hinge_inner_x, 120);
  ck_assert_double_eq (only_control ()->inner, 26);
}
END_TEST

static bool
is_compared (gpointer wanted)
{
  return (trammel_comparing_result (trammel_comparing_of (hand_session ())) != NULL) == *(bool *) wanted;
}

START_TEST (an_outline_is_compared_with_its_line_while_it_is_selected_and_not_while_its_control_is)
{
  bool yes = true, no = false;

  begin ();
  trammel_session_select (hand_session (), selection_of ("surface"));
  ck_assert (gui_wait (is_compared, &yes));
  click_along (1);
  ck_assert_ptr_nonnull (trammel_session_selection (hand_session ())->control);
  ck_assert (gui_wait (is_compared, &no));
}
END_TEST

START_TEST (a_first_end_goes_with_the_view_it_was_clicked_in)
{
  begin ();
  hand_click ((Point) { 132.2, 21.1 });
  trammel_plan_store_choose (store (), "plan", NULL);
  gui_settle ();
  hand_move ((Point) { 123.2, 69.2 });
  ck_assert (!trammel_sheet_canvas_overlay (hand_sheet ())->hinge->has_line);
  ck_assert_uint_eq (hand_surface ("surface")->control_count, 0);
}
END_TEST

/* Tracing and its key H */

static const Point outline_clicks[] = { { 100.4, 0.3 }, { 104.4, 60 }, { 116.3, 84.4 }, { 133.3, 60 }, { 139.7, 0.2 } };

static const char *
tool_in_hand (void)
{
  return trammel_sheet_canvas_tool (hand_sheet ())->kind->word;
}

static void
begin_tracing (void)
{
  Outline *printed = half_wing (0);
  const DrawnPlan plan = { .outline = printed, .starboard = 1, .shows = VIEW_WING, .side = VIEW_STARBOARD, .inner = inner,
                           .inner_count = G_N_ELEMENTS (inner) };

  trammel_session_open (hand_session (), aeroplane_on_plan (&plan), NULL);
  outline_unref (printed);
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.empty-sheet", NULL);
  ck_assert (gui_wait (ink_is_there, NULL));
  trammel_sheet_canvas_set_tool (hand_sheet (), "plan");
  gui_settle ();
  gui_click (gui_await (GTK_WIDGET (hand_window ()), "Trace"));
  hand_look ((Point) { 120, 0 }, 3.5);
  gui_settle ();
}

static bool
rests (gpointer data)
{
  return !trammel_traced_is_busy (trammel_traced_of (hand_session ()));
}

START_TEST (h_holds_to_the_line_while_a_trace_is_under_way_and_takes_the_hinge_tool_when_none_is)
{
  begin_tracing ();
  hand_click (outline_clicks[0]);
  gui_key ("h");
  ck_assert_str_eq (tool_in_hand (), "outline");
  for (size_t i = 1; i < G_N_ELEMENTS (outline_clicks); i++)
    hand_click (outline_clicks[i]);
  ck_assert (gui_wait (rests, NULL));
  gui_settle ();
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 1);
  ck_assert_str_eq (tool_in_hand (), "outline");
  ck_assert_str_eq (trammel_sheet_canvas_hint (hand_sheet ()),
                    "Traced. Hold V to see the print alone. H draws its hinge line; another click along the outline traces it anew.");
  gui_key ("h");
  gui_settle ();
  ck_assert_str_eq (tool_in_hand (), "hinge");
  ck_assert_ptr_nonnull (gui_await (GTK_WIDGET (hand_window ()), "Trace"));
  click_along (1);
  ck_assert_uint_eq (aeroplane_surface (hand_aeroplane (), 0)->control_count, 1);
  ck_assert_double_eq_tol (aeroplane_surface (hand_aeroplane (), 0)->controls[0].hinge_inner_x, printed_x (inner_station), 0.1);
}
END_TEST

START_TEST (h_still_down_when_the_trace_ends_takes_no_tool)
{
  begin_tracing ();
  for (size_t i = 0; i + 1 < G_N_ELEMENTS (outline_clicks); i++)
    hand_click (outline_clicks[i]);
  gui_key_down ("h");
  hand_click (outline_clicks[4]);
  ck_assert (gui_wait (rests, NULL));
  gui_settle ();
  gui_wait_ms (700);            /* the key repeats */
  ck_assert_str_eq (tool_in_hand (), "outline");
  gui_key_up ("h");
  gui_settle ();
  ck_assert_str_eq (tool_in_hand (), "outline");
}
END_TEST

int
main (void)
{
  TCase *over = tcase_create ("over a plan"), *tracing = tcase_create ("beside a trace");
  TCase *all[] = { over, tracing };

  tcase_add_test (over, two_clicks_beside_a_printed_hinge_line_lay_it_on_the_line_and_its_ends_on_the_cuts);
  tcase_add_loop_test (over, however_a_view_is_drawn_the_hinge_line_lands_where_its_outline_does, 0, G_N_ELEMENTS (drawn));
  tcase_add_test (over, between_its_ends_a_click_keeps_its_station_and_the_line_its_place);
  tcase_add_test (over, an_end_near_the_crossing_with_a_printed_rib_stands_on_the_rib);
  tcase_add_test (over, with_ctrl_the_ends_let_go_of_what_is_printed);
  tcase_add_test (over, on_bare_paper_the_ends_stand_where_they_are_clicked);
  tcase_add_test (over, an_outline_is_compared_with_its_line_while_it_is_selected_and_not_while_its_control_is);
  tcase_add_test (over, a_first_end_goes_with_the_view_it_was_clicked_in);
  tcase_add_test (tracing, h_holds_to_the_line_while_a_trace_is_under_way_and_takes_the_hinge_tool_when_none_is);
  tcase_add_test (tracing, h_still_down_when_the_trace_ends_takes_no_tool);
  return hand_run ("hinge lines over a plan", all, G_N_ELEMENTS (all));
}
