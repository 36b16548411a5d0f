#pragma once
#include "app/hinge-print.h"
#include "app/place-entry.h"
#include "app/tool.h"
#include "document/hinge.h"

/** The Hinge Line tool's state, shared by its own files. */

/** One end of a hinge line under the hand. */
typedef struct {
  Point own;                /* mm, of the surface */
  Point meant;              /* the same without what is printed */
  HingeSpots spots;         /* what is printed there */
} HingeEnd;

typedef struct {
  Tool tool;
  HingeSeat seat;           /* on which surface; its id is NULL while the hand is over none */
  bool begun;               /* the first end stands */
  HingeEnd first, second;   /* the second is where the hand is; before the first stands, that is where it would */
  bool printed;             /* the line between them is laid on a printed one */
  Control line;             /* as it would be put */
  HingeFault fault;  double fault_at;
  TraceGround *ground;      /* the plan beneath; NULL: none is seen */
  GtkWidget *over;          /* the sheet, or the side view where the hand is; lent */
  Point at;                 /* where on it, px */
  bool edge_on;             /* over a fin seen from above, and no other surface */
  SheetHinge shown;
  PlaceEntry *entry;
} HingeTool;

/* tool-hinge-line.c: where the ends and the line go */
/** Takes up where the hand is: the surface, unless the first end stands already, and the end there. `exactly`: to be put so. */
void hinge_tool_aim   (HingeTool *self, const ToolEvent *event, bool exactly);
/** The same for a place typed, mm of the surface's own; on the sheet while there is no surface yet. */
void hinge_tool_aim_at (HingeTool *self, Point place);
const Surface *hinge_tool_surface (HingeTool *self);      /* NULL: none */

/* tool-hinge-show.c: what is seen of it */
void hinge_tool_show (HingeTool *self);
void hinge_tool_hide (HingeTool *self);      /* its line, plate and guides; fine while the window goes */
