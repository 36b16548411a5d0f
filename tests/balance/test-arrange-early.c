#include <check.h>
#include "arrange-stage.h"
#include "support/random.h"
#include "support/run-suite.h"

/* What is told of leads when the search for the shortest ends before it is through. */

enum { PARTS = 5, BAYS = 2, LEADS = PARTS - 1 };
typedef struct { ArrangePart parts[PARTS]; ArrangeRange ranges[PARTS][BAYS]; ArrangeLead leads[LEADS]; ArrangeCase wanted; } Stage;

/* A receiver with a lead to each of the others, in two bays, about balanced whoever stands where. */
static void
set_stage (Stage *self, unsigned seed, double seconds)
{
  Random random = { 2654435761u * (seed + 1) };
  const Bay bays[BAYS] = { { 0.060, 0.140, 0.024, -0.016, 0.014, 1 }, { 0.145, 0.230, 0.022, -0.014, 0.012, 2 } };

  for (size_t i = 0; i < PARTS; i++)
    {
      ArrangePart *part = &self->parts[i];

      *part = (ArrangePart) { .mass = random_between (&random, 0.004, 0.012), .length = random_between (&random, 0.012, 0.026),
                              .width = random_between (&random, 0.010, 0.020), .height = random_between (&random, 0.006, 0.012),
                              .ranges = self->ranges[i], .range_count = BAYS, .now = { 0.15, 0, 0 } };
      for (size_t k = 0; k < BAYS; k++)
        self->ranges[i][k] = range_in_bay (&bays[k], part->length, part->width, part->height);
      if (i > 0)
        self->leads[i - 1] = (ArrangeLead) { .from = 0, .to = i, .length = 0.25, .slack = 0.01 };
    }
  self->wanted = (ArrangeCase) { .parts = self->parts, .part_count = PARTS, .leads = self->leads, .lead_count = LEADS, .other_mass = 0.2,
                                 .other_x = 0.155, .forward_limit_x = 0.150, .aft_limit_x = 0.165, .aim_x = 0.155, .nose_x = 0.005,
                                 .tail_x = 0.6, .clearance = 0.001, .seconds = seconds };
}

/* What arrange() says is made least third. */
static double
sum_of (const ArrangeCase *wanted, const Arrangement *made)
{
  double sum = 0;

  for (size_t i = 0; i < wanted->lead_count; i++)
    sum += made->needed[i];
  for (size_t i = 0; i < wanted->part_count; i++)
    {
      const ArrangePlace at = made->places[i], now = wanted->parts[i].now;

      sum += fabs (at.y) / 100 + (fabs (at.x - now.x) + fabs (at.z - now.z)) / 1000;
    }
  return sum;
}

/* However soon it ends, the shortest of all is no shorter than it says; searched to the end there is nothing to say. */
START_TEST (leads_are_never_shorter_than_a_search_that_ended_early_says)
{
  static const double seconds[] = { 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2 };
  static Stage stage;
  Arrangements best, early;

  set_stage (&stage, (unsigned) _i, INFINITY);
  ck_assert_int_eq (arrange (&stage.wanted, 1, &best), CORE_OK);
  ck_assert_int_eq (best.status, ARRANGE_PROVED);
  ck_assert_double_eq (best.found[0].leads_gap, 0);
  const double least = sum_of (&stage.wanted, &best.found[0]);
  for (size_t k = 0; k < sizeof seconds / sizeof *seconds; k++)
    {
      set_stage (&stage, (unsigned) _i, seconds[k]);
      ck_assert_int_eq (arrange (&stage.wanted, 1, &early), CORE_OK);
      if (early.count > 0 && (early.status == ARRANGE_PROVED || early.found[0].leads_gap > 0))
        {
          ck_assert (arrangement_holds (&stage.wanted, &early.found[0]));
          ck_assert_double_le (sum_of (&stage.wanted, &early.found[0]) - early.found[0].leads_gap, least + 2e-5);
          ck_assert_double_ge (sum_of (&stage.wanted, &early.found[0]), least - 2e-5);
          ck_assert (early.status == ARRANGE_BEST_FOUND || early.found[0].leads_gap == 0);
        }
      arrangements_clear (&early);
    }
  arrangements_clear (&best);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("balance arrange early");
  TCase *tests = tcase_create ("early");

  tcase_add_loop_test (tests, leads_are_never_shorter_than_a_search_that_ended_early_says, 0, 4);
  return run_suite (suite, tests);
}
