#pragma once
#include "app/grip.h"

/* What one kind of grip does. Places are the piece's own: y >= 0 of the half-outline, a fin's height above its z. */
typedef struct {
  const char *hint;                                            /* marked for translation */
  Point      (*place)    (const Grip *self, const Aeroplane *now);
  Aeroplane *(*moved)    (const Grip *self, Point place, bool loose);
  size_t     (*rows)     (const Grip *self, const Figures *figures, GripRow rows[GRIP_ROWS]);
  Aeroplane *(*with_row) (const Grip *self, const Aeroplane *now, size_t row, double value);
  char      *(*label)    (const Grip *self);
  Box        (*box)      (const Grip *self, const Aeroplane *now);      /* NULL: the place alone */
} GripKind;

struct Grip {
  const GripKind *kind;
  Aeroplane *start;
  Selection selection;     /* nodes or pieces that move together */
  char *id, *control;
  size_t index;
  HandleSide handle;
  bool side, port;
  double lift;             /* of a fin's outline, mm */
  Point spot;              /* where a lead's line was taken, mm */
};

extern const GripKind grip_node_kind, grip_handle_kind, grip_piece_kind, grip_mark_kind, grip_rail_kind, grip_hinge_kind, grip_lead_kind;

/** Which way the outline's second axis points, and what its row is called. */
typedef enum { ACROSS_STATION, ACROSS_HALF_WIDTH, ACROSS_HEIGHT } GripAcross;
GripAcross     grip_across      (const Grip *self);      /* by the outline that the node is of */
const char    *grip_across_name (const Grip *self);      /* translated, constant */
/** The outline that a held node or handle belongs to, in `now`; NULL when it is gone. */
const Outline *grip_outline     (const Grip *self, const Aeroplane *now);

/** How low a node or handle of the held outline may be pulled, mm: the centre line, a fin's root; -INFINITY where there is no such line. */
double         grip_floor             (const Grip *self);
/** The outline with what sank below that line because the node moved, the handles beside it, laid upon it. Takes and gives. */
Outline       *grip_lifted            (const Grip *self, Outline *takes, size_t node);
/** Whether the outline reaches no further across that line than it did when taken. */
bool           grip_stays_on_its_half (const Grip *self, const Outline *outline);

/** The rows that every kind ends with. Returns the count with it. The value in mm. */
size_t grip_add_row    (GripRow rows[GRIP_ROWS], size_t count, const char *name, double mm, bool typed);
/** The first row of a node or handle: how far across, not below its line. */
size_t grip_add_off_centre (GripRow rows[GRIP_ROWS], size_t count, double mm);     /* mm to starboard */
size_t grip_add_across (GripRow rows[GRIP_ROWS], const Grip *self, double mm);
size_t grip_add_margin (GripRow rows[GRIP_ROWS], size_t count, const Figures *figures);      /* the static margin as it is now, percent */
