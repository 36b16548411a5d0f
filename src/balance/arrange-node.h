#pragma once
#include "balance/arrange-space.h"

/** What is decided at one place of the search tree: in which ranges each part may still stand, in which box its centre, and along
 *  which way two parts are apart. Private to the arrangement. */

/** Two ways along each axis: 2 axis when b stands behind a (its coordinate greater), 2 axis + 1 the other way round. */
enum { WAYS = 2 * AXES, WAY_OPEN = -1, WAY_SETTLED = WAYS };

typedef struct Node Node;
struct Node {
  double bound;                   /* no arrangement below it has a lesser value */
  Span *spans;                    /* one a part: its centre's box */
  uint64_t *ranges;               /* one a part: a bit for each range it may stand in */
  int8_t *ways;                   /* one a pair: a way, WAY_OPEN, or WAY_SETTLED when whatever the boxes allow is apart */
};

/** One with nothing decided, or NULL without memory; node_free() it. */
Node *node_new (const Space *space);
Node *node_dup (const Space *space, const Node *node);      /* a copy, decisions and all; NULL without memory, node_free() it */
void node_free (Node *self);      /* NULL is fine */

/** Sets each part's box around all its ranges, whatever else is decided. Every part has a range. */
void node_hull (const Space *space, Node *self);
/** Draws what follows from what is decided: smaller boxes, the only way that two parts can still be apart. False when nothing is left. */
bool node_settle (const Space *space, Node *self);
/** The same of those alone that move as one with this part, whatever else there is. */
bool node_settle_tied (const Space *space, Node *self, size_t leader);
/** Whether a pair can still be apart that way. */
bool node_way_is_open (const Node *self, const SpacePair *pair, int way);
/** Whether port and starboard are still alike, so that of two ways across one will do. */
bool node_is_mirrored (const Space *space, const Node *self);
/** The first of the ranges a part may still stand in that holds this place; its count of ranges when none does. In mm. */
size_t node_range_at (const Space *space, const Node *self, size_t part, const double place[AXES]);
/** How far apart the centres of an open pair are at least, mm: one box beside the other along the way that takes least. 0 when the
 *  boxes say more. */
double node_least_apart (const Space *space, const Node *self, size_t pair);
