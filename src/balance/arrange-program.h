#pragma once
#include "balance/arrange-node.h"

/** The linear program that bounds a place of the search tree: where parts stand when those that may meet, meet. Private to the
 *  arrangement. */

typedef struct Program Program;

/** What is made least. */
typedef enum {
  GOAL_ANY,                       /* nothing: whether there is any */
  GOAL_BALLAST,                   /* ballast, in thousandths of all mass */
  GOAL_AIM,                       /* the moment about the aim over all mass, mm */
  GOAL_LEADS,                     /* what leads need and how far parts are moved, mm */
  GOAL_LONGER_LEADS,              /* by how much leads would have to be longer, mm */
  GOAL_BAND                       /* by how much the balance misses the band, mm, leads of any length */
} Goal;

/** whole   a settled node with nothing decided, lent: what holds for it holds everywhere. NULL without memory */
Program *program_new (const Space *space, const Node *whole);
void program_free (Program *self);      /* NULL is fine */

void program_set_goal (Program *self, Goal goal);      /* what is made least from now on; planes that may be dropped are */
/** From now on the ballast, or the distance from the aim, is at most this (in the goal's unit: thousandths of all mass, or mm). */
void program_hold (Program *self, Goal goal, double most);
void program_hold_nothing (Program *self);      /* undoes program_hold of both */
/** Lets leads and balance be as they will until the next goal is set, and from now on adds nothing that follows from every two parts
 *  being apart: a node may let some of them meet. */
void program_let_go (Program *self);

/** Solves it for what a node has decided, with every supporting plane and moment that is violated there.
 *  cutoff    a value from which on it is of no interest
 *  rounding  by which a lead's length may be wrong, mm
 *  returns   false when there is nothing below the cutoff; *failed set when the solver gave up (and then nothing is proved) */
bool program_solve (Program *self, const Node *node, double cutoff, double rounding, bool *failed);
/** The same without adding planes: a bound at once. cutoff in the goal's unit (mm, or thousandths of all mass). */
bool program_bound (Program *self, const Node *node, double cutoff, bool *failed);
double program_value (const Program *self);      /* of the goal at the solution found last, in the goal's unit (mm or thousandths of all mass) */
/** Where the parts stand, mm. */
void program_places (const Program *self, double places[][AXES]);

/** The basis it stands at, to begin there again: near nodes are solved in a few steps. basis_let_go() each that was kept. */
typedef struct Basis Basis;
/** NULL without memory. */
Basis *basis_keep (Program *program);
void basis_take (const Basis *self, Program *program);      /* the program stands there again; rows added since are in its basis */
void basis_let_go (Basis *self, Program *program);      /* frees it, and lets its planes be dropped; NULL is fine */
