#include "figures/reckoning.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/contribution-sentence.h"

/* A row a share, and what is too small for the list together in one. */
static bool
reckon_deviation (Reckoning *self, const Contributions *owed, double sigma)
{
  double variance = owed->variance;

  if (!(sigma > 0))
    return false;
  for (size_t i = 0; i < owed->count; i++)
    {
      g_autofree char *label = contribution_text (&owed->of[i], self->figures->aeroplane);

      reckoning_fine_length (self, label, owed->of[i].sigma);
      variance -= owed->of[i].sigma * owed->of[i].sigma;
    }
  if (variance > 1e-9 * owed->variance)
    reckoning_fine_length (self, _("all smaller ones together"), sqrt (variance));
  reckoning_gives_length (self, sigma, NAN);
  reckoning_owes (self, owed, NULL);
  return true;
}

bool
reckon_balance_deviation (Reckoning *self)
{
  return reckon_deviation (self, &self->figures->mass.owed, self->figures->mass.x_sigma_mm);
}

bool
reckon_neutral_deviation (Reckoning *self)
{
  return reckon_deviation (self, &self->figures->neutral_point.owed, self->figures->neutral_point.sigma_mm);
}
