#pragma once
#include "app/brought-offer.h"
#include "document/units.h"

/** What the strip of an outline drawn elsewhere says. Translated, new strings unless lent. */

/** "2 of 5: CUT, 640 × 130 mm"; the size as it is laid, across first. */
char *brought_words_line (const Brought *brought, size_t line, const Offer *offer, Units units);
/** How the line was understood, or what is wrong with it and what to do. */
char *brought_words_note (const OfferChoice *choice, const Offer *offer, Units units);
/** How much of the file is no line and does not come along, one sentence; NULL: all of it does. The caller's. */
char *brought_words_left_out (const Brought *brought);
/** Whether it matters that a line which is the same on both sides may be one half. */
bool  brought_words_asks_for_half (const OfferChoice *choice, const Offer *offer);
