#pragma once
#include "drawing/lettering.h"
#include "drawing/line-kind.h"

/** Signs that run from place to place. Places are user units, x to the right, y down; each leaves cr as it found it. */

/** Rail along the page at x from y `from` to `to`, with stops; the places that keep the margin in its band hatched on its left. */
typedef struct { double x, from, to, band_from, band_to; Colour colour; } RailLine;      /* band_from NAN: none */
void draw_rail (cairo_t *cr, const Look *look, const RailLine *rail);

/** A lead through `count` >= 2 places, dotted, corners rounded, with plugs at both ends. `reach` is the length that it really has, user
 *  units (pixels, mm on paper); what lies beyond is drawn solid in the warning colour. INFINITY: long enough. */
void draw_lead (cairo_t *cr, const Look *look, const Point places[], size_t count, double reach, bool selected);
/** The length of that share of such a way, in its places' units; INFINITY for all of it and more. `share` is a fraction >= 0. */
double lead_reach (const Point places[], size_t count, double share);
/** Where the way from a box's middle to `to` leaves the box: leads end at a part's edge. */
Point lead_box_edge (Box box, Point to);
/** Where the legs of a two-into-one lead meet: a small solid disc. */
void draw_lead_joint (cairo_t *cr, const Look *look, Point at);

/** A thin wavy line along the page from y `from` to `to` at x, user units (pixels, mm on paper): here a thing is cut short. */
void draw_break (cairo_t *cr, const Look *look, double x, double from, double to);

/** What stands on the thing: a dot on an area, an arrow on an edge. */
typedef enum { LEADER_DOT, LEADER_ARROW } LeaderEnd;
/** A leader from the thing to where its number stands. */
void draw_leader (cairo_t *cr, const Look *look, Point on_thing, Point to, LeaderEnd end);
/** A number in a circle of 6.8 mm. */
void draw_number (const Lettering *lettering, Point at, const char *number);
/** The radius of that circle, user units (pixels, mm on paper). */
double number_radius (const Look *look);
