#include "trammel-config.h"
#include "drawing/cutting.h"
#include <glib/gi18n-lib.h>
#include "drawing/cutting-name.h"
#include "drawing/cutting-place.h"
#include "drawing/kerf.h"

const CuttingLayer *
cutting_layer (int layer)
{
  static const CuttingLayer layers[CUTTING_LAYER_COUNT] = {
    [FLAT_CUT]      = { "cut",     N_("Edges: cut, last"),           "#000000", 7 },
    [FLAT_OPENING]  = { "opening", N_("Openings: cut, before edges"), "#ff0000", 1 },
    [FLAT_HINGE]    = { "hinge",   N_("Hinge lines: cut or score"),  "#00ff00", 3 },
    [FLAT_BEVEL]    = { "bevel",   N_("Bevels: mark"),               "#bf00ff", 200 },
    [FLAT_STATION]  = { "station", N_("Stations: mark"),             "#808080", 8 },
    [FLAT_CENTRE]   = { "centre",  N_("Centre lines: mark"),         "#ff7f00", 30 },
    [FLAT_MARK]     = { "mark",    N_("Balance mark: mark"),         "#0000ff", 5 },
    [FLAT_LIMIT]    = { "limit",   N_("Limits: mark"),               "#ff00ff", 6 },
    [FLAT_ROOM]     = { "room",    N_("Servos, leads, spars: mark"),     "#00ffff", 4 },
    [FLAT_NAME]     = { "names",   N_("Names of pieces: not cut"),   "#007f00", 94 },
    [CUTTING_WORDS] = { "words",   N_("Words: not cut"),             "#7f3f00", 34 },
  };

  return &layers[layer];
}

int
cutting_layer_order (int i)
{
  static const int order[CUTTING_LAYER_COUNT] = { CUTTING_WORDS, FLAT_NAME, FLAT_ROOM, FLAT_STATION, FLAT_CENTRE, FLAT_LIMIT, FLAT_MARK,
                                                  FLAT_BEVEL, FLAT_HINGE, FLAT_OPENING, FLAT_CUT };

  return order[i];
}

int
cutting_word_layer (const FlatWord *word)
{
  return word->purpose == FLAT_NAME ? FLAT_NAME : CUTTING_WORDS;
}

/* A line each: what it is, the kerf, and what has to be known of a piece. */
static char *
description_of (const GPtrArray *pieces, double kerf)
{
  GString *text = g_string_new (_("Outlines for cutting at full size; one unit is one millimetre."));
  char number[G_ASCII_DTOSTR_BUF_SIZE];

  g_string_append_c (text, '\n');
  if (kerf > 0)
    g_string_append_printf (text, _("Edges and openings stand off for a cut %s mm wide; all other lines are where they are."),
                            g_ascii_formatd (number, sizeof number, "%.4g", kerf));
  else
    g_string_append (text, _("All lines are where they are: half the width of the cut goes off each edge."));
  for (guint i = 0; i < pieces->len; i++)
    {
      const FlatPiece *piece = pieces->pdata[i];
      if (piece->remark != NULL)
        g_string_append_printf (text, "\n%s: %s", piece->name, piece->remark);
    }
  return g_string_free (text, FALSE);
}

Cutting *
cutting_new (const GPtrArray *pieces, double kerf, const char *title)
{
  g_autoptr (GPtrArray) moved = g_ptr_array_new_with_free_func ((GDestroyNotify) flat_piece_free);
  Cutting *self = g_new (Cutting, 1);

  for (guint i = 0; i < pieces->len; i++)
    {
      FlatPiece *piece = kerf_piece (pieces->pdata[i], kerf);
      cutting_name_add (piece);
      g_ptr_array_add (moved, piece);
    }
  *self = (Cutting) { .title = g_strdup (title != NULL && *title != '\0' ? title : _("Unnamed")), .description = description_of (pieces, kerf) };
  self->pieces = cutting_place (moved, &self->width, &self->height);
  return self;
}

void
cutting_free (Cutting *self)
{
  if (self == NULL)
    return;
  g_ptr_array_unref (self->pieces);
  g_free (self->title);
  g_free (self->description);
  g_free (self);
}
