#pragma once
#include <stdbool.h>
#include "balance/centre.h"

/** What a scale says of several masses together, and where they balance: SI, one standard deviation each, > 0. */
typedef struct { double mass, mass_sigma, x, x_sigma; } Weighed;         /* x NAN: nobody has balanced them */

/** Corrects the masses that were on the scale: each gives in by as much as it is uncertain, and so do their places along x, so that all
 *  together weigh and balance as they were found to. What is known well hardly moves.
 *  on_scale  for each item whether it was
 *  method    least squares weighted by the deviations: with P the items' variances, H the change of mass and moment with each, R the
 *            scale's variances, the correction is P Hᵀ (H P Hᵀ + R)⁻¹ of what is found less what was reckoned (Gauss; the update of a
 *            linear filter). Where a mass would become negative all masses go in proportion
 *  deviations  the items' are lowered alike, so that those of mass and moment of all together are what is left of them
 *  errors    CORE_OUT_OF_RANGE when nothing that weighs anything was on the scale, or the scale shows nothing; CORE_NOT_FINITE. The items
 *            are untouched then */
CoreStatus weighed_correct (MassItem items[], const bool on_scale[], size_t count, const Weighed *weighed);
