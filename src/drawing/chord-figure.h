#pragma once
#include <cairo.h>
#include "document/units.h"
#include "drawing/look.h"
#include "figures/figures.h"

/** The answer's picture, `width` by `height` pixels from cr's origin: 0..62 % of the mean chord with section, band, balance disc, neutral
 *  point, whiskers, scale in % MAC and aim. Without a neutral point: a broken empty section.
 *  Mirrors nothing in right-to-left. About 300 × 84 px at text factor 1. */
void draw_chord_figure (cairo_t *cr, const Look *look, const Figures *figures, double width, double height);

/** One part's rail, for the panel. `solution` may be NULL (no target). */
typedef struct { const Look *look; Units units; const Part *part; const Solution *solution; } RailFigure;
/** The rail's picture in the panel, `width` by `height` pixels from cr's origin: stops, places in the band, aim, the part. About
 *  300 × 78 px at text factor 1. */
void draw_rail_figure (cairo_t *cr, const RailFigure *rail, double width, double height);
/** mm along the rail for px x of draw_rail_figure, so that the part can be pulled there; not bounded by the rail's ends. */
double rail_figure_place (const Part *part, double width, double x);
