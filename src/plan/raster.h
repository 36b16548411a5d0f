#pragma once

/** The pixels of a picture, 8 bits a channel: one channel (grey) or three (red, green, blue), rows from the top, without
 *  padding. Nobody changes one that exists. Counted references, safe across threads. */
typedef struct Raster Raster;

/** Makes a raster of pixels that exist already.
 *  width, height  >= 1
 *  channels       1 or 3
 *  reduced        >= 1: how many of the file's pixels make one of these, each way
 *  pixels         width * height * channels bytes from malloc; taken, also when there is no memory for the rest
 *  returns one reference, the caller's; NULL without memory */
Raster *raster_new   (int width, int height, int channels, int reduced, unsigned char *pixels);
/** One reference more, the caller's; the same raster. Not NULL. */
Raster *raster_ref   (const Raster *self);
void    raster_unref (Raster *self);                              /* gives one back, the last frees; NULL is fine */

int                  raster_width    (const Raster *self);        /* >= 1, in pixels of this raster */
int                  raster_height   (const Raster *self);        /* >= 1, in pixels of this raster */
int                  raster_channels (const Raster *self);        /* 1 or 3 */
/** How many of the file's pixels make one, each way: 1, 2, 3 … Pixel (i, j) covers the file's from i * reduced to
 *  (i + 1) * reduced, and as far down; at the right and lower edge as many as are left. */
int                  raster_reduced  (const Raster *self);
/** The first byte of row y, 0 <= y < height; lent. */
const unsigned char *raster_row      (const Raster *self, int y);
