#pragma once
#include "drawing/lettering.h"
#include "drawing/line-kind.h"

/** A length on a drawing: extension lines, a line with filled arrowheads, a figure above it, read from below or from the right.
 *  Places are user units, x to the right, y down. Proportions after ISO 129 (from memory). */
typedef struct {
  Point from, to;              /* the ends of the dimension line */
  Point foot_from, foot_to;    /* what is measured: the extension lines begin beside it; the line's own end: none */
  const char *figure;
  double size;                 /* em of the figure; 0: the look's figure_size */
  Colour line, letters;        /* alpha 0: construction, graphite */
  LineKind feet;               /* of the extension lines; LINE_OUTLINE (0) stands for LINE_CONSTRUCTION */
} Dimension;

/** Paints it. Arrowheads stand outside, and the figure beyond the second end, when there is no room between. */
void dimension_draw (const Lettering *lettering, const Dimension *dimension);
/** The box of its figure, user units. */
Box  dimension_figure_box (const Lettering *lettering, const Dimension *dimension);
/** A filled arrowhead, 9 × 3 px (3 × 0.9 mm), whose tip stands at `tip` and points along the unit vector `along`. Source colour is cr's. */
void draw_arrowhead (cairo_t *cr, const Look *look, Point tip, Point along);
