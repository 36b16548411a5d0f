#include <check.h>
#include <stdlib.h>
#include "arrange-stage.h"
#include "support/random.h"
#include "support/run-suite.h"

enum { SLIDING = 4, LEADS = 3, ORDERS = 24 };

/* Parts on one rail along the body, with leads between them. */
typedef struct { ArrangePart parts[SLIDING]; ArrangeRange rail[SLIDING]; ArrangeLead leads[LEADS]; ArrangeCase wanted; } Row;

static void
invent_row (Row *self, unsigned seed)
{
  Random random = { 2654435761u * (seed + 7) };

  for (size_t i = 0; i < SLIDING; i++)
    {
      const double from = random_between (&random, 0.04, 0.10);

      self->rail[i] = (ArrangeRange) { from, from + random_between (&random, 0.08, 0.20), 0, 0, 0, 0, 1 };
      self->parts[i] = (ArrangePart) { .mass = random_between (&random, 0.01, 0.05), .length = random_between (&random, 0.015, 0.035),
                                       .width = 0.02, .height = 0.01, .ranges = &self->rail[i], .range_count = 1, .now = { 0.1, 0, 0 } };
    }
  for (size_t i = 0; i < LEADS; i++)
    self->leads[i] = (ArrangeLead) { .from = i, .to = i + 1, .length = random_between (&random, 0.031, 0.054), .slack = 0.005 };
  self->wanted = (ArrangeCase) { .parts = self->parts, .part_count = SLIDING, .leads = self->leads, .lead_count = LEADS,
                                 .other_mass = 0.12, .other_x = (double[]) { 0.200, 0.070, 0.110 }[seed % 3],
                                 .forward_limit_x = 0.115, .aft_limit_x = 0.120, .aim_x = 0.118,
                                 .nose_x = 0, .tail_x = 0.4, .clearance = 0.001, .seconds = 100 };
}

static bool
raise_to (double *low, double to)
{
  const bool raised = to > *low + 1e-12;

  *low = fmax (*low, to);
  return raised;
}

/* The foremost places of an order, and no lead longer than it is: x of the one behind at least so far behind, and of the one ahead at
 * least so near. With `sign` −1 all mirrored: the rearmost. False when there are none. */
static bool
foremost (const Row *row, const size_t order[SLIDING], double sign, double x[SLIDING])
{
  bool raised = true;

  for (size_t i = 0; i < SLIDING; i++)
    x[i] = sign > 0 ? row->rail[i].x_from : -row->rail[i].x_to;
  for (int round = 0; raised && round < 100; round++)
    {
      raised = false;
      for (size_t k = 0; k + 1 < SLIDING; k++)
        {
          const size_t ahead = order[sign > 0 ? k : k + 1], behind = order[sign > 0 ? k + 1 : k];
          const double apart = (row->parts[ahead].length + row->parts[behind].length) / 2 + row->wanted.clearance;

          raised = raise_to (&x[behind], x[ahead] + apart) || raised;
        }
      for (size_t k = 0; k < LEADS; k++)
        {
          const double reach = row->leads[k].length - row->leads[k].slack;

          raised = raise_to (&x[k], x[k + 1] - reach) || raised;
          raised = raise_to (&x[k + 1], x[k] - reach) || raised;
        }
      for (size_t i = 0; i < SLIDING; i++)
        if (x[i] > (sign > 0 ? row->rail[i].x_to : -row->rail[i].x_from) + 1e-12)
          return false;
    }
  return !raised;
}

/* The n-th of all orders. */
static void
order_of (size_t n, size_t order[SLIDING])
{
  size_t left[SLIDING] = { 0, 1, 2, 3 };

  for (size_t i = 0; i < SLIDING; i++)
    {
      const size_t k = n % (SLIDING - i);

      order[i] = left[k];
      n /= SLIDING - i;
      for (size_t j = k; j + 1 < SLIDING - i; j++)
        left[j] = left[j + 1];
    }
}

static double
balance_at (const Row *row, double sign, const double x[SLIDING], double *mass)
{
  double moment = row->wanted.other_mass * row->wanted.other_x;

  *mass = row->wanted.other_mass;
  for (size_t i = 0; i < SLIDING; i++)
    {
      *mass += row->parts[i].mass;
      moment += row->parts[i].mass * sign * x[i];
    }
  return moment / *mass;
}

/* Through all orders; in one the foremost places belong together. W (x − x_t) / (x_t − x_b): FAA-H-8083-1. */
static double
least_ballast (const Row *row)
{
  const ArrangeCase *wanted = &row->wanted;
  double least = INFINITY;

  for (size_t n = 0; n < ORDERS; n++)
    {
      size_t order[SLIDING];
      double x[SLIDING], mass, ahead, behind;

      order_of (n, order);
      if (!foremost (row, order, 1, x))
        continue;
      ahead = balance_at (row, 1, x, &mass);
      foremost (row, order, -1, x);
      behind = balance_at (row, -1, x, &mass);
      if (ahead > wanted->aft_limit_x)
        least = fmin (least, mass * (ahead - wanted->aft_limit_x) / (wanted->aft_limit_x - wanted->nose_x));
      else if (behind < wanted->forward_limit_x)
        least = fmin (least, mass * (wanted->forward_limit_x - behind) / (wanted->tail_x - wanted->forward_limit_x));
      else
        least = 0;
    }
  return least;
}

START_TEST (no_order_in_which_the_leads_reach_needs_less_ballast)
{
  Row row;
  Arrangements made;
  ArrangeLimit limits[LEADS + 1];
  double least;
  size_t count;

  invent_row (&row, (unsigned) _i);
  least = least_ballast (&row);
  ck_assert_int_eq (arrange (&row.wanted, 1, &made), CORE_OK);
  ck_assert_uint_eq (made.count, !isinf (least));
  ck_assert_int_eq (made.status, isinf (least) ? ARRANGE_IMPOSSIBLE : ARRANGE_PROVED);
  if (made.count)
    {
      ck_assert (arrangement_holds (&row.wanted, &made.found[0]));
      ck_assert_double_eq_tol (made.found[0].ballast, least, 3e-7);
    }
  ck_assert_int_eq (arrange_limits (&row.wanted, limits, LEADS + 1, &count), CORE_OK);
  ck_assert_msg ((count > 0) == isinf (least), "%zu reasons are named", count);
  arrangements_clear (&made);
}
END_TEST

/* Parts without mass, so that their leads alone decide; all in whole millimetres, where the least is at whole millimetres too. */
static double
value_at (const ArrangeCase *wanted, const ArrangePlace places[])
{
  double value = 0;

  for (size_t i = 0; i < wanted->lead_count; i++)
    value += arrange_lead_needed (&wanted->leads[i], places[wanted->leads[i].from], places[wanted->leads[i].to]);
  for (size_t i = 1; i < wanted->part_count; i++)
    value += fabs (places[i].y) / 100 + (fabs (places[i].x - wanted->parts[i].now.x) + fabs (places[i].z - wanted->parts[i].now.z)) / 1000;
  return value;
}

static const ArrangeRange motor_at = { 0.020, 0.020, 0, 0, 0, 0, 9 };

START_TEST (in_a_row_the_leads_are_the_shortest_of_every_whole_millimetre)
{
  const ArrangeRange rails[] = { { 0.040, 0.090, 0, 0, 0, 0, 1 }, { 0.050, 0.110, 0, 0, 0, 0, 1 }, { 0.040, 0.120, 0, 0, 0, 0, 1 } };
  const ArrangePlace clip = { 0.075, 0, 0 };
  const ArrangePart parts[] = {
    { .mass = 0.1, .length = 0.020, .ranges = &motor_at, .range_count = 1 },
    { .length = 0.016, .ranges = &rails[0], .range_count = 1, .now = { 0.080, 0, 0 } },
    { .length = 0.024, .ranges = &rails[1], .range_count = 1, .now = { 0.055, 0, 0 } },
    { .length = 0.030, .ranges = &rails[2], .range_count = 1, .now = { 0.100, 0, 0 } },
  };
  const ArrangeLead leads[] = { { 0, 3, NULL, 0, NAN, 0.004 }, { 0, 1, &clip, 1, NAN, 0 }, { 1, 2, NULL, 0, 0.030, 0 },
                                { 2, 3, NULL, 0, NAN, 0 } };
  const ArrangeCase wanted = { .parts = parts, .part_count = 4, .leads = leads, .lead_count = 4, .forward_limit_x = 0.010,
                               .aft_limit_x = 0.030, .aim_x = 0.020, .nose_x = 0, .tail_x = 0.3, .clearance = 0.001, .seconds = 100 };
  ArrangePlace places[4] = { { 0.020, 0, 0 } };
  double least = INFINITY;
  Arrangements made;

  for (int a = 40; a <= 90; a++)
    for (int b = 50; b <= 110; b++)
      for (int c = 40; c <= 120; c++)
        if (abs (a - b) >= 21 && abs (a - b) <= 30 && abs (a - c) >= 24 && abs (b - c) >= 28 && a >= 39 && b >= 43 && c >= 46)
          {
            places[1].x = a / 1000.0, places[2].x = b / 1000.0, places[3].x = c / 1000.0;
            least = fmin (least, value_at (&wanted, places));
          }
  ck_assert_int_eq (arrange (&wanted, 1, &made), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_PROVED);
  ck_assert (made.found[0].needed[2] <= 0.030 + 1e-6);
  ck_assert_double_eq_tol (value_at (&wanted, made.found[0].places), least, 1e-5);
  arrangements_clear (&made);
}
END_TEST

/* Two parts in a bay, the motor before it: of every 3 mm in space none has shorter leads. */
START_TEST (in_a_bay_no_place_of_a_fine_grid_has_shorter_leads)
{
  const Bay bay = { 0.040, 0.100, 0.030, -0.020, 0.016, 1 };
  const ArrangePlace clip = { 0.070, 0.028, -0.015 };
  ArrangePart parts[] = {
    { .mass = 0.1, .length = 0.020, .width = 0.020, .height = 0.020, .ranges = &motor_at, .range_count = 1 },
    { .length = 0.030, .width = 0.036, .height = 0.012, .range_count = 1, .now = { 0.070, 0, -0.014 } },
    { .length = 0.022, .width = 0.024, .height = 0.015, .range_count = 1, .now = { 0.060, 0, 0 } },
  };
  const ArrangeRange ranges[] = { range_in_bay (&bay, 0.030, 0.036, 0.012), range_in_bay (&bay, 0.022, 0.024, 0.015) };
  const ArrangeLead leads[] = { { 0, 1, NULL, 0, NAN, 0 }, { 1, 2, &clip, 1, NAN, 0 }, { 0, 2, NULL, 0, NAN, 0 } };
  const ArrangeCase wanted = { .parts = parts, .part_count = 3, .leads = leads, .lead_count = 3, .forward_limit_x = 0.010,
                               .aft_limit_x = 0.030, .aim_x = 0.020, .nose_x = 0, .tail_x = 0.3, .clearance = 0.001, .seconds = 100 };
  const double step = 0.003;
  ArrangePlace at[3] = { { 0.020, 0, 0 } };
  double least = INFINITY, value;
  Arrangements made;

  parts[1].ranges = &ranges[0];
  parts[2].ranges = &ranges[1];
  ck_assert_int_eq (arrange (&wanted, 1, &made), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_PROVED);
  ck_assert (arrangement_holds (&wanted, &made.found[0]));
  for (at[1].x = ranges[0].x_from; at[1].x <= ranges[0].x_to; at[1].x += step)
    for (at[1].y = ranges[0].y_from; at[1].y <= ranges[0].y_to; at[1].y += step)
      for (at[1].z = ranges[0].z_from; at[1].z <= ranges[0].z_to; at[1].z += step)
        for (at[2].x = ranges[1].x_from; at[2].x <= ranges[1].x_to; at[2].x += step)
          for (at[2].y = ranges[1].y_from; at[2].y <= ranges[1].y_to; at[2].y += step)
            for (at[2].z = ranges[1].z_from; at[2].z <= ranges[1].z_to; at[2].z += step)
              if (boxes_are_apart (&parts[1], at[1], &parts[2], at[2], 0.001))
                least = fmin (least, value_at (&wanted, at));
  value = value_at (&wanted, made.found[0].places);
  ck_assert_msg (value <= least + 1e-5 && value > least - 0.008, "%g, in the grid %g", value, least);
  arrangements_clear (&made);
}
END_TEST

/* Torricelli's point: of an equilateral triangle of side s the centre, where the three ways sum to s √3. */
START_TEST (a_receiver_with_three_leads_stands_where_their_sum_is_least)
{
  const double side = 0.100, height = side * sqrt (3) / 2;
  const ArrangeRange ranges[] = { range_at (0.050, 0, 0), range_at (0.050 + height, side / 2, 0), range_at (0.050 + height, -side / 2, 0),
                                  { 0.040, 0.200, -0.060, 0.060, -0.020, 0.030, 1 } };
  ArrangePart parts[4];
  const ArrangeLead leads[] = { { 3, 0, NULL, 0, NAN, 0 }, { 3, 1, NULL, 0, NAN, 0 }, { 2, 3, NULL, 0, NAN, 0 } };
  const ArrangeCase wanted = { .parts = parts, .part_count = 4, .leads = leads, .lead_count = 3, .other_mass = 0.1, .other_x = 0.1,
                               .forward_limit_x = 0.09, .aft_limit_x = 0.11, .aim_x = 0.1, .nose_x = 0, .tail_x = 0.3, .seconds = 100 };
  Arrangements made;

  for (size_t i = 0; i < 4; i++)
    parts[i] = (ArrangePart) { .length = 0.01, .width = 0.01, .height = 0.01, .ranges = &ranges[i], .range_count = 1,
                               .now = { 0.050 + height * 2 / 3, 0, 0 } };
  ck_assert_int_eq (arrange (&wanted, 1, &made), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_PROVED);
  ck_assert_double_eq_tol (made.found[0].needed[0] + made.found[0].needed[1] + made.found[0].needed[2], side * sqrt (3), 3e-6);
  ck_assert_double_eq_tol (made.found[0].places[3].x, 0.050 + height * 2 / 3, 1e-3);
  arrangements_clear (&made);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("balance arrange leads");
  TCase *tests = tcase_create ("leads");

  tcase_add_loop_test (tests, no_order_in_which_the_leads_reach_needs_less_ballast, 0, 30);
  tcase_add_test (tests, in_a_row_the_leads_are_the_shortest_of_every_whole_millimetre);
  tcase_add_test (tests, in_a_bay_no_place_of_a_fine_grid_has_shorter_leads);
  tcase_add_test (tests, a_receiver_with_three_leads_stands_where_their_sum_is_least);
  return run_suite (suite, tests);
}
