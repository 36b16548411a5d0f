#include "mapping-cases.h"
#include "plan/axis-frame.h"
#include "support/run-suite.h"

static const Mapping plain = { .h = { 0.1, 0, 0, 0, 0.1, 0, 0, 0, 1 }, .lens_radius = 1 };

static const struct { const char *because; ViewAxis axis; Point traced, own; } drawn[] = {
  { "nose at the top, right half", { { 500, 100 }, { 500, 900 } }, { 800, 300 }, { 20, 30 } },
  { "nose at the top, left half drawn", { { 500, 100 }, { 500, 900 } }, { 200, 300 }, { 20, 30 } },
  { "nose to the left", { { 100, 500 }, { 900, 500 } }, { 300, 200 }, { 20, 30 } },
  { "nose to the left, other half", { { 100, 500 }, { 900, 500 } }, { 300, 800 }, { 20, 30 } },
  { "upside down", { { 500, 900 }, { 500, 100 } }, { 200, 700 }, { 20, 30 } },
  { "ahead of the forward end", { { 500, 400 }, { 500, 900 } }, { 800, 300 }, { -10, 30 } },
};

START_TEST (own_axes_run_aft_and_away_from_the_axis_on_the_side_traced)
{
  const double side = axis_side (&plain, drawn[_i].axis, drawn[_i].traced);
  AxisFrame frame;

  ck_assert_int_eq (axis_frame_on (&plain, drawn[_i].axis, side, &frame), CORE_OK);
  assert_place (axis_frame_own (&frame, mapping_to_mm (&plain, drawn[_i].traced)), drawn[_i].own, 1e-12, drawn[_i].because);
}
END_TEST

START_TEST (starboard_is_the_positive_side_where_the_nose_is_at_the_top)
{
  const ViewAxis axis = { { 500, 100 }, { 500, 900 } };

  ck_assert_double_eq (axis_side (&plain, axis, (Point) { 501, 400 }), 1);
  ck_assert_double_eq (axis_side (&plain, axis, (Point) { 499, 400 }), -1);
}
END_TEST

START_TEST (the_frame_goes_back_to_where_it_came_from)
{
  const Mapping by = camera (-0.011);
  const ViewAxis axis = { { 1203.1, 307.9 }, { 907.3, 2003.7 } };
  AxisFrame frame;

  for (int side = -1; side <= 1; side += 2)
    {
      ck_assert_int_eq (axis_frame_on (&by, axis, side, &frame), CORE_OK);
      for (double x = -40; x < 200; x += 33.3)
        {
          const Point own = { x, 0.7 * x + 11.3 };

          assert_place (axis_frame_own (&frame, axis_frame_paper (&frame, own)), own, 1e-11, "there and back");
        }
      assert_place (axis_frame_paper (&frame, (Point) { 0, 0 }), mapping_to_mm (&by, axis.fore), 1e-12, "the forward end");
    }
}
END_TEST

START_TEST (an_axis_of_one_place_or_none_makes_no_frame)
{
  AxisFrame frame = { .side = 4711 };

  ck_assert_int_eq (axis_frame_on (&plain, (ViewAxis) { { 5, 5 }, { 5, 5 } }, 1, &frame), CORE_SINGULAR);
  ck_assert_int_eq (axis_frame_on (&plain, (ViewAxis) { { 5, 5 }, { NAN, 5 } }, 1, &frame), CORE_NOT_FINITE);
  ck_assert_double_eq (frame.side, 4711);
}
END_TEST

/* What was traced in a photograph taken for a scan, put right when its corners are known: traced anew it would lie there. */
START_TEST (what_was_traced_goes_where_it_would_be_traced_now)
{
  const ViewAxis axis = { { 1203.1, 307.9 }, { 907.3, 2003.7 } };
  AxisCarry carry = { .from = plain, .to = camera (-0.011), .shift_from = { 110.3, 0 }, .shift_to = { 97.1, 2.3 } };

  ck_assert_int_eq (axis_frame_on (&carry.from, axis, 1, &carry.frame_from), CORE_OK);
  ck_assert_int_eq (axis_frame_on (&carry.to, axis, 1, &carry.frame_to), CORE_OK);
  for (double x = 400; x < 2900; x += 371.3)
    {
      const Point px = { x, 0.5 * x + 203.7 };
      const Point was = point_add (axis_frame_own (&carry.frame_from, mapping_to_mm (&carry.from, px)), carry.shift_from);
      const Point is = point_add (axis_frame_own (&carry.frame_to, mapping_to_mm (&carry.to, px)), carry.shift_to);

      assert_place (axis_carry (&carry, was), is, 1e-10, "carried");
    }
}
END_TEST

START_TEST (a_correction_that_changes_nothing_moves_nothing)
{
  const ViewAxis axis = { { 1203.1, 307.9 }, { 907.3, 2003.7 } };
  AxisCarry carry = { .from = camera (-0.011), .to = camera (-0.011) };

  ck_assert_int_eq (axis_frame_on (&carry.from, axis, -1, &carry.frame_from), CORE_OK);
  carry.frame_to = carry.frame_from;
  assert_place (axis_carry (&carry, (Point) { 31.7, 88.3 }), (Point) { 31.7, 88.3 }, 1e-10, "as it was");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("axis frame");

  tcase_add_loop_test (tests, own_axes_run_aft_and_away_from_the_axis_on_the_side_traced, 0, (int) (sizeof drawn / sizeof *drawn));
  tcase_add_test (tests, starboard_is_the_positive_side_where_the_nose_is_at_the_top);
  tcase_add_test (tests, the_frame_goes_back_to_where_it_came_from);
  tcase_add_test (tests, an_axis_of_one_place_or_none_makes_no_frame);
  tcase_add_test (tests, what_was_traced_goes_where_it_would_be_traced_now);
  tcase_add_test (tests, a_correction_that_changes_nothing_moves_nothing);
  return run_suite (suite_create ("plan axis frame"), tests);
}
