#include <check.h>
#include <math.h>
#include "plan/trace-ends.h"
#include "support/run-suite.h"

enum { PLACES = 400, ROOM = PLACES + 2 };

typedef struct { Point places[ROOM]; double weights[ROOM]; size_t count; } Run;

/* Out along one parabola from x = 10 and back along another to x = 60, places a fifth of a mm apart in y. `beyond`: how far over the axis
 * it was followed at both ends (negative: how far it stops short). */
static void
run_between (Run *run, double beyond)
{
  run->count = 0;
  for (int i = 0; i < PLACES / 2; i++)
    {
      const double y = i * 0.2 - beyond;
      run->places[run->count++] = (Point) { 10 + 0.1 * y + 0.002 * y * y, y };
    }
  for (int i = PLACES / 2 - 1; i >= 0; i--)
    {
      const double y = i * 0.2 - beyond;
      run->places[run->count++] = (Point) { 60 - 0.05 * y - 0.001 * y * y, y };
    }
  for (size_t i = 0; i < run->count; i++)
    run->weights[i] = 1;
}

static const double beyonds[] = { 0, 1.9, 0.3, -0.5, -2 };

START_TEST (the_ends_meet_the_axis_where_the_line_would)
{
  Run run;

  run_between (&run, beyonds[_i]);
  const size_t count = carry_ends_to_station (run.places, run.weights, run.count, 0);
  ck_assert_uint_le (count, run.count + 2);
  ck_assert (run.places[0].y == 0 && run.places[count - 1].y == 0);
  ck_assert_double_eq_tol (run.places[0].x, 10, 0.03);
  ck_assert_double_eq_tol (run.places[count - 1].x, 60, 0.03);
  for (size_t i = 1; i + 1 < count; i++)
    ck_assert_double_gt (run.places[i].y, 0.3);
}
END_TEST

/* The axis' own line and a rib along it lead a traced line astray within a line's width of it. */
START_TEST (what_lies_beside_the_axis_does_not_count)
{
  Run run;

  run_between (&run, 0.1);
  for (int i = 0; i < 3; i++)
    run.places[i].x += 1.5;
  const size_t count = carry_ends_to_station (run.places, run.weights, run.count, 0);
  ck_assert_double_eq_tol (run.places[0].x, 10, 0.03);
  ck_assert_double_eq_tol (run.places[count - 1].x, 60, 0.03);
}
END_TEST

START_TEST (what_was_never_seen_is_not_trusted)
{
  Run run;

  run_between (&run, 0);
  const size_t count = carry_ends_to_station (run.places, run.weights, run.count, 0);
  ck_assert (run.weights[0] == 0 && run.weights[count - 1] == 0);
}
END_TEST

/* A line that runs along the axis would meet it far away: it is taken straight across instead. */
START_TEST (a_line_that_hardly_nears_the_axis_goes_straight_across)
{
  Run run = { .count = 0 };

  for (int i = 0; i < 100; i++)
    run.places[run.count++] = (Point) { 30 + 0.2 * i, 2 + 0.001 * i };
  for (size_t i = 0; i < run.count; i++)
    run.weights[i] = 1;
  const size_t count = carry_ends_to_station (run.places, run.weights, run.count, 0);
  ck_assert_double_eq_tol (run.places[0].x, 30, 1e-9);
  ck_assert_double_eq_tol (run.places[count - 1].x, 49.8, 1e-9);
}
END_TEST

START_TEST (a_root_off_the_axis_is_met_at_its_station)
{
  Run run;

  run_between (&run, 0);
  const size_t count = carry_ends_to_station (run.places, run.weights, run.count, 12);
  ck_assert (run.places[0].y == 12 && run.places[count - 1].y == 12);
  ck_assert_double_eq_tol (run.places[0].x, 10 + 0.1 * 12 + 0.002 * 144, 0.03);
  ck_assert_double_eq_tol (run.places[count - 1].x, 60 - 0.05 * 12 - 0.001 * 144, 0.03);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("trace ends");
  TCase *tests = tcase_create ("carried to the axis");

  tcase_add_loop_test (tests, the_ends_meet_the_axis_where_the_line_would, 0, sizeof beyonds / sizeof *beyonds);
  tcase_add_test (tests, a_root_off_the_axis_is_met_at_its_station);
  tcase_add_test (tests, what_lies_beside_the_axis_does_not_count);
  tcase_add_test (tests, what_was_never_seen_is_not_trusted);
  tcase_add_test (tests, a_line_that_hardly_nears_the_axis_goes_straight_across);
  return run_suite (suite, tests);
}
