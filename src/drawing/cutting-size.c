#include "trammel-config.h"
#include "drawing/cutting-size.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* Sheets, the longer side first, from small to large, in the unit's own whole numbers. */
typedef struct { double longer, shorter; } SheetSize;
static const SheetSize metric[] = { { 300, 200 }, { 400, 300 }, { 600, 300 }, { 600, 400 }, { 900, 600 }, { 1300, 900 } };
static const SheetSize inches[] = { { 12, 8 }, { 16, 12 }, { 24, 12 }, { 24, 18 }, { 36, 24 }, { 48, 36 } };
static const double rounding = 1e-6;      /* mm */

char *
cutting_size_text (const Cutting *cutting, Units units)
{
  const SheetSize *sheets = units.length == LENGTH_INCH ? inches : metric;
  const size_t count = units.length == LENGTH_INCH ? G_N_ELEMENTS (inches) : G_N_ELEMENTS (metric);
  const double unit = units.length == LENGTH_INCH ? 25.4 : 1;
  const double longer = fmax (cutting->width, cutting->height) - rounding, shorter = fmin (cutting->width, cutting->height) - rounding;
  g_autofree char *width = units_length_figure (units, cutting->width), *height = units_length (units, cutting->height);
  size_t i = 0;

  while (i + 1 < count && (longer > sheets[i].longer * unit || shorter > sheets[i].shorter * unit))
    i++;
  g_autofree char *across = units_length_figure (units, sheets[i].longer * unit), *down = units_length (units, sheets[i].shorter * unit);
  if (longer > sheets[i].longer * unit || shorter > sheets[i].shorter * unit)
    /* Translators: width and height of a file for cutting, and of the largest sheet that is usual */
    return g_strdup_printf (_("%s by %s over all: larger than a sheet of %s by %s. Cut it in several goes."), width, height, across, down);
  /* Translators: width and height of a file for cutting, and of a sheet: "600 by 347 mm over all: it fits on a sheet of 600 by 400 mm." */
  return g_strdup_printf (_("%s by %s over all: it fits on a sheet of %s by %s."), width, height, across, down);
}

unsigned
cutting_layers_used (const Cutting *cutting)
{
  unsigned used = 0;

  for (guint i = 0; i < cutting->pieces->len; i++)
    {
      const FlatPiece *piece = cutting->pieces->pdata[i];

      for (guint k = 0; k < piece->lines->len; k++)
        used |= 1u << g_array_index (piece->lines, FlatLine, k).purpose;
      for (guint k = 0; k < piece->words->len; k++)
        used |= 1u << cutting_word_layer (&g_array_index (piece->words, FlatWord, k));
    }
  return used;
}
