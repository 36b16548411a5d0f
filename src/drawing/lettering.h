#pragma once
#include <cairo.h>
#include "drawing/look.h"
#include "geometry/segment.h"

/** Words and figures on a drawing. What was laid out is remembered from drawing to drawing (lettering-lines.h). Places are user units, x to
 *  the right, y down; boxes likewise. */
typedef struct {
  cairo_t *cr;             /* NULL: only measures */
  const Look *look;
} Lettering;

/** Where the height of a capital stands on its place. */
typedef enum { LETTERS_ON_LINE, LETTERS_AT_MIDDLE, LETTERS_BELOW } LettersRise;

typedef struct {
  const char *text;
  Point place;
  double size;             /* em; 0: the look's text_size */
  Colour colour;           /* alpha 0: graphite */
  double across;           /* which part of its width stands at the place: 0 its beginning, 0.5 its middle, 1 its end */
  LettersRise rise;
  bool bold;
  bool turned;             /* read from the right: runs up the page; `across` and `rise` turn with it */
  double halo;             /* sheet colour this far beyond each stroke; 0 none */
  bool plate;              /* or a plate of sheet colour behind it */
} Letters;

/** cr may be NULL to measure only; it is left to its owner. */
Lettering lettering_begin (cairo_t *cr, const Look *look);

/** The text with spaces that can be seen between whole inches and a fraction: thin ones hardly have a width in small letters, and 1 7/16
 *  would be read as 17/16; a no-break space there is widened by a hair too. All that is drawn is spaced so. A new string. */
char *lettering_spaced (const char *text);
/** The box of the letters: their advance by the height from capital to descender. */
Box  lettering_box  (const Lettering *self, const Letters *letters);
/** Paints them. Leaves cr's path empty and its source changed. */
void lettering_draw (const Lettering *self, const Letters *letters);
