#include "drawing/flat-aids.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/part-box.h"
#include "drawing/wall-sheet-pen.h"
#include "figures/hatch-curve.h"
#include "figures/hatch-shape.h"
#include "figures/names.h"
#include "figures/report-hatch.h"

static const double overhang = 3;            /* of the centre line past both ends, mm */
static const double inset = 1.5, line = 3.5; /* of words from an edge; from one line of words to the next */
static const double clear_of_words = 1.5;   /* beneath their foot, for what hangs down from it */
static const double rim = 6;                 /* of the frame round the hole, mm: what glue and a lid's seat want; common practice, no source */

/* Where a former's name stands: on its line, or beneath where words of the front edge end, however long they are. */
static double
name_foot (double former, double words_end)
{
  const double clear = 0.8;

  return former - clear - caps_small > words_end ? former - clear : fmax (former + clear, words_end) + caps_small;
}

/* The named formers that it spans, their names at the right edge. A hatch, where the box is one's, may be narrower there; what is laid flat along a
 * curve has them where they come to lie. */
static void
add_formers (FlatPiece *piece, const Aeroplane *aeroplane, const HatchFigures *hatch, const HatchCurve *curve, Box box, double words_end)
{
  for (size_t b = 0; b < aeroplane_count (aeroplane, PIECE_BODY); b++)
    for (size_t i = 0; i < aeroplane_body (aeroplane, b)->former_count; i++)
      {
        const NamedPlace *former = &aeroplane_body (aeroplane, b)->formers[i];

        const double at = hatch_curve_at (curve, former->place);

        if (!(at > box.min.y && at < box.max.y))
          continue;
        const double less = hatch ? (hatch->width_mm - hatch_width_at (hatch, former->place)) / 2 : 0, left = box.min.x + less, right = box.max.x - less;
        flat_piece_add_straight (piece, FLAT_STATION, (Point) { left, at }, (Point) { right, at });
        if (former->name)
          flat_piece_add_word (piece, &(FlatWord) { .purpose = FLAT_STATION, .text = former->name, .at = { right - inset, name_foot (at, words_end) },
                                                    .caps = caps_small, .across = 1 });
      }
}

static void
add_centre_line (FlatPiece *piece, Box box)
{
  if (box.min.x < 0 && box.max.x > 0)
    flat_piece_add_straight (piece, FLAT_CENTRE, (Point) { 0, box.min.y - overhang }, (Point) { 0, box.max.y + overhang });
}

/* By the nearest former, or without one by the datum. */
static char *
edge_place (const Figures *figures, Units units, double x)
{
  char *from_former = hatch_edge_text (figures->aeroplane, x, units);
  g_autofree char *length = paper_length (units, x);

  return from_former ? from_former : g_strdup_printf (_("%s aft of the datum"), length);
}

/* Which edge it is, and where it lies; no longer than the edge is, unless that is hardly one. */
static void
add_edge (FlatPiece *piece, const Figures *figures, Units units, Point at, double x, double edge_width, const char *edge)
{
  g_autofree char *where = edge_place (figures, units, x);
  const double most = fmax (edge_width - 2 * inset, 10);

  flat_piece_add_word (piece, &(FlatWord) { .purpose = FLAT_CUT, .text = (char *) edge, .at = at, .caps = caps_small, .most = most });
  flat_piece_add_word (piece, &(FlatWord) { .purpose = FLAT_CUT, .text = where, .at = point_add (at, (Point) { 0, line }), .caps = caps_small,
                                            .most = most });
}

/* Once it is chosen. */
static void
add_side (FlatPiece *piece, const Aeroplane *aeroplane, Point at)
{
  const HatchSide side = aeroplane_traits (aeroplane).hatch;

  if (side != HATCH_NOT_CHOSEN)
    flat_piece_add_words (piece, FLAT_CUT, caps_small, at, side == HATCH_ON_TOP ? _("opens on the top") : _("opens on the bottom"));
}

/* Sentences on where it is, on how it narrows, and on what keeps it from being built so. */
static char *
hatch_where_text (const Figures *figures, Units units)
{
  g_autofree char *place = hatch_place_text (figures), *through = hatch_through_text (figures, units);

  return g_strjoin (" ", place, through, NULL);
}

static bool
hatch_is_known (const HatchFigures *hatch)
{
  return hatch->part && isfinite (hatch->from_mm + hatch->to_mm + hatch->width_mm + hatch->part->y);
}

/* Beside the centre line to starboard, and down the sheet as aft. */
static void
add_stations (FlatPiece *piece, FlatPurpose purpose, const HatchFigures *hatch, const HatchStation stations[], size_t count)
{
  Point corners[2 * HATCH_FRAME_STATIONS];

  hatch_corners (stations, count, hatch->part->y, corners);
  for (size_t i = 0; i < 2 * count; i++)
    corners[i] = (Point) { corners[i].y, corners[i].x };
  flat_piece_add_polygon (piece, purpose, corners, 2 * count);
}

/* Of the hole, smaller by so much on all sides, mm. */
static Box
hole_of (const HatchFigures *hatch, double less)
{
  const double half = hatch->width_mm / 2 - less, y = hatch->part->y;

  return (Box) { { y - half, hatch->from_mm + less }, { y + half, hatch->to_mm - less } };
}

/* Words at an edge begin within it, which may be narrower than the middle. */
static double
words_from (const HatchFigures *hatch, double edge_width)
{
  return hatch->part->y - edge_width / 2 + inset;
}

/* The same box as long as what lies along the curve. */
static Box
laid_flat (Box box, const HatchCurve *curve)
{
  return (Box) { { box.min.x, hatch_curve_at (curve, box.min.y) }, { box.max.x, hatch_curve_at (curve, box.max.y) } };
}

static char *
lid_remark (const Figures *figures, Units units, Box box, double longer)
{
  const HatchFigures *hatch = &figures->hatch;
  g_autofree char *length = paper_length (units, box_height (box)), *width = paper_length (units, box_width (box));
  g_autofree char *less = paper_length (units, 2 * hatch->play_mm), *where = hatch_where_text (figures, units), *more = paper_length (units, longer);

  if (longer > 0)
    /* Translators: four lengths, and sentences on where the hatch is */
    return g_strdup_printf (_("To be cut from sheet, %s long and %s wide: %s less both ways than its hole, as play, and %s longer than that in plan, since it is "
                              "bent along the body's curve. %s"), length, width, less, more, where);
  /* Translators: three lengths, and sentences on where the hatch is */
  return g_strdup_printf (_("To be cut from sheet, %s long and %s wide: %s less both ways than its hole, as play. %s"), length, width, less, where);
}

FlatPiece *
flat_lid_of (const Figures *figures, Units units)
{
  const HatchFigures *hatch = &figures->hatch;
  HatchStation stations[HATCH_HOLE_STATIONS];

  if (!hatch_is_known (hatch))
    return NULL;
  g_autoptr (HatchCurve) curve = hatch_curve_new (figures);
  const size_t count = hatch_hole (hatch, hatch->play_mm, stations);
  const Box box = laid_flat (hole_of (hatch, hatch->play_mm), curve);
  const double ahead = words_from (hatch, hatch->from_width_mm), behind = words_from (hatch, hatch->to_width_mm);
  g_autofree char *remark = lid_remark (figures, units, box, hatch_curve_longer (curve));
  FlatPiece *piece = flat_piece_new (_("Hatch lid"), remark);
  for (size_t i = 0; i < count; i++)
    stations[i].x = hatch_curve_at (curve, stations[i].x);
  add_stations (piece, FLAT_CUT, hatch, stations, count);
  add_centre_line (piece, box);
  add_formers (piece, figures->aeroplane, hatch, curve, box, box.min.y + line + clear_of_words);
  flat_piece_add_words (piece, FLAT_CUT, caps_small, (Point) { ahead, box.min.y + line }, _("forward edge"));
  add_side (piece, figures->aeroplane, (Point) { behind, box.max.y - inset - line });
  flat_piece_add_words (piece, FLAT_CUT, caps_small, (Point) { behind, box.max.y - inset }, _("after edge"));
  return piece;
}

static char *
frame_remark (const Figures *figures, Units units, Box box)
{
  g_autofree char *length = paper_length (units, box_height (box)), *width = paper_length (units, box_width (box));
  g_autofree char *where = hatch_where_text (figures, units), *carry = hatch_carry_text (figures);
  /* Translators: two lengths, and sentences on where the hatch is */
  g_autofree char *hole = g_strdup_printf (_("The hole in the body as seen from above, %s long and %s wide, with a rim to glue behind its edges. %s"),
                                           length, width, where);

  return g_strjoin (" ", hole, carry, NULL);
}

FlatPiece *
flat_hatch_frame_of (const Figures *figures, Units units)
{
  const HatchFigures *hatch = &figures->hatch;
  HatchStation hole[HATCH_HOLE_STATIONS], frame[HATCH_FRAME_STATIONS];

  if (!hatch_is_known (hatch))
    return NULL;
  const Box box = hole_of (hatch, 0);
  const double ahead = words_from (hatch, hatch->from_width_mm), behind = words_from (hatch, hatch->to_width_mm);
  g_autofree char *remark = frame_remark (figures, units, box);
  FlatPiece *piece = flat_piece_new (_("Hatch frame"), remark);
  add_stations (piece, FLAT_CUT, hatch, frame, hatch_frame (hatch, rim, frame));
  add_stations (piece, FLAT_OPENING, hatch, hole, hatch_hole (hatch, 0, hole));
  add_centre_line (piece, (Box) { { box.min.x, box.min.y - rim }, { box.max.x, box.max.y + rim } });
  add_formers (piece, figures->aeroplane, hatch, NULL, box, box.min.y + 2 * line + clear_of_words);
  add_edge (piece, figures, units, (Point) { ahead, box.min.y + line }, box.min.y, hatch->from_width_mm,
            _("hole, forward edge"));
  add_side (piece, figures->aeroplane, (Point) { behind, box.max.y - inset - 2 * line });
  add_edge (piece, figures, units, (Point) { behind, box.max.y - inset - line }, box.max.y, hatch->to_width_mm,
            _("hole, after edge"));
  return piece;
}

/* Where packs may be: the one aboard, and those left out that are flown in its place. */
static Box
floor_of (const Figures *figures)
{
  Box all = { { INFINITY, INFINITY }, { -INFINITY, -INFINITY } };

  for (size_t i = 0; i < figures->solution_count; i++)
    {
      const Part *part = figures->solutions[i].part;
      const Point extent = part_extent (part);

      if (!part_is_battery (part) || !(extent.x > 0 && extent.y > 0))
        continue;
      all.min = (Point) { fmin (all.min.x, part->y - extent.y / 2), fmin (all.min.y, part->rail_from - extent.x / 2) };
      all.max = (Point) { fmax (all.max.x, part->y + extent.y / 2), fmax (all.max.y, part->rail_to + extent.x / 2) };
    }
  return all;
}

/* A line for the pack's front edge. */
static void
add_front (FlatPiece *piece, FlatPurpose purpose, Box box, double y, double words_y, const char *words)
{
  if (!(y >= box.min.y && y <= box.max.y))
    return;
  flat_piece_add_straight (piece, purpose, (Point) { box.min.x, y }, (Point) { box.max.x, y });
  flat_piece_add_words (piece, purpose, caps_small, (Point) { box.min.x + inset, words_y + 0.8 + caps_small }, words);
}

/* Words stand below their lines, or as near as those of the place where it balances leave room; those of that place above its line where the aftmost
 * is so near that they would be taken for its. */
static void
add_fronts (FlatPiece *piece, const Solution *solution, Box box)
{
  const double triangle = 3.3;      /* of the mark, beneath its line, mm */
  const double half = part_extent (solution->part).x / 2, front = solution->x_mm - half;
  const double foremost = solution->band_from_mm - half, aftmost = solution->band_to_mm - half;
  const bool above = aftmost - front < triangle + line;

  if (solution->reachable)
    add_front (piece, FLAT_MARK, box, front, above ? front - line : front + triangle, _("balances here"));
  add_front (piece, FLAT_LIMIT, box, foremost, fmin (foremost, front - (above ? 2 : 1) * line), _("foremost"));
  add_front (piece, FLAT_LIMIT, box, aftmost, above ? aftmost : fmax (aftmost, front + triangle + line), _("aftmost"));
}

FlatPiece *
flat_floor_of (const Figures *figures, Units units)
{
  const Box box = floor_of (figures);
  FlatPiece *piece;

  if (!isfinite (box_width (box) + box_height (box)) || !(box_height (box) > 0))
    return NULL;
  piece = flat_piece_new (_("Battery floor"), _("As far as the battery can go; the lines are for its front edge"));
  flat_piece_add_box (piece, FLAT_CUT, box);
  add_centre_line (piece, box);
  add_formers (piece, figures->aeroplane, NULL, NULL, box, box.min.y);
  for (size_t i = 0; i < figures->solution_count; i++)
    if (part_is_battery (figures->solutions[i].part) && figures->solutions[i].part->aboard)
      {
        add_fronts (piece, &figures->solutions[i], box);
        break;
      }
  return piece;
}
