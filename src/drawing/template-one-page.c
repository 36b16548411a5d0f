#include "drawing/template-one-page.h"
#include <math.h>
#include "drawing/control-lines.h"
#include "drawing/template-paper.h"

static const double margin = 10, gap = 6;                /* mm */
static const double column = TEMPLATE_COLUMN + 4;        /* of the line down the page */
static const double lines_width = 165, lines_height = 10, line_down = 102;
static const double sentence_height = 4;

/* How much of the page lies beneath the pieces. */
static double
foot_height (const TemplateSheet *sheet)
{
  g_autofree char *corrected = template_correction_sentence (sheet);

  return gap + lines_height + (corrected != NULL ? sentence_height : 0);
}

static double
content_height (const TemplatePlaces *places)
{
  return fmax (places->size.y, line_down);
}

Point
template_one_page_size (const TemplateSheet *sheet, const TemplatePlaces *places)
{
  return (Point) { 2 * margin + column + fmax (places->size.x, lines_width),
                   2 * margin + content_height (places) + foot_height (sheet) };
}

void
template_one_page_draw (const SheetPen *pen, const TemplateSheet *sheet, const TemplatePlaces *places, const TemplateNotes *notes)
{
  const Point corner = { margin + column, margin };
  const double foot = margin + content_height (places) + gap;
  g_autofree char *corrected = template_correction_sentence (sheet);

  cairo_save (pen->cr);
  cairo_translate (pen->cr, corner.x, corner.y);
  for (int ink = 0; ink < TEMPLATE_INK_COUNT; ink++)
    template_places_draw (pen, places, notes, (Box) { { 0, 0 }, places->size }, (TemplateInk) ink);
  cairo_restore (pen->cr);
  control_line_draw_down (pen, (Point) { margin, margin });
  control_lines_draw (pen, (Point) { corner.x, foot }, CONTROL_LINES_WIDE);
  if (corrected != NULL)
    pen_write_within (pen, (Script) { { corner.x, foot + lines_height + sentence_height - 1 }, caps_small, 0 }, caps_field, lines_width, corrected);
}
