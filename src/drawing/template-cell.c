#include "drawing/template-cell.h"
#include <math.h>
#include "drawing/template-keep.h"
#include "drawing/template-word.h"

static const double above = 3;                       /* between the words above and what is drawn, mm */
static const double leading = 1.7;                   /* of lines of words, in their capitals */
static const double narrowest = 55, widest = 120;    /* what words above a small piece may take, and above a large one */
static const double between = 2;                     /* of places on a walk */

Point
template_cell_place (const TemplateCell *self, Point own)
{
  return point_add (self->origin, self->turned ? (Point) { own.y, -own.x } : own);
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
  g_auto (GStrv) lines = piece->remark != NULL ? pen_wrapped (pen, caps_text, fmin (fmax (width, narrowest), widest), piece->remark) : NULL;
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
template_cell (const SheetPen *pen, const FlatPiece *piece, bool turn, const Point *step)
{
  const Box drawn = drawn_box (pen, piece, turn);
  const Box words = caption (pen, piece, box_width (drawn), (Point) { 0, 0 }, false);
  const double down = words.max.y + above;

  return (TemplateCell) { .piece = piece, .turned = turn, .origin = { -drawn.min.x, down - drawn.min.y },
                          .box = { { 0, 0 }, { fmax (words.max.x, box_width (drawn)), down + box_height (drawn) } }, .caption = words.max,
                          .step = step != NULL ? *step : (Point) { 0, 0 } };
}

void
template_cell_move (TemplateCell *self, Point by)
{
  self->origin = point_add (self->origin, by);
  self->box = (Box) { point_add (self->box.min, by), point_add (self->box.max, by) };
}

/* Words above take as much, and break into the same lines as when they were measured. */
void
template_cell_caption_draw (const SheetPen *pen, const TemplateCell *self)
{
  caption (pen, self->piece, box_width (drawn_box (pen, self->piece, self->turned)), template_keep_caption (self), true);
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
    visit (template_cell_place (self, segment_at (from, segment, step / steps)), data);
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

void
template_cell_visit_lines (const TemplateCell *self, unsigned purposes, TemplateVisit visit, void *data)
{
  for (guint i = 0; i < self->piece->lines->len; i++)
    {
      const FlatLine *line = &g_array_index (self->piece->lines, FlatLine, i);

      if (purposes & 1u << line->purpose)
        visit_line (self, line, visit, data);
    }
}

void
template_cell_visit (const SheetPen *pen, const TemplateCell *self, TemplateVisit visit, void *data)
{
  const Point above_it = template_keep_caption (self);

  template_box_visit ((Box) { above_it, point_add (above_it, self->caption) }, visit, data);
  template_cell_visit_lines (self, ~0u, visit, data);
  for (guint i = 0; i < self->piece->words->len; i++)
    template_box_visit (template_keep_word (pen, self, i), visit, data);
}
