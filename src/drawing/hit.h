#pragma once
#include "drawing/sheet.h"

typedef enum {
  HIT_NOTHING,
  HIT_NODE, HIT_HANDLE, HIT_SEGMENT,      /* of a selected surface's or body's outline (segments: of any) */
  HIT_HINGE_END,                          /* 0 inner, 1 outer, of a selected control */
  HIT_RAIL_END,                           /* 0 forward, 1 aft, of a selected part */
  HIT_PART, HIT_MARK, HIT_CONTROL,
  HIT_POINT,                              /* balance point or neutral point: index is a SheetPoint */
  HIT_DIMENSION,                          /* a figure that can be typed */
  HIT_SURFACE, HIT_BODY,                  /* inside the outline */
  HIT_DATUM,
  HIT_LEAD,                               /* the line of a lead */
  HIT_LEAD_POINT                          /* of the one selected lead: index is a place in lead_points() */
} HitKind;

typedef enum { DIMENSION_SPAN, DIMENSION_MARK, DIMENSION_PART_X, DIMENSION_NODE_STATION, DIMENSION_NODE_X } DimensionKind;

/** What lies under a place of the sheet. */
typedef struct {
  HitKind kind;
  const char *id;          /* the piece's, lent from the aeroplane; NULL for marks */
  const char *control;     /* HIT_CONTROL, HIT_HINGE_END */
  size_t index;            /* node, segment, mark, or which end */
  HandleSide side;         /* HIT_HANDLE */
  bool port;               /* met on the mirrored half: pull with y turned round */
  double t;                /* HIT_SEGMENT: where on it */
  DimensionKind dimension;
  Point place;             /* HIT_LEAD: where it was met, mm */
} Hit;

/** Looks at (x, y), pixels, from the top of the drawing down; `radius` pixels is how near a node or line is caught. */
Hit sheet_hit (const SheetScene *scene, double x, double y, double radius);
/** What can be selected there beneath `above`, a part, point, mark, control, surface or body; beneath the lowest the topmost again, so that
 *  one after another is reached. HIT_NOTHING where there is nothing. The order does not depend on what is selected. In pixels. */
Hit sheet_hit_beneath (const SheetScene *scene, double x, double y, double radius, const Hit *above);
/** The px box of a dimension's figure, so that a field can open there; false when it is not drawn. */
bool sheet_dimension_box (const SheetScene *scene, const Hit *dimension, Box *px);

/** How far a place is from the straight stretch between two, >= 0, in their unit (mm or pixels). */
double hit_to_stretch (Point place, Point a, Point b);

/** For self_node below: no node of the piece attracts. */
#define SNAP_WHOLE ((size_t) -1)
/** The snapped place, mm, and which guides to show through it, mm (NAN none). */
typedef struct { Point place; double guide_x, guide_y; } Snap;
/** Where a place being pulled goes, mm: whole units (by the ruler's present step), the centre line, other nodes' x and y, formers,
 *  ribs and where controls end. `self_id`/`self_node` is what moves and does not attract. */
Snap sheet_snap (const SheetScene *scene, Point place, const char *self_id, size_t self_node);
/** The smallest step that snapping uses at this zoom, mm (1 mm or 1/32 in and multiples). */
double sheet_snap_step (const SheetScene *scene);
