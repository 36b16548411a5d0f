#pragma once
#include <glib.h>

/** A finite number for programs: C locale, at most twelve significant digits, the fewest that say the same, no negative zero, no unit.
 *  The last of a double's seventeen differ from processor to processor. Written into `room`, which comes back. */
static inline const char *
digits_of (char room[G_ASCII_DTOSTR_BUF_SIZE], double value)
{
  return g_ascii_formatd (room, G_ASCII_DTOSTR_BUF_SIZE, "%.12g", value == 0 ? 0 : value);
}
