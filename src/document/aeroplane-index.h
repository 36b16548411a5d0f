#pragma once
#include "document/piece.h"

/** Where an aeroplane's pieces are, by kind and by id; made once from an array of pieces and shared by all aeroplanes whose pieces
 *  stand alike (same kinds and ids in the same places). Counted references, safe across threads. Private to this room. */
typedef struct AeroplaneIndex AeroplaneIndex;

/** At most 2^32 - 1 pieces. Sorting, not hashing alone, so that no choice of ids makes it slow. */
AeroplaneIndex *aeroplane_index_new   (Piece *const pieces[], size_t count);
AeroplaneIndex *aeroplane_index_ref   (AeroplaneIndex *self);     /* one reference more, the caller's */
void            aeroplane_index_unref (AeroplaneIndex *self);     /* gives one back; the last frees */

/** How many pieces are of that kind. */
size_t aeroplane_index_count (const AeroplaneIndex *self, PieceKind kind);
/** The place of the nth piece of that kind; SIZE_MAX when there are not so many. */
size_t aeroplane_index_nth   (const AeroplaneIndex *self, PieceKind kind, size_t nth);
/** The place of the first piece of that id; SIZE_MAX when there is none. */
size_t aeroplane_index_find  (const AeroplaneIndex *self, const char *id);
