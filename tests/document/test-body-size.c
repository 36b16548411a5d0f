#include "document/body-size.h"
#include <math.h>
#include "document/history.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* From above 40 to 340 and 2 x 30 wide, from the side 38 to 344 and -22 to 41 high; the thrust line as said, a battery in it. */
static Aeroplane *
with_body (double thrust_z)
{
  g_autoptr (Aeroplane) empty = aeroplane_new (), one = NULL, two = NULL;
  Body *body = body_new ("body");
  Thrust *thrust = thrust_new ();
  Part *battery = part_new ("battery", "battery");

  body->outline = polygon_from ((const Point[]) { { 40, 0 }, { 90, 30 }, { 340, 0 } }, 3);
  body->side_outline = polygon_from ((const Point[]) { { 38, 0 }, { 100, 41 }, { 344, 10 }, { 120, -22 } }, 4);
  body->formers = g_new0 (NamedPlace, 1);
  body->formers[0] = (NamedPlace) { .name = g_strdup ("F1"), .place = 140 };
  body->former_count = 1;
  body->side_passed = (PassedClick) { .by = 3, .at = { 240, 21 } };
  thrust->z = thrust_z;
  battery->of = g_strdup ("body");
  battery->x = 140;
  one = aeroplane_with_added (empty, &body->piece);
  two = aeroplane_with_added (one, &thrust->piece);
  return aeroplane_with_added (two, &battery->piece);
}

static const Body *
body_in (const Aeroplane *aeroplane)
{
  return aeroplane_body_by_id (aeroplane, "body");
}

START_TEST (a_body_is_as_long_and_wide_as_from_above_and_as_high_as_from_the_side)
{
  g_autoptr (Aeroplane) aeroplane = with_body (0);
  const BodySize size = body_size (body_in (aeroplane));
  Body *side = (Body *) piece_dup (&body_in (aeroplane)->piece);

  ck_assert_double_eq_tol (size.length, 300, 1e-9);
  ck_assert_double_eq_tol (size.width, 60, 1e-9);
  ck_assert_double_eq_tol (size.height, 63, 1e-9);
  g_clear_pointer (&side->outline, outline_unref);
  ck_assert_double_eq_tol (body_size (side).length, 306, 1e-9);
  ck_assert_double_nan (body_size (side).width);
  piece_unref (&side->piece);
}
END_TEST

START_TEST (a_longer_body_keeps_its_nose_and_takes_formers_along_and_leaves_parts)
{
  g_autoptr (Aeroplane) before = with_body (0);
  g_autoptr (Aeroplane) after = change_body_length (before, "body", 450);
  const Body *body = body_in (after);

  ck_assert_double_eq_tol (outline_bounds (body->outline).min.x, 40, 1e-9);
  ck_assert_double_eq_tol (outline_bounds (body->outline).max.x, 490, 1e-9);
  ck_assert_double_eq_tol (outline_bounds (body->side_outline).min.x, 37, 1e-9);
  ck_assert_double_eq_tol (outline_bounds (body->side_outline).max.x, 496, 1e-9);
  ck_assert_double_eq_tol (body->formers[0].place, 190, 1e-9);
  ck_assert_double_eq_tol (body->side_passed.at.x, 340, 1e-9);
  ck_assert_double_eq_tol (body_size (body).width, 60, 1e-9);
  ck_assert_double_eq_tol (body_size (body).height, 63, 1e-9);
  ck_assert_double_eq (aeroplane_part_by_id (after, "battery")->x, 140);
}
END_TEST

/* The line that stays: the thrust line's height where that is in the body, the datum line's, the middle. */
static const struct { double thrust_z, raised, kept; } lines[] = { { 10, 0, 10 }, { 60, 0, 0 }, { 0, 100, 109.5 } };

START_TEST (a_higher_body_keeps_the_height_of_its_line)
{
  g_autoptr (Aeroplane) given = with_body (lines[_i].thrust_z), before = NULL, after = NULL;
  Body *raised = (Body *) piece_dup (&body_in (given)->piece);
  Outline *moved = NULL;

  ck_assert_int_eq (outline_mapped (raised->side_outline, (Point) { 1, 1 }, (Point) { 0, lines[_i].raised }, &moved), CORE_OK);
  outline_unref (raised->side_outline);
  raised->side_outline = moved;
  before = aeroplane_with_replaced (given, &body_in (given)->piece, &raised->piece);
  after = change_body_height (before, "body", 126);
  ck_assert_double_eq_tol (outline_bounds (body_in (after)->side_outline).max.y,
                           lines[_i].kept + 2 * (41 + lines[_i].raised - lines[_i].kept), 1e-9);
  ck_assert_double_eq_tol (body_size (body_in (after)).height, 126, 1e-9);
  ck_assert_double_eq_tol (body_size (body_in (after)).length, 300, 1e-9);
}
END_TEST

START_TEST (a_wider_body_is_wider_on_both_sides_and_no_longer)
{
  g_autoptr (Aeroplane) before = with_body (0);
  g_autoptr (Aeroplane) after = change_body_width (before, "body", 77.7);

  ck_assert_double_eq_tol (outline_bounds (body_in (after)->outline).max.y, 38.85, 1e-9);
  ck_assert_double_eq_tol (outline_bounds (body_in (after)->outline).min.y, 0, 1e-9);
  ck_assert_double_eq_tol (body_size (body_in (after)).length, 300, 1e-9);
}
END_TEST

START_TEST (a_measure_is_undone_is_no_change_the_second_time_and_refused_where_it_cannot_be)
{
  Aeroplane *(*const changes[]) (const Aeroplane *, const char *, double) = { change_body_length, change_body_width, change_body_height };
  g_autoptr (Aeroplane) before = with_body (0);
  g_autoptr (Aeroplane) after = changes[_i] (before, "body", 77.7), again = changes[_i] (after, "body", 77.7);
  History *history = history_new (aeroplane_ref (before));

  ck_assert (aeroplane_equal (after, again));
  ck_assert_ptr_null (changes[_i] (before, "body", 0));
  ck_assert_ptr_null (changes[_i] (before, "body", NAN));
  ck_assert_ptr_null (changes[_i] (before, "battery", 77.7));
  history_do (history, aeroplane_ref (after), "Change");
  ck_assert (history_undo (history));
  ck_assert (aeroplane_equal (history_now (history), before));
  ck_assert (history_redo (history));
  ck_assert (aeroplane_equal (history_now (history), after));
  history_free (history);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("body size");

  tcase_add_test (tests, a_body_is_as_long_and_wide_as_from_above_and_as_high_as_from_the_side);
  tcase_add_test (tests, a_longer_body_keeps_its_nose_and_takes_formers_along_and_leaves_parts);
  tcase_add_loop_test (tests, a_higher_body_keeps_the_height_of_its_line, 0, 3);
  tcase_add_test (tests, a_wider_body_is_wider_on_both_sides_and_no_longer);
  tcase_add_loop_test (tests, a_measure_is_undone_is_no_change_the_second_time_and_refused_where_it_cannot_be, 0, 3);
  return run_suite (suite_create ("document body-size"), tests);
}
