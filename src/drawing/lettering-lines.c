#include "drawing/lettering-lines.h"

#include <glib.h>
#include <pango/pangocairo.h>
#include <string.h>
#include "drawing/lettering.h"

enum { PURPOSES = LINES_FOR_PAPER + 1, LINES_MOST = 500 };

typedef struct { LinesPurpose purpose; LineOfLetters line; PangoLayout *layout; } Laid;
/* A context of pango's and the drawing that it was last fitted to: fitted again, even to the same, it would lay out all lines anew. */
typedef struct { PangoContext *context; cairo_matrix_t matrix; cairo_font_options_t *options; } Stand;
typedef struct { Stand stands[PURPOSES][2]; GHashTable *laid; cairo_font_options_t *seen; } Lines;

static void
laid_free (gpointer data)
{
  Laid *self = data;

  g_free ((char *) self->line.text);
  g_free ((char *) self->line.font);
  g_object_unref (self->layout);
  g_free (self);
}

static guint
laid_hash (gconstpointer data)
{
  const Laid *self = data;

  return g_str_hash (self->line.text) ^ g_double_hash (&self->line.size) ^ (guint) (self->purpose << 2 | self->line.bold << 1 | self->line.turned);
}

static gboolean
laid_equal (gconstpointer a, gconstpointer b)
{
  const Laid *one = a, *other = b;

  return one->purpose == other->purpose && one->line.size == other->line.size && one->line.bold == other->line.bold
         && one->line.turned == other->line.turned && strcmp (one->line.text, other->line.text) == 0
         && strcmp (one->line.font, other->line.font) == 0;
}

static void
lines_free (gpointer data)
{
  Lines *self = data;

  for (int i = 0; i < PURPOSES; i++)
    for (int turned = 0; turned < 2; turned++)
      {
        g_clear_object (&self->stands[i][turned].context);
        g_clear_pointer (&self->stands[i][turned].options, cairo_font_options_destroy);
      }
  cairo_font_options_destroy (self->seen);
  g_hash_table_unref (self->laid);
  g_free (self);
}

static Lines *
lines_of_thread (void)
{
  static GPrivate mine = G_PRIVATE_INIT (lines_free);
  Lines *self = g_private_get (&mine);

  if (!self)
    {
      self = g_new0 (Lines, 1);
      self->seen = cairo_font_options_create ();
      self->laid = g_hash_table_new_full (laid_hash, laid_equal, NULL, laid_free);
      g_private_set (&mine, self);
    }
  return self;
}

static PangoContext *
context_new (LinesPurpose purpose)
{
  PangoContext *context = pango_font_map_create_context (pango_cairo_font_map_get_default ());

  /* Whole user units would be whole millimetres on paper. */
  pango_context_set_round_glyph_positions (context, FALSE);
  if (purpose != LINES_FOR_SCREEN)
    {
      cairo_font_options_t *options = cairo_font_options_create ();

      cairo_font_options_set_hint_metrics (options, CAIRO_HINT_METRICS_OFF);
      if (purpose == LINES_FOR_PAPER)
        cairo_font_options_set_hint_style (options, CAIRO_HINT_STYLE_NONE);
      pango_cairo_context_set_font_options (context, options);
      cairo_font_options_destroy (options);
    }
  return context;
}

static bool
same_directions (const cairo_matrix_t *a, const cairo_matrix_t *b)
{
  return a->xx == b->xx && a->xy == b->xy && a->yx == b->yx && a->yy == b->yy;
}

static void
stand_fit (Stand *self, cairo_t *cr, cairo_font_options_t *seen)
{
  cairo_matrix_t matrix;

  cairo_get_matrix (cr, &matrix);
  cairo_surface_get_font_options (cairo_get_target (cr), seen);
  if (self->options && same_directions (&matrix, &self->matrix) && cairo_font_options_equal (seen, self->options))
    return;
  g_clear_pointer (&self->options, cairo_font_options_destroy);
  self->options = cairo_font_options_copy (seen);
  self->matrix = matrix;
  pango_cairo_update_context (cr, self->context);
}

void
lettering_lines_fit (LinesPurpose purpose, cairo_t *cr, bool turned)
{
  Lines *self = lines_of_thread ();

  stand_fit (&self->stands[purpose][turned], cr, self->seen);
}

void
lettering_lines_begin (LinesPurpose purpose, cairo_t *cr)
{
  Lines *self = lines_of_thread ();

  if (g_hash_table_size (self->laid) > LINES_MOST)
    g_hash_table_remove_all (self->laid);
  for (int turned = 0; turned < 2; turned++)
    if (!self->stands[purpose][turned].context)
      self->stands[purpose][turned].context = context_new (purpose);
  if (cr)
    stand_fit (&self->stands[purpose][0], cr, self->seen);
}

static PangoLayout *
lay_out (PangoContext *context, const LineOfLetters *line)
{
  PangoLayout *layout = pango_layout_new (context);
  PangoAttrList *attributes = pango_attr_list_new ();
  PangoFontDescription *font = pango_font_description_new ();
  g_autofree char *spaced = lettering_spaced (line->text);

  pango_attr_list_insert (attributes, pango_attr_font_features_new ("tnum=1"));
  pango_layout_set_attributes (layout, attributes);
  pango_attr_list_unref (attributes);
  pango_layout_set_single_paragraph_mode (layout, TRUE);
  pango_font_description_set_family (font, line->font);
  pango_font_description_set_weight (font, line->bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
  pango_font_description_set_absolute_size (font, line->size * PANGO_SCALE);
  pango_layout_set_font_description (layout, font);
  pango_font_description_free (font);
  pango_layout_set_text (layout, spaced, -1);
  return layout;
}

PangoLayout *
lettering_lines_find (LinesPurpose purpose, const LineOfLetters *line)
{
  Lines *self = lines_of_thread ();
  const Laid wanted = { .purpose = purpose, .line = *line };
  Laid *found = g_hash_table_lookup (self->laid, &wanted);

  if (!found)
    {
      found = g_new (Laid, 1);
      *found = wanted;
      found->line.text = g_strdup (line->text);
      found->line.font = g_strdup (line->font);
      found->layout = lay_out (self->stands[purpose][line->turned].context, line);
      g_hash_table_add (self->laid, found);
    }
  return found->layout;
}
