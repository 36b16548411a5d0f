#pragma once
#include "drawing/ruled-table.h"

/** One section of a parts sheet: its table, and words below it. Either may be missing: without a table its words say why. */
typedef struct {
  const char *heading;          /* translated, lent by the translations */
  RuledTable table;             /* without rows: no table */
  bool ticks;                   /* its first column is boxes to tick off */
  unsigned stretches;           /* the column that takes what room is left over; one beyond the last: all of them alike */
  unsigned parted;              /* before this column a second table begins beside the first; 0: there is none */
  unsigned ditto;               /* so many of the first columns are blank where they say what the row above says */
  char **words;                 /* paragraphs; NULL-terminated, or NULL */
  bool small;                   /* they are small print */
} PartsSection;

typedef enum {
  PARTS_CLOSING,                /* what goes in before the body is closed */
  PARTS_LIST,                   /* what to buy, and what it weighs */
  PARTS_PLACES,                 /* where parts stand */
  PARTS_FORMERS,                /* where formers and ribs do */
  PARTS_LEADS,
  PARTS_CUTTING,
  PARTS_CAUTIONS,
  PARTS_SECTIONS
} PartsSectionKind;
/** All sections in that order. An aeroplane of which nothing is there yet has a sentence in the first
 *  and cautions alone; a section of nothing has neither table nor words. */
void parts_sections_of    (const WallSheet *sheet, PartsSection sections[PARTS_SECTIONS]);
void parts_sections_clear (PartsSection sections[PARTS_SECTIONS]);      /* frees their tables and words */
