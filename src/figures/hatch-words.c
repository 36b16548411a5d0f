#include "figures/report-hatch.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "balance/hatch.h"
#include "figures/hatch-ends.h"

/* mm: less than this no builder saws; for more than that he fetches the scale. */
static const double worth_telling = 1, worth_shortening = 5;

static char *
several_text (const HatchFigures *hatch, const char *length, const char *bend, const char *hand, Units units)
{
  g_autofree char *floor = units_length (units, hatch->floor_to_mm - hatch->floor_from_mm);

  return g_strdup_printf (_("The hatch is %s long: %s from the foremost end of a pack to the aftmost, each where it keeps the margin, with "
                            "what that may be out by; %s for the bend of the leads and %s for a hand."), length, floor, bend, hand);
}

static char *
made_of (const HatchFigures *hatch, Units units)
{
  g_autofree char *length = units_length (units, hatch->to_mm - hatch->from_mm), *pack = units_length (units, hatch->pack_mm);
  g_autofree char *places = units_length (units, hatch->places_mm), *spread = units_length (units, hatch->spread_mm);
  g_autofree char *bend = units_length (units, 1e3 * HATCH_BEND), *hand = units_length (units, 1e3 * HATCH_HAND);

  if (hatch->packs > 1)
    return several_text (hatch, length, bend, hand, units);
  if (isnan (hatch->rail_ahead_mm))
    return g_strdup_printf (_("No place on the rail keeps the margin: the hatch, %s long, is for the end that comes nearest, %s of it for the "
                              "pack."), length, pack);
  return g_strdup_printf (_("The hatch is %s long: %s for the pack, %s between the places that keep the margin, %s for what those may be "
                            "out by, %s for the bend of the leads and %s for a hand."), length, pack, places, spread, bend, hand);
}

/* The rail ends before all that may be wanted: then it is what sets the hatch's ends. */
static char *
rail_short_text (double ahead, double behind, Units units)
{
  g_autofree char *forward = units_length (units, -ahead), *aft = units_length (units, -behind);

  if (ahead <= -worth_telling && behind <= -worth_telling)
    return g_strdup_printf (_("The rail sets both ends of the hatch: the pack may be wanted %s further forward and %s further aft."), forward, aft);
  if (ahead <= -worth_telling)
    return g_strdup_printf (_("The rail sets the forward end of the hatch: the pack may be wanted %s further forward."), forward);
  if (behind <= -worth_telling)
    return g_strdup_printf (_("The rail sets the after end of the hatch: the pack may be wanted %s further aft."), aft);
  return NULL;
}

/* It goes on for nothing. */
static char *
rail_long_text (double ahead, double behind, Units units)
{
  g_autofree char *forward = units_length (units, ahead), *aft = units_length (units, behind);

  if (ahead >= worth_telling && behind >= worth_telling)
    return g_strdup_printf (_("The rail is longer than needed, %s forward and %s aft, which does not lengthen the hatch."), forward, aft);
  if (ahead >= worth_telling)
    return g_strdup_printf (_("The rail goes %s further forward than needed, which does not lengthen the hatch."), forward);
  if (behind >= worth_telling)
    return g_strdup_printf (_("The rail goes %s further aft than needed, which does not lengthen the hatch."), aft);
  return NULL;
}

/* Sheet and sticks vary by what nobody sees before they are on a scale. */
static char *
spread_text (const Figures *figures, Units units)
{
  g_autofree char *spread = units_length (units, figures->hatch.spread_mm);

  if (!(figures->hatch.spread_mm >= worth_shortening) || figures->airframe.weighed)
    return NULL;
  return g_strdup_printf (_("Weighing the bare airframe before it is cut takes off most of the %s for what places may be out by."), spread);
}

/* Takes the sentence; NULL adds nothing. */
static void
add_sentence (GString *text, char *takes)
{
  if (takes)
    g_string_append_printf (text, "%s%s", text->len ? " " : "", takes);
  g_free (takes);
}

char *
hatch_length_text (const Figures *figures, Units units)
{
  const HatchFigures *hatch = &figures->hatch;

  if (!hatch->part)
    return NULL;
  GString *text = g_string_new (NULL);
  add_sentence (text, made_of (hatch, units));
  add_sentence (text, hatch_moved_text (hatch, units));
  add_sentence (text, rail_short_text (hatch->rail_ahead_mm, hatch->rail_behind_mm, units));
  add_sentence (text, rail_long_text (hatch->rail_ahead_mm, hatch->rail_behind_mm, units));
  add_sentence (text, spread_text (figures, units));
  return g_string_free (text, FALSE);
}
