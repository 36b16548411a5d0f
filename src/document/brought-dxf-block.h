#pragma once
#include "document/brought-dxf.h"

/* Private to the document room. */

/** What a DXF file draws once, to insert it as often as it likes: lines, and inserts of other blocks. What stands in the ENTITIES
 *  section is a block without a name, inserted once. */
typedef struct DxfBlock DxfBlock;

/** `head` is the entity BLOCK; NULL: what is drawn where it stands. */
DxfBlock *dxf_block_new  (const DxfEntity *head);
void      dxf_block_free (gpointer self);                     /* NULL is fine */
/** Lent; "" without one. */
const char *dxf_block_name (const DxfBlock *self);
/** Takes an entity of that kind in: draws it, notes where a block is inserted, or counts it as left out. */
void      dxf_block_add  (DxfBlock *self, const DxfEntity *entity, const char *kind);
/** Draws the block and whatever it inserts, block within block, into `lines`; what goes deeper than 16 or comes to more than a hundred
 *  thousand inserts is left out and counted.
 *  blocks   name -> DxfBlock
 *  source   the entities' group codes as published with the format's reference, from memory */
void      dxf_block_unfold (const DxfBlock *self, GHashTable *blocks, BroughtLines *lines);
