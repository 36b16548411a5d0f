#pragma once
#include <stdbool.h>
#include <stddef.h>
#include "geometry/status.h"

/** One pack that is to be flown, alone. m. */
typedef struct {
  double band_from, band_to;      /* where its centre may have to be, from <= to */
  double length, width;           /* of its box, along and across */
  double spread_from, spread_to;  /* two standard deviations of the band's ends: what the airframe may weigh other than reckoned; >= 0 */
  bool leads_aft;                 /* its leads leave the after end, else the forward one */
} HatchPack;

/** The opening that lets each of them in and out. m aft of the datum. */
typedef struct {
  double from, to, width;
  double floor_from, floor_to;    /* the floor that packs may need: nothing else stands on it */
} Hatch;

/** What comes on top: the bend of the plug's leads at their end 15 mm, a hand at the other end 10 mm, 4 mm across. Common practice, no
 *  source. */
#define HATCH_BEND 0.015
#define HATCH_HAND 0.010
#define HATCH_ACROSS 0.004
/** Between its lid and the hole, on each side: what paint and covering take, and room to lift it out. m. Common practice, no source. */
#define HATCH_PLAY 0.0005

/** What has to be left within the body's sides beside the hole, on each side: a rim to glue, on which the lid lies. m. Common practice, no source. */
#define HATCH_LAND 0.003
/** How much wider than a pack the hole must be for it to go through at all. m. Common practice, no source. */
#define HATCH_PASS 0.001

/** The opening over all packs. Floor: from the foremost place of a pack's forward end to the aftmost of its after end, spreads counted; the
 *  opening is that, with the leads' bend and a hand.
 *  hatch  set on success; CORE_OUT_OF_RANGE without a pack, or when a number is not finite, a band reversed, a size or a spread below 0 */
CoreStatus hatch_opening (const HatchPack packs[], size_t count, Hatch *hatch);

/** The line that an edge of the opening is moved to, outward: of `count` places the aftmost at or ahead of x, or the foremost at or behind
 *  it (`aft`). Its index; `count` when there is none. All in one unit (mm). */
size_t hatch_line_outward (const double places[], size_t count, double x, bool aft);
