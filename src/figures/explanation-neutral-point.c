#include "figures/reckoning.h"
#include "document/part-class.h"
#include "figures/stability.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "aero/lattice.h"
#include "aero/propeller.h"
#include "figures/names.h"

static bool
lifts (const SurfaceFigures *surface)
{
  return isfinite (surface->company_lift_per_rad);
}

bool
reckon_neutral_point (Reckoning *self)
{
  const NeutralPointFigures *point = &self->figures->neutral_point;

  if (!isfinite (point->x_mm))
    return false;
  reckoning_length (self, _("By the vortex lattice, without body"), point->lattice_x_mm);
  reckoning_length (self, _("Shift by the body, negative forward"), point->body_shift_mm);
  reckoning_length (self, _("For comparison, by handbook formulas"), point->handbook_x_mm);
  if (point->propeller_to_mm != 0)
    reckoning_length (self, _("Propeller at full power, in the deviation only"), point->propeller_to_mm);
  reckoning_gives_length (self, point->x_mm, point->sigma_mm);
  reckoning_owes (self, &point->owed, NULL);
  return true;
}

/* "4.12 at 141 mm" */
static void
add_lift (Reckoning *self, const SurfaceFigures *surface)
{
  g_autofree char *label = g_strdup_printf (_("Lift κL of “%s”, and where"), piece_name (&surface->surface->piece));
  g_autofree char *lift = units_number (surface->company_lift_per_rad, 2);
  g_autofree char *place = units_length (self->units, surface->company_lift_x_mm);

  /* TRANSLATORS: a lift slope and where it acts */
  reckoning_pair (self, label, g_strdup_printf (_("%s at %s"), lift, place), surface->company_lift_per_rad, surface->company_lift_x_mm);
}

static void
add_panels (Reckoning *self)
{
  const LatticeOptions options = lattice_default_options ();
  g_autofree char *panels = g_strdup_printf ("%d × %d", options.spanwise, options.chordwise);

  reckoning_words (self, _("Panels on each half of the first wing"), panels);
}

bool
reckon_lattice (Reckoning *self)
{
  const Figures *figures = self->figures;

  if (!isfinite (figures->neutral_point.lattice_x_mm))
    return false;
  for (size_t i = 0; i < figures->surface_count; i++)
    if (lifts (&figures->surfaces[i]))
      add_lift (self, &figures->surfaces[i]);
  for (size_t i = 0; i < figures->surface_count; i++)
    if (lifts (&figures->surfaces[i]))
      {
        g_autofree char *label = g_strdup_printf (_("κ of “%s”, by its section"), piece_name (&figures->surfaces[i].surface->piece));

        reckoning_number (self, label, figures->surfaces[i].section_factor, 2, "");
      }
  add_panels (self);
  reckoning_gives_length (self, figures->neutral_point.lattice_x_mm, figures->neutral_point.lattice_sigma_mm);
  reckoning_owes (self, &figures->neutral_point.lattice_owed, NULL);
  return true;
}

bool
reckon_section_shift (Reckoning *self)
{
  const NeutralPointFigures *point = &self->figures->neutral_point;

  if (!isfinite (point->section_shift_mm) || point->section_shift_mm == 0)
    return false;
  reckoning_length (self, _("Neutral point with the sections"), point->lattice_x_mm);
  reckoning_length (self, _("Neutral point of thin plates"), point->lattice_x_mm - point->section_shift_mm);
  reckoning_gives_length (self, point->section_shift_mm, NAN);
  return true;
}

/* In units that are read at this size. */
static void
add_volume (Reckoning *self, const char *label, double mm3)
{
  const bool inch = self->units.length == LENGTH_INCH;
  g_autofree char *figure = units_number (mm3 / (inch ? 25.4 * 25.4 * 25.4 : 1e3), 1);

  reckoning_pair (self, label, g_strdup_printf (inch ? _("%s in³") : _("%s cm³"), figure), mm3, NAN);
}

bool
reckon_body_shift (Reckoning *self)
{
  const Figures *figures = self->figures;
  const NeutralPointFigures *point = &figures->neutral_point;

  if (!isfinite (point->body_shift_mm) || point->body_shift_mm == 0)
    return false;
  add_volume (self, _("Moment of the body M′ at unit angle and pressure"), point->body_moment_mm3);
  reckoning_area (self, _("Area of the wing S"), figures->reference->area_mm2);
  reckoning_number (self, _("Lift slope of the aeroplane a, per radian"), figures->motion.lift_slope_per_rad, 2, "");
  const Contributions owed = stability_body_owed (point);
  reckoning_gives_length (self, point->body_shift_mm, point->body_shift_sigma_mm);
  reckoning_owes (self, &owed, NULL);
  return true;
}

static void
add_handbook_surface (Reckoning *self, const SurfaceFigures *surface)
{
  const char *name = piece_name (&surface->surface->piece);
  g_autofree char *aspect = g_strdup_printf (_("Aspect ratio A of “%s”"), name), *place = g_strdup_printf (_("Quarter MAC of “%s”"), name);
  g_autofree char *area = g_strdup_printf (_("Area S of “%s”"), name), *ratio = g_strdup_printf (_("Pressure ratio q at “%s”"), name);

  reckoning_number (self, aspect, surface->planform.aspect_ratio, 2, "");
  reckoning_area (self, area, surface->area_mm2);
  reckoning_length (self, place, surface->quarter_mac_x_mm);
  reckoning_number (self, ratio, surface_pressure_ratio (surface->surface), 2, "");
}

bool
reckon_handbook (Reckoning *self)
{
  const Figures *figures = self->figures;
  const NeutralPointFigures *point = &figures->neutral_point;

  if (!isfinite (point->handbook_x_mm))
    return false;
  for (size_t i = 0; i < figures->surface_count; i++)
    if (lifts (&figures->surfaces[i]))
      add_handbook_surface (self, &figures->surfaces[i]);
  reckoning_length (self, _("Shift by the sections, from the lattice"), point->section_shift_mm);
  reckoning_length (self, _("Shift by the body"), point->body_shift_mm);
  const Contributions owed = stability_handbook_owed (point);
  reckoning_gives_length (self, point->handbook_x_mm, point->handbook_sigma_mm);
  reckoning_owes (self, &owed, NULL);
  return true;
}

static const SurfaceFigures *
first_tailplane (const Figures *figures)
{
  for (size_t i = 0; i < figures->surface_count; i++)
    if (figures->surfaces[i].surface->role == ROLE_TAILPLANE && lifts (&figures->surfaces[i]))
      return &figures->surfaces[i];
  return NULL;
}

bool
reckon_downwash (Reckoning *self)
{
  const Figures *figures = self->figures;
  const SurfaceFigures *tail = first_tailplane (figures);

  if (!tail || !isfinite (figures->neutral_point.downwash_gradient))
    return false;
  reckoning_number (self, _("Lift of the tailplane L, on the wing's area"), tail->company_lift_per_rad, 3, "");
  reckoning_number (self, _("Its lift alone L₀, on its own area"), tail->lift_slope_per_rad, 2, "");
  reckoning_area (self, _("Area of the wing S"), figures->reference->area_mm2);
  reckoning_area (self, _("Area of the tailplane Sₜ"), tail->area_mm2);
  reckoning_number (self, _("Pressure ratio q at the tailplane"), surface_pressure_ratio (tail->surface), 2, "");
  reckoning_gives_number (self, figures->neutral_point.downwash_gradient, figures->neutral_point.downwash_gradient_sigma, 2, "");
  reckoning_owes (self, &figures->neutral_point.downwash_owed, NULL);
  return true;
}

static void
add_propellers (Reckoning *self)
{
  const Aeroplane *aeroplane = self->figures->aeroplane;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (aeroplane, i);
      g_autofree char *diameter = g_strdup_printf (_("Diameter of “%s”"), piece_name (&part->piece));
      g_autofree char *place = g_strdup_printf (_("Place of “%s”"), piece_name (&part->piece));

      if (!part->aboard || !part_is_a (part, "propeller") || !(part->width > 0))
        continue;
      reckoning_length (self, diameter, part->width);
      reckoning_area (self, _("Its force across the shaft, without power"), propeller_cross_force (part->width).least);
      reckoning_area (self, _("Its force across the shaft, at full power"), propeller_cross_force (part->width).greatest);
      reckoning_length (self, place, part->x);
      reckoning_number (self, _("Cross flow there over that of free flow"),
                        stability_propeller_flow (&self->figures->neutral_point, part->x), 2, "");
    }
}

bool
reckon_propeller (Reckoning *self)
{
  const Figures *figures = self->figures;
  const NeutralPointFigures *point = &figures->neutral_point;
  g_autofree char *from = units_length_figure (self->units, point->propeller_from_mm);
  g_autofree char *to = units_length (self->units, point->propeller_to_mm);

  if (!isfinite (point->propeller_to_mm) || point->propeller_to_mm == 0)
    return false;
  add_propellers (self);
  reckoning_length (self, _("Neutral point, aft of datum"), point->x_mm);
  reckoning_area (self, _("Area of the wing S"), figures->reference->area_mm2);
  reckoning_number (self, _("Lift slope of the aeroplane a, per radian"), figures->motion.lift_slope_per_rad, 2, "");
  reckoning_gives (self, g_strdup_printf (_("%s to %s"), from, to), point->propeller_to_mm);
  return true;
}
