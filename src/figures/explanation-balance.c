#include "figures/reckoning.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <stdlib.h>
#include "figures/advice-state.h"
#include "figures/ballast-told.h"
#include "figures/contribution.h"
#include "figures/names.h"

static const char *
neutral_point_label (const Figures *figures)
{
  return figures->neutral_point.wing_alone ? _("Neutral point of the wing alone, aft of datum") : _("Neutral point, aft of datum");
}

/* "9 % ± 4": never less than 1, since no aeroplane is known better. */
static char *
margin_text (const BalanceFigures *balance)
{
  g_autofree char *margin = units_percent (balance->static_margin_percent);

  if (!isfinite (balance->static_margin_sigma_percent))
    return g_steal_pointer (&margin);
  return g_strdup_printf (_("%s ± %.0f"), margin, fmax (1, round (balance->static_margin_sigma_percent)));
}

bool
reckon_static_margin (Reckoning *self)
{
  const Figures *figures = self->figures;
  const BalanceFigures *balance = &figures->balance;

  if (!isfinite (balance->static_margin_percent))
    return false;
  reckoning_length (self, neutral_point_label (figures), figures->neutral_point.x_mm);
  reckoning_length (self, _("Balance point, aft of datum"), figures->mass.x_mm);
  reckoning_length (self, _("Mean chord of the wing (MAC)"), figures->reference->planform.mac);
  reckoning_gives (self, margin_text (balance), balance->static_margin_percent);
  if (isfinite (balance->static_margin_sigma_percent))
    reckoning_owes (self, &figures->neutral_point.owed, &figures->mass.owed);
  return true;
}

bool
reckon_aim (Reckoning *self)
{
  const Figures *figures = self->figures;
  const BalanceFigures *balance = &figures->balance;
  const Target target = aeroplane_traits (figures->aeroplane).target;

  if (!isfinite (balance->target_x_mm))
    return false;
  reckoning_length (self, _("Neutral point, aft of datum"), figures->neutral_point.x_mm);
  reckoning_percent (self, _("Wanted margin, the aim"), target.aim);
  reckoning_length (self, _("Mean chord of the wing (MAC)"), figures->reference->planform.mac);
  reckoning_percent (self, _("Most margin, for the forward limit"), target.to);
  reckoning_length (self, _("Forward limit, aft of datum"), balance->forward_limit_x_mm);
  reckoning_percent (self, _("Least margin, for the aft limit"), target.from);
  reckoning_length (self, _("Aft limit, aft of datum"), balance->aft_limit_x_mm);
  reckoning_gives_length (self, balance->target_x_mm, figures->neutral_point.sigma_mm);
  reckoning_owes (self, &figures->neutral_point.owed, NULL);
  return true;
}

bool
reckon_mark (Reckoning *self)
{
  const BalanceFigures *balance = &self->figures->balance;
  const size_t at = self->id ? strtoul (self->id, NULL, 10) : 0;
  const MarkFigures *mark = at < balance->mark_count ? &balance->marks[at] : NULL;

  if (!mark || !isfinite (mark->target_mm))
    return false;
  g_autofree char *station = units_length_figure (self->units, mark->station_mm);
  reckoning_about (self, station);
  reckoning_length (self, _("Aim, aft of datum"), balance->target_x_mm);
  reckoning_length (self, _("Leading edge at the station, aft of datum"), mark->leading_edge_x_mm);
  reckoning_length (self, _("Station, from the centre line"), mark->station_mm);
  reckoning_length (self, _("Chord there"), mark->chord_mm);
  reckoning_length (self, _("Forward limit, on the chord there"), mark->forward_mm);
  reckoning_length (self, _("Aft limit, on the chord there"), mark->aft_mm);
  reckoning_gives_length (self, mark->target_mm, mark->sigma_mm);
  reckoning_owes (self, &self->figures->neutral_point.owed, NULL);
  return true;
}

/* The place that is advised: the aim, or where poor knowledge asks for more margin. */
static void
add_aim (Reckoning *self)
{
  const BalanceFigures *balance = &self->figures->balance;

  reckoning_length (self, balance->advised_x_mm < balance->target_x_mm ? _("Aim, one deviation clear of the aft limit") : _("Aim, aft of datum"),
                    balance->advised_x_mm);
}

static void
add_rail (Reckoning *self, const Solution *solution)
{
  const Part *part = solution->part;

  reckoning_length (self, _("Rail, forward end"), part->rail_from);
  reckoning_length (self, _("Rail, aft end"), part->rail_to);
  reckoning_length_known (self, _("On the rail in the band, from"), solution->band_from_mm, solution->band_from_sigma_mm);
  reckoning_length_known (self, _("On the rail in the band, to"), solution->band_to_mm, solution->band_to_sigma_mm);
}

bool
reckon_solution (Reckoning *self)
{
  const Figures *figures = self->figures;
  const Solution *solution = self->id ? figures_solution (figures, self->id) : NULL;

  if (!solution || !isfinite (solution->x_mm))
    return false;
  const Part *part = solution->part;
  reckoning_about (self, piece_name (&part->piece));
  if (part->aboard)
    reckoning_length (self, _("Place now, aft of datum"), part->x);
  else
    reckoning_by (self, _("aim + (aim − balance point) × mass aboard / mass of the part, which is left out now"));
  add_aim (self);
  reckoning_length (self, _("Balance point, aft of datum"), figures->mass.x_mm);
  reckoning_mass (self, part->aboard ? _("All-up mass") : _("Mass aboard"), figures->mass.total_g);
  reckoning_mass (self, _("Mass of the part"), part->mass);
  add_rail (self, solution);
  reckoning_gives_length (self, solution->x_mm, solution->x_sigma_mm);
  if (isfinite (solution->x_sigma_mm))
    reckoning_owes (self, &figures->neutral_point.owed, &figures->mass.owed);
  return true;
}

/* With nothing to slide: what the advice says. */
static bool
reckon_ballast_alone (Reckoning *self)
{
  const Figures *figures = self->figures;
  const AdviceMeans means = advice_means_of (figures);

  if (means.solution || !(means.ballast_g > 0))
    return false;
  const BallastTold told = ballast_told_of (figures, NULL);
  reckoning_about (self, _("the whole aeroplane"));
  reckoning_by (self, _("all-up mass × (balance point − aim) / (aim − place of the ballast)"));
  reckoning_mass (self, _("All-up mass"), figures->mass.total_g);
  reckoning_length (self, _("Balance point, aft of datum"), figures->mass.x_mm);
  add_aim (self);
  reckoning_length (self, _("Place of the ballast, aft of datum"), told.x_mm);
  reckoning_gives_mass (self, told.mass_g, told.sigma_g);
  reckoning_owes (self, &told.owed, NULL);
  return true;
}

bool
reckon_ballast (Reckoning *self)
{
  const Figures *figures = self->figures;
  const Solution *solution = self->id ? figures_solution (figures, self->id) : NULL;

  if (!self->id)
    return reckon_ballast_alone (self);
  if (!solution || !(solution->ballast_g > 0))
    return false;
  const Part *part = solution->part;
  const BallastTold told = ballast_told_of (figures, solution);
  reckoning_about (self, piece_name (&part->piece));
  if (!part->aboard)
    reckoning_by (self, _("(mass aboard × (balance point − aim) + mass of the part × (end of the rail − aim)) / (aim − place of the "
                          "ballast)"));
  reckoning_mass (self, part->aboard ? _("All-up mass") : _("Mass aboard"), figures->mass.total_g);
  reckoning_length (self, _("Balance point, aft of datum"), figures->mass.x_mm);
  add_aim (self);
  reckoning_mass (self, _("Mass of the part"), part->mass);
  if (part->aboard)
    reckoning_length (self, _("Place of the part, aft of datum"), part->x);
  reckoning_length (self, _("Nearer end of the rail"), solution->x_mm < part->rail_from ? part->rail_from : part->rail_to);
  reckoning_length (self, _("Place of the ballast, aft of datum"), told.x_mm);
  reckoning_gives_mass (self, told.mass_g, told.sigma_g);
  reckoning_owes (self, &told.owed, NULL);
  return true;
}
