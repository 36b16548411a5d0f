#include "document/changes.h"
#include <math.h>
#include "every-piece.h"
#include "document/history.h"
#include "documents.h"
#include "support/run-suite.h"

/* A wing traced in one view, a body in two, and a tail in none. */
static const char drawn[] =
  "<surface id='wing' role='wing' traced='wing-view'><outline><start x='110.3' y='0'/>"
  "<arc cx='150.3' cy='0' rx='40' ry='320.7' x='150.3' y='320.7'/>"
  "<curve x1='200' y1='300.1' x2='235.25' y2='150' x='240.6' y='31.5' pin='c'/><line x='243.1' y='0' pin='l'/></outline>"
  "<rib name='R1' station='35.4'/><dihedral from='200' angle='12'/>"
  "<control id='ailerons' kind='aileron' inner='160' outer='290' hinge-inner-x='205.5' hinge-outer-x='168'/></surface>"
  "<surface id='tail' role='tailplane'><outline><start x='430' y='0'/><line x='438' y='95'/><line x='475' y='0'/></outline></surface>"
  "<body id='body' traced='top-view' side-traced='side-view'>"
  "<outline><start x='0' y='0'/><line x='5' y='25.5'/><line x='480' y='2'/></outline>"
  "<side-outline><start x='0' y='0'/><line x='100' y='30'/><line x='480' y='5'/></side-outline><former name='F1' x='20'/></body>"
  "<plan id='sheet'><length x1='0' y1='0' x2='2000' y2='0' mm='200'/>"
  "<view id='wing-view' shows='wing' fore-x='0' fore-y='0' aft-x='0' aft-y='900'/>"
  "<view id='top-view' shows='body-top' fore-x='0' fore-y='0' aft-x='0' aft-y='900'/>"
  "<view id='side-view' shows='body-side' fore-x='0' fore-y='0' aft-x='0' aft-y='900'/></plan>";

static Plan *
plan_copy (const Aeroplane *self)
{
  return (Plan *) piece_dup (&aeroplane_plan_by_id (self, "sheet")->piece);
}

/* The plan with the length it is known by corrected. */
static Plan *
corrected (const Aeroplane *self)
{
  Plan *plan = plan_copy (self);

  plan->lengths[0].mm = 202;
  return plan;
}

static Point stretched (Point mm, const void *data)  { return (Point) { 1.01 * mm.x + 3.1, 1.02 * mm.y }; }
static Point sheared (Point mm, const void *data)    { return (Point) { mm.x + 0.01 * mm.y, mm.y }; }
static Point lost (Point mm, const void *data)       { return (Point) { NAN, mm.y }; }
static Point same (Point mm, const void *data)       { return mm; }
static Point twice (Point mm, const void *data)      { return point_scale (mm, 2); }
static Point turned_about (Point mm, const void *data) { return (Point) { mm.x, -mm.y }; }
/* A homography: what correcting a photograph's corners does. */
static Point askew (Point mm, const void *data)      { return point_scale (mm, 1 / (1 + 1e-4 * mm.x - 5e-5 * mm.y)); }

static Aeroplane *
carried (const Aeroplane *self, const char *view, Point (*move) (Point, const void *))
{
  return change_plan_carrying (self, "sheet", corrected (self), &(TracedMove) { view, move, NULL }, 1);
}

static void
assert_at (Point got, double x, double y)
{
  ck_assert_msg (point_distance (got, (Point) { x, y }) < 1e-9, "(%.12g, %.12g), wanted (%.12g, %.12g)", got.x, got.y, x, y);
}

START_TEST (correcting_the_plan_carries_the_outline_traced_in_it_along)
{
  g_autoptr (Aeroplane) self = read_elements (drawn), next = carried (self, "wing-view", stretched);
  const Surface *wing = aeroplane_surface_by_id (next, "wing");

  ck_assert_double_eq (aeroplane_plan_by_id (next, "sheet")->lengths[0].mm, 202);
  assert_at (outline_node (wing->outline, 1), 1.01 * 150.3 + 3.1, 1.02 * 320.7);
  assert_at (outline_segment (wing->outline, 1)->control2, 1.01 * 235.25 + 3.1, 1.02 * 150);
  assert_at ((Point) { wing->controls[0].hinge_outer_x, wing->controls[0].outer }, 1.01 * 168 + 3.1, 1.02 * 290);
  assert_at ((Point) { wing->ribs[0].place, wing->breaks[0].from }, 1.02 * 35.4, 1.02 * 200);
  ck_assert_str_eq (wing->traced, "wing-view");
  ck_assert_ptr_eq (aeroplane_surface_by_id (next, "tail"), aeroplane_surface_by_id (self, "tail"));
  ck_assert_ptr_eq (aeroplane_body (next, 0), aeroplane_body (self, 0));
}
END_TEST

START_TEST (an_arc_stays_an_arc_where_its_axes_stay_parallel)
{
  g_autoptr (Aeroplane) self = read_elements (drawn), next = carried (self, "wing-view", stretched);
  const Segment *arc = outline_segment (aeroplane_surface_by_id (next, "wing")->outline, 0);

  ck_assert_int_eq (arc->kind, SEGMENT_ARC);
  assert_at (arc->centre, 1.01 * 150.3 + 3.1, 0);
  assert_at ((Point) { arc->rx, arc->ry }, 1.01 * 40, 1.02 * 320.7);
}
END_TEST

static Point (*const bends[]) (Point, const void *) = { sheared, askew };

START_TEST (an_arc_that_can_be_none_becomes_smooth_curves_in_its_place)
{
  g_autoptr (Aeroplane) self = read_elements (drawn), next = carried (self, "wing-view", bends[_i]);
  const Outline *was = aeroplane_surface_by_id (self, "wing")->outline, *is = aeroplane_surface_by_id (next, "wing")->outline;

  ck_assert_uint_gt (outline_segment_count (is), outline_segment_count (was));
  for (int k = 0; k <= 100; k++)
    {
      const Point place = bends[_i] (segment_at (outline_node (was, 0), outline_segment (was, 0), k / 100.0), NULL);

      ck_assert_double_lt (outline_nearest (is, place, &(size_t) { 0 }, &(double) { 0 }), 2e-5 * 320.7);
    }
  for (size_t i = 1; i + 2 < outline_segment_count (is); i++)
    ck_assert_int_eq (outline_node_kind (is, i), NODE_SMOOTH);
  assert_at (outline_node (is, outline_node_count (is) - 1), bends[_i] ((Point) { 243.1, 0 }, NULL).x,
             bends[_i] ((Point) { 243.1, 0 }, NULL).y);
}
END_TEST

START_TEST (what_others_put_on_nodes_follows_them)
{
  g_autoptr (Aeroplane) self = read_elements (drawn), next = carried (self, "wing-view", sheared);
  g_autofree char *text = writer_text (next, NULL);

  ck_assert_ptr_nonnull (strstr (text, "x=\"243.1\" y=\"0\" pin=\"l\"/>"));
}
END_TEST

START_TEST (a_bodys_two_outlines_follow_their_own_views)
{
  g_autoptr (Aeroplane) self = read_elements (drawn);
  g_autoptr (Aeroplane) top = carried (self, "top-view", stretched), side = carried (self, "side-view", stretched);
  const Body *old = aeroplane_body (self, 0), *by_top = aeroplane_body (top, 0), *by_side = aeroplane_body (side, 0);

  assert_at (outline_node (by_top->outline, 1), 1.01 * 5 + 3.1, 1.02 * 25.5);
  ck_assert (outline_equal (by_top->side_outline, old->side_outline));
  ck_assert_double_eq_tol (by_top->formers[0].place, 1.01 * 20 + 3.1, 1e-9);
  ck_assert (outline_equal (by_side->outline, old->outline));
  assert_at (outline_node (by_side->side_outline, 1), 1.01 * 100 + 3.1, 1.02 * 30);
  ck_assert_double_eq (by_side->formers[0].place, 20);
}
END_TEST

START_TEST (a_correction_is_one_step_and_undone_as_one)
{
  History *history = history_new (read_elements (drawn));
  g_autoptr (Aeroplane) before = aeroplane_ref (history_now (history));
  const TracedMove moves[] = { { "wing-view", stretched, NULL }, { "top-view", stretched, NULL }, { "side-view", stretched, NULL } };

  history_do (history, change_plan_carrying (before, "sheet", corrected (before), moves, 3), "Correct Plan");
  ck_assert_ptr_ne (aeroplane_surface_by_id (history_now (history), "wing"), aeroplane_surface_by_id (before, "wing"));
  ck_assert (history_undo (history));
  ck_assert_ptr_eq (history_now (history), before);
  ck_assert (!history_undo (history));
  ck_assert (history_redo (history));
  ck_assert_double_eq (aeroplane_plan_by_id (history_now (history), "sheet")->lengths[0].mm, 202);
  history_free (history);
}
END_TEST

START_TEST (a_correction_that_cannot_carry_changes_nothing)
{
  g_autoptr (Aeroplane) self = read_elements (drawn);

  ck_assert_msg (!carried (self, "wing-view", lost), "a place that goes nowhere");
  ck_assert_msg (!carried (self, "wing-view", turned_about), "a control that would end before it begins");
  ck_assert_msg (!change_plan_carrying (self, "nobody", corrected (self), NULL, 0), "no such plan");
}
END_TEST

START_TEST (a_correction_that_moves_nothing_leaves_the_outlines_alone)
{
  g_autoptr (Aeroplane) self = read_elements (drawn), next = carried (self, "wing-view", same);

  ck_assert_ptr_eq (aeroplane_surface_by_id (next, "wing"), aeroplane_surface_by_id (self, "wing"));
  ck_assert_ptr_ne (next, self);
}
END_TEST

START_TEST (a_plan_replaced_by_its_like_is_no_change)
{
  g_autoptr (Aeroplane) self = read_elements (drawn), next = change_plan (self, "sheet", plan_copy (self));

  ck_assert_ptr_eq (next, self);
}
END_TEST

START_TEST (an_added_plan_and_its_views_get_ids_that_nobody_has)
{
  g_autoptr (Aeroplane) self = read_elements (drawn), next = NULL;
  Plan *plan = plan_copy (self);

  plan->views = g_renew (PlanView, plan->views, 4);
  plan->views[3] = (PlanView) { .id = NULL, .shows = VIEW_FIN };
  plan->view_count = 4;
  next = change_plan_added (self, plan);
  ck_assert_str_eq (plan->piece.id, "plan");
  for (size_t i = 0; i < 4; i++)
    {
      const Plan *shows = NULL;

      ck_assert_ptr_eq (aeroplane_view_by_id (next, plan->views[i].id, &shows), &plan->views[i]);
      ck_assert_ptr_eq (shows, plan);
      ck_assert_ptr_null (aeroplane_view_by_id (self, plan->views[i].id, NULL));
    }
}
END_TEST

START_TEST (a_replaced_plan_keeps_its_id_and_those_of_its_views)
{
  g_autoptr (Aeroplane) self = read_elements (drawn), next = NULL;
  Plan *plan = corrected (self);

  g_free (plan->piece.id);
  plan->piece.id = g_strdup ("other");
  next = change_plan (self, "sheet", plan);
  ck_assert_str_eq (plan->piece.id, "sheet");
  ck_assert_str_eq (plan->views[0].id, "wing-view");
  ck_assert_str_eq (aeroplane_surface_by_id (next, "wing")->traced, "wing-view");
}
END_TEST

START_TEST (what_was_traced_in_a_view_that_goes_stays_and_is_traced_in_none)
{
  g_autoptr (Aeroplane) self = read_elements (drawn), fewer = NULL, none = change_plan_removed (self, "sheet");
  Plan *plan = plan_copy (self);

  g_free (plan->views[--plan->view_count].id);
  fewer = change_plan (self, "sheet", plan);
  ck_assert_ptr_null (aeroplane_body (fewer, 0)->side_traced);
  ck_assert_str_eq (aeroplane_body (fewer, 0)->traced, "top-view");
  ck_assert_uint_eq (aeroplane_count (none, PIECE_PLAN), 0);
  ck_assert_ptr_null (aeroplane_surface_by_id (none, "wing")->traced);
  ck_assert (outline_equal (aeroplane_surface_by_id (none, "wing")->outline, aeroplane_surface_by_id (self, "wing")->outline));
  ck_assert_ptr_null (change_plan_removed (self, "wing"));
}
END_TEST

START_TEST (a_trace_says_in_which_view_it_was_made)
{
  g_autoptr (Aeroplane) self = read_elements (drawn);
  g_autoptr (Aeroplane) tail = change_surface_traced (self, "tail", any_outline (1.7), "wing-view", NULL);
  g_autoptr (Aeroplane) top = change_body_traced (self, "body", any_outline (1.7), NULL, NULL);
  g_autoptr (Aeroplane) side = change_body_side_traced (self, "body", any_outline (1.7), "wing-view", NULL);

  ck_assert_str_eq (aeroplane_surface_by_id (tail, "tail")->traced, "wing-view");
  ck_assert_ptr_null (aeroplane_body (top, 0)->traced);
  ck_assert_str_eq (aeroplane_body (side, 0)->side_traced, "wing-view");
  ck_assert_ptr_null (change_surface_traced (self, "body", any_outline (1.7), NULL, NULL));
}
END_TEST

static Aeroplane *
with_passed (const Aeroplane *self)
{
  return change_surface_traced (self, "wing", any_outline (1.7), "wing-view", &(PassedClick) { 4, { 120, 200 }, false });
}

START_TEST (the_click_that_a_trace_passes_goes_where_its_outline_is_moved_stretched_or_carried)
{
  g_autoptr (Aeroplane) self = read_elements (drawn), passed = with_passed (self);
  g_autoptr (Aeroplane) moved = change_surface_moved (passed, "wing", 7, 3);
  const double span = 2 * outline_bounds (aeroplane_surface_by_id (passed, "wing")->outline).max.y;
  g_autoptr (Aeroplane) wide = change_surface_span (passed, "wing", 2 * span), right = carried (passed, "wing-view", twice);
  const PassedClick *there = &aeroplane_surface_by_id (moved, "wing")->passed, *out = &aeroplane_surface_by_id (wide, "wing")->passed;
  const PassedClick *by_plan = &aeroplane_surface_by_id (right, "wing")->passed;

  ck_assert_double_eq (there->by, 4);
  ck_assert_double_eq (there->at.x, 127);
  ck_assert_double_eq (there->at.y, 200);
  ck_assert_double_eq (out->at.y, 400);
  ck_assert_double_eq (by_plan->by, 8);
  ck_assert_double_eq (by_plan->at.x, 240);
  ck_assert_double_eq (by_plan->at.y, 400);
}
END_TEST

START_TEST (the_click_that_a_trace_passes_is_forgotten_when_it_is_edited_traced_anew_or_accepted)
{
  g_autoptr (Aeroplane) self = read_elements (drawn), passed = with_passed (self);
  g_autoptr (Aeroplane) same = change_surface_outline (passed, "wing", any_outline (1.7));
  g_autoptr (Aeroplane) edited = change_surface_outline (passed, "wing", any_outline (2.9));
  g_autoptr (Aeroplane) again = change_surface_traced (passed, "wing", any_outline (1.7), "wing-view", NULL);
  g_autoptr (Aeroplane) accepted = change_outline_accepted (passed, "wing");

  ck_assert_double_eq (aeroplane_surface_by_id (passed, "wing")->passed.by, 4);
  ck_assert_double_eq (aeroplane_surface_by_id (same, "wing")->passed.by, 4);
  ck_assert_double_eq (aeroplane_surface_by_id (edited, "wing")->passed.by, 0);
  ck_assert_double_eq (aeroplane_surface_by_id (again, "wing")->passed.by, 0);
  ck_assert_double_eq (aeroplane_surface_by_id (accepted, "wing")->passed.by, 0);
  ck_assert (outline_equal (aeroplane_surface_by_id (accepted, "wing")->outline, aeroplane_surface_by_id (passed, "wing")->outline));
  ck_assert_ptr_null (change_outline_accepted (passed, "nobody"));
}
END_TEST

START_TEST (a_body_has_such_a_click_in_each_of_its_views)
{
  g_autoptr (Aeroplane) self = read_elements (drawn);
  g_autoptr (Aeroplane) top = change_body_traced (self, "body", any_outline (1.7), "top-view", &(PassedClick) { 4, { 120, 20 }, false });
  g_autoptr (Aeroplane) both = change_body_side_traced (top, "body", any_outline (1.9), "side-view", &(PassedClick) { 3, { 150, 8 }, false });
  g_autoptr (Aeroplane) one = change_body_outline (both, "body", any_outline (3.1)), neither = change_outline_accepted (both, "body");

  ck_assert_double_eq (aeroplane_body (both, 0)->passed.by, 4);
  ck_assert_double_eq (aeroplane_body (both, 0)->side_passed.at.x, 150);
  ck_assert_double_eq (aeroplane_body (one, 0)->passed.by, 0);
  ck_assert_double_eq (aeroplane_body (one, 0)->side_passed.by, 3);
  ck_assert_double_eq (aeroplane_body (neither, 0)->passed.by + aeroplane_body (neither, 0)->side_passed.by, 0);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("changes of a plan");

  tcase_add_test (tests, correcting_the_plan_carries_the_outline_traced_in_it_along);
  tcase_add_test (tests, an_arc_stays_an_arc_where_its_axes_stay_parallel);
  tcase_add_loop_test (tests, an_arc_that_can_be_none_becomes_smooth_curves_in_its_place, 0, G_N_ELEMENTS (bends));
  tcase_add_test (tests, what_others_put_on_nodes_follows_them);
  tcase_add_test (tests, a_bodys_two_outlines_follow_their_own_views);
  tcase_add_test (tests, a_correction_is_one_step_and_undone_as_one);
  tcase_add_test (tests, a_correction_that_cannot_carry_changes_nothing);
  tcase_add_test (tests, a_correction_that_moves_nothing_leaves_the_outlines_alone);
  tcase_add_test (tests, a_plan_replaced_by_its_like_is_no_change);
  tcase_add_test (tests, an_added_plan_and_its_views_get_ids_that_nobody_has);
  tcase_add_test (tests, a_replaced_plan_keeps_its_id_and_those_of_its_views);
  tcase_add_test (tests, what_was_traced_in_a_view_that_goes_stays_and_is_traced_in_none);
  tcase_add_test (tests, a_trace_says_in_which_view_it_was_made);
  tcase_add_test (tests, the_click_that_a_trace_passes_goes_where_its_outline_is_moved_stretched_or_carried);
  tcase_add_test (tests, the_click_that_a_trace_passes_is_forgotten_when_it_is_edited_traced_anew_or_accepted);
  tcase_add_test (tests, a_body_has_such_a_click_in_each_of_its_views);
  return run_suite (suite_create ("document changes of a plan"), tests);
}
