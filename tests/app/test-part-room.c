/* Where a part that is added from the list comes to stand. */
#include "app/part-adder.h"
#include "document/part-class.h"
#include "support/aeroplanes.h"
#include "support/run-suite.h"
#include <math.h>

/* What every electric model carries, in the order in which a person may add it. */
static const char *const orders[][7] = {
  { "propeller", "motor", "controller", "battery", "receiver", "servo", "servo" },
  { "servo", "servo", "receiver", "battery", "controller", "motor", "propeller" },
  { "battery", "receiver", "controller", "servo", "motor", "servo", "propeller" },
};

static Aeroplane *
with_added (Aeroplane *takes, const char *word)
{
  g_autofree char *id = NULL;
  Part *pattern = part_class_part (word);
  Aeroplane *made = part_adder_with (takes, pattern, &id);

  ck_assert_ptr_nonnull (made);
  piece_unref (&pattern->piece);
  aeroplane_unref (takes);
  return made;
}

static Aeroplane *
equipped (Aeroplane *takes, size_t order)
{
  for (size_t i = 0; i < G_N_ELEMENTS (orders[order]); i++)
    takes = with_added (takes, orders[order][i]);
  return takes;
}

static Aeroplane *
winged (void)
{
  return with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (112, 640, 130));
}

static void
expect_apart (const Aeroplane *aeroplane)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    for (size_t j = 0; j < i; j++) {
      const Part *a = aeroplane_part (aeroplane, i), *b = aeroplane_part (aeroplane, j);
      const bool along = fabs (a->x - b->x) < (a->length + b->length) / 2, across = fabs (a->y - b->y) < (a->width + b->width) / 2;

      if (g_str_equal (a->class_name, "propeller") || g_str_equal (b->class_name, "propeller"))
        continue;
      ck_assert_msg (!(along && across), "“%s” and “%s” overlap", a->piece.id, b->piece.id);
    }
}

static Aeroplane *
with_body (Aeroplane *takes, double length)
{
  Body *body = body_new ("body");
  const Segment segments[] = { segment_line ((Point) { length / 3, 25 }), segment_line ((Point) { length, 0 }) };
  Outline *outline = NULL;

  ck_assert_int_eq (outline_new ((Point) { 0, 0 }, segments, G_N_ELEMENTS (segments), NULL, &outline), CORE_OK);
  body->outline = outline;
  return with_piece (takes, body);
}

START_TEST (the_usual_set_comes_without_overlaps_in_whatever_order)
{
  g_autoptr (Aeroplane) bare = equipped (aeroplane_new (), (size_t) _i);
  g_autoptr (Aeroplane) beside = equipped (winged (), (size_t) _i);

  expect_apart (bare);
  expect_apart (beside);
}
END_TEST

START_TEST (in_a_body_every_box_stands_inside_it)
{
  const double length = 460;
  g_autoptr (Aeroplane) made = equipped (with_body (winged (), length), (size_t) _i);

  expect_apart (made);
  for (size_t i = 0; i < aeroplane_count (made, PIECE_PART); i++) {
    const Part *part = aeroplane_part (made, i);

    if (g_str_equal (part->class_name, "propeller"))
      continue;
    ck_assert_double_ge (part->x - part->length / 2, 0);
    ck_assert_double_le (part->x + part->length / 2, length);
  }
}
END_TEST

/* Three quarters of the way from the nose at 0 to the leading edge at 112. */
START_TEST (what_has_its_usual_place_to_itself_stands_there)
{
  g_autoptr (Aeroplane) made = with_added (winged (), "battery");

  ck_assert_double_eq (aeroplane_part (made, 0)->x, 84);
}
END_TEST

START_TEST (a_body_too_full_for_one_more_takes_it_all_the_same)
{
  g_autoptr (Aeroplane) made = with_body (aeroplane_new (), 60);

  made = with_added (with_added (g_steal_pointer (&made), "battery"), "battery");
  ck_assert_uint_eq (aeroplane_count (made, PIECE_PART), 2);
  ck_assert (isfinite (aeroplane_part (made, 1)->x));
}
END_TEST

START_TEST (a_cowl_goes_over_the_motor)
{
  g_autoptr (Aeroplane) made = with_added (with_added (winged (), "motor"), "cowl");

  ck_assert_double_eq (aeroplane_part (made, 0)->x, aeroplane_part (made, 1)->x);
}
END_TEST

/* The body is 50 mm wide a third of its length along, and drawn straight to there. */
START_TEST (a_cowl_is_as_wide_as_the_nose_it_goes_over)
{
  g_autoptr (Aeroplane) made = with_added (with_body (winged (), 460), "cowl");
  const Part *cowl = aeroplane_part (made, 0);

  ck_assert_double_eq (cowl->x - cowl->length / 2, 0);
  ck_assert_double_eq_tol (cowl->width, 50 * cowl->length / (460.0 / 3), 0.2);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("part room");

  tcase_add_loop_test (tests, the_usual_set_comes_without_overlaps_in_whatever_order, 0, G_N_ELEMENTS (orders));
  tcase_add_loop_test (tests, in_a_body_every_box_stands_inside_it, 0, G_N_ELEMENTS (orders));
  tcase_add_test (tests, what_has_its_usual_place_to_itself_stands_there);
  tcase_add_test (tests, a_body_too_full_for_one_more_takes_it_all_the_same);
  tcase_add_test (tests, a_cowl_goes_over_the_motor);
  tcase_add_test (tests, a_cowl_is_as_wide_as_the_nose_it_goes_over);
  return run_suite (suite_create ("part room"), tests);
}
