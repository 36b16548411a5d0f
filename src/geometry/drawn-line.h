#pragma once
#include "geometry/half-outline.h"

/* Private to the geometry room. */

/** A run of lines and curves laid as it was asked, free to be changed. */
typedef struct {
  Point start;
  Segment *segments;
  size_t count;
  Box box;
  bool closed;          /* it ends where it begins; made exact */
} Run;

/** Lays the line. CORE_OK; CORE_TOO_FEW_NODES, CORE_NOT_FINITE, CORE_OUT_OF_RANGE for an arc, CORE_NO_MEMORY; end it with run_clear. */
CoreStatus run_begin (Run *self, const DrawnLine *line);
void       run_clear (Run *self);      /* frees its segments; again is fine */
/** Where segment i begins; i = count: where the run ends. */
Point      run_node  (const Run *self, size_t i);
/** Turns port into starboard: y into -y. */
void       run_mirror (Run *self);
/** Cuts every segment where it meets station y (closer to an end than a ten-thousandth: not). CORE_OK or CORE_NO_MEMORY.
 *  y in the line's unit (mm). */
CoreStatus run_cut_at_station (Run *self, double y);
/** Begins a closed run at node i instead. CORE_OK or CORE_NO_MEMORY. */
CoreStatus run_begin_at (Run *self, size_t node);
/** Runs it the other way. */
void       run_reverse (Run *self);
/** Puts the start and the end at station y, each straight to it. y in the line's unit (mm). */
void       run_end_at_station (Run *self, double y);
/** Cuts segment i at t, 0 < t < 1. CORE_OK or CORE_NO_MEMORY. t is a fraction of the segment's run. */
CoreStatus run_cut   (Run *self, size_t i, double t);
/** Moves all of it. */
void       run_shift (Run *self, Point by);
