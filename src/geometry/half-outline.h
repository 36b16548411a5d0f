#pragma once
#include <stdbool.h>
#include "geometry/outline.h"

/** Half-outlines of lines that were drawn elsewhere, and lie and run as whoever drew them pleased. Any one unit (mm in a document); x aft,
 *  y to starboard. */

/** How a drawn line was understood. */
typedef enum {
  HALF_DRAWN_OPEN,          /* as a half that leaves its root out: both ends stand at one station */
  HALF_DRAWN_WITH_ROOT,     /* as a half closed along its root by a straight side, which was taken out */
  HALF_DRAWN_WHOLE          /* as both halves: the starboard one was taken */
} HalfDrawn;

/** A drawn line and how it is to be laid before it is understood. */
typedef struct {
  Point start;
  const Segment *segments;      /* lines and curves, lent */
  size_t count;                 /* >= 1 */
  int quarter_turns;            /* clockwise on the sheet, where x runs down and y to the right: right becomes aft */
  bool mirrored;                /* afterwards: fore becomes aft */
  bool half_only;               /* it is one half and no more: a fin, or a rectangle that would pass for both */
} DrawnLine;

typedef struct {
  Outline *outline;             /* from the root's leading edge, at (0, 0), outboard to the tip and back to y = 0; the caller's */
  HalfDrawn drawn;
  double root_x;                /* where the root's leading edge was drawn, as the line was laid */
  double asymmetry;             /* of a whole: the largest difference of the chords at one distance from the middle, >= 0; else 0 */
} HalfOutline;

/** Makes a half-outline of a drawn line: root's leading edge, tip, root's trailing edge. A line whose ends meet within a thousandth
 *  of its box, or stand at one station within that, is taken at its word: its ends are moved together. Understood as a whole (unless it is
 *  half_only) where both sides of the middle of its box are the same within 3 % of its largest chord; else its longer straight side along x at
 *  its least or greatest station is the root. Halves to port are mirrored. Curves stay exact: they are turned and cut, never fitted.
 *  made      set on success, else untouched
 *  returns   CORE_OK; CORE_OPEN: neither closed nor do both ends stand at one station; CORE_OUT_OF_RANGE: closed, but neither symmetrical
 *            about a line along x nor with a straight side along it, or it passes its root more than twice, or has elliptical arcs;
 *            what outline_new and outline_check return, but for CORE_MULTI_VALUED */
CoreStatus half_outline_make (const DrawnLine *line, HalfOutline *made);

/** Makes the closed run of a body as seen from the side: from its foremost place, x = 0, along the top to the tail and back below. x aft
 *  and height in y, whose 0 is the middle of the box's height.
 *  returns   CORE_OK and one reference in *made, the caller's; CORE_OPEN: it is not closed (within a thousandth of its box); else as
 *            above */
CoreStatus side_outline_make (const DrawnLine *line, Outline **made);
