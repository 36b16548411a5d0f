#include "drawing/flat-body.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/part-box.h"
#include "drawing/flat-half.h"
#include "drawing/outline-path.h"
#include "drawing/wall-sheet-pen.h"
#include "figures/hatch-shape.h"
#include "figures/report-hatch.h"

static const double overhang = 6;            /* of the centre line past both ends, mm */
static const double inset = 1.5;             /* of words from a line, mm */

/* How a body is laid: as a fin is, aft to the right. */
static const Surface upright = { .role = ROLE_FIN };

/* Half of it as seen from above, from the centre line at the nose to that at the tail. */
static GArray *
half_run (const Outline *outline, Point *start)
{
  GArray *run = g_array_new (FALSE, FALSE, sizeof (Segment));
  const size_t count = outline_segment_count (outline);
  const Point first = outline_node (outline, 0), last = outline_node (outline, count);
  const Segment out = segment_line (first), in = segment_line ((Point) { last.x, 0 });

  *start = (Point) { first.x, 0 };
  if (first.y != 0)
    g_array_append_val (run, out);
  for (size_t i = 0; i < count; i++)
    g_array_append_val (run, *outline_segment (outline, i));
  if (last.y != 0)
    g_array_append_val (run, in);
  return run;
}

static FlatPiece *
from_above (const Body *body, const char *name)
{
  Point start;
  g_autoptr (GArray) run = half_run (body->outline, &start);
  const Segment *half = (const Segment *) (void *) run->data;
  g_autoptr (FlatPiece) starboard = flat_piece_new (name, NULL), port = flat_piece_new (name, NULL);
  const Box box = outline_bounds (body->outline);

  flat_add_run (starboard, &upright, FLAT_CUT, false, start, half, run->len);
  flat_piece_add_line (port, FLAT_CUT, false, start, half, run->len);
  flat_piece_add_straight (starboard, FLAT_CENTRE, (Point) { box.min.x - overhang, 0 }, (Point) { box.max.x + overhang, 0 });
  return flat_halves_joined (starboard, port, name);
}

static FlatPiece *
from_side (const Body *body, const char *name)
{
  FlatPiece *piece = flat_piece_new (name, NULL);
  const Outline *outline = body->side_outline;
  const size_t count = outline_segment_count (outline);
  g_autoptr (GArray) run = g_array_sized_new (FALSE, FALSE, sizeof (Segment), (guint) count);
  const Box box = outline_bounds (outline);

  for (size_t i = 0; i < count; i++)
    g_array_append_val (run, *outline_segment (outline, i));
  flat_add_run (piece, &upright, FLAT_CUT, true, outline_node (outline, 0), (const Segment *) (void *) run->data, run->len);
  flat_piece_add_straight (piece, FLAT_CENTRE, (Point) { box.min.x - overhang, 0 }, (Point) { box.max.x + overhang, 0 });
  return piece;
}

/* A former's line across the body, its name above. */
static void
add_former (FlatPiece *piece, const Outline *outline, bool above, const NamedPlace *former)
{
  double low, high;

  if (!outline_span_at (outline, former->place, &low, &high))
    return;
  if (above)
    low = -high;
  flat_piece_add_straight (piece, FLAT_STATION, (Point) { former->place, -high }, (Point) { former->place, -low });
  if (former->name)
    flat_piece_add_word (piece, &(FlatWord) { .purpose = FLAT_STATION, .text = former->name, .at = { former->place, -high - inset },
                                              .caps = caps_small, .across = 0.5 });
}

/* Which side is which, however the piece lies on its page: behind the parts, where there is room. */
static void
add_side_word (FlatPiece *piece, const Outline *outline, bool above)
{
  const Box box = outline_bounds (outline);
  const double share = 0.75, x = box.min.x + share * (box.max.x - box.min.x);
  double low, high;

  if (outline_span_at (outline, x, &low, &high))
    flat_piece_add_word (piece, &(FlatWord) { .purpose = FLAT_STATION, .text = above ? _("starboard") : _("top"), .at = { x, -high + inset + 2 * caps_small },
                                              .caps = caps_small, .across = 0.5 });
}

static void
add_room_words (FlatPiece *piece, FlatPurpose purpose, double x, double y, const char *words)
{
  flat_piece_add_words (piece, purpose, caps_small, (Point) { x + inset, y }, words);
}

/* Both as they are seen from above. */
static void
add_hatch_from_above (FlatPiece *piece, const HatchFigures *hatch)
{
  const double y = -hatch->part->y, floor_half = part_extent (hatch->part).y / 2;
  HatchStation stations[HATCH_HOLE_STATIONS];
  Point corners[2 * HATCH_HOLE_STATIONS];
  const size_t count = hatch_hole (hatch, 0, stations);

  hatch_corners (stations, count, y, corners);
  flat_piece_add_polygon (piece, FLAT_OPENING, corners, 2 * count);
  add_room_words (piece, FLAT_OPENING, hatch->from_mm, y - hatch->from_width_mm / 2 + inset + caps_small, _("hatch"));
  if (!(floor_half > 0 && isfinite (hatch->floor_from_mm + hatch->floor_to_mm)))
    return;
  flat_piece_add_box (piece, FLAT_ROOM, (Box) { { hatch->floor_from_mm, y - floor_half }, { hatch->floor_to_mm, y + floor_half } });
  add_room_words (piece, FLAT_ROOM, hatch->floor_from_mm, y + floor_half - inset, _("battery floor"));
}

/* Where the hatch begins and ends, at the edge it opens on; until that is chosen, at the upper and the lower one. */
static void
add_hatch_end (FlatPiece *piece, const Outline *outline, double x, HatchSide side)
{
  const double tick = 4;
  double low, high;

  if (!outline_span_at (outline, x, &low, &high))
    return;
  if (side != HATCH_ON_BOTTOM)
    flat_piece_add_straight (piece, FLAT_OPENING, (Point) { x, -high }, (Point) { x, -fmax (high - tick, low) });
  if (side != HATCH_ON_TOP)
    flat_piece_add_straight (piece, FLAT_OPENING, (Point) { x, -low }, (Point) { x, -fmin (low + tick, high) });
}

static void
add_hatch_from_side (FlatPiece *piece, const Outline *outline, const HatchFigures *hatch, HatchSide side)
{
  const double floor = -(hatch->part->z - hatch->part->height / 2);
  double low, high;

  add_hatch_end (piece, outline, hatch->from_mm, side);
  add_hatch_end (piece, outline, hatch->to_mm, side);
  if (outline_span_at (outline, hatch->from_mm, &low, &high))
    add_room_words (piece, FLAT_OPENING, hatch->from_mm, side == HATCH_ON_BOTTOM ? -low - 2 * inset : -high + 2 * inset + caps_small, _("hatch"));
  if (!isfinite (hatch->floor_from_mm + hatch->floor_to_mm + floor))
    return;
  flat_piece_add_straight (piece, FLAT_ROOM, (Point) { hatch->floor_from_mm, floor }, (Point) { hatch->floor_to_mm, floor });
  add_room_words (piece, FLAT_ROOM, hatch->floor_from_mm, floor - inset / 2, _("battery floor"));
}

/* One view of one body, named by what it is called where there are several. */
static void
add_view (GPtrArray *pieces, const Figures *figures, const Body *body, bool above)
{
  const Outline *outline = above ? body->outline : body->side_outline;
  const char *view = view_shows_name (above ? VIEW_BODY_TOP : VIEW_BODY_SIDE);
  const bool several = aeroplane_count (figures->aeroplane, PIECE_BODY) > 1 && body->piece.id;
  /* Translators: what a piece is and what it is called: "Body from above “left”" */
  g_autofree char *name = several ? g_strdup_printf (_("%s “%s”"), view, body->piece.id) : g_strdup (view);
  const HatchFigures *hatch = &figures->hatch;

  if (!outline || (above && outline_check (outline, NULL) != CORE_OK))
    return;
  FlatPiece *piece = above ? from_above (body, name) : from_side (body, name);
  add_side_word (piece, outline, above);
  for (size_t i = 0; i < body->former_count; i++)
    add_former (piece, outline, above, &body->formers[i]);
  if (body == aeroplane_body (figures->aeroplane, 0) && hatch->part && isfinite (hatch->from_mm + hatch->to_mm + hatch->width_mm + hatch->part->y))
    {
      if (above)
        add_hatch_from_above (piece, hatch);
      else
        add_hatch_from_side (piece, outline, hatch, aeroplane_traits (figures->aeroplane).hatch);
    }
  g_ptr_array_add (pieces, piece);
}

void
flat_body_add (GPtrArray *pieces, const Figures *figures)
{
  for (size_t i = 0; i < aeroplane_count (figures->aeroplane, PIECE_BODY); i++)
    {
      const Body *body = aeroplane_body (figures->aeroplane, i);

      add_view (pieces, figures, body, true);
      add_view (pieces, figures, body, false);
    }
}
