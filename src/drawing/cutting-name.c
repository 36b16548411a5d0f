#include "drawing/cutting-name.h"
#include <math.h>
#include "drawing/flat-corners.h"
#include "drawing/sheet-places.h"

static const double within = 0.1;              /* mm, of a curve made straight sides: a name keeps further off */
static const double advance = 1.05;            /* of a letter, in capitals: the plain lettering of drawing programs; from memory */
static const double below = 0.35;              /* of a small letter below its foot, in capitals */
static const double air = 0.5;                 /* round a name, in its capitals */
static const double above = 4;                 /* capitals of a name that stands above its piece, mm */
static const double places = 40;               /* that are tried along and across */

/* What a name has to keep clear of: straight sides, two places each, and boxes of words. `edges` are those that go round something. */
typedef struct { GArray *sides, *edges, *words; Box box; } Ground;

static double
length_at (const FlatWord *word, double caps)
{
  return caps * advance * (double) g_utf8_strlen (word->text, -1);
}

double
cutting_word_caps (const FlatWord *word)
{
  return flat_word_caps (word, length_at (word, word->caps));
}

Box
cutting_word_box (const FlatWord *word)
{
  const double caps = cutting_word_caps (word), width = length_at (word, caps), left = -word->across * width, right = left + width;
  const double top = -caps, foot = below * caps;
  const Box flat = { { word->at.x + left, word->at.y + top }, { word->at.x + right, word->at.y + foot } };
  const Box up = { { word->at.x + top, word->at.y - right }, { word->at.x + foot, word->at.y - left } };

  return fabs (word->turn) > 45 ? up : flat;
}

static void
add_sides (GArray *to, const FlatLine *line)
{
  g_autoptr (GArray) corners = g_array_new (FALSE, FALSE, sizeof (Point));

  flat_line_corners (line, within, corners);
  for (guint i = 0; i + 1 < corners->len + flat_line_is_closed (line); i++)
    {
      g_array_append_val (to, g_array_index (corners, Point, i));
      g_array_append_val (to, g_array_index (corners, Point, (i + 1) % corners->len));
    }
}

static Ground
ground_of (const FlatPiece *piece)
{
  Ground ground = { g_array_new (FALSE, FALSE, sizeof (Point)), g_array_new (FALSE, FALSE, sizeof (Point)), g_array_new (FALSE, FALSE, sizeof (Box)),
                    flat_piece_bounds (piece) };

  for (guint i = 0; i < piece->lines->len; i++)
    {
      const FlatLine *line = &g_array_index (piece->lines, FlatLine, i);

      add_sides (ground.sides, line);
      if ((line->purpose == FLAT_CUT || line->purpose == FLAT_OPENING) && flat_line_is_closed (line))
        add_sides (ground.edges, line);
    }
  for (guint i = 0; i < piece->words->len; i++)
    {
      const Box box = cutting_word_box (&g_array_index (piece->words, FlatWord, i));
      g_array_append_val (ground.words, box);
    }
  return ground;
}

static void
ground_clear (Ground *self)
{
  g_array_unref (self->sides);
  g_array_unref (self->edges);
  g_array_unref (self->words);
}

/* Whether any of the side from a to b lies in the box: what of it is left between each pair of its sides. */
static bool
side_meets (Point a, Point b, Box box)
{
  const double from[] = { a.x, a.y }, way[] = { b.x - a.x, b.y - a.y }, low[] = { box.min.x, box.min.y }, high[] = { box.max.x, box.max.y };
  double begin = 0, end = 1;

  for (int i = 0; i < 2; i++)
    {
      const double one = (low[i] - from[i]) / way[i], other = (high[i] - from[i]) / way[i];

      if (way[i] == 0 && (from[i] < low[i] || from[i] > high[i]))
        return false;
      if (way[i] != 0)
        {
          begin = fmax (begin, fmin (one, other));
          end = fmin (end, fmax (one, other));
        }
    }
  return begin <= end;
}

/* Even and odd: within the edge, and in no opening. */
static bool
is_on_piece (const Ground *ground, Point place)
{
  bool on = false;

  for (guint i = 0; i + 1 < ground->edges->len; i += 2)
    {
      const Point a = g_array_index (ground->edges, Point, i), b = g_array_index (ground->edges, Point, i + 1);

      if ((a.y > place.y) != (b.y > place.y) && place.x < a.x + (place.y - a.y) / (b.y - a.y) * (b.x - a.x))
        on = !on;
    }
  return on;
}

static bool
is_clear (const Ground *ground, Box box)
{
  for (guint i = 0; i + 1 < ground->sides->len; i += 2)
    if (side_meets (g_array_index (ground->sides, Point, i), g_array_index (ground->sides, Point, i + 1), box))
      return false;
  for (guint i = 0; i < ground->words->len; i++)
    if (boxes_meet (g_array_index (ground->words, Box, i), box))
      return false;
  return is_on_piece (ground, box.min);
}

/* Of the places tried, the clear one that is nearest to the middle. */
static bool
find_place (const Ground *ground, FlatWord *name)
{
  const Point middle = point_mix (ground->box.min, ground->box.max, 0.5);
  const Box own = box_grown (cutting_word_box (&(FlatWord) { .text = name->text, .caps = name->caps, .turn = name->turn, .across = 0.5 }), air * name->caps);
  const Point size = point_sub (own.max, own.min), room = point_sub (point_sub (ground->box.max, ground->box.min), size);
  double least = INFINITY;

  if (room.x < 0 || room.y < 0)
    return false;
  for (double i = 0; i <= places; i++)
    for (double k = 0; k <= places; k++)
      {
        const Point corner = { ground->box.min.x + room.x * i / places, ground->box.min.y + room.y * k / places };
        const Box box = { corner, point_add (corner, size) };
        const double off = point_distance (point_mix (box.min, box.max, 0.5), middle);

        if (off >= least || !is_clear (ground, box))
          continue;
        least = off;
        name->at = point_sub (corner, own.min);
      }
  return isfinite (least);
}

void
cutting_name_add (FlatPiece *piece)
{
  static const struct { double caps, turn; } tries[] = { { 5, 0 }, { 5, -90 }, { 4, 0 }, { 4, -90 }, { 3, 0 }, { 3, -90 } };
  FlatWord name = { .purpose = FLAT_NAME, .text = piece->name, .across = 0.5 };
  Ground ground = ground_of (piece);
  bool found = false;

  for (size_t i = 0; !found && i < G_N_ELEMENTS (tries); i++)
    {
      name.caps = tries[i].caps;
      name.turn = tries[i].turn;
      found = find_place (&ground, &name);
    }
  if (!found)
    name = (FlatWord) { .purpose = FLAT_NAME, .text = piece->name, .at = { ground.box.min.x, ground.box.min.y - air * above }, .caps = above };
  if (!box_is_empty (ground.box))
    flat_piece_add_word (piece, &name);
  ground_clear (&ground);
}

Box
cutting_name_bounds (const FlatPiece *piece)
{
  Box box = flat_piece_bounds (piece);

  for (guint i = 0; !box_is_empty (box) && i < piece->words->len; i++)
    if (g_array_index (piece->words, FlatWord, i).purpose == FLAT_NAME)
      box = box_joined (box, cutting_word_box (&g_array_index (piece->words, FlatWord, i)));
  return box;
}
