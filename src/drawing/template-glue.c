#include "trammel-config.h"
#include "drawing/template-glue.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "drawing/symbols.h"

static const double clear = 0.8;         /* about words, mm */
static const double beside = 1.2;        /* of lines, whose places are up to 2 mm apart */
static const double step = 1;            /* of the search along the strip */

static char *
words_of (const TemplateGlue *self)
{
  /* Translators: on a page's edge, with the name of the page that is glued on it: "Glue: B2 here" */
  return g_strdup_printf (_("Glue: %s here"), self->name);
}

static Box
words_box (const TemplateGlue *self, double width, Point middle)
{
  const Point half = self->upright ? (Point) { caps_small / 2, width / 2 } : (Point) { width / 2, caps_small / 2 };

  return box_grown ((Box) { point_sub (middle, half), point_add (middle, half) }, clear);
}

typedef struct { Box box; bool hit; } Search;

static void
note_hit (Point place, void *data)
{
  Search *search = data;

  search->hit |= place.x > search->box.min.x && place.x < search->box.max.x && place.y > search->box.min.y && place.y < search->box.max.y;
}

static bool
is_free (const GArray *cells, Box box)
{
  Search search = { box_grown (box, beside), false };

  for (guint i = 0; i < cells->len && !search.hit; i++)
    if (boxes_meet (search.box, g_array_index (cells, TemplateCell, i).box))
      template_cell_visit_lines (&g_array_index (cells, TemplateCell, i), ~0u, note_hit, &search);
  return !search.hit;
}

void
template_glue_find (const SheetPen *pen, TemplateGlue *self, const GArray *cells, Point to_area)
{
  g_autofree char *words = words_of (self);
  const double width = pen_width (pen, caps_small, words);
  const Point middle = point_mix (self->strip.min, self->strip.max, 0.5);
  const double room = (self->upright ? box_height (self->strip) : box_width (self->strip)) / 2 - width / 2 - 2 * clear;

  self->middle = middle;
  for (double away = 0; away <= room; away = away > 0 ? -away : step - away)
    {
      const Point at = point_add (middle, self->upright ? (Point) { 0, away } : (Point) { away, 0 });
      const Box box = words_box (self, width, at);

      if (is_free (cells, (Box) { point_add (box.min, to_area), point_add (box.max, to_area) }))
        {
          self->middle = at;
          return;
        }
    }
}

void
template_glue_draw_ground (const SheetPen *pen, const TemplateGlue *self)
{
  const Colour light = { 0.78, 0.78, 0.78, 1 };
  const double thin = 0.18;
  g_autofree char *words = words_of (self);
  const Box blank = words_box (self, pen_width (pen, caps_small, words), self->middle);

  draw_hatch (pen->cr, pen->look, self->strip, light);
  look_set_source (pen->cr, pen->look->sheet);
  cairo_rectangle (pen->cr, blank.min.x, blank.min.y, box_width (blank), box_height (blank));
  cairo_fill (pen->cr);
  pen_line (pen, thin, self->strip.min, self->upright ? (Point) { self->strip.min.x, self->strip.max.y } : (Point) { self->strip.max.x, self->strip.min.y });
}

void
template_glue_draw_words (const SheetPen *pen, const TemplateGlue *self)
{
  g_autofree char *words = words_of (self);

  cairo_save (pen->cr);
  cairo_translate (pen->cr, self->middle.x, self->middle.y);
  if (self->upright)
    cairo_rotate (pen->cr, -G_PI / 2);
  pen_write (pen, (Script) { { 0, caps_small / 2 }, caps_small, 0.5 }, words);
  cairo_restore (pen->cr);
}
