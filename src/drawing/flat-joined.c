#include "drawing/flat-half.h"

static void
add_reversed (GArray *run, const FlatLine *line)
{
  for (size_t i = line->count; i-- > 0;)
    {
      const Segment back = segment_reversed (i > 0 ? line->segments[i - 1].to : line->start, &line->segments[i]);

      g_array_append_val (run, back);
    }
}

/* Both edges run from the leading edge on the centre line by the tip to the trailing edge there: out on the one, back on the other. */
static void
add_edge (FlatPiece *piece, const FlatLine *starboard, const FlatLine *port)
{
  g_autoptr (GArray) run = g_array_new (FALSE, FALSE, sizeof (Segment));

  g_array_append_vals (run, starboard->segments, starboard->count);
  add_reversed (run, port);
  flat_piece_add_line (piece, FLAT_CUT, true, starboard->start, (const Segment *) (void *) run->data, run->len);
}

/* All that is drawn on a half but its edge; what is on the centre line from one half only. */
static void
add_rest (FlatPiece *piece, const FlatPiece *half, bool with_centre)
{
  for (guint i = 1; i < half->lines->len; i++)
    {
      const FlatLine *line = &g_array_index (half->lines, FlatLine, i);

      if (with_centre || line->purpose != FLAT_CENTRE)
        flat_piece_add_line (piece, line->purpose, line->closed, line->start, line->segments, line->count);
    }
  for (guint i = 0; i < half->words->len; i++)
    {
      const FlatWord *word = &g_array_index (half->words, FlatWord, i);

      if (with_centre || word->purpose != FLAT_CENTRE)
        flat_piece_add_word (piece, word);
    }
}

FlatPiece *
flat_halves_joined (const FlatPiece *starboard, const FlatPiece *port, const char *name)
{
  FlatPiece *piece = flat_piece_new (name, starboard->remark);

  add_edge (piece, &g_array_index (starboard->lines, FlatLine, 0), &g_array_index (port->lines, FlatLine, 0));
  add_rest (piece, starboard, true);
  add_rest (piece, port, false);
  return piece;
}
