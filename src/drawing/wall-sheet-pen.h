#pragma once
#include "drawing/dimension.h"
#include "drawing/lettering.h"
#include "drawing/line-kind.h"
#include "drawing/sheet-places.h"
#include "drawing/wall-sheet.h"

/** What every part of the wall sheet draws with. User units are mm on the paper, x to the right, y down. */
typedef struct {
  cairo_t *cr;                 /* NULL: only measures */
  const WallSheet *sheet;
  const Look *look;
  Lettering lettering;
  double figure_caps;          /* of dimensions: smaller on the papers of a desk */
  bool words_are_solid;        /* black boxes in place of words: for a free_space, so that nothing is laid across them */
} SheetPen;

/** Heights of capitals, mm. Text, tables and notes go down a step where paper is short. */
static const double caps_title = 7, caps_mark = 5, caps_figure = 3.5, caps_text = 2.5, caps_small = 2, caps_field = 1.8;

SheetPen pen_begin (cairo_t *cr, const WallSheet *sheet, const Look *look);      /* cr may be NULL to measure; all three are lent */

/** Which line of text, and how: `across` is the share of its width that stands left of the place. */
typedef struct { Point at; double caps, across; } Script;
/** Writes one line, its foot at the place, black. */
void   pen_write (const SheetPen *pen, Script script, const char *text);
/** Writes it no wider than `width` mm: in smaller letters down to `least` caps, then cut. */
void   pen_write_within (const SheetPen *pen, Script script, double least, double width, const char *text);
/** A dimension, its figure in the pen's height unless it has a size. */
void   pen_dimension (const SheetPen *pen, Dimension dimension);
/** How wide the text is in capitals of that height, mm. */
double pen_width (const SheetPen *pen, double caps, const char *text);
/** The text in capitals `caps` mm high, or as much of it as is `width` mm wide, with three points behind it. A new string. */
char  *pen_fitted (const SheetPen *pen, double caps, double width, const char *text);
/** The text in lines no wider than `width` mm, broken at blanks, or inside words that are wider alone. NULL-terminated, g_strfreev. */
char **pen_wrapped (const SheetPen *pen, double caps, double width, const char *text);

/** A length, mm, as on the sheet, with its unit: between whole inches and a fraction the drawing's lettering wants more room than a
 *  space alone gives, lest 1 7/16 be read as 17/16. A new string. */
char  *paper_length        (Units units, double mm);
char  *paper_length_figure (Units units, double mm);      /* the same length, mm, without its unit */

/** Black, solid, `width` mm: for the path that follows. */
void   pen_set_line (const SheetPen *pen, double width);
void   pen_line (const SheetPen *pen, double width, Point from, Point to);      /* a line, black, `width` mm */
void   pen_box  (const SheetPen *pen, double width, Box box);                   /* a rectangle, likewise, `width` mm, middled on the box */

static inline double box_width  (Box box) { return box.max.x - box.min.x; }      /* mm, of a box that is not empty */
static inline double box_height (Box box) { return box.max.y - box.min.y; }      /* mm, likewise */
