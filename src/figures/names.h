#pragma once
#include "document/aeroplane.h"

/** What a person calls a piece: a part's name, else its class's, else its id; a lead's name, else what it is; a surface's or body's
 *  id, else what it is. Lent by the piece or by the translations; never NULL. */
const char *piece_name (const Piece *piece);

/** What a person calls a line of a structure: its name, else its material's. Lent likewise; never NULL. */
const char *structure_item_name (const StructureItem *item);

/** The same as a thing in a sentence, which is "the wing" for the one wing or its structure, "the battery", "“Receiver”". A new string. */
char *piece_thing (const Aeroplane *aeroplane, const Piece *piece);

/** Whether the part is the battery as people say it: "the battery". */
bool part_is_battery (const Part *part);
