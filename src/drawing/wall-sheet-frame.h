#pragma once
#include "drawing/wall-sheet-pen.h"

/** The sheet's border: 20 mm at the left for filing, 10 mm elsewhere; zones and centring marks. Proportions after ISO 5457 (from
 *  memory). */

/** Inside the border line, mm. */
Box  wall_frame_box (const WallSheet *sheet);
/** Where something may be drawn: inside the border, above and beside as far as the centring marks reach in. */
Box  wall_room_box  (const WallSheet *sheet);
/** The lower centring mark, which reaches into that room. */
Box  wall_lower_mark_box (const WallSheet *sheet);
/** Border line, zones with their letters, centring marks. */
void wall_frame_draw (const SheetPen *pen);
