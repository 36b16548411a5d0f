#pragma once
#include <cairo.h>
#include "drawing/line-kind.h"

/** The drawing's own signs, nose at the top. Places are user units, x to the right, y down. Each leaves cr as it found it. The quartered
 *  disc, centre lines, arrows and leaders are standard drafting; the sizes are ours: px on screen, mm on paper. */

typedef enum { DISC_ON_SHEET, DISC_ON_CHORD } DiscPlace;
/** Balance point: a quartered disc on a plate, fore-right and aft-left filled; with four arms on the sheet, larger and without on the
 *  chord. */
void draw_balance_disc (cairo_t *cr, const Look *look, Point at, DiscPlace where);
/** The disc's radius, user units (pixels, mm on paper). */
double balance_disc_radius (const Look *look, DiscPlace where);

/** Neutral point: an open diamond; broken for a second opinion. Its ground is drawn before it by draw_neutral_halo. */
void draw_neutral_diamond (cairo_t *cr, const Look *look, Point at, bool broken);
/** The ground of the diamond, in the sheet's colour, a little wider than it: where signs may meet, all halos go before the first sign, lest one
 *  rub out another. */
void draw_neutral_halo (cairo_t *cr, const Look *look, Point at);
/** Half its length, user units (pixels, mm on paper); it is 0.8 as wide as long. */
double neutral_diamond_half (const Look *look);

/** Mean aerodynamic chord: a heavy bar at x from y `from` (its leading edge) to `to`, user units (pixels, mm on paper), with ticks at the
 *  ends and at a quarter. */
void draw_mean_chord (cairo_t *cr, const Look *look, double x, double from, double to);

/** 45° hatching, rising to the right, in a box: lines of the look's hatch width, one every hatch_step along the page. On
 *  a screen the step and the box's edges come to whole pixels (hatch.c). */
void draw_hatch (cairo_t *cr, const Look *look, Box box, Colour colour);
/** How the wanted band lies: across the page, its edges fore and aft (top and bottom), or along a chord, its edges left and right. */
typedef enum { BAND_ACROSS, BAND_ALONG_CHORD } BandDirection;
/** The wanted band: hatched, with those edges firm. */
void draw_wanted_band (cairo_t *cr, const Look *look, Box box, BandDirection direction);

/** Balance mark: a bar on the mark and the finger's or pin's triangle that touches it from aft. */
void draw_balance_mark (cairo_t *cr, const Look *look, Point at);
/** Its halo, in the sheet's colour, which keeps it clear of the hatch: to be drawn before any sign. */
void draw_balance_mark_halo (cairo_t *cr, const Look *look, Point at);
/** The mark on a section: a stroke through both faces; the triangle stands on `touched`, pointing towards `other`. */
void draw_section_mark (cairo_t *cr, const Look *look, Point touched, Point other);
/** A small solid triangle whose tip stands at `tip`: the aim on a scale or rail. It points down, or up when `up`. */
void draw_aim (cairo_t *cr, const Look *look, Point tip, bool up);

/** One standard deviation to either side of a symbol: from its edge (`clear` from its middle) to `reach`, user units, across the page or
 *  along it. */
typedef struct { Point at; double clear, reach; bool along_page; Colour colour; } Whiskers;
/** Both whiskers, their ends 9 px long; nothing when the deviation is shorter than its symbol. */
void draw_whiskers (cairo_t *cr, const Look *look, const Whiskers *whiskers);

/** An open triangle with a stroke in it. Never stands without words. */
void draw_warning (cairo_t *cr, const Look *look, Point at);
