#pragma once
#include <cairo.h>
#include "document/units.h"
#include "drawing/look.h"
#include "drawing/view.h"

typedef struct {
  const Look *look;
  Units units;
  const SheetView *view;
  double pointer;             /* mm along this ruler; NAN: none */
  double extent_from, extent_to;   /* the selection's, mm; NAN: none */
} Ruler;

/** Along the top, `width` by `height` pixels: from the centre line both ways. */
void draw_ruler_across (cairo_t *cr, const Ruler *ruler, double width, double height);
/** At the start edge, `width` by `height` pixels: aft of the datum. */
void draw_ruler_along  (cairo_t *cr, const Ruler *ruler, double width, double height);
/** Where the two meet, `width` by `height` pixels: names the unit. */
void draw_ruler_corner (cairo_t *cr, const Ruler *ruler, double width, double height);
/** The distance of labelled ticks at this zoom, mm: 1, 2, 5 × 10ⁿ mm, or halves to 32nds and whole inches. */
double ruler_step (Units units, double scale);
/** Five fields black and white, a round length of 90..220 px, at the lower left. */
void draw_scale_bar (cairo_t *cr, const Ruler *ruler);
/** What bar and figures cover, pixels of the window. */
Box  scale_bar_box  (const Ruler *ruler);
/** The length that the scale bar shows at this zoom, mm. */
double scale_bar_length (Units units, double scale);
