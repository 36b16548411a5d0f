/* Correcting a plan, and what is said of it; no window. */
#include "app/plan-correct.h"
#include <math.h>
#include "app/plan-misfit.h"
#include "document/plan-marks.h"
#include "document/reader.h"
#include "drawing/plan-placing.h"
#include "support/run-suite.h"

/* A sheet of 1000 by 800 px, 5 px a millimetre by its known length. The wing was traced at starboard of an axis down x = 200 px, from
 * y = 100 px on, which stands 30 mm aft of the datum; the body from the side, nose to the left, along y = 600. */
static const char traced[] =
  "<aeroplane xmlns='urn:trammel:aeroplane' version='1'>"
  "<surface id='wing' role='wing' traced='wing-view'><outline><start x='30' y='0'/><line x='40' y='100'/><line x='60' y='100'/>"
  "<line x='70' y='0'/></outline></surface>"
  "<body id='body' side-traced='side-view'><side-outline><start x='0' y='0'/><line x='40' y='12'/><line x='120' y='2'/></side-outline>"
  "</body>"
  "<plan id='sheet' width='1000' height='800'><length x1='100' y1='50' x2='600' y2='50' mm='100'/>"
  "<view id='wing-view' shows='wing' fore-x='200' fore-y='100' aft-x='200' aft-y='500' x='30'/>"
  "<view id='side-view' shows='body-side' fore-x='100' fore-y='600' aft-x='700' aft-y='600' z='5'/></plan></aeroplane>";

static Aeroplane *
traced_aeroplane (void)
{
  Aeroplane *aeroplane = reader_read_data (traced, strlen (traced), "text", NULL, NULL);

  ck_assert_ptr_nonnull (aeroplane);
  return aeroplane;
}

static Plan *
plan_of (const Aeroplane *aeroplane)
{
  return (Plan *) piece_dup (&aeroplane_plan_by_id (aeroplane, "sheet")->piece);
}

static const Outline *
wing_of (const Aeroplane *aeroplane)
{
  return aeroplane_surface_by_id (aeroplane, "wing")->outline;
}

static void
assert_node (const Outline *outline, size_t node, double x, double y)
{
  const Point got = outline_node (outline, node);

  ck_assert_msg (hypot (got.x - x, got.y - y) < 1e-9, "node %zu at (%.12g, %.12g), wanted (%g, %g)", node, got.x, got.y, x, y);
}

START_TEST (a_length_corrected_carries_the_outline_along)
{
  g_autoptr (Aeroplane) self = traced_aeroplane (), next = NULL;
  Plan *plan = plan_of (self);

  plan->lengths[0].mm = 110;
  next = plan_corrected (self, "sheet", plan);
  ck_assert_ptr_nonnull (next);
  /* A tenth larger about the axis' forward end, which stands where it stood. */
  assert_node (wing_of (next), 0, 30, 0);
  assert_node (wing_of (next), 1, 41, 110);
  assert_node (wing_of (next), 3, 74, 0);
  /* z 5 is where the side view's axis stands. */
  assert_node (aeroplane_body_by_id (next, "body")->side_outline, 1, 44, 5 + 1.1 * (12 - 5));
}
END_TEST

START_TEST (a_view_put_elsewhere_takes_its_outline_there)
{
  g_autoptr (Aeroplane) self = traced_aeroplane (), next = NULL;
  Plan *plan = plan_of (self);

  plan->views[0].x = 82.5;
  next = plan_corrected (self, "sheet", plan);
  assert_node (wing_of (next), 0, 82.5, 0);
  assert_node (wing_of (next), 1, 92.5, 100);
  assert_node (aeroplane_body_by_id (next, "body")->side_outline, 1, 40, 12);
}
END_TEST

START_TEST (a_view_put_higher_takes_its_surface_along)
{
  g_autoptr (Aeroplane) self = traced_aeroplane (), next = NULL;
  Plan *plan = plan_of (self);
  const double before = aeroplane_surface_by_id (self, "wing")->z;

  plan->views[0].z = 12;
  next = plan_corrected (self, "sheet", plan);
  ck_assert_double_eq_tol (aeroplane_surface_by_id (next, "wing")->z, before + 12, 1e-9);
  assert_node (wing_of (next), 1, 40, 100);
}
END_TEST

START_TEST (a_level_line_turns_all_views_and_moves_nothing_traced)
{
  g_autoptr (Aeroplane) self = traced_aeroplane (), next = NULL;
  Plan *plan = plan_of (self);

  plan->has_level = true;
  plan->level[0] = (Point) { 100, 50 };
  plan->level[1] = (Point) { 600, 70 };
  next = plan_corrected (self, "sheet", plan);
  assert_node (wing_of (next), 1, 40, 100);
}
END_TEST

START_TEST (an_axis_turned_about_keeps_what_was_traced_on_its_side)
{
  g_autoptr (Aeroplane) self = traced_aeroplane (), next = NULL;
  Plan *plan = plan_of (self);
  const Point fore = plan->views[0].fore;

  plan->views[0].fore = plan->views[0].aft;
  plan->views[0].aft = fore;
  next = plan_corrected (self, "sheet", plan);
  ck_assert_ptr_nonnull (next);
  /* The axis is 80 mm long: what stood 10 aft of its forward end stands 70 aft of what is its forward end now. */
  assert_node (wing_of (next), 1, 100, 100);
}
END_TEST

START_TEST (a_body_from_the_side_turned_upside_down_takes_its_outline_along)
{
  g_autoptr (Aeroplane) self = traced_aeroplane (), next = NULL, back = NULL;
  Plan *plan = plan_of (self);

  plan->views[1].flipped = true;
  next = plan_corrected (self, "sheet", plan);
  /* About its axis, which stands 5 mm up. */
  assert_node (aeroplane_body_by_id (next, "body")->side_outline, 1, 40, 5 - (12 - 5));
  assert_node (wing_of (next), 1, 40, 100);
  plan = plan_of (next);
  plan->views[1].flipped = false;
  back = plan_corrected (next, "sheet", plan);
  assert_node (aeroplane_body_by_id (back, "body")->side_outline, 1, 40, 12);
}
END_TEST

START_TEST (a_body_whose_axis_is_turned_about_stays_on_its_print)
{
  g_autoptr (Aeroplane) self = traced_aeroplane (), next = NULL;
  Plan *plan = plan_of (self);
  const Point fore = plan->views[1].fore;

  plan->views[1].fore = plan->views[1].aft;
  plan->views[1].aft = fore;
  next = plan_corrected (self, "sheet", plan);
  /* The axis is 120 mm long; half a turn about its middle. */
  assert_node (aeroplane_body_by_id (next, "body")->side_outline, 1, 80, 5 - (12 - 5));
}
END_TEST

START_TEST (a_view_said_to_show_the_other_half_moves_nothing)
{
  g_autoptr (Aeroplane) self = traced_aeroplane (), next = NULL;
  Plan *plan = plan_of (self);

  plan->views[0].side = VIEW_PORT;
  next = plan_corrected (self, "sheet", plan);
  ck_assert_ptr_nonnull (next);
  assert_node (wing_of (next), 1, 40, 100);
}
END_TEST

START_TEST (where_nothing_moves_outlines_are_the_very_same)
{
  g_autoptr (Aeroplane) self = traced_aeroplane (), next = NULL;

  next = plan_corrected (self, "sheet", plan_with_view (aeroplane_plan_by_id (self, "sheet"),
                                                        (PlanView) { .fore = { 10, 10 }, .aft = { 10, 90 }, .shows = VIEW_FIN }));
  ck_assert_uint_eq (aeroplane_plan_by_id (next, "sheet")->view_count, 3);
  ck_assert_ptr_eq (wing_of (next), wing_of (self));
}
END_TEST

START_TEST (a_view_removed_leaves_its_outline_traced_in_none)
{
  g_autoptr (Aeroplane) self = traced_aeroplane (), next = NULL;

  next = plan_corrected (self, "sheet", plan_without_mark (aeroplane_plan_by_id (self, "sheet"), (PlanMark) { PLAN_MARK_AXIS, 0, 0 }));
  ck_assert_ptr_null (aeroplane_surface_by_id (next, "wing")->traced);
  assert_node (wing_of (next), 1, 40, 100);
}
END_TEST

START_TEST (what_cannot_follow_refuses_the_whole_correction)
{
  g_autoptr (Aeroplane) self = traced_aeroplane ();
  Plan *plan = plan_of (self);

  /* So strong a view from the side that the wing's tip lies beyond the horizon. */
  plan->has_corners = true;
  plan->corners[0] = (Point) { 200, 100 };
  plan->corners[1] = (Point) { 300, 180 };
  plan->corners[2] = (Point) { 300, 200 };
  plan->corners[3] = (Point) { 200, 300 };
  plan->corners_width = 100;
  plan->corners_height = 100;
  ck_assert_ptr_null (plan_corrected (self, "sheet", plan));
  ck_assert_ptr_null (plan_corrected (self, "no such plan", plan_of (self)));
}
END_TEST

/* Words */

static char *
words (const Plan *plan)
{
  MappingMisfit misfit;
  Mapping mapping;
  bool is_true;

  ck_assert_int_eq (plan_mapping (plan, false, &mapping, &misfit, &is_true), CORE_OK);
  char *said = plan_misfit_words (plan, &misfit, is_true, (Units) { LENGTH_MM, MASS_G });
  return said != NULL || !is_true ? said : plan_misfit_picture (plan, &misfit, (Units) { LENGTH_MM, MASS_G });
}

static Plan *
known (double across_mm, double along_mm)
{
  Plan *plan = plan_new ("sheet"), *first, *both;

  plan->width = plan->height = 4000;
  first = plan_with_length (plan, (PlanLength) { (Point) { 100, 100 }, (Point) { 3300, 100 }, across_mm, 0, 0 });
  both = along_mm > 0 ? plan_with_length (first, (PlanLength) { (Point) { 100, 100 }, (Point) { 100, 3300 }, along_mm, 0, 0 })
                      : (Plan *) piece_ref (&first->piece);
  piece_unref (&plan->piece);
  piece_unref (&first->piece);
  return both;
}

START_TEST (the_misfit_is_said_in_words)
{
  static const struct { double across, along; const char *says; } cases[] = {
    { 320, 0, "By that length the whole picture is 400 × 400\u00a0mm, margins and all." },
    { 320, 320.1, "The lengths agree, as nearly as they were clicked." },
    { 320, 321.6, "Paper has stretched: across 0.5\u00a0% more than along. Both are used." },
    { 3200, 0, "By that the whole picture would be 4000 × 4000\u00a0mm: look at the figure you typed, and its unit." },
    { 32, 0, "By that the whole picture would be 40 × 40\u00a0mm: look at the figure you typed, and its unit." },
    { 321.6, 320, "Paper has stretched: along 0.5\u00a0% more than across. Both are used." },
  };
  Plan *plan = known (cases[_i].across, cases[_i].along);
  g_autofree char *said = words (plan);

  ck_assert_str_eq (said, cases[_i].says);
  piece_unref (&plan->piece);
}
END_TEST

START_TEST (lengths_that_disagree_are_named)
{
  Plan *one = known (320, 0), *two = plan_with_length (one, (PlanLength) { (Point) { 100, 900 }, (Point) { 3300, 900 }, 352, 0, 0 });
  g_autofree char *said = words (two);

  ck_assert_ptr_nonnull (strstr (said, "352\u00a0mm"));
  ck_assert_ptr_nonnull (strstr (said, "320\u00a0mm"));
  ck_assert_ptr_nonnull (strstr (said, "disagree by"));
  piece_unref (&one->piece);
  piece_unref (&two->piece);
}
END_TEST

START_TEST (nothing_known_says_nothing)
{
  Plan *plan = plan_new ("sheet");

  plan->width = plan->height = 4000;
  ck_assert_ptr_null (words (plan));
  piece_unref (&plan->piece);
}
END_TEST

START_TEST (a_known_span_checks_the_wing)
{
  static const struct { double known; const char *by; } cases[] = {
    { 201.6, "0.8\u00a0%" }, { 100.8, "0.8\u00a0%" }, { 200.1, NULL }, { 150, NULL } };
  g_autoptr (Aeroplane) self = traced_aeroplane ();
  Plan *plan = known (cases[_i].known, 0);
  g_autofree char *said = plan_misfit_span (self, plan);

  if (cases[_i].by)
    ck_assert_ptr_nonnull (strstr (said, cases[_i].by));
  else
    ck_assert_ptr_null (said);
  piece_unref (&plan->piece);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("a plan corrected");

  tcase_add_test (tests, a_length_corrected_carries_the_outline_along);
  tcase_add_test (tests, a_view_put_elsewhere_takes_its_outline_there);
  tcase_add_test (tests, a_view_put_higher_takes_its_surface_along);
  tcase_add_test (tests, a_level_line_turns_all_views_and_moves_nothing_traced);
  tcase_add_test (tests, an_axis_turned_about_keeps_what_was_traced_on_its_side);
  tcase_add_test (tests, a_body_from_the_side_turned_upside_down_takes_its_outline_along);
  tcase_add_test (tests, a_body_whose_axis_is_turned_about_stays_on_its_print);
  tcase_add_test (tests, a_view_said_to_show_the_other_half_moves_nothing);
  tcase_add_test (tests, where_nothing_moves_outlines_are_the_very_same);
  tcase_add_test (tests, a_view_removed_leaves_its_outline_traced_in_none);
  tcase_add_test (tests, what_cannot_follow_refuses_the_whole_correction);
  tcase_add_loop_test (tests, the_misfit_is_said_in_words, 0, 6);
  tcase_add_test (tests, lengths_that_disagree_are_named);
  tcase_add_test (tests, nothing_known_says_nothing);
  tcase_add_loop_test (tests, a_known_span_checks_the_wing, 0, 4);
  return run_suite (suite_create ("plan-correct"), tests);
}
