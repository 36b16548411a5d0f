#pragma once
#include <time.h>
#include "balance/arrange-program.h"

/** Branch and bound: depth first, of each branching the more hopeful branch first. Private to the arrangement. */

/** An arrangement that the next ones must differ from. */
typedef struct { double places[PARTS_MOST][AXES]; size_t rooms[PARTS_MOST]; } Taken;

typedef struct {
  const Space *space;
  Program *program;
  const Taken *taken;             /* and their mirror images when the case is mirrored */
  size_t taken_count;
  double until;                   /* of tree_clock(); INFINITY */
  double accuracy;                /* what is no better by this much is no better */
  ArrangeGoesOn goes_on;
  void *data;
  double done_before, done_part;  /* of the share done: what was before, and what this search is of all */

  bool found, cancelled, late, no_memory; /* since they were set to false */
  bool failed, too_many;          /* of the last search: the solver gave up somewhere; there were more nodes */
  double value;                   /* of the best found; before a search what it must be better than, or INFINITY */
  double places[PARTS_MOST][AXES];        /* set when found */
  double open;                    /* the least bound of what was not searched; INFINITY when all was */
  double done, next_asked;
  size_t depth, nodes, most_nodes;
} Tree;

/** The time in seconds, of a clock that only goes forward. */
double tree_clock (void);
/** Searches below `root`, which is left as it is, for what is better than `value`; of that the best stands in it afterwards.
 *  most_nodes   how many nodes are solved at most */
void tree_search (Tree *self, const Node *root, size_t most_nodes);
/** Whether time, patience or memory is at an end. */
bool tree_is_stopped (const Tree *self);
/** Whether the last search searched all: then nothing is better than what was found. */
bool tree_is_proved (const Tree *self);
