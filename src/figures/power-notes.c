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

/* The sentences with their figures are only made where they are said: a part that is pulled makes new figures with each frame. */

static void
note_motor (const PowerFigures *self, GPtrArray *notes)
{
  g_autofree char *watts = units_number (self->overload_w, 0), *most = units_number (self->overloaded->power, 0);

  notes_add (notes, NOTE_LOOK, &self->overloaded->piece, _("“%s” would take about %s W with its propeller, and bears %s W: fit a smaller "
                                                          "propeller or fewer cells, and look at a meter before it flies."),
             piece_name (&self->overloaded->piece), watts, most);
}

static void
note_controller (const PowerFigures *self, GPtrArray *notes)
{
  g_autofree char *amperes = units_number (self->current_a, 1), *bears = units_number (self->controller_a, 0);

  notes_add (notes, NOTE_LOOK, &self->controller->piece, _("“%s” would carry about %s A and bears %s A: fit a larger one, or a smaller "
                                                          "propeller."), piece_name (&self->controller->piece), amperes, bears);
}

static void
note_pitch (const PowerFigures *self, GPtrArray *notes)
{
  g_autofree char *times = units_number (self->pitch_ratio, 1);

  notes_add (notes, NOTE_LOOK, &self->propeller->piece, _("The pitch speed is only %s times the stalling speed, and 2 to 3.2 is usual: it will "
                                                         "hardly fly fast enough to climb. More pitch, more revolutions or less mass "
                                                         "helps."), times);
}

static void
note_pull (const PowerFigures *self, GPtrArray *notes)
{
  g_autofree char *pull = units_number (self->thrust_ratio, 2);

  notes_add (notes, NOTE_LOOK, &self->propeller->piece, _("The propeller pulls with only %s of the weight, and 0.35 to 0.9 is usual: a larger "
                                                         "propeller, more power or less mass helps."), pull);
}

/* By how much is told in the report, in the reader's units. */
static void
note_clearance (const PowerFigures *self, GPtrArray *notes)
{
  const char *name = piece_name (&self->propeller->piece);

  if (self->clearance_mm < 0)
    notes_add (notes, NOTE_LOOK, &self->propeller->piece, _("“%s” reaches into the ground when the aeroplane stands level: longer legs or a "
                                                           "smaller propeller."), name);
  else
    notes_add (notes, NOTE_NOTE, &self->propeller->piece, _("“%s” has little room above the ground when the aeroplane stands level; a tenth of "
                                                           "its diameter and 15 mm (5/8 in) are usual on mown grass: lengthen the legs, "
                                                           "or launch by hand."), name);
}

void
power_note (const PowerFigures *power, GPtrArray *notes)
{
  note_lack (power, notes);
  if (power->overloaded)
    note_motor (power, notes);
  if (power->controller_a > 0 && power->current_a > power->controller_a)
    note_controller (power, notes);
  if (power->pitch_ratio < LEAST_PITCH_RATIO)
    note_pitch (power, notes);
  if (power->thrust_ratio < LEAST_THRUST_RATIO)
    note_pull (power, notes);
  if (power->clearance_mm < power->clearance_least_mm)
    note_clearance (power, notes);
}
