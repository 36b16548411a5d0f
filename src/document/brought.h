#pragma once
#include <glib.h>
#include <stdbool.h>
#include "geometry/segment.h"

/** Lines drawn elsewhere and brought in: a path of an SVG file, what a laser cutter's DXF file holds, a table of points. */

#define BROUGHT_ERROR (brought_error_quark ())
GQuark brought_error_quark (void);    /* the domain of a BroughtError */
typedef enum {
  BROUGHT_ERROR_FOREIGN,     /* none of these kinds, or broken */
  BROUGHT_ERROR_EMPTY,       /* sound, but no line in it */
  BROUGHT_ERROR_VALUE        /* a number that is none, or beyond all bounds */
} BroughtError;

/** One run of lines and curves, mm. Axes as on our sheet: x down the page (aft), y to the right (starboard). */
typedef struct {
  char *name;                /* its id or layer; NULL: none */
  Point start;
  Segment *segments;         /* lines and cubic curves */
  size_t count;              /* >= 1 */
  bool closed;               /* it ends where it began */
} BroughtLine;

typedef struct {
  BroughtLine *lines;        /* the longest first */
  size_t count;              /* >= 1 */
  bool unit_known;           /* the file says what its numbers are in */
  double unit_mm;            /* what one of its numbers was taken for, mm: where the file does not say, 1 (SVG: 25.4 / 96, as CSS has it) */
  bool has_place;            /* its x runs aft of a datum, as a table of places has it; a drawing's only says where on its page */
  size_t left_out;           /* things in it that are no lines: text, pictures, hatching */
} Brought;

/** The largest file that is read, bytes. */
#define BROUGHT_BYTES_MOST (16 * 1024 * 1024)

/** Reads a file by what it holds. `name` stands for it in messages. Nothing outside the data is looked up; limits: 16 MB, 200,000 segments.
 *  NULL with a BroughtError whose message says what, where and what to do. */
Brought *brought_read (const char *data, size_t length, const char *name, GError **error);
void     brought_free (Brought *self);                /* NULL is fine */

/** Length along a line, mm. */
double   brought_line_length (const BroughtLine *line);
