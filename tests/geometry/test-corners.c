#include "geometry/corners.h"
#include "measured.h"
#include "support/run-suite.h"

enum { ROOM = 16 };
static const double REACH = 5, LEAST = 5 * M_PI / 180;

/* Two straight edges that meet at an angle, seen through a scatter of a fiftieth of a mm each way. */
static const double turns[] = { 12, 20, 45, 90, 120, -15, -90 };

START_TEST (two_edges_meet_in_one_corner_where_they_meet)
{
  const double turn = turns[_i] * M_PI / 180;
  const Segment lines[] = { segment_line ((Point) { 60, 0 }), segment_line ((Point) { 60 + 70 * cos (turn), 70 * sin (turn) }) };
  Measured *measured = measured_along ((Point) { 0, 0 }, lines, 2, 0.02);
  const DrawnRun run = measured_run (measured);
  Corner corners[ROOM];
  const size_t count = corners_find (&run, REACH, LEAST, corners, ROOM);

  ck_assert_msg (count == 1, "%g degrees: %zu corners", turns[_i], count);
  ck_assert_double_lt (point_distance (corners[0].place, (Point) { 60, 0 }), fabs (turns[_i]) < 15 ? 0.3 : 0.1);
  ck_assert_double_eq_tol (corners[0].turn, turn, 2 * M_PI / 180);
  free (measured);
}
END_TEST

/* Bends are no corners: circles down to a radius of twice the reach, an ellipse, a straight line, a line that bends gently. */
START_TEST (bends_are_no_corners)
{
  const Segment smooth[][2] = {
    { segment_arc ((Point) { 0, 0 }, 10, 10, (Point) { 0, 10 }), segment_arc ((Point) { 0, 0 }, 10, 10, (Point) { -10, 0 }) },
    { segment_arc ((Point) { 0, 0 }, 80, 30, (Point) { 0, 30 }), segment_arc ((Point) { 0, 0 }, 40, 30, (Point) { -40, 0 }) },
    { segment_line ((Point) { 50, 50 }), segment_line ((Point) { 100, 100 }) },
    { segment_curve ((Point) { 20, 0 }, (Point) { 40, 5 }, (Point) { 60, 10 }),
      segment_curve ((Point) { 80, 15 }, (Point) { 90, 40 }, (Point) { 90, 70 }) },
  };
  const Point starts[] = { { 10, 0 }, { 80, 0 }, { 0, 0 }, { 0, 0 } };
  Measured *measured = measured_along (starts[_i], smooth[_i], 2, 0.02);
  const DrawnRun run = measured_run (measured);
  Corner corners[ROOM];

  ck_assert_uint_eq (corners_find (&run, REACH, LEAST, corners, ROOM), 0);
  free (measured);
}
END_TEST

START_TEST (several_come_in_their_order_and_no_more_than_there_is_room_for)
{
  const Segment lines[] = { segment_line ((Point) { 40, 0 }), segment_line ((Point) { 40, 30 }), segment_line ((Point) { 90, 30 }) };
  Measured *measured = measured_along ((Point) { 0, 0 }, lines, 3, 0.02);
  const DrawnRun run = measured_run (measured);
  Corner corners[ROOM];

  ck_assert_uint_eq (corners_find (&run, REACH, LEAST, corners, ROOM), 2);
  ck_assert_double_lt (corners[0].along, corners[1].along);
  ck_assert_double_gt (corners[0].turn, 0);
  ck_assert_double_lt (corners[1].turn, 0);
  ck_assert_uint_eq (corners_find (&run, REACH, LEAST, corners, 1), 1);
  ck_assert_uint_eq (corners_find (&run, REACH, LEAST, corners, 0), 0);
  free (measured);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("corners");
  TCase *tests = tcase_create ("of measured lines");

  tcase_add_loop_test (tests, two_edges_meet_in_one_corner_where_they_meet, 0, sizeof turns / sizeof *turns);
  tcase_add_loop_test (tests, bends_are_no_corners, 0, 4);
  tcase_add_test (tests, several_come_in_their_order_and_no_more_than_there_is_room_for);
  return run_suite (suite, tests);
}
