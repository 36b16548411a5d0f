#include "figures/aerodynamics-notes.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/units.h"
#include "figures/names.h"
#include "figures/no-neutral-point.h"
#include "figures/notes.h"
#include "figures/surface-figures.h"
#include "figures/tail-volume.h"

static void
note_not_found (Aerodynamics *self)
{
  const Surface *const *at_fault = self->solution.at_fault;
  const NeutralPointFigures point = { .status = self->solution.status, .at_fault = { at_fault[0], at_fault[1] } };
  g_autofree char *finding = no_neutral_point_finding (&point);

  notes_add_problem (self->notes, at_fault[0] ? &at_fault[0]->piece : &aerodynamics_reference (self)->surface->piece, "%s", finding);
}

static void
note_no_neutral_point (Aerodynamics *self)
{
  const SurfaceFigures *reference = aerodynamics_reference (self);
  const Piece *piece = reference ? &reference->surface->piece : NULL;

  if (!self->surface_count)
    notes_add_problem (self->notes, NULL, _("There is no surface yet. Draw the wing, or start from numbers."));
  else if (!reference)
    notes_add_problem (self->notes, NULL, _("There is no wing with an area yet, so there is no neutral point."));
  else if (self->solution.status == CORE_NO_AREA)
    notes_add (self->notes, NOTE_LOOK, piece, _("The neutral point is withheld until the outline of every wing and tail can be measured."));
  else
    note_not_found (self);
}

static void
note_wing_alone (Aerodynamics *self)
{
  if (self->wing_alone && self->reference >= 0)
    notes_add (self->notes, NOTE_LOOK, &aerodynamics_reference (self)->surface->piece,
               _("There is no tailplane yet: the neutral point is the wing's alone, and no mark is offered."));
}

static void
note_provisional (Aerodynamics *self, const Surface *surface)
{
  if (surface->provisional)
    notes_add (self->notes, NOTE_LOOK, &surface->piece,
               _("“%s” stands for an area at an arm, for now: draw or trace its outline before wood is cut."), piece_name (&surface->piece));
}

static void
note_body_left_out (Aerodynamics *self, const Body *body)
{
  const char *name = piece_name (&body->piece);

  if (isnan (self->solution.body.shift_mm))
    notes_add (self->notes, NOTE_LOOK, &body->piece,
               _("“%s” has no usable outline from above yet, so its shift of the neutral point is not known and not counted; usually a "
                 "body's is 2 to 7 %% of the mean chord forward. Draw its half from nose to tail."), name);
  else
    notes_add (self->notes, NOTE_LOOK, &body->piece,
               _("“%s” has no usable outline from above yet, so its shift of the neutral point is not known and not counted. Draw its "
                 "half from nose to tail."), name);
}

static void
note_bodies (Aerodynamics *self)
{
  const GPtrArray *left_out = self->solution.body.left_out;
  const bool drawn = self->spread_count > self->surface_count;

  for (guint i = 0; i < left_out->len; i++)
    note_body_left_out (self, g_ptr_array_index (left_out, i));
  if (!drawn && !self->tailless)
    notes_add (self->notes, NOTE_NOTE, NULL, _("No body is drawn, so its shift of the neutral point is not counted; usually it is "
                                               "2 to 7 %% of the mean chord forward."));
}

static size_t
count_wings (const Aerodynamics *self)
{
  size_t wings = 0;

  for (size_t i = 0; i < self->surface_count; i++)
    wings += self->surfaces[i].surface->role == ROLE_WING;
  return wings;
}

/* Rounded down, so that what is below the least is never shown as the least. */
static void
note_tail_volume (Aerodynamics *self)
{
  g_autofree char *volume = units_number (floor (100 * self->tail_volume) / 100, 2), *least = units_number (tail_volume_least, 2);

  if (!(self->tail_volume < tail_volume_least))
    return;
  if (!(self->tail_volume > 0))
    notes_add (self->notes, NOTE_LOOK, NULL, _("The tailplane stands ahead of the wing's quarter chord, where it steadies nothing. "
                                               "Move it aft, or make it a foreplane."));
  else if (count_wings (self) > 1)
    notes_add (self->notes, NOTE_LOOK, NULL, _("The tail volume is %s of all wings' area. Common practice flies no less than %s by "
                                               "radio: enlarge the tailplane, move it aft or balance forward."), volume, least);
  else
    notes_add (self->notes, NOTE_LOOK, NULL, _("The tail volume is %s. Common practice flies no less than %s by radio: enlarge the "
                                               "tailplane, move it aft or balance forward."), volume, least);
}

static void
note_reference (Aerodynamics *self)
{
  if (count_wings (self) > 1)
    notes_add (self->notes, NOTE_NOTE, &aerodynamics_reference (self)->surface->piece,
               _("Percents, margin and marks are of the first wing, “%s”; the wing loading counts the area of all wings."),
               piece_name (&aerodynamics_reference (self)->surface->piece));
}

static void
note_bodies_outlines (Aerodynamics *self)
{
  for (size_t i = self->surface_count; i < self->spread_count; i++)
    {
      const Body *body = (const Body *) self->spreads[i].piece;
      OutlineFault fault;

      if ((body->outline && outline_check (body->outline, &fault) == CORE_CROSSES_ITSELF)
          || (body->side_outline && outline_check (body->side_outline, &fault) == CORE_CROSSES_ITSELF))
        notes_add_problem (self->notes, &body->piece,
                           _("The outline of “%s” crosses itself between nodes %d and %d. Drag one of them apart."),
                           piece_name (&body->piece), (int) fault.segment_a + 1, (int) fault.segment_b + 1);
    }
}

/* What no aeroplane can have from this version, with the reason. */
static void
note_not_reckoned (Aerodynamics *self)
{
  if (self->control_count)
    notes_add (self->notes, NOTE_NOTE, NULL, _("Roll rates are not reckoned by this version."));
}

void
aerodynamics_note (Aerodynamics *self)
{
  for (size_t i = 0; i < self->surface_count; i++)
    {
      surface_figures_note (&self->surfaces[i], self->notes);
      note_provisional (self, self->surfaces[i].surface);
    }
  note_bodies_outlines (self);
  note_not_reckoned (self);
  note_wing_alone (self);
  if (self->solution.status != CORE_OK)
    {
      note_no_neutral_point (self);
      return;
    }
  note_bodies (self);
  note_tail_volume (self);
  note_reference (self);
}
