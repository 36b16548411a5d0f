#pragma once
#include "figures/figures.h"

/** Where formers and ribs stand, one after the other: what a building board is ruled by, and what all places on the lists are measured from.
 *  Millimetres; NAN what its kind does not have, or what is not drawn. */
typedef struct {
  const Piece *of;              /* the body or surface that it is of, lent */
  const NamedPlace *place;      /* its name (NULL not given) and station: aft of the datum, or from the centre line; lent */
  double apart_mm;              /* from the one before on the same piece; NAN for the first */
  double width_mm, height_mm;   /* of the body there, over its outlines; a former */
  double leading_x_mm, chord_mm;      /* of the surface there, aft of the datum, and along it; a rib */
} StationLine;

/** All formers, of StationLine, body by body, each from the nose aft. A new array. */
GArray *former_stations (const Aeroplane *aeroplane);
/** All ribs, of StationLine, surface by surface, each from the centre line out. A new array. */
GArray *rib_stations    (const Aeroplane *aeroplane);

/** Both as comma-separated values, a heading row first. */
void csv_stations (GString *text, const Aeroplane *aeroplane);
