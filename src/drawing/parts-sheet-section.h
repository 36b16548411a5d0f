#pragma once
#include "drawing/parts-sheet-rows.h"
#include "drawing/wall-sheet-parts.h"

/* Private to the parts sheet: what its sections are made with. */

/** A section with an empty table of so many columns; the heading, translated, is lent. */
static inline PartsSection
section_new (const char *heading, unsigned columns)
{
  return (PartsSection) { .heading = heading, .table = ruled_table_new (heading, columns) };
}

/** Sets the heads of all columns; lent, translated. */
static inline void
set_heads (RuledTable *table, const char *const heads[])
{
  for (unsigned i = 0; i < table->columns; i++)
    table->heads[i] = heads[i];
}

/** One paragraph, whose words are taken, as PartsSection.words. */
static inline char **
one_paragraph (char *takes)
{
  char **words = g_new0 (char *, 2);

  words[0] = takes;
  return words;
}

/** A number above 0 as a new string; NULL else. */
static inline char *
number_words (int number)
{
  return number > 0 ? g_strdup_printf ("%d", number) : NULL;
}

/** A length that was typed, mm, with its tenth and without its unit. A new string. */
char *parts_known_figure (Units units, double mm);

/** Where each part stands: aft of the datum, off the centre line, from a former or from a leading edge. */
PartsSection parts_places_section  (const WallSheet *sheet, const PartList *list);
/** Where formers and ribs stand, side by side. */
PartsSection parts_formers_section (const WallSheet *sheet);
/** What to cut, by material and thickness. */
PartsSection parts_cutting_section (const WallSheet *sheet);
