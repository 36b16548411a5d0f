#pragma once
#include "figures/figures.h"
#include "figures/json-text.h"

/** What stands between the pack and the side on which the hatch opens, and how much of the opening it stands across: the wing, or a fixed part
 *  of the airframe. */
typedef struct {
  const Piece *piece;           /* lent */
  double from_mm, to_mm;        /* mm aft of the datum, within the opening */
} HatchBar;

/** An opening for the hatch's pack, as it is or as it might be. mm aft of the datum. */
typedef struct { HatchSide side; double from_mm, to_mm; } HatchOpening;

/** Top for bottom, and bottom for top. */
HatchSide hatch_other_side (HatchSide side);

/** All of them, the wing first, then parts in their order; an array of HatchBar. A new array; empty without a hatch, and until a side is chosen.
 *  method  the wing by its chord at the root and its height there; of the parts aboard that are of the airframe (part_class_is_of_airframe)
 *          those that stand at the hatch's body, over its hole in plan, beyond the pack's middle: an undercarriage for the block that it is
 *          fixed to, a cowl on either side, wheels where they reach into the body. What stands across less than 1 mm is none */
GArray *hatch_bars    (const Figures *figures);
GArray *hatch_bars_of (const Figures *figures, HatchOpening opening);   /* the same of another opening */

/** What each of them is, and the one thing to do: a sentence each, translated. A new array of strings. */
GPtrArray *hatch_bar_texts (const Figures *figures);

/** Writes the member "in_the_way" of the hatch, with id, from_mm and to_mm of each. */
void hatch_bars_write (JsonText *json, const Figures *figures);
