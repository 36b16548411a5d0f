#include "measured.h"
#include "support/run-suite.h"

START_TEST (lengths_and_places_along_a_line_agree)
{
  const Segment line = segment_line ((Point) { 30, 40 });
  Measured *measured = measured_along ((Point) { 0, 0 }, &line, 1, 0);
  const DrawnRun run = measured_run (measured);

  ck_assert (run.along[0] == 0);
  ck_assert_double_eq_tol (run.along[run.count - 1], 50, 1e-9);
  ck_assert_uint_eq (drawn_run_at (&run, -1), 0);
  ck_assert_uint_eq (drawn_run_at (&run, 1000), run.count - 1);
  const size_t at = drawn_run_at (&run, 25);
  ck_assert (run.along[at] >= 25 && run.along[at - 1] < 25);
  free (measured);
}
END_TEST

START_TEST (trust_is_the_mean_weight)
{
  const Segment line = segment_line ((Point) { 50, 0 });
  Measured *measured = measured_along ((Point) { 0, 0 }, &line, 1, 0);
  const DrawnRun run = measured_run (measured);

  for (size_t i = 0; i < measured->count; i++)
    measured->weights[i] = measured->places[i].x < 20 ? 0 : 1;
  ck_assert_double_eq_tol (drawn_run_trust (&run, 1, 15), 0, 1e-9);
  ck_assert_double_eq_tol (drawn_run_trust (&run, 25, 45), 1, 1e-9);
  ck_assert_double_eq_tol (drawn_run_trust (&run, 10, 30), 0.5, 0.03);
  free (measured);
}
END_TEST

/* A circle of radius 40 about (0, 0): place, tangent and curvature 1/40 anywhere on it. */
START_TEST (a_circle_is_passed_with_its_tangent_and_curvature)
{
  const Segment arcs[] = { segment_arc ((Point) { 0, 0 }, 40, 40, (Point) { 0, 40 }),
                           segment_arc ((Point) { 0, 0 }, 40, 40, (Point) { -40, 0 }) };
  Measured *measured = measured_along ((Point) { 40, 0 }, arcs, 2, 0.03);
  const DrawnRun run = measured_run (measured);

  for (double angle = 0.3; angle < 2.8; angle += 0.5)
    {
      const double along = run.along[run.count - 1] * angle / M_PI;
      RunPassage passage;
      ck_assert_int_eq (drawn_run_passage (&run, along, 6, PASSAGE_BOTH, &passage), CORE_OK);
      const double at = atan2 (passage.place.y, passage.place.x);
      ck_assert_double_eq_tol (at, angle, 0.01);
      ck_assert_double_eq_tol (hypot (passage.place.x, passage.place.y), 40, 0.02);
      ck_assert_double_eq_tol (passage.direction.x, -sin (at), 0.01);
      ck_assert_double_eq_tol (passage.direction.y, cos (at), 0.01);
      ck_assert_double_eq_tol (fabs (passage.curvature), 1 / 40.0, 0.004);
    }
  free (measured);
}
END_TEST

START_TEST (one_side_of_a_corner_is_passed_by_itself)
{
  const Segment lines[] = { segment_line ((Point) { 30, 0 }), segment_line ((Point) { 30, 30 }) };
  Measured *measured = measured_along ((Point) { 0, 0 }, lines, 2, 0);
  const DrawnRun run = measured_run (measured);
  RunPassage behind, ahead;

  ck_assert_int_eq (drawn_run_passage (&run, 30, 5, PASSAGE_BEHIND, &behind), CORE_OK);
  ck_assert_int_eq (drawn_run_passage (&run, 30, 5, PASSAGE_AHEAD, &ahead), CORE_OK);
  ck_assert_double_eq_tol (behind.direction.x, 1, 1e-6);
  ck_assert_double_eq_tol (ahead.direction.y, 1, 1e-6);
  ck_assert_double_lt (point_distance (behind.place, (Point) { 30, 0 }), 1e-6);
  free (measured);
}
END_TEST

START_TEST (nothing_to_trust_is_said)
{
  const Segment line = segment_line ((Point) { 30, 0 });
  Measured *measured = measured_along ((Point) { 0, 0 }, &line, 1, 0);
  const DrawnRun run = measured_run (measured);
  RunPassage passage;

  for (size_t i = 0; i < measured->count; i++)
    measured->weights[i] = 0;
  ck_assert_int_eq (drawn_run_passage (&run, 15, 3, PASSAGE_BOTH, &passage), CORE_OUT_OF_RANGE);
  free (measured);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("drawn run");
  TCase *tests = tcase_create ("measured lines");

  tcase_add_test (tests, lengths_and_places_along_a_line_agree);
  tcase_add_test (tests, trust_is_the_mean_weight);
  tcase_add_test (tests, a_circle_is_passed_with_its_tangent_and_curvature);
  tcase_add_test (tests, one_side_of_a_corner_is_passed_by_itself);
  tcase_add_test (tests, nothing_to_trust_is_said);
  return run_suite (suite, tests);
}
