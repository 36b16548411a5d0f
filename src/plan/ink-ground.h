#pragma once
#include <stdbool.h>
#include "plan/raster.h"

/* Private to the plan room. */

/** Which of a picture's channels are read. */
typedef enum { CHANNEL_FIRST, CHANNEL_SECOND, CHANNEL_THIRD, CHANNEL_MEAN } InkChannel;

/** The paper's own brightness, in squares of GROUND_SQUARE pixels. */
enum { GROUND_SQUARE = 32 };
typedef struct {
  int columns, rows;
  float *level;             /* rows × columns, 1 to 255 */
  InkChannel channel;
} InkGround;

/** The brightness of a pixel in that channel, 0 to 255. */
static inline int
channel_value (const unsigned char *pixel, InkChannel channel)
{
  return channel == CHANNEL_MEAN ? (pixel[0] + pixel[1] + pixel[2] + 1) / 3 : pixel[channel];
}

/** The ground of a picture: the median of each square, then the median of it and its neighbours, so that a title's black does not count
 *  as paper. false without memory. */
bool ink_ground_make (const Raster *raster, InkChannel channel, InkGround *made);
void ink_ground_clear (InkGround *self);      /* frees its levels; again is fine */

/** The ground along a row of pixels, width values, between the squares' middles in straight lines. */
void ink_ground_row (const InkGround *self, int y, int width, float *levels);
