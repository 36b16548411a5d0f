#pragma once
#include "document/aeroplane.h"

/** The pieces that a remembered answer was made from: those of some kinds, in order, by pointer. It holds a reference to each, so that
 *  no address can come back as another piece while the answer is remembered. */
typedef struct {
  unsigned kinds;          /* bits 1 << PieceKind */
  GPtrArray *pieces;       /* NULL before the first answer */
} PieceKey;

/** Gives its references back and forgets them; the kinds stay. */
void piece_key_clear   (PieceKey *key);
/** Whether the aeroplane's pieces of these kinds are the very ones of the last piece_key_take. */
bool piece_key_matches (const PieceKey *key, const Aeroplane *aeroplane);
/** Remembers the aeroplane's pieces of these kinds in place of the former ones, a reference to each. */
void piece_key_take    (PieceKey *key, const Aeroplane *aeroplane);
