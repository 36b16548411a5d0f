#include <check.h>
#include <stdlib.h>
#include <string.h>
#include "arrange-stage.h"
#include "support/random.h"
#include "support/run-suite.h"

/* Everything here is compared with a search through all there is, whose best is known in closed form: in one choice of ranges and of who
 * stands ahead of whom, the places farthest ahead of all parts belong to one and the same arrangement (the longest paths). */

enum { PARTS = 4, BAYS = 2, PAIRS = PARTS * (PARTS - 1) / 2 };

typedef struct { double low[PARTS][3], high[PARTS][3]; } Boxes;
typedef struct { ArrangePart parts[PARTS]; ArrangeRange ranges[PARTS][BAYS]; ArrangeCase wanted; } Invented;

/* What was found through all: the least ballast, and without any the least distance from the aim. */
typedef struct { const ArrangeCase *wanted; double ballast, off; } Best;

static double
size_along (const ArrangePart *part, size_t axis)
{
  return axis == 0 ? part->length : axis == 1 ? part->width : part->height;
}

static double
coordinate (ArrangePlace place, size_t axis)
{
  return axis == 0 ? place.x : axis == 1 ? place.y : place.z;
}

static void
invent (Invented *self, unsigned seed)
{
  Random random = { 2654435761u * (seed + 1) };
  const Bay bays[BAYS] = { { 0.060, 0.060 + random_between (&random, 0.06, 0.1), 0.022, -0.015, 0.013, 1 },
                           { 0.165, 0.165 + random_between (&random, 0.05, 0.09), 0.017, -0.012, 0.010, 2 } };

  memset (self, 0, sizeof *self);
  for (size_t i = 0; i < PARTS; i++)
    {
      ArrangePart *part = &self->parts[i];

      *part = (ArrangePart) { .mass = random_between (&random, 0.008, 0.06), .length = random_between (&random, 0.015, 0.045),
                              .width = random_between (&random, 0.010, 0.030), .height = random_between (&random, 0.006, 0.020),
                              .ranges = self->ranges[i], .range_count = BAYS, .now = { 0.15, 0, 0 } };
      for (size_t k = 0; k < BAYS; k++)
        self->ranges[i][k] = range_in_bay (&bays[k], part->length, part->width, part->height);
    }
  /* By turns tail-heavy, nose-heavy, and about right. */
  self->wanted = (ArrangeCase) { .parts = self->parts, .part_count = PARTS, .other_mass = 0.150,
                                 .other_x = (double[]) { 0.190, 0.060, 0.120 }[seed % 3] + random_between (&random, 0, 0.02),
                                 .forward_limit_x = 0.115, .aft_limit_x = 0.130, .aim_x = random_between (&random, 0.115, 0.130),
                                 .nose_x = 0.005, .tail_x = 0.500, .clearance = 0.0015, .seconds = 100 };
}

/* The least coordinates, and the greatest, that keep behind ahead of `ways`; false when a box does not hold them. */
static bool
push (const ArrangeCase *wanted, Boxes *boxes, const int ways[PAIRS], size_t decided)
{
  for (size_t round = 0; round < PARTS; round++)
    for (size_t pair = 0, a = 0; a < PARTS; a++)
      for (size_t b = a + 1; b < PARTS && pair < decided; b++, pair++)
        {
          const size_t axis = (size_t) ways[pair] / 2, ahead = ways[pair] % 2 ? b : a, behind = ways[pair] % 2 ? a : b;
          const double apart = (size_along (&wanted->parts[a], axis) + size_along (&wanted->parts[b], axis)) / 2 + wanted->clearance;

          if (ways[pair] < 0)
            continue;
          boxes->low[behind][axis] = fmax (boxes->low[behind][axis], boxes->low[ahead][axis] + apart);
          boxes->high[ahead][axis] = fmin (boxes->high[ahead][axis], boxes->high[behind][axis] - apart);
          if (boxes->low[behind][axis] > boxes->high[behind][axis] + 1e-12 || boxes->high[ahead][axis] < boxes->low[ahead][axis] - 1e-12)
            return false;
        }
  return true;
}

static double
balance_of (const ArrangeCase *wanted, double places[PARTS][3], double *mass)
{
  double moment = wanted->other_mass * wanted->other_x;

  *mass = wanted->other_mass;
  for (size_t i = 0; i < PARTS; i++)
    {
      *mass += wanted->parts[i].mass;
      moment += wanted->parts[i].mass * places[i][0];
    }
  return moment / *mass;
}

/* All between the foremost and the rearmost balance is reached; W (x − x_t) / (x_t − x_b) brings what misses the band (FAA-H-8083-1). */
static void
weigh (Best *best, Boxes *boxes)
{
  const ArrangeCase *wanted = best->wanted;
  double mass, ballast = 0;
  const double foremost = balance_of (wanted, boxes->low, &mass), rearmost = balance_of (wanted, boxes->high, &mass);

  if (foremost > wanted->aft_limit_x)
    ballast = mass * (foremost - wanted->aft_limit_x) / (wanted->aft_limit_x - wanted->nose_x);
  else if (rearmost < wanted->forward_limit_x)
    ballast = mass * (wanted->forward_limit_x - rearmost) / (wanted->tail_x - wanted->forward_limit_x);
  best->ballast = fmin (best->ballast, ballast);
  if (ballast == 0)
    best->off = fmin (best->off, fmax (0, fmax (foremost - wanted->aim_x, wanted->aim_x - rearmost)));
}

static bool
are_apart (const ArrangeCase *wanted, const Boxes *boxes, size_t a, size_t b)
{
  for (size_t axis = 0; axis < 3; axis++)
    {
      const double apart = (size_along (&wanted->parts[a], axis) + size_along (&wanted->parts[b], axis)) / 2 + wanted->clearance;

      if (boxes->low[a][axis] - boxes->high[b][axis] >= apart || boxes->low[b][axis] - boxes->high[a][axis] >= apart)
        return true;
    }
  return false;
}

static void
try_ways (Best *best, const Boxes *boxes, int ways[PAIRS], size_t pair, size_t a, size_t b)
{
  Boxes pushed = *boxes;

  if (!push (best->wanted, &pushed, ways, pair))
    return;
  if (pair == PAIRS)
    {
      weigh (best, &pushed);
      return;
    }
  for (ways[pair] = are_apart (best->wanted, &pushed, a, b) ? -1 : 0; ways[pair] < 6; ways[pair]++)
    {
      try_ways (best, boxes, ways, pair + 1, b + 1 < PARTS ? a : a + 1, b + 1 < PARTS ? b + 1 : a + 2);
      if (ways[pair] < 0)
        break;
    }
}

/* Only places that differ from `taken` at part `moved` (or from nothing): `way` / 2 is the axis, 6 the room. */
static void
try_ranges (Best *best, const Arrangement *taken, size_t moved, int way)
{
  const ArrangeCase *wanted = best->wanted;

  for (size_t choice = 0; choice < 1u << PARTS; choice++)
    {
      Boxes boxes;
      int ways[PAIRS];
      bool empty = taken && way == 6 && (choice >> moved & 1) == taken->ranges[moved];

      for (size_t i = 0; i < PARTS; i++)
        {
          const ArrangeRange *range = &wanted->parts[i].ranges[choice >> i & 1];
          memcpy (boxes.low[i], (double[]) { range->x_from, range->y_from, range->z_from }, sizeof boxes.low[i]);
          memcpy (boxes.high[i], (double[]) { range->x_to, range->y_to, range->z_to }, sizeof boxes.high[i]);
          if (taken && i == moved && way < 6 && way % 2 == 0)
            boxes.low[i][way / 2] = fmax (boxes.low[i][way / 2], coordinate (taken->places[i], (size_t) way / 2) + 0.015);
          if (taken && i == moved && way < 6 && way % 2 == 1)
            boxes.high[i][way / 2] = fmin (boxes.high[i][way / 2], coordinate (taken->places[i], (size_t) way / 2) - 0.015);
          for (size_t axis = 0; axis < 3; axis++)
            empty = empty || boxes.low[i][axis] > boxes.high[i][axis];
        }
      if (!empty)
        try_ways (best, &boxes, ways, 0, 0, 1);
    }
}

static void
check_against (const Best *best, const ArrangeCase *wanted, const Arrangement *made)
{
  ck_assert_int_eq (made->status, ARRANGE_PROVED);
  ck_assert (arrangement_holds (wanted, made));
  ck_assert_msg (fabs (made->ballast - best->ballast) < 1e-7, "case %p: %.9f kg, not %.9f", (void *) wanted, made->ballast, best->ballast);
  if (best->ballast == 0)
    ck_assert_double_eq_tol (fabs (made->x - wanted->aim_x), best->off, 2e-7);
}

START_TEST (no_choice_of_ranges_and_order_needs_less_ballast_or_comes_nearer_to_the_aim)
{
  Invented invented;
  Best best = { &invented.wanted, INFINITY, INFINITY };
  Arrangements made;

  invent (&invented, (unsigned) _i);
  try_ranges (&best, NULL, 0, 0);
  ck_assert_int_eq (arrange (&invented.wanted, 1, &made), CORE_OK);
  if (isinf (best.ballast))
    ck_assert_int_eq (made.status, ARRANGE_IMPOSSIBLE);
  else
    check_against (&best, &invented.wanted, &made.found[0]);
  arrangements_clear (&made);
}
END_TEST

/* The bays are alike to port and starboard, so a mirror image counts as the same. */
START_TEST (no_other_arrangement_comes_before_the_second_best)
{
  Invented invented;
  Best best = { &invented.wanted, INFINITY, INFINITY };
  Arrangements made;

  invent (&invented, (unsigned) _i);
  for (size_t i = 0; i < PARTS; i++)
    for (size_t k = 0; k < BAYS; k++)
      invented.ranges[i][k].y_from = invented.ranges[i][k].y_to = -0.001;      /* along a line off the centre: no mirror image */
  ck_assert_int_eq (arrange (&invented.wanted, 2, &made), CORE_OK);
  if (made.count > 0)
    for (size_t i = 0; i < PARTS; i++)
      for (int way = 0; way <= 6; way++)
        try_ranges (&best, &made.found[0], i, way);
  ck_assert_uint_eq (made.count, (size_t) !isinf (best.ballast) + (made.count > 0));
  if (made.count == 2)
    check_against (&best, &invented.wanted, &made.found[1]);
  arrangements_clear (&made);
}
END_TEST

/* The first part cut across in two that are tied, of unlike mass, or with a strap within it that is: the same as the part itself with the
 * masses' common centre off its middle, which is a moment of all else. */
typedef struct { ArrangePart parts[PARTS + 1]; ArrangeRange ranges[BAYS]; ArrangeCase wanted; } Tied;

static void
tie (Tied *self, const Invented *invented, bool strapped)
{
  const ArrangePart *whole = &invented->parts[0];
  const double length = whole->length * (strapped ? 0.5 : 0.4), off = strapped ? 0.1 * whole->length : 0.3 * whole->length;
  ArrangePart *first = &self->parts[0], *second = &self->parts[PARTS];

  memcpy (self->parts, invented->parts, sizeof invented->parts);
  memcpy (self->ranges, invented->ranges[0], sizeof self->ranges);
  self->wanted = invented->wanted;
  self->wanted.parts = self->parts;
  self->wanted.part_count = PARTS + 1;
  *second = *first;
  first->tie = second->tie = 7;
  second->length = length;
  second->mass = whole->mass / 4;
  first->mass -= second->mass;
  second->now.x += off;
  second->ranges = self->ranges;
  second->height *= strapped ? 0.7 : 1;
  if (!strapped)
    {
      first->length -= length;
      first->now.x -= length / 2;
    }
  for (size_t k = 0; k < BAYS; k++)
    {
      self->ranges[k].x_from += second->now.x - whole->now.x;
      self->ranges[k].x_to += second->now.x - whole->now.x;
    }
}

/* Of both parts' middles from the middle of the whole. */
static double
moment_of_tie (const Tied *tied, const Invented *invented)
{
  const double middle = invented->parts[0].now.x;

  return tied->parts[0].mass * (tied->parts[0].now.x - middle) + tied->parts[PARTS].mass * (tied->parts[PARTS].now.x - middle);
}

START_TEST (parts_that_are_tied_stand_as_one_part_would)
{
  const bool strapped = _i % 2;
  Invented invented;
  Tied tied;
  Best best = { &invented.wanted, INFINITY, INFINITY };
  Arrangements made;
  ArrangeRange moved[BAYS];

  invent (&invented, (unsigned) _i);
  tie (&tied, &invented, strapped);
  memcpy (moved, invented.ranges[0], sizeof moved);
  for (size_t k = 0; k < BAYS; k++)
    {
      moved[k].x_from += tied.parts[0].now.x - invented.parts[0].now.x;
      moved[k].x_to += tied.parts[0].now.x - invented.parts[0].now.x;
    }
  tied.parts[0].ranges = moved;
  invented.wanted.other_x += moment_of_tie (&tied, &invented) / invented.wanted.other_mass;
  try_ranges (&best, NULL, 0, 0);
  ck_assert_int_eq (arrange (&tied.wanted, 1, &made), CORE_OK);
  if (isinf (best.ballast))
    ck_assert_int_eq (made.status, ARRANGE_IMPOSSIBLE);
  else
    check_against (&best, &tied.wanted, &made.found[0]);
  arrangements_clear (&made);
}
END_TEST

/* One of the two is held where it is, or the only room is the other's alone. */
START_TEST (parts_that_are_tied_and_have_no_place_together_are_named)
{
  Invented invented;
  Tied tied;
  ArrangeRange here;
  ArrangeLimit limits[4];
  size_t count;

  invent (&invented, 3);
  tie (&tied, &invented, false);
  here = (ArrangeRange) { 0.4, 0.4, 0, 0, 0, 0, 9 };
  tied.parts[PARTS].ranges = &here;
  tied.parts[PARTS].range_count = 1;
  ck_assert_int_eq (arrange_limits (&tied.wanted, limits, 4, &count), CORE_OK);
  ck_assert_uint_eq (count, 1);
  ck_assert_int_eq (limits[0].kind, ARRANGE_TIED);
  ck_assert (limits[0].alone);
  ck_assert_uint_eq (limits[0].part_count, 2);
  ck_assert_uint_eq (limits[0].parts[0], 0);
  ck_assert_uint_eq (limits[0].parts[1], PARTS);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("balance arrange search");
  TCase *tests = tcase_create ("search");

  tcase_add_loop_test (tests, no_choice_of_ranges_and_order_needs_less_ballast_or_comes_nearer_to_the_aim, 0, 24);
  tcase_add_loop_test (tests, no_other_arrangement_comes_before_the_second_best, 0, 12);
  tcase_add_loop_test (tests, parts_that_are_tied_stand_as_one_part_would, 0, 24);
  tcase_add_test (tests, parts_that_are_tied_and_have_no_place_together_are_named);
  return run_suite (suite, tests);
}
