#pragma once
#include "document/aeroplane.h"
#include "document/units.h"

/** Where ballast may go, and how much of it is needed there. Millimetres, grams. */

typedef enum {
  BALLAST_BEFORE_FIREWALL,      /* within the cowl, beside the motor */
  BALLAST_NOSE_END,             /* the foremost end of the bodies, inside; behind a firewall that is known. Without bays behind the first
                                   former where there is room */
  BALLAST_BAY_FORE, BALLAST_BAY_AFT,    /* that end of a bay */
  BALLAST_TAIL_END              /* the aftmost end of the bodies, inside, likewise */
} BallastPlaceKind;

typedef struct {
  BallastPlaceKind kind;
  const Bay *bay;               /* of an end of a bay, lent; else NULL */
  const NamedPlace *former;     /* of the body's end: the last former passed on the way to room, lent; NULL: it is at the very end */
  bool has_room;                /* so much lead goes there */
  double mass_g, x_mm;          /* what is needed with its middle there; without room, where the most that goes there would have its middle,
                                   NAN where nothing does */
  double holds_g;               /* the most that goes there, at least what is needed where it has room */
  double y_mm, z_mm, length_mm, width_mm, height_mm;    /* the block it makes; NAN without room */
} BallastPlace;

/** How the balance is now, and how it is wanted. */
typedef struct { double mass_g, x_mm, target_x_mm; } BallastNeed;

/** All places on the side where ballast helps, of BallastPlace: what needs least first, those without room last. Empty where nothing is off,
 *  something of the need is not known, or no body is drawn. A new array.
 *           A block off the centre line counts as 15 % heavier in that order
 *  method   n = W (x − x_t) / (x_t − x_n), of a block of lead at 11.34 g/cm³ as near to the end as one that heavy has room: a box clear of
 *           the sides less their walls and by 1 mm of every part that stands clear, 2 mm of the motor, its shaft, propeller and spinner, and
 *           not between these and its face, where there is no way in; 4 mm long and the room for it 2 mm wide and high at least.
 *           A section not drawn from above or from the side is taken as square
 *  cost     looks into bays and bodies: not for each frame of a drag
 *  source   FAA-H-8083-1, Weight and Balance Handbook, chapter on adding or removing weight; density: CRC Handbook of Chemistry and
 *           Physics */
GArray *ballast_places (const Aeroplane *aeroplane, BallastNeed need);
/** The same with one of the parts aboard and elsewhere: its middle at that x. Of NULL the same. In mm aft of the datum. */
GArray *ballast_places_beside (const Aeroplane *aeroplane, BallastNeed need, const Part *moved, double moved_x_mm);

/** What the place is called in a list, "Fore end of nose", and in a sentence, "at the fore end of “nose”". New strings. */
char *ballast_place_name   (const BallastPlace *place);
char *ballast_place_phrase (const BallastPlace *place);      /* in a sentence, as above */
/** The block it makes: "block 10 mm long, 13 mm wide and 6 mm high", and that it is off the centre line. A new string; NULL without room. */
char *ballast_place_block  (const BallastPlace *place, Units units);
/** The same in a table, long × wide × high: "10 × 13 × 6 mm, 15 mm to port". A new string; NULL without room. */
char *ballast_place_size   (const BallastPlace *place, Units units);
/** What is told of it beside its name: "26.4 g at 12 mm", or that there is no room for so much. A new string. */
char *ballast_place_text   (const BallastPlace *place, Units units);
