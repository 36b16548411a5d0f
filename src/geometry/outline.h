#pragma once
#include <stdbool.h>
#include <stddef.h>
#include "geometry/segment.h"

/** A run of segments through nodes, closed by a straight line from its last node to its first. A half-outline runs from
 *  the root's leading edge outboard to the tip and back to the root's trailing edge. Nobody changes one that exists: each
 *  change below makes a new one. Counted references, safe across threads. */
typedef struct Outline Outline;

/** How the curve passes a node; a corner where neither neighbour is tangent to the other. */
typedef enum { NODE_CORNER, NODE_SMOOTH, NODE_SYMMETRIC } NodeKind;
/** The two handles of a node: that of the segment that arrives, that of the segment that leaves. */
typedef enum { HANDLE_BEFORE, HANDLE_AFTER } HandleSide;

/** Makes an outline of `count` segments behind `start`. Node 0 is start, node i is where segment i-1 ends.
 *  kinds   count + 1 node kinds, or NULL: told from the shape (smooth where tangents agree within 0.5 degrees)
 *  made    set on success (one reference, the caller's), else untouched
 *  returns CORE_OK; CORE_TOO_FEW_NODES for count 0; CORE_NOT_FINITE; CORE_OFF_ITS_ARC (an end lies further off its
 *          ellipse than 1e-4 of the larger semi-axis); CORE_NO_MEMORY. Crossing or open outlines can be made: a person
 *          at work passes through them; see outline_check. */
CoreStatus outline_new (Point start, const Segment segments[], size_t count, const NodeKind kinds[], Outline **made);
Outline   *outline_ref   (const Outline *self);
void       outline_unref (Outline *self);                         /* NULL is fine */

size_t         outline_node_count    (const Outline *self);       /* >= 2 */
size_t         outline_segment_count (const Outline *self);       /* node count - 1 */
Point          outline_node          (const Outline *self, size_t node);
NodeKind       outline_node_kind     (const Outline *self, size_t node);
const Segment *outline_segment       (const Outline *self, size_t segment);    /* lent */
/** Whether the node has a handle on that side, and where. Only curves have handles. */
bool           outline_handle        (const Outline *self, size_t node, HandleSide side, Point *place);
Box            outline_bounds        (const Outline *self);       /* of the true curve, not of the handles */
bool           outline_equal         (const Outline *a, const Outline *b);      /* to the last bit; NULLs are equal */
/** The place nearest to `point` on any segment (the closing line left out). */
double         outline_nearest       (const Outline *self, Point point, size_t *segment, double *t);  /* the distance */
/** Whether the closed outline holds the point. */
bool           outline_contains      (const Outline *self, Point point);

/* Changes. Each returns CORE_OK and a new outline in *made, or a reason with *made untouched. Indexes out of range are
 * a programming mistake. */

/** Moves a node; its handles go with it, arcs beside it keep being elliptical arcs by stretching about their other end
 *  (or become curves where no axis-parallel ellipse can follow). */
CoreStatus outline_with_node_at (const Outline *self, size_t node, Point place, Outline **made);
/** Moves a handle; at a smooth node the other handle turns with it, at a symmetric one it also takes its length. */
CoreStatus outline_with_handle_at (const Outline *self, size_t node, HandleSide side, Point place, Outline **made);
/** Makes the node smooth, symmetric or corner: lines and arcs beside a smooth node become curves where they must; the
 *  handles turn to their common direction. */
CoreStatus outline_with_node_kind (const Outline *self, size_t node, NodeKind kind, Outline **made);
/** Makes the segment a line, a curve (the same shape where it can be) or an arc (a quarter ellipse with its ends' tangents
 *  along the axes, the belly on the outer side). */
CoreStatus outline_with_segment_kind (const Outline *self, size_t segment, SegmentKind kind, Outline **made);
/** Puts a node on a segment at t; the shape stays exactly. */
CoreStatus outline_with_node_inserted (const Outline *self, size_t segment, double t, Outline **made);
/** Takes a node out; its two segments become one that keeps the outer tangents and lies closest to them.
 *  CORE_TOO_FEW_NODES when only two nodes are left. */
CoreStatus outline_without_node (const Outline *self, size_t node, Outline **made);
/** Cuts the corner at a node (not an end): two nodes `length` before and after it along the outline (at most half of
 *  each neighbouring segment), joined by a straight line. */
CoreStatus outline_with_node_split (const Outline *self, size_t node, double length, Outline **made);
/** Makes one node of `node` and the next, at their middle; the segment between goes. CORE_TOO_FEW_NODES likewise. */
CoreStatus outline_with_nodes_joined (const Outline *self, size_t node, Outline **made);
/** Adds a segment behind the last node: how an outline is drawn point by point. */
CoreStatus outline_with_segment_added (const Outline *self, const Segment *segment, Outline **made);
/** Every place p becomes scale * p + shift, axis by axis; scales must be positive. */
CoreStatus outline_mapped (const Outline *self, Point scale, Point shift, Outline **made);
/** The same run from the other end: a half traced trailing edge first is put right. */
CoreStatus outline_reversed (const Outline *self, Outline **made);

/** What outline_check found, and where; counts from 0. */
typedef struct {
  CoreStatus status;
  size_t segment_a, segment_b;    /* CORE_CROSSES_ITSELF: the two; segment count stands for the closing line */
  Point place;                    /* where they meet; the loose end; the station's foremost meeting */
  double station_from, station_to;/* CORE_MULTI_VALUED: the stretch of stations met more than twice */
} OutlineFault;

/** Tells whether a half-outline encloses a surface: CORE_OPEN when its ends stand at different stations (apart by more
 *  than 1e-6 of the box), CORE_NO_SPAN, CORE_NO_AREA (under 1e-9 of the box squared), CORE_CROSSES_ITSELF; CORE_MULTI_VALUED is a remark, the
 *  area and chords are still right; else CORE_OK. The same status is returned and stands in *fault (may be NULL).
 *  The first in the order crossing, open, no span, no area, multi-valued.
 *  cost    near linear in the number of segments (10,000 take under 50 ms) */
CoreStatus outline_check (const Outline *self, OutlineFault *fault);
