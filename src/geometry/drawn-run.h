#pragma once
#include <stddef.h>
#include "geometry/point.h"
#include "geometry/status.h"

/** A line as it was measured: places along it in their order, each with how far it is to be trusted. */
typedef struct {
  const Point *places;
  const double *weights;     /* 0: not at all, up to 1 */
  const double *along;       /* length from the first place, rising */
  size_t count;
} DrawnRun;

/** The length from the first place to each, in *along (count values, the caller's). In the places' unit (mm or pixels). */
void drawn_run_lengths (const Point places[], size_t count, double along[]);

/** The first place at or beyond that length; count - 1 at most. In the run's unit (mm or pixels). */
size_t drawn_run_at (const DrawnRun *self, double along);

/** The mean weight between two lengths, a fraction; these are in the run's unit (mm or pixels). */
double drawn_run_trust (const DrawnRun *self, double from, double to);

/** How the run passes a place: fitted by a parabola to what lies within `reach` of it on both sides (or on one, see below). */
typedef struct {
  Point place, direction;
  double curvature;          /* positive when it bends from x towards y */
  double rest;               /* the mean square by which the parabola passes the places, the run's unit squared */
} RunPassage;

typedef enum { PASSAGE_BOTH, PASSAGE_BEHIND, PASSAGE_AHEAD } PassageSides;

/** Where the run passes at that length and in what direction (a unit vector along it); `reach` grows to four times itself where there is
 *  little to trust. CORE_OUT_OF_RANGE where there is nothing at all. */
CoreStatus drawn_run_passage (const DrawnRun *self, double along, double reach, PassageSides sides, RunPassage *passage);

/** The same over as much of the run as is one parabola still, no further than `room` each way: a direction measured over four times the
 *  length is eight times surer.
 *  scatter    what the parabola may leave, root of the mean square, whatever it left over `reach`; the run's unit
 *  all lengths   the run's unit (mm or pixels) */
CoreStatus drawn_run_long_passage (const DrawnRun *self, double along, double reach, double room, PassageSides sides, double scatter,
                                   RunPassage *passage);
