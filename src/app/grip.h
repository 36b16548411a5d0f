#pragma once
#include "drawing/hit.h"

/** What the hand has hold of: nodes, a handle, pieces, a mark, one end of a rail or of a hinge line. A grip remembers the aeroplane as it
 *  was when taken, so that one place gives one result whichever way the pointer came, and letting go changes nothing. Places are mm: on the
 *  plan x aft and y to starboard (negative on the port half); in the side view x aft and z up. */
typedef struct Grip Grip;

/** One figure beside the pointer. */
typedef struct {
  const char *name;        /* translated */
  double value;            /* mm, or % of MAC; NAN when it cannot be had */
  const char *said;        /* stands instead of the value; NULL: the value */
  bool percent;
  bool across;             /* to starboard, where negative to port: told by its side, typed with its sign */
  bool typed;              /* can be typed: */
  double least;            /* not below, mm */
} GripRow;

enum { GRIP_ROWS = 4 };

/** Takes hold of what was hit; where that is selected together with others, of all of them. NULL for what cannot be pulled. */
Grip *grip_new (const Aeroplane *aeroplane, const Hit *hit, const Selection *selection, bool side);
/** Takes hold of what is selected, for keys; NULL when nothing is that could be moved. */
Grip *grip_new_for_selection (const Aeroplane *aeroplane, const Selection *selection);
void  grip_free (Grip *self);                                    /* NULL is fine */

/** The aeroplane as it was; lent. */
const Aeroplane *grip_start (const Grip *self);
/** Where the thing stood, and where it stands in a later aeroplane. */
Point      grip_place (const Grip *self);
Point      grip_place_in (const Grip *self, const Aeroplane *now);      /* on the sheet, mm */
/** The aeroplane with the thing at that place. It keeps to its rail, the centre line and its own half unless `loose`. NULL when refused. */
Aeroplane *grip_moved (const Grip *self, Point place, bool loose);
/** The figures to stand beside the pointer, static margin last; figures are those of what is shown now. At most GRIP_ROWS. */
size_t     grip_rows  (const Grip *self, const Figures *figures, GripRow rows[GRIP_ROWS]);
/** `now` with one row's value typed, exactly; NULL when refused. mm */
Aeroplane *grip_with_row (const Grip *self, const Aeroplane *now, size_t row, double value);
/** The step's name: "Move Battery". A new string, translated. */
char      *grip_label (const Grip *self);
/** One sentence for the status line while it is held. */
const char *grip_hint (const Grip *self);
/** The box around the thing in `now`, mm, so that nothing covers it. */
Box        grip_box   (const Grip *self, const Aeroplane *now);
/** What of it does not attract itself while snapping: a piece's id (lent) and a node's index. */
const char *grip_id   (const Grip *self);
size_t     grip_index (const Grip *self);      /* SNAP_WHOLE: all of the piece */
bool       grip_is_of_side (const Grip *self);      /* whether it is of a body's outline from the side */
