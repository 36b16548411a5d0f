#pragma once
#include "document/aeroplane.h"
#include "figures/contribution.h"

/** One share as a thing in a sentence: "the mass of the battery". A new string, translated. */
char *contribution_text (const Contribution *share, const Aeroplane *aeroplane);

/** What a deviation is owed to, and what to do about it where something can be done: "Most of it is the mass of the body: weigh it." One or
 *  two sentences; a new string, translated; NULL when it is owed to nothing. */
char *contributions_sentence (const Contributions *owed, const Aeroplane *aeroplane);
