#pragma once
#include "document/units.h"
#include "figures/ballast-told.h"
#include "figures/figures.h"
#include "figures/places-memo.h"

/** What each part can do for the balance, so that a person sees at once what is worth moving. Millimetres, grams; x aft of the datum. */
typedef struct {
  const Part *part;
  size_t number;                /* among the document's parts */
  double moment_g_mm;           /* its mass times its distance from the balance point: aft is positive */
  double share;                 /* of all mass: how far the balance point goes when it is moved, over its own way */
  double wanted_x_mm;           /* where it alone would have to be, all else as it is; NAN when it weighs nothing */
  bool can_move;                /* it has a rail or bays */
  double reach_x_mm;            /* the place nearest to that where it may be; where it is when it may not move */
  double told_x_mm;             /* the place that people are told of: reach_x of one that may move; of another where it is wanted, within the
                                 * chord of the surface that it is fixed to, else within the body's length; NAN where that is beyond */
  double left_mm;               /* what the balance point is off the wanted place then: aft is positive, 0 when it reaches */
  bool balances;                /* it may move, and less is left than anybody is told of: half a millimetre */
  double wanted_g;              /* what it would have to weigh where it is; NAN when no mass does, or it stands at the wanted place */
} Mover;

/** Two parts moved together: the first goes as far as it helps, the second does the rest. */
typedef struct { const Mover *first, *second; double first_x_mm, second_x_mm; } MoverPair;

typedef struct {
  Mover *of;  size_t count;     /* one for each part aboard that weighs something, the most useful first */
  double off_mm;                /* how far the balance point is aft of the place advised; NAN without either */
  double ballast_g, ballast_x_mm;     /* what is missing, and the best place for it: the end furthest from the place advised */
  double gram_mm;               /* how far a gram there takes the balance point: forward is negative */
  double some_mm;               /* the same of MOVERS_SOME_G */
  BallastTold told;             /* where no part and no two do it: what is missing as people are told of it; else all 0 */
  double told_some_mm;          /* some_mm of that place */
  char *margin;                 /* what all this is for: margin_advised_phrase; NULL without */
  bool has_pair;  MoverPair pair;     /* where no part does it alone and two of them do */
} Movers;

/** g: what is told of where a gram is too little to see. */
enum { MOVERS_SOME_G = 10 };

/** x_wanted = x + M (x_t − x̄) / m; a mass at x must be (M − m)(x̄' − x_t) / (x_t − x), x̄' the balance point without it. Most useful: those
 *  that may move, by how little is left to do, then by how little they must move; then the rest by how much they would have to.
 *  cost     looks into bays and bodies: for each frame of a drag take the other one
 *  source   FAA-H-8083-1, Weight and Balance Handbook, chapter on shifting and on adding or removing weight */
Movers movers_of    (const Figures *figures);
/** The same; the memo is kept by who asks again and again: then only what changed is looked into. */
Movers movers_of_remembered (const Figures *figures, PlacesMemo *memo);
void   movers_clear (Movers *self);      /* frees both lists; again is fine */
/** Where the second part must be for the place advised when the first is at that x, mm; NAN where either weighs nothing. */
double movers_other (const Figures *figures, const Part *first, double first_x_mm, const Part *second);

/** How far a mass put at x takes the balance point, mm: aft is positive; NAN without one. (x − x̄) m / (M + m), the same source. */
double movers_added_mm (const Figures *figures, double grams, double x_mm);

/** What a part can do, in words: "17 mm forward balances, as would 32 g" in its place, of no place where it cannot be. A new string; NULL:
 *  nothing is off, or neither a place nor a mass of it does anything. */
char  *mover_text (const Movers *movers, const Mover *mover, Units units);
/** The same of the two, and of what is missing: one sentence. A new string; NULL: nothing is missing. */
char  *movers_text (const Movers *movers, Units units);
/** What MOVERS_SOME_G at either end do: one sentence. A new string; NULL without a balance point, or where no end is known. */
char  *movers_ends_text (const Figures *figures, Units units);
