#include "figures/reckoning.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/budget.h"
#include "figures/contribution.h"
#include "figures/names.h"

bool
reckon_wanted_mass (Reckoning *self)
{
  const Figures *figures = self->figures;
  Budget budget;

  if (!budget_of (figures, &budget))
    return false;
  if (budget.wanted_by == WANTED_ALL_UP)
    reckoning_by (self, _("as typed"));
  reckoning_area (self, _("Area of all wings"), figures->wing_area_mm2);
  reckoning_pair (self, budget.wanted_by == WANTED_USUAL ? _("Usual loading for the span") : _("Wing loading wanted"),
                  units_loading (self->units, budget.loading_g_dm2), budget.loading_g_dm2, NAN);
  reckoning_length (self, _("Span"), figures->reference->planform.span);
  reckoning_gives_mass (self, budget.wanted_g, NAN);
  return true;
}

/* What belongs to the airframe, or all the rest, each with its mass. */
static Contributions
add_loads (Reckoning *self, bool airframe)
{
  const Figures *figures = self->figures;
  Contributions owed = { .count = 0 };

  for (size_t i = 0; i < figures->load_count; i++)
    {
      const LoadFigures *load = &figures->loads[i];

      if (budget_counts_as_airframe (load->piece, figures->airframe.weighed) != airframe)
        continue;
      reckoning_mass (self, piece_name (load->piece), load->mass_g);
      contribution_add (&owed, CONTRIBUTION_MASS, load->piece, load->mass_sigma_g);
    }
  return owed;
}

/* Whose the deviation of the airframe is. */
static void
owe_to_airframe (Reckoning *self, const Budget *budget)
{
  Contributions owed = { .count = 0 };

  for (size_t i = 0; i < self->figures->load_count; i++)
    if (budget_counts_as_airframe (self->figures->loads[i].piece, false))
      contribution_add (&owed, CONTRIBUTION_MASS, self->figures->loads[i].piece, self->figures->loads[i].mass_sigma_g);
  if (budget->airframe_by == AIRFRAME_WEIGHED)
    reckoning_owes_words (self, _("It is the scale's: as typed, or half a gram."));
  else if (budget->airframe_by == AIRFRAME_USUAL)
    reckoning_owes_words (self, _("It is a quarter of the airframe's usual share: give the structures a mass, and it shrinks."));
  else if (owed.count)
    reckoning_owes (self, &owed, NULL);
}

bool
reckon_airframe (Reckoning *self)
{
  Budget budget;

  if (!budget_of (self->figures, &budget))
    return false;
  if (budget.airframe_by == AIRFRAME_WEIGHED)
    {
      reckoning_by (self, _("as weighed"));
      reckoning_mass (self, _("On the scale"), budget.airframe_g);
      reckoning_mass (self, _("The same by its structures and parts"), budget.reckoned_g);
    }
  else if (budget.airframe_by == AIRFRAME_RECKONED)
    add_loads (self, true);
  else
    {
      reckoning_by (self, _("usual share × wanted all-up mass"));
      reckoning_mass (self, _("Wanted all-up mass"), budget.wanted_g);
      reckoning_number (self, _("Usual share"), BUDGET_AIRFRAME_SHARE, 2, "");
    }
  reckoning_gives_mass (self, budget.airframe_g, budget.airframe_sigma_g);
  owe_to_airframe (self, &budget);
  return true;
}

bool
reckon_left_for_gear (Reckoning *self)
{
  Budget budget;

  if (!budget_of (self->figures, &budget))
    return false;
  reckoning_mass (self, _("Wanted all-up mass"), budget.wanted_g);
  reckoning_mass (self, _("Bare airframe"), budget.airframe_g);
  reckoning_gives_mass (self, budget.left_g, budget.left_sigma_g);
  owe_to_airframe (self, &budget);
  return true;
}

bool
reckon_gear (Reckoning *self)
{
  Contributions owed;
  Budget budget;

  if (!budget_of (self->figures, &budget) || !(budget.gear_g > 0))
    return false;
  owed = add_loads (self, false);
  reckoning_gives_mass (self, budget.gear_g, budget.gear_sigma_g);
  if (owed.count)
    reckoning_owes (self, &owed, NULL);
  return true;
}
