/* The directories of a TIFF file: its pages, and where the picture of one ends (TIFF 6.0, section 2). */
#include "decoder/sniff.h"

#include <string.h>

enum { SHORT = 3, SUBFILE = 254, ORIENTATION = 274, STRIP_OFFSETS = 273, STRIP_COUNTS = 279, TILE_OFFSETS = 324, TILE_COUNTS = 325, ENTRY = 12 };

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

/* How many entries the directory there has; 0 where it does not lie within the file. */
static size_t
entries_of (const Tiff *tiff, size_t directory)
{
  const size_t entries = is_within (tiff, directory, 2) ? number (tiff, directory, 2) : 0;

  return is_within (tiff, directory + 2, ENTRY * entries) ? entries : 0;
}

/* The one number that a tag has in a directory; `fallback` where it has none. */
static size_t
single (const Tiff *tiff, size_t directory, size_t entries, size_t tag, size_t fallback)
{
  const Values values = find_values (tiff, directory, entries, tag, tag);

  return values.count == 1 && is_within (tiff, values.at, 4) ? number (tiff, values.at, values.size) : fallback;
}

/* Where the next directory begins; 0: there is none. */
static size_t
directory_behind (const Tiff *tiff, size_t directory, size_t entries)
{
  const size_t at = directory + 2 + ENTRY * entries;

  return is_within (tiff, at, 4) ? number (tiff, at, 4) : 0;
}

static bool
is_among (const size_t seen[], unsigned count, size_t directory)
{
  for (unsigned i = 0; i < count; i++)
    if (seen[i] == directory)
      return true;
  return false;
}

unsigned
sniff_tiff_pages (const unsigned char *bytes, size_t length, unsigned page, size_t *directory)
{
  enum { REDUCED = 1, MASK = 4 };                     /* a thumbnail, or what is transparent, of another page */
  const Tiff tiff = { bytes, length, bytes[0] == 'M' };
  size_t seen[SNIFF_TIFF_DIRECTORIES], at = length < 8 ? 0 : number (&tiff, 4, 4);
  unsigned count = 0, pages = 0;

  *directory = 0;
  for (; at && count < SNIFF_TIFF_DIRECTORIES && !is_among (seen, count, at); count++)
    {
      const size_t entries = entries_of (&tiff, at);

      if (!entries)
        break;
      if (count == 0 || !(single (&tiff, at, entries, SUBFILE, 0) & (REDUCED | MASK)))
        pages++;
      if (pages == page && !*directory)
        *directory = at;
      seen[count] = at;
      at = directory_behind (&tiff, at, entries);
    }
  return pages;
}

int
sniff_tiff_orientation (const unsigned char *bytes, size_t length)
{
  size_t directory = 0;

  if (length < 8 || (memcmp (bytes, "II*\0", 4) != 0 && memcmp (bytes, "MM\0*", 4) != 0))
    return 1;
  const Tiff tiff = { bytes, length, bytes[0] == 'M' };
  directory = number (&tiff, 4, 4);
  return (int) (single (&tiff, directory, entries_of (&tiff, directory), ORIENTATION, 1) & 0xf);
}

size_t
sniff_tiff_end (const unsigned char *bytes, size_t length, size_t directory)
{
  const Tiff tiff = { bytes, length, bytes[0] == 'M' };
  const size_t entries = directory ? entries_of (&tiff, directory) : 0;
  Values offsets, counts;

  if (!entries)
    return 0;
  offsets = find_values (&tiff, directory, entries, STRIP_OFFSETS, TILE_OFFSETS);
  counts = find_values (&tiff, directory, entries, STRIP_COUNTS, TILE_COUNTS);
  return pieces_are_within (&tiff, &offsets, &counts) ? length : 0;
}
