#pragma once
#include "figures/aerodynamics.h"

/** Says in self->notes what surfaces, bodies and the neutral point lack or should be looked at. left_out are the bodies that
 *  the neutral point's solve could not count; NULL without a neutral point. */
void aerodynamics_note (Aerodynamics *self, const GPtrArray *left_out);
