#include "drawing/free-space.h"
#include <math.h>
#include "support/run-suite.h"

static FreeSpace *space;

/* 100 × 60 mm with a black square from 10, 20 to 30, 40 and a white one from 60, 10 to 80, 30. */
static void
set_up (void)
{
  cairo_t *cr;

  space = free_space_new (100, 60);
  cr = free_space_open (space);
  cairo_rectangle (cr, 10, 20, 20, 20);
  cairo_fill (cr);
  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_rectangle (cr, 60, 10, 20, 20);
  cairo_fill (cr);
  cairo_destroy (cr);
  free_space_close (space);
}

static void tear_down (void) { free_space_free (space); }

START_TEST (what_is_painted_in_any_colour_is_taken_but_only_black_is_ink)
{
  const Box black = { { 12, 22 }, { 28, 38 } }, white = { { 62, 12 }, { 78, 28 } }, empty = { { 31, 5 }, { 59, 55 } };

  ck_assert (!free_space_is_clear (space, black));
  ck_assert (!free_space_is_clear (space, white));
  ck_assert (free_space_is_clear (space, empty));
  ck_assert_double_eq_tol (free_space_ink (space, black), 16 * 16, 1e-9);
  ck_assert_double_eq (free_space_ink (space, white), 0);
  ck_assert_double_eq_tol (free_space_ink (space, (Box) { { 0, 0 }, { 100, 60 } }), 400, 1e-9);
}
END_TEST

START_TEST (a_box_that_reaches_off_the_sheet_is_asked_for_what_lies_on_it)
{
  ck_assert_double_eq_tol (free_space_ink (space, (Box) { { -50, 20 }, { 20, 40 } }), 200, 1e-9);
  ck_assert (free_space_is_clear (space, (Box) { { -50, -50 }, { -1, -1 } }));
}
END_TEST

START_TEST (boxes_taken_later_count_as_ink_and_can_be_given_back)
{
  const Box box = { { 40, 40 }, { 50, 44 } };
  const size_t before = free_space_taken (space);

  free_space_take (space, box);
  ck_assert (!free_space_is_clear (space, (Box) { { 45, 42 }, { 60, 60 } }));
  ck_assert (free_space_is_clear (space, (Box) { { 50, 40 }, { 60, 44 } }));      /* they may touch */
  ck_assert_double_eq_tol (free_space_ink (space, (Box) { { 45, 30 }, { 60, 60 } }), 20, 1e-9);
  free_space_give_back (space, before);
  ck_assert (free_space_is_clear (space, box));
}
END_TEST

START_TEST (a_wish_that_is_free_is_granted_to_the_point)
{
  const Wish wish = { .size = { 12.3, 7.7 }, .within = { { 1, 1 }, { 99, 59 } }, .anchor = { 35.17, 51.31 }, .corner = { 0, 1 },
                      .across = 1, .down = 1, .clear = 2 };
  Box found;
  double off;

  ck_assert (free_space_find (space, &wish, &found, &off));
  ck_assert_double_eq_tol (found.min.x, 35.17, 1e-9);
  ck_assert_double_eq_tol (found.max.y, 51.31, 1e-9);
  ck_assert_double_eq (off, 0);
}
END_TEST

/* Wanted on the black square, which ends at 30: by 3 mm clear it begins at 33 at the earliest; places are tried every 1.5 mm. */
START_TEST (a_wish_that_is_not_free_is_granted_next_to_it_and_clear)
{
  const Wish wish = { .size = { 10, 10 }, .within = { { 1, 1 }, { 99, 59 } }, .anchor = { 29, 30 }, .corner = { 0, 0.5 },
                      .across = 1, .down = 5, .clear = 3 };
  Box found;
  double off;

  ck_assert (free_space_find (space, &wish, &found, &off));
  ck_assert_double_eq_tol (found.min.y, 25, 1e-9);
  ck_assert_double_ge (found.min.x, 33);
  ck_assert_double_lt (found.min.x, 33 + 1.5 + 0.5);
  ck_assert_double_eq_tol (off, found.min.x - 29, 1e-9);
}
END_TEST

START_TEST (what_has_no_room_finds_none_and_leaves_the_answer_alone)
{
  const Wish wish = { .size = { 100, 20 }, .within = { { 1, 1 }, { 99, 59 } }, .across = 1, .down = 1 };
  const Wish full = { .size = { 40, 30 }, .within = { { 0, 0 }, { 45, 60 } }, .across = 1, .down = 1 };
  Box found = { { -1, -2 }, { -3, -4 } };
  double off = -5;

  ck_assert (!free_space_find (space, &wish, &found, &off));
  ck_assert (!free_space_find (space, &full, &found, &off));
  ck_assert_double_eq (found.max.y, -4);
  ck_assert_double_eq (off, -5);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("free space");

  tcase_add_checked_fixture (tests, set_up, tear_down);
  tcase_add_test (tests, what_is_painted_in_any_colour_is_taken_but_only_black_is_ink);
  tcase_add_test (tests, a_box_that_reaches_off_the_sheet_is_asked_for_what_lies_on_it);
  tcase_add_test (tests, boxes_taken_later_count_as_ink_and_can_be_given_back);
  tcase_add_test (tests, a_wish_that_is_free_is_granted_to_the_point);
  tcase_add_test (tests, a_wish_that_is_not_free_is_granted_next_to_it_and_clear);
  tcase_add_test (tests, what_has_no_room_finds_none_and_leaves_the_answer_alone);
  return run_suite (suite_create ("drawing free space"), tests);
}
