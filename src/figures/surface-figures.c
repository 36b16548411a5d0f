#include "figures/surface-figures.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "aero/handbook.h"
#include "document/units.h"
#include "figures/names.h"
#include "figures/notes.h"
#include "figures/outline-tolerance.h"

PlanformSides
surface_sides (const Surface *surface)
{
  if (!surface_is_horizontal (surface))
    return PLANFORM_SINGLE;
  return surface->root_open ? PLANFORM_OPEN : PLANFORM_CARRIED;
}

SurfaceFigures
surface_figures_alone (const Surface *surface)
{
  const Planform none = { NAN, NAN, NAN, NAN, NAN, NAN, NAN };
  SurfaceFigures made = { .surface = surface, .planform = none, .quarter_mac_x_mm = NAN, .lift_slope_per_rad = NAN,
                          .lift_slope_sigma = NAN, .section_factor = NAN, .section_factor_sigma = NAN, .volume_sigma = NAN,
                          .company_lift_per_rad = NAN, .company_lift_x_mm = NAN, .downwash_gradient = NAN,
                          .tail_arm_mm = NAN, .volume_coefficient = NAN, .area_mm2 = NAN };
  CoreStatus measured;

  made.status = outline_check (surface->outline, &made.fault);
  measured = planform_measure (surface->outline, surface_sides (surface), &made.planform);
  if (measured != CORE_OK)
    {
      made.status = measured;
      return made;
    }
  made.area_mm2 = made.planform.area;
  made.quarter_mac_x_mm = made.planform.mac_leading_edge_x + 0.25 * made.planform.mac;
  return made;
}

void
surface_figures_refer (SurfaceFigures *figures, const SurfaceFigures *reference)
{
  const Planform *wing = &reference->planform;
  const double length = surface_is_horizontal (figures->surface) ? wing->mac : wing->span;

  figures->tail_arm_mm = figures->quarter_mac_x_mm - reference->quarter_mac_x_mm;
  figures->volume_coefficient = handbook_tail_volume (figures->area_mm2, figures->tail_arm_mm, wing->area, length);
  figures->volume_sigma = fabs (figures->volume_coefficient) * hypot (surface_volume_by_its_own, surface_volume_by_the_wing) * outline_tolerance;
}

double
surface_lift (const Surface *surface, double station)
{
  double lift = 0, from = 0, angle = surface->dihedral;

  for (size_t i = 0; i < surface->break_count && surface->breaks[i].from < station; i++)
    {
      lift += (surface->breaks[i].from - from) * tan (angle * (G_PI / 180));
      from = surface->breaks[i].from;
      angle = surface->breaks[i].angle;
    }
  return lift + (station - from) * tan (angle * (G_PI / 180));
}

bool
surface_is_beyond_the_centre (const Surface *surface)
{
  return outline_bounds (surface->outline).min.y < 0;
}

/* What has no fault in itself and still is no half of anything, or is beyond all measure. */
static void
note_unmeasured (const SurfaceFigures *figures, GPtrArray *notes)
{
  const Piece *piece = &figures->surface->piece;
  const char *name = piece_name (piece);

  if (figures->status == CORE_OUT_OF_RANGE && surface_is_beyond_the_centre (figures->surface))
    notes_add_problem (notes, piece, _("The outline of “%s” crosses the centre line. Drag back what lies beyond it."), name);
  else if (figures->status == CORE_OUT_OF_RANGE)
    notes_add_problem (notes, piece, _("The outline of “%s” reaches inboard of its root. Drag it outboard, or the root inboard."), name);
  else if (figures->status == CORE_NO_MEMORY)
    notes_add_problem (notes, piece, _("There is no memory left to measure “%s”. Close another window, then change its outline."), name);
  else
    notes_add_problem (notes, piece, _("“%s” is too large or too small to be measured. Correct the places of its nodes."), name);
}

static void
note_outline (const SurfaceFigures *figures, GPtrArray *notes)
{
  const Piece *piece = &figures->surface->piece;
  const char *name = piece_name (piece);

  switch (figures->status)
    {
    case CORE_OK:
      return;
    case CORE_MULTI_VALUED:
      notes_add (notes, NOTE_NOTE, piece, _("The outline of “%s” meets some stations more than twice. Its chord there is what "
                                            "lies inside; area and mean chord hold."), name);
      return;
    case CORE_OPEN:
      notes_add_problem (notes, piece, _("The outline of “%s” is open. Carry it to the line where it began."), name);
      return;
    case CORE_CROSSES_ITSELF:
      notes_add_problem (notes, piece, _("The outline of “%s” crosses itself between nodes %d and %d. Drag one of them apart."),
                         name, (int) figures->fault.segment_a + 1, (int) figures->fault.segment_b + 1);
      return;
    case CORE_NO_SPAN:
    case CORE_NO_AREA:
      notes_add_problem (notes, piece, _("The outline of “%s” encloses nothing. Give it a span and a chord."), name);
      return;
    default:
      note_unmeasured (figures, notes);
    }
}

static void
note_controls (const Surface *surface, GPtrArray *notes)
{
  for (size_t i = 0; i < surface->control_count; i++)
    {
      const Control *control = &surface->controls[i];

      if (!(control->outer > control->inner))
        notes_add (notes, NOTE_LOOK, &surface->piece,
                   _("“%s” of “%s” begins and ends at one station, so it has no area. Set its inner and outer end apart."),
                   control->id ? control->id : control_kind_name (control->kind), piece_name (&surface->piece));
    }
}

void
surface_figures_note (const SurfaceFigures *figures, GPtrArray *notes)
{
  note_outline (figures, notes);
  note_controls (figures->surface, notes);
}
