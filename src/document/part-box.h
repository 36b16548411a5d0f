#pragma once
#include "document/piece.h"

/** A part's box as it is turned. Millimetres. */

/** Whether nothing else may stand where it stands: it has a size, and its class keeps clear (part_class_keeps_clear). */
bool  part_stands_clear (const Part *part);
/** How far it reaches along x and along y: of the rectangle seen from above, turned, the box around it. */
Point part_extent  (const Part *part);
/** Its four corners seen from above, in order round. */
void  part_corners (const Part *part, Point corners[4]);
