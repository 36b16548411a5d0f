#pragma once
#include "document/piece.h"

/** What a person calls a piece: a part's name, else its class's, else its id; a surface's or body's id, else what it is. Lent by the
 *  piece or by the translations; never NULL. */
const char *piece_name (const Piece *piece);
