#include "figures/movers.h"

#include <math.h>
#include "balance/slide.h"
#include "document/part-box.h"
#include "figures/margin-words.h"
#include "figures/surface-figures.h"

/* mm: nobody sees less on the bench. What differs by less than the second is equal: processors differ in the last bits. Less than the
 * third is no whole millimetre, which is what people are told. */
static const double NOTHING = 0.05, EQUAL = 1e-3, TOLD = 0.5;

static double
wanted_x (const Figures *figures, const Part *part, double off_mm)
{
  return part->mass > 0 ? part->x - figures->mass.total_g * off_mm / part->mass : NAN;
}

/* The place nearest to x among those where the part may be. */
static double
reach_in (const GArray *places, const Part *part, double x)
{
  double best = part->x;
  bool found = false;

  for (guint i = 0; i < places->len; i++)
    {
      const PartPlaces *at = &g_array_index (places, PartPlaces, i);
      const double place = fmin (fmax (x, at->x_from), at->x_to);
      if (!found || fabs (place - x) < fabs (best - x))
        best = place;
      found = true;
    }
  return best;
}

static double
wanted_mass (const Figures *figures, const Part *part, double target)
{
  const double rest = figures->mass.total_g - part->mass;
  const double x = rest > 0 ? (figures->mass.total_g * figures->mass.x_mm - part->mass * part->x) / rest : NAN;
  const double mass = rest * (x - target) / (target - part->x);

  return mass > 0 && isfinite (mass) ? mass : NAN;
}

/* Whether a part that nothing says may move could be there at all: in the chord of the surface that it is fixed to, at its station, else in
 * the body's length. One that stands out already may. */
static bool
is_on_board (const Figures *figures, const Part *part, double x)
{
  const Surface *surface = part->of ? aeroplane_surface_by_id (figures->aeroplane, part->of) : NULL;
  const double half = part_extent (part).x / 2;
  double from = figures->nose_x_mm, to = figures->tail_x_mm;
  StationCut cut;

  if (surface && surface_is_horizontal (surface)
      && planform_cut (surface->outline, surface_sides (surface), fabs (part->y), &cut) == CORE_OK)
    {
      from = cut.leading_x;
      to = cut.trailing_x;
    }
  return x >= fmin (from + half, part->x) && x <= fmax (to - half, part->x);
}

static Mover
mover_of (const Figures *figures, const Part *part, double off_mm, PlacesMemo *memo)
{
  const double total = figures->mass.total_g, x = wanted_x (figures, part, off_mm);
  Mover made = { .part = part, .moment_g_mm = part->mass * (part->x - figures->mass.x_mm), .share = part->mass / total,
                 .wanted_x_mm = x, .can_move = part_is_movable (part), .reach_x_mm = part->x, .left_mm = off_mm,
                 .wanted_g = wanted_mass (figures, part, figures->balance.advised_x_mm) };

  if (made.can_move && isfinite (x))
    made.reach_x_mm = reach_in (places_memo_of (memo, figures->aeroplane, part), part, x);
  made.told_x_mm = made.can_move ? made.reach_x_mm : is_on_board (figures, part, x) ? x : NAN;
  made.left_mm = off_mm + part->mass * (made.reach_x_mm - part->x) / total;
  if (fabs (made.left_mm) < NOTHING)
    made.left_mm = 0;
  made.balances = made.can_move && fabs (made.left_mm) < TOLD;
  return made;
}

static int
compare_lengths (double a, double b)
{
  return (a > b + EQUAL) - (a < b - EQUAL);
}

static int
more_useful_first (const void *a, const void *b)
{
  const Mover *one = a, *other = b;
  const int left = compare_lengths (fabs (one->left_mm), fabs (other->left_mm));
  const int way = compare_lengths (fabs (one->wanted_x_mm - one->part->x), fabs (other->wanted_x_mm - other->part->x));

  if (one->can_move != other->can_move)
    return one->can_move ? -1 : 1;
  if (one->can_move && left)
    return left;
  if (isnan (one->told_x_mm) != isnan (other->told_x_mm))
    return isnan (one->told_x_mm) ? 1 : -1;
  return way ? way : (one->number > other->number) - (one->number < other->number);
}

double
movers_other (const Figures *figures, const Part *first, double first_x_mm, const Part *second)
{
  const double off = figures->mass.x_mm + first->mass * (first_x_mm - first->x) / figures->mass.total_g - figures->balance.advised_x_mm;

  return wanted_x (figures, second, off);
}

/* How many may move: they stand first. */
static size_t
movable_count (const Movers *self)
{
  size_t count = 0;

  while (count < self->count && self->of[count].can_move)
    count++;
  return count;
}

/* The first two, by usefulness, that do together what none does alone. */
static void
find_pair (Movers *self, const Figures *figures, PlacesMemo *memo)
{
  const size_t count = movable_count (self);

  for (size_t i = 0; i < count; i++)
    for (size_t k = 0; k < count; k++)
      {
        const Mover *first = &self->of[i], *second = &self->of[k];
        const double x = k == i ? NAN : movers_other (figures, first->part, first->reach_x_mm, second->part);
        const GArray *places = places_memo_of (memo, figures->aeroplane, second->part);
        if (!isfinite (x) || fabs (reach_in (places, second->part, x) - x) > NOTHING)
          continue;
        self->has_pair = true;
        self->pair = (MoverPair) { first, second, first->reach_x_mm, x };
        return;
      }
}

double
movers_added_mm (const Figures *figures, double grams, double x_mm)
{
  return grams * (x_mm - figures->mass.x_mm) / (figures->mass.total_g + grams);
}

static void
find_ballast (Movers *self, const Figures *figures)
{
  const double target = figures->balance.advised_x_mm;
  const SlideCase wanted = { .target_x = target, .nose_x = figures->nose_x_mm, .tail_x = figures->tail_x_mm };

  if (fabs (self->off_mm) < NOTHING)
    {
      self->ballast_g = 0;
      return;
    }
  if (ballast_solve (&wanted, figures->mass.total_g, figures->mass.x_mm, &self->ballast_g, &self->ballast_x_mm) == CORE_OK)
    {
      self->gram_mm = movers_added_mm (figures, 1, self->ballast_x_mm);
      self->some_mm = movers_added_mm (figures, MOVERS_SOME_G, self->ballast_x_mm);
    }
}

/* What people are told of where no moving does it. */
static void
find_told (Movers *self, const Figures *figures)
{
  if (!(self->ballast_g > 0) || self->has_pair || (self->count && self->of[0].balances))
    return;
  self->told = ballast_told_of (figures, NULL);
  self->told_some_mm = movers_added_mm (figures, MOVERS_SOME_G, self->told.x_mm);
}

Movers
movers_of_remembered (const Figures *figures, PlacesMemo *memo)
{
  const Aeroplane *aeroplane = figures->aeroplane;
  const size_t all = aeroplane_count (aeroplane, PIECE_PART);
  Movers self = { .of = g_new (Mover, all), .off_mm = figures->mass.x_mm - figures->balance.advised_x_mm, .ballast_g = NAN,
                  .ballast_x_mm = NAN, .gram_mm = NAN, .some_mm = NAN };

  if (!isfinite (self.off_mm))
    return self;
  self.margin = margin_advised_phrase (figures);
  places_memo_turn (memo, aeroplane);
  for (size_t i = 0; i < all; i++)
    if (aeroplane_part (aeroplane, i)->aboard && aeroplane_part (aeroplane, i)->mass > 0)
      {
        self.of[self.count] = mover_of (figures, aeroplane_part (aeroplane, i), self.off_mm, memo);
        self.of[self.count++].number = i;
      }
  if (self.count)         /* without parts there is no array */
    qsort (self.of, self.count, sizeof *self.of, more_useful_first);
  find_ballast (&self, figures);
  if (self.count && !self.of[0].balances)
    find_pair (&self, figures, memo);
  find_told (&self, figures);
  return self;
}

Movers
movers_of (const Figures *figures)
{
  g_autoptr (PlacesMemo) memo = places_memo_new ();

  return movers_of_remembered (figures, memo);
}

void
movers_clear (Movers *self)
{
  g_free (self->of);
  g_free (self->margin);
  *self = (Movers) { .count = 0 };
}
