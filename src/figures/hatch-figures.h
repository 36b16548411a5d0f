#pragma once
#include "figures/room-faults.h"

/** The hatch to cut for the battery: mm aft of the datum. NAN and NULL without a battery on a rail whose places are known. */
typedef struct {
  const Part *part;             /* the battery aboard; NULL: no hatch */
  size_t packs;                 /* how many it serves: the one aboard and those left out that have a rail */
  const Body *body;             /* that it stands in; NULL: in none that is known */
  double from_mm, to_mm, width_mm;              /* of the hole at its widest */
  double from_width_mm, to_width_mm;            /* at its forward and its after edge, where the body leaves it less (hatch-shape.h) */
  double full_from_mm, full_to_mm;              /* between which it is as wide as it gets */
  double pack_width_mm;         /* of the pack that comes nearest to not going through, across */
  double lacking_mm;            /* how much longer the stretch would have to be that lets that pack through; 0: it goes through */
  double floor_from_mm, floor_to_mm;            /* the floor to be left for the packs */
  double play_mm;               /* between its lid and the hole, on each side */
  const NamedPlace *former_from, *former_to;    /* where its edges go when they are moved outward to a former; NULL where there is none,
                                                   or a firewall stands between */
  double moved_from_mm, moved_to_mm;            /* how much its edges are moved aft to end at a former that is near (hatch-ends.h); 0: not at all */
  double firewall_x_mm;         /* the after face of a firewall ahead of it; NAN: none is near */
  double firewall_mm;           /* how much of its forward edge that takes; 0: none */
  /* What the length is made of where it serves one pack alone; NAN for several. */
  double pack_mm;               /* the pack's box, along */
  double places_mm;             /* between the foremost and the aftmost place that keep the margin */
  double spread_mm;             /* what those two may be out by, together, as far as the rail goes */
  double rail_ahead_mm, rail_behind_mm;         /* how much further the rail goes, forward and aft, than all of that: less than nought where it
                                                   ends before. NAN where no place keeps the margin */
} HatchFigures;

struct Figures;
/** From the figures' solutions. A battery left out that has a rail is another pack to be flown, alone, in place of the one aboard.
 *  method  hatch_opening; each pack's band within the limits (slide_solve); where none keeps the margin, the end of the rail that comes
 *          nearest; twice the deviation of its places, no further than the rail goes; narrowed with the body (hatch_narrow)
 *  bodies  the aeroplane's, by which that is known */
HatchFigures hatch_figures_of (const struct Figures *figures, const RoomProfiles *bodies);

/** How far the edge stands behind (positive) or ahead of (negative) the former named nearest to it, mm; false without a former.
 *  x  mm aft of the datum */
bool hatch_nearest_former (const Aeroplane *aeroplane, double x, const NamedPlace **former, double *behind);
