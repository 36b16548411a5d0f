#pragma once
#include "document/aeroplane.h"
#include "document/units.h"
#include "figures/csv-text.h"

/** Where a part stands in a wing or a tailplane, as a rule laid on bare ribs tells it. Millimetres. */
typedef struct {
  const Surface *surface;       /* that it lies in, lent; NULL: in none */
  double station_mm;            /* of its middle, from the centre line, on either side, >= 0 */
  double front_mm, rear_mm;     /* its edges behind (positive) or ahead of (negative) the leading edge at that station */
  const NamedPlace *rib;        /* the named one nearest to that station, lent; NULL: none has a name */
  double outboard_mm;           /* the station outboard (positive) or inboard (negative) of that rib; NAN without one */
} WingStand;

/** One that stands in none. */
WingStand wing_stand_none (void);

/** Where a part stands: in the surface that it is fixed to, else in that which is nearest over or under its middle, unless a body is there. A fin
 *  holds none. False where it stands in none, or its place is not finite.
 *  method  its box as turned; the leading edge as drawn, at the station of its middle; source: common practice, no source */
bool wing_stand_of (const Aeroplane *aeroplane, const Part *part, WingStand *stand);
/** A place on a surface, `aft` of its leading edge at that station. In mm; the rib is the nearest, NULL where none is named. */
WingStand wing_stand_at (const Surface *surface, double station_mm, double aft_mm);

/** Adds the fields of CSV_WING_STAND_HEADING; all empty for what stands in none. */
void csv_wing_stand (GString *text, const WingStand *stand);
#define CSV_WING_STAND_HEADING "surface,front_behind_leading_edge_mm,rear_behind_leading_edge_mm,rib,outboard_of_rib_mm"

/** Both edges: "36 to 58 mm aft of the leading edge there"; one place where they are the same. A new string, translated. */
char *wing_stand_along_text (const WingStand *stand, Units units);
/** "11 mm outboard of rib R5", "at rib R5". A new string, translated; NULL where no rib has a name. */
char *wing_stand_rib_text (const WingStand *stand, Units units);
/** "125 mm to starboard", "125 mm to port", of y, mm to starboard. A new string, translated; NULL on the centre line. */
char *off_centre_text (double y, Units units);
