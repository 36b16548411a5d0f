/* Where the first picture of a TIFF file ends: the furthest of its directory, strips and tiles (TIFF 6.0, section 2). */
#include "decoder/sniff.h"

enum { SHORT = 3, STRIP_OFFSETS = 273, STRIP_COUNTS = 279, TILE_OFFSETS = 324, TILE_COUNTS = 325, ENTRY = 12 };

typedef struct {
  const unsigned char *bytes;
  size_t length;
  bool big_endian;
} Tiff;

/* The values of one entry of a directory. */
typedef struct {
  size_t at, count;
  int size;                     /* bytes of each: 2 or 4 */
} Values;

static size_t
number (const Tiff *tiff, size_t at, int size)
{
  size_t value = 0;

  for (int i = 0; i < size; i++)
    value |= (size_t) tiff->bytes[at + (size_t) i] << 8 * (tiff->big_endian ? size - 1 - i : i);
  return value;
}

static bool
is_within (const Tiff *tiff, size_t at, size_t size)
{
  return at <= tiff->length && size <= tiff->length - at;
}

/* Values stand in their entry if they fit into its last four bytes, else where those say. */
static Values
entry_values (const Tiff *tiff, size_t entry)
{
  Values values = { entry + 8, number (tiff, entry + 4, 4), number (tiff, entry + 2, 2) == SHORT ? 2 : 4 };

  if (values.count * (size_t) values.size > 4)
    values.at = number (tiff, entry + 8, 4);
  return values;
}

static Values
find_values (const Tiff *tiff, size_t directory, size_t entries, size_t tag, size_t other_tag)
{
  for (size_t i = 0; i < entries; i++)
    {
      const size_t entry = directory + 2 + ENTRY * i, found = number (tiff, entry, 2);

      if (found == tag || found == other_tag)
        return entry_values (tiff, entry);
    }
  return (Values) { 0, 0, 4 };
}

static bool
pieces_are_within (const Tiff *tiff, const Values *offsets, const Values *counts)
{
  if (offsets->count > tiff->length || counts->count > tiff->length)
    return false;
  if (!is_within (tiff, offsets->at, offsets->count * (size_t) offsets->size)
      || !is_within (tiff, counts->at, counts->count * (size_t) counts->size))
    return false;
  for (size_t i = 0; i < offsets->count && i < counts->count; i++)
    if (!is_within (tiff, number (tiff, offsets->at + i * (size_t) offsets->size, offsets->size),
                    number (tiff, counts->at + i * (size_t) counts->size, counts->size)))
      return false;
  return true;
}

size_t
sniff_tiff_end (const unsigned char *bytes, size_t length)
{
  const Tiff tiff = { bytes, length, bytes[0] == 'M' };
  size_t directory, entries;
  Values offsets, counts;

  if (length < 8)
    return 0;
  directory = number (&tiff, 4, 4);
  if (!is_within (&tiff, directory, 2))
    return 0;
  entries = number (&tiff, directory, 2);
  if (!is_within (&tiff, directory + 2, ENTRY * entries))
    return 0;
  offsets = find_values (&tiff, directory, entries, STRIP_OFFSETS, TILE_OFFSETS);
  counts = find_values (&tiff, directory, entries, STRIP_COUNTS, TILE_COUNTS);
  return pieces_are_within (&tiff, &offsets, &counts) ? length : 0;
}
