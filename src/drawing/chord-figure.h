#pragma once
#include <cairo.h>
#include "drawing/look.h"
#include "figures/figures.h"

/** The answer's picture: 0..62 % of the mean chord with section, band, balance disc, neutral point, whiskers, scale in % MAC and aim.
 *  Without a neutral point: a broken empty section. Mirrors nothing in right-to-left. About 300 × 84 px at text factor 1. */
void draw_chord_figure (cairo_t *cr, const Look *look, const Figures *figures, double width, double height);
/** The rail's picture in the panel: stops, places in the band, aim, the part. `solution` may be NULL (no target). */
void draw_rail_figure (cairo_t *cr, const Look *look, const Part *part, const Solution *solution, double width, double height);
/** mm along the rail for px x of draw_rail_figure, so that the part can be pulled there. */
double rail_figure_place (const Part *part, double width, double x);
