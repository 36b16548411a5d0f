#include "figures/report-hatch.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/hatch-curve.h"
#include "figures/hatch-way.h"
#include "figures/names.h"
#include "figures/notes.h"

/* mm: less no builder saws. */
static const double WORTH_TELLING = 1;

const char *
hatch_side_name (HatchSide side)
{
  static const char *const names[HATCH_SIDE_COUNT] = { N_("Not chosen yet"), N_("Top"), N_("Bottom") };

  return _(names[side]);
}

static const char *
side_sentence (HatchSide side)
{
  switch (side)
    {
    case HATCH_ON_TOP:    return _("The hatch opens on the top.");
    case HATCH_ON_BOTTOM: return _("The hatch opens on the bottom.");
    default:              return _("Whether the hatch opens on the top or the bottom is not chosen yet.");
    }
}

static int
by_place (gconstpointer a, gconstpointer b)
{
  const NamedPlace *one = *(const NamedPlace *const *) a, *other = *(const NamedPlace *const *) b;

  return (one->place > other->place) - (one->place < other->place);
}

GPtrArray *
hatch_formers_cut (const Figures *figures)
{
  const Aeroplane *aeroplane = figures->aeroplane;
  GPtrArray *cut = g_ptr_array_new ();

  for (size_t b = 0; b < aeroplane_count (aeroplane, PIECE_BODY); b++)
    for (size_t i = 0; i < aeroplane_body (aeroplane, b)->former_count; i++)
      {
        const NamedPlace *former = &aeroplane_body (aeroplane, b)->formers[i];

        if (former->place > figures->hatch.from_mm && former->place < figures->hatch.to_mm)
          g_ptr_array_add (cut, (gpointer) former);
      }
  g_ptr_array_sort (cut, by_place);
  return cut;
}

/* "F2, F3 and F4"; NULL where none has a name. */
static char *
names_text (const GPtrArray *formers)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new ();
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < formers->len; i++)
    if (((const NamedPlace *) formers->pdata[i])->name != NULL)
      g_ptr_array_add (names, ((const NamedPlace *) formers->pdata[i])->name);
  for (guint i = 0; i < names->len; i++)
    {
      /* Translators: between the last two names of a row, "F2, F3 and F4"; with its blanks */
      g_string_append (text, i == 0 ? "" : i + 1 == names->len ? _(" and ") : ", ");
      g_string_append (text, names->pdata[i]);
    }
  return g_string_free (text, names->len == 0);
}

/* What it begins behind, if that has a name. */
static const char *
ahead_of (const HatchFigures *hatch)
{
  if (hatch->former_from)
    return hatch->former_from->name;
  /* Translators: in place of a former's name, "It stands between the firewall and F6." */
  return isnan (hatch->firewall_x_mm) ? NULL : _("the firewall");
}

static const char *
name_of (const NamedPlace *former)
{
  return former != NULL ? former->name : NULL;
}

/* NULL where no former has a name. */
static char *
formers_sentence (const Figures *figures)
{
  g_autoptr (GPtrArray) formers = hatch_formers_cut (figures);
  g_autofree char *cut = names_text (formers);
  const char *ahead = ahead_of (&figures->hatch), *behind = name_of (figures->hatch.former_to);

  if (ahead != NULL && behind != NULL)
    /* Translators: names of formers: "It stands between F1 and F6 and cuts through F2, F3, F4 and F5." */
    return cut != NULL ? g_strdup_printf (_("It stands between %s and %s and cuts through %s."), ahead, behind, cut)
                       : g_strdup_printf (_("It stands between %s and %s."), ahead, behind);
  if (ahead != NULL)
    return cut != NULL ? g_strdup_printf (_("It begins behind %s and cuts through %s."), ahead, cut) : g_strdup_printf (_("It begins behind %s."), ahead);
  if (behind != NULL)
    return cut != NULL ? g_strdup_printf (_("It ends ahead of %s and cuts through %s."), behind, cut) : g_strdup_printf (_("It ends ahead of %s."), behind);
  return cut != NULL ? g_strdup_printf (_("It cuts through %s."), cut) : NULL;
}

char *
hatch_place_text (const Figures *figures)
{
  if (!figures->hatch.part)
    return NULL;
  g_autofree char *formers = formers_sentence (figures);
  g_autoptr (GPtrArray) sentences = hatch_bar_texts (figures);
  GString *text = g_string_new (side_sentence (aeroplane_traits (figures->aeroplane).hatch));

  if (formers != NULL)
    g_ptr_array_insert (sentences, 0, g_steal_pointer (&formers));
  for (guint i = 0; i < sentences->len; i++)
    g_string_append_printf (text, " %s", (const char *) sentences->pdata[i]);
  return g_string_free (text, FALSE);
}

/* Where the body leaves it less at an end. */
static char *
narrow_text (const HatchFigures *hatch, Units units)
{
  const bool ahead = hatch->width_mm - hatch->from_width_mm > WORTH_TELLING, behind = hatch->width_mm - hatch->to_width_mm > WORTH_TELLING;
  g_autofree char *from = units_length (units, hatch->from_width_mm), *to = units_length (units, hatch->to_width_mm);

  if (ahead && behind)
    return g_strdup_printf (_("The hole narrows with the body, to %s at its forward and %s at its after edge: put the pack in between, and slide it to its "
                              "place."), from, to);
  if (ahead)
    return g_strdup_printf (_("The hole narrows with the body, to %s at its forward edge: put the pack in behind that, and slide it forward."), from);
  if (behind)
    return g_strdup_printf (_("The hole narrows with the body, to %s at its after edge: put the pack in ahead of that, and slide it aft."), to);
  return NULL;
}

char *
hatch_through_text (const Figures *figures, Units units)
{
  const HatchFigures *hatch = &figures->hatch;

  if (!hatch->part)
    return NULL;
  if (!(hatch->lacking_mm > WORTH_TELLING))
    return narrow_text (hatch, units);
  g_autofree char *width = units_length (units, hatch->pack_width_mm), *lacking = units_length (units, hatch->lacking_mm);
  g_autofree char *hole = units_length (units, hatch->width_mm);
  return g_strdup_printf (_("The pack does not go through the hatch: the body leaves a hole of %s at its widest, and where it is wide enough for the "
                            "pack's %s it is %s too short. Take a narrower pack, or let it stand where the body is wider."), hole, width, lacking);
}

/* Common practice, no source. */
char *
hatch_carry_text (const Figures *figures)
{
  g_autoptr (GPtrArray) formers = hatch_formers_cut (figures);
  g_autofree char *names = names_text (formers);

  /* Translators: names of formers: "Where it cuts F2, F3 and F4, longerons or a doubler on each side of the hole have to take over the load." */
  return names != NULL ? g_strdup_printf (_("Where it cuts %s, longerons or a doubler on each side of the hole have to take over the load."), names) : NULL;
}

/* As long as the body's edge is along its hole. */
static char *
lid_sentence (const Figures *figures, Units units)
{
  const HatchFigures *hatch = &figures->hatch;
  g_autoptr (HatchCurve) curve = hatch_curve_new (figures);
  const double more = hatch_curve_longer (curve);
  g_autofree char *length = units_length (units, hatch->to_mm - hatch->from_mm), *width = units_length (units, hatch->width_mm);
  g_autofree char *play = units_length (units, 2 * hatch->play_mm), *longer = units_length (units, more);

  if (more > 0)
    /* Translators: behind sentences on where it is: four lengths */
    return g_strdup_printf (_("The hole is %s long as seen from above and %s wide; its lid is %s less both ways, as play, and %s longer, for it follows "
                              "the body's curve."), length, width, play, longer);
  /* Translators: behind sentences on where it is: three lengths, "The hole is 132 mm long and 34 mm wide; its lid is 1 mm less both ways, as play." */
  return g_strdup_printf (_("The hole is %s long and %s wide; its lid is %s less both ways, as play."), length, width, play);
}

char *
hatch_opening_text (const Figures *figures, Units units)
{
  if (!figures->hatch.part)
    return NULL;
  g_autofree char *place = hatch_place_text (figures), *through = hatch_through_text (figures, units);
  g_autofree char *sizes = lid_sentence (figures, units);
  return g_strjoin (" ", place, sizes, through, NULL);
}

void
hatch_note (const Figures *figures, GPtrArray *notes)
{
  const HatchFigures *hatch = &figures->hatch;

  if (!hatch->part)
    return;
  if (hatch->lacking_mm > WORTH_TELLING)
    notes_add (notes, NOTE_LOOK, &hatch->part->piece, _("The hatch for “%s” is too narrow for a pack to go through, since the body leaves no wider "
                                                        "a hole: take a narrower pack, or let it stand where the body is wider."),
               piece_name (&hatch->part->piece));
  g_autoptr (GPtrArray) bars = hatch_bar_texts (figures);
  for (guint i = 0; i < bars->len; i++)
    notes_add (notes, NOTE_LOOK, &hatch->part->piece, "%s", (const char *) bars->pdata[i]);
}
