#pragma once
#include "figures/figures.h"

/** A note (NOTE_LOOK) about the part for each fault of the figures' `room`. How much is wanting stands in the fault, not in the words. */
void room_note (const Figures *figures, GPtrArray *notes);
