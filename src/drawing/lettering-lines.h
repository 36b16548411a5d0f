#pragma once
#include <cairo.h>
#include <pango/pango.h>
#include <stdbool.h>

/* Lines of letters that were laid out before: choosing the font and shaping the letters costs far more than painting them, and from frame to
 * frame a sheet's words are the same. Each thread remembers its own, up to some hundreds; then it begins anew. */

/** What the lines are for: layouts for a screen, for paper and those that only measure never stand in for each other. */
typedef enum { LINES_FOR_MEASURE, LINES_FOR_SCREEN, LINES_FOR_PAPER } LinesPurpose;

/** One line: all that its looks depend on but where it stands. */
typedef struct {
  const char *text;
  const char *font;        /* pango family */
  double size;             /* em, user units */
  bool bold, turned;       /* turned letters are drawn with a turned cr: a layout knows how it stands */
} LineOfLetters;

/** Made ready for a drawing on cr (NULL: only to measure). */
void lettering_lines_begin (LinesPurpose purpose, cairo_t *cr);
/** Before lines are drawn: upright ones on cr as it stands, or turned ones on cr turned already. */
void lettering_lines_fit (LinesPurpose purpose, cairo_t *cr, bool turned);
/** The line laid out; lent, until lettering_lines_begin is called again. */
PangoLayout *lettering_lines_find (LinesPurpose purpose, const LineOfLetters *line);
