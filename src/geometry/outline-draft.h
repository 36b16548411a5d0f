#pragma once
#include "geometry/outline.h"
#include "geometry/stretch.h"

/* Private to the geometry room. */

/** An outline on its way to become the next one: copies of its parts, free to be changed. */
typedef struct {
  Point start;
  Segment *segments;
  NodeKind *kinds;
  size_t count, room;       /* segments */
} Draft;

/** Copies an outline's parts with room for `more` segments. CORE_OK or CORE_NO_MEMORY; end it with outline_draft_finish. */
CoreStatus outline_draft_begin (Draft *self, const Outline *outline, size_t more);
/** Makes the outline and ends the draft, also when it fails. What outline_new returns. */
CoreStatus outline_draft_finish (Draft *self, Outline **made);
/** Ends a draft from which nothing is to be made. */
void draft_abandon (Draft *self);

/** Where a node stands now; node <= count. */
Point   draft_node (const Draft *self, size_t node);
/** A segment as it stands now, ready to be evaluated; segment < count. A copy: it does not follow further changes. */
Stretch draft_stretch (const Draft *self, size_t segment);

/** Opens a place for a segment before `segment`; the node where it will end is a corner. */
void draft_open (Draft *self, size_t segment);
/** Takes a segment out with the node where it ends. */
void draft_remove (Draft *self, size_t segment);
/** Moves a node with its handles, stretching the arcs beside it. */
void draft_move_node (Draft *self, size_t node, Point place);
/** Makes the segment a single curve with the same ends and tangents. */
void draft_make_curve (Draft *self, size_t segment);
/** Turns the curves' handles at a node to run along `direction` (a unit vector, onwards), each keeping its length (one without
 *  length takes a third of the way to the next node). Lines and arcs stay. */
void draft_turn_handles (Draft *self, size_t node, Point direction);
/** After a change beside the node: a smooth node whose neighbours no longer agree turns the handle of the one that is a
 *  curve; where that cannot help it is a corner. A symmetric one with unequal handles is smooth. */
void draft_settle (Draft *self, size_t node);
