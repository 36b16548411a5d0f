#include <math.h>
#include "drawing/hit.h"
#include "support/easel.h"
#include "support/run-suite.h"

static Easel *easel;

static void set_up (void) { easel = easel_new (racer_in_full ()); }
static void tear_down (void) { easel_free (easel); }

static Snap
snapped (double x, double y)
{
  return sheet_snap (&easel->scene, (Point) { x, y }, "wing", 1);
}

START_TEST (a_free_place_goes_to_whole_millimetres)
{
  const Snap s = snapped (263.4, 201.7);

  ck_assert_double_eq (s.place.x, 263);
  ck_assert_double_eq (s.place.y, 202);
  ck_assert (isnan (s.guide_x) && isnan (s.guide_y));
}
END_TEST

START_TEST (in_inches_it_goes_to_whole_thirty_seconds)
{
  Snap s;

  easel->scene.units.length = LENGTH_INCH;
  ck_assert_double_eq (sheet_snap_step (&easel->scene), 25.4 / 32);
  s = snapped (263.4, 201.7);
  ck_assert_double_eq_tol (s.place.x * 32 / 25.4, round (263.4 * 32 / 25.4), 1e-9);
  ck_assert_double_eq_tol (s.place.y * 32 / 25.4, round (201.7 * 32 / 25.4), 1e-9);
}
END_TEST

START_TEST (steps_grow_as_the_sheet_shrinks)
{
  double before = 0;

  for (double scale = 40; scale >= 0.05; scale /= 1.6)
    {
      double step;

      easel->view.scale = scale;
      step = sheet_snap_step (&easel->scene);
      ck_assert_double_ge (step, before);
      ck_assert_double_ge (step, 1);
      ck_assert_double_eq (step, round (step));
      before = step;
    }
  ck_assert_double_ge (before, 10);
}
END_TEST

START_TEST (the_centre_line_draws_a_place_to_itself)
{
  const Snap s = snapped (263.4, -1.1);      /* the body's tail stands at 2.5 */

  ck_assert_double_eq (s.place.y, 0);
  ck_assert (!signbit (s.place.y));
  ck_assert_double_eq (s.guide_y, 0);
  ck_assert (isnan (s.guide_x));
}
END_TEST

START_TEST (other_nodes_formers_and_ribs_attract)
{
  ck_assert_double_eq (snapped (415.8, 201.7).guide_x, 414);      /* the tail's tip */
  ck_assert_double_eq (snapped (263.4, 116.4).place.y, 118);
  ck_assert_double_eq (snapped (288.3, 201.7).place.x, 290.5);    /* former F8, not a whole number */
  ck_assert_double_eq (snapped (263.4, 94.1).place.y, 92.5);      /* rib R4 */
  ck_assert_double_eq (snapped (263.4, -94.1).place.y, -92.5);    /* and to port */
}
END_TEST

START_TEST (what_moves_does_not_attract_itself)
{
  const Point near_tip = { 158.6, 321.2 };
  const Snap own = sheet_snap (&easel->scene, near_tip, "wing", 1), other = sheet_snap (&easel->scene, near_tip, "battery", 0);

  ck_assert_double_eq (own.place.x, 159);
  ck_assert_double_eq (own.place.y, 321);
  ck_assert_double_eq (other.place.x, 157);
  ck_assert_double_eq (other.place.y, 320);
}
END_TEST

START_TEST (a_whole_outline_that_moves_attracts_with_none_of_its_nodes)
{
  const Point near_root = { 113.8, 207.3 };

  ck_assert_double_eq (sheet_snap (&easel->scene, near_root, "wing", 1).place.x, 112);
  ck_assert_double_eq (sheet_snap (&easel->scene, near_root, "wing", SNAP_WHOLE).place.x, 114);
}
END_TEST

START_TEST (the_nearest_attracts_and_only_from_near_on_the_screen)
{
  easel->view.scale = 10;      /* 5 px are half a millimetre */
  ck_assert_double_eq (snapped (290.1, 201.7).place.x, 290.5);
  ck_assert_double_eq (snapped (289.6, 201.7).place.x, 290);
  ck_assert (isnan (snapped (289.6, 201.7).guide_x));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("snap");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_test (tests, a_free_place_goes_to_whole_millimetres);
  tcase_add_test (tests, in_inches_it_goes_to_whole_thirty_seconds);
  tcase_add_test (tests, steps_grow_as_the_sheet_shrinks);
  tcase_add_test (tests, the_centre_line_draws_a_place_to_itself);
  tcase_add_test (tests, other_nodes_formers_and_ribs_attract);
  tcase_add_test (tests, what_moves_does_not_attract_itself);
  tcase_add_test (tests, a_whole_outline_that_moves_attracts_with_none_of_its_nodes);
  tcase_add_test (tests, the_nearest_attracts_and_only_from_near_on_the_screen);
  return run_suite (suite_create ("drawing snap"), tests);
}
