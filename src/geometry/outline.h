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
 *          ellipse than 1e-3 of the larger semi-axis, or the ellipse has no size); CORE_NO_MEMORY. Crossing or open outlines
 *          can be made: a person at work passes through them; see outline_check.
 *  cost    near linear in count; box, area and fault are found here, so that asking for them costs nothing */
CoreStatus outline_new (Point start, const Segment segments[], size_t count, const NodeKind kinds[], Outline **made);
/** One reference more, the caller's; the same outline. Not NULL. */
Outline   *outline_ref   (const Outline *self);
void       outline_unref (Outline *self);                         /* gives one back, the last frees; NULL is fine */

size_t         outline_node_count    (const Outline *self);       /* >= 2 */
size_t         outline_segment_count (const Outline *self);       /* node count - 1 */
Point          outline_node          (const Outline *self, size_t node);       /* where it stands; node < node count */
NodeKind       outline_node_kind     (const Outline *self, size_t node);       /* the kind it was given, or told from the shape */
/** The kind that outline_new tells from the shape when it is given none: an end is a corner. */
NodeKind       outline_node_shape    (const Outline *self, size_t node);
const Segment *outline_segment       (const Outline *self, size_t segment);    /* lent */
/** Whether the node has a handle on that side, and where (untouched without one). Only curves have handles. */
bool           outline_handle        (const Outline *self, size_t node, HandleSide side, Point *place);
Box            outline_bounds        (const Outline *self);       /* of the true curve, not of the handles */
bool           outline_equal         (const Outline *a, const Outline *b);      /* to the last bit; NULLs are equal */
/** The distance, >= 0, from `point` to the nearest place on any segment (the closing line left out), in the outline's unit (mm in
 *  a document). The place is at *t, between 0 and 1, of *segment. */
double         outline_nearest       (const Outline *self, Point point, size_t *segment, double *t);
/** Whether the closed outline holds the point: an odd number of meetings ahead of it at its station. */
bool           outline_contains      (const Outline *self, Point point);

/* Changes. Each returns CORE_OK and a new outline in *made, or a reason with *made untouched. Indexes out of range are
 * a programming mistake. */

/** Moves a node; its handles go with it, arcs beside it keep being elliptical arcs by stretching about their other end
 *  (or become one curve each where no axis-parallel ellipse can follow: nodes keep their indexes). A smooth node between a
 *  curve and a line or an arc whose direction changed turns the curve's handle; one between others becomes a corner. */
CoreStatus outline_with_node_at (const Outline *self, size_t node, Point place, Outline **made);
/** Moves a handle; at a smooth node the other handle turns with it, at a symmetric one it also takes its length. Where a
 *  smooth node's other neighbour is a line or an arc, the handle stays on its direction. CORE_OUT_OF_RANGE where there is
 *  no handle (see outline_handle). */
CoreStatus outline_with_handle_at (const Outline *self, size_t node, HandleSide side, Point place, Outline **made);
/** Makes the node smooth, symmetric or corner: lines and arcs beside a smooth node become curves where they must; the
 *  handles turn to their common direction. */
CoreStatus outline_with_node_kind (const Outline *self, size_t node, NodeKind kind, Outline **made);
/** Makes the segment a line, a curve (the same shape; an arc over more than a quarter becomes two, with a smooth node more
 *  behind `segment`) or an arc (a quarter ellipse with its ends' tangents along the axes, the belly on the outer side: away
 *  from the other nodes' middle, without others the side of greater y; CORE_OFF_ITS_ARC when its ends share x or y). */
CoreStatus outline_with_segment_kind (const Outline *self, size_t segment, SegmentKind kind, Outline **made);
/** Puts a node on a segment at the fraction t of its run, smooth on a curve or an arc; the shape stays exactly.
 *  CORE_OUT_OF_RANGE unless 0 < t < 1. */
CoreStatus outline_with_node_inserted (const Outline *self, size_t segment, double t, Outline **made);
/** Takes a node out; its two segments become one: the one that they were cut from, a line for two lines, else a curve that
 *  keeps the outer tangents and lies closest to them. An end takes its segment along. CORE_TOO_FEW_NODES when only two
 *  nodes are left. */
CoreStatus outline_without_node (const Outline *self, size_t node, Outline **made);
/** Cuts the corner at a node (not an end): two nodes `length` (mm in a document) before and after it along the outline (at most
 *  half of each neighbouring segment), joined by a straight line. CORE_OUT_OF_RANGE at an end or unless length > 0. */
CoreStatus outline_with_node_split (const Outline *self, size_t node, double length, Outline **made);
/** Makes one node of `node` and the next, at their middle; the segment between goes. CORE_TOO_FEW_NODES likewise. */
CoreStatus outline_with_nodes_joined (const Outline *self, size_t node, Outline **made);
/** Adds a segment behind the last node: how an outline is drawn point by point. */
CoreStatus outline_with_segment_added (const Outline *self, const Segment *segment, Outline **made);
/** Every place p becomes scale * p + shift, axis by axis; CORE_OUT_OF_RANGE unless both scales are positive. */
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

/** Tells whether a half-outline encloses a surface: CORE_CROSSES_ITSELF when two parts of it (or one and the closing line)
 *  change sides, CORE_OPEN when its ends stand at different stations (apart by more than 1e-6 of the box; nobody drew its closing
 *  line then, and crossing that is no crossing), CORE_NO_SPAN,
 *  CORE_NO_AREA (under 1e-9 of the box squared); CORE_MULTI_VALUED (over more than 1e-6 of the box) is a remark, the area and
 *  chords are still right; else CORE_OK. The first in that order is returned and stands in *fault (may be NULL).
 *  CORE_NOT_FINITE when the box is too large to be computed with (1e75). Parts that touch, a cusp, and neighbours that lie
 *  upon one another do not cross; what differs by less than 1e-9 of the box counts as touching.
 *  cost    none: found by outline_new (10,000 segments take under 50 ms there) */
CoreStatus outline_check (const Outline *self, OutlineFault *fault);
