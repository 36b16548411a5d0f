#include <stdlib.h>
#include <string.h>
#include "plan/raster.h"
#include "support/run-suite.h"

static unsigned char *
some_pixels (size_t count)
{
  unsigned char *pixels = malloc (count);

  for (size_t i = 0; i < count; i++)
    pixels[i] = (unsigned char) i;
  return pixels;
}

START_TEST (rows_follow_one_another_without_padding)
{
  Raster *colour = raster_new (3, 2, 3, 4, some_pixels (18));

  ck_assert_int_eq (raster_width (colour), 3);
  ck_assert_int_eq (raster_height (colour), 2);
  ck_assert_int_eq (raster_channels (colour), 3);
  ck_assert_int_eq (raster_reduced (colour), 4);
  ck_assert_int_eq (raster_row (colour, 0)[0], 0);
  ck_assert_int_eq (raster_row (colour, 1)[0], 9);
  raster_unref (colour);
}
END_TEST

START_TEST (pixels_live_as_long_as_the_last_reference)
{
  Raster *first = raster_new (5, 5, 1, 1, some_pixels (25));
  Raster *second = raster_ref (first);

  raster_unref (first);
  ck_assert_int_eq (raster_row (second, 4)[4], 24);
  raster_unref (second);
  raster_unref (NULL);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("pixels");

  tcase_add_test (tests, rows_follow_one_another_without_padding);
  tcase_add_test (tests, pixels_live_as_long_as_the_last_reference);
  return run_suite (suite_create ("raster"), tests);
}
