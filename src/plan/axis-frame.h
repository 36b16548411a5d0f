#pragma once
#include "plan/mapping.h"

/** A view's axis on the picture, px: its forward end, and its after end. */
typedef struct { Point fore, aft; } ViewAxis;

/** A view's own axes on the paper. x runs aft along the axis from its forward end, y away from it on the side traced, both mm as drawn:
 *  a view of one half, drawn on either side and turned any way, comes out as the right half. A value; made by axis_frame_on(). */
typedef struct {
  Point fore;         /* mm on the paper */
  Point along;        /* of length 1, towards the after end */
  double side;        /* 1: y grows to the side that is starboard where the nose is at the top; -1: to the other */
} AxisFrame;

/** Which side of the axis a place on the picture lies: 1 the side that is starboard where the nose is at the top, -1 the other; 1 on the
 *  axis itself. Judged on the paper. Any px, mm mapping. */
double axis_side (const Mapping *mapping, ViewAxis axis, Point px);

/** The frame of an axis on the paper.
 *  side      the sign of the side traced, 1 or -1: axis_side() of what is traced, or of the view as it is named
 *  frame     set on success, else untouched
 *  returns   CORE_OK; CORE_NOT_FINITE when an end lies nowhere on the paper; CORE_SINGULAR when both ends are one place
 *  units     the axis in pixels of the file; the frame in mm, its direction with no unit */
CoreStatus axis_frame_on (const Mapping *mapping, ViewAxis axis, double side, AxisFrame *frame);

/** Whether both are the same axes: their numbers are equal, or none. In mm on the paper. */
bool axis_frame_equal (const AxisFrame *one, const AxisFrame *other);
/** From mm on the paper to own axes, mm. */
Point axis_frame_own (const AxisFrame *frame, Point paper);
/** From own axes to mm on the paper: the inverse, to the last digits. */
Point axis_frame_paper (const AxisFrame *frame, Point own);

/** How what was traced in a view moves when its picture is made true anew: the same pixels, other millimetres. `shift` is what the
 *  document adds to own axes, mm, before and after. */
typedef struct {
  Mapping from, to;
  AxisFrame frame_from, frame_to;
  Point shift_from, shift_to;
} AxisCarry;

/** Where a place of an outline, mm, goes: back through the old frame and mapping to its pixel, and forth through the new ones. NAN where
 *  either mapping has none. A straight line stays one unless a lens was undone or comes to be. */
Point axis_carry (const AxisCarry *carry, Point mm);
