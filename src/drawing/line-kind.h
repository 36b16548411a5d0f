#pragma once
#include <cairo.h>
#include "drawing/look.h"
#include "geometry/segment.h"

/** The kinds of line of a drawing, after ISO 128 (from memory). Colour is the caller's: a kind says width, dashes and ends. */
typedef enum {
  LINE_OUTLINE,          /* surfaces, body */
  LINE_SELECTED,         /* the outline of what is selected */
  LINE_INNER,            /* hinge lines */
  LINE_PART,
  LINE_CONSTRUCTION,     /* formers, dimension, extension and leader lines */
  LINE_HIDDEN,           /* what lies under the body */
  LINE_CENTRE,
  LINE_OTHER_POSITION,   /* a hatch to cut, a propeller's disc */
  LINE_DATUM,
  LINE_PROPOSAL,         /* what is not settled yet; snap guides */
  LINE_LEAD              /* round dots */
} LineKind;

/** Sets width, dashes, caps and joins on cr for that kind, in user units (px on screen, mm on paper). */
void line_kind_set (cairo_t *cr, const Look *look, LineKind kind);

/** Device pixels a user unit, > 0, and the device place of user place 0, for one axis. The surface's device scale counts. */
typedef struct { double scale, shift; } DeviceAxis;
/** False, and the axis untouched, where nothing can be snapped: on PDF and SVG, and when cr is turned or mirrored. */
bool device_axis (cairo_t *cr, bool across, DeviceAxis *axis);

/** The x, user units, at which a line down the page of `width` user units must run so that its edges fall on whole device pixels: on
 *  half pixels for odd widths. The surface's device scale counts. Unchanged on PDF and SVG, and when cr is turned. */
double line_crisp_x (cairo_t *cr, double x, double width);
/** The same for the y of a line across the page: user units, on whole or half device pixels. */
double line_crisp_y (cairo_t *cr, double y, double width);

/** Strokes a straight line with cr's width; crisp when it runs along an axis. */
void line_stroke (cairo_t *cr, Point from, Point to);
/** Adds a rectangle to the path, crisp for cr's line width. */
void line_add_box (cairo_t *cr, Box box);
