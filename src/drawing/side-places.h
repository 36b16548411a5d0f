#pragma once
#include "drawing/side-view.h"

/** Where things stand in the side view; shared by what paints it and what finds them. A place's x is mm aft, its y is z, mm up. */

/** The sheet's view with its origin_x where z = 0 stands in the strip. */
SheetView side_view_of (const SideScene *side);
/** A part seen from the side, its own size; a propeller as high as its disc. */
Box side_part_box (const Part *part);
/** Foot and height of all that is drawn: bodies, fins, parts, surfaces' roots; z in y. Propellers may run out of the strip. Empty for an
 *  empty aeroplane. */
Box side_shapes_box (const Aeroplane *aeroplane);
/** A horizontal surface's root, seen from the side: leading and trailing edge at its incidence. False when it has no chord there. */
typedef struct { Point leading, trailing; double thickness; } SideSection;     /* thickness: share of the chord; 0 a plate */
bool side_section (const Surface *surface, SideSection *section);
/** A fin's outline lifted to its z; a new one, NULL when it cannot be made. */
Outline *side_fin_outline (const Surface *fin);
