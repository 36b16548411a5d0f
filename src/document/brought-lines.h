#pragma once
#include "document/brought.h"

/* Private to the document room. */

enum { BROUGHT_SEGMENTS_MOST = 200000 };

/** Lines as they come out of a file, one begun after the other. */
typedef struct {
  GArray *lines;             /* BroughtLine */
  GArray *segments;          /* of the line under way */
  Point start, at;           /* of the line under way */
  char *name;
  bool under_way;
  size_t left_out, total;
} BroughtLines;

void brought_lines_init  (BroughtLines *self);      /* no line yet; brought_lines_clear() it, or brought_lines_finish */
void brought_lines_clear (BroughtLines *self);      /* frees all lines; again is fine */
/** Frees what a line holds (a BroughtLine *), not the line. */
void brought_line_clear  (gpointer line);
/** Ends the line under way and begins one at that place; name, in whatever bytes, may be NULL or empty: none. */
void brought_lines_begin (BroughtLines *self, Point at, const char *name);
/** Goes on to a place that is not where the line is already; beyond BROUGHT_SEGMENTS_MOST nothing is kept, and
 *  brought_lines_finish refuses. */
void brought_lines_line  (BroughtLines *self, Point to);
void brought_lines_curve (BroughtLines *self, Point control1, Point control2, Point to);      /* the same by a cubic curve */
/** A piece of the circle or ellipse about `centre`: the place at angle u is centre + cos u × major + sin u × minor; from `from`, where
 *  the line is, by `sweep` radians (either sign), as cubic curves within 3e-4 of its size. */
void brought_lines_arc   (BroughtLines *self, Point centre, Point major, Point minor, double from, double sweep);
/** Says where exactly the last piece ends, when that was only reckoned. */
void brought_lines_settle (BroughtLines *self, Point there);
/** Goes straight back to where it began, and ends it. */
void brought_lines_close (BroughtLines *self);
/** Ends the line under way. */
void brought_lines_end   (BroughtLines *self);
/** Makes one of lines that end where others begin (within `near` > 0), whichever way round they run. Where one ends further off
 *  than 1.1e6 × near they are left as they are, for brought_lines_finish to refuse. `near` in the file's unit (mm or another). */
void brought_lines_join  (BroughtLines *self, double near);
/** Hands over what there is, every place scaled; NULL with an error where there is nothing or a place is not finite. Clears itself.
 *  scale in mm to the file's unit, > 0. */
Brought *brought_lines_finish (BroughtLines *self, double scale, bool unit_known, const char *name, GError **error);

/* One for each kind of file; name as brought_read. */
Brought *brought_read_svg   (const char *data, size_t length, const char *name, GError **error);
/** ASCII DXF; its unit is mm where it names none. */
Brought *brought_read_dxf   (const char *data, size_t length, const char *name, GError **error);
Brought *brought_read_table (const char *data, size_t length, const char *name, GError **error);      /* rows of two numbers */
