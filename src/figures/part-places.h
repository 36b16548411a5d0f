#pragma once
#include "document/aeroplane.h"

/** Where a part's centre may be: anywhere in a box, mm. */
typedef struct {
  const Piece *room;            /* the bay or the surface; NULL: its rail, or where it stands */
  double x_from, x_to, y_from, y_to, z_from, z_to;
} PartPlaces;

/** A bay, mm aft of the datum: between its formers, in the body that has both; false where a former is not there, or they are one. */
bool bay_reach (const Aeroplane *aeroplane, const Bay *bay, const Body **body, double *from, double *to);

/** The same between those formers' faces: half a former's thickness less at each end. False also where nothing is left. In mm aft of the datum. */
bool bay_inside (const Aeroplane *aeroplane, const Bay *bay, const Body **body, double *from, double *to);

/** All places of a part, of PartPlaces; a new array.
 *  A part with bays (ids of bays, or of surfaces) may be wherever its box is within one, clear of the body's walls; in a surface along its
 *  chord at its own station, where the wing is not less deep than its height; in a fin at its own height, upright in the middle plane, where
 *  the fin is not thinner than the part is wide. Its rail, where it has one besides, bounds x. With a rail alone it
 *  slides in x; with neither it stands where it is. Empty: it has bays, and fits none. Across and in height it stays where it is where the
 *  body is not drawn from above, or from the side. */
GArray *part_places (const Aeroplane *aeroplane, const Part *part);

/** Whether the part is free to be elsewhere. */
bool part_is_movable (const Part *part);

/** Why there is no place for a part. */
typedef enum {
  PLACES_THERE,                 /* there is one */
  PLACES_NO_ROOM,               /* none of its bays is there: their formers are not, or nothing is called so */
  PLACES_OFF_RAIL,              /* it fits in a bay, but its rail does not lead there */
  PLACES_TOO_LARGE
} PlacesWhy;
PlacesWhy part_places_why (const Aeroplane *aeroplane, const Part *part);      /* PLACES_THERE where it has one */

/** Whether one of its bays is there at all; true also for a part that has none. Cheap. */
bool part_has_room (const Aeroplane *aeroplane, const Part *part);
