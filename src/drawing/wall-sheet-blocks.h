#pragma once
#include "drawing/control-lines.h"
#include "drawing/wall-sheet-parts.h"

/** What stands round the views on a wall sheet. Each block has a few forms, the handsomest first, so that it can give way. */
typedef enum { BLOCK_SECTION, BLOCK_PARTS, BLOCK_CONTROL_LINES, BLOCK_NOTES, BLOCK_FIGURES, BLOCK_COUNT } BlockKind;
enum { BLOCK_FORMS = 6 };

/** What the blocks are drawn from: made once a sheet. */
typedef struct {
  PartList parts;
  char **notes;
  double caps;             /* of tables: text size or small */
  Point size[BLOCK_COUNT][BLOCK_FORMS];      /* mm; 0 wide: no such form */
} SheetBlocks;

/** Measures all forms: both[0] with tables in text size, both[1] in small print; the parts list with where trays go, or without. */
void        sheet_blocks_init  (SheetBlocks both[2], const WallSheet *sheet, const Look *look, bool trays);
void        sheet_blocks_clear (SheetBlocks both[2]);      /* frees what both hold, not themselves */
/** Draws one block in a form that has a size, its upper left corner at `at`, mm. */
void        sheet_block_draw   (const SheetPen *pen, const SheetBlocks *self, BlockKind kind, int form, Point at);
/** Forms of the section: whole, broken off, and the words that say why it is not there. */
enum { SECTION_FORM_WHOLE, SECTION_FORM_BROKEN, SECTION_FORM_MISSING };
/** Forms of the parts list from this on leave parts out, and say so. */
enum { PARTS_FORM_SHORT = 3 };
