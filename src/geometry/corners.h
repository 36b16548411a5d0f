#pragma once
#include "geometry/drawn-run.h"

/** Where a measured line has a corner. */
typedef struct {
  double along;        /* its length from the run's beginning */
  Point place;
  double turn;         /* radians, positive from x towards y: by how much the direction jumps */
} Corner;

/** Finds the corners of a run: places where two parabolas, one over what lies behind and one over what lies ahead, meet at an angle that
 *  stays when less is looked at (a tight bend's grows less), is far beyond the scatter, and fits much better than one smooth cubic.
 *  reach      how far is looked each way, in the run's unit (mm): a few widths of the line at least
 *  least      the smallest turn that is a corner, radians
 *  corners    room for `room`; the sharpest where there are more, in their order along the run
 *  returns    how many there are */
size_t corners_find (const DrawnRun *run, double reach, double least, Corner corners[], size_t room);
