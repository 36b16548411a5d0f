#pragma once
#include "document/aeroplane.h"
#include "geometry/outline.h"

/** A plan drawn for a test: a half-outline printed about an upright axis, 4 px a mm, its picture within the document. */
typedef struct {
  const Outline *outline;         /* mm, in its own axes */
  double starboard, port;         /* how it is stretched across on each side; 0: that half is not drawn */
  ViewShows shows;
  ViewSide side;
  bool flipped;                   /* the view says so */
  double root;                    /* mm: the outline is drawn so far off the axis */
  const Point (*inner)[2]; size_t inner_count;      /* straight lines printed within it: both ends, mm in its own axes */
  bool upside_down;               /* the whole picture is turned by half, its axis with it */
} DrawnPlan;

/** The aeroplane that holds nothing but the plan; the view's id is "view", its axis' forward end stands at x = 100. */
Aeroplane *aeroplane_on_plan (const DrawnPlan *plan);
