#include <check.h>
#include "geometry/planform.h"
#include "support/changed.h"
#include "support/random.h"
#include "support/run-suite.h"
#include "support/shapes.h"

enum { LONGEST = 9, STEPS = 40 };

/* Places fall on a grid half the time, so that nodes meet, edges overlap and handles vanish as they do under a snapping hand. */
static Point
random_place (Random *random)
{
  const Point place = { random_between (random, -50, 250), random_between (random, -20, 400) };

  return random_below (random, 2) ? place : (Point) { 50 * round (place.x / 50), 50 * round (place.y / 50) };
}

static Segment
random_segment (Random *random, Point from)
{
  const Point to = random_place (random), control1 = random_place (random), control2 = random_place (random);
  const Point along = { fabs (to.x - from.x), fabs (to.y - from.y) };

  switch (random_below (random, 4))
    {
    case 0:
      return segment_curve (control1, control2, to);
    case 1:
      if (along.x > 0 && along.y > 0)
        return segment_arc ((Point) { to.x, from.y }, along.x, along.y, to);
      return segment_line (to);
    case 2:                           /* an arc of less or more than a quarter, through both ends on a circle */
      if (along.x > 0 || along.y > 0)
        {
          const Point middle = point_mix (from, to, 0.5), half = point_sub (to, middle);
          const double aside = random_between (random, -2, 2);
          const double radius = hypot (half.x, half.y) * hypot (1, aside);
          return segment_arc ((Point) { middle.x - aside * half.y, middle.y + aside * half.x }, radius, radius, to);
        }
      return segment_line (to);
    default:
      return segment_line (to);
    }
}

static Outline *
random_outline (Random *random)
{
  const size_t count = 1 + random_below (random, LONGEST);
  const Point start = random_place (random);
  Segment segments[LONGEST];
  Outline *made = NULL;

  for (size_t i = 0; i < count; i++)
    segments[i] = random_segment (random, i ? segments[i - 1].to : start);
  ck_assert_int_eq (outline_new (start, segments, count, NULL, &made), CORE_OK);
  return made;
}

/* One of all changes, with arguments of every kind. */
static CoreStatus
random_change (Random *random, const Outline *outline, Outline **made)
{
  const size_t node = random_below (random, outline_node_count (outline)), segment = random_below (random, outline_segment_count (outline));
  const Point place = random_place (random), scale = { random_between (random, 0.3, 3), random_between (random, 0.3, 3) };
  const Segment added = random_segment (random, outline_node (outline, outline_segment_count (outline)));

  switch (random_below (random, 12))
    {
    case 0:  return outline_with_node_at (outline, node, place, made);
    case 1:  return outline_with_handle_at (outline, node, HANDLE_BEFORE, place, made);
    case 2:  return outline_with_handle_at (outline, node, HANDLE_AFTER, place, made);
    case 3:  return outline_with_node_kind (outline, node, (NodeKind) random_below (random, 3), made);
    case 4:  return outline_with_segment_kind (outline, segment, (SegmentKind) random_below (random, 3), made);
    case 5:  return outline_with_node_inserted (outline, segment, random_between (random, 0, 1), made);
    case 6:  return outline_without_node (outline, node, made);
    case 7:  return outline_with_node_split (outline, node, random_between (random, 0, 90), made);
    case 8:  return outline_with_nodes_joined (outline, segment, made);
    case 9:  return outline_with_segment_added (outline, &added, made);
    case 10: return outline_mapped (outline, scale, (Point) { -scale.x, 2 * scale.y }, made);
    default: return outline_reversed (outline, made);
    }
}

static void
assert_finite_and_consistent (const Outline *outline)
{
  const Box box = outline_bounds (outline);

  ck_assert (point_is_finite (box.min) && point_is_finite (box.max));
  for (size_t i = 0; i < outline_segment_count (outline); i++)
    for (double t = 0; t <= 1; t += 0.25)
      {
        const Point place = segment_at (outline_node (outline, i), outline_segment (outline, i), t);
        const double slack = 1e-9 * (1 + fabs (box.max.x) + fabs (box.max.y) + fabs (box.min.x) + fabs (box.min.y));

        ck_assert (place.x >= box.min.x - slack && place.x <= box.max.x + slack     /* false for what is no number */
                   && place.y >= box.min.y - slack && place.y <= box.max.y + slack);
      }
}

/* Whatever the outline is, it is measured or refused; measured, the figures keep their promises to one another. */
static void
assert_measured_or_refused (const Outline *outline, PlanformSides sides)
{
  Planform planform;
  AreaMoments moments;
  double stations[64];
  const CoreStatus status = planform_measure (outline, sides, &planform);
  const size_t breaks = planform_breaks (outline, sides, stations, 64);

  ck_assert_int_eq (planform_moments (outline, sides, &moments), status);
  ck_assert ((status == CORE_OK) == (breaks > 0));
  if (status)
    return;
  ck_assert (isfinite (planform.area) && planform.area > 0 && isfinite (planform.mac_leading_edge_x) && isfinite (planform.mac_station));
  ck_assert_double_eq_tol (moments.area, planform.area, 1e-6 * planform.area);
  ck_assert_double_ge (planform.mac, planform.area / planform.span * (1 - 1e-6));
  for (size_t i = 0; i < breaks && i < 64; i++)
    {
      StationCut cut;
      const CoreStatus cut_status = planform_cut (outline, sides, stations[i], &cut);

      ck_assert_int_eq (cut_status, CORE_OK);
      ck_assert (cut.chord >= 0 && cut.leading_x <= cut.trailing_x && cut.chord <= (cut.trailing_x - cut.leading_x) * (1 + 1e-6) + 1e-6);
      ck_assert (i == 0 || stations[i] > stations[i - 1]);
    }
}

static void
assert_change_is_sound (const Outline *old, CoreStatus status, const Outline *made)
{
  ck_assert_msg (status == CORE_OK || status == CORE_OUT_OF_RANGE || status == CORE_TOO_FEW_NODES || status == CORE_OFF_ITS_ARC,
                 "%s", core_status_sentence (status));
  ck_assert ((status == CORE_OK) == (made != NULL));
  assert_finite_and_consistent (old);
  if (made)
    assert_finite_and_consistent (made);
}

START_TEST (any_walk_through_the_changes_stays_finite_and_leaves_the_old_outline)
{
  Random random = { .state = (uint64_t) _i * 2654435761u + 1 };
  Outline *outline = _i % 2 ? mixed_wing () : random_outline (&random);

  for (int step = 0; step < STEPS; step++)
    {
      Outline *made = NULL, *copy = outline_copied (outline);
      const CoreStatus status = random_change (&random, outline, &made);

      ck_assert (outline_equal (outline, copy));
      outline_unref (copy);
      assert_change_is_sound (outline, status, made);
      if (!made)
        continue;
      for (PlanformSides sides = PLANFORM_CARRIED; sides <= PLANFORM_SINGLE; sides++)
        assert_measured_or_refused (made, sides);
      outline_unref (outline);
      outline = made;
    }
  outline_unref (outline);
}
END_TEST

/* Insertion keeps the shape, so whatever is found before is found after. */
START_TEST (a_node_inserted_into_any_outline_changes_neither_its_fault_nor_its_size)
{
  Random random = { .state = (uint64_t) _i * 40503u + 7 };
  Outline *outline = random_outline (&random), *more = NULL;
  Planform before, after;

  ck_assert_int_eq (outline_with_node_inserted (outline, random_below (&random, outline_segment_count (outline)),
                                                random_between (&random, 0.05, 0.95), &more), CORE_OK);
  ck_assert_int_eq (outline_check (outline, NULL), outline_check (more, NULL));
  if (planform_measure (outline, PLANFORM_SINGLE, &before) == CORE_OK)
    {
      ck_assert_int_eq (planform_measure (more, PLANFORM_SINGLE, &after), CORE_OK);
      ck_assert_double_eq_tol (before.area, after.area, 1e-9 * before.area);
      ck_assert_double_eq_tol (before.mac, after.mac, 1e-8 * before.mac);
    }
  outline_unref (outline);
  outline_unref (more);
}
END_TEST

enum { STEPS_OF_A_SEGMENT = 48 };

static bool
lines_cross (const Point a[2], const Point b[2])
{
  const Point u = point_sub (a[1], a[0]), v = point_sub (b[1], b[0]), w = point_sub (b[0], a[0]);
  const double cross = u.x * v.y - u.y * v.x, s = (w.x * v.y - w.y * v.x) / cross, t = (w.x * u.y - w.y * u.x) / cross;

  return s > 0 && s < 1 && t > 0 && t < 1;
}

static bool
flattened_outline_crosses (const Outline *outline)
{
  const size_t count = outline_segment_count (outline) * STEPS_OF_A_SEGMENT;
  Point places[count + 2];

  for (size_t i = 0; i < count; i++)
    places[i] = segment_at (outline_node (outline, i / STEPS_OF_A_SEGMENT), outline_segment (outline, i / STEPS_OF_A_SEGMENT),
                            (double) (i % STEPS_OF_A_SEGMENT) / STEPS_OF_A_SEGMENT);
  places[count] = outline_node (outline, outline_segment_count (outline));
  places[count + 1] = places[0];
  const size_t lines = places[count].y == places[0].y ? count + 1 : count;      /* nobody drew the closing line of an open outline */
  for (size_t i = 0; i < lines; i++)
    for (size_t j = i + 2; j < lines; j++)
      if (lines_cross (places + i, places + j))
        return true;
  return false;
}

/* Every straight piece against every other: slow and plain. Few segments, so that about half of the outlines do not cross themselves;
 * every other one is closed. */
START_TEST (a_crossing_is_found_where_trying_all_pairs_finds_one)
{
  Random random = { .state = (uint64_t) _i * 97u + 5 };
  const Point start = { random_between (&random, 0, 100), 0 };
  Segment segments[4];
  const size_t count = 2 + random_below (&random, 3);

  for (size_t i = 0; i < count; i++)
    {
      const bool closes = i + 1 == count && _i % 2 == 0;
      const Point to = { random_between (&random, 0, 200), closes ? 0 : random_between (&random, 0, 400) };
      const Point control1 = { random_between (&random, 0, 200), random_between (&random, 0, 400) };
      segments[i] = random_below (&random, 2) ? segment_line (to) : segment_curve (control1, point_mix (control1, to, 0.6), to);
    }
  Outline *outline = outline_from (start, segments, count);
  ck_assert_int_eq (outline_check (outline, NULL) == CORE_CROSSES_ITSELF, flattened_outline_crosses (outline));
  outline_unref (outline);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("random");

  tcase_add_loop_test (tests, any_walk_through_the_changes_stays_finite_and_leaves_the_old_outline, 0, 24);
  tcase_add_loop_test (tests, a_node_inserted_into_any_outline_changes_neither_its_fault_nor_its_size, 0, 100);
  tcase_add_loop_test (tests, a_crossing_is_found_where_trying_all_pairs_finds_one, 0, 120);
  return run_suite (suite_create ("outline random"), tests);
}
