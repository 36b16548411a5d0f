#pragma once
#include "drawing/ruled-table.h"

/** One section of a parts sheet: its table, and words below it. Either may be missing: without a table its words say why. */
typedef struct {
  const char *heading;          /* translated, lent by the translations */
  RuledTable table;             /* without rows: no table */
  bool ticks;                   /* its first column is boxes to tick off */
  unsigned stretches;           /* the column that takes what room is left over */
  char **words;                 /* paragraphs; NULL-terminated, or NULL */
  bool small;                   /* they are small print */
} PartsSection;

enum { PARTS_SECTIONS = 5 };
/** All sections in their order: before closing, parts, leads, cutting list, cautions. An aeroplane of which nothing is there yet has a sentence in the first
 *  and cautions alone; a section of nothing has neither table nor words. */
void parts_sections_of    (const WallSheet *sheet, PartsSection sections[PARTS_SECTIONS]);
void parts_sections_clear (PartsSection sections[PARTS_SECTIONS]);
