#pragma once
#include "geometry/segment.h"
#include "plan/ink.h"

/* Private to the plan room. */

/** A piece cut out of a picture's ink, coarser: what a short look needs, and no more. */
typedef struct {
  Ink *ink;              /* one reference */
  Point corner;          /* of its upper left one in the picture, the ink's px */
  double coarser;        /* how many of the ink's px make one of its own, each way */
} InkCut;

/** Cuts a box, the ink's px, out; what lies beyond the picture is left away. Each of its pixels is the mean of coarser × coarser.
 *  returns  CORE_OK; CORE_OUT_OF_RANGE when nothing is left; CORE_NO_MEMORY */
CoreStatus ink_cut (const Ink *ink, Box box, int coarser, InkCut *made);
