#pragma once
#include "document/aeroplane.h"
#include "drawing/selection.h"

/** Parts that are chosen and moved together, and parts that come in pairs. */

/** The piece of that id, and where it is a part of a group all others of it; the caller's. */
Selection  part_group_selection (const Aeroplane *aeroplane, const char *id);
/** Whether the selection is of parts alone, one at least. */
bool       part_group_is_parts  (const Aeroplane *aeroplane, const Selection *selection);

/** The selected parts in a group of a name of its own; when they are one group already, in none. NULL with fewer than two parts. */
Aeroplane *part_group_toggled   (const Aeroplane *aeroplane, const Selection *selection);
/** Whether all that is selected is in one group. */
bool       part_group_is_one    (const Aeroplane *aeroplane, const Selection *selection);
/** The step's name: "Group Parts" or "Take Group Apart". Static, translated. */
const char *part_group_label    (const Aeroplane *aeroplane, const Selection *selection);

/** Whether there is anything to copy to the other side. */
typedef enum {
  MIRROR_POSSIBLE,
  MIRROR_ON_CENTRE,     /* no selected part stands off the centre line */
  MIRROR_THERE          /* of all that do there is one of their class on the other side already */
} MirrorLack;
/** MIRROR_POSSIBLE where one at least can be copied. */
MirrorLack part_group_mirror_lack (const Aeroplane *aeroplane, const Selection *selection);

/** A copy of each selected part on the other side of the centre line, turned the other way, in the same group, with copies of its leads: to
 *  the same other end, or to that one's copy where it is copied too. A part whose pair is there already gets none. NULL unless it is
 *  MIRROR_POSSIBLE.
 *  made  set to the copies, the caller's */
Aeroplane *part_group_mirrored  (const Aeroplane *aeroplane, const Selection *selection, Selection *made);
