#pragma once
#include <cairo.h>
#include "drawing/look.h"
#include "geometry/segment.h"

/* A picture in memory whose pixels can be asked. Places are user units (px at scale 1), x to the right, y down. */

typedef struct {
  cairo_surface_t *surface;
  cairo_t *cr;
  double scale;            /* device pixels a user unit */
} Canvas;

/** All of one colour. */
Canvas canvas_new   (double width, double height, double scale, Colour ground);
void   canvas_clear (Canvas *self);

Colour canvas_at    (const Canvas *self, double x, double y);
/** How different two colours are: the greatest difference of a channel, 0..1. */
double colour_distance (Colour a, Colour b);
/** Share of the box's pixels that are the colour within 0.12 a channel: a line's blurred edges do not count. */
double canvas_share (const Canvas *self, Box box, Colour colour);
/** The box of all pixels that are not `ground` within 0.02; empty when there is none. */
Box    canvas_marked (const Canvas *self, Colour ground);
/** WCAG 2 contrast of two opaque colours, 1..21. */
double colour_contrast (Colour a, Colour b);
/** WCAG 2 relative luminance, 0..1. */
double colour_luminance (Colour colour);
