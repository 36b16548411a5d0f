#include "aero/spacing.h"

#include <math.h>
#include <stdbool.h>
#include <stdlib.h>

/* How much of the cosine there is about the centre line. None, y = tip sin θ, is best for straight wings, hardly worse
 * than this; but a swept wing has its kink there, whose error falls like the width of the innermost strips. */
static const double centre_share = 0.5;
enum { search_halvings = 50 };

/* A stretch between two ends; u runs over it from 0 to 1 in equal steps, a strip each. */
typedef struct {
  double from, to;
  LatticeSpacing kind;
} Piece;

static Piece
piece_of (const double ends[], size_t i, LatticeSpacing kind)
{
  return (Piece) { .from = ends[i], .to = ends[i + 1], .kind = kind };
}

/* The centre line is no end: flow and strips go on beyond it. */
static bool
piece_starts_at_centre (const Piece *piece)
{
  return piece->from == 0;
}

static double
piece_station (const Piece *piece, double u)
{
  if (piece->kind == LATTICE_EVEN)
    return piece->from + (piece->to - piece->from) * u;
  if (piece_starts_at_centre (piece))
    return piece->to * ((1 - centre_share) * sin (M_PI / 2 * u) + centre_share * (1 - cos (M_PI * u)) / 2);
  return (piece->from + piece->to) / 2 - (piece->to - piece->from) / 2 * cos (M_PI * u);
}

static double
piece_place (const Piece *piece, double station)
{
  double low = 0, high = 1;

  for (int i = 0; i < search_halvings; i++)
    {
      const double middle = (low + high) / 2;

      if (piece_station (piece, middle) < station)
        low = middle;
      else
        high = middle;
    }
  return (low + high) / 2;
}

/* Strips beside an end are as wide as half the second derivative of the map there over the square of their count; equal
 * widths on its two sides ask for counts in this ratio. */
static double
piece_weight (const double ends[], size_t i, LatticeSpacing kind)
{
  const Piece piece = piece_of (ends, i, kind);

  if (kind == LATTICE_EVEN)
    return piece.to - piece.from;
  return sqrt (piece_starts_at_centre (&piece) ? piece.to * (1 + centre_share) / 2 : piece.to - piece.from);
}

static double
range_weight (const SpacingWish *wish, const double ends[], LatticeSpacing kind)
{
  double sum = 0;

  for (size_t i = wish->first; i < wish->last; i++)
    sum += piece_weight (ends, i, kind);
  return sum;
}

static bool
wish_covers (const SpacingWish *wish, size_t piece)
{
  return piece >= wish->first && piece < wish->last;
}

/* Half-way from what equal widths give a piece to the most that any surface wishes there. */
static double
raised_share (const double ends[], LatticeSpacing kind, const SpacingWish wishes[], size_t count, size_t piece)
{
  const double weight = piece_weight (ends, piece, kind);
  const double equal = wishes[0].strips * weight / range_weight (&wishes[0], ends, kind);
  double most = equal;

  for (size_t k = 1; k < count; k++)
    if (wish_covers (&wishes[k], piece))
      most = fmax (most, wishes[k].strips * weight / range_weight (&wishes[k], ends, kind));
  return (equal + most) / 2;
}

/* What is left of the first surface's strips for a piece whose share nobody raised, when the others have theirs. */
static double
left_over (const double ends[], LatticeSpacing kind, const SpacingWish wishes[], size_t count)
{
  const double density = wishes[0].strips / range_weight (&wishes[0], ends, kind);
  double raised = 0, equal = 0;

  for (size_t i = wishes[0].first; i < wishes[0].last; i++)
    {
      const double own = density * piece_weight (ends, i, kind), share = raised_share (ends, kind, wishes, count, i);

      if (share > own)
        raised += share;
      else
        equal += own;
    }
  return equal > 0 ? (wishes[0].strips - raised) / equal : 1;
}

void
spacing_share_out (const double ends[], size_t end_count, LatticeSpacing kind, const SpacingWish wishes[], size_t count,
                   int strips[])
{
  const double density = wishes[0].strips / range_weight (&wishes[0], ends, kind);
  const double left = fmax (0.5, left_over (ends, kind, wishes, count));
  double wanted = 0, total = 0;
  int given = 0;

  for (int pass = 0; pass < 2; pass++)
    for (size_t i = 0; i + 1 < end_count; i++)
      {
        const double own = density * piece_weight (ends, i, kind), raised = raised_share (ends, kind, wishes, count, i);
        const double share = raised > own ? raised : left * own;

        if (!wish_covers (&wishes[0], i))
          strips[i] = (int) fmax (1, round (raised));
        else if (pass == 0)
          total += share;
        else
          {
            wanted += share * wishes[0].strips / total;
            strips[i] = (int) fmax (1, round (wanted) - given);
            given += strips[i];
          }
      }
}

static int
compare_kinks (const void *a, const void *b)
{
  const SpacingKink *left = a, *right = b;

  if (left->strength != right->strength)
    return left->strength > right->strength ? -1 : 1;
  return (left->station > right->station) - (left->station < right->station);
}

/* Gives each kink the strip edge nearest to it, unless a stronger one or an end has it. pinned[j] is the place u of edge
 * j, NaN where it is free. */
static void
pin_kinks (const Spacing *self, const Piece *piece, int strips, double pinned[])
{
  for (int j = 1; j < strips; j++)
    pinned[j] = NAN;
  pinned[0] = 0;
  pinned[strips] = 1;
  for (size_t i = 0; i < self->kink_count; i++)
    if (self->kinks[i].station > piece->from && self->kinks[i].station < piece->to)
      {
        const double u = piece_place (piece, self->kinks[i].station);
        const int edge = (int) round (u * strips);

        if (isnan (pinned[edge]))
          pinned[edge] = u;
      }
}

/* The next pinned edge after j, or -1. */
static int
next_pinned (const double pinned[], int strips, int j)
{
  for (int next = j + 1; next <= strips; next++)
    if (!isnan (pinned[next]))
      return next;
  return -1;
}

/* Slope of a monotone cubic at a pinned edge between the secants before and after it (Fritsch and Butland, SIAM J. Sci.
 * Stat. Comput. 5, 1984): widths of strips change without a jump there. */
static double
joint_slope (double before, double after, double before_length, double after_length)
{
  const double weight = (1 + after_length / (before_length + after_length)) / 3;

  return before * after / (weight * after + (1 - weight) * before);
}

static double
cubic_at (const double u[2], const double slope[2], double length, double t)
{
  const double rise = u[1] - u[0];

  return u[0] + t * t * (3 - 2 * t) * rise + length * t * (1 - t) * ((1 - t) * slope[0] - t * slope[1]);
}

/* How much narrower than their places alone ask for strips stand beside the kink that is pinned at u: by half where the chord steps,
 * which is a very strong kink, for a vortex trails from there as from a tip. */
static double
kink_narrowing (const Spacing *self, const Piece *piece, double u)
{
  const double station = piece_station (piece, u), tolerance = 1e-9 * (piece->to - piece->from);

  for (size_t i = 0; i < self->kink_count && self->kind != LATTICE_EVEN; i++)
    if (fabs (self->kinks[i].station - station) < tolerance)
      return 1 / (1 + fmin (self->kinks[i].strength, 1));
  return 1;
}

/* One stretch between pinned edges a and b, its end slopes given. */
static void
fill_stretch (const Piece *piece, const int ends[2], const double u[2], const double slope[2], double edges[],
              double controls[])
{
  const int length = ends[1] - ends[0];

  for (int j = 0; j < length; j++)
    {
      edges[ends[0] + j] = piece_station (piece, cubic_at (u, slope, length, j / (double) length));
      controls[ends[0] + j] = piece_station (piece, cubic_at (u, slope, length, (j + 0.5) / length));
    }
}

static void
fill_piece (const Spacing *self, const Piece *piece, int strips, const double pinned[], double edges[], double controls[])
{
  int ends[2] = { 0, next_pinned (pinned, strips, 0) };
  double slope[2];

  slope[0] = (pinned[ends[1]] - pinned[0]) / ends[1];
  while (ends[1] > 0)
    {
      const int after = next_pinned (pinned, strips, ends[1]);
      const double u[2] = { pinned[ends[0]], pinned[ends[1]] };
      const double secant = (u[1] - u[0]) / (ends[1] - ends[0]);

      slope[1] = after < 0 ? secant
        : kink_narrowing (self, piece, u[1]) * joint_slope (secant, (pinned[after] - u[1]) / (after - ends[1]), ends[1] - ends[0],
                                                            after - ends[1]);
      fill_stretch (piece, ends, u, slope, edges, controls);
      ends[0] = ends[1];
      ends[1] = after;
      slope[0] = slope[1];
    }
}

void
spacing_fill (const Spacing *self, double pinned[], double edges[], double controls[])
{
  size_t at = 0;

  if (self->kink_count > 1)
    qsort (self->kinks, self->kink_count, sizeof *self->kinks, compare_kinks);
  for (size_t i = 0; i + 1 < self->end_count; i++)
    {
      const Piece piece = piece_of (self->ends, i, self->kind);

      pin_kinks (self, &piece, self->strips[i], pinned);
      fill_piece (self, &piece, self->strips[i], pinned, edges + at, controls + at);
      at += (size_t) self->strips[i];
    }
  edges[at] = self->ends[self->end_count - 1];
}
