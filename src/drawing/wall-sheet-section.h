#pragma once
#include "drawing/wall-sheet-pen.h"

/** The wing's section at the mark's station at full size, with the mark and both limits: to be laid on the wing. Whole, or broken off
 *  behind the aft limit where paper is short. The shape is that of a usual section of the stated thickness; the lengths along it are
 *  true. */
typedef enum { SECTION_NONE, SECTION_BROKEN, SECTION_WHOLE } SectionExtent;

/** The first mark that lies on the wing; NULL when there is none, and then no section is drawn. */
const MarkFigures *section_mark (const WallSheet *sheet);
/** Whether breaking it off saves paper worth having. */
bool section_can_break (const WallSheet *sheet);
/** Draws it under its heading, the upper left corner at `at`. `extent` is not SECTION_NONE and section_mark not NULL. */
void section_draw      (const SheetPen *pen, Point at, SectionExtent extent);
/** In its place: the heading, and why it is not there, in lines no wider than `width` mm. */
void section_draw_missing (const SheetPen *pen, Point at, double width);
