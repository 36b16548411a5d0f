#include "figures/before-closing.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/lead-words.h"
#include "figures/names.h"
#include "figures/report-hatch.h"

/* mm: nearer than that a thing is where it is measured from; so short a thing has one place. */
static const double AT = 0.5;

static char *
side_words (double degrees, const char *one, const char *other, const char *neither)
{
  g_autofree char *angle = units_angle (fabs (degrees));

  return degrees == 0 ? g_strdup (neither) : g_strdup_printf ("%s %s", angle, degrees > 0 ? one : other);
}

static char *
firewall_what (const Aeroplane *aeroplane)
{
  const Thrust *thrust = aeroplane_count (aeroplane, PIECE_THRUST) > 0 ? (const Thrust *) aeroplane_nth (aeroplane, PIECE_THRUST, 0) : NULL;

  if (!thrust)
    return g_strdup (_("Firewall; the thrust line's angles are not given"));
  /* Translators: a thrust line's angle, "2° down" */
  g_autofree char *down = side_words (thrust->down, C_("thrust line", "down"), C_("thrust line", "up"), C_("thrust line", "level"));
  g_autofree char *right = side_words (thrust->right, C_("thrust line", "right"), C_("thrust line", "left"), C_("thrust line", "straight ahead"));
  /* Translators: both angles: "Firewall, thrust line 2° down, 2° right" */
  return g_strdup_printf (_("Firewall, thrust line %s, %s"), down, right);
}

static char *
lead_what (const Aeroplane *aeroplane, const ClosingStep *step, Units units)
{
  g_autofree char *title = lead_leg_title (aeroplane, (const Lead *) step->piece, step->leg);
  g_autofree char *length = units_length (units, step->length_mm), *needed = units_length (units, step->needed_mm);
  g_autofree char *extension = units_length (units, step->extension_mm);

  if (isnan (step->length_mm))
    return g_strdup_printf (_("%s, at least %s long"), title, needed);
  if (isnan (step->extension_mm))
    return g_strdup_printf (_("%s, made longer: at least %s"), title, needed);
  return step->extension_mm > 0 ? g_strdup_printf (_("%s, with an extension of %s"), title, extension)
                                : g_strdup_printf (_("%s, %s\u00A0long"), title, length);
}

/* Of lead, as long, wide and high as the place for it. */
static char *
ballast_block_what (const ClosingStep *step, const char *mass, Units units)
{
  g_autofree char *length = units_length_figure (units, step->to_mm - step->from_mm), *width = units_length_figure (units, step->width_mm);
  g_autofree char *height = units_length (units, step->height_mm);

  /* Translators: a mass and three lengths: "Box for 8.2 g of ballast, 10 × 13 × 6 mm, long × wide × high" */
  return step->in_case ? g_strdup_printf (_("Room for %s of ballast, %s × %s × %s, long × wide × high, should it come out tail-heavy"), mass, length, width, height)
                       : g_strdup_printf (_("Box for %s of ballast, %s × %s × %s, long × wide × high"), mass, length, width, height);
}

static char *
ballast_what (const ClosingStep *step, Units units)
{
  g_autofree char *mass = units_mass (units, step->ballast_g);

  if (step->piece)
    return g_strdup_printf (_("Box for “%s”, %s"), piece_name (step->piece), mass);
  return ballast_block_what (step, mass, units);
}

static bool
is_of_no_class (const Piece *part)
{
  return g_strcmp0 (((const Part *) part)->class_name, "other") == 0;
}

static char *
tray_what (const Figures *figures, const ClosingStep *step)
{
  g_autofree char *wing = step->wing.surface ? piece_thing (figures->aeroplane, &step->wing.surface->piece) : NULL;
  const char *name = piece_name (step->piece);

  if (wing)
    /* Translators: a part's name and what it goes into, "Bay for “Servo, left aileron” in the wing" */
    return g_strdup_printf (_("Bay for “%s” in %s"), name, wing);
  return g_strdup_printf (is_of_no_class (step->piece) ? _("Seat for “%s”") : _("Tray for “%s”"), name);
}

static char *
hatch_what (const Aeroplane *aeroplane, const char *name, const char *width)
{
  const HatchSide side = aeroplane_traits (aeroplane).hatch;

  if (side == HATCH_NOT_CHOSEN)
    return g_strdup_printf (_("Frame of the hatch for “%s”, round a hole %s\u00A0wide"), name, width);
  return g_strdup_printf (side == HATCH_ON_TOP ? _("Frame of the hatch for “%s” on the top, round a hole %s\u00A0wide")
                                               : _("Frame of the hatch for “%s” on the bottom, round a hole %s\u00A0wide"),
                          name, width);
}

char *
closing_what (const Figures *figures, const ClosingStep *step, Units units)
{
  const char *name = step->piece ? piece_name (step->piece) : "";
  g_autofree char *width = units_length (units, step->width_mm), *station = units_length_figure (units, step->station_mm);

  switch (step->kind)
    {
    case CLOSING_FIREWALL:      return firewall_what (figures->aeroplane);
    case CLOSING_FLOOR:         return step->width_mm > 0 ? g_strdup_printf (_("Floor for “%s”, %s\u00A0wide"), name, width)
                                                          : g_strdup_printf (_("Floor for “%s”"), name);
    case CLOSING_HATCH:         return hatch_what (figures->aeroplane, name, width);
    case CLOSING_UNDERCARRIAGE: return g_strdup_printf (_("Block for “%s”"), name);
    case CLOSING_PUSHROD:       return g_strdup_printf (_("“%s”: see that it runs free"), name);
    case CLOSING_LEAD:          return lead_what (figures->aeroplane, step, units);
    case CLOSING_MARK_BLOCK:    return g_strdup_printf (_("Hard wood at the balance mark, station %s, both\u00A0halves"), station);
    case CLOSING_BALLAST:       return ballast_what (step, units);
    default:                    return tray_what (figures, step);
    }
}

/* From the datum, for a body without a former that has a name. */
static char *
datum_words (const ClosingStep *step, Units units)
{
  g_autofree char *from = units_length_figure (units, step->from_mm), *to = units_length (units, step->to_mm);

  return step->to_mm - step->from_mm < AT ? g_strdup_printf (_("%s aft of the datum"), to)
                                          : g_strdup_printf (_("%s to %s aft of the datum"), from, to);
}

/* Both edges by one rule that lies at one former. */
static char *
along_words (const ClosingStep *step, Units units)
{
  const PartStand *stand = &step->stand;
  const double front = stand->front_mm, rear = stand->rear_mm;
  const char *former = stand->former ? stand->former->name : NULL;
  g_autofree char *fore = units_length (units, fabs (front)), *aft = units_length (units, fabs (rear));
  g_autofree char *fore_figure = units_length_figure (units, fabs (front)), *aft_figure = units_length_figure (units, fabs (rear));

  if (!former)
    return datum_words (step, units);
  if (rear - front < AT)
    return part_stand_text (stand, (front + rear) / 2, units);
  if (front >= AT)
    /* Translators: both edges of a thing, "12 to 34 mm behind F3" */
    return g_strdup_printf (_("%s to %s behind %s"), fore_figure, aft, former);
  if (rear <= -AT)
    return g_strdup_printf (_("%s to %s ahead of %s"), aft_figure, fore, former);
  if (front > -AT)
    return g_strdup_printf (_("from %s to %s behind it"), former, aft);
  return rear < AT ? g_strdup_printf (_("from %s ahead of %s back to it"), fore, former)
                   : g_strdup_printf (_("from %s ahead of %s to %s behind it"), fore, former, aft);
}

/* What a pack or another part lies on is glued in by its upper face. */
static bool
is_lain_on (const ClosingStep *step)
{
  return step->kind == CLOSING_FLOOR || step->kind == CLOSING_TRAY;
}

static char *
from_thrust_words (const ClosingStep *step, const char *off)
{
  const bool below = step->above_thrust_mm < 0;

  if (fabs (step->above_thrust_mm) < AT)
    return g_strdup (is_lain_on (step) ? _("upper face at the thrust line") : _("underside at the thrust line"));
  if (is_lain_on (step))
    return g_strdup_printf (below ? _("upper face %s below the thrust line") : _("upper face %s above the thrust line"), off);
  return g_strdup_printf (below ? _("underside %s below the thrust line") : _("underside %s above the thrust line"), off);
}

static char *
height_words (const ClosingStep *step, Units units)
{
  g_autofree char *off = units_length (units, fabs (step->above_thrust_mm)), *over = part_stand_height_text (&step->stand, units);
  g_autofree char *from_thrust = from_thrust_words (step, off);

  if (!step->stand.former || isnan (step->stand.front_height_mm) || isnan (step->stand.rear_height_mm) || fabs (step->above_thrust_mm) < AT)
    return g_steal_pointer (&from_thrust);
  /* Translators: how high a thing is from the thrust line, and a length */
  return g_strdup_printf (_("%s, %s above the bottom"), from_thrust, over);
}

static const char *
name_at (const GPtrArray *places, guint i)
{
  return ((const NamedPlace *) g_ptr_array_index (places, i))->name;
}

/* "F5, F6"; of many the first and the last. NULL of none. */
static char *
names_words (const GPtrArray *places)
{
  const guint most = 3;
  g_autoptr (GString) names = g_string_new (NULL);

  if (!places || places->len == 0)
    return NULL;
  if (places->len > most)
    return g_strdup_printf (_("%s to %s"), name_at (places, 0), name_at (places, places->len - 1));
  for (guint i = 0; i < places->len; i++)
    g_string_append_printf (names, i ? ", %s" : "%s", name_at (places, i));
  return g_string_free (g_steal_pointer (&names), FALSE);
}

static char *
formers_words (const GPtrArray *formers)
{
  g_autofree char *names = names_words (formers);

  return names ? g_strdup_printf (ngettext ("through former %s", "through formers %s", formers->len), names) : NULL;
}

static char *
ribs_words (const GPtrArray *ribs)
{
  g_autofree char *names = names_words (ribs);

  return names ? g_strdup_printf (ngettext ("through rib %s", "through ribs %s", ribs->len), names) : NULL;
}

static void
add_phrase (GString *text, char *takes)
{
  if (takes)
    g_string_append_printf (text, text->len ? ", %s" : "%s", takes);
  g_free (takes);
}

/* Each edge from the former nearest to it, as on the template and in the report. */
static char *
hatch_where (const Figures *figures, const ClosingStep *step, Units units)
{
  g_autofree char *forward = hatch_edge_text (figures->aeroplane, step->from_mm, units), *after = hatch_edge_text (figures->aeroplane, step->to_mm, units);

  return forward && after ? g_strdup_printf (_("forward edge %s, after edge %s"), forward, after) : datum_words (step, units);
}

static char *
along_where (const Figures *figures, const ClosingStep *step, Units units)
{
  if (step->kind == CLOSING_HATCH)
    return hatch_where (figures, step, units);
  return step->wing.surface ? wing_stand_along_text (&step->wing, units) : along_words (step, units);
}

char *
closing_where (const Figures *figures, const ClosingStep *step, Units units)
{
  GString *text = g_string_new (NULL);

  if (step->kind != CLOSING_LEAD)
    add_phrase (text, along_where (figures, step, units));
  if (isfinite (step->above_thrust_mm))
    add_phrase (text, height_words (step, units));
  add_phrase (text, off_centre_text (step->y_mm, units));
  if (step->wing.surface)
    add_phrase (text, wing_stand_rib_text (&step->wing, units));
  add_phrase (text, formers_words (step->formers));
  add_phrase (text, ribs_words (step->ribs));
  return g_string_free (text, FALSE);
}
