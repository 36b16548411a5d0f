#include <math.h>
#include <stdlib.h>
#include "aero/spacing.h"
#include "support/run-suite.h"

enum { most_strips = 64 };

typedef struct { double edges[most_strips + 1], controls[most_strips], pinned[most_strips + 1]; size_t count; } Filled;

static Filled
filled_with (const double ends[], const int strips[], size_t end_count, SpacingKink kinks[], size_t kink_count)
{
  const Spacing spacing = { .ends = ends, .strips = strips, .end_count = end_count, .kinks = kinks, .kink_count = kink_count };
  Filled filled = { 0 };

  for (size_t i = 0; i + 1 < end_count; i++)
    filled.count += (size_t) strips[i];
  spacing_fill (&spacing, filled.pinned, filled.edges, filled.controls);
  return filled;
}

static void
expect_rising (const Filled *filled)
{
  for (size_t i = 0; i < filled->count; i++)
    {
      ck_assert_double_lt (filled->edges[i], filled->controls[i]);
      ck_assert_double_lt (filled->controls[i], filled->edges[i + 1]);
    }
}

START_TEST (edges_run_from_end_to_end_with_controls_between)
{
  const Filled filled = filled_with ((double[]) { 0, 117.3, 320 }, (int[]) { 9, 11 }, 3, NULL, 0);

  ck_assert_double_eq (filled.edges[0], 0);
  ck_assert_double_eq_tol (filled.edges[9], 117.3, 1e-12);
  ck_assert_double_eq (filled.edges[20], 320);
  expect_rising (&filled);
}
END_TEST

/* Near a tip edges stand at a distance like 0, 1, 4, 9, control points like 1/4, 9/4, 25/4: Lan's points. */
START_TEST (strips_shrink_towards_a_tip_like_squares)
{
  const Filled filled = filled_with ((double[]) { 0, 320 }, (int[]) { 40 }, 2, NULL, 0);
  const double first = 320 - filled.edges[39];

  ck_assert_double_eq_tol ((320 - filled.edges[38]) / first, 4, 0.02);
  ck_assert_double_eq_tol ((320 - filled.edges[37]) / first, 9, 0.1);
  ck_assert_double_eq_tol ((320 - filled.controls[39]) / first, 0.25, 0.002);
  ck_assert_double_eq_tol ((320 - filled.controls[38]) / first, 2.25, 0.02);
}
END_TEST

START_TEST (kinks_become_edges_the_strongest_first)
{
  SpacingKink kinks[] = { { .station = 103.1, .strength = 0.1 }, { .station = 101.7, .strength = 0.4 },
                          { .station = 250, .strength = 0.2 } };
  const Filled filled = filled_with ((double[]) { 0, 320 }, (int[]) { 20 }, 2, kinks, 3);
  int strong = 0, weak = 0, outer = 0;

  for (size_t i = 0; i <= filled.count; i++)
    {
      strong += fabs (filled.edges[i] - 101.7) < 1e-9;
      weak += fabs (filled.edges[i] - 103.1) < 1e-9;
      outer += fabs (filled.edges[i] - 250) < 1e-9;
    }
  ck_assert_int_eq (strong, 1);
  ck_assert_int_eq (weak, 0);
  ck_assert_int_eq (outer, 1);
  expect_rising (&filled);
}
END_TEST

/* A jump in width from strip to strip costs as much as a bad tip: with kinks pinned, neighbours away from tips stay within a
 * factor of two. */
START_TEST (pinned_kinks_leave_no_jump_in_width)
{
  for (double station = 20; station < 280; station += 1.7)
    {
      SpacingKink kink = { .station = station, .strength = 0.3 };
      const Filled filled = filled_with ((double[]) { 0, 320 }, (int[]) { 20 }, 2, &kink, 1);

      expect_rising (&filled);
      for (size_t i = 1; i < 17; i++)
        {
          const double ratio = (filled.edges[i + 1] - filled.edges[i]) / (filled.edges[i] - filled.edges[i - 1]);

          ck_assert_double_gt (ratio, 0.5);
          ck_assert_double_lt (ratio, 2);
        }
    }
}
END_TEST

/* A vortex trails from a step in the chord as from a tip. Its strips are half as wide as those beside a faint kink in the same place,
 * on both sides alike; strips of one width stay so. */
START_TEST (strips_beside_a_step_are_half_as_wide)
{
  SpacingKink faint = { .station = 130, .strength = 0.01 }, step = { .station = 130, .strength = 1e4 };
  const Filled plain = filled_with ((double[]) { 0, 320 }, (int[]) { 40 }, 2, &faint, 1);
  const Filled stepped = filled_with ((double[]) { 0, 320 }, (int[]) { 40 }, 2, &step, 1);
  size_t at = 1;

  while (fabs (stepped.edges[at] - 130) > 1e-9)
    ck_assert_uint_lt (++at, stepped.count);
  ck_assert_double_eq_tol (plain.edges[at], 130, 1e-9);
  for (size_t i = at - 1; i <= at; i++)
    ck_assert_double_eq_tol ((stepped.edges[i + 1] - stepped.edges[i]) / (plain.edges[i + 1] - plain.edges[i]), 0.5, 0.1);
  ck_assert_double_eq_tol ((stepped.edges[at + 1] - 130) / (130 - stepped.edges[at - 1]), 1, 0.1);
  expect_rising (&stepped);
}
END_TEST

START_TEST (even_strips_are_even_and_their_controls_in_the_middle)
{
  const double ends[] = { 0, 0.5 };
  const int strips[] = { 4 };
  const Spacing spacing = { .ends = ends, .strips = strips, .end_count = 2, .kind = LATTICE_EVEN };
  double edges[5], controls[4], pinned[5];

  spacing_fill (&spacing, pinned, edges, controls);
  for (int i = 0; i < 4; i++)
    {
      ck_assert_double_eq_tol (edges[i], 0.125 * i, 1e-15);
      ck_assert_double_eq_tol (controls[i], 0.0625 + 0.125 * i, 1e-15);
    }
}
END_TEST

START_TEST (the_first_surface_gets_the_strips_it_wishes)
{
  const double ends[] = { 0, 61, 117, 320, 333 };
  int strips[4];

  spacing_share_out (ends, 5, LATTICE_COSINE, (SpacingWish[]) { { 0, 3, 20 }, { 0, 2, 12 }, { 0, 1, 12 }, { 0, 4, 12 } }, 4, strips);
  ck_assert_int_eq (strips[0] + strips[1] + strips[2], 20);
  for (int i = 0; i < 4; i++)
    ck_assert_int_ge (strips[i], 1);
}
END_TEST

START_TEST (a_tails_wish_draws_strips_inboard)
{
  const double ends[] = { 0, 118, 320 };
  int plain[2], wished[2];

  spacing_share_out (ends, 3, LATTICE_COSINE, (SpacingWish[]) { { 0, 2, 20 }, { 0, 1, 1 } }, 2, plain);
  spacing_share_out (ends, 3, LATTICE_COSINE, (SpacingWish[]) { { 0, 2, 20 }, { 0, 1, 12 } }, 2, wished);
  ck_assert_int_gt (wished[0], plain[0]);
  ck_assert_int_lt (wished[0], 12);
  ck_assert_int_eq (wished[0] + wished[1], 20);
}
END_TEST

/* More pieces than strips: each still has one. */
START_TEST (no_piece_goes_without_a_strip)
{
  const double ends[] = { 0, 10, 20, 30, 40, 50 };
  int strips[5];

  spacing_share_out (ends, 6, LATTICE_COSINE, (SpacingWish[]) { { 0, 5, 3 }, { 1, 3, 40 } }, 2, strips);
  for (int i = 0; i < 5; i++)
    ck_assert_int_ge (strips[i], 1);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("spacing");

  tcase_add_test (tests, edges_run_from_end_to_end_with_controls_between);
  tcase_add_test (tests, strips_shrink_towards_a_tip_like_squares);
  tcase_add_test (tests, kinks_become_edges_the_strongest_first);
  tcase_add_test (tests, pinned_kinks_leave_no_jump_in_width);
  tcase_add_test (tests, strips_beside_a_step_are_half_as_wide);
  tcase_add_test (tests, even_strips_are_even_and_their_controls_in_the_middle);
  tcase_add_test (tests, the_first_surface_gets_the_strips_it_wishes);
  tcase_add_test (tests, a_tails_wish_draws_strips_inboard);
  tcase_add_test (tests, no_piece_goes_without_a_strip);
  return run_suite (suite_create ("spacing"), tests);
}
