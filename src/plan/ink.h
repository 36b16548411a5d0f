#pragma once
#include <stdbool.h>
#include "geometry/point.h"
#include "geometry/status.h"
#include "plan/raster.h"

/** What is printed on a plan, without its paper: 8 bits a pixel, 0 for paper to 255 for a full line, whether the lines are darker or
 *  lighter than their ground. Yellowing, folds' shade, vignette and shadows are divided out. Nobody changes one that exists; counted
 *  references, safe across threads. */
typedef struct Ink Ink;

/** Asked while work goes on, with the share done, 0 to 1; false ends it. */
typedef bool (*InkGoesOn) (double done, void *data);

/** Takes the ink off its paper.
 *
 *      ink = (1 − value / ground) / darkest        the ground: the median of each square of 32 pixels, smoothed between them
 *
 *  A colour picture is read in the channel (red, green, blue or their mean) whose lines stand out most from its noise: blue lines on
 *  cream paper in the red. `darkest` is what the strongest hundredth of the ink reaches, so that faint prints use the range too.
 *  goes_on   may be NULL
 *  made      set on success (one reference, the caller's)
 *  returns   CORE_OK, CORE_NO_MEMORY, CORE_CANCELLED when goes_on said so
 *  memory    a byte a pixel, and while it works no more than a thousandth besides
 *  cost      about 10 ns a pixel */
CoreStatus ink_new (const Raster *raster, InkGoesOn goes_on, void *data, Ink **made);
/** One channel of a picture as it is, its paper with it: 1 for black (0 is what lies beyond a picture's edge) to 255.
 *  channel  0 to 2: red, green, blue; of a grey picture each is the same
 *  returns  one reference, the caller's; NULL without memory */
Ink *ink_of_channel (const Raster *raster, int channel);
Ink *ink_ref   (const Ink *self);      /* one reference more, the caller's; not NULL */
void ink_unref (Ink *self);                                /* NULL is fine */

int  ink_width   (const Ink *self);                        /* in its own pixels */
int  ink_height  (const Ink *self);
int  ink_reduced (const Ink *self);                        /* how many of the file's pixels make one of its own, each way */
bool ink_is_light (const Ink *self);                       /* the lines were lighter than their ground */
const unsigned char *ink_row (const Ink *self, int y);     /* ink_width bytes, lent */

/** The ink at a place, 0 to 255, between the four pixels about it by their nearness; places are in the ink's own pixels, the first
 *  one's centre at (0.5, 0.5). Beyond the edge the edge's own. */
double ink_at (const Ink *self, Point place);
