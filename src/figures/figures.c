#include "figures/figures.h"

#include <math.h>
#include "figures/aerodynamics.h"
#include "figures/balance-figures.h"
#include "figures/flight-figures.h"
#include "figures/loads.h"
#include "figures/motion-figures.h"
#include "figures/notes.h"
#include "figures/passed-click.h"
#include "figures/place-notes.h"
#include "figures/report-hatch.h"
#include "figures/room-memory.h"
#include "figures/room-notes.h"
#include "figures/stability.h"
#include "figures/structure-figures.h"

struct FiguresCache {
  Lattice *lattice;
  Aerodynamics aerodynamics;
  Loads loads;
  RoomProfiles room;
  RoomMemory faults;
};

FiguresCache *
figures_cache_new (void)
{
  FiguresCache *cache = g_new0 (FiguresCache, 1);

  cache->lattice = lattice_new ();
  return cache;
}

void
figures_cache_free (FiguresCache *cache)
{
  if (!cache)
    return;
  aerodynamics_clear (&cache->aerodynamics);
  loads_clear (&cache->loads);
  room_profiles_clear (&cache->room);
  room_memory_clear (&cache->faults);
  lattice_free (cache->lattice);
  g_free (cache);
}

static void
copy_aerodynamics (Figures *self, const Aerodynamics *made)
{
  self->surface_count = made->surface_count;
  self->surfaces = g_memdup2 (made->surfaces, made->surface_count * sizeof *made->surfaces);
  self->reference = made->reference < 0 ? NULL : &self->surfaces[made->reference];
  self->wing_area_mm2 = made->wing_area_mm2;
  self->tail_volume = made->tail_volume;
  self->tail_volume_sigma = made->tail_volume_sigma;
  self->nose_x_mm = made->nose_x;
  self->tail_x_mm = made->tail_x;
  self->control_count = made->control_count;
  self->controls = g_memdup2 (made->controls, made->control_count * sizeof *made->controls);
  notes_append (self->notes, made->notes);
}

static LoadFigures
load_figures_of (const Loads *loads, size_t at)
{
  const MassItem *item = &loads->items[at];

  return (LoadFigures) { .piece = loads->pieces[at], .mass_g = item->mass * 1e3, .mass_sigma_g = item->mass_sigma * 1e3,
                         .x_mm = item->x * 1e3, .y_mm = item->y * 1e3, .z_mm = item->z * 1e3, .x_sigma_mm = item->x_sigma * 1e3,
                         .own_roll_kgm2 = item->own_roll, .own_pitch_kgm2 = item->own_pitch, .own_yaw_kgm2 = item->own_yaw };
}

static void
copy_loads (Figures *self, const Loads *made)
{
  self->load_count = made->count;
  self->loads = g_new (LoadFigures, made->count);
  for (size_t i = 0; i < made->count; i++)
    self->loads[i] = load_figures_of (made, i);
  self->structures = structure_figures_dup (made->structures, made->structure_count);
  self->structure_count = made->structure_count;
  self->mass = made->figures;
  self->airframe = made->airframe;
  self->weigh_first[0] = made->weigh_first[0];
  self->weigh_first[1] = made->weigh_first[1];
  notes_append (self->notes, made->notes);
}

Figures *
figures_of (FiguresCache *cache, const Aeroplane *aeroplane)
{
  Figures *self = g_new0 (Figures, 1);

  g_atomic_ref_count_init (&self->references);
  self->aeroplane = aeroplane_ref (aeroplane);
  self->notes = notes_new ();
  aerodynamics_update (&cache->aerodynamics, cache->lattice, aeroplane);
  loads_update (&cache->loads, &cache->aerodynamics, aeroplane);
  room_profiles_update (&cache->room, aeroplane);
  self->room = room_faults_again (&cache->faults, &cache->room, aeroplane);
  copy_aerodynamics (self, &cache->aerodynamics);
  copy_loads (self, &cache->loads);
  self->flight = flight_figures_of (&cache->aerodynamics, &cache->loads);
  self->power = power_figures_of (aeroplane, self->mass.total_g, self->flight.stall_speed_m_s);
  self->flight.pitch_speed_m_s = self->power.pitch_speed_m_s;
  self->neutral_point = stability_of (&cache->aerodynamics, aeroplane, self->surfaces, &self->flight);
  self->motion = motion_figures_of (&cache->aerodynamics, self->surfaces, &self->neutral_point, &self->mass);
  self->balance = balance_figures_of (aeroplane, &cache->aerodynamics, &cache->loads, &self->neutral_point);
  self->solutions = solutions_of (self, &cache->aerodynamics, &cache->loads, &self->solution_count);
  self->hatch = hatch_figures_of (self, &cache->room);
  place_note (self, self->notes);
  passed_click_note (self, self->notes);
  stability_note (self, self->notes);
  balance_figures_note (self, self->notes);
  flight_figures_note (self, self->notes);
  power_note (&self->power, self->notes);
  room_note (self, self->notes);
  hatch_note (self, self->notes);
  notes_sort (self->notes);
  return self;
}

Figures *
figures_ref (const Figures *figures)
{
  Figures *self = (Figures *) figures;

  g_atomic_ref_count_inc (&self->references);
  return self;
}

void
figures_unref (Figures *figures)
{
  if (!figures || !g_atomic_ref_count_dec (&figures->references))
    return;
  g_ptr_array_unref (figures->notes);
  g_array_unref (figures->room);
  g_free (figures->surfaces);
  g_free (figures->controls);
  structure_figures_free (figures->structures, figures->structure_count);
  g_free (figures->loads);
  g_free (figures->solutions);
  g_free (figures->balance.marks);
  g_clear_pointer (&figures->motion.loading, g_array_unref);
  aeroplane_unref (figures->aeroplane);
  g_free (figures);
}

bool
motion_stalls_somewhere (const MotionFigures *motion)
{
  return isfinite (motion->first_stall_station_mm) && motion->first_stall_ratio >= 1.03;
}

bool
figures_are_sound (const Figures *figures)
{
  for (guint i = 0; i < figures->notes->len; i++)
    if (((const Note *) g_ptr_array_index (figures->notes, i))->problem)
      return false;
  return !(figures->balance.static_margin_percent < 0);
}

const SurfaceFigures *
figures_of_surface (const Figures *figures, const char *id)
{
  for (size_t i = 0; i < figures->surface_count; i++)
    if (g_strcmp0 (figures->surfaces[i].surface->piece.id, id) == 0)
      return &figures->surfaces[i];
  return NULL;
}

const ControlFigures *
figures_of_control (const Figures *figures, const char *surface, const char *control)
{
  for (size_t i = 0; i < figures->control_count; i++)
    if (g_strcmp0 (figures->controls[i].surface->piece.id, surface) == 0 && g_strcmp0 (figures->controls[i].control->id, control) == 0)
      return &figures->controls[i];
  return NULL;
}

const StructureFigures *
figures_of_structure (const Figures *figures, const Structure *structure)
{
  for (size_t i = 0; i < figures->structure_count; i++)
    if (figures->structures[i].structure == structure)
      return &figures->structures[i];
  return NULL;
}

const Solution *
figures_solution (const Figures *figures, const char *part_id)
{
  for (size_t i = 0; i < figures->solution_count; i++)
    if (g_strcmp0 (figures->solutions[i].part->piece.id, part_id) == 0)
      return &figures->solutions[i];
  return NULL;
}
