#pragma once
#include "figures/figures.h"

/** What the one sentence must be about, the most pressing first. */
typedef enum {
  STATE_NO_WING,
  STATE_OUTLINE_OPEN,
  STATE_OUTLINE_CROSSES,
  STATE_OUTLINE_BEYOND,        /* a half reaches over the centre line */
  STATE_OUTLINE_INBOARD,       /* a half reaches where its root is to be carried */
  STATE_OUTLINE_EMPTY,
  STATE_OUTLINE_UNMEASURED,    /* out of all proportion, or no memory */
  STATE_OUTLINE_LAST = STATE_OUTLINE_UNMEASURED,
  STATE_NO_NEUTRAL_POINT,
  STATE_WING_ALONE,
  STATE_NO_MASSES,
  STATE_NO_PLACE,              /* a mass lies nowhere yet */
  STATE_TAIL_HEAVY,            /* a negative margin */
  STATE_NO_AIRFRAME,           /* only parts weigh anything: the rest lies mostly aft of them */
  STATE_UNWEIGHED,             /* something drawn weighs nothing, so where the balance point lies says nothing yet */
  STATE_WEIGHTLESS,            /* a part with a rail weighs nothing */
  STATE_LITTLE_MARGIN,         /* positive, less than wanted */
  STATE_NOSE_HEAVY,
  STATE_ESTIMATES,             /* in the band from here on */
  STATE_PLACE_GUESSED,         /* something traced stands only where such a thing usually does */
  STATE_METHODS_DIFFER,
  STATE_SMALL_TAIL,
  STATE_MOVE_FOR_FIRST_FLIGHT,
  STATE_IN_BAND
} AdviceState;

/** What can be done about the balance. */
typedef struct {
  const Solution *solution;    /* of the part to move; NULL when none has a rail and is aboard */
  bool reaches_band;           /* whether the rail has a place in the band */
  double move_mm;              /* to the aim, or further forward where that is within one deviation of the aft limit, or to the
                                  place nearest to it that the rail has; negative forward */
  bool about;                  /* its deviation exceeds it */
  double ballast_g;            /* for the whole aeroplane as it stands, or with the part at the rail's end; NAN when none would do */
} AdviceMeans;

/** The state, and the surface it is about (NULL where it is about none). */
AdviceState advice_state_of (const Figures *figures, const AdviceMeans *means, const SurfaceFigures **surface);
/** What can be done, by the part that does it best or by lead alone. Without a target or a balance point only the part is named, and the
 *  rest is false or NAN. */
AdviceMeans advice_means_of (const Figures *figures);
/** How far ahead of its rail's forward end the solution's part would have to be for all to balance at a place, mm; 0 where the rail goes so
 *  far, to within half a millimetre, or no such place is known.
 *  balance_x_mm  aft of the datum */
double advice_rail_short_mm (const Figures *figures, const Solution *solution, double balance_x_mm);
/** Where the advice wants the solution's part: at its place, or at the nearest to it that
 *  its rail has in the band, or has at all; mm aft of the datum, NAN without a place. */
double advice_place_x_mm (const Solution *solution);
