#pragma once
#include "document/aeroplane.h"

/** How long, wide and high a body is, and what a hand does to that. */

/** mm; NAN where no outline tells it. */
typedef struct {
  double length;      /* of the outline from above; where there is none of that from the side */
  double width;       /* the greatest, both halves */
  double height;      /* the greatest */
} BodySize;

BodySize body_size (const Body *body);      /* of its outlines as they stand, mm, >= 0; NAN where none tells it */

/** Stretches a body to this length > 0, mm: both its outlines from the nose of the one that tells the length, and its formers with them, so
 *  that bays follow. As with a surface's span parts, leads and structures stay where they are, and so does whatever else there is. As the
 *  changes of changes.h; NULL also where no outline tells a length. */
Aeroplane *change_body_length (const Aeroplane *self, const char *id, double length);
/** Stretches its outline from above to this greatest width > 0, mm, from the centre line. NULL also where there is none. */
Aeroplane *change_body_width  (const Aeroplane *self, const char *id, double width);
/** Stretches its outline from the side to this greatest height > 0, mm: from the height of the thrust line where that passes through it, else
 *  of the datum line where that does, else from its own middle. NULL also where there is none. */
Aeroplane *change_body_height (const Aeroplane *self, const char *id, double height);
