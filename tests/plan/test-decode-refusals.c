#define _GNU_SOURCE
#include <check.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>
#include "support/pictures.h"
#include "support/random.h"
#include "support/run-suite.h"

/* The status of the file cut after a part of its bytes. */
static DecodeStatus
cut_ends (Bytes bytes, double part)
{
  bytes.length = (size_t) ((double) bytes.length * part);
  return decoding_ends (file_of (bytes));
}

START_TEST (a_file_that_breaks_off_gives_no_half_picture)
{
  for (double part = 0.3; part < 1; part += 0.3)
    {
      ck_assert_int_eq (cut_ends (png_drawn (LOOK_COLOUR_16, 200, 100), part), DECODE_TRUNCATED);
      ck_assert_int_eq (cut_ends (png_drawn (LOOK_INTERLACED, 200, 100), part), DECODE_TRUNCATED);
      ck_assert_int_eq (cut_ends (jpeg_drawn (3, 1, false, 200, 100), part), DECODE_TRUNCATED);
      ck_assert_int_eq (cut_ends (jpeg_drawn (3, 1, true, 200, 100), part), DECODE_TRUNCATED);
      ck_assert_int_eq (cut_ends (tiff_drawn (8, 1, 200, 100), part), DECODE_TRUNCATED);
      ck_assert_int_eq (cut_ends (bmp_drawn (200, 100), part), DECODE_TRUNCATED);
      ck_assert_int_eq (cut_ends (webp_drawn (false), part), DECODE_TRUNCATED);
      ck_assert_int_eq (cut_ends (pdf_drawn (5), part), DECODE_TRUNCATED);
    }
  ck_assert_int_eq (cut_ends (gif_drawn (200, 100), 0.4), DECODE_TRUNCATED);
}
END_TEST

START_TEST (a_drawing_that_breaks_off_gives_no_half_picture)
{
  ck_assert_int_eq (decoding_ends (file_of (text_bytes ("<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><rect wid"))),
                    DECODE_TRUNCATED);
}
END_TEST

/* Of a moving picture the rest is not asked for. */
START_TEST (a_first_frame_that_is_whole_is_enough)
{
  ck_assert_int_eq (cut_ends (gif_drawn (200, 100), 0.8), DECODE_OK);
}
END_TEST

START_TEST (what_stands_behind_a_picture_does_not_matter)
{
  Bytes jpeg = jpeg_drawn (3, 1, false, 64, 32);

  jpeg.bytes = realloc (jpeg.bytes, jpeg.length + 100);
  memset (jpeg.bytes + jpeg.length, 'x', 100);
  jpeg.length += 100;
  ck_assert_int_eq (decoding_ends (file_of (jpeg)), DECODE_OK);
}
END_TEST

START_TEST (an_empty_file_is_told)
{
  ck_assert_int_eq (decoding_ends (file_of (text_bytes (""))), DECODE_EMPTY);
}
END_TEST

START_TEST (a_file_is_what_its_bytes_are)
{
  ck_assert_int_eq (decoding_ends (file_of (text_bytes ("Span 640 mm, chord 80 mm.\n"))), DECODE_NOT_A_PICTURE);
  ck_assert_int_eq (decoding_ends (file_of (text_bytes ("<aeroplane xmlns='urn:trammel:aeroplane'/>"))), DECODE_NOT_A_PICTURE);
  ck_assert_int_eq (decoding_ends (file_of (text_bytes ("P"))), DECODE_NOT_A_PICTURE);
  ck_assert_int_eq (decoding_ends (file_of (text_bytes ("BM"))), DECODE_TRUNCATED);
}
END_TEST

START_TEST (a_damaged_file_is_told)
{
  Bytes png = png_drawn (LOOK_COLOUR_16, 200, 100);

  png.bytes[png.length / 2] ^= 0x55;
  ck_assert_int_eq (decoding_ends (file_of (png)), DECODE_DAMAGED);
  ck_assert_int_eq (decoding_ends (file_of (text_bytes ("%PDF-1.4\nnothing of the kind\n%%EOF\n"))), DECODE_DAMAGED);
  ck_assert_int_eq (decoding_ends (file_of (text_bytes ("<svg xmlns='http://www.w3.org/2000/svg'><rect></svg>"))), DECODE_DAMAGED);
}
END_TEST

START_TEST (a_picture_without_pixels_is_told)
{
  Bytes png = png_drawn (LOOK_GREY, 32, 16);

  png_claim_size (png, 0, 16);
  ck_assert_int_eq (decoding_ends (file_of (png)), DECODE_NO_PIXELS);
}
END_TEST

/* 60000 by 60000 would take ten gigabytes; all that is there are some hundred bytes, which a BMP cannot hide. */
START_TEST (a_header_that_claims_too_much_is_refused)
{
  Bytes png = png_drawn (LOOK_COLOUR, 32, 16), jpeg = jpeg_drawn (3, 0, false, 64, 32), bmp = bmp_drawn (32, 16);
  unsigned char *frame = memmem (jpeg.bytes, jpeg.length, "\xff\xc0\0\x11\x08", 5);

  png_claim_size (png, 60000, 60000);
  ck_assert_int_eq (decoding_ends (file_of (png)), DECODE_TOO_LARGE);
  memcpy (frame + 5, "\xea\x60\xea\x60", 4);
  ck_assert_int_eq (decoding_ends (file_of (jpeg)), DECODE_TOO_LARGE);
  memcpy (bmp.bytes + 18, "\x60\xea\0\0\x60\xea\0\0", 8);
  ck_assert_int_eq (decoding_ends (file_of (bmp)), DECODE_TRUNCATED);
}
END_TEST

START_TEST (what_is_no_file_that_may_be_read_is_told)
{
  int ends[2], folder = open ("/", O_RDONLY | O_DIRECTORY), file = file_of (png_drawn (LOOK_GREY, 8, 8));
  char path[64];

  ck_assert_int_eq (pipe (ends), 0);
  snprintf (path, sizeof path, "/proc/self/fd/%d", file);
  ck_assert_int_eq (decoding_ends (ends[0]), DECODE_CANNOT_READ);
  ck_assert_int_eq (decoding_ends (folder), DECODE_CANNOT_READ);
  ck_assert_int_eq (decoding_ends (open (path, O_WRONLY)), DECODE_CANNOT_READ);
  ck_assert_int_eq (decoding_ends (-1), DECODE_CANNOT_READ);
  close (ends[1]);
  close (file);
}
END_TEST

START_TEST (a_hundred_megapixels_come_reduced)
{
  DecodeFacts facts;
  Raster *raster = decoded (file_of (png_of_paper (10001, 10000)), &facts);

  ck_assert_int_eq (facts.reduced, 2);
  ck_assert (facts.width_px == 10001 && facts.height_px == 10000);
  ck_assert_int_eq (raster_reduced (raster), 2);
  ck_assert_int_eq (raster_width (raster), 5001);
  ck_assert_int_eq (raster_height (raster), 5000);
  ck_assert_int_eq (raster_row (raster, 4999)[5000], 255);
  raster_unref (raster);
}
END_TEST

/* Bytes changed at random, the same in every run. */
START_TEST (whatever_becomes_of_its_bytes_the_decoder_says_so_itself)
{
  Random random = { 20 };

  for (int i = 0; i < 40; i++)
    {
      Bytes files[] = { png_drawn (LOOK_PALETTE, 32, 16), jpeg_drawn (3, 6, true, 64, 32), tiff_drawn (16, 3, 32, 16), pdf_drawn (2) };
      const int which = i % 4;

      for (int changed = 0; changed < 6; changed++)
        files[which].bytes[random_below (&random, files[which].length)] = (unsigned char) random_below (&random, 256);
      ck_assert_int_ne (decoding_ends (file_of (files[which])), DECODE_HELPER_DIED);
      for (int other = 0; other < 4; other++)
        if (other != which)
          bytes_free (files[other]);
    }
}
END_TEST

START_TEST (every_status_has_a_sentence_of_its_own_without_a_full_stop)
{
  for (int status = DECODE_OK; status <= DECODE_STATUS_END; status++)
    {
      const char *sentence = decode_status_sentence ((DecodeStatus) status);

      ck_assert_uint_gt (strlen (sentence), 10);
      ck_assert_int_ne (sentence[strlen (sentence) - 1], '.');
      for (int other = DECODE_OK; other < status; other++)
        ck_assert_str_ne (sentence, decode_status_sentence ((DecodeStatus) other));
    }
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("refusals");

  tcase_add_test (tests, a_file_that_breaks_off_gives_no_half_picture);
  tcase_add_test (tests, a_drawing_that_breaks_off_gives_no_half_picture);
  tcase_add_test (tests, a_first_frame_that_is_whole_is_enough);
  tcase_add_test (tests, what_stands_behind_a_picture_does_not_matter);
  tcase_add_test (tests, an_empty_file_is_told);
  tcase_add_test (tests, a_file_is_what_its_bytes_are);
  tcase_add_test (tests, a_damaged_file_is_told);
  tcase_add_test (tests, a_picture_without_pixels_is_told);
  tcase_add_test (tests, a_header_that_claims_too_much_is_refused);
  tcase_add_test (tests, what_is_no_file_that_may_be_read_is_told);
  tcase_add_test (tests, a_hundred_megapixels_come_reduced);
  tcase_add_test (tests, whatever_becomes_of_its_bytes_the_decoder_says_so_itself);
  tcase_add_test (tests, every_status_has_a_sentence_of_its_own_without_a_full_stop);
  return run_suite (suite_create ("plans that cannot be read"), tests);
}
