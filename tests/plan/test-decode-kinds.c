#include <check.h>
#include <math.h>
#include "support/pictures.h"
#include "support/run-suite.h"

static void
assert_shows_quarters (Bytes bytes, DecodeKind kind, int off)
{
  DecodeFacts facts;
  Raster *raster = decoded (file_of (bytes), &facts);

  ck_assert_int_eq (facts.kind, kind);
  ck_assert_int_eq (facts.pages, 1);
  ck_assert_int_eq (facts.reduced, 1);
  ck_assert (isnan (facts.page_width_mm) && isnan (facts.page_height_mm));
  ck_assert (facts.width_px == raster_width (raster) && facts.height_px == raster_height (raster));
  ck_assert_int_eq (raster_width (raster), 32);
  ck_assert_int_eq (raster_height (raster), 16);
  assert_quarters (raster, off);
  raster_unref (raster);
}

static void
assert_shows_greys (Bytes bytes)
{
  Raster *raster = decoded (file_of (bytes), NULL);

  ck_assert_int_eq (raster_channels (raster), 1);
  ck_assert_int_eq (raster_row (raster, 0)[0], 0);
  ck_assert_int_eq (raster_row (raster, 7)[31], 64);
  ck_assert_int_eq (raster_row (raster, 8)[0], 128);
  ck_assert_int_eq (raster_row (raster, 15)[31], 255);
  raster_unref (raster);
}

START_TEST (a_png_in_colours_comes_as_it_is)
{
  assert_shows_quarters (png_drawn (LOOK_COLOUR, 32, 16), DECODE_PNG, 0);
}
END_TEST

START_TEST (a_png_of_sixteen_bits_with_a_palette_or_interlaced_comes_as_it_is)
{
  assert_shows_quarters (png_drawn (LOOK_COLOUR_16, 32, 16), DECODE_PNG, 0);
  assert_shows_quarters (png_drawn (LOOK_PALETTE, 32, 16), DECODE_PNG, 0);
  assert_shows_quarters (png_drawn (LOOK_INTERLACED, 32, 16), DECODE_PNG, 0);
}
END_TEST

START_TEST (a_grey_picture_has_one_channel_however_it_was_saved)
{
  assert_shows_greys (png_drawn (LOOK_GREY, 32, 16));
  assert_shows_greys (png_drawn (LOOK_GREY_16, 32, 16));
  assert_shows_greys (png_drawn (LOOK_EQUAL_CHANNELS, 32, 16));
}
END_TEST

START_TEST (what_is_transparent_lies_on_white_paper)
{
  Raster *raster = decoded (file_of (png_drawn (LOOK_ALPHA, 32, 16)), NULL);
  const unsigned char *half_red = raster_row (raster, 0), *clear_blue = raster_row (raster, 15);

  ck_assert_int_eq (raster_channels (raster), 3);
  ck_assert_int_eq (half_red[0], 255);
  ck_assert_int_eq (half_red[1], 127);
  ck_assert_int_eq (half_red[2], 127);
  ck_assert (clear_blue[0] == 255 && clear_blue[1] == 255 && clear_blue[2] == 255);
  raster_unref (raster);
}
END_TEST

/* Quarters are whole blocks of its 8 by 8 pixels. */
START_TEST (a_jpeg_in_colours_comes_nearly_as_it_is_also_a_progressive_one)
{
  assert_shows_quarters (jpeg_drawn (3, 0, false, 32, 16), DECODE_JPEG, 6);
  assert_shows_quarters (jpeg_drawn (3, 0, true, 32, 16), DECODE_JPEG, 6);
}
END_TEST

START_TEST (a_jpeg_of_printing_inks_is_turned_into_the_colours_they_print)
{
  Raster *raster = decoded (file_of (jpeg_drawn (4, 0, false, 64, 32)), NULL);

  assert_quarters (raster, 6);
  raster_unref (raster);
}
END_TEST

START_TEST (a_grey_jpeg_has_one_channel)
{
  Raster *raster = decoded (file_of (jpeg_drawn (1, 0, false, 64, 32)), NULL);

  ck_assert_int_eq (raster_channels (raster), 1);
  ck_assert_int_le (raster_row (raster, 0)[0], 4);
  ck_assert_int_ge (raster_row (raster, 0)[63], 251);
  raster_unref (raster);
}
END_TEST

START_TEST (a_tiff_of_eight_or_sixteen_bits_comes_as_it_is)
{
  assert_shows_quarters (tiff_drawn (8, 1, 32, 16), DECODE_TIFF, 0);
  assert_shows_quarters (tiff_drawn (16, 1, 32, 16), DECODE_TIFF, 0);
}
END_TEST

START_TEST (a_bmp_comes_as_it_is)
{
  assert_shows_quarters (bmp_drawn (32, 16), DECODE_BMP, 0);
}
END_TEST

START_TEST (of_a_moving_picture_the_first_frame_is_taken)
{
  assert_shows_quarters (gif_drawn (32, 16), DECODE_GIF, 0);
}
END_TEST

/* Where the platform has no loader for WebP, that is what is said. */
START_TEST (a_webp_comes_as_it_is_and_of_a_moving_one_the_first_frame)
{
  const DecodeStatus status = decoding_ends (file_of (webp_drawn (false)));

  if (status == DECODE_NO_LOADER)
    return;
  assert_shows_quarters (webp_drawn (false), DECODE_WEBP, 0);
  assert_shows_quarters (webp_drawn (true), DECODE_WEBP, 0);
}
END_TEST

START_TEST (a_picture_is_turned_upright_as_it_says)
{
  for (int orientation = 1; orientation <= 8; orientation++)
    {
      Raster *jpeg = decoded (file_of (jpeg_drawn (3, orientation, false, 64, 32)), NULL);
      Raster *tiff = decoded (file_of (tiff_drawn (8, orientation, 6, 4)), NULL);
      Raster *png = decoded (file_of (png_oriented (orientation, 6, 4)), NULL);

      ck_assert_int_eq (raster_width (jpeg), 64);
      ck_assert_int_eq (raster_width (tiff), 6);
      ck_assert_int_eq (raster_width (png), 6);
      assert_quarters (jpeg, 6);
      assert_quarters (tiff, 0);
      assert_quarters (png, 0);
      raster_unref (png);
      raster_unref (jpeg);
      raster_unref (tiff);
    }
}
END_TEST

/* A square of black in the lower half of white paper. */
static const char drawing[] =
  "<?xml version='1.0'?><svg xmlns='http://www.w3.org/2000/svg' width='20mm' height='20mm' viewBox='0 0 20 20'>"
  "<rect x='0' y='10' width='10' height='10'/></svg>";

static void
assert_drawn (Bytes bytes)
{
  DecodeFacts facts;
  Raster *raster = decoded (file_of (bytes), &facts);

  ck_assert_int_eq (facts.kind, DECODE_SVG);
  ck_assert_double_eq_tol (facts.page_width_mm, 20, 1e-9);
  ck_assert_int_eq (raster_row (raster, 200)[20], 0);
  ck_assert_int_eq (raster_row (raster, 20)[20], 255);
  ck_assert_int_eq (raster_row (raster, 200)[200], 255);
  raster_unref (raster);
}

START_TEST (an_svg_comes_as_it_is_also_packed_or_in_utf_16)
{
  assert_drawn (text_bytes (drawing));
  assert_drawn (text_packed (drawing));
  assert_drawn (text_wide (drawing, false));
  assert_drawn (text_wide (drawing, true));
}
END_TEST

START_TEST (what_is_packed_and_no_drawing_is_no_picture)
{
  Bytes cut = text_packed (drawing);

  ck_assert_int_eq (decoding_ends (file_of (text_packed ("Dear builder"))), DECODE_NOT_A_PICTURE);
  cut.length -= 20;
  ck_assert_int_eq (decoding_ends (file_of (cut)), DECODE_DAMAGED);
}
END_TEST

START_TEST (the_density_that_is_stored_is_told_and_turned_with_the_picture)
{
  DecodeFacts facts;

  raster_unref (decoded (file_of (png_drawn (LOOK_GREY, 32, 16)), &facts));
  ck_assert_double_eq_tol (facts.stored_dpi_x, 11811 * 0.0254, 1e-9);
  raster_unref (decoded (file_of (jpeg_drawn (3, 1, false, 64, 32)), &facts));
  ck_assert (facts.stored_dpi_x == 200 && facts.stored_dpi_y == 100);
  raster_unref (decoded (file_of (jpeg_drawn (3, 6, false, 64, 32)), &facts));
  ck_assert (facts.stored_dpi_x == 100 && facts.stored_dpi_y == 200);
  raster_unref (decoded (file_of (bmp_drawn (32, 16)), &facts));
  ck_assert (isnan (facts.stored_dpi_x) && isnan (facts.stored_dpi_y));
}
END_TEST

START_TEST (facts_alone_are_those_of_the_picture)
{
  const int file = file_of (jpeg_drawn (3, 6, false, 64, 32));
  const DecodeRequest request = { .file = file, .facts_only = true };
  DecodeFacts facts, with_picture;

  ck_assert_int_eq (decode (&request, NULL, &facts, NULL), DECODE_OK);
  raster_unref (decoded (file, &with_picture));
  ck_assert (facts.kind == DECODE_JPEG && facts.width_px == 64 && facts.height_px == 32);
  ck_assert (facts.stored_dpi_x == with_picture.stored_dpi_x && facts.reduced == with_picture.reduced);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("kinds");

  tcase_add_test (tests, a_png_in_colours_comes_as_it_is);
  tcase_add_test (tests, a_png_of_sixteen_bits_with_a_palette_or_interlaced_comes_as_it_is);
  tcase_add_test (tests, a_grey_picture_has_one_channel_however_it_was_saved);
  tcase_add_test (tests, what_is_transparent_lies_on_white_paper);
  tcase_add_test (tests, a_jpeg_in_colours_comes_nearly_as_it_is_also_a_progressive_one);
  tcase_add_test (tests, a_jpeg_of_printing_inks_is_turned_into_the_colours_they_print);
  tcase_add_test (tests, a_grey_jpeg_has_one_channel);
  tcase_add_test (tests, a_tiff_of_eight_or_sixteen_bits_comes_as_it_is);
  tcase_add_test (tests, a_bmp_comes_as_it_is);
  tcase_add_test (tests, of_a_moving_picture_the_first_frame_is_taken);
  tcase_add_test (tests, a_webp_comes_as_it_is_and_of_a_moving_one_the_first_frame);
  tcase_add_test (tests, a_picture_is_turned_upright_as_it_says);
  tcase_add_test (tests, an_svg_comes_as_it_is_also_packed_or_in_utf_16);
  tcase_add_test (tests, what_is_packed_and_no_drawing_is_no_picture);
  tcase_add_test (tests, the_density_that_is_stored_is_told_and_turned_with_the_picture);
  tcase_add_test (tests, facts_alone_are_those_of_the_picture);
  return run_suite (suite_create ("kinds of plans"), tests);
}
