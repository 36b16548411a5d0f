#pragma once
#include "figures/part-places.h"

/** Remembers where parts may be, for who asks again and again while one of them is dragged. It holds a reference to each piece that an answer
 *  was made from, so that no freed address is mistaken for an old piece. Of one thread; each has its own. */
typedef struct PlacesMemo PlacesMemo;

PlacesMemo *places_memo_new  (void);      /* nothing is remembered yet */
void        places_memo_free (PlacesMemo *self);              /* NULL is fine */

/** As part_places (), which see; lent until the next places_memo_turn (). The same array as long as part, bodies, bays and surfaces are the
 *  same pieces. */
const GArray *places_memo_of (PlacesMemo *self, const Aeroplane *aeroplane, const Part *part);

/** Begins to look at this aeroplane: forgets all places when something that parts stand in is another, and those of parts that nobody asked
 *  for since it began the last time. */
void places_memo_turn (PlacesMemo *self, const Aeroplane *aeroplane);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (PlacesMemo, places_memo_free)
