#pragma once
#include "balance/arrange-tree.h"

/** What to decide next where the linear program's parts stand in one another's way. Private to the arrangement. */

enum { BRANCHES_MOST = WAYS * PARTS_MOST + RANGES_MOST };

/** Nodes below one, together all that it allows. */
typedef struct { Node *nodes[BRANCHES_MOST]; size_t count; } Branches;

/** Makes the branches of a node whose program's solution is `places`: none when that is an arrangement. A branch in which nothing is
 *  possible is left out. False without memory; branches_free() them in any case.
 *  arranged  set: whether nothing was left to decide */
bool branches_make (const Tree *tree, const Node *node, double places[][AXES], Branches *made, bool *arranged);
void branches_free (Branches *self);
