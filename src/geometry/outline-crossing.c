#include "geometry/chords.h"
#include "geometry/outline-private.h"
#include "geometry/strands.h"

/* Of the outline's larger side: bits of a run this flat are taken for straight, and places this near for the same. */
static const double FLAT = 1e-10;
/* An outline that lies upon itself meets itself everywhere; after this many meetings without a crossing the search ends. */
enum { MOST_MEETINGS = 1024 };

typedef struct {
  const Outline *outline;
  double size;
  size_t meetings_left;
  bool drawn_only;            /* the closing line counts for nothing */
  Point settled;              /* about this place, so far around, the two pieces at hand are known to keep their sides */
  double settled_radius;
  OutlineFault *fault;
} Search;

/** A bit of a piece: it lies within `sagitta` of the straight line between its ends. */
typedef struct {
  size_t stretch;
  double t[2];
  Point ends[2];
  double sagitta;
} Bit;

static Bit
bit_between (const Search *search, size_t stretch, const double t[2], const Point ends[2])
{
  return (Bit) { .stretch = stretch, .t = { t[0], t[1] }, .ends = { ends[0], ends[1] },
                 .sagitta = stretch_sagitta (&search->outline->stretches[stretch], t[0], t[1]) };
}

static void
bit_halve (const Search *search, const Bit *bit, Bit halves[2])
{
  const double middle = (bit->t[0] + bit->t[1]) / 2;
  const Point place = stretch_at (&search->outline->stretches[bit->stretch], middle);

  halves[0] = bit_between (search, bit->stretch, (const double[]) { bit->t[0], middle }, (const Point[]) { bit->ends[0], place });
  halves[1] = bit_between (search, bit->stretch, (const double[]) { middle, bit->t[1] }, (const Point[]) { place, bit->ends[1] });
}

/* Whether b begins where a ends. */
static bool
bits_follow (const Search *search, const Bit *a, const Bit *b)
{
  if (a->stretch == b->stretch)
    return a->t[1] == b->t[0];
  return a->t[1] >= 1 && b->t[0] <= 0 && (a->stretch + 1) % (search->outline->count + 1) == b->stretch;
}

/* Seen from the end they share, each bit lies within a cone about its chord, as wide as its slope can turn; cones that are
 * apart meet nowhere else. */
static bool
bits_part (const Bit *a, const Bit *b)
{
  const Point back = point_sub (a->ends[0], a->ends[1]), onwards = point_sub (b->ends[1], b->ends[0]);
  const double sine_a = 4 * a->sagitta / point_length (back), sine_b = 4 * b->sagitta / point_length (onwards);

  return sine_a < 1 && sine_b < 1
         && atan2 (fabs (point_cross (back, onwards)), point_dot (back, onwards)) > (sine_a + sine_b) * (M_PI / 2);
}

static bool
meeting_is_crossing (Search *search, const Bit *a, const Bit *b, double s, double u)
{
  Station first = { .stretch = a->stretch, .t = a->t[0] + s * (a->t[1] - a->t[0]) };
  Station second = { .stretch = b->stretch, .t = b->t[0] + u * (b->t[1] - b->t[0]) };

  search->settled = stretch_at (&search->outline->stretches[first.stretch], first.t);
  search->meetings_left--;
  if (!strands_change_sides (search->outline, first, second, search->size, &search->settled_radius))
    return false;
  *search->fault = (OutlineFault) { .segment_a = first.stretch, .segment_b = second.stretch, .place = search->settled };
  return true;
}

static bool
bit_is_settled (const Search *search, const Bit *bit)
{
  return point_distance (bit->ends[0], search->settled) + bit->sagitta < search->settled_radius
         && point_distance (bit->ends[1], search->settled) + bit->sagitta < search->settled_radius;
}

static bool
bits_cross (Search *search, const Bit *a, const Bit *b)
{
  const double sagitta = a->sagitta + b->sagitta, flat = FLAT * search->size;
  const bool follow = bits_follow (search, a, b), precede = bits_follow (search, b, a);
  double s, u;
  Bit halves[2];

  if (search->meetings_left == 0 || chords_distance (a->ends, b->ends, &s, &u) > sagitta + flat)
    return false;
  if (bit_is_settled (search, a) && bit_is_settled (search, b))
    return false;
  if ((follow && bits_part (a, b)) || (precede && bits_part (b, a)))
    return false;
  if (sagitta <= flat)
    return !follow && !precede && meeting_is_crossing (search, a, b, s, u);
  if (a->sagitta >= b->sagitta)
    {
      bit_halve (search, a, halves);
      return bits_cross (search, &halves[0], b) || bits_cross (search, &halves[1], b);
    }
  bit_halve (search, b, halves);
  return bits_cross (search, a, &halves[0]) || bits_cross (search, a, &halves[1]);
}

/* Pieces that follow each other and stand on two sides of a straight line meet in their common end alone. */
static bool
boxes_part (const Box *a, const Box *b)
{
  return a->max.x <= b->min.x || b->max.x <= a->min.x || a->max.y <= b->min.y || b->max.y <= a->min.y;
}

static bool
pieces_cross (Search *search, size_t i, size_t j)
{
  const size_t count = search->outline->piece_count;
  const Piece *a = &search->outline->pieces[i], *b = &search->outline->pieces[j];
  const bool neighbours = j == i + 1 || (i == 0 && j == count - 1);

  if (search->drawn_only && b->stretch == search->outline->count)      /* the closing line's piece is the last */
    return false;
  if (neighbours && boxes_part (&a->box, &b->box))
    return false;
  if (point_same (a->box.min, a->box.max) || point_same (b->box.min, b->box.max))
    return false;
  search->settled_radius = 0;
  const Bit first = bit_between (search, a->stretch, (const double[]) { a->t_from, a->t_to }, (const Point[]) { a->from, a->to });
  const Bit second = bit_between (search, b->stretch, (const double[]) { b->t_from, b->t_to }, (const Point[]) { b->from, b->to });
  return bits_cross (search, &first, &second);
}

static bool
boxes_apart (const Box *a, const Box *b)
{
  return a->max.x < b->min.x || b->max.x < a->min.x || a->max.y < b->min.y || b->max.y < a->min.y;
}

/* Runs i < j of one level of the tree against each other. */
static bool
search_between (Search *search, size_t level, size_t i, size_t j)
{
  const BoxTree *tree = &search->outline->tree;
  const Box *boxes = tree->boxes + tree->first[level];

  if (search->meetings_left == 0 || boxes_apart (&boxes[i], &boxes[j]))
    return false;
  if (level == 0)
    return pieces_cross (search, i, j);
  for (size_t below_i = 2 * i; below_i < 2 * i + 2; below_i++)
    for (size_t below_j = 2 * j; below_j < 2 * j + 2 && below_j < tree->count[level - 1]; below_j++)
      if (search_between (search, level - 1, below_i, below_j))
        return true;
  return false;
}

static bool
search_within (Search *search, size_t level, size_t i)
{
  const size_t left = 2 * i, right = 2 * i + 1;

  if (level == 0)
    return false;
  if (search_within (search, level - 1, left))
    return true;
  if (right >= search->outline->tree.count[level - 1])
    return false;
  return search_within (search, level - 1, right) || search_between (search, level - 1, left, right);
}

bool
outline_find_crossing (const Outline *self, bool drawn_only, OutlineFault *fault)
{
  Search search = { .outline = self, .size = box_larger_side (self->bounds),
                    .meetings_left = MOST_MEETINGS, .drawn_only = drawn_only, .fault = fault };

  return search_within (&search, self->tree.levels - 1, 0);
}
