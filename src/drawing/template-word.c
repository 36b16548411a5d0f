#include "drawing/template-word.h"
#include <math.h>

static const double descent = 0.35;      /* of a small letter below its foot, in capitals */
static const double clear = 0.26;        /* lines keep off the letters by it, in ems */

static double
caps_of (const SheetPen *pen, const FlatWord *word)
{
  return flat_word_caps (word, pen_width (pen, word->caps, word->text));
}

Box
template_word_box (const SheetPen *pen, const FlatWord *word)
{
  const double caps = caps_of (pen, word), width = pen_width (pen, caps, word->text), turn = word->turn * M_PI / 180;
  const double left = -word->across * width, right = left + width, top = -caps, foot = descent * caps;
  const Point corners[] = { { left, top }, { right, top }, { right, foot }, { left, foot } };
  Box box = { { INFINITY, INFINITY }, { -INFINITY, -INFINITY } };

  for (size_t i = 0; i < G_N_ELEMENTS (corners); i++)
    {
      const Point at = { word->at.x + corners[i].x * cos (turn) - corners[i].y * sin (turn),
                         word->at.y + corners[i].x * sin (turn) + corners[i].y * cos (turn) };
      box = box_with (box, at);
    }
  return box;
}

/* Read from below or from the right, as on any drawing; along a swept line a little beyond that. */
static bool
is_on_its_head (double degrees)
{
  const double turn = remainder (degrees, 360), beyond = 20;

  return turn > 90 - beyond || turn < -90 - beyond;
}

void
template_word_draw (const SheetPen *pen, const FlatWord *word, bool piece_is_turned)
{
  const double caps = caps_of (pen, word), em = look_em_of_caps (pen->look, caps);
  const bool over = is_on_its_head (word->turn - (piece_is_turned ? 90 : 0));

  cairo_save (pen->cr);
  cairo_translate (pen->cr, word->at.x, word->at.y);
  cairo_rotate (pen->cr, word->turn * M_PI / 180);
  if (over)
    {
      cairo_translate (pen->cr, 0, -caps);
      cairo_rotate (pen->cr, M_PI);
    }
  lettering_draw (&pen->lettering, &(Letters) { .text = word->text, .size = em, .across = over ? 1 - word->across : word->across, .halo = clear * em });
  cairo_restore (pen->cr);
}
