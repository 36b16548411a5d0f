#include "figures/budget.h"

#include <math.h>
#include "figures/loads.h"
#include "figures/usual-fit.h"

/* What is not in hand yet was not weighed with it. */
bool
budget_counts_as_airframe (const Piece *piece, bool weighed)
{
  return load_is_of_airframe (piece) && !(weighed && piece->kind == PIECE_PART && ((const Part *) piece)->to_come);
}

static double
wanted_mass (const Figures *figures, Budget *self)
{
  const Target target = aeroplane_traits (figures->aeroplane).target;
  const double area_dm2 = figures->wing_area_mm2 / 1e4;

  self->wanted_by = target.all_up > 0 ? WANTED_ALL_UP : target.loading > 0 ? WANTED_LOADING : WANTED_USUAL;
  if (self->wanted_by == WANTED_ALL_UP)
    return target.all_up;
  return area_dm2 * (self->wanted_by == WANTED_LOADING ? target.loading : usual_loading (figures->reference->planform.span));
}

/* What the document holds: the airframe's share and the rest, with their variances. */
static bool
add_loads (const Figures *figures, Budget *self, double *airframe_variance, double *gear_variance)
{
  bool built = false;

  for (size_t i = 0; i < figures->load_count; i++)
    {
      const LoadFigures *load = &figures->loads[i];
      const bool airframe = budget_counts_as_airframe (load->piece, figures->airframe.weighed);

      *(airframe ? &self->reckoned_g : &self->gear_g) += load->mass_g;
      *(airframe ? airframe_variance : gear_variance) += load->mass_sigma_g * load->mass_sigma_g;
      built |= load->piece->kind == PIECE_STRUCTURE && load->mass_g > 0;
    }
  return built;
}

static void
set_airframe (Budget *self, const AeroplaneTraits *traits, bool built, double reckoned_sigma)
{
  self->airframe_by = traits->airframe > 0 ? AIRFRAME_WEIGHED : built ? AIRFRAME_RECKONED : AIRFRAME_USUAL;
  if (self->airframe_by == AIRFRAME_WEIGHED)
    {
      self->airframe_g = traits->airframe;
      self->airframe_sigma_g = traits->airframe_sigma > 0 ? traits->airframe_sigma : SCALE_SIGMA_G;
    }
  else if (self->airframe_by == AIRFRAME_RECKONED)
    {
      self->airframe_g = self->reckoned_g;
      self->airframe_sigma_g = reckoned_sigma;
    }
  else
    {
      self->airframe_g = BUDGET_AIRFRAME_SHARE * self->wanted_g;
      self->airframe_sigma_g = BUDGET_AIRFRAME_KNOWN_TO * self->airframe_g;
    }
}

bool
budget_of (const Figures *figures, Budget *budget)
{
  const AeroplaneTraits traits = aeroplane_traits (figures->aeroplane);
  double airframe_variance = 0, gear_variance = 0;
  Budget made = { .wanted_g = 0 };

  if (!figures->reference || !(figures->wing_area_mm2 > 0))
    return false;
  made.wanted_g = wanted_mass (figures, &made);
  made.loading_g_dm2 = made.wanted_g / (figures->wing_area_mm2 / 1e4);
  const bool built = add_loads (figures, &made, &airframe_variance, &gear_variance);
  if (figures->airframe.weighed)
    made.reckoned_g = figures->airframe.reckoned_g;
  made.airframe_x_mm = traits.airframe > 0 && traits.airframe_balanced ? traits.airframe_x : figures->airframe.reckoned_x_mm;
  made.reckoned_x_mm = figures->airframe.reckoned_x_mm;
  set_airframe (&made, &traits, built, sqrt (airframe_variance));
  made.left_g = made.wanted_g - made.airframe_g;
  made.left_sigma_g = made.airframe_sigma_g;
  made.gear_sigma_g = sqrt (gear_variance);
  made.over_g = made.gear_g - made.left_g;
  *budget = made;
  return isfinite (made.over_g);
}
