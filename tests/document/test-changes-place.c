#include "document/changes.h"
#include <math.h>
#include "document/history.h"
#include "documents.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* A tail and a fin traced in one view and a body traced in two, all of them standing where such things usually do; and a wing in its place. */
static const char guessed[] =
  "<surface id='wing' role='wing' traced='wing-view'><outline><start x='110' y='0'/><line x='120' y='300'/><line x='180' y='0'/></outline></surface>"
  "<surface id='tail' role='tailplane' traced='tail-view'><outline><start x='430' y='0'/><line x='438' y='95'/><line x='475' y='0'/></outline>"
  "<control id='elevator' kind='elevator' inner='10' outer='80' hinge-inner-x='460' hinge-outer-x='450'/></surface>"
  "<surface id='fin' role='fin' traced='tail-view'><outline><start x='440' y='0'/><line x='450' y='60'/><line x='475' y='0'/></outline></surface>"
  "<body id='body' traced='top-view' side-traced='side-view'>"
  "<outline><start x='0' y='0'/><line x='5' y='25.5'/><line x='480' y='2'/></outline>"
  "<side-outline><start x='0' y='0'/><line x='100' y='30'/><line x='480' y='5'/></side-outline><former name='F1' x='20'/></body>"
  "<plan id='sheet'><length x1='0' y1='0' x2='2000' y2='0' mm='200'/>"
  "<view id='wing-view' shows='wing' fore-x='0' fore-y='0' aft-x='0' aft-y='900' x='110'/>"
  "<view id='tail-view' shows='tailplane' fore-x='0' fore-y='0' aft-x='0' aft-y='900' x='430' placed='no'/>"
  "<view id='top-view' shows='body-top' fore-x='0' fore-y='0' aft-x='0' aft-y='900' x='0' placed='no'/>"
  "<view id='side-view' shows='body-side' fore-x='0' fore-y='0' aft-x='0' aft-y='900' x='0' placed='no'/></plan>";

static const PlanView *
view_of (const Aeroplane *self, const char *id)
{
  return aeroplane_view_by_id (self, id, NULL);
}

static double
front_of (const Aeroplane *self, const char *id)
{
  return outline_node (aeroplane_surface_by_id (self, id)->outline, 0).x;
}

/* As a hand moves it. */
static Aeroplane *
moved (const Aeroplane *self, const char *id, double dx)
{
  return change_views_following (self, change_surface_moved (self, id, dx, 0), NULL);
}

START_TEST (a_view_that_stood_where_it_usually_does_goes_along_with_what_is_moved_and_is_a_guess_no_more)
{
  g_autoptr (Aeroplane) self = read_elements (guessed), next = moved (self, "tail", 12.5);

  ck_assert (view_of (self, "tail-view")->for_now);
  ck_assert_double_eq (view_of (next, "tail-view")->x, 442.5);
  ck_assert (!view_of (next, "tail-view")->for_now);
  ck_assert_double_eq (front_of (next, "tail"), 442.5);
  ck_assert_double_eq (aeroplane_surface_by_id (next, "tail")->controls[0].hinge_inner_x, 472.5);
  ck_assert (view_of (next, "top-view")->for_now);
}
END_TEST

START_TEST (what_else_was_traced_in_that_view_stays_on_its_print_too)
{
  g_autoptr (Aeroplane) self = read_elements (guessed), next = moved (self, "tail", 12.5);
  g_autoptr (Aeroplane) one = change_surface_moved (self, "tail", 12.5, 0);
  g_autoptr (Aeroplane) both = change_views_following (self, change_surface_moved (one, "fin", 12.5, 0), NULL);

  ck_assert_double_eq (front_of (next, "fin"), 452.5);
  /* Moved by the same hand it is not moved twice. */
  ck_assert_double_eq (front_of (both, "fin"), 452.5);
  ck_assert_double_eq (view_of (both, "tail-view")->x, 442.5);
}
END_TEST

START_TEST (a_view_that_was_put_in_its_place_stays_when_what_was_traced_in_it_is_moved)
{
  g_autoptr (Aeroplane) self = read_elements (guessed), next = moved (self, "wing", 12.5);

  ck_assert_double_eq (front_of (next, "wing"), 122.5);
  ck_assert_double_eq (view_of (next, "wing-view")->x, 110);
}
END_TEST

START_TEST (a_place_that_is_typed_is_no_guess_though_it_stays_the_same_but_a_move_that_moves_nothing_tells_nothing)
{
  g_autoptr (Aeroplane) self = read_elements (guessed);
  g_autoptr (Aeroplane) typed = change_views_following (self, aeroplane_ref (self), "tail");
  g_autoptr (Aeroplane) still = change_views_following (self, aeroplane_ref (self), NULL);

  ck_assert (!view_of (typed, "tail-view")->for_now);
  ck_assert_double_eq (view_of (typed, "tail-view")->x, 430);
  ck_assert (view_of (typed, "top-view")->for_now);
  ck_assert_ptr_eq (still, self);
  ck_assert_ptr_null (change_views_following (self, NULL, "tail"));
}
END_TEST

START_TEST (a_body_that_is_moved_takes_both_its_views_along_in_one_step)
{
  History *history = history_new (read_elements (guessed));
  g_autoptr (Aeroplane) before = aeroplane_ref (history_now (history));
  Body *body = (Body *) piece_dup (&aeroplane_body (before, 0)->piece);
  Outline *top = NULL, *side = NULL;

  ck_assert_int_eq (outline_mapped (body->outline, (Point) { 1, 1 }, (Point) { 7, 0 }, &top), CORE_OK);
  ck_assert_int_eq (outline_mapped (body->side_outline, (Point) { 1, 1 }, (Point) { 7, 3 }, &side), CORE_OK);
  outline_unref (body->outline);
  outline_unref (body->side_outline);
  body->outline = top;
  body->side_outline = side;
  history_do (history, change_views_following (before, aeroplane_with_replaced (before, &aeroplane_body (before, 0)->piece, &body->piece), NULL),
              "Move Body");
  ck_assert_double_eq (view_of (history_now (history), "top-view")->x, 7);
  ck_assert_double_eq (view_of (history_now (history), "side-view")->x, 7);
  ck_assert_double_eq (view_of (history_now (history), "side-view")->z, 3);
  ck_assert (!view_of (history_now (history), "top-view")->for_now && !view_of (history_now (history), "side-view")->for_now);
  ck_assert_double_eq (outline_node (aeroplane_body (history_now (history), 0)->side_outline, 0).x, 7);
  ck_assert (history_undo (history));
  ck_assert_ptr_eq (history_now (history), before);
  ck_assert (!history_undo (history));
  history_free (history);
}
END_TEST

/* A servo in the wing, on a rail, and a pack that is fixed to nothing. */
START_TEST (a_part_fixed_to_a_surface_moves_with_it_and_no_other)
{
  Outline *triangle = polygon_from ((const Point[]) { { 110, 0 }, { 120, 300 }, { 180, 0 } }, 3);
  Part *servo = part_new ("servo", "servo"), *pack = part_new ("pack", "battery");

  servo->of = g_strdup ("wing");
  servo->x = pack->x = 120;
  servo->z = -3;
  servo->has_rail = true;
  servo->rail_from = 110;
  servo->rail_to = 140;
  g_autoptr (Aeroplane) none = aeroplane_new ();
  g_autoptr (Aeroplane) winged = aeroplane_with_added (none, &surface_new ("wing", ROLE_WING, triangle)->piece);
  g_autoptr (Aeroplane) one = aeroplane_with_added (winged, &servo->piece);
  g_autoptr (Aeroplane) both = aeroplane_with_added (one, &pack->piece);
  g_autoptr (Aeroplane) moved = change_surface_moved (both, "wing", 12, 2);

  ck_assert_double_eq (aeroplane_part_by_id (moved, "servo")->x, 132);
  ck_assert_double_eq (aeroplane_part_by_id (moved, "servo")->z, -1);
  ck_assert_double_eq (aeroplane_part_by_id (moved, "servo")->rail_to, 152);
  ck_assert_ptr_eq (aeroplane_part_by_id (moved, "pack"), pack);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("what follows a move");

  tcase_add_test (tests, a_view_that_stood_where_it_usually_does_goes_along_with_what_is_moved_and_is_a_guess_no_more);
  tcase_add_test (tests, what_else_was_traced_in_that_view_stays_on_its_print_too);
  tcase_add_test (tests, a_view_that_was_put_in_its_place_stays_when_what_was_traced_in_it_is_moved);
  tcase_add_test (tests, a_place_that_is_typed_is_no_guess_though_it_stays_the_same_but_a_move_that_moves_nothing_tells_nothing);
  tcase_add_test (tests, a_body_that_is_moved_takes_both_its_views_along_in_one_step);
  tcase_add_test (tests, a_part_fixed_to_a_surface_moves_with_it_and_no_other);
  return run_suite (suite_create ("document what follows a move"), tests);
}
