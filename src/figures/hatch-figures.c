#include "figures/hatch-figures.h"

#include <math.h>
#include "balance/hatch.h"
#include "balance/slide.h"
#include "document/part-box.h"
#include "document/part-class.h"
#include "figures/figures.h"
#include "figures/hatch-ends.h"
#include "figures/hatch-shape.h"

static const double metre = 1e-3, kilogram = 1e-3;        /* of a mm, of a g */

static bool
is_pack (const Part *part)
{
  return part_is_a (part, "battery") && part->has_rail && part->mass > 0;
}

/* The first battery aboard. */
static const Solution *
solution_aboard (const Figures *figures)
{
  for (size_t i = 0; i < figures->solution_count; i++)
    if (is_pack (figures->solutions[i].part) && figures->solutions[i].part->aboard && isfinite (figures->solutions[i].x_mm))
      return &figures->solutions[i];
  return NULL;
}

/* The pack in the place of the one aboard. */
static SlideCase
case_instead (const Figures *figures, const Part *pack, const Part *aboard)
{
  const double rest = figures->mass.total_g - aboard->mass, total = rest + pack->mass;
  const double moment = figures->mass.total_g * figures->mass.x_mm - aboard->mass * aboard->x + pack->mass * pack->x;

  return (SlideCase) { .part_mass = pack->mass * kilogram, .part_x = pack->x * metre, .rail_from = pack->rail_from * metre,
                       .rail_to = pack->rail_to * metre, .total_mass = total * kilogram, .total_x = moment / total * metre,
                       .target_x = figures->balance.advised_x_mm * metre, .forward_limit_x = figures->balance.forward_limit_x_mm * metre,
                       .aft_limit_x = figures->balance.aft_limit_x_mm * metre, .nose_x = figures->nose_x_mm * metre,
                       .tail_x = figures->tail_x_mm * metre };
}

static HatchPack
pack_of (const Figures *figures, const Part *pack, const Solution *aboard)
{
  const SlideCase wanted = case_instead (figures, pack, aboard->part);
  const double spread = 2 * aboard->x_sigma_mm * aboard->part->mass / pack->mass;
  const Point extent = part_extent (pack);
  HatchPack made = { .length = extent.x * metre, .width = extent.y * metre, .spread_from = (isfinite (spread) ? spread : 0) * metre,
                     .leads_aft = fabs (remainder (pack->turn, 360)) > 90 };
  SlideAnswer answer = { .x = NAN, .band_from = NAN, .band_to = NAN };

  slide_solve (&wanted, &answer);
  made.band_from = isfinite (answer.band_from) ? answer.band_from : fmin (fmax (answer.x, wanted.rail_from), wanted.rail_to);
  made.band_to = isfinite (answer.band_to) ? answer.band_to : made.band_from;
  /* The rail is where the pack can be at all. */
  made.spread_to = fmin (made.spread_from, wanted.rail_to - made.band_to);
  made.spread_from = fmin (made.spread_from, made.band_from - wanted.rail_from);
  return made;
}

/* More are no harm. */
enum { FORMERS_USUAL = 24 };

/* Of all bodies, by their places. */
static GArray *
formers_of (const Aeroplane *aeroplane, GPtrArray *named)
{
  GArray *places = g_array_sized_new (FALSE, FALSE, sizeof (double), FORMERS_USUAL);

  for (size_t b = 0; b < aeroplane_count (aeroplane, PIECE_BODY); b++)
    for (size_t i = 0; i < aeroplane_body (aeroplane, b)->former_count; i++)
      {
        g_array_append_val (places, aeroplane_body (aeroplane, b)->formers[i].place);
        g_ptr_array_add (named, &aeroplane_body (aeroplane, b)->formers[i]);
      }
  return places;
}

static void
find_formers (HatchFigures *made, const Aeroplane *aeroplane)
{
  g_autoptr (GPtrArray) named = g_ptr_array_new_full (FORMERS_USUAL, NULL);
  g_autoptr (GArray) places = formers_of (aeroplane, named);
  const double *from = (const double *) (void *) places->data;
  const size_t ahead = hatch_line_outward (from, places->len, made->from_mm, false), behind = hatch_line_outward (from, places->len, made->to_mm, true);

  made->former_from = ahead < named->len && !(from[ahead] < made->firewall_x_mm) ? g_ptr_array_index (named, ahead) : NULL;
  made->former_to = behind < named->len ? g_ptr_array_index (named, behind) : NULL;
}

bool
hatch_nearest_former (const Aeroplane *aeroplane, double x, const NamedPlace **former, double *behind)
{
  *former = NULL;
  for (size_t b = 0; b < aeroplane_count (aeroplane, PIECE_BODY); b++)
    {
      const Body *body = aeroplane_body (aeroplane, b);

      for (size_t i = 0; i < body->former_count; i++)
        if (!*former || fabs (body->formers[i].place - x) < fabs ((*former)->place - x))
          *former = &body->formers[i];
    }
  *behind = *former ? x - (*former)->place : NAN;
  return *former != NULL;
}

/* Of packs the one that most of the hole is too narrow for. */
static void
look_through (HatchFigures *made, const HatchPack packs[], size_t count)
{
  made->lacking_mm = -INFINITY;
  for (size_t i = 0; i < count; i++)
    {
      const double width = packs[i].width / metre, lacking = packs[i].length / metre - hatch_stretch (made, width + HATCH_PASS / metre);

      if (!(lacking > made->lacking_mm))
        continue;
      made->lacking_mm = lacking;
      made->pack_width_mm = width;
    }
  made->lacking_mm = fmax (made->lacking_mm, 0);
}

static HatchFigures
figures_from (const Figures *figures, const Part *aboard, const GArray *packs, const Hatch *hatch, const RoomProfiles *bodies)
{
  HatchFigures made = { .part = aboard, .packs = packs->len, .from_mm = hatch->from / metre, .to_mm = hatch->to / metre,
                        .width_mm = hatch->width / metre, .pack_mm = NAN, .places_mm = NAN, .spread_mm = NAN,
                        .rail_ahead_mm = NAN, .rail_behind_mm = NAN, .firewall_x_mm = NAN, .floor_from_mm = hatch->floor_from / metre, .floor_to_mm = hatch->floor_to / metre,
                        .play_mm = HATCH_PLAY / metre };
  const size_t body = room_body_of (bodies, aboard);

  if (body < bodies->count)
    made.body = aeroplane_body (figures->aeroplane, body);
  hatch_end_behind_firewalls (&made, figures->aeroplane, bodies);
  hatch_end_at_formers (&made, figures->aeroplane);
  hatch_narrow (&made, made.body ? bodies->profiles[body] : NULL);
  look_through (&made, (const HatchPack *) (void *) packs->data, packs->len);
  find_formers (&made, figures->aeroplane);
  return made;
}

/* Where the part would have to be for all to balance at x, rail or no rail, mm. */
static double
place_for (const Figures *figures, const Solution *aboard, double x)
{
  return aboard->x_mm + (x - figures->balance.advised_x_mm) * figures->mass.total_g / aboard->part->mass;
}

static void
fill_length (HatchFigures *made, const Figures *figures, const Solution *aboard, const HatchPack *pack)
{
  const double spread = isfinite (aboard->x_sigma_mm) ? 2 * aboard->x_sigma_mm : 0;

  if (made->packs != 1)
    return;
  made->pack_mm = pack->length / metre;
  made->places_mm = (pack->band_to - pack->band_from) / metre;
  made->spread_mm = (pack->spread_from + pack->spread_to) / metre;
  if (isnan (aboard->band_from_mm))
    return;
  made->rail_ahead_mm = place_for (figures, aboard, figures->balance.forward_limit_x_mm) - spread - aboard->part->rail_from;
  made->rail_behind_mm = aboard->part->rail_to - place_for (figures, aboard, figures->balance.aft_limit_x_mm) - spread;
}

HatchFigures
hatch_figures_of (const Figures *figures, const RoomProfiles *bodies)
{
  const HatchFigures none = { .from_mm = NAN, .to_mm = NAN, .width_mm = NAN, .from_width_mm = NAN, .to_width_mm = NAN, .full_from_mm = NAN,
                              .full_to_mm = NAN, .pack_width_mm = NAN, .lacking_mm = NAN, .floor_from_mm = NAN, .floor_to_mm = NAN, .play_mm = NAN,
                              .pack_mm = NAN, .places_mm = NAN, .spread_mm = NAN, .rail_ahead_mm = NAN, .rail_behind_mm = NAN, .firewall_x_mm = NAN };
  const Solution *aboard = solution_aboard (figures);
  g_autoptr (GArray) packs = g_array_new (FALSE, FALSE, sizeof (HatchPack));
  Hatch hatch;

  if (!aboard)
    return none;
  for (size_t i = 0; i < figures->solution_count; i++)
    {
      const Part *part = figures->solutions[i].part;
      HatchPack pack;

      if (part != aboard->part && (part->aboard || !is_pack (part)))
        continue;
      pack = pack_of (figures, part, aboard);
      g_array_append_val (packs, pack);
    }
  if (hatch_opening ((const HatchPack *) (void *) packs->data, packs->len, &hatch) != CORE_OK)
    return none;
  HatchFigures made = figures_from (figures, aboard->part, packs, &hatch, bodies);
  fill_length (&made, figures, aboard, &g_array_index (packs, HatchPack, 0));
  return made;
}
