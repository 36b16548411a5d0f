#pragma once
#include "document/piece.h"

/* Lines in the making, of StructureItem. A sixteenth of an inch, mm. */
static const double sixteenth = 25.4 / 16;

/** Appends a line and lends it until the next: a material of material-class.h (or NULL), what it goes by. The name is translated. */
StructureItem *usual_line (GArray *lines, const char *name, const char *material, ItemTraced of);

/** The lines of a body, and where along its length their middle is; false when its outlines do not tell.
 *  `centre` is a fraction of the length from the nose. */
bool usual_body (const Body *body, GArray *lines, double *centre);
