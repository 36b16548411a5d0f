#pragma once
#include "document/piece.h"

/** A control's hinge line on its surface: where it runs, how deep the control behind it is, and whether it is one at all. Stations and x as
 *  in the document, mm; a fin's stations are heights above its z. Pure functions. */

/** What keeps a hinge line from being one of that surface. */
typedef enum {
  HINGE_SOUND,
  HINGE_BACKWARDS,         /* it ends further in than it begins */
  HINGE_NO_LENGTH,         /* both ends at one station, or nearly */
  HINGE_BEYOND,            /* an end stands beyond the tip, within the root or in an open gap */
  HINGE_AHEAD,             /* it runs ahead of the leading edge somewhere */
  HINGE_BEHIND,            /* it runs behind the trailing edge somewhere */
  HINGE_NO_SURFACE         /* the outline is not closed yet, or crosses itself */
} HingeFault;

/** The shortest control, mm along the span: a hand that means one draws it longer. Common practice, no source. */
#define HINGE_LEAST_MM 1.0

/** Whether the hinge line lies within the surface from end to end, by its ends, the surface's breaks and 32 stations between.
 *  station  set to where it does not; may be NULL
 *  An end up to 0.01 mm beyond an edge lies on it. */
HingeFault hinge_check   (const Surface *surface, const Control *control, double *station);
/** Where the hinge line, carried on straight, stands at a station: x, mm. NAN for one without length. */
double     hinge_x_at    (const Control *control, double station);
/** The surface's edges at a station; a station up to 0.01 mm beyond the tip counts as the tip. False where there is no surface. */
bool       hinge_edges   (const Surface *surface, double station, double *leading_x, double *trailing_x);
/** The place of the surface nearest that one: its station brought between root and tip, then its x between the edges there. The place
 *  itself where there is no surface. */
Point       hinge_onto    (const Surface *surface, Point own);
/** The control's chord at one of its ends, mm: from the hinge to the trailing edge; NAN where there is no surface. */
double     hinge_chord   (const Surface *surface, const Control *control, bool outer);
/** How far the trailing edge moves, mm, when the control turns by so many degrees, measured across the chord where it is deepest of both
 *  ends, as with a rule at the bench: chord × sin. NAN where either is not known. */
double     hinge_travel  (const Surface *surface, const Control *control, double degrees);
/** And back: degrees; NAN for more than the chord. */
double     hinge_turn    (const Surface *surface, const Control *control, double travel_mm);
/** What a control on a surface of that role usually is. */
ControlKind hinge_usual_kind (SurfaceRole role);
