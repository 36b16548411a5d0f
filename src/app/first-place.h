#pragma once
#include "document/aeroplane.h"
#include "plan/mapping.h"

/** Where a view that comes to a plan is put for now, mm aft of the datum: beside what is drawn already, where such a thing usually stands: a
 *  tailplane and a fin at the tail, a wing in the body's forward half, a body about the wing, two views of one body together. NAN where
 *  nothing is drawn that tells. Shares of a body's length are common practice, no source. */
double first_place (const Aeroplane *aeroplane, ViewShows shows);

/** Where the sheet itself shows that a view stands: a body's view from above whose axis lies on the axis of a wing's or tail's view, drawn
 *  on the body's centre line, or such a view on a body's. Sets view->x, mm aft of the datum, and for_now as it is of the other view, one
 *  that was put in its place before one that was not; false, and nothing set, where no view tells. Same line: within 3 mm and 3 degrees. */
bool place_on_sheet (const Plan *plan, const Mapping *mapping, PlanView *view);
