#include "figures/reckoning.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "aero/flight.h"
#include "figures/contribution.h"
#include "figures/names.h"

static char *
loading_text (Units units, const FlightFigures *flight)
{
  return reckoning_deviating (units_loading (units, flight->wing_loading_g_dm2), units_loading (units, flight->wing_loading_sigma_g_dm2),
                              units_loading (units, 0), units_loading (units, flight->wing_loading_g_dm2));
}

static char *
speed_text (Units units, const FlightFigures *flight)
{
  return reckoning_deviating (units_speed (units, flight->stall_speed_m_s), units_speed (units, flight->stall_speed_sigma_m_s),
                              units_speed (units, 0), units_speed (units, flight->stall_speed_m_s));
}

/* What goes with the mass alone. */
static void
owe_to_mass (Reckoning *self)
{
  const Contributions owed = reckoning_mass_owed (self->figures);

  if (owed.count)
    reckoning_owes (self, &owed, NULL);
}

/* Mass and greatest lift, in parts of each: both under the same root. */
static void
owe_to_mass_and_lift (Reckoning *self)
{
  const Figures *figures = self->figures;
  const Contributions mass = reckoning_mass_owed (figures);
  Contributions owed = contributions_scaled (&mass, 1 / figures->mass.total_g);

  contribution_add (&owed, CONTRIBUTION_GREATEST_LIFT, NULL, figures->flight.lift_max_sigma / figures->flight.lift_max);
  if (isfinite (figures->flight.stall_speed_sigma_m_s) && owed.count)
    reckoning_owes (self, &owed, NULL);
}

bool
reckon_wing_loading (Reckoning *self)
{
  const FlightFigures *flight = &self->figures->flight;

  if (!isfinite (flight->wing_loading_g_dm2))
    return false;
  reckoning_mass (self, _("All-up mass"), self->figures->mass.total_g);
  reckoning_area (self, _("Area of all wings"), self->figures->wing_area_mm2);
  reckoning_gives (self, loading_text (self->units, flight), flight->wing_loading_g_dm2);
  owe_to_mass (self);
  return true;
}

bool
reckon_cubic_loading (Reckoning *self)
{
  const FlightFigures *flight = &self->figures->flight;

  if (!isfinite (flight->cube_loading_kg_m3))
    return false;
  reckoning_mass (self, _("All-up mass"), self->figures->mass.total_g);
  reckoning_area (self, _("Area of all wings"), self->figures->wing_area_mm2);
  reckoning_gives_number (self, flight->cube_loading_kg_m3, flight->cube_loading_sigma_kg_m3, 1, _("kg/m³"));
  owe_to_mass (self);
  return true;
}

/* "0.87 ± 0.12" */
static void
add_greatest_lift (Reckoning *self)
{
  const FlightFigures *flight = &self->figures->flight;
  g_autofree char *lift = units_number (flight->lift_max, 2), *sigma = units_number (flight->lift_max_sigma, 2);

  reckoning_pair (self, _("Greatest lift coefficient C"), g_strdup_printf (_("%s ± %s"), lift, sigma), flight->lift_max, NAN);
}

bool
reckon_stall_speed (Reckoning *self)
{
  const Figures *figures = self->figures;
  const FlightFigures *flight = &figures->flight;

  if (!isfinite (flight->stall_speed_m_s))
    return false;
  reckoning_mass (self, _("All-up mass m"), figures->mass.total_g);
  reckoning_number (self, _("Gravity g"), flight_gravity, 2, _("m/s²"));
  reckoning_number (self, _("Density of air at sea level ρ"), air_at (0).density, 3, _("kg/m³"));
  reckoning_area (self, _("Area of all wings S"), figures->wing_area_mm2);
  add_greatest_lift (self);
  if (!isnan (figures->reference->surface->lift_max_sigma))
    reckoning_from (self, _("Level flight in the standard atmosphere, ISO 2533:1975; the greatest lift's deviation as typed."));
  else if (!isnan (figures->reference->surface->lift_max))
    reckoning_from (self, _("Level flight in the standard atmosphere, ISO 2533:1975; the greatest lift as typed, its deviation common "
                            "practice, no source."));
  reckoning_words (self, _("Section of the wing"), section_class_name (figures->reference->surface->section));
  reckoning_gives (self, speed_text (self->units, flight), flight->stall_speed_m_s);
  owe_to_mass_and_lift (self);
  return true;
}

/* The surface it is about; without one the first wing. */
static const SurfaceFigures *
surface_of (const Reckoning *self)
{
  return self->id ? figures_of_surface (self->figures, self->id) : self->figures->reference;
}

/* In whole hundreds. */
static char *
reynolds_text (const SurfaceFigures *surface)
{
  const double whole = round (surface->reynolds / 100) * 100, sigma = round (surface->reynolds_sigma / 100) * 100;

  return reckoning_deviating (units_number (whole, 0), units_number (sigma, 0), units_number (0, 0), units_number (whole, 0));
}

bool
reckon_reynolds (Reckoning *self)
{
  const SurfaceFigures *surface = surface_of (self);
  const double speed = self->figures->flight.stall_speed_m_s;

  if (!surface || !isfinite (surface->reynolds))
    return false;
  reckoning_about (self, piece_name (&surface->surface->piece));
  reckoning_pair (self, _("Stalling speed V"), units_speed (self->units, speed), speed, NAN);
  reckoning_length (self, _("Mean chord (MAC) c"), surface->planform.mac);
  reckoning_number (self, _("Density of air at sea level ρ"), air_at (0).density, 3, _("kg/m³"));
  reckoning_number (self, _("Viscosity of air μ"), air_at (0).viscosity * 1e6, 2, _("µPa s"));
  reckoning_gives (self, reynolds_text (surface), surface->reynolds);
  owe_to_mass_and_lift (self);
  return true;
}

bool
reckon_greatest_lift (Reckoning *self)
{
  const SurfaceFigures *surface = surface_of (self);
  const FlightFigures *flight = &self->figures->flight;

  if (!surface || surface != self->figures->reference || !isfinite (flight->lift_max))
    return false;
  reckoning_about (self, piece_name (&surface->surface->piece));
  if (!isnan (surface->surface->lift_max))
    {
      reckoning_by (self, _("as typed"));
      reckoning_from (self, isnan (surface->surface->lift_max_sigma) ? _("As typed; its deviation is common practice, no source.")
                                                                     : _("As typed, with its deviation."));
    }
  reckoning_words (self, _("Section"), section_class_name (surface->surface->section));
  reckoning_number (self, _("Reynolds number of its MAC at the stall"), round (flight->reynolds_mac / 100) * 100, 0, "");
  reckoning_gives_number (self, flight->lift_max, flight->lift_max_sigma, 2, "");
  return true;
}
