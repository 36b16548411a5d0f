#include "figures/reckoning.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <stdlib.h>
#include "figures/contribution.h"
#include "figures/names.h"
#include "figures/stability.h"
#include "figures/surface-figures.h"

/* The surface that it is about, whose name goes into the title; NULL unless it has an area. */
static const SurfaceFigures *
surface_of (Reckoning *self)
{
  const SurfaceFigures *surface = self->id ? figures_of_surface (self->figures, self->id) : NULL;

  if (!surface || !isfinite (surface->area_mm2))
    return NULL;
  reckoning_about (self, piece_name (&surface->surface->piece));
  return surface;
}

static bool
is_fin (const SurfaceFigures *surface)
{
  return !surface_is_horizontal (surface->surface);
}

static const char *
counted (const SurfaceFigures *surface)
{
  if (is_fin (surface))
    return _("one side, from its root up");
  return surface->surface->root_open ? _("both halves, without the gap between them") : _("both halves, to the centre line");
}

static void
add_span (Reckoning *self, const SurfaceFigures *surface)
{
  reckoning_length (self, is_fin (surface) ? _("Height b") : _("Span b"), surface->planform.span);
}

bool
reckon_area (Reckoning *self)
{
  const SurfaceFigures *surface = surface_of (self);

  if (!surface)
    return false;
  if (is_fin (surface))
    reckoning_by (self, _("S = ∫ c dy = b × average chord, from its root to its tip"));
  add_span (self, surface);
  reckoning_length (self, _("Average chord, S / b"), surface->planform.mean_chord);
  reckoning_words (self, _("Counted"), counted (surface));
  g_autofree char *area = units_area (self->units, surface->area_mm2);
  reckoning_gives (self, g_steal_pointer (&area), surface->area_mm2);
  return true;
}

bool
reckon_aspect_ratio (Reckoning *self)
{
  const SurfaceFigures *surface = surface_of (self);

  if (!surface)
    return false;
  add_span (self, surface);
  reckoning_area (self, _("Area S"), surface->area_mm2);
  reckoning_gives_number (self, surface->planform.aspect_ratio, NAN, 2, "");
  return true;
}

bool
reckon_mac (Reckoning *self)
{
  const SurfaceFigures *surface = surface_of (self);

  if (!surface)
    return false;
  if (is_fin (surface))
    reckoning_by (self, _("MAC = 1/S ∫ c² dy, c the chord at station y, from its root to its tip"));
  reckoning_area (self, _("Area S"), surface->area_mm2);
  add_span (self, surface);
  reckoning_length (self, _("Mean chord, area over span"), surface->planform.mean_chord);
  reckoning_length (self, _("The MAC's station, likewise"), surface->planform.mac_station);
  reckoning_length (self, _("Its leading edge, aft of datum, likewise"), surface->planform.mac_leading_edge_x);
  reckoning_length (self, _("Its quarter, aft of datum"), surface->quarter_mac_x_mm);
  reckoning_gives_length (self, surface->planform.mac, NAN);
  return true;
}

bool
reckon_section (Reckoning *self)
{
  const SurfaceFigures *surface = surface_of (self);

  if (!surface || is_fin (surface))
    return false;
  if (!isnan (surface->surface->section_slope))
    {
      reckoning_by (self, _("as typed"));
      reckoning_from (self, isnan (surface->surface->section_slope_sigma) ? _("As typed; its deviation is common practice, no source.")
                                                                          : _("As typed, with its deviation."));
    }
  reckoning_words (self, _("Section"), section_class_name (surface->surface->section));
  if (isfinite (surface->reynolds))
    reckoning_number (self, _("Reynolds number of its MAC at the stall"), round (surface->reynolds / 100) * 100, 0, "");
  else
    reckoning_words (self, _("Reynolds number"), _("60 000, since the stalling speed is not known"));
  reckoning_gives_number (self, surface->section_slope, surface->section_slope_sigma, 2, "");
  return true;
}

bool
reckon_lift_slope (Reckoning *self)
{
  const SurfaceFigures *surface = surface_of (self);
  Contributions owed = { .count = 0 };

  if (!surface || !isfinite (surface->lift_slope_per_rad))
    return false;
  reckoning_number (self, _("Thin plate by the vortex lattice, alone, per radian"), surface->lift_slope_per_rad / surface->section_factor,
                    2, "");
  reckoning_number (self, _("κ, what the section leaves of it"), surface->section_factor, 2, "");
  reckoning_number (self, _("Aspect ratio"), surface->planform.aspect_ratio, 2, "");
  reckoning_number (self, _("Section's slope over 2π"), surface->section_slope, 2, "");
  reckoning_gives_number (self, surface->lift_slope_per_rad, surface->lift_slope_sigma, 2, "");
  contribution_add (&owed, CONTRIBUTION_SECTION, &surface->surface->piece, surface->section_factor_sigma / surface->section_factor);
  contribution_add (&owed, CONTRIBUTION_LATTICE, NULL, stability_lattice_lift);
  reckoning_owes (self, &owed, NULL);
  return true;
}

bool
reckon_tail_arm (Reckoning *self)
{
  const SurfaceFigures *surface = surface_of (self);

  if (!surface || !isfinite (surface->tail_arm_mm))
    return false;
  reckoning_length (self, _("Its own quarter MAC, aft of datum"), surface->quarter_mac_x_mm);
  reckoning_length (self, _("Quarter MAC of the wing, aft of datum"), self->figures->reference->quarter_mac_x_mm);
  reckoning_gives_length (self, surface->tail_arm_mm, NAN);
  return true;
}

bool
reckon_tail_volume (Reckoning *self)
{
  const SurfaceFigures *surface = surface_of (self);
  Contributions owed = { .count = 0 };

  if (!surface || !isfinite (surface->volume_coefficient))
    return false;
  const Planform *wing = &self->figures->reference->planform;
  if (is_fin (surface))
    reckoning_by (self, _("area × arm / (area of the wing × span of the wing)"));
  reckoning_area (self, _("Its area"), surface->area_mm2);
  reckoning_length (self, _("Its arm, from quarter MAC to quarter MAC"), surface->tail_arm_mm);
  reckoning_area (self, _("Area of the wing"), wing->area);
  if (is_fin (surface))
    reckoning_length (self, _("Span of the wing"), wing->span);
  else
    reckoning_length (self, _("Mean chord of the wing (MAC)"), wing->mac);
  reckoning_gives_number (self, surface->volume_coefficient, surface->volume_sigma, 3, "");
  contribution_add (&owed, CONTRIBUTION_OUTLINE, &surface->surface->piece, surface_volume_by_its_own);
  contribution_add (&owed, CONTRIBUTION_OUTLINE, &self->figures->reference->surface->piece, surface_volume_by_the_wing);
  reckoning_owes (self, &owed, NULL);
  return true;
}

/* "0.64 dm², 10 % of the surface" */
static char *
control_text (const ControlFigures *control, Units units)
{
  g_autofree char *area = units_area (units, control->area_mm2), *share = units_percent (control->area_share_percent);

  return g_strdup_printf (_("%s, %s of the surface"), area, share);
}

bool
reckon_control_area (Reckoning *self)
{
  const Figures *figures = self->figures;
  const size_t at = self->id ? strtoul (self->id, NULL, 10) : 0;
  const ControlFigures *control = at < figures->control_count ? &figures->controls[at] : NULL;

  if (!control || !isfinite (control->area_mm2))
    return false;
  const Control *drawn = control->control;
  reckoning_about (self, drawn->id ? drawn->id : control_kind_name (drawn->kind));
  if (!surface_is_horizontal (control->surface))
    reckoning_by (self, _("∫ (trailing edge − hinge line) dy, from the inner to the outer station"));
  reckoning_length (self, _("Inner station"), drawn->inner);
  reckoning_length (self, _("Outer station"), drawn->outer);
  reckoning_length (self, _("Hinge line at the inner station, aft of datum"), drawn->hinge_inner_x);
  reckoning_length (self, _("Hinge line at the outer station, aft of datum"), drawn->hinge_outer_x);
  reckoning_area (self, _("Area of the whole surface"), figures_of_surface (figures, control->surface->piece.id)->area_mm2);
  reckoning_gives (self, control_text (control, self->units), control->area_mm2);
  return true;
}
