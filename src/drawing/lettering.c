#include "drawing/lettering.h"
#include <math.h>
#include <pango/pangocairo.h>
#include "drawing/lettering-lines.h"

/* Descender below the line, share of the em. */
static const double descent = 0.22;

static LinesPurpose
lettering_purpose (const Lettering *self)
{
  return !self->cr ? LINES_FOR_MEASURE : self->look->paper ? LINES_FOR_PAPER : LINES_FOR_SCREEN;
}

Lettering
lettering_begin (cairo_t *cr, const Look *look)
{
  const Lettering self = { .cr = cr, .look = look };

  lettering_lines_begin (lettering_purpose (&self), cr);
  return self;
}

static double
letters_size (const Lettering *self, const Letters *letters)
{
  return letters->size > 0 ? letters->size : self->look->text_size;
}

/* Thin, narrow without a break, or what parts a fraction from its inches: each is a hair in these letters. */
static bool
is_narrow (const char *at)
{
  const gunichar space = g_utf8_get_char (at);

  return space == 0x2009 || space == 0x202F || (space == 0x00A0 && g_ascii_isdigit (*g_utf8_next_char (at)));
}

char *
lettering_spaced (const char *text)
{
  GString *spaced = g_string_new (NULL);

  for (const char *at = text; *at != '\0'; at = g_utf8_next_char (at))
    if (is_narrow (at))
      g_string_append (spaced, "\u00A0\u200A");
    else
      g_string_append_unichar (spaced, g_utf8_get_char (at));
  return g_string_free (spaced, FALSE);
}

static PangoLayout *
letters_layout (const Lettering *self, const Letters *letters, bool turned)
{
  return lettering_lines_find (lettering_purpose (self), &(LineOfLetters) {
    .text = letters->text, .font = self->look->font, .size = letters_size (self, letters), .bold = letters->bold, .turned = turned });
}

/* As they stand upright: turned, they take the same room. */
static double
letters_advance (const Lettering *self, const Letters *letters)
{
  PangoRectangle logical;

  pango_layout_get_extents (letters_layout (self, letters, false), NULL, &logical);
  return logical.width / (double) PANGO_SCALE;
}

/* How far below its place the letters' line runs, in their own frame. */
static double
letters_drop (const Lettering *self, const Letters *letters)
{
  const double cap = letters_size (self, letters) * self->look->cap_height;

  return letters->rise == LETTERS_ON_LINE ? 0 : letters->rise == LETTERS_AT_MIDDLE ? cap / 2 : cap;
}

/* The box in the letters' own frame, whose origin is their place. */
static Box
letters_own_box (const Lettering *self, const Letters *letters, double width)
{
  const double size = letters_size (self, letters), left = -width * letters->across, line = letters_drop (self, letters);

  return (Box) { { left, line - size * self->look->cap_height }, { left + width, line + size * descent } };
}

static Box
letters_place_box (const Letters *letters, Box own)
{
  const Point at = letters->place;

  if (letters->turned)      /* a quarter turn to the left: (x, y) goes to (y, -x) */
    return (Box) { { at.x + own.min.y, at.y - own.max.x }, { at.x + own.max.y, at.y - own.min.x } };
  return (Box) { point_add (own.min, at), point_add (own.max, at) };
}

Box
lettering_box (const Lettering *self, const Letters *letters)
{
  return letters_place_box (letters, letters_own_box (self, letters, letters_advance (self, letters)));
}

static void
lettering_draw_plate (const Lettering *self, Box own)
{
  const double beyond = 2 * self->look->u;
  Colour plate = self->look->sheet;

  plate.alpha = 0.92;
  look_set_source (self->cr, plate);
  cairo_rectangle (self->cr, own.min.x - beyond, own.min.y - beyond, own.max.x - own.min.x + 2 * beyond, own.max.y - own.min.y + 2 * beyond);
  cairo_fill (self->cr);
}

/* The shape of the letters, widened: exact, and slow. */
static void
lettering_draw_halo_path (const Lettering *self, const Letters *letters, PangoLayoutLine *line)
{
  pango_cairo_layout_line_path (self->cr, line);
  cairo_set_line_width (self->cr, 2 * letters->halo);
  cairo_set_line_join (self->cr, CAIRO_LINE_JOIN_ROUND);
  cairo_set_dash (self->cr, NULL, 0, 0);
  cairo_stroke (self->cr);
}

enum { DIRECTIONS = 8 };

/* A run's glyphs, each once in every direction about where it stands; how many there are. */
static int
glyphs_all_round (const PangoGlyphString *run, Point at, double reach, cairo_glyph_t *glyphs)
{
  int count = 0;

  for (int i = 0; i < run->num_glyphs; i++)
    {
      const PangoGlyphInfo *glyph = &run->glyphs[i];
      const Point place = { at.x + glyph->geometry.x_offset / (double) PANGO_SCALE, at.y + glyph->geometry.y_offset / (double) PANGO_SCALE };

      at.x += glyph->geometry.width / (double) PANGO_SCALE;
      for (int j = 0; j < DIRECTIONS && glyph->glyph != PANGO_GLYPH_EMPTY && !(glyph->glyph & PANGO_GLYPH_UNKNOWN_FLAG); j++)
        {
          const double angle = j * 2 * G_PI / DIRECTIONS;

          glyphs[count++] = (cairo_glyph_t) { glyph->glyph, place.x + reach * cos (angle), place.y + reach * sin (angle) };
        }
    }
  return count;
}

/* The letters again, all round, and all at once: a small part of the time, since glyphs come from a cache, and at 2 px nobody sees the
 * difference. On a screen words took half of every frame. */
static void
lettering_draw_halo_round (const Lettering *self, const Letters *letters, PangoLayoutLine *line)
{
  Point at;

  cairo_get_current_point (self->cr, &at.x, &at.y);
  for (GSList *run = line->runs; run != NULL; run = run->next)
    {
      const PangoGlyphItem *item = run->data;
      cairo_glyph_t *glyphs = g_new (cairo_glyph_t, (size_t) item->glyphs->num_glyphs * DIRECTIONS);

      cairo_set_scaled_font (self->cr, pango_cairo_font_get_scaled_font (PANGO_CAIRO_FONT (item->item->analysis.font)));
      cairo_show_glyphs (self->cr, glyphs, glyphs_all_round (item->glyphs, at, letters->halo, glyphs));
      at.x += pango_glyph_string_get_width (item->glyphs) / (double) PANGO_SCALE;
      g_free (glyphs);
    }
}

static void
lettering_draw_halo (const Lettering *self, const Letters *letters, PangoLayoutLine *line)
{
  Colour halo = self->look->sheet;

  halo.alpha = self->look->paper ? 0.92 : 1;
  look_set_source (self->cr, halo);
  if (self->look->paper)
    lettering_draw_halo_path (self, letters, line);
  else
    lettering_draw_halo_round (self, letters, line);
}

/* Glyphs stand on whole pixels in a picture, which spaces small letters unevenly: on paper their shapes are filled instead. */
static void
lettering_ink (const Lettering *self, PangoLayoutLine *line)
{
  const bool picture = cairo_surface_get_type (cairo_get_target (self->cr)) == CAIRO_SURFACE_TYPE_IMAGE;

  if (self->look->paper && picture)
    {
      pango_cairo_layout_line_path (self->cr, line);
      cairo_fill (self->cr);
    }
  else
    pango_cairo_show_layout_line (self->cr, line);
}

void
lettering_draw (const Lettering *self, const Letters *letters)
{
  cairo_t *cr = self->cr;
  const Box own = letters_own_box (self, letters, letters_advance (self, letters));
  PangoLayout *layout = letters_layout (self, letters, letters->turned);
  PangoLayoutLine *line;

  if (self->look->halo)
    return;
  cairo_save (cr);
  cairo_translate (cr, letters->place.x, letters->place.y);
  if (letters->turned)
    cairo_rotate (cr, -G_PI / 2);
  lettering_lines_fit (lettering_purpose (self), cr, letters->turned);
  line = pango_layout_get_line_readonly (layout, 0);
  if (letters->plate)
    lettering_draw_plate (self, own);
  cairo_move_to (cr, own.min.x, letters_drop (self, letters));
  if (letters->halo > 0)
    {
      lettering_draw_halo (self, letters, line);
      cairo_move_to (cr, own.min.x, letters_drop (self, letters));
    }
  look_set_source (cr, letters->colour.alpha > 0 ? letters->colour : self->look->graphite);
  lettering_ink (self, line);
  cairo_new_path (cr);
  cairo_restore (cr);
}
