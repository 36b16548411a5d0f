#include "drawing/flat-aids.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/part-box.h"
#include "drawing/wall-sheet-pen.h"
#include "figures/names.h"
#include "figures/report-hatch.h"

static const double overhang = 3;            /* of the centre line past both ends, mm */
static const double inset = 1.5, line = 3.5; /* of words from an edge; from one line of words to the next */
static const double rim = 6, least_rim = 3;  /* of the frame round the hole, mm: what glue and a lid's seat want, what still holds together while
                                                it is cut; common practice, no source */

/* Where a former's name stands: on its line, or beneath where words of the front edge end, however long they are. */
static double
name_foot (double former, double words_end)
{
  const double clear = 0.8;

  return former - clear - caps_small > words_end ? former - clear : fmax (former + clear, words_end) + caps_small;
}

/* The named formers that it spans, their names at the right edge. */
static void
add_formers (FlatPiece *piece, const Aeroplane *aeroplane, Box box, double words_end)
{
  for (size_t b = 0; b < aeroplane_count (aeroplane, PIECE_BODY); b++)
    for (size_t i = 0; i < aeroplane_body (aeroplane, b)->former_count; i++)
      {
        const NamedPlace *former = &aeroplane_body (aeroplane, b)->formers[i];

        if (!(former->place > box.min.y && former->place < box.max.y))
          continue;
        flat_piece_add_straight (piece, FLAT_STATION, (Point) { box.min.x, former->place }, (Point) { box.max.x, former->place });
        if (former->name)
          flat_piece_add_word (piece, &(FlatWord) { .purpose = FLAT_STATION, .text = former->name, .at = { box.max.x - inset, name_foot (former->place, words_end) },
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

/* Which edge it is, and where it lies. */
static void
add_edge (FlatPiece *piece, const Figures *figures, Units units, Point at, double x, const char *edge)
{
  g_autofree char *where = edge_place (figures, units, x);

  flat_piece_add_words (piece, FLAT_CUT, caps_small, at, edge);
  flat_piece_add_words (piece, FLAT_CUT, caps_small, point_add (at, (Point) { 0, line }), where);
}

/* Once it is chosen. */
static void
add_side (FlatPiece *piece, const Aeroplane *aeroplane, Point at)
{
  const HatchSide side = aeroplane_traits (aeroplane).hatch;

  if (side != HATCH_NOT_CHOSEN)
    flat_piece_add_words (piece, FLAT_CUT, caps_small, at, side == HATCH_ON_TOP ? _("opens on the top") : _("opens on the bottom"));
}

static bool
hatch_is_known (const HatchFigures *hatch)
{
  return hatch->part && isfinite (hatch->from_mm + hatch->to_mm + hatch->width_mm + hatch->part->y);
}

static Box
hole_of (const HatchFigures *hatch)
{
  return (Box) { { hatch->part->y - hatch->width_mm / 2, hatch->from_mm }, { hatch->part->y + hatch->width_mm / 2, hatch->to_mm } };
}

/* Smaller or larger by so much on both sides, mm. */
static Box
widened (Box box, double across, double along)
{
  return (Box) { { box.min.x - across, box.min.y - along }, { box.max.x + across, box.max.y + along } };
}

FlatPiece *
flat_lid_of (const Figures *figures, Units units)
{
  const HatchFigures *hatch = &figures->hatch;

  if (!hatch_is_known (hatch))
    return NULL;
  const Box box = widened (hole_of (hatch), -hatch->play_mm, -hatch->play_mm);
  g_autofree char *length = paper_length (units, box_height (box)), *width = paper_length (units, box_width (box));
  g_autofree char *less = paper_length (units, 2 * hatch->play_mm), *place = hatch_place_text (figures);
  /* Translators: three lengths, and sentences on where the hatch is */
  g_autofree char *remark = g_strdup_printf (_("To be cut from sheet, %s long and %s wide: %s less both ways than its hole, as play. %s"), length, width, less, place);
  FlatPiece *piece = flat_piece_new (_("Hatch lid"), remark);
  flat_piece_add_box (piece, FLAT_CUT, box);
  add_centre_line (piece, box);
  add_formers (piece, figures->aeroplane, box, box.min.y + line + 0.5);
  flat_piece_add_words (piece, FLAT_CUT, caps_small, (Point) { box.min.x + inset, box.min.y + line }, _("forward edge"));
  add_side (piece, figures->aeroplane, (Point) { box.min.x + inset, box.max.y - inset - line });
  flat_piece_add_words (piece, FLAT_CUT, caps_small, (Point) { box.min.x + inset, box.max.y - inset }, _("after edge"));
  return piece;
}

/* Beside the hole its frame is as wide as the body leaves room for. */
static double
rim_beside (const Figures *figures)
{
  const double clear = hatch_clear_width (figures->aeroplane, &figures->hatch);
  const double left = clear / 2 - fabs (figures->hatch.part->y) - figures->hatch.width_mm / 2;

  return clear > 0 ? fmin (fmax (left, least_rim), rim) : rim;
}

/* What the frame is, and what has to be done to it where the body is narrower. */
static char *
frame_remark (const Figures *figures, Units units, Box frame)
{
  const double clear = hatch_clear_width (figures->aeroplane, &figures->hatch);
  g_autofree char *length = paper_length (units, box_height (hole_of (&figures->hatch))), *width = paper_length (units, figures->hatch.width_mm);
  g_autofree char *place = hatch_place_text (figures), *inside = paper_length (units, clear);
  /* Translators: two lengths, and sentences on where the hatch is */
  g_autofree char *remark = g_strdup_printf (_("The hole in the body, %s long and %s wide, with a rim to glue behind its edges. %s"), length, width, place);

  if (!(clear > 0 && 2 * fmax (-frame.min.x, frame.max.x) > clear + 0.5))
    return g_steal_pointer (&remark);
  /* Translators: sentences, then a length */
  return g_strdup_printf (_("%s Between its sides the body leaves %s at its narrowest: trim the rim to that."), remark, inside);
}

FlatPiece *
flat_hatch_frame_of (const Figures *figures, Units units)
{
  if (!hatch_is_known (&figures->hatch))
    return NULL;
  const Box hole = hole_of (&figures->hatch), box = widened (hole, rim_beside (figures), rim);
  g_autofree char *remark = frame_remark (figures, units, box);
  FlatPiece *piece = flat_piece_new (_("Hatch frame"), remark);
  flat_piece_add_box (piece, FLAT_CUT, box);
  flat_piece_add_box (piece, FLAT_OPENING, hole);
  add_centre_line (piece, box);
  add_formers (piece, figures->aeroplane, hole, hole.min.y + 2 * line + 0.5);
  add_edge (piece, figures, units, (Point) { hole.min.x + inset, hole.min.y + line }, hole.min.y, _("hole, forward edge"));
  add_side (piece, figures->aeroplane, (Point) { hole.min.x + inset, hole.max.y - inset - 2 * line });
  add_edge (piece, figures, units, (Point) { hole.min.x + inset, hole.max.y - inset - line }, hole.max.y, _("hole, after edge"));
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

/* Words stand below their lines, or as near as those of the place where it balances leave room. */
static void
add_fronts (FlatPiece *piece, const Solution *solution, Box box)
{
  const double triangle = 3.3;      /* of the mark, beneath its line, mm */
  const double half = part_extent (solution->part).x / 2, front = solution->x_mm - half;
  const double foremost = solution->band_from_mm - half, aftmost = solution->band_to_mm - half;

  if (solution->reachable)
    add_front (piece, FLAT_MARK, box, front, front + triangle, _("balances here"));
  add_front (piece, FLAT_LIMIT, box, foremost, fmin (foremost, front - line), _("foremost"));
  add_front (piece, FLAT_LIMIT, box, aftmost, fmax (aftmost, front + triangle + line), _("aftmost"));
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
  add_formers (piece, figures->aeroplane, box, box.min.y);
  for (size_t i = 0; i < figures->solution_count; i++)
    if (part_is_battery (figures->solutions[i].part) && figures->solutions[i].part->aboard)
      {
        add_fronts (piece, &figures->solutions[i], box);
        break;
      }
  return piece;
}
