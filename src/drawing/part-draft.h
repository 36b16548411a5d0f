#pragma once
#include <cairo.h>
#include "drawing/look.h"
#include "geometry/segment.h"

/** One part being drawn: its box grown to the least size, user units, and the colour of its lines. */
typedef struct {
  cairo_t *cr;
  const Look *look;
  Box box;
  Point middle;
  double half_x, half_y;
  Colour ink;
} PartDraft;

void part_ink         (const PartDraft *draft);      /* takes its colour */
void part_detail_line (const PartDraft *draft);      /* and the thin line of details */

/* What is not a box: the shells and sticks that a part list holds besides the works. Drawn open, so that they hide nothing. */
void part_draw_spinner       (const PartDraft *draft);      /* a cone, round ahead and straight behind */
void part_draw_wheels        (const PartDraft *draft);      /* one at either end of the box's width */
void part_draw_undercarriage (const PartDraft *draft);      /* wheels, and legs from the middle */
void part_draw_wheel_side    (const PartDraft *draft);      /* a wheel at its foot, and its leg */
void part_draw_shell         (const PartDraft *draft);      /* cowl or canopy: a rounded edge, broken */
void part_draw_pilot         (const PartDraft *draft);      /* shoulders and a head */
void part_draw_pushrod       (const PartDraft *draft);      /* a line along its longer way, an eye at either end */
void part_draw_switch        (const PartDraft *draft);      /* a slide in its slot */
