#pragma once
#include "document/piece.h"

/** Lets what is kept of an outline's nodes follow them when the outline becomes another: nodes before the first and behind the last
 *  that differ keep theirs; what was kept of nodes that went is dropped with them, comments before them stay.
 *  piece   not yet seen by anybody else; inner  INNER_NODE or INNER_SIDE_NODE; old  may be NULL. Private to this room. */
void kept_follow_outline (Piece *piece, InnerKind inner, const Outline *old, const Outline *next);
/** The same when the inner element of that kind and index is taken out: what was kept of it goes, but for comments before it. */
void kept_follow_removed (Piece *piece, InnerKind inner, size_t index);
/** The same when one is put in at that index: what was kept of those from there on goes with them. */
void kept_follow_added (Piece *piece, InnerKind inner, size_t index);
