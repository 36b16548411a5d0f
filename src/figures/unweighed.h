#pragma once
#include "figures/figures.h"

/** What is drawn and weighs nothing yet. A mass of 0 g is as good as none: whatever flies weighs something. */

/** Whether any structure weighs anything. */
bool airframe_is_weighed (const Aeroplane *aeroplane);

/** Whether no structure that weighs anything is of this surface or body. */
bool piece_is_unweighed (const Aeroplane *aeroplane, const Piece *piece);

/** How many surfaces and bodies are unweighed; the first `room` of them go into `first`, surfaces before bodies, else in the document's
 *  order. */
size_t unweighed_pieces (const Aeroplane *aeroplane, const Piece *first[], size_t room);

/** The first part that is aboard on a rail and weighs nothing, so that sliding it balances nothing; NULL without. Lent by the figures. */
const Part *weightless_slider (const Figures *figures);
