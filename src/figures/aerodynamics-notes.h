#pragma once
#include "figures/aerodynamics.h"

/** Says in self->notes what surfaces, bodies and the neutral point lack or should be looked at. status is the solve's. */
void aerodynamics_note (Aerodynamics *self, CoreStatus status);
