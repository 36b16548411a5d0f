#include <check.h>
#include <math.h>
#include <stdlib.h>
#include "plan/least-path.h"
#include "support/run-suite.h"

/* A straight corridor at 8 px a mm with two lines along it: one in the middle, where the clicks are, a third of it missing; a whole one 10 mm
 * beside. No published source. */
enum { COLUMNS = 300, HALF = 100, ROWS = 2 * HALF + 1, STRIDE = 4, PX_PER_MM = 8, BESIDE = HALF + 10 * PX_PER_MM };

static void
find_path (double rows_per_mm, double rows[COLUMNS])
{
  Corridor corridor = { .columns = COLUMNS, .half = HALF, .pitch = 1 };
  const LeastPathPull pulls[] = { { 0, HALF, 2, rows_per_mm }, { COLUMNS - 1, HALF, 2, rows_per_mm } };
  const LeastPathOptions options = { .stride = STRIDE, .steepest = STRIDE, .turning = 3, .pulls = pulls, .pull_count = 2 };
  float *strength = calloc ((size_t) COLUMNS * ROWS, sizeof *strength);

  corridor.spine = malloc (COLUMNS * sizeof *corridor.spine);
  corridor.across = malloc (COLUMNS * sizeof *corridor.across);
  for (size_t i = 0; i < COLUMNS; i++)
    {
      corridor.spine[i] = (Point) { (double) i, 0 };
      corridor.across[i] = (Point) { 0, 1 };
      strength[i * ROWS + HALF] = i >= 100 && i < 208 ? 0 : 1;
      strength[i * ROWS + BESIDE] = 1;
    }
  ck_assert_int_eq (least_path (&corridor, strength, &options, rows), CORE_OK);
  free (strength);
  corridor_clear (&corridor);
}

START_TEST (a_line_ends_where_it_was_clicked_though_a_whole_one_runs_beside_it)
{
  double rows[COLUMNS];

  find_path (PX_PER_MM, rows);
  for (size_t i = 0; i < COLUMNS; i++)
    ck_assert_double_eq_tol (rows[i], HALF, 2);
}
END_TEST

START_TEST (on_its_way_a_click_may_lie_beside_the_line)
{
  double rows[COLUMNS];

  find_path (INFINITY, rows);
  ck_assert_double_eq_tol (rows[COLUMNS / 2], BESIDE, 2);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("two lines");

  tcase_add_test (tests, a_line_ends_where_it_was_clicked_though_a_whole_one_runs_beside_it);
  tcase_add_test (tests, on_its_way_a_click_may_lie_beside_the_line);
  return run_suite (suite_create ("least path"), tests);
}
