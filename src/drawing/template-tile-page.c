#include "trammel-config.h"
#include "drawing/template-tile-page.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "drawing/control-lines.h"
#include "drawing/template-glue.h"
#include "drawing/template-map.h"
#include "drawing/template-tiles.h"

static const double arm = 4, eye = 1.5;                  /* of a cross */
static const double thin = 0.18;
static const double half = TEMPLATE_OVERLAP / 2;         /* from the field's edge to the crosses */

static Box
net_box (const TemplateTilePage *self)
{
  return box_grown (self->paper->field, -half);
}

static void
draw_cross (const SheetPen *pen, Point at)
{
  pen_line (pen, thin, (Point) { at.x - arm, at.y }, (Point) { at.x + arm, at.y });
  pen_line (pen, thin, (Point) { at.x, at.y - arm }, (Point) { at.x, at.y + arm });
  cairo_new_path (pen->cr);
  cairo_arc (pen->cr, at.x, at.y, eye, 0, 2 * G_PI);
  cairo_stroke (pen->cr);
}

static void
draw_crosses (const SheetPen *pen, Box net)
{
  draw_cross (pen, net.min);
  draw_cross (pen, (Point) { net.max.x, net.min.y });
  draw_cross (pen, (Point) { net.min.x, net.max.y });
  draw_cross (pen, net.max);
}

static void
draw_cut_line (const SheetPen *pen, Point from, Point to)
{
  pen_set_line (pen, thin);
  cairo_set_dash (pen->cr, (const double[]) { 3, 2 }, 2, 0);
  line_stroke (pen->cr, from, to);
}

/* Which neighbours it is glued to: those that something reaches over to. */
typedef struct { bool left, upper, right, lower; } Neighbours;

static Neighbours
neighbours_of (const TemplatePlaces *places, size_t index)
{
  return (Neighbours) { template_tiles_join (places, index, -1, 0), template_tiles_join (places, index, 0, -1),
                        template_tiles_join (places, index, 1, 0), template_tiles_join (places, index, 0, 1) };
}

static void
draw_trims (const SheetPen *pen, Box net, Neighbours beside)
{
  if (beside.left)
    draw_cut_line (pen, net.min, (Point) { net.min.x, net.max.y });
  if (beside.upper)
    draw_cut_line (pen, net.min, (Point) { net.max.x, net.min.y });
}

/* What reaches over to a neighbour is shown as far as the paper has room; what only lies near the edge, or beyond it, is not. Words are each
 * whole on one page. */
static void
draw_content (const SheetPen *pen, const TemplateTilePage *self, size_t index, Neighbours beside)
{
  const Box field = self->paper->field, net = net_box (self), tile = template_tile_box (&self->places->tiles, index);
  const Box seen = { { beside.left ? field.min.x : net.min.x, beside.upper ? field.min.y : net.min.y },
                     { beside.right ? field.max.x : net.max.x, beside.lower ? field.max.y : net.max.y } };

  for (int ink = 0; ink < TEMPLATE_INK_COUNT; ink++)
    {
      const Box shown = ink == TEMPLATE_WORDS ? net : seen;

      cairo_save (pen->cr);
      cairo_rectangle (pen->cr, shown.min.x, shown.min.y, box_width (shown), box_height (shown));
      cairo_clip (pen->cr);
      cairo_translate (pen->cr, field.min.x + half - tile.min.x, field.min.y + half - tile.min.y);
      template_places_draw (pen, self->places, self->notes, box_grown (tile, 0.5), (TemplateInk) ink);
      cairo_restore (pen->cr);
    }
}

/* One edge, and which neighbour goes there. */
static TemplateGlue
glue_of (const SheetPen *pen, const TemplateTilePage *self, size_t index, Box strip, bool upright)
{
  const Point to_area = point_sub (template_tile_box (&self->places->tiles, index).min, net_box (self).min);
  const size_t columns = self->places->tiles.columns, neighbour = upright ? index + 1 : index + columns;
  TemplateGlue glue = { .strip = strip, .upright = upright };

  template_tile_name (neighbour % columns, neighbour / columns, glue.name);
  template_glue_find (pen, &glue, self->places->cells, to_area);
  return glue;
}

/* Grounds of the right and the lower edge before all that is drawn, words behind it. */
static void
draw_glued (const SheetPen *pen, const TemplateTilePage *self, size_t index, Neighbours beside)
{
  const Box field = self->paper->field, net = net_box (self);
  TemplateGlue edges[2];
  size_t count = 0;

  if (beside.right)
    edges[count++] = glue_of (pen, self, index, (Box) { { net.max.x, net.min.y }, { field.max.x, net.max.y } }, true);
  if (beside.lower)
    edges[count++] = glue_of (pen, self, index, (Box) { { net.min.x, net.max.y }, { net.max.x, field.max.y } }, false);
  for (size_t i = 0; i < count; i++)
    template_glue_draw_ground (pen, &edges[i]);
  draw_content (pen, self, index, beside);
  for (size_t i = 0; i < count; i++)
    template_glue_draw_words (pen, &edges[i]);
}

/* Whose it is, and which page. */
static void
draw_words (const SheetPen *pen, const TemplateSheet *sheet, Box box, size_t page, size_t count)
{
  /* Translators: a page's number, how many there are, and its paper: "Page 2 of 6, A4" */
  g_autofree char *which = g_strdup_printf (_("Page %zu of %zu, %s"), page + 1, count, _(sheet->paper->title));
  const double next = 4.4;

  pen_write_within (pen, (Script) { { box.min.x, box.min.y + caps_figure }, caps_figure, 0 }, caps_small, box_width (box), sheet->title);
  pen_write_within (pen, (Script) { { box.min.x, box.min.y + caps_figure + next }, caps_text, 0 }, caps_field, box_width (box), which);
}

/* How far apart the crosses are: a longer rule than the control lines, behind their words. Gives where it ends. */
static double
draw_distance (const SheetPen *pen, const TemplatePaper *paper, Point foot)
{
  /* Translators: a distance across the page and one down it, whole mm */
  g_autofree char *words = g_strdup_printf (_("Crosses are %.0f × %.0f\u00A0mm apart."), paper->step.x, paper->step.y);

  pen_write (pen, (Script) { foot, caps_small, 0 }, words);
  return foot.x + pen_width (pen, caps_small, words);
}

static void
draw_foot (const SheetPen *pen, const TemplateTilePage *self, size_t index, size_t page, size_t count)
{
  const TemplatePaper *paper = self->paper;
  const TemplateTiles *tiles = &self->places->tiles;
  const double lines = paper->wide ? 170 : 118, name_width = 15, map_width = paper->wide ? 26 : 16, gap = 3, clear = 2;
  const double top = paper->field.max.y + clear, high = paper->wide ? 10 : 14;
  const Point corner = { paper->field.min.x, top };
  const Box map = { { paper->room.max.x - map_width, top }, { paper->room.max.x, top + high } };
  Box words = { { corner.x + lines, top }, { map.min.x - name_width - gap, top + high } };
  g_autofree char *corrected = template_correction_sentence (self->sheet);
  char name[8];

  control_lines_draw (pen, corner, paper->wide ? CONTROL_LINES_WIDE : CONTROL_LINES_NARROW);
  if (paper->wide)
    words.min.x = fmax (words.min.x, draw_distance (pen, paper, (Point) { corner.x + 118, top + 3 }) + gap);
  else
    draw_distance (pen, paper, (Point) { corner.x + 55, top + 13.9 });
  template_tile_name (index % tiles->columns, index / tiles->columns, name);
  pen_write (pen, (Script) { { map.min.x - gap, top + caps_title }, caps_title, 1 }, name);
  draw_words (pen, self->sheet, words, page, count);
  template_map_draw (pen, tiles, index, map);
  if (corrected != NULL)
    pen_write_within (pen, (Script) { { corner.x, paper->room.max.y }, caps_small, 0 }, caps_field, paper->room.max.x - corner.x, corrected);
}

void
template_tile_page_draw (const SheetPen *pen, const TemplateTilePage *self, size_t index, size_t page, size_t count)
{
  const Box net = net_box (self);
  const Neighbours beside = neighbours_of (self->places, index);

  draw_glued (pen, self, index, beside);
  draw_trims (pen, net, beside);
  draw_crosses (pen, net);
  control_line_draw_down (pen, (Point) { self->paper->room.min.x, net.min.y });
  draw_foot (pen, self, index, page, count);
}
