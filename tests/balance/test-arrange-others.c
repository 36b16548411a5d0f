#include <check.h>
#include <stdlib.h>
#include <threads.h>
#include "arrange-stage.h"
#include "balance/arrange-order.h"
#include "support/run-suite.h"

/* A body of two bays with a motor in its nose, a receiver, and two servos of one kind with leads alike. */
enum { MOTOR, RECEIVER, PORT_SERVO, STARBOARD_SERVO, PACK, PARTS };

static const double size[PARTS][3] = { { 0.025, 0.028, 0.028 }, { 0.032, 0.021, 0.012 }, { 0.023, 0.012, 0.024 }, { 0.023, 0.012, 0.024 },
                                       { 0.060, 0.033, 0.017 } };
static const double mass[PARTS] = { 0.030, 0.009, 0.011, 0.011, 0.055 };
static const ArrangeRange motor_at = { 0.015, 0.015, 0, 0, 0, 0, 9 };

typedef struct { ArrangePart parts[PARTS]; ArrangeRange ranges[PARTS][2]; ArrangeLead leads[4]; ArrangeCase wanted; } Body;

static void
set_body (Body *self)
{
  const Bay bays[] = { { 0.035, 0.110, 0.024, -0.020, 0.016, 1 }, { 0.113, 0.200, 0.021, -0.020, 0.014, 2 } };

  *self = (Body) { .leads = { { RECEIVER, PORT_SERVO, NULL, 0, 0.150, 0.01 }, { STARBOARD_SERVO, RECEIVER, NULL, 0, 0.150, 0.01 },
                              { MOTOR, PACK, NULL, 0, 0.160, 0 }, { PACK, RECEIVER, NULL, 0, NAN, 0 } } };
  for (size_t i = 0; i < PARTS; i++)
    {
      self->parts[i] = (ArrangePart) { .mass = mass[i], .length = size[i][0], .width = size[i][1], .height = size[i][2],
                                       .ranges = i == MOTOR ? &motor_at : self->ranges[i], .range_count = i == MOTOR ? 1 : 2,
                                       .now = { 0.12, 0, 0 } };
      for (size_t k = 0; k < 2; k++)
        self->ranges[i][k] = range_in_bay (&bays[k], size[i][0], size[i][1], size[i][2]);
    }
  self->wanted = (ArrangeCase) { .parts = self->parts, .part_count = PARTS, .leads = self->leads, .lead_count = 4, .other_mass = 0.2,
                                 .other_x = 0.140, .forward_limit_x = 0.105, .aft_limit_x = 0.115, .aim_x = 0.110, .nose_x = 0.002,
                                 .tail_x = 0.5, .clearance = 0.002, .seconds = INFINITY };
}

/* Whether the servos, exchanged or not, and all else stand within 15 mm in the same rooms. `across` −1: the mirror image. */
static bool
are_the_same (const Body *body, const Arrangement *a, const Arrangement *b, bool exchanged, double across)
{
  for (size_t i = 0; i < PARTS; i++)
    {
      const size_t k = exchanged && i == PORT_SERVO ? STARBOARD_SERVO : exchanged && i == STARBOARD_SERVO ? PORT_SERVO : i;
      const ArrangePlace at = a->places[i], other = b->places[k];

      if (fabs (at.x - other.x) >= 0.015 - 2e-6 || fabs (at.y - across * other.y) >= 0.015 - 2e-6 || fabs (at.z - other.z) >= 0.015 - 2e-6
          || body->parts[i].ranges[a->ranges[i]].room != body->parts[k].ranges[b->ranges[k]].room)
        return false;
    }
  return true;
}

START_TEST (each_of_three_is_another_arrangement_and_none_better_than_the_one_before)
{
  Body body;
  Arrangements made;

  set_body (&body);
  ck_assert_int_eq (arrange (&body.wanted, 3, &made), CORE_OK);
  ck_assert_uint_eq (made.count, 3);
  for (size_t i = 0; i < 3; i++)
    {
      ck_assert_int_eq (made.found[i].status, ARRANGE_PROVED);
      ck_assert (arrangement_holds (&body.wanted, &made.found[i]));
      for (size_t k = 0; k < i; k++)
        {
          ck_assert (made.found[i].ballast >= made.found[k].ballast - 1e-7);
          ck_assert (!are_the_same (&body, &made.found[i], &made.found[k], false, 1));
          ck_assert (!are_the_same (&body, &made.found[i], &made.found[k], false, -1));
        }
    }
  arrangements_clear (&made);
}
END_TEST

/* Servo one stands aft of servo two today; exchanged they would be moved farther. */
START_TEST (parts_of_one_kind_stand_where_they_are_moved_least)
{
  Body body;
  Arrangements made;

  for (int turned = 0; turned < 2; turned++)
    {
      set_body (&body);
      /* Narrow, so that the servos stand one behind the other. */
      for (size_t i = PORT_SERVO; i <= STARBOARD_SERVO; i++)
        for (size_t k = 0; k < 2; k++)
          body.ranges[i][k].y_from = body.ranges[i][k].y_to = 0;
      body.parts[PORT_SERVO].now.x = turned ? 0.05 : 0.19;
      body.parts[STARBOARD_SERVO].now.x = turned ? 0.19 : 0.05;
      ck_assert_int_eq (arrange (&body.wanted, 1, &made), CORE_OK);
      ck_assert_int_eq (made.status, ARRANGE_PROVED);
      ck_assert (arrangement_holds (&body.wanted, &made.found[0]));
      if (turned)
        ck_assert_double_lt (made.found[0].places[PORT_SERVO].x, made.found[0].places[STARBOARD_SERVO].x - 0.024);
      else
        ck_assert_double_gt (made.found[0].places[PORT_SERVO].x, made.found[0].places[STARBOARD_SERVO].x + 0.024);
      arrangements_clear (&made);
    }
}
END_TEST

static double
sum_of_leads (const Arrangement *made)
{
  return made->needed[0] + made->needed[1] + made->needed[2] + made->needed[3];
}

/* The same case with the servos' masses a millionth of a gram apart: then each order is searched. */
START_TEST (searching_one_order_of_parts_of_a_kind_misses_nothing)
{
  Body body, apart;
  Arrangements made, all;

  set_body (&body);
  body.wanted.other_x = 0.190;
  set_body (&apart);
  apart.wanted.other_x = 0.190;
  apart.parts[PORT_SERVO].mass += 1e-9;
  ck_assert_int_eq (arrange (&body.wanted, 1, &made), CORE_OK);
  ck_assert_int_eq (arrange (&apart.wanted, 1, &all), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_PROVED);
  ck_assert_int_eq (all.status, ARRANGE_PROVED);
  ck_assert_double_gt (made.found[0].ballast, 0.001);
  ck_assert_double_eq_tol (made.found[0].ballast, all.found[0].ballast, 2e-7);
  ck_assert_double_eq_tol (sum_of_leads (&made.found[0]), sum_of_leads (&all.found[0]), 1e-3);
  arrangements_clear (&made);
  arrangements_clear (&all);
}
END_TEST

START_TEST (without_time_for_any_nothing_is_said_to_be_impossible)
{
  Body body;
  Arrangements made;
  ArrangeLimit limit;
  size_t count = 42;

  set_body (&body);
  body.wanted.seconds = 1e-9;
  ck_assert_int_eq (arrange (&body.wanted, 1, &made), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_NOT_FOUND);
  ck_assert_uint_eq (made.count, 0);
  ck_assert_int_eq (arrange_limits (&body.wanted, &limit, 1, &count), CORE_OK);
  ck_assert_uint_eq (count, 0);
}
END_TEST

enum { MANY = 12 };
/* Twelve parts in one bay, beside and above each other, each with a lead to the one before: that takes minutes to prove. */
typedef struct { ArrangePart parts[MANY]; ArrangeRange ranges[MANY]; ArrangeLead leads[MANY - 1]; ArrangeCase wanted; } Crowd;

static void
set_crowd (Crowd *self, double other_x)
{
  const Bay bay = { 0.05, 0.50, 0.030, -0.030, 0.030, 1 };

  for (size_t i = 0; i < MANY; i++)
    {
      const double long_by = 0.020 + 0.0017 * (double) (i * 7 % 11), wide_by = 0.014 + 0.0013 * (double) (i * 5 % 13);

      self->ranges[i] = range_in_bay (&bay, long_by, wide_by, wide_by);
      self->parts[i] = (ArrangePart) { .mass = 0.004 + 0.0031 * (double) (i * 3 % 7), .length = long_by, .width = wide_by,
                                       .height = wide_by, .ranges = &self->ranges[i], .range_count = 1, .now = { 0.2, 0, 0 } };
      if (i > 0)
        self->leads[i - 1] = (ArrangeLead) { .from = i, .to = i / 2, .length = NAN };
    }
  self->wanted = (ArrangeCase) { .parts = self->parts, .part_count = MANY, .leads = self->leads, .lead_count = MANY - 1, .other_mass = 0.3,
                                 .other_x = other_x, .forward_limit_x = 0.10, .aft_limit_x = 0.11, .aim_x = 0.105, .nose_x = 0,
                                 .tail_x = 0.8, .clearance = 0.001, .seconds = 2 };
}

START_TEST (when_the_time_ends_the_best_so_far_is_given_and_how_much_better_it_might_be)
{
  Crowd crowd;
  Arrangements made;

  set_crowd (&crowd, 0.4);
  ck_assert_int_eq (arrange (&crowd.wanted, 1, &made), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_BEST_FOUND);
  ck_assert (arrangement_holds (&crowd.wanted, &made.found[0]));
  ck_assert_double_gt (made.found[0].ballast, 0.001);
  ck_assert_double_gt (made.found[0].gap, 0);
  ck_assert_double_lt (made.found[0].gap, 0.9);
  arrangements_clear (&made);
}
END_TEST

/* Two arrangements of one part with one lead that cannot be better than in the one thing named. */
static const struct { const char *because; double ballast[2], x[2], needed[2]; } found_late[] = {
  { "less ballast, though farther from the aim",   { 0.012, 0.010 },  { 0.111, 0.119 },  { 0.100, 0.300 } },
  { "nearer to the aim, though with longer leads", { 0.010, 0.010 },  { 0.116, 0.114 },  { 0.100, 0.300 } },
  { "shorter leads",                               { 0.010, 0.010 },  { 0.114, 0.114 },  { 0.300, 0.299 } },
};

START_TEST (what_is_found_last_comes_first_when_it_is_the_best)
{
  const ArrangePart part = { .mass = 0.1 };
  const ArrangeLead lead = { .length = NAN };
  const ArrangeCase wanted = { .parts = &part, .part_count = 1, .leads = &lead, .lead_count = 1, .aim_x = 0.110 };
  ArrangePlace at = { 0 };
  double needed[2] = { found_late[_i].needed[0], found_late[_i].needed[1] };
  Arrangements made = { .status = ARRANGE_BEST_FOUND, .count = 2 };

  for (size_t i = 0; i < 2; i++)
    made.found[i] = (Arrangement) { .status = i ? ARRANGE_PROVED : ARRANGE_BEST_FOUND, .ballast = found_late[_i].ballast[i],
                                    .x = found_late[_i].x[i], .places = &at, .needed = &needed[i] };
  for (int again = 0; again < 2; again++)
    {
      arrangements_put_best_first (&wanted, &made);
      ck_assert_msg (made.found[0].needed == &needed[1], "%s", found_late[_i].because);
      ck_assert_int_eq (made.status, ARRANGE_PROVED);
    }
}
END_TEST

/* Each time a little later. */
static bool
until_asked (double done, void *data)
{
  return --*(int *) data > 0;
}

START_TEST (wherever_it_is_cancelled_nothing_is_left_behind)
{
  Crowd crowd;
  Arrangements made = { .count = 42 };
  int left = _i + 1;

  set_crowd (&crowd, _i % 2 ? 0.4 : 0.07);
  crowd.wanted.seconds = INFINITY;
  crowd.wanted.goes_on = until_asked;
  crowd.wanted.data = &left;
  ck_assert_int_eq (arrange (&crowd.wanted, 3, &made), CORE_CANCELLED);
  ck_assert_int_eq (left, 0);
  ck_assert_uint_eq (made.count, 42);
}
END_TEST

static int
arrange_body (void *data)
{
  Body *body = data;
  Arrangements made;
  CoreStatus status = arrange (&body->wanted, 1, &made);

  body->parts[PACK].now.x = status || !made.count ? NAN : made.found[0].places[PACK].x;
  arrangements_clear (&made);
  return status;
}

START_TEST (several_threads_arrange_at_once_and_each_finds_the_same)
{
  enum { THREADS = 4 };
  Body bodies[THREADS];
  thrd_t threads[THREADS];

  for (size_t i = 0; i < THREADS; i++)
    {
      set_body (&bodies[i]);
      ck_assert_int_eq (thrd_create (&threads[i], arrange_body, &bodies[i]), thrd_success);
    }
  for (size_t i = 0; i < THREADS; i++)
    {
      int status;

      ck_assert_int_eq (thrd_join (threads[i], &status), thrd_success);
      ck_assert_int_eq (status, CORE_OK);
      ck_assert_double_eq (bodies[i].parts[PACK].now.x, bodies[0].parts[PACK].now.x);
    }
}
END_TEST

static bool
share_is_told (double done, void *data)
{
  double *last = data;

  ck_assert (done >= 0 && done <= 1);
  *last = done;
  return true;
}

START_TEST (how_much_is_done_is_told_as_a_share)
{
  Body body;
  Arrangements made;
  double last = -1;

  set_body (&body);
  body.wanted.goes_on = share_is_told;
  body.wanted.data = &last;
  ck_assert_int_eq (arrange (&body.wanted, 2, &made), CORE_OK);
  ck_assert_double_ge (last, 0);
  arrangements_clear (&made);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("balance arrange others");
  TCase *tests = tcase_create ("others");

  tcase_add_test (tests, each_of_three_is_another_arrangement_and_none_better_than_the_one_before);
  tcase_add_test (tests, parts_of_one_kind_stand_where_they_are_moved_least);
  tcase_add_test (tests, searching_one_order_of_parts_of_a_kind_misses_nothing);
  tcase_add_test (tests, without_time_for_any_nothing_is_said_to_be_impossible);
  tcase_add_test (tests, when_the_time_ends_the_best_so_far_is_given_and_how_much_better_it_might_be);
  tcase_add_loop_test (tests, what_is_found_last_comes_first_when_it_is_the_best, 0, sizeof found_late / sizeof *found_late);
  tcase_add_loop_test (tests, wherever_it_is_cancelled_nothing_is_left_behind, 0, 12);
  tcase_add_test (tests, several_threads_arrange_at_once_and_each_finds_the_same);
  tcase_add_test (tests, how_much_is_done_is_told_as_a_share);
  return run_suite (suite, tests);
}
