#include "figures/power-figures.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/names.h"
#include "figures/notes.h"

/* Common practice, no source. */
static const double LEAST_PITCH_RATIO = 2, LEAST_THRUST_RATIO = 0.35;

static void
note_lack (const PowerFigures *self, GPtrArray *notes)
{
  const char *motor = self->motor ? piece_name (&self->motor->piece) : NULL;
  const char *propeller = self->propeller ? piece_name (&self->propeller->piece) : NULL;

  if (self->lack == POWER_NO_MOTOR)
    notes_add (notes, NOTE_NOTE, NULL, _("The pitch speed needs a motor and its propeller aboard."));
  else if (self->lack == POWER_NO_PROPELLER)
    notes_add (notes, NOTE_NOTE, &self->motor->piece, _("The pitch speed needs a propeller on the shaft of “%s”."), motor);
  else if (self->lack == POWER_NO_SPEED)
    notes_add (notes, NOTE_NOTE, &self->motor->piece, _("The pitch speed needs how fast “%s” turns: choose its kind, type its rpm per volt and "
                                                       "the battery's cells, or type the input that a meter shows."), motor);
  else if (self->lack == POWER_NO_PITCH)
    notes_add (notes, NOTE_NOTE, &self->propeller->piece, _("The pitch speed needs the pitch of “%s”: choose its kind or type it."), propeller);
}

static void
note_overload (const PowerFigures *self, GPtrArray *notes)
{
  g_autofree char *amperes = units_number (self->current_a, 1), *bears = units_number (self->controller_a, 0);
  g_autofree char *watts = units_number (self->overload_w, 0);
  g_autofree char *most = self->overloaded ? units_number (self->overloaded->power, 0) : NULL;

  if (self->overloaded)
    notes_add (notes, NOTE_LOOK, &self->overloaded->piece, _("“%s” would take about %s W with its propeller, and bears %s W: fit a smaller "
                                                            "propeller or fewer cells, and look at a meter before it flies."),
               piece_name (&self->overloaded->piece), watts, most);
  if (self->controller_a > 0 && self->current_a > self->controller_a)
    notes_add (notes, NOTE_LOOK, &self->controller->piece, _("“%s” would carry about %s A and bears %s A: fit a larger one, or a smaller "
                                                            "propeller."),
               piece_name (&self->controller->piece), amperes, bears);
}

static void
note_bands (const PowerFigures *self, GPtrArray *notes)
{
  g_autofree char *times = units_number (self->pitch_ratio, 1), *pull = units_number (self->thrust_ratio, 2);

  if (self->pitch_ratio < LEAST_PITCH_RATIO)
    notes_add (notes, NOTE_LOOK, &self->propeller->piece, _("The pitch speed is only %s times the stalling speed, and 2 to 3.2 is usual: it "
                                                           "will hardly fly fast enough to climb. More pitch, more revolutions or less "
                                                           "mass helps."), times);
  if (self->thrust_ratio < LEAST_THRUST_RATIO)
    notes_add (notes, NOTE_LOOK, &self->propeller->piece, _("The propeller pulls with only %s of the weight, and 0.35 to 0.9 is usual: a larger "
                                                           "propeller, more power or less mass helps."), pull);
}

static void
note_clearance (const PowerFigures *self, GPtrArray *notes)
{
  const Units metric = { LENGTH_MM, MASS_G };
  g_autofree char *clear = units_length (metric, fabs (self->clearance_mm)), *least = units_length (metric, self->clearance_least_mm);

  if (self->clearance_mm < 0)
    notes_add (notes, NOTE_LOOK, &self->propeller->piece, _("“%s” reaches %s into the ground when the aeroplane stands level: longer legs or "
                                                           "a smaller propeller."), piece_name (&self->propeller->piece), clear);
  else if (self->clearance_mm < self->clearance_least_mm)
    notes_add (notes, NOTE_NOTE, &self->propeller->piece, _("“%s” clears the ground by %s when the aeroplane stands level; on mown grass %s is "
                                                           "usual: lengthen the legs, or launch by hand."),
               piece_name (&self->propeller->piece), clear, least);
}

void
power_note (const PowerFigures *power, GPtrArray *notes)
{
  note_lack (power, notes);
  note_overload (power, notes);
  note_bands (power, notes);
  note_clearance (power, notes);
}
