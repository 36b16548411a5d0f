#pragma once
#include "geometry/curve-fit.h"
#include "geometry/outline.h"
#include "plan/axis-frame.h"
#include "plan/follow.h"

typedef struct {
  const Mapping *mapping;    /* lent */
  AxisFrame frame;           /* of the view: where its axis lies on the paper, and which side is traced */
  const Point *clicks;       /* the file's px, along the printed line, from one end of the outline to the other */
  size_t click_count;
  double click_sigma;        /* the file's px, one standard deviation */
  const bool *drawn;         /* click_count - 1 of them: the stretch to the next click is straight, by hand; NULL: all are followed */
  bool ends_on_axis;         /* both ends are carried to y = root */
  double root;               /* mm; 0: the axis itself, else the station of a root that stands off it */
  bool is_body;              /* from above: its after end may be cut straight across the axis */
  bool goes_round;           /* it ends where it began and goes round the axis (a body from the side): above it first */
  double tolerance;          /* mm; NAN: 0.07 mm or half a pixel, whichever is more */
  InkGoesOn goes_on;         /* may be NULL */
  void *data;
} TraceRequest;

/** An outline as traced. */
typedef struct {
  Outline *outline;          /* mm; from the leading edge's root outboard, whichever way it was clicked */
  Point *polyline;           /* the same, mm, at most half a millimetre from place to place */
  Point *polyline_px;        /* in the file's px */
  size_t count;
  double mm_per_px;          /* of the file's, about */
  double lost;               /* the share of its length along which no line was to be seen, 0 to 1 */
  double sigma;              /* mm: one standard deviation of the line's places about the outline, where there is a line */
  double astray;             /* mm: how far it passes a click at most that a followed stretch belongs to, */
  Point astray_at;           /* mm: and that click; far off, it took another line */
  double aside;              /* mm: how far its line goes aside over bare paper, to go on beside its way: to another line; 0: nowhere, */
  Point aside_at;            /* mm: and where */
  double spur;               /* mm: how far one that goes round runs out and comes back, as round a fin on a body's back; 0: nowhere, */
  Point spur_at;             /* mm: and where its foot is */
} Trace;

/** How near an outline keeps to its line when nobody says otherwise, mm: 0.07 mm or half of the file's pixel, whichever is more. */
double     trace_usual_tolerance (double mm_per_px);
/** `mm`, where a click is passed by more than a hand misses, by 1.2 mm and three of its deviations: then another line may have been taken;
 *  0 where it is not. The same before the click and behind it.
 *  click_sigma   how far off a click is, mm, one standard deviation
 *  source        common practice, no source */
double trace_astray (double mm, double click_sigma);
/** Traces an outline: follows the printed line, puts it into the view's own axes and fits few lines, curves and, where it is one, an
 *  exact ellipse.
 *  made     set on success; trace_clear gives it back
 *  returns  CORE_OK, what follow_line, curve_fit and outline_new return; CORE_OUT_OF_RANGE where a place on the picture is none on paper */
CoreStatus trace_outline (const Ink *ink, const TraceRequest *request, Trace *made);
void       trace_clear (Trace *self);      /* gives its outline back and frees its polylines; again is fine */
