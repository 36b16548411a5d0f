/* Bodies of a template at full size, measured as a rule on the paper would. Millimetres. */
#include <math.h>
#include <string.h>
#include "drawing/flat-body.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/sheets.h"

static const double same = 1e-6;      /* mm */

typedef struct { Aeroplane *aeroplane; Figures *figures; GPtrArray *pieces; } Laid;

static Laid
lay (Aeroplane *takes)
{
  Laid laid = { takes, figures_once (takes), g_ptr_array_new_with_free_func ((GDestroyNotify) flat_piece_free) };

  flat_body_add (laid.pieces, laid.figures);
  return laid;
}

static void
put_away (Laid *laid)
{
  g_ptr_array_unref (laid->pieces);
  figures_unref (laid->figures);
  aeroplane_unref (laid->aeroplane);
}

static double
off_edge (const FlatPiece *piece, Point place)
{
  const FlatLine *edge = &g_array_index (piece->lines, FlatLine, 0);
  const Segment closing = segment_line (edge->start);
  Point from = edge->start;
  double nearest = INFINITY, distance;

  for (size_t k = 0; k <= edge->count; k++)
    {
      const Segment *segment = k < edge->count ? &edge->segments[k] : &closing;

      segment_nearest (from, segment, place, &distance);
      nearest = fmin (nearest, distance);
      from = segment->to;
    }
  return nearest;
}

/* From above both sides, from the side (_i 1) as it is. */
START_TEST (the_edge_is_the_bodys_outline_on_both_sides)
{
  Laid laid = lay (example_racer ());
  const Body *body = aeroplane_body (laid.aeroplane, 0);
  const Outline *outline = _i == 0 ? body->outline : body->side_outline;
  const FlatPiece *piece = laid.pieces->pdata[_i];

  ck_assert_str_eq (piece->name, _i == 0 ? "Body from above" : "Body from the side");
  for (size_t i = 0; i < outline_segment_count (outline); i++)
    for (int step = 0; step <= 10; step++)
      {
        const Point at = segment_at (outline_node (outline, i), outline_segment (outline, i), step / 10.0);

        ck_assert_double_lt (off_edge (piece, (Point) { at.x, -at.y }), same);
        ck_assert (_i == 1 || off_edge (piece, at) < same);
      }
  put_away (&laid);
}
END_TEST

static size_t
count_at (const FlatPiece *piece, FlatPurpose purpose, double x)
{
  size_t count = 0;

  for (guint i = 0; i < piece->lines->len; i++)
    {
      const FlatLine *line = &g_array_index (piece->lines, FlatLine, i);
      count += line->purpose == purpose && fabs (line->start.x - x) < same;
    }
  return count;
}

static const FlatWord *
word_of (const FlatPiece *piece, const char *text)
{
  for (guint i = 0; i < piece->words->len; i++)
    if (strcmp (g_array_index (piece->words, FlatWord, i).text, text) == 0)
      return &g_array_index (piece->words, FlatWord, i);
  return NULL;
}

START_TEST (formers_stand_at_their_stations_by_name)
{
  Laid laid = lay (example_racer ());
  const Body *body = aeroplane_body (laid.aeroplane, 0);
  const FlatPiece *piece = laid.pieces->pdata[_i];

  ck_assert_uint_gt (body->former_count, 5);
  for (size_t i = 0; i < body->former_count; i++)
    {
      ck_assert_uint_eq (count_at (piece, FLAT_STATION, body->formers[i].place), 1);
      ck_assert_double_eq (word_of (piece, body->formers[i].name)->at.x, body->formers[i].place);
    }
  put_away (&laid);
}
END_TEST

START_TEST (hatch_and_floor_lie_where_the_figures_have_them)
{
  Laid laid = lay (example_racer ());
  const HatchFigures *hatch = &laid.figures->hatch;
  const FlatPiece *above = laid.pieces->pdata[0], *side = laid.pieces->pdata[1];

  ck_assert_uint_eq (count_at (above, FLAT_OPENING, hatch->from_mm), 1);
  ck_assert_uint_eq (count_at (above, FLAT_ROOM, hatch->floor_from_mm), 1);
  ck_assert_uint_eq (count_at (side, FLAT_OPENING, hatch->from_mm), 1);      /* at the upper edge, where it opens */
  ck_assert_uint_eq (count_at (side, FLAT_OPENING, hatch->to_mm), 1);
  ck_assert_uint_eq (count_at (side, FLAT_ROOM, hatch->floor_from_mm), 1);
  ck_assert_ptr_nonnull (word_of (above, "hatch"));
  ck_assert_ptr_nonnull (word_of (side, "battery floor"));
  put_away (&laid);
}
END_TEST

START_TEST (without_a_body_there_is_none)
{
  Laid laid = lay (wing_only ());

  ck_assert_uint_eq (laid.pieces->len, 0);
  put_away (&laid);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("flat body");

  tcase_set_timeout (tests, 60);
  tcase_add_loop_test (tests, the_edge_is_the_bodys_outline_on_both_sides, 0, 2);
  tcase_add_loop_test (tests, formers_stand_at_their_stations_by_name, 0, 2);
  tcase_add_test (tests, hatch_and_floor_lie_where_the_figures_have_them);
  tcase_add_test (tests, without_a_body_there_is_none);
  return run_suite (suite_create ("drawing flat body"), tests);
}
