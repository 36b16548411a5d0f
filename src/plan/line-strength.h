#pragma once
#include "plan/corridor.h"

/* Private to the plan room. */

/** How much each place of a corridor looks like the middle of a line that runs along it: the second derivative of a Gaussian across,
 *  scale-normalised (σ² times), which is strongest where σ is half the line's width and nothing for a line that crosses straight.
 *  sigma      px
 *  strength   columns × rows, 0 and more, in the ink's unit (0 to 255)
 *  returns    CORE_OK or CORE_NO_MEMORY
 *  source     Steger, An Unbiased Detector of Curvilinear Structures, IEEE PAMI 20 (2), 1998; Lindeberg, Edge Detection and Ridge
 *             Detection with Automatic Scale Selection, IJCV 30 (2), 1998 (titles from memory) */
CoreStatus line_strength (const Corridor *corridor, double sigma, float *strength);

/** The sigma, in pixels, at which lines within `reach` pixels of the spine stand out most: half their width. NAN without memory. */
double line_sigma (const Corridor *corridor, double reach);

/** The strength that most columns reach within `reach` pixels of the spine (their median), in the ink's unit; NAN without memory. */
double line_usual_strength (const Corridor *corridor, const float *strength, double reach);

/** Brings strengths to 1 for a line as usual, there: divided by the median of what the columns about each stretch reach within `reach` px
 *  of the spine, so that a faded part counts as much as a fresh one (down to three tenths of the whole corridor's usual strength).
 *  stretch  columns
 *  returns  CORE_OK, CORE_NO_MEMORY
 *  reach    pixels; a strength of 1 has no unit */
CoreStatus line_strength_even (const Corridor *corridor, double reach, size_t stretch, float *strength);
