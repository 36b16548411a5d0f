#pragma once
#include "drawing/wall-sheet-pen.h"

/** Small print: what is missing or wrong with the aeroplane, where the battery goes, rigging, and the cautions every sheet carries. */
char **wall_notes_of  (const WallSheet *sheet);      /* whole sentences, NULL-terminated, g_strfreev */
/** The notes under their heading, numbered, in lines no wider than `width` mm; the upper left corner at `at`. */
void   wall_notes_draw (const SheetPen *pen, char *const notes[], Point at, double width);
