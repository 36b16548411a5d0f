#pragma once
#include <stdbool.h>
#include <stddef.h>
#include "geometry/point.h"

/** A trace being laid over a plan. Places are mm on the sheet, lent. */
typedef struct {
  const Point *accepted;  size_t accepted_count;     /* what was found so far, from the first click to the last */
  const Point *proposal;  size_t proposal_count;     /* ahead of the last click to the pointer; 0: none */
  bool by_hand;                                      /* the proposal is drawn: it clings to nothing */
  bool lost;                                         /* no line is to be seen along it */
  const Point *clicks;    size_t click_count;
  bool one_sided;                                    /* nothing of it stands on the other side, too (a fin, a body from the side) */
  Point aim;  bool has_aim;                          /* where a click would go */
  Point ring; bool has_ring;                         /* a click there ends the trace */
} SheetTrace;

/** Runs of an outline, a NAN place after each, beneath which no printed line is to be seen; mm on the sheet. */
typedef struct { const Point *places; size_t count; } SheetDoubt;

/** Where an outline leaves the printed line that it was drawn from; mm on the sheet. */
typedef struct { Point drawn, printed; bool far_off; } SheetDeparture;
typedef struct { const SheetDeparture *spots; size_t count; } SheetDepartures;
