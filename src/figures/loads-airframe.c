#include "figures/loads.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "balance/weighed.h"
#include "document/part-class.h"
#include "figures/notes.h"

/* mm: fingers beneath a wing. Common practice, no source. */
static const double FINGERS_SIGMA = 2;

bool
load_is_of_airframe (const Piece *piece)
{
  return piece->kind == PIECE_STRUCTURE || (piece->kind == PIECE_PART && part_class_is_of_airframe (((const Part *) piece)->class_name));
}

static bool
was_on_scale (const Piece *piece)
{
  return load_is_of_airframe (piece) && !(piece->kind == PIECE_PART && ((const Part *) piece)->to_come);
}

static void
reckon (Loads *self, const bool on_scale[])
{
  double mass = 0, moment = 0, of_mass = 0, of_moment = 0;

  for (size_t i = 0; i < self->count; i++)
    if (on_scale[i])
      {
        mass += self->items[i].mass;
        moment += self->items[i].mass * self->items[i].x;
        of_mass += pow (self->items[i].mass_sigma, 2);
      }
  const double x = moment / mass;
  for (size_t i = 0; i < self->count; i++)
    if (on_scale[i])
      of_moment += mass_item_x_variance (&self->items[i], x);
  self->airframe = (AirframeFigures) { .reckoned_g = 1e3 * mass, .reckoned_sigma_g = 1e3 * sqrt (of_mass), .reckoned_x_mm = 1e3 * x,
                                       .reckoned_x_sigma_mm = 1e3 * sqrt (of_moment) / mass };
}

double
airframe_place_sigma (const AeroplaneTraits *traits)
{
  return traits->airframe_x_sigma > 0 ? traits->airframe_x_sigma : FINGERS_SIGMA;
}

static Weighed
on_the_scale (const AeroplaneTraits *traits)
{
  return (Weighed) {
    .mass = 1e-3 * traits->airframe, .mass_sigma = 1e-3 * (traits->airframe_sigma > 0 ? traits->airframe_sigma : SCALE_SIGMA_G),
    .x = traits->airframe_balanced ? 1e-3 * traits->airframe_x : NAN,
    .x_sigma = 1e-3 * airframe_place_sigma (traits),
  };
}

/* Three deviations: one such weighing in some hundreds. By how much is told with the budget, in the reader's units. */
static void
note_disagreement (Loads *self, const Weighed *weighed)
{
  static const double FAR = 3;
  const AirframeFigures *reckoned = &self->airframe;
  const double more = 1e3 * weighed->mass - reckoned->reckoned_g, aft = 1e3 * weighed->x - reckoned->reckoned_x_mm;

  if (fabs (more) > FAR * hypot (reckoned->reckoned_sigma_g, 1e3 * weighed->mass_sigma))
    notes_add (self->notes, NOTE_LOOK, NULL, "%s",
               more > 0 ? _("The bare airframe weighs more than its structures can come to: weigh it again without any gear, or see whether a "
                            "structure is missing.")
                        : _("The bare airframe weighs less than its structures can come to: weigh it again with wing and tail on, or see "
                            "whether a structure is there twice."));
  if (fabs (aft) > FAR * hypot (reckoned->reckoned_x_sigma_mm, 1e3 * weighed->x_sigma))
    notes_add (self->notes, NOTE_LOOK, NULL, "%s",
               aft > 0 ? _("The bare airframe balances further aft than its structures can: balance it again without any gear, and measure "
                           "from the datum.")
                       : _("The bare airframe balances further forward than its structures can: balance it again without any gear, and "
                           "measure from the datum."));
}

void
loads_weigh_airframe (Loads *self)
{
  g_autofree bool *on_scale = g_new (bool, self->count + 1);
  const Weighed weighed = on_the_scale (&self->traits);

  for (size_t i = 0; i < self->count; i++)
    on_scale[i] = was_on_scale (self->pieces[i]);
  reckon (self, on_scale);
  if (self->traits.airframe > 0 && self->status == CORE_OK && !(self->airframe.reckoned_g > 0))
    notes_add (self->notes, NOTE_LOOK, NULL, _("The bare airframe's weighing does not count for the balance yet: it is shared out among "
                                               "structures, and there are none. Choose wing, tail and body in turn and take their usual "
                                               "lines."));
  if (!(self->traits.airframe > 0) || self->status != CORE_OK
      || weighed_correct (self->items, on_scale, self->count, &weighed) != CORE_OK)
    return;
  note_disagreement (self, &weighed);
  self->airframe.weighed = true;
  self->airframe.balanced = self->traits.airframe_balanced;
  self->figures.total_g = 0;
  for (size_t i = 0; i < self->count; i++)
    self->figures.total_g += 1e3 * self->items[i].mass;
}
