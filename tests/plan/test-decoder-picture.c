/* Turning, reducing and laying on paper, apart from any loader. */
#include <check.h>
#include "decoder/picture.h"
#include "support/run-suite.h"

static const unsigned char GREYS[15] = { 10, 20, 30, 40, 50,
                                         60, 70, 80, 90, 100,
                                         110, 120, 130, 140, 150 };

static Picture
five_by_three (void)
{
  return (Picture) { .origin = GREYS, .right = 1, .down = 5, .width = 5, .height = 3, .alpha = -1 };
}

START_TEST (a_value_of_the_reduced_is_the_mean_of_a_block)
{
  const Picture picture = five_by_three ();
  unsigned char row[3];

  picture_row (&picture, 0, 2, 1, row);
  ck_assert_int_eq (row[0], (10 + 20 + 60 + 70) / 4);
  ck_assert_int_eq (row[1], (30 + 40 + 80 + 90) / 4);
}
END_TEST

START_TEST (at_the_far_edges_it_is_the_mean_of_what_is_left)
{
  const Picture picture = five_by_three ();
  unsigned char row[3];

  picture_row (&picture, 0, 2, 1, row);
  ck_assert_int_eq (row[2], (50 + 100) / 2);
  picture_row (&picture, 1, 2, 1, row);
  ck_assert_int_eq (row[0], (110 + 120) / 2);
  ck_assert_int_eq (row[2], 150);
}
END_TEST

START_TEST (a_turned_picture_is_reduced_from_its_upright_corner)
{
  const Picture picture = picture_oriented (five_by_three (), 3);
  unsigned char row[3];

  ck_assert (picture.width == 5 && picture.height == 3);
  picture_row (&picture, 0, 2, 1, row);
  ck_assert_int_eq (row[0], (150 + 140 + 100 + 90) / 4);
  ck_assert_int_eq (row[2], (110 + 60) / 2);
}
END_TEST

START_TEST (an_orientation_nobody_knows_leaves_it_as_it_is)
{
  const int unknown[] = { -1, 0, 9, 4711 };

  for (size_t i = 0; i < sizeof unknown / sizeof *unknown; i++)
    {
      const Picture picture = picture_oriented (five_by_three (), unknown[i]);

      ck_assert (picture.origin == GREYS && picture.right == 1 && picture.down == 5);
    }
}
END_TEST

START_TEST (ink_is_weighed_by_how_opaque_it_is)
{
  static const unsigned char BLACK_HALF_CLEAR[] = { 0, 255, 0, 0 };
  const Picture picture = { .origin = BLACK_HALF_CLEAR, .right = 2, .down = 4, .width = 2, .height = 1, .alpha = 1 };
  unsigned char grey;

  picture_row (&picture, 0, 2, 1, &grey);
  ck_assert_int_eq (grey, 128);
}
END_TEST

START_TEST (one_coloured_pixel_makes_a_colour_picture)
{
  unsigned char pixels[] = { 7, 7, 7, 9, 9, 9, 200, 200, 200, 3, 3, 3 };
  const Picture picture = { .origin = pixels, .right = 3, .down = 6, .width = 2, .height = 2, .green = 1, .blue = 2, .alpha = -1 };

  ck_assert (picture_is_grey (&picture));
  pixels[11] = 4;
  ck_assert (!picture_is_grey (&picture));
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("picture");

  tcase_add_test (tests, a_value_of_the_reduced_is_the_mean_of_a_block);
  tcase_add_test (tests, at_the_far_edges_it_is_the_mean_of_what_is_left);
  tcase_add_test (tests, a_turned_picture_is_reduced_from_its_upright_corner);
  tcase_add_test (tests, an_orientation_nobody_knows_leaves_it_as_it_is);
  tcase_add_test (tests, ink_is_weighed_by_how_opaque_it_is);
  tcase_add_test (tests, one_coloured_pixel_makes_a_colour_picture);
  return run_suite (suite_create ("the decoder's picture"), tests);
}
