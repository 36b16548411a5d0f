#pragma once
#include <math.h>
#include "document/piece.h"

/** What is usual where a body does not say, mm: sides of sheet, formers of light ply. Common practice, no source. */
#define BODY_SKIN_MM 1.5
#define BODY_FORMER_MM 2.0

/** How thick a body's sides are, mm. */
static inline double
body_skin (const Body *body)
{
  return isnan (body->skin) ? BODY_SKIN_MM : body->skin;
}

/** How thick its formers are, mm: half of that lies on either side of a former's place. */
static inline double
body_former_thickness (const Body *body)
{
  return isnan (body->former_thickness) ? BODY_FORMER_MM : body->former_thickness;
}
