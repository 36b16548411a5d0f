#pragma once
#include "balance/arrange-tree.h"

/** Betters what is known before all is searched, so that the search has a better value to beat and the time's end something to give:
 *  everything stays as it is ahead of and beside one another but for one part, or the two ends of a lead, which are put elsewhere; again
 *  and again while that helps. Private to the arrangement.
 *  tree   its places are the known arrangement, its value what that is worth; both are bettered */
void tree_polish (Tree *tree, const Node *root);
