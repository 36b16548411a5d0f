#pragma once
#include <stdbool.h>
#include <stddef.h>
#include "document/aeroplane.h"

/** The two points that an aeroplane's figures are about. */
typedef enum { SHEET_POINT_NONE, SHEET_POINT_BALANCE, SHEET_POINT_NEUTRAL } SheetPoint;

/** What is selected: pieces by id, nodes of one outline or lead, one control, one mark, or one point. A value: copied, never shared. */
typedef struct {
  char **ids;           /* selected pieces' ids, NULL-terminated; NULL: none */
  bool side;            /* nodes belong to the body's side outline */
  size_t *nodes;        /* selected nodes of ids[0]'s outline, rising; of a lead those of its lead_points() */
  size_t node_count;
  char *control;        /* id of a control of ids[0], or NULL */
  int mark;             /* index of a selected mark, -1: none */
  SheetPoint point;     /* balance point or neutral point; it cannot be moved, but shows how well it is known */
} Selection;

/* Each new one is the caller's, to be ended with selection_clear; ids are copied. */
Selection   selection_none    (void);                                         /* nothing; holds no memory */
Selection   selection_of      (const char *id);                               /* one piece */
Selection   selection_of_node (const char *id, bool side, size_t node);       /* one node of its outline, or side outline */
Selection   selection_of_mark (int mark);                                     /* by its number, from 0 */
Selection   selection_of_point (SheetPoint point);                            /* no piece besides */
Selection   selection_of_control (const char *id, const char *control);       /* of the surface of that id */
Selection   selection_copy    (const Selection *selection);                   /* with memory of its own */
void        selection_clear   (Selection *selection);                         /* frees what it holds and leaves none */
bool        selection_is_empty (const Selection *selection);
bool        selection_equal   (const Selection *a, const Selection *b);       /* by value, pieces in the same order */
bool        selection_has     (const Selection *selection, const char *id);   /* whether the piece is selected; id may be NULL */
/** Whether that node of that piece's outline (`side`: side outline) is selected. */
bool        selection_has_node (const Selection *selection, const char *id, bool side, size_t node);
const char *selection_single  (const Selection *selection);                   /* the one id, or NULL */
/** Adds the piece, or takes it out; nodes, control, mark and point go. */
void        selection_toggle  (Selection *selection, const char *id);
/** Adds the node, or takes it out; nodes of another outline go, and so do control, mark and point. */
void        selection_toggle_node (Selection *selection, const char *id, bool side, size_t node);
/** What of it still exists in the aeroplane; whether a point does is for its figures to say (sheet_has_point). */
Selection   selection_kept    (const Selection *selection, const Aeroplane *aeroplane);
