#pragma once
#include "document/piece.h"

/** A part's box as it is turned. Millimetres. */

/** How far it reaches along x and along y: of the rectangle seen from above, turned, the box around it. */
Point part_extent  (const Part *part);
/** Its four corners seen from above, in order round. */
void  part_corners (const Part *part, Point corners[4]);
