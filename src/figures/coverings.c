#include "figures/coverings.h"

#include <math.h>
#include "document/part-class.h"
#include "figures/covered.h"
#include "figures/loads.h"
#include "figures/part-places.h"
#include "figures/structure-figures.h"

/* mm: nobody sees less on the bench. g, g mm: the last bits of a processor. */
static const double NOTHING = 0.05, BITS = 1e-9;

/* Moments about the place that the balance is wanted at, g mm; where none is advised, about the balance point. */
typedef struct { const Figures *figures; double about_x; } Scale;

/* What of all that is looked at is there now, or with another covering. */
typedef struct { double mass, moment, covering; } Weight;

static bool
is_tail (const Piece *piece)
{
  const Surface *surface = (const Surface *) piece;

  return piece->kind == PIECE_SURFACE && (surface->role == ROLE_TAILPLANE || surface->role == ROLE_FIN);
}

/* A surface or body that is looked at. */
typedef struct { const Piece *piece; Spread spread; } Coverable;

static bool
is_within (CoveringWhere where, const Piece *piece)
{
  if (!piece->id || (piece->kind != PIECE_SURFACE && piece->kind != PIECE_BODY))
    return false;
  if (where.scope == COVERING_PIECE)
    return piece == where.of;
  return where.scope == COVERING_ALL || is_tail (piece);
}

/* All that is looked at and traced, of Coverable. */
static GArray *
pieces_within (const Figures *figures, CoveringWhere where)
{
  GArray *pieces = g_array_new (FALSE, FALSE, sizeof (Coverable));

  for (size_t i = 0; i < aeroplane_piece_count (figures->aeroplane); i++)
    {
      const Piece *piece = aeroplane_piece (figures->aeroplane, i);

      if (!is_within (where, piece))
        continue;
      const Coverable one = { piece, spread_of_id (figures, piece->id) };
      if (one.spread.status == CORE_OK && one.spread.traced[TRACED_SKIN] > 0)
        g_array_append_val (pieces, one);
    }
  return pieces;
}

static const Structure *
structure_on (const Aeroplane *aeroplane, const GArray *pieces, guint i)
{
  return aeroplane_structure_of (aeroplane, g_array_index (pieces, Coverable, i).piece->id);
}

GArray *
covering_wheres (const Figures *figures)
{
  GArray *wheres = g_array_new (FALSE, FALSE, sizeof (CoveringWhere));
  const CoveringWhere all = { COVERING_ALL, NULL }, tail = { COVERING_TAIL, NULL };
  g_autoptr (GArray) pieces = pieces_within (figures, all), tails = pieces_within (figures, tail);

  if (pieces->len > 1)
    g_array_append_val (wheres, all);
  if (tails->len > 1)
    g_array_append_val (wheres, tail);
  for (guint i = 0; i < pieces->len; i++)
    {
      const CoveringWhere one = { COVERING_PIECE, g_array_index (pieces, Coverable, i).piece };
      g_array_append_val (wheres, one);
    }
  return wheres;
}

static void
add_load (Weight *sum, const Scale *scale, double mass_g, double x_mm)
{
  sum->mass += mass_g;
  sum->moment += mass_g * (x_mm - scale->about_x);
}

static void
add_reckoned (Weight *sum, const Scale *scale, const Coverable *on, const StructureFigures *weighed)
{
  const SurfaceFigures *reference = scale->figures->reference;
  MassItem item;

  if (load_of_structure (weighed, &on->spread, reference ? reference->planform.mac : NAN, &item) == CORE_OK)
    add_load (sum, scale, item.mass * 1e3, item.x * 1e3);
  sum->covering += structure_covering_g (weighed);
}

/* As reckoned, like what it is compared with: a bare airframe on the scale says nothing of the difference. */
static void
add_present (Weight *sum, const Scale *scale, const Coverable *on)
{
  const Structure *structure = aeroplane_structure_of (scale->figures->aeroplane, on->piece->id);
  const StructureFigures *weighed = structure ? figures_of_structure (scale->figures, structure) : NULL;

  if (weighed)
    add_reckoned (sum, scale, on, weighed);
}

static void
add_covered (Weight *sum, const Scale *scale, const Coverable *on, const MaterialClass *covering)
{
  const Structure *old = aeroplane_structure_of (scale->figures->aeroplane, on->piece->id);
  Structure *next = structure_covered (old, on->piece, &on->spread, covering);
  StructureFigures weighed = structure_figures_of (next, &on->spread);

  add_reckoned (sum, scale, on, &weighed);
  g_clear_pointer (&weighed.items_g, g_array_unref);
  piece_unref (&next->piece);
}

/* The battery is what is moved; else what moves the balance most. */
static const Part *
find_part (const Aeroplane *aeroplane)
{
  const Part *best = NULL;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (aeroplane, i);
      const bool battery = part_is_a (part, "battery"), had = best && part_is_a (best, "battery");

      if (part->aboard && part->mass > 0 && (battery || part_is_movable (part)) && (!best || battery > had
          || (battery == had && part->mass > best->mass)))
        best = part;
    }
  return best;
}

static bool
reaches (const Figures *figures, const Part *part, double x)
{
  g_autoptr (GArray) places = part_places (figures->aeroplane, part);

  for (guint i = 0; i < places->len; i++)
    if (x > g_array_index (places, PartPlaces, i).x_from - NOTHING && x < g_array_index (places, PartPlaces, i).x_to + NOTHING)
      return true;
  return false;
}

/* Whether its lines of covering, of which there is one at least, are all of that one. */
static bool
has_covering (const Structure *structure, const MaterialClass *covering)
{
  bool has = false;

  for (size_t i = 0; structure && i < structure->item_count; i++)
    {
      if (!structure_item_covers (&structure->items[i]))
        continue;
      if (g_strcmp0 (structure->items[i].material, covering->word) != 0)
        return false;
      has = true;
    }
  return has;
}

static bool
all_have (const Aeroplane *aeroplane, const GArray *pieces, const MaterialClass *covering)
{
  for (guint i = 0; i < pieces->len; i++)
    if (!has_covering (structure_on (aeroplane, pieces, i), covering))
      return false;
  return true;
}

static double
without_bits (double value)
{
  return fabs (value) < BITS ? 0 : value;
}

static CoveringFigures
covering_of (const Scale *scale, const Part *part, const Weight *now, const Weight *then)
{
  const Figures *figures = scale->figures;
  const double moment = without_bits (then->moment - now->moment), change = without_bits (then->mass - now->mass);
  const double total = figures->mass.total_g + change;
  const double off = figures->mass.total_g * (figures->mass.x_mm - scale->about_x) + moment;
  CoveringFigures made = { .mass_g = then->covering, .change_g = change, .part_way_mm = NAN, .nose_g = NAN };

  made.balance_x_mm = scale->about_x + off / total;
  made.balance_way_mm = without_bits (made.balance_x_mm - figures->mass.x_mm);
  if (part)
    {
      made.part_way_mm = -moment / part->mass;
      made.part_reaches = reaches (figures, part, part->x - off / part->mass);
    }
  if (scale->about_x > figures->nose_x_mm)
    made.nose_g = moment / (scale->about_x - figures->nose_x_mm);
  return made;
}

static int
lighter_first (const void *a, const void *b)
{
  const double one = ((const CoveringFigures *) a)->covering->area_density, other = ((const CoveringFigures *) b)->covering->area_density;

  return (one > other) - (one < other);
}

static void
add_kind (Coverings *self, const Scale *scale, const GArray *pieces, const Weight *now, const MaterialClass *covering)
{
  Weight then = { 0 };

  for (guint i = 0; i < pieces->len; i++)
    add_covered (&then, scale, &g_array_index (pieces, Coverable, i), covering);
  self->of[self->count] = covering_of (scale, self->part, now, &then);
  self->of[self->count].covering = covering;
  self->of[self->count].mass_sigma_g = covering->spread * then.covering;
  self->of[self->count++].present = all_have (scale->figures->aeroplane, pieces, covering);
}

Coverings
coverings_of (const Figures *figures, CoveringWhere where)
{
  const double advised = figures->balance.advised_x_mm;
  const Scale scale = { figures, isnan (advised) ? figures->mass.x_mm : advised };
  g_autoptr (GArray) pieces = pieces_within (figures, where);
  Coverings self = { .where = where, .part = find_part (figures->aeroplane) };
  Weight now = { 0 };

  for (guint i = 0; i < pieces->len; i++)
    add_present (&now, &scale, &g_array_index (pieces, Coverable, i));
  self.present_g = now.covering;
  self.bare = !(now.covering > 0);
  for (const MaterialClass *class = material_classes (); pieces->len && class->word; class++)
    if (class->covers && self.count < COVERINGS_MOST)
      add_kind (&self, &scale, pieces, &now, class);
  qsort (self.of, self.count, sizeof *self.of, lighter_first);
  return self;
}

/* Takes `now`. */
static Aeroplane *
cover (Aeroplane *now, const Coverable *on, const MaterialClass *covering)
{
  const Structure *old = aeroplane_structure_of (now, on->piece->id);
  Structure *next = structure_covered (old, on->piece, &on->spread, covering);
  Aeroplane *then;

  if (old)
    then = aeroplane_with_replaced (now, &old->piece, &next->piece);
  else
    {
      g_autofree char *stem = g_strdup_printf ("%s-structure", on->piece->id);
      next->piece.id = aeroplane_free_id (now, stem);
      then = aeroplane_with_added (now, &next->piece);
    }
  aeroplane_unref (now);
  return then;
}

Aeroplane *
covering_chosen (const Figures *figures, CoveringWhere where, const MaterialClass *covering)
{
  g_autoptr (GArray) pieces = pieces_within (figures, where);
  Aeroplane *now = pieces->len ? aeroplane_ref (figures->aeroplane) : NULL;

  for (guint i = 0; i < pieces->len; i++)
    now = cover (now, &g_array_index (pieces, Coverable, i), covering);
  return now;
}
