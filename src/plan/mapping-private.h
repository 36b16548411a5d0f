#pragma once
#include "plan/mapping.h"

/* What the mapping's own files share. */

/** One standard deviation, px, of a click's place along any one direction: evenly spread over 2 MAPPING_CLICK_PX. */
#define CLICK_SIGMA_PX (MAPPING_CLICK_PX / 1.7320508075688772)
/** … and of the distance between two clicks. */
#define LENGTH_SIGMA_PX (CLICK_SIGMA_PX * 1.4142135623730951)
/** Below this fraction of a figure's own size two of its places are one, and three on a line. */
#define AS_GOOD_AS_NOTHING 1e-9

/** The cross product, positive when b lies clockwise of a on the picture (y down); their unit squared (mm or pixels). */
static inline double cross (Point a, Point b)  { return a.x * b.y - a.y * b.x; }
/** The dot product; their unit squared (mm or pixels). */
static inline double dot (Point a, Point b)    { return a.x * b.x + a.y * b.y; }

/** A mapping that does nothing but know its picture's middle: px are mm. */
Mapping mapping_plain (double width_px, double height_px);
/** Without the lens: the file's px to where a straight-lined picture has it. NAN beyond the fold. */
Point   mapping_undo_lens (const Mapping *mapping, Point px);
/** The misfit of nothing. */
MappingMisfit misfit_nothing (void);

/** Each sets its part of the mapping and of the misfit; the mapping has its lens already. */
CoreStatus mapping_find_lens      (const Knowns *knowns, Mapping *mapping, MappingMisfit *misfit);
/** The homography of the rectangle's corners. */
CoreStatus mapping_from_rectangle (const Knowns *knowns, Mapping *mapping, MappingMisfit *misfit);
/** One scale, or one each way. */
CoreStatus mapping_from_lengths   (const Knowns *knowns, Mapping *mapping, MappingMisfit *misfit);
/** Whether the corners, in that order, make a rectangle seen from anywhere: CORE_OK, CORE_SINGULAR or CORE_CROSSES_ITSELF. */
CoreStatus corners_check (const Point corners[4]);
/** What remains of each length, made by whatever; the mapping is complete. */
void       mapping_check_lengths  (const Knowns *knowns, const Mapping *mapping, MappingMisfit *misfit);
/** Whether what is known is finite, positive and of no more than there is room for. */
CoreStatus knowns_check (const Knowns *knowns);
