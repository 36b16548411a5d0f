/* How far a node or a handle follows the hand, without a hand. */
#include "app/grip.h"
#include "app/outline-owner.h"
#include "document/reader.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include <math.h>

static Aeroplane *
example (const char *name)
{
  g_autofree char *file = g_strconcat (name, ".trammel", NULL);
  g_autofree char *path = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "data", "examples", file, NULL);
  Aeroplane *made = reader_read_file (path, NULL, NULL);

  ck_assert_ptr_nonnull (made);
  return made;
}

static Grip *
grip_of (const Aeroplane *aeroplane, Hit hit, bool side)
{
  Selection selection = hit.kind == HIT_NODE ? selection_of_node (hit.id, side, hit.index) : selection_of (hit.id);
  Grip *made = grip_new (aeroplane, &hit, &selection, side);

  selection_clear (&selection);
  ck_assert_ptr_nonnull (made);
  return made;
}

static Aeroplane *
pulled (const Aeroplane *aeroplane, Hit hit, bool side, Point to)
{
  Grip *grip = grip_of (aeroplane, hit, side);
  Aeroplane *made = grip_moved (grip, to, true);

  grip_free (grip);
  return made;
}

static Point
handle (const Aeroplane *aeroplane, Hit hit, bool side)
{
  Point place;

  ck_assert (outline_handle (outline_owner_outline (aeroplane, hit.id, side), hit.index, hit.side, &place));
  return place;
}

static double
lowest (const Aeroplane *aeroplane, const char *id)
{
  return outline_bounds (outline_owner_outline (aeroplane, id, false)).min.y;
}

static const Hit wing_handle = { .kind = HIT_HANDLE, .id = "wing", .index = 3, .side = HANDLE_BEFORE };
static const Hit body_handle = { .kind = HIT_HANDLE, .id = "body", .index = 2, .side = HANDLE_BEFORE };
static const Hit body_node = { .kind = HIT_NODE, .id = "body", .index = 1 };
static const Hit fin_handle = { .kind = HIT_HANDLE, .id = "fin", .index = 2, .side = HANDLE_BEFORE };
static const Hit fin_node = { .kind = HIT_NODE, .id = "fin", .index = 1 };
static const Hit side_handle = { .kind = HIT_HANDLE, .id = "body", .index = 1, .side = HANDLE_BEFORE };

START_TEST (a_surfaces_handle_stops_at_the_centre_line)
{
  g_autoptr (Aeroplane) tourer = example ("heron-tourer");
  g_autoptr (Aeroplane) next = pulled (tourer, wing_handle, false, (Point) { 290, -40 });

  ck_assert_double_eq (handle (next, wing_handle, false).x, 290);
  ck_assert_double_eq (handle (next, wing_handle, false).y, 0);
  ck_assert_double_ge (lowest (next, "wing"), 0);
}
END_TEST

START_TEST (a_bodys_handle_stops_at_the_centre_line)
{
  g_autoptr (Aeroplane) tourer = example ("heron-tourer");
  g_autoptr (Aeroplane) next = pulled (tourer, body_handle, false, (Point) { 12, -9 });

  ck_assert_double_eq (handle (next, body_handle, false).x, 12);
  ck_assert_double_eq (handle (next, body_handle, false).y, 0);
}
END_TEST

/* Node 1 of the racer's body is smooth, at a half width of 13.5: pulling one of its handles up far turns the other down. */
START_TEST (the_handle_that_turns_with_the_one_pulled_does_not_cross_either)
{
  const Hit forward = { .kind = HIT_HANDLE, .id = "body", .index = 1, .side = HANDLE_BEFORE };
  const Hit aft = { .kind = HIT_HANDLE, .id = "body", .index = 1, .side = HANDLE_AFTER };
  g_autoptr (Aeroplane) racer = example ("saltmarsh-racer");
  g_autoptr (Aeroplane) next = pulled (racer, forward, false, (Point) { 20, 60 });

  ck_assert_double_ge (handle (next, aft, false).y, -1e-9);
  ck_assert_double_ge (lowest (next, "body"), 0);
  ck_assert_double_gt (handle (next, forward, false).y, 13.5);
}
END_TEST

START_TEST (a_node_reaches_the_centre_line_and_its_handles_stay_on_this_side)
{
  const Hit handles[] = { { .id = "body", .index = 1, .side = HANDLE_BEFORE }, { .id = "body", .index = 1, .side = HANDLE_AFTER } };
  g_autoptr (Aeroplane) racer = example ("saltmarsh-racer");
  g_autoptr (Aeroplane) next = pulled (racer, body_node, false, (Point) { 20, -30 });

  ck_assert_double_eq (outline_node (outline_owner_outline (next, "body", false), 1).y, 0);
  for (size_t i = 0; i < G_N_ELEMENTS (handles); i++)
    ck_assert_double_ge (handle (next, handles[i], false).y, 0);
  ck_assert_double_ge (lowest (next, "body"), 0);
}
END_TEST

START_TEST (a_fins_root_is_as_low_as_its_nodes_and_handles_go)
{
  const double root = 11;      /* the fin's z */
  g_autoptr (Aeroplane) racer = example ("saltmarsh-racer");
  g_autoptr (Aeroplane) by_handle = pulled (racer, fin_handle, true, (Point) { 470, root - 25 });
  g_autoptr (Aeroplane) by_node = pulled (racer, fin_node, true, (Point) { 440, root - 25 });

  ck_assert_double_eq (handle (by_handle, fin_handle, true).y, 0);
  ck_assert_double_eq (outline_node (outline_owner_outline (by_node, "fin", true), 1).y, 0);
}
END_TEST

START_TEST (a_side_outline_goes_as_low_as_the_hand)
{
  g_autoptr (Aeroplane) tourer = example ("heron-tourer");
  g_autoptr (Aeroplane) next = pulled (tourer, side_handle, true, (Point) { 9, -120 });

  ck_assert_double_eq (handle (next, side_handle, true).y, -120);
}
END_TEST

/* Row 0 of the plate is the station. */
START_TEST (a_station_typed_beyond_the_centre_line_is_refused_for_node_and_handle)
{
  const Hit hits[] = { wing_handle, body_node };
  g_autoptr (Aeroplane) tourer = example ("heron-tourer");

  for (size_t i = 0; i < G_N_ELEMENTS (hits); i++) {
    Grip *grip = grip_of (tourer, hits[i], false);
    g_autoptr (Aeroplane) on_it = grip_with_row (grip, tourer, 0, 0);

    ck_assert_ptr_nonnull (on_it);
    ck_assert_ptr_null (grip_with_row (grip, tourer, 0, -1));
    grip_free (grip);
  }
}
END_TEST

/* The row of that name while a part is held there; -1 when there is none. */
static double
row_at (const Aeroplane *aeroplane, const char *id, bool side, Point to, const char *name)
{
  Grip *grip = grip_of (aeroplane, (Hit) { .kind = HIT_PART, .id = id }, side);
  g_autoptr (Aeroplane) now = grip_moved (grip, to, true);
  g_autoptr (Figures) figures = figures_once (now);
  GripRow rows[GRIP_ROWS];
  const size_t count = grip_rows (grip, figures, rows);
  double value = -1;

  ck_assert_uint_le (count, GRIP_ROWS);
  ck_assert (rows[count - 1].percent);      /* the margin comes last, whatever else is said */
  for (size_t i = 0; i < count; i++)
    if (g_str_equal (rows[i].name, name))
      value = rows[i].value;
  grip_free (grip);
  return value;
}

/* The racer's body is 52 mm wide at 138 and 27 at 20; one and a half on each side is its skin. */
START_TEST (a_part_held_where_the_body_is_too_narrow_is_told_how_wide_it_is_there)
{
  g_autoptr (Aeroplane) racer = example ("saltmarsh-racer");

  ck_assert_double_eq_tol (row_at (racer, "receiver", false, (Point) { 138, 22 }, "Wide here"), 49, 0.5);
  ck_assert_double_eq (row_at (racer, "receiver", false, (Point) { 138, 0 }, "Wide here"), -1);
  ck_assert_double_gt (row_at (racer, "receiver", false, (Point) { 138, 0 }, "Balance"), 0);
}
END_TEST

START_TEST (in_the_side_view_it_is_told_how_high)
{
  g_autoptr (Aeroplane) racer = example ("saltmarsh-racer");
  const double high = row_at (racer, "receiver", true, (Point) { 163, 31 }, "High here");

  ck_assert_double_gt (high, 50);
  ck_assert_double_lt (high, 58);
}
END_TEST

START_TEST (a_servo_held_where_the_wing_is_too_thin_is_told_how_deep_it_is)
{
  g_autoptr (Aeroplane) racer = example ("saltmarsh-racer");
  const double deep = row_at (racer, "servo-right", false, (Point) { 176, 270 }, "Deep here");

  ck_assert_double_gt (deep, 2);
  ck_assert_double_lt (deep, 9);
}
END_TEST

/* Its bends are places in the plan: a height under the hand is no place to starboard. */
START_TEST (from_the_side_a_lead_is_chosen_and_not_bent)
{
  g_autoptr (Aeroplane) aeroplane = example ("saltmarsh-racer");
  const Hit hit = { .kind = HIT_LEAD, .id = aeroplane_lead (aeroplane, 0)->piece.id, .place = { 150, -10 } };
  Selection selection = selection_of (hit.id);
  Grip *above = grip_of (aeroplane, hit, false);

  ck_assert_ptr_null (grip_new (aeroplane, &hit, &selection, true));
  grip_free (above);
  selection_clear (&selection);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("grip");

  tcase_add_test (tests, a_surfaces_handle_stops_at_the_centre_line);
  tcase_add_test (tests, a_bodys_handle_stops_at_the_centre_line);
  tcase_add_test (tests, the_handle_that_turns_with_the_one_pulled_does_not_cross_either);
  tcase_add_test (tests, a_node_reaches_the_centre_line_and_its_handles_stay_on_this_side);
  tcase_add_test (tests, a_fins_root_is_as_low_as_its_nodes_and_handles_go);
  tcase_add_test (tests, a_side_outline_goes_as_low_as_the_hand);
  tcase_add_test (tests, a_station_typed_beyond_the_centre_line_is_refused_for_node_and_handle);
  tcase_add_test (tests, a_part_held_where_the_body_is_too_narrow_is_told_how_wide_it_is_there);
  tcase_add_test (tests, in_the_side_view_it_is_told_how_high);
  tcase_add_test (tests, a_servo_held_where_the_wing_is_too_thin_is_told_how_deep_it_is);
  tcase_add_test (tests, from_the_side_a_lead_is_chosen_and_not_bent);
  return run_suite (suite_create ("grip"), tests);
}
