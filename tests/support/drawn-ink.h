#pragma once
#include <stddef.h>
#include "geometry/outline.h"
#include "plan/ink.h"

/** A line drawn on paper, px: through these places, so wide. */
typedef struct { const Point *places; size_t count; double width; } DrawnLine;

/** Grey paper with these lines on it, smooth edged; rows of `width` bytes, from malloc. */
unsigned char *paper_with_lines (int width, int height, const DrawnLine lines[], size_t count);
/** The same as ink; one reference. */
Ink *ink_of_lines (int width, int height, const DrawnLine lines[], size_t count);

enum { DRAWN_ROOM = 4096 };
/** The outline as places about half a px apart, each times `scale` and then moved by `shift`, x and y swapped: x runs down the picture, as
 *  the nose is at its top. Room for DRAWN_ROOM; how many there are. */
size_t places_of_outline (const Outline *outline, double scale, Point shift, Point *places);
