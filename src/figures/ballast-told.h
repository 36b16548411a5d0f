#pragma once
#include "document/units.h"
#include "figures/ballast-places.h"
#include "figures/figures.h"

/** Ballast as people are told of it. Solution's ballast_g is the least that any place might do with, at the very end of what is drawn;
 *  here it is where least is needed of the places that have room for so much. Millimetres, grams. */
typedef struct {
  double mass_g, x_mm;          /* 0 and NAN where none is needed; NAN both where none would do, or something is not known */
  double sigma_g;               /* one standard deviation; NAN without a mass */
  Contributions owed;           /* what it is made of */
  bool has_place;               /* false: no place drawn has room, and it stands at the very end */
  bool aft;                     /* the nose is heavy */
  BallastPlace place;
} BallastTold;

/** With the solution's part at the nearer end of its rail; NULL: with everything as it stands.
 *  cost     as ballast_places: not for each frame of a drag in which nobody reads it */
BallastTold ballast_told_of (const Figures *figures, const Solution *solution);
/** With the part's middle at part_x_mm, and the balance point off_mm further aft than it is then. The part may be NULL. */
BallastTold ballast_told_for (const Figures *figures, const Part *part, double part_x_mm, double off_mm);
/** "in front of the firewall"; "at the nose" or "at the tail" where no place has room. A new string. */
char *ballast_told_phrase (const BallastTold *self);
