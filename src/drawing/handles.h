#pragma once
#include <cairo.h>
#include "drawing/line-kind.h"
#include "geometry/outline.h"

/** What a hand takes hold of, and what only a screen shows. Places are user units, x to the right, y down; each leaves cr as it found
 *  it. */

/** An outline's node by its kind: circle, dotted circle, square; filled with the selection colour when selected. */
void draw_node (cairo_t *cr, const Look *look, Point at, NodeKind kind, bool selected);
/** The line to a handle and its open dot. */
void draw_handle (cairo_t *cr, const Look *look, Point node, Point handle);
/** A square handle of 8 px: the end of a hinge line or rail. */
void draw_grip (cairo_t *cr, const Look *look, Point at);

/** Four corner brackets: a bay. */
void draw_brackets (cairo_t *cr, const Look *look, Box box);
/** Keyboard focus: a broken ring 4 px outside the box, in selection colour on a halo. */
void draw_focus_ring (cairo_t *cr, const Look *look, Box box);
/** A proposal's arrow, 8 × 7 px, from `from` towards `to`, in the selection colour. */
void draw_proposal_arrow (cairo_t *cr, const Look *look, Point from, Point to);
