#pragma once
#include "balance/arrange-tree.h"

/** What to decide next where the linear program's parts stand in one another's way. Private to the arrangement. */

enum { BRANCHES_MOST = WAYS * PARTS_MOST + RANGES_MOST };

/** Nodes below one, together all that it allows. */
typedef struct { Node *nodes[BRANCHES_MOST]; size_t count; } Branches;

/** Something that could be decided next: along which way a pair is apart, in which range a part stands, or by what an arrangement
 *  differs from one that is taken. */
typedef struct {
  enum { CHOICE_WAY, CHOICE_RANGE, CHOICE_AWAY } kind;
  size_t which;                   /* the pair, the part, or the one taken */
  double across;                  /* −1 for its mirror image */
  double pressing;                /* the greater, the sooner it should be decided */
} Choice;

enum { CHOICES_MOST = 8 };
/** The most pressing first. */
typedef struct { Choice choices[CHOICES_MOST]; size_t count; } Choices;

/** What is left to decide at a node whose program's solution is `places`: nothing when that is an arrangement. Places in mm. */
void choices_find (const Tree *tree, const Node *node, double places[][AXES], Choices *found);

/** Makes the branches of one choice. One in which nothing is possible is left out. False without memory; branches_free() them in any
 *  case. */
bool branches_make (const Tree *tree, const Node *node, const Choice *choice, Branches *made);
void branches_free (Branches *self);      /* frees the nodes that it still holds; none are left then */
