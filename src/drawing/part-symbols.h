#pragma once
#include <cairo.h>
#include "drawing/look.h"
#include "geometry/segment.h"

/** A proposal is broken until accepted; what has still to come is whole, in the lighter colour of construction; what is not aboard is broken
 *  too, in the colour of construction, and empty. */
typedef enum { PART_SETTLED, PART_SELECTED, PART_PROPOSED, PART_LEFT_OUT, PART_TO_COME } PartState;

/** A part true to scale, nose at the top. The box is in user units, x to the right, y down. */
typedef struct {
  const char *class_word;      /* as in the file; NULL or unknown: a plain box */
  Box box;                     /* before it is turned */
  double turn;                 /* degrees about its middle: its forward end to the left */
  bool side;                   /* seen from the side: the box alone; a propeller is the line of its disc */
  PartState state;
} PartSymbol;

/** Paints the part: box, part fill, and inside it what tells its class; below 14 px (4 mm) the box alone. Never under 6 px (1.8 mm). */
void draw_part_symbol (cairo_t *cr, const Look *look, const PartSymbol *part);
/** The box that is really drawn for a part whose own box is this: grown to the least size about its middle. */
Box  part_symbol_box (const Look *look, Box box);
/** Whether the class is a filled thing that words should not cover; shells and sticks are drawn open. */
bool part_symbol_is_shell (const char *class_word);      /* whether it only lies round other things: a cowl, a canopy */
bool part_symbol_is_solid (const char *class_word);
