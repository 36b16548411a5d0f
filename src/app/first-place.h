#pragma once
#include "document/aeroplane.h"

/** Where a view that comes to a plan is put for now, mm aft of the datum: beside what is drawn already, where such a thing usually stands: a
 *  tailplane and a fin at the tail, a wing in the body's forward half, a body about the wing, two views of one body together. NAN where
 *  nothing is drawn that tells. Shares of a body's length are common practice, no source. */
double first_place (const Aeroplane *aeroplane, ViewShows shows);
