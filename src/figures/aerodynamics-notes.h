#pragma once
#include "figures/aerodynamics.h"

/** Says in self->notes what surfaces, bodies and the neutral point's solve lack or should be looked at. */
void aerodynamics_note (Aerodynamics *self);
