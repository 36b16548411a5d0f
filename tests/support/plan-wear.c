#include "support/plan-sheet.h"

#include <check.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <jpeglib.h>

enum { QUALITY = 78 };

static double
bump (double off, double width)
{
  return exp (-off * off / (width * width));
}

/* What part of the light comes back from the paper itself at a place, 0 to 1. */
static double
ground_at (unsigned marks, double x, double y, double width, double height, double px_per_mm)
{
  const double across = x / width, down = y / height, mm = px_per_mm;
  double ground = 1;

  if (marks & SHEET_SHADE)
    ground *= 1 - 0.3 * across * down;
  if (marks & SHEET_VIGNETTE)
    ground *= 1 - 0.35 * (pow (across - 0.5, 2) + pow (down - 0.5, 2)) / 0.5;
  if (marks & SHEET_FOLDS)
    ground *= (1 - 0.3 * bump (x - 0.37 * width, 0.6 * mm)) * (1 - 0.2 * bump (y - 0.48 * height, 0.5 * mm))
              * (1 - 0.12 * bump (x - 0.37 * width - 2 * mm, 1.5 * mm));
  if (marks & SHEET_STAINS)
    ground *= (1 - 0.2 / (1 + exp ((hypot (x - 0.6 * width, y - 0.3 * height) - 14 * mm) / (0.4 * mm))))
              * (1 - 0.15 / (1 + exp ((hypot (x - 0.25 * width, y - 0.7 * height) - 9 * mm) / (0.4 * mm))));
  return ground;
}

static unsigned char
byte_of (double value)
{
  return (unsigned char) lround (fmin (fmax (value, 0), 255));
}

static void
compress_and_back (int width, int height, unsigned char *rgb)
{
  struct jpeg_error_mgr errors;
  struct jpeg_compress_struct to = { .err = jpeg_std_error (&errors) };
  struct jpeg_decompress_struct from = { .err = &errors };
  unsigned char *bytes = NULL;
  unsigned long length = 0;

  jpeg_create_compress (&to);
  jpeg_mem_dest (&to, &bytes, &length);
  to.image_width = (JDIMENSION) width, to.image_height = (JDIMENSION) height;
  to.input_components = 3, to.in_color_space = JCS_RGB;
  jpeg_set_defaults (&to);
  jpeg_set_quality (&to, QUALITY, TRUE);
  jpeg_start_compress (&to, TRUE);
  for (JSAMPROW row = rgb; to.next_scanline < to.image_height; row += 3 * width)
    jpeg_write_scanlines (&to, &row, 1);
  jpeg_finish_compress (&to);
  jpeg_destroy_compress (&to);
  jpeg_create_decompress (&from);
  jpeg_mem_src (&from, bytes, length);
  ck_assert_int_eq (jpeg_read_header (&from, TRUE), JPEG_HEADER_OK);
  jpeg_start_decompress (&from);
  for (JSAMPROW row = rgb; from.output_scanline < from.output_height; row += 3 * width)
    jpeg_read_scanlines (&from, &row, 1);
  jpeg_finish_decompress (&from);
  jpeg_destroy_decompress (&from);
  free (bytes);
}

void
plan_sheet_wear (const SheetRecipe *recipe, double px_per_mm, int width, int height, unsigned char *rgb, Random *random)
{
  const double noise = recipe->marks & SHEET_NOISE ? 14 : 0;

  for (int y = 0; y < height; y++)
    for (int x = 0; x < width; x++)
      {
        const double ground = ground_at (recipe->marks, x, y, width, height, px_per_mm);
        /* a sensor's grain is grey, and bell-shaped enough with two throws */
        const double grain = noise ? random_between (random, -noise, noise) / 2 + random_between (random, -noise, noise) / 2 : 0;
        unsigned char *pixel = rgb + 3 * ((size_t) y * (size_t) width + (size_t) x);

        for (int channel = 0; channel < 3; channel++)
          pixel[channel] = byte_of (pixel[channel] * ground + grain);
      }
  if (recipe->marks & SHEET_JPEG)
    compress_and_back (width, height, rgb);
}
