#pragma once
#include "document/aeroplane.h"

/** Spars: what is made of a surface's span and whose place is told. It stands at one place aft of the datum, from the root on out. mm. */

/** From where what stands at x, aft of the datum, first is within the surface to where it first leaves it, stations >= 0; exact to a thousandth
 *  of a millimetre. False, and both untouched, where it is nowhere within. */
bool spar_run (const Surface *surface, double x, double *from, double *to);

typedef void (*SparVisit) (const StructureItem *spar, void *data);
/** Calls `visit` for each spar of the surface, in the document's order. */
void spars_visit (const Aeroplane *aeroplane, const Surface *surface, SparVisit visit, void *data);
