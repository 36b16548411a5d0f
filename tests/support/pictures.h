#pragma once
#include <stdbool.h>
#include <stddef.h>
#include "plan/decode.h"

/** Files of pictures and pages, drawn for the tests. Each picture shows four quarters: red at the upper left, green at the upper
 *  right, blue at the lower left, white at the lower right. */
typedef struct {
  unsigned char *bytes;         /* from malloc */
  size_t length;
} Bytes;

typedef enum { LOOK_COLOUR, LOOK_EQUAL_CHANNELS, LOOK_GREY, LOOK_GREY_16, LOOK_COLOUR_16, LOOK_PALETTE, LOOK_ALPHA, LOOK_INTERLACED } PngLook;

/** Red, green and blue of the quarters' pixel (x, y). */
void quarters_colour (int x, int y, int width, int height, unsigned char colour[3]);
/** Where, upright, the stored pixel of a column and row belongs, by the table of tag 274 in TIFF 6.0. */
void upright_place (int orientation, int column, int row, int width, int height, int *x, int *y);

/** LOOK_ALPHA: the red quarter half transparent, the blue one wholly. LOOK_GREY and LOOK_EQUAL_CHANNELS: black, 64, 128, white.
 *  300 dots to the inch. */
Bytes png_drawn (PngLook look, int width, int height);
/** In colours, and turned as its eXIf chunk says; width and height upright. */
Bytes png_oriented (int orientation, int width, int height);
/** A PNG of white paper, one bit a pixel. */
Bytes png_of_paper (int width, int height);
/** The PNG with a header that claims another size, its checksum right. */
void  png_claim_size (Bytes png, unsigned width, unsigned height);
/** channels 1 (grey, as for PNG), 3, 4 (cyan, magenta, yellow, black, as printers' programs save); orientation 0: not stated; width
 *  and height upright; density 200 by 100 dots to the inch as stored. */
Bytes jpeg_drawn (int channels, int orientation, bool progressive, int width, int height);
/** bits 8 or 16 a channel; without compression. */
Bytes tiff_drawn (int bits, int orientation, int width, int height);
/** Pages of grey, without compression: page n from 1 is 10 + n pixels wide, 4 high, all of the value 20 n. With `thumbnails` a black one
 *  of 2 by 2 pixels follows each. */
Bytes tiff_of_pages (int pages, bool thumbnails);
Bytes bmp_drawn (int width, int height);
/** Two frames, the second black. */
Bytes gif_drawn (int width, int height);
/** The quarters, 32 by 16; animated: and a second frame, black. */
Bytes webp_drawn (bool animated);
Bytes text_bytes (const char *text);
/** The text as UTF-16, with the mark of its order in front; packed by gzip. */
Bytes text_wide (const char *text, bool big_endian);
Bytes text_packed (const char *text);
/** A page of each number from 1: page n is 100 + n points wide, 50 high, with a black square of 10 points in its upper left corner. */
Bytes pdf_drawn (int pages);
/** Needs the password "lock". */
Bytes pdf_locked (void);

void  bytes_free (Bytes bytes);
/** An unnamed file of those bytes, at its beginning; the bytes are taken. */
int   file_of (Bytes bytes);
/** Decodes and closes the file, checks that it went well; facts may be NULL. One reference. */
Raster *decoded (int file, DecodeFacts *facts);
/** The status of decoding the file, which is closed. */
DecodeStatus decoding_ends (int file);
/** Checks that the raster shows the quarters, each value within `off`. */
void  assert_quarters (const Raster *raster, int off);
