#include <check.h>
#include <stdlib.h>
#include "arrange-stage.h"
#include "support/run-suite.h"

/* Eight parts as wide and high as their body, so that in each of its four bays they stand in a row. Whatever the bay and the order, in
 * the best arrangement each stands against the one ahead of it: so a search through bays and orders finds the best of all. */

enum { PARTS = 8, BAYS = 4 };

static const double half = 0.020, clearance = 0.002;
static const double length[PARTS] = { 0.0232, 0.0416, 0.0189, 0.0304, 0.0271, 0.0352, 0.0167, 0.0298 };
static const double mass[PARTS] = { 0.0092, 0.0473, 0.0061, 0.0108, 0.0225, 0.0119, 0.0040, 0.0262 };
static const Bay bays[BAYS] = { { 0.030, 0.083, half, -half, half, 1 }, { 0.086, 0.171, half, -half, half, 2 },
                                { 0.174, 0.263, half, -half, half, 3 }, { 0.267, 0.349, half, -half, half, 4 } };

/* The bays from the front with `sign` 1, from the rear with −1, x measured that way. */
typedef struct { double sign, least; } Search;

static void
fill (Search *self, unsigned used, int bay, double x, double moment)
{
  const Bay *in = &bays[self->sign > 0 ? bay : BAYS - 1 - bay];
  const double from = self->sign > 0 ? in->x_from : -in->x_to, to = self->sign > 0 ? in->x_to : -in->x_from;

  if (used == (1u << PARTS) - 1)
    {
      self->least = fmin (self->least, moment);
      return;
    }
  x = fmax (x, from);
  for (size_t i = 0; i < PARTS; i++)
    if (!(used >> i & 1) && x + length[i] <= to)
      fill (self, used | 1u << i, bay, x + length[i] + clearance, moment + mass[i] * (x + length[i] / 2));
  if (bay + 1 < BAYS)
    fill (self, used, bay + 1, -INFINITY, moment);
}

static const struct { const char *because; double sign, other_x, forward_x, aft_x, limit_x, ballast_x; } heavy[] = {
  { "tail-heavy: all to the front, ballast in the nose",  1,   0.255,  0.115,  0.125,  0.125,  0.004 },
  { "nose-heavy: all to the rear, ballast in the tail",   -1,  0.030,  0.150,  0.160,  0.150,  0.561 },
};

START_TEST (eight_parts_in_four_bays_stand_in_the_best_order_of_all)
{
  ArrangeRange ranges[PARTS][BAYS];
  ArrangePart parts[PARTS];
  const ArrangeCase wanted = { .parts = parts, .part_count = PARTS, .other_mass = 0.210, .other_x = heavy[_i].other_x,
                               .forward_limit_x = heavy[_i].forward_x, .aft_limit_x = heavy[_i].aft_x, .aim_x = 0.14,
                               .nose_x = 0.004, .tail_x = 0.561, .clearance = clearance, .seconds = INFINITY };
  Search search = { heavy[_i].sign, INFINITY };
  double all = wanted.other_mass, ballast;
  Arrangements made;

  for (size_t i = 0; i < PARTS; i++)
    {
      parts[i] = (ArrangePart) { .mass = mass[i], .length = length[i], .width = 2 * half, .height = 2 * half, .ranges = ranges[i],
                                 .range_count = BAYS, .now = { 0.15, 0, 0 } };
      for (size_t k = 0; k < BAYS; k++)
        ranges[i][k] = range_in_bay (&bays[k], length[i], 2 * half, 2 * half);
      all += mass[i];
    }
  fill (&search, 0, 0, -INFINITY, 0);
  /* W (x − x_t) / (x_t − x_b): FAA-H-8083-1. */
  ballast = (wanted.other_mass * wanted.other_x + search.sign * search.least - all * heavy[_i].limit_x)
          / (heavy[_i].limit_x - heavy[_i].ballast_x);
  ck_assert_int_eq (arrange (&wanted, 1, &made), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_PROVED);
  ck_assert (ballast > 0.001);
  ck_assert_msg (fabs (made.found[0].ballast - ballast) < 3e-7, "%s: %.9f kg, not %.9f", heavy[_i].because, made.found[0].ballast, ballast);
  ck_assert_double_eq (made.found[0].ballast_x, heavy[_i].ballast_x);
  ck_assert (arrangement_holds (&wanted, &made.found[0]));
  arrangements_clear (&made);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("balance arrange rows");
  TCase *tests = tcase_create ("rows");

  tcase_add_loop_test (tests, eight_parts_in_four_bays_stand_in_the_best_order_of_all, 0, sizeof heavy / sizeof *heavy);
  return run_suite (suite, tests);
}
