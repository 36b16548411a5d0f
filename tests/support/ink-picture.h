#pragma once
#include <glib.h>
#include <stdbool.h>
#include "geometry/segment.h"

/* What ink lies where on a sheet of paper, coarse enough to be kept as a small picture, and how two of them are compared. Places are mm from the
 * upper left corner. */

enum { INK_PX_PER_MM = 2 };

typedef struct {
  int width, height;       /* px */
  unsigned char *ink;      /* rows without gaps; 0 paper, 255 black */
} InkPicture;

void ink_free (InkPicture *self);      /* NULL is fine */
G_DEFINE_AUTOPTR_CLEANUP_FUNC (InkPicture, ink_free)

/** A page of a PDF, from 0, as poppler paints it; `words` may be NULL, else every word on it (PdfWord). Ends the test when there is none. */
InkPicture *ink_of_pdf (GBytes *bytes, int page, GArray **words);
/** A drawing as librsvg paints it. */
InkPicture *ink_of_svg (GBytes *bytes);
/** A copy in which what lies in the box is moved by (x, y), onto what is there; far enough away, it is removed. */
InkPicture *ink_moved (const InkPicture *self, Box box, double x, double y);

/** A picture that was kept; NULL where there is none of its kind. */
InkPicture *ink_load (const char *path);
/** Keeps it, as a PNG of some thirty greys. */
bool        ink_save (const InkPicture *self, const char *path);

typedef struct {
  double most;             /* the greatest difference of ink, as a share of black; 1 where the pictures are not of one size */
  Point where;             /* and its place, mm */
} InkDifference;

/** How different they look from some distance: ink is spread over some mm, so that letters and edges smoothed in another way, or moved by a tenth
 *  of a millimetre, do not count; a word that is gone or moved does, and so does a line of another weight. */
InkDifference ink_compare (const InkPicture *expected, const InkPicture *found);
/** A picture of that: what is gone red, what is new blue, what is common grey. */
bool          ink_save_difference (const InkPicture *expected, const InkPicture *found, const char *path);
