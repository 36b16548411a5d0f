#include "figures/advice-sentence.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/ballast-told.h"
#include "figures/names.h"
#include "figures/no-neutral-point.h"
#include "figures/place-notes.h"
#include "figures/tail-volume.h"
#include "figures/unweighed.h"

/* Every sentence is whole for the translator: the same thing said of the battery and of a part by its name are two. %s that stand
 * for a length or a mass hold figure and unit ("12 mm"), or "about 12 mm". */

static char *
length_phrase (const AdviceMeans *means, Units units)
{
  g_autofree char *length = units_length (units, fabs (means->move_mm));

  if (!means->about)
    return g_steal_pointer (&length);
  /* TRANSLATORS: a length in a sentence that says how far to move something: "about 12 mm" */
  return g_strdup_printf (C_("length", "about %s"), length);
}

/* How much and where, "36 g in front of the firewall": at least what a kitchen's scale shows, a gram. Where none is needed or none would
 * do, NULL: to look for its place takes a while. */
static char *
ballast_phrase (const Figures *figures, const AdviceMeans *means, Units units)
{
  if (means->reaches_band || isnan (means->ballast_g))
    return NULL;
  const BallastTold told = ballast_told_of (figures, means->solution);
  g_autofree char *mass = units_mass (units, fmax (told.mass_g, 1)), *place = ballast_told_phrase (&told);

  /* TRANSLATORS: a mass, and where it goes: "26 g at the fore end of “nose”" */
  return g_strdup_printf (_("%s %s"), mass, place);
}

static char *
sentence_tail_heavy (const Figures *figures, const AdviceMeans *means, Units units)
{
  const Part *part = means->solution ? means->solution->part : NULL;
  g_autofree char *length = length_phrase (means, units);
  g_autofree char *ballast = ballast_phrase (figures, means, units);

  if (!part && isnan (means->ballast_g))
    return g_strdup (_("Tail-heavy: do not fly. Move weight forward."));
  if (!part)
    return g_strdup_printf (_("Tail-heavy: do not fly. Put %s."), ballast);
  if (means->reaches_band && part_is_battery (part))
    return g_strdup_printf (_("Tail-heavy: do not fly. Move the battery %s forward."), length);
  if (means->reaches_band)
    return g_strdup_printf (_("Tail-heavy: do not fly. Move “%s” %s forward."), piece_name (&part->piece), length);
  if (isnan (means->ballast_g))
    return g_strdup (_("Tail-heavy: do not fly. The rail is too short; lengthen it forward."));
  return g_strdup_printf (_("Tail-heavy: do not fly. The rail is too short: %s as well."), ballast);
}

static char *
sentence_little_margin (const Figures *figures, const AdviceMeans *means, Units units)
{
  const Part *part = means->solution ? means->solution->part : NULL;
  g_autofree char *length = length_phrase (means, units);
  g_autofree char *ballast = ballast_phrase (figures, means, units);

  if (!part && isnan (means->ballast_g))
    return g_strdup (_("Tail-heavy. Move weight forward."));
  if (!part)
    return g_strdup_printf (_("Tail-heavy. Put %s."), ballast);
  if (means->reaches_band && part_is_battery (part))
    return g_strdup_printf (_("Tail-heavy. Move the battery %s forward."), length);
  if (means->reaches_band)
    return g_strdup_printf (_("Tail-heavy. Move “%s” %s forward."), piece_name (&part->piece), length);
  if (isnan (means->ballast_g))
    return g_strdup (_("Tail-heavy, and the rail is too short: lengthen it forward."));
  return g_strdup_printf (_("Tail-heavy, and the rail is too short: %s as well."), ballast);
}

static char *
sentence_nose_heavy (const Figures *figures, const AdviceMeans *means, Units units)
{
  const Part *part = means->solution ? means->solution->part : NULL;
  g_autofree char *length = length_phrase (means, units);
  g_autofree char *ballast = ballast_phrase (figures, means, units);

  if (!part && isnan (means->ballast_g))
    return g_strdup (_("Nose-heavy, safe but dull. Weight may go aft."));
  if (!part)
    return g_strdup_printf (_("Nose-heavy, safe but dull. Take weight from the nose, or put %s."), ballast);
  if (means->reaches_band && part_is_battery (part))
    return g_strdup_printf (_("Nose-heavy, safe but dull. The battery may go %s aft."), length);
  if (means->reaches_band)
    return g_strdup_printf (_("Nose-heavy, safe but dull. “%s” may go %s aft."), piece_name (&part->piece), length);
  if (isnan (means->ballast_g))
    return g_strdup (_("Nose-heavy, and the rail is too short: lengthen it aft."));
  return g_strdup_printf (_("Nose-heavy, and the rail is too short: %s as well."), ballast);
}

static char *
sentence_estimates (const Figures *figures)
{
  g_autofree char *first = piece_thing (figures->aeroplane, figures->weigh_first[0]);
  g_autofree char *second = figures->weigh_first[1] ? piece_thing (figures->aeroplane, figures->weigh_first[1]) : NULL;

  if (!second || g_str_equal (first, second))
    return g_strdup_printf (_("In the band, but the masses are estimates. Weigh %s first."), first);
  return g_strdup_printf (_("In the band, but the masses are estimates. Weigh %s and %s first."), first, second);
}

static char *
sentence_methods (const Figures *figures, Units units)
{
  g_autofree char *apart = units_length (units, fabs (figures->neutral_point.x_mm - figures->neutral_point.handbook_x_mm));

  return g_strdup_printf (_("The two methods differ by about %s. Stay at the forward limit."), apart);
}

/* Said in parts that a builder pictures: the next that suffices, with a hundredth for rounding. */
static const struct { double times; const char *sentence; } enlargements[] = {
  { 1.21, N_("The tailplane is small: balance forward, or enlarge it by a fifth.") },
  { 1.34, N_("The tailplane is small: balance forward, or enlarge it by a third.") },
  { 1.51, N_("The tailplane is small: balance forward, or enlarge it by half.") },
  { 2.01, N_("The tailplane is small: balance forward, or make it twice as large.") },
  { 3.01, N_("The tailplane is small: balance forward, or triple its area.") },
  { 4.01, N_("The tailplane is small: balance forward, or quadruple its area.") },
};

static char *
sentence_small_tail (const Figures *figures)
{
  const double times = tail_volume_wanted / figures->tail_volume;

  if (!(figures->tail_volume > 0))
    return g_strdup (_("The tailplane lies ahead of the wing's quarter chord. Move it aft."));
  for (size_t i = 0; i < G_N_ELEMENTS (enlargements); i++)
    if (times <= enlargements[i].times)
      return g_strdup (_(enlargements[i].sentence));
  return g_strdup (_("The tailplane is far too small: draw a larger one, or move it aft."));
}

static char *
sentence_place (const Figures *figures)
{
  return g_strdup_printf (_("In the band, but how far aft “%s” stands is a guess. Put its view of the plan in its place first."),
                          piece_name (place_guessed_of_mark (figures->aeroplane)));
}

/* As far as the rail lets it go, which is not as far as is wanted; what is left stands in the smaller line. */
static char *
sentence_to_the_end (const Part *part, const char *length)
{
  if (part_is_battery (part))
    return g_strdup_printf (_("In the band. First flight: battery %s forward, to the rail's end."), length);
  return g_strdup_printf (_("In the band. First flight: “%s” %s forward, to the rail's end."), piece_name (&part->piece), length);
}

static char *
sentence_at_the_end (const Part *part)
{
  if (part_is_battery (part))
    return g_strdup (_("In the band, and the battery is as far forward as its rail goes."));
  return g_strdup_printf (_("In the band, and “%s” is as far forward as its rail goes."), piece_name (&part->piece));
}

static char *
sentence_first_flight (const Figures *figures, const AdviceMeans *means, Units units)
{
  const Part *part = means->solution->part;
  g_autofree char *length = length_phrase (means, units);

  if (advice_rail_short_mm (figures, means->solution, figures->balance.advised_x_mm) > 0)
    return sentence_to_the_end (part, length);
  if (part_is_battery (part))
    return g_strdup_printf (_("In the band. For a first flight move the battery %s forward."), length);
  return g_strdup_printf (_("In the band. For a first flight move “%s” %s forward."), piece_name (&part->piece), length);
}

/* The forward limit is beyond what the rail allows: as far as that goes. */
static char *
sentence_short_of_limit (const Part *part, Units units)
{
  const double way = part->x - part->rail_from;
  g_autofree char *length = units_length (units, way);

  return way < 0.5 ? sentence_at_the_end (part) : sentence_to_the_end (part, length);
}

static char *
sentence_in_band (const Figures *figures, const AdviceMeans *means, Units units)
{
  const MarkFigures *mark = figures->balance.mark_count ? &figures->balance.marks[0] : NULL;

  if (means->solution && advice_rail_short_mm (figures, means->solution, figures->balance.forward_limit_x_mm) > 0)
    return sentence_short_of_limit (means->solution->part, units);
  if (!mark || isnan (mark->forward_mm))
    return g_strdup (_("In the band: for the first flight balance at the forward limit."));
  g_autofree char *forward = units_length (units, mark->forward_mm);
  return g_strdup_printf (_("In the band: for the first flight balance at the forward limit, %s."), forward);
}

char *
advice_sentence (const Figures *figures, const AdviceMeans *means, AdviceState state, const SurfaceFigures *surface, Units units)
{
  switch (state)
    {
    case STATE_NO_WING:               return g_strdup (_("No wing yet: draw its outline, or start from numbers."));
    case STATE_OUTLINE_OPEN:
    case STATE_OUTLINE_CROSSES:
    case STATE_OUTLINE_BEYOND:
    case STATE_OUTLINE_INBOARD:
    case STATE_OUTLINE_EMPTY:
    case STATE_OUTLINE_UNMEASURED:    return advice_outline_sentence (state, surface->surface->role);
    case STATE_NO_NEUTRAL_POINT:      return g_strdup (no_neutral_point_headline (&figures->neutral_point));
    case STATE_WING_ALONE:            return g_strdup (_("No tailplane yet: the neutral point is the wing's alone."));
    case STATE_NO_MASSES:             return g_strdup (_("No masses yet: add the battery, the motor and the structure."));
    case STATE_NO_PLACE:              return g_strdup (_("A mass has no place yet: draw what it is of."));
    case STATE_TAIL_HEAVY:            return sentence_tail_heavy (figures, means, units);
    case STATE_NO_AIRFRAME:           return g_strdup (_("The airframe has no mass yet: type what wing, tail and body weigh."));
    case STATE_UNWEIGHED:             return advice_unweighed_sentence (figures->aeroplane);
    case STATE_WEIGHTLESS:            return advice_weightless_sentence (weightless_slider (figures));
    case STATE_LITTLE_MARGIN:         return sentence_little_margin (figures, means, units);
    case STATE_NOSE_HEAVY:            return sentence_nose_heavy (figures, means, units);
    case STATE_ESTIMATES:             return sentence_estimates (figures);
    case STATE_PLACE_GUESSED:         return sentence_place (figures);
    case STATE_METHODS_DIFFER:        return sentence_methods (figures, units);
    case STATE_SMALL_TAIL:            return sentence_small_tail (figures);
    case STATE_MOVE_FOR_FIRST_FLIGHT: return sentence_first_flight (figures, means, units);
    case STATE_IN_BAND:               return sentence_in_band (figures, means, units);
    }
  g_return_val_if_reached (g_strdup (""));
}
