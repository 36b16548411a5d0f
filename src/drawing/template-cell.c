#include "drawing/template-cell.h"
#include <math.h>
#include "drawing/outline-path.h"
#include "drawing/template-word.h"

static const double above = 3;                       /* between the words above and what is drawn, mm */
static const double leading = 1.7;                   /* of lines of words, in their capitals */
static const double narrowest = 55;                  /* what words above a small piece may take */
static const double between = 2;                     /* of places on a walk */

/* A place of the piece, once it is turned. */
static Point
turned (Point place, bool turn)
{
  return turn ? (Point) { place.y, -place.x } : place;
}

static Box
drawn_box (const SheetPen *pen, const FlatPiece *piece, bool turn)
{
  Box box = flat_piece_bounds (piece);

  for (guint i = 0; i < piece->words->len; i++)
    {
      const Box word = template_word_box (pen, &g_array_index (piece->words, FlatWord, i));

      box = box_with (box_with (box, word.min), word.max);
    }
  if (box_is_empty (box))
    return (Box) { { 0, 0 }, { 0, 0 } };
  return turn ? (Box) { { box.min.y, -box.max.x }, { box.max.y, -box.min.x } } : box;
}

/* What stands above a piece: its lines, laid out with their feet from y = 0 on down; drawn only where the pen draws. */
static Box
caption (const SheetPen *pen, const FlatPiece *piece, double width, Point at, bool draw)
{
  g_auto (GStrv) lines = piece->remark != NULL ? pen_wrapped (pen, caps_text, fmax (width, narrowest), piece->remark) : NULL;
  Box box = { at, { at.x + pen_width (pen, caps_figure, piece->name), at.y + caps_figure } };

  if (draw)
    pen_write (pen, (Script) { { at.x, box.max.y }, caps_figure, 0 }, piece->name);
  for (size_t i = 0; lines != NULL && lines[i] != NULL; i++)
    {
      box.max.y += leading * caps_text;
      box.max.x = fmax (box.max.x, at.x + pen_width (pen, caps_text, lines[i]));
      if (draw)
        pen_write (pen, (Script) { { at.x, box.max.y }, caps_text, 0 }, lines[i]);
    }
  return box;
}

TemplateCell
template_cell (const SheetPen *pen, const FlatPiece *piece, bool turn)
{
  const Box drawn = drawn_box (pen, piece, turn);
  const Box words = caption (pen, piece, box_width (drawn), (Point) { 0, 0 }, false);
  const double down = words.max.y + above;

  return (TemplateCell) { .piece = piece, .turned = turn, .origin = { -drawn.min.x, down - drawn.min.y },
                          .box = { { 0, 0 }, { fmax (words.max.x, box_width (drawn)), down + box_height (drawn) } } };
}

void
template_cell_move (TemplateCell *self, Point by)
{
  self->origin = point_add (self->origin, by);
  self->box = (Box) { point_add (self->box.min, by), point_add (self->box.max, by) };
}

static void
set_line (const SheetPen *pen, FlatPurpose purpose)
{
  static const double widths[FLAT_PURPOSE_COUNT] = {
    [FLAT_CUT] = 0.5, [FLAT_OPENING] = 0.5, [FLAT_HINGE] = 0.25, [FLAT_STATION] = 0.18, [FLAT_MARK] = 0.7, [FLAT_LIMIT] = 0.35 };

  look_set_source (pen->cr, pen->look->graphite);
  if (purpose == FLAT_CENTRE)
    line_kind_set (pen->cr, pen->look, LINE_CENTRE);
  else if (purpose == FLAT_ROOM)
    line_kind_set (pen->cr, pen->look, LINE_HIDDEN);
  else
    pen_set_line (pen, widths[purpose]);
  if (purpose == FLAT_CUT || purpose == FLAT_OPENING)
    cairo_set_line_join (pen->cr, CAIRO_LINE_JOIN_ROUND);
}

/* The finger's or the pin's triangle touches the mark from aft, which is downward. */
static void
draw_triangle (const SheetPen *pen, Point from, Point to)
{
  const double length = point_distance (from, to), half = 1.4, high = 2.7, clear = 0.35, shortest = 5;
  const Point middle = point_mix (from, to, 0.5);
  Point along = { (to.x - from.x) / length, (to.y - from.y) / length };

  if (!(length > shortest))
    return;
  if (along.x < 0 || (along.x == 0 && along.y > 0))
    along = (Point) { -along.x, -along.y };
  const Point aft = { -along.y, along.x };
  const Point tip = point_add (middle, point_scale (aft, clear)), foot = point_add (middle, point_scale (aft, clear + high));
  cairo_move_to (pen->cr, tip.x, tip.y);
  cairo_line_to (pen->cr, foot.x + half * along.x, foot.y + half * along.y);
  cairo_line_to (pen->cr, foot.x - half * along.x, foot.y - half * along.y);
  cairo_close_path (pen->cr);
  cairo_fill (pen->cr);
}

static bool
is_straight_mark (const FlatLine *line)
{
  return line->purpose == FLAT_MARK && !line->closed && line->count == 1 && line->segments[0].kind == SEGMENT_LINE;
}

/* Two marks with one middle are a cross, where a pin stands: it needs no triangle. */
static bool
is_touched_from_aft (const FlatPiece *piece, const FlatLine *line)
{
  const double same = 1;      /* mm */
  const Point middle = is_straight_mark (line) ? point_mix (line->start, line->segments[0].to, 0.5) : line->start;
  bool crossed = false;

  for (guint i = 0; i < piece->lines->len; i++)
    {
      const FlatLine *other = &g_array_index (piece->lines, FlatLine, i);
      crossed |= other != line && is_straight_mark (other) && point_distance (middle, point_mix (other->start, other->segments[0].to, 0.5)) < same;
    }
  return is_straight_mark (line) && !crossed;
}

static void
draw_line (const SheetPen *pen, const FlatPiece *piece, const FlatLine *line)
{
  set_line (pen, line->purpose);
  outline_path_stretch (pen->cr, line->start, line->segments, line->count);
  if (line->closed)
    cairo_close_path (pen->cr);
  cairo_stroke (pen->cr);
  if (is_touched_from_aft (piece, line))
    draw_triangle (pen, line->start, line->segments[0].to);
}

/* Words above take as much, and break into the same lines as when they were measured. */
static double
drawn_width (const SheetPen *pen, const TemplateCell *self)
{
  return box_width (drawn_box (pen, self->piece, self->turned));
}

void
template_cell_draw (const SheetPen *pen, const TemplateCell *self)
{
  const FlatPiece *piece = self->piece;

  caption (pen, piece, drawn_width (pen, self), self->box.min, true);
  cairo_save (pen->cr);
  cairo_translate (pen->cr, self->origin.x, self->origin.y);
  if (self->turned)
    cairo_rotate (pen->cr, -M_PI / 2);
  cairo_new_path (pen->cr);
  for (int purpose = FLAT_PURPOSE_COUNT - 1; purpose >= 0; purpose--)      /* edges last, over all else */
    for (guint i = 0; i < piece->lines->len; i++)
      if (g_array_index (piece->lines, FlatLine, i).purpose == (FlatPurpose) purpose)
        draw_line (pen, piece, &g_array_index (piece->lines, FlatLine, i));
  for (guint i = 0; i < piece->words->len; i++)
    template_word_draw (pen, &g_array_index (piece->words, FlatWord, i), self->turned);
  cairo_restore (pen->cr);
}

void
template_box_visit (Box box, TemplateVisit visit, void *data)
{
  const double across = ceil (box_width (box) / between), down = ceil (box_height (box) / between);

  for (double y = 0; y <= down; y++)
    for (double x = 0; x <= across; x++)
      visit ((Point) { fmin (box.min.x + x * between, box.max.x), fmin (box.min.y + y * between, box.max.y) }, data);
}

static void
visit_segment (const TemplateCell *self, Point from, const Segment *segment, TemplateVisit visit, void *data)
{
  const double steps = fmax (1, 2 * ceil (segment_length (from, segment) / between));      /* twice: a curve's t is no length */

  for (double step = 0; step <= steps; step++)
    visit (point_add (self->origin, turned (segment_at (from, segment, step / steps), self->turned)), data);
}

static void
visit_line (const TemplateCell *self, const FlatLine *line, TemplateVisit visit, void *data)
{
  const Segment closing = segment_line (line->start);
  Point from = line->start;

  for (size_t k = 0; k < line->count; k++)
    {
      visit_segment (self, from, &line->segments[k], visit, data);
      from = line->segments[k].to;
    }
  if (line->closed)
    visit_segment (self, from, &closing, visit, data);
}

static void
visit_word (const SheetPen *pen, const TemplateCell *self, const FlatWord *word, TemplateVisit visit, void *data)
{
  const Box box = template_word_box (pen, word);
  const Point a = point_add (self->origin, turned (box.min, self->turned)), b = point_add (self->origin, turned (box.max, self->turned));

  template_box_visit ((Box) { { fmin (a.x, b.x), fmin (a.y, b.y) }, { fmax (a.x, b.x), fmax (a.y, b.y) } }, visit, data);
}

void
template_cell_visit (const SheetPen *pen, const TemplateCell *self, TemplateVisit visit, void *data)
{
  const FlatPiece *piece = self->piece;

  template_box_visit (caption (pen, piece, drawn_width (pen, self), self->box.min, false), visit, data);
  for (guint i = 0; i < piece->lines->len; i++)
    visit_line (self, &g_array_index (piece->lines, FlatLine, i), visit, data);
  for (guint i = 0; i < piece->words->len; i++)
    visit_word (pen, self, &g_array_index (piece->words, FlatWord, i), visit, data);
}
