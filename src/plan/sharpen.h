#pragma once
#include "plan/follow.h"

/* Private to the plan room. */

/** Puts sharp corners back that a path has cut. Where the line turns by more than 20 degrees within 5 mm, what lies before and behind is
 *  carried on until it meets; if there is ink all the way and where they meet, the line has a corner there. A bend has none where its
 *  tangents meet.
 *  line     its places, px of the ink, and weights are changed
 *  returns  CORE_OK, CORE_NO_MEMORY */
CoreStatus sharpen_corners (const Ink *ink, double px_per_mm, FollowedLine *line);

/** The same for one corner that is known to be about that place, of the line's: however near to it the line bends. Nothing where none is printed.
 *  returns  CORE_OK, CORE_NO_MEMORY
 *  px_per_mm  pixels a mm, > 0 */
CoreStatus sharpen_corner_at (const Ink *ink, double px_per_mm, size_t place, FollowedLine *line);
