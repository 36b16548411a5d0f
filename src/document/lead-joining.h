#pragma once
#include "document/aeroplane.h"
#include "document/catalogue.h"

/** Two-into-one leads: two servos on one channel. */

/** The catalogue's word for such a lead, as an entry's id and as a lead's kind. */
extern const char LEAD_TWO_INTO_ONE[];

/** The aeroplane with the leads of two parts joined on their way to a third. Where the first has a plain lead there already it becomes the
 *  joined one, bends and id kept; the other's plain lead goes: its plug is in the joint now. Each part's own lead (that plain lead's length,
 *  else as the catalogue's class of it comes with; not given without either) is longer by a leg of the catalogue's entry, which weighs
 *  something itself.
 *  one, other, to  ids of three parts
 *  id       set to the lead's id, a new string, where there is an answer
 *  returns  one reference, the caller's; NULL where a part is not there, or two of them are the same */
Aeroplane *leads_joined (const Aeroplane *self, const Catalogue *catalogue, const char *one, const char *other, const char *to, char **id);

/** The two servos that such a lead laid at a place would join, and the receiver that is nearest to it: the servo nearest to the place, and its
 *  pair on the other side, else the next nearest. Servos 30 mm or more off the centre line (a wing's) go before those in the body, where there
 *  are two; one that shares a joint already is left out. Common practice, no source.
 *  place    mm; NULL: by the servo that is furthest out
 *  ends     set to two servos and a receiver, lent
 *  returns  false where there are not as many */
bool lead_joining_ends (const Aeroplane *self, const Point *place, const Part *ends[LEG_COUNT]);
