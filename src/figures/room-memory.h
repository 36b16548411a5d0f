#pragma once
#include "figures/room-faults.h"

/** What was found about each part where it stands, remembered for parts that are still the same: most are when one is moved. Holds its pieces, so
 *  that no other can lie where one of them did. */
typedef struct RoomMemory {
  PieceKey around;              /* the surfaces and bodies it was found among */
  GPtrArray *parts;             /* of Part, in the document's order; NULL: nothing remembered */
  GArray *found;                /* of RoomFault, by parts in turn */
} RoomMemory;

/** Before the parts are looked at: forgets all where a surface, a body, a cowl (it makes room for others) or the number of parts changed. */
void room_memory_begin (RoomMemory *self, const Aeroplane *aeroplane);
/** Whether the part in that place is the one remembered: then its faults are added to `faults`. Else it takes that part's place. */
bool room_memory_recall (RoomMemory *self, size_t place, const Part *part, GArray *faults);
/** What was found about all parts, to be remembered. Copies it. */
void room_memory_keep  (RoomMemory *self, const GArray *faults);
/** Frees what it holds, not itself. */
void room_memory_clear (RoomMemory *self);
