#include <check.h>
#include <stdlib.h>
#include "arrange-stage.h"
#include "support/run-suite.h"

static const ArrangeRange motor_at = { 0.020, 0.020, 0, 0, 0, 0, 1 };

/* A motor in the nose, a controller and a pack in one bay from 140 mm on; the balance lies within reach of the nose's ballast. */
typedef struct { ArrangePart parts[3]; ArrangeRange ranges[2]; ArrangeLead lead; ArrangeCase wanted; } Racer;

static void
set_racer (Racer *self, double bay_length, double lead_length)
{
  const Bay bay = { 0.140, 0.140 + bay_length, 0.018, -0.010, 0.010, 4 };

  *self = (Racer) {
    .parts = { { .mass = 0.030, .length = 0.020, .width = 0.020, .height = 0.020, .ranges = &motor_at, .range_count = 1 },
               { .mass = 0.012, .length = 0.030, .width = 0.020, .height = 0.012 },
               { .mass = 0.040, .length = 0.060, .width = 0.030, .height = 0.016 } },
    .lead = { .from = 0, .to = 1, .length = lead_length } };
  for (size_t i = 0; i < 2; i++)
    {
      const ArrangePart *part = &self->parts[i + 1];

      self->ranges[i] = range_in_bay (&bay, part->length, part->width, part->height);
      self->parts[i + 1].ranges = &self->ranges[i];
      self->parts[i + 1].range_count = 1;
    }
  self->wanted = (ArrangeCase) { .parts = self->parts, .part_count = 3, .leads = &self->lead, .lead_count = 1, .other_mass = 0.1,
                                 .other_x = 0.120, .forward_limit_x = 0.09, .aft_limit_x = 0.11, .aim_x = 0.1, .nose_x = 0, .tail_x = 0.5,
                                 .clearance = 0.002, .seconds = 60 };
}

static ArrangeLimit
only_limit (const ArrangeCase *wanted)
{
  ArrangeLimit limits[4];
  Arrangements made;
  size_t count;

  ck_assert_int_eq (arrange (wanted, 1, &made), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_IMPOSSIBLE);
  ck_assert_uint_eq (made.count, 0);
  ck_assert_int_eq (arrange_limits (wanted, limits, 4, &count), CORE_OK);
  ck_assert_uint_eq (count, 1);
  return limits[0];
}

/* 90 mm of lead; the bay begins at 140 mm, so the controller's centre at 155 mm, 135 mm from the motor at 20 mm. */
START_TEST (a_lead_that_does_not_reach_its_bay_is_named_with_what_it_needs)
{
  Racer racer;
  ArrangeLimit limit;

  set_racer (&racer, 0.110, 0.090);
  limit = only_limit (&racer.wanted);
  ck_assert_int_eq (limit.kind, ARRANGE_LEAD_TOO_SHORT);
  ck_assert (limit.alone);
  ck_assert_uint_eq (limit.lead, 0);
  ck_assert_double_eq_tol (limit.needed, 0.135, 1e-9);
  ck_assert_double_eq_tol (limit.had, 0.090, 1e-9);
  ck_assert_double_eq_tol (limit.nearest[1].x, 0.155, 1e-9);
  ck_assert_uint_eq (limit.parts[0], 0);
  ck_assert_uint_eq (limit.parts[1], 1);
}
END_TEST

/* 60 mm and 30 mm with 2 mm between them do not go into 85 mm; beside or above each other they do not go either. */
START_TEST (a_bay_that_is_too_full_is_named_with_its_parts_and_lengths)
{
  Racer racer;
  ArrangeLimit limit;

  set_racer (&racer, 0.085, NAN);
  limit = only_limit (&racer.wanted);
  ck_assert_int_eq (limit.kind, ARRANGE_TOO_FULL);
  ck_assert (limit.alone);
  ck_assert_uint_eq (limit.room, 4);
  ck_assert_uint_eq (limit.part_count, 2);
  ck_assert_uint_eq (limit.parts[0], 1);
  ck_assert_uint_eq (limit.parts[1], 2);
  ck_assert_double_eq_tol (limit.needed, 0.092, 1e-9);
  ck_assert_double_eq_tol (limit.had, 0.085, 1e-9);
}
END_TEST

START_TEST (the_same_bay_a_little_longer_has_nothing_to_name)
{
  Racer racer;
  ArrangeLimit limit;
  Arrangements made;
  size_t count = 42;

  set_racer (&racer, 0.092, NAN);
  ck_assert_int_eq (arrange (&racer.wanted, 1, &made), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_PROVED);
  ck_assert (arrangement_holds (&racer.wanted, &made.found[0]));
  arrangements_clear (&made);
  ck_assert_int_eq (arrange_limits (&racer.wanted, &limit, 1, &count), CORE_OK);
  ck_assert_uint_eq (count, 0);
}
END_TEST

/* A bay of 50 mm for a pack of 60 mm. */
START_TEST (a_part_too_long_for_its_bay_is_named_with_what_it_lacks)
{
  Racer racer;
  ArrangeLimit limit;

  set_racer (&racer, 0.050, NAN);
  limit = only_limit (&racer.wanted);
  ck_assert_int_eq (limit.kind, ARRANGE_NO_ROOM);
  ck_assert_uint_eq (limit.parts[0], 2);
  ck_assert_int_eq (limit.axis, 0);
  ck_assert_double_eq_tol (limit.needed, 0.010, 1e-9);
  ck_assert_uint_eq (limit.room, 4);
}
END_TEST

START_TEST (a_part_without_any_range_has_no_room)
{
  Racer racer;
  ArrangeLimit limit;

  set_racer (&racer, 0.110, NAN);
  racer.parts[1].range_count = 0;
  limit = only_limit (&racer.wanted);
  ck_assert_int_eq (limit.kind, ARRANGE_NO_ROOM);
  ck_assert_uint_eq (limit.parts[0], 1);
  ck_assert (isinf (limit.needed));
}
END_TEST

/* All stand behind 100 mm at the foremost and the ballast's place too; the foremost balance is the parts' at their front. */
START_TEST (ballast_on_the_wrong_side_of_the_band_is_named_with_what_is_reached)
{
  Racer racer;
  ArrangeLimit limit;

  set_racer (&racer, 0.110, NAN);
  racer.wanted.forward_limit_x = 0.05;
  racer.wanted.aft_limit_x = 0.06;
  racer.wanted.nose_x = 0.07;
  limit = only_limit (&racer.wanted);
  ck_assert_int_eq (limit.kind, ARRANGE_BAND);
  ck_assert_double_eq_tol (limit.needed, (0.030 * 0.020 + 0.012 * 0.155 + 0.040 * 0.170 + 0.1 * 0.120) / 0.182, 1e-9);
  ck_assert_double_eq_tol (limit.had, 0.06, 1e-9);
}
END_TEST

/* Either may stand in the bay's front. The controller there: leads of 135 mm and 182 mm; the pack there: 197 mm and 150 mm. With 140 mm
 * and 170 mm the second lacks 12 mm in the one case, the first 57 mm in the other. */
START_TEST (leads_that_contradict_only_together_are_named_by_what_would_do)
{
  Racer racer;
  ArrangeLimit limit;
  ArrangeLead leads[] = { { .from = 0, .to = 1, .length = 0.140 }, { .from = 0, .to = 2, .length = 0.170 } };

  set_racer (&racer, 0.110, NAN);
  racer.wanted.leads = leads;
  racer.wanted.lead_count = 2;
  limit = only_limit (&racer.wanted);
  ck_assert_int_eq (limit.kind, ARRANGE_LEAD_TOO_SHORT);
  ck_assert (!limit.alone);
  ck_assert_uint_eq (limit.lead, 1);
  ck_assert_double_eq_tol (limit.needed, 0.182, 2e-5);
  ck_assert_double_eq_tol (limit.had, 0.170, 1e-9);

  leads[1].length = limit.needed + 1e-4;
  Arrangements made;
  ck_assert_int_eq (arrange (&racer.wanted, 1, &made), CORE_OK);
  ck_assert_int_eq (made.status, ARRANGE_PROVED);
  arrangements_clear (&made);
}
END_TEST

/* Three blocks of 20 × 30 mm in a bay of 55 × 55 mm: there is area for five, but only two stand beside each other. A fourth, flat part
 * finds room above them and is not named. */
START_TEST (parts_that_cannot_stand_apart_are_named_and_none_that_can_be_spared)
{
  const ArrangeRange in[] = { { 0.115, 0.140, -0.0175, 0.0175, 0, 0, 7 }, { 0.110, 0.145, -0.0175, 0.0175, 0.020, 0.020, 7 } };
  const ArrangePart block = { .mass = 0.02, .length = 0.030, .width = 0.020, .height = 0.010, .ranges = &in[0], .range_count = 1 };
  ArrangePart parts[] = { block, block, block, { .mass = 0.01, .length = 0.020, .width = 0.020, .height = 0.010, .ranges = &in[1],
                                                 .range_count = 1 } };
  const ArrangeCase wanted = { .parts = parts, .part_count = 4, .other_mass = 0.1, .other_x = 0.1, .forward_limit_x = 0.1,
                               .aft_limit_x = 0.12, .aim_x = 0.11, .nose_x = 0, .tail_x = 0.4, .seconds = 60 };
  ArrangeLimit limit;

  limit = only_limit (&wanted);
  ck_assert_int_eq (limit.kind, ARRANGE_TOO_FULL);
  ck_assert_uint_eq (limit.room, 7);
  ck_assert_uint_eq (limit.part_count, 3);
  for (size_t i = 0; i < 3; i++)
    ck_assert_uint_eq (limit.parts[i], i);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("balance arrange limits");
  TCase *tests = tcase_create ("limits");

  tcase_add_test (tests, a_lead_that_does_not_reach_its_bay_is_named_with_what_it_needs);
  tcase_add_test (tests, a_bay_that_is_too_full_is_named_with_its_parts_and_lengths);
  tcase_add_test (tests, the_same_bay_a_little_longer_has_nothing_to_name);
  tcase_add_test (tests, a_part_too_long_for_its_bay_is_named_with_what_it_lacks);
  tcase_add_test (tests, a_part_without_any_range_has_no_room);
  tcase_add_test (tests, ballast_on_the_wrong_side_of_the_band_is_named_with_what_is_reached);
  tcase_add_test (tests, leads_that_contradict_only_together_are_named_by_what_would_do);
  tcase_add_test (tests, parts_that_cannot_stand_apart_are_named_and_none_that_can_be_spared);
  return run_suite (suite, tests);
}
