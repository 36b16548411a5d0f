#pragma once
#include "figures/figures.h"

/** The first balance mark that lies on the wing, between its leading and its trailing edge; lent, NULL where there is none. */
const MarkFigures *balance_mark_on_wing (const Figures *figures);
/** Whether the aeroplane is hung inverted from that mark: it rests with its balance point below what carries it, so one that lies higher
 *  than the wing there comes to rest on its back. False where the balance point's height is not known. */
bool balance_is_inverted (const Figures *figures, const MarkFigures *mark);
