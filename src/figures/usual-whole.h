#pragma once
#include "figures/figures.h"
#include "figures/usual-fit.h"

/** The usual fit with what it balances against: the airframe, and the battery where the advice wants it. Pure functions. */

/** The aeroplane with the usual lines (usual_lines_laid) for each surface and body that weighs nothing yet.
 *  returns  one reference, the caller's; NULL where nothing can be laid down, or the bare airframe is on the scale already */
Aeroplane *usual_airframe (const Aeroplane *aeroplane);

/** With the solution's part where the advice wants it (advice_place_x_mm), what is grouped with it too.
 *  returns  one reference, the caller's; NULL where its place is not known */
Aeroplane *part_at_advice (const Figures *figures, const Solution *solution);

/** The usual airframe beneath parts that are there already, and the battery where the advice then wants it, as far as its rail goes.
 *  returns  one reference, the caller's; NULL where usual_airframe gives none */
Aeroplane *usual_airframe_beneath (const Aeroplane *aeroplane);

/** The usual fit, upon the usual airframe first where `airframe` says so and one can be laid down. Where anything but parts weighs something
 *  the battery then stands where the advice wants it, as far as its rail goes.
 *  returns  one reference, the caller's */
Aeroplane *usual_fit_whole (const Aeroplane *aeroplane, const Catalogue *catalogue, UsualFit choice, bool airframe);
