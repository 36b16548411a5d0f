#pragma once
#include <stddef.h>
#include "plan/ink.h"

/** Ink together with copies of half its size, a quarter, and so on, so that it can be shown small without being looked at whole. Nobody
 *  changes one that exists; counted references, safe across threads. */
typedef struct InkLevels InkLevels;

enum { INK_LEVELS_MOST = 16 };

/** Makes the copies; each pixel lies half way between the mean of four and the
 *  strongest of them, so that thin lines are seen from afar. Takes the ink.
 *  returns  one reference, the caller's; NULL without memory
 *  memory   a third of the ink's own */
InkLevels *ink_levels_new   (Ink *takes);
/** The same by the mean alone: for what is brightness rather than ink. */
InkLevels *ink_levels_new_even (Ink *takes);
InkLevels *ink_levels_ref   (const InkLevels *self);      /* one reference more, the caller's; not NULL */
void       ink_levels_unref (InkLevels *self);                   /* NULL is fine */
const Ink *ink_levels_ink   (const InkLevels *self);             /* lent */

/** Where something is shown: from a place in the window, px of the screen, to the picture's, px of the file; not finite where there is
 *  none. It has no kinks. */
typedef struct { Point (*to_file) (Point window, const void *data); const void *data; } InkWindow;

/** Fills a window of the screen with the ink as it is seen there, 0 to 255, rows of `stride` bytes; nothing beyond the picture. Where the
 *  screen shows less than the file has, the fitting copy is read; between pixels by their nearness.
 *  accuracy  the map is followed to a tenth of a screen pixel: it is asked every 16th, and between them straight
 *  cost      about 4 ns a pixel of the screen, whatever the picture's size */
void ink_levels_show (const InkLevels *self, const InkWindow *window, int width, int height, size_t stride, unsigned char *shown);
