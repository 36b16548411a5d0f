#include "figures/reckoning.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/names.h"

bool
reckon_aeroplane_lift (Reckoning *self)
{
  const Figures *figures = self->figures;

  if (!isfinite (figures->motion.lift_slope_per_rad))
    return false;
  for (size_t i = 0; i < figures->surface_count; i++)
    {
      const SurfaceFigures *surface = &figures->surfaces[i];
      g_autofree char *label = g_strdup_printf (_("Lift κL of “%s”"), piece_name (&surface->surface->piece));

      reckoning_number (self, label, surface->company_lift_per_rad, 2, "");
    }
  reckoning_gives_number (self, figures->motion.lift_slope_per_rad, figures->motion.lift_slope_sigma, 2, "");
  reckoning_owes (self, &figures->neutral_point.lift_owed, NULL);
  return true;
}

static void
add_wing (Reckoning *self)
{
  const SurfaceFigures *wing = self->figures->reference;

  reckoning_length (self, _("Span of the wing b"), wing->planform.span);
  reckoning_area (self, _("Area of the wing S"), wing->area_mm2);
}

static void
add_factors (Reckoning *self)
{
  const Figures *figures = self->figures;

  for (size_t i = 0; i < figures->surface_count; i++)
    {
      g_autofree char *label = g_strdup_printf (_("κ of “%s”, by its section"), piece_name (&figures->surfaces[i].surface->piece));

      reckoning_number (self, label, figures->surfaces[i].section_factor, 2, "");
    }
}

bool
reckon_roll_damping (Reckoning *self)
{
  const MotionFigures *motion = &self->figures->motion;

  if (!isfinite (motion->roll_damping))
    return false;
  add_wing (self);
  add_factors (self);
  reckoning_gives_number (self, motion->roll_damping, motion->roll_damping_sigma, 2, "");
  reckoning_owes (self, &motion->roll_owed, NULL);
  return true;
}

bool
reckon_pitch_damping (Reckoning *self)
{
  const Figures *figures = self->figures;

  if (!isfinite (figures->motion.pitch_damping))
    return false;
  if (isfinite (figures->mass.x_mm))
    reckoning_length (self, _("Turning about the balance point, aft of datum"), figures->mass.x_mm);
  else
    reckoning_length (self, _("Turning about the neutral point, aft of datum"), figures->neutral_point.x_mm);
  reckoning_length (self, _("Mean chord of the wing (MAC) c"), figures->reference->planform.mac);
  reckoning_area (self, _("Area of the wing S"), figures->reference->area_mm2);
  add_factors (self);
  reckoning_gives_number (self, figures->motion.pitch_damping, figures->motion.pitch_damping_sigma, 1, "");
  reckoning_owes (self, &figures->motion.pitch_owed, NULL);
  return true;
}

bool
reckon_span_efficiency (Reckoning *self)
{
  const MotionFigures *motion = &self->figures->motion;

  if (!isfinite (motion->span_efficiency))
    return false;
  add_wing (self);
  reckoning_gives_number (self, motion->span_efficiency, motion->span_efficiency_sigma, 2, "");
  reckoning_owes (self, &motion->span_owed, NULL);
  return true;
}

bool
reckon_first_stall (Reckoning *self)
{
  const MotionFigures *motion = &self->figures->motion;

  if (!isfinite (motion->first_stall_station_mm))
    return false;
  reckoning_length (self, _("Span of the wing b"), self->figures->reference->planform.span);
  reckoning_number (self, _("Lift coefficient there over the wing's own"), motion->first_stall_ratio, 2, "");
  if (motion_stalls_somewhere (motion))
    reckoning_gives_length (self, motion->first_stall_station_mm, NAN);
  else
    reckoning_gives (self, g_strdup (_("nowhere in particular")), NAN);
  return true;
}
