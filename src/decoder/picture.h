#pragma once
#include <stdbool.h>
#include <stddef.h>

/** Decoded pixels as a library left them, looked at upright: pixel (x, y) begins at origin + x * right + y * down. */
typedef struct {
  const unsigned char *origin;
  ptrdiff_t right, down;              /* bytes; either sign */
  int width, height;                  /* upright, >= 1 */
  int red, green, blue, alpha;        /* where a pixel has them, bytes from its first; alpha -1: opaque. Not premultiplied */
} Picture;

/** Turns it as an orientation of EXIF or TIFF (TIFF 6.0, tag 274) says: 1 upright … 8; another number leaves it as it is. */
Picture picture_oriented (Picture stored, int orientation);

/** Whether red, green and blue are equal all over. */
bool picture_is_grey (const Picture *self);

/** Row y of the picture reduced: each value the mean of reduced * reduced pixels (at the right and lower edge of those that are
 *  left), on white paper where it is transparent. `bytes` takes as many as the reduced row has pixels, times channels (1: grey, of a
 *  picture that is; or 3). */
void picture_row (const Picture *self, int y, int reduced, int channels, unsigned char *bytes);
