#pragma once
#include <stdbool.h>
#include <cairo.h>

/** What a drawing looks like: colours by meaning, line widths, lettering. A value; the light, dark, high-contrast and paper looks are
 *  four constants of it. User units: px on screen, mm on paper; `u` says how many of them a screen px is worth. */
typedef struct { double red, green, blue, alpha; } Colour;

typedef struct {
  Colour sheet, graphite, construction, centre_line, band, balance, neutral, warning, selection, part_fill;
  Colour ruler_ground, grid_fine, grid_coarse, dim_text;
  Colour plan_ink;         /* of a plan beneath the sheet, at full strength */
  bool paper;              /* nothing that only a screen has: selection, nodes, grid */
  bool halo;               /* only makes room for what is drawn next: no words, which bring their own, and nothing within a filled box */
  double u;                /* 1 on screen, 0.3 on paper */
  double outline_width, selected_width, inner_width, part_width, thin_width, hatch_width, hatch_step;
  double symbol_line;      /* factor on the lines of symbols: 1, in high contrast 1.5 */
  const char *font;        /* pango family */
  double text_size;        /* of labels; the other sizes keep their ratio to it. All are ems in user units */
  double figure_size, ruler_size, plate_size;
  double cap_height;       /* of figures and capitals, share of the em */
} Look;

typedef enum { LOOK_LIGHT, LOOK_DARK, LOOK_LIGHT_CONTRAST, LOOK_DARK_CONTRAST } LookTheme;
/** For the screen; text_factor, a ratio > 0, is the system font's size over its usual 13.5 px (larger text grows the sheet's, too). */
Look look_for_screen (LookTheme theme, double text_factor);
/** For paper: black on white, ISO line widths in mm, the drawing's own lettering. */
Look look_for_paper  (void);
/** Makes the colour, its alpha too, what cr paints with. */
void look_set_source (cairo_t *cr, Colour colour);
/** A symbol's size in user units: px on screen, mm on paper, where the two are not in the ratio of `u`. */
static inline double look_size (const Look *look, double px, double mm) { return look->paper ? mm : px; }
/** The em that gives figures and capitals this height, both in user units (pixels on screen, mm on paper). */
double look_em_of_caps (const Look *look, double cap_height);
