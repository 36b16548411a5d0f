#pragma once
#include <cairo.h>
#include "geometry/segment.h"

/** Which places of a sheet are still empty: learnt from a coarse picture of what is drawn so far, so that no drawing need keep a list of
 *  what it covers. Places and sizes are mm, x to the right, y down. */
typedef struct FreeSpace FreeSpace;

FreeSpace *free_space_new  (double width, double height);          /* mm, all of it empty; to be painted on */
void       free_space_free (FreeSpace *self);                      /* NULL is fine */
/** What is painted here counts from free_space_close on: in any colour as taken, in black as ink besides. User units mm. The caller's to
 *  destroy before that. */
cairo_t   *free_space_open  (FreeSpace *self);
/** Counts up what was painted. The questions below are for a space that was closed. */
void       free_space_close (FreeSpace *self);

/** Whether nothing touches the box. */
bool       free_space_is_clear (const FreeSpace *self, Box box);
/** How much of the box is black, mm². */
double     free_space_ink      (const FreeSpace *self, Box box);
/** Takes a box besides. Needs no closing. */
void       free_space_take     (FreeSpace *self, Box box);
/** How many boxes were taken: to be gone back to. */
size_t     free_space_taken    (const FreeSpace *self);
/** Goes back to so few, those taken first: to try one thing after another in the same space. */
void       free_space_give_back (FreeSpace *self, size_t taken);

/** Where a thing wants to stand: with `corner` of its own box (0, 0 the upper left, 1, 1 the lower right) at `anchor`, else as near to it
 *  as there is room, a mm across counted `across` times and a mm up or down `down` times; within `within`; clear of everything by
 *  `clear`. */
typedef struct { Point size; Box within; Point anchor, corner; double across, down, clear; } Wish;
/** How far off its wish it stands, in mm weighted by `across` and `down`, goes to *cost. False when there is no room. */
bool       free_space_find (const FreeSpace *self, const Wish *wish, Box *found, double *cost);
