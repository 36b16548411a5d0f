#include "drawing/template-cell.h"
#include <math.h>
#include "drawing/outline-path.h"
#include "drawing/template-keep.h"
#include "drawing/template-line.h"
#include "drawing/template-word.h"

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
  template_line_set (pen, line->purpose);
  outline_path_stretch (pen->cr, line->start, line->segments, line->count);
  if (line->closed)
    cairo_close_path (pen->cr);
  cairo_stroke (pen->cr);
  if (is_touched_from_aft (piece, line))
    draw_triangle (pen, line->start, line->segments[0].to);
}

static void
draw_lines (const SheetPen *pen, const FlatPiece *piece, bool firm)
{
  for (int purpose = FLAT_PURPOSE_COUNT - 1; purpose >= 0; purpose--)      /* edges last, over all else */
    for (guint i = 0; template_line_is_firm ((FlatPurpose) purpose) == firm && i < piece->lines->len; i++)
      if (g_array_index (piece->lines, FlatLine, i).purpose == (FlatPurpose) purpose)
        draw_line (pen, piece, &g_array_index (piece->lines, FlatLine, i));
}

/* Each carried to where no tile's edge cuts it; in the piece's own way, as words are. */
static void
draw_words (const SheetPen *pen, const TemplateCell *self)
{
  for (guint i = 0; i < self->piece->words->len; i++)
    {
      FlatWord word = g_array_index (self->piece->words, FlatWord, i);
      const Point by = template_keep_shift (pen, self, i);

      word.at = point_add (word.at, self->turned ? (Point) { -by.y, by.x } : by);
      template_word_draw (pen, &word, self->turned);
    }
}

void
template_cell_draw (const SheetPen *pen, const TemplateCell *self, TemplateInk ink)
{
  if (ink == TEMPLATE_WORDS)
    template_cell_caption_draw (pen, self);
  cairo_save (pen->cr);
  cairo_translate (pen->cr, self->origin.x, self->origin.y);
  if (self->turned)
    cairo_rotate (pen->cr, -M_PI / 2);
  cairo_new_path (pen->cr);
  if (ink == TEMPLATE_WORDS)
    draw_words (pen, self);
  else
    draw_lines (pen, self->piece, ink == TEMPLATE_FIRM);
  cairo_restore (pen->cr);
}
