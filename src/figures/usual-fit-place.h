#pragma once
#include "document/aeroplane.h"
#include "figures/body-profile.h"

/** Where the usual fit finds room. Private to this room. */
typedef struct {
  Aeroplane *made;              /* so far */
  BodyProfile *body;            /* NULL: none */
  double nose, tail;            /* of the body; without one a nose is thought of ahead of the wing, and no tail */
  double leading, chord;        /* of the wing at its root */
} FitGround;

/** Finds the ground; false without a wing to fit out. `made` is a reference. */
bool fit_ground_begin (FitGround *self, const Aeroplane *aeroplane);
/** Leaves `made` to the caller. */
void fit_ground_end   (FitGround *self);

/** Puts a part, taken, at `usual` or as near to it as its box has room, seen from above and between the body's walls: `step` 1 looks aft of it
 *  alone, -1 forward alone, 0 both ways, aft first. y in `sides` (ended by NAN) is tried one after the other at each place. Height: as near to
 *  part's z as the body lets it. Where there is no room it stands at `usual`. Its id is made free from the one it has; lent, as it stands.
 *  All in mm. */
const Part *fit_put (FitGround *self, Part *takes, double usual, int step, const double *sides);
/** Adds it where it stands, taken; its id likewise. */
const Part *fit_add (FitGround *self, Part *takes);
/** The rail over all that is free about a part in the body, or within 30 mm of it without one. */
void fit_rail (FitGround *self, const char *id);
/** Puts a part and what holds it in a group of their own, named after the part. */
void fit_group (FitGround *self, const char *part, const char *fastening);
