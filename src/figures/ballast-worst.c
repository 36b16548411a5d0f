#include "figures/ballast-worst.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/advice-state.h"
#include "figures/names.h"

BallastWorst
ballast_worst_of (const Figures *figures)
{
  const BalanceFigures *balance = &figures->balance;
  BallastWorst self = { .further_mm = NAN, .told = { .mass_g = NAN, .x_mm = NAN, .sigma_g = NAN } };

  if (!figures->reference || isnan (balance->advised_x_mm) || isnan (figures->mass.x_mm))
    return self;
  const Solution *solution = advice_means_of (figures).solution;
  self.further_mm = 2 * balance->static_margin_sigma_percent / 100 * figures->reference->planform.mac;
  self.slider = solution ? solution->part : NULL;
  self.told = ballast_told_for (figures, self.slider, self.slider ? self.slider->rail_from : NAN, self.further_mm);
  if (self.told.aft)            /* the nose is heavy even so */
    self.told = (BallastTold) { .mass_g = 0, .x_mm = NAN, .sigma_g = NAN };
  return self;
}

char *
ballast_worst_text (const BallastWorst *self, Units units)
{
  const char *slider = self->slider ? piece_name (&self->slider->piece) : NULL;
  g_autofree char *further = units_length (units, self->further_mm), *mass = NULL, *place = NULL;

  if (isnan (self->further_mm) || isnan (self->told.mass_g))
    return NULL;
  if (!(self->told.mass_g > 0))
    return slider ? g_strdup_printf (_("In the worst case, %s further aft than reckoned (39 times out of 40 it is less), “%s” foremost on its "
                                       "rail makes up for it: no nose weight is needed."), further, slider)
                  : g_strdup_printf (_("In the worst case, %s further aft than reckoned (39 times out of 40 it is less), no nose weight is "
                                       "needed."), further);
  mass = units_mass (units, self->told.mass_g);
  place = ballast_told_phrase (&self->told);
  /* TRANSLATORS: a length, a part, a mass, where it goes ("at the fore end of “nose”") */
  return slider ? g_strdup_printf (_("In the worst case, %s further aft than reckoned (39 times out of 40 it is less), with “%s” foremost on "
                                     "its rail %s are needed %s."), further, slider, mass, place)
                : g_strdup_printf (_("In the worst case, %s further aft than reckoned (39 times out of 40 it is less), %s are needed %s."),
                                   further, mass, place);
}
