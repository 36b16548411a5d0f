#include "trammel-config.h"
#include "figures/passed-click.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/flight-figures.h"
#include "figures/names.h"
#include "figures/notes.h"

/* The clicks that a piece's outlines pass; the ends of the list are NULL. */
typedef struct { const PassedClick *each[2]; } PassedClicks;

static const PassedClick *
if_any (const PassedClick *passed)
{
  return passed->by > 0 ? passed : NULL;
}

static PassedClicks
passed_clicks (const Piece *piece)
{
  const Surface *surface = piece->kind == PIECE_SURFACE ? (const Surface *) piece : NULL;
  const Body *body = piece->kind == PIECE_BODY ? (const Body *) piece : NULL;

  if (surface)
    return (PassedClicks) { { if_any (&surface->passed) } };
  return body ? (PassedClicks) { { if_any (&body->passed), if_any (&body->side_passed) } } : (PassedClicks) { { NULL } };
}

static char *
stepping_words (const Surface *surface, const char *at, const char *off)
{
  const char *name = piece_name (&surface->piece);

  if (!surface_is_horizontal (surface))
    return g_strdup_printf (_("“%s” goes aside at height %s by %s over bare paper, to another line maybe: hold V over its print and look, then "
                              "trace it again with more clicks there, or accept it."), name, at, off);
  return g_strdup_printf (_("“%s” goes aside at station %s by %s over bare paper, to another line maybe: hold V over its print and look, then "
                            "trace it again with more clicks there, or accept it."), name, at, off);
}

/* A height where it is of a fin, and where it is of a surface a station: both without a sign. */
char *
passed_click_words (const Piece *piece, const PassedClick *passed, Units units)
{
  const bool body = piece->kind == PIECE_BODY;
  g_autofree char *off = units_length_known (units, passed->by);
  g_autofree char *at = units_length (units, body ? passed->at.x : fabs (passed->at.y));
  const char *name = piece_name (piece);

  if (body && passed->aside)
    return g_strdup_printf (_("“%s” from the side runs out and back %s aft of the datum, by %s: if that is a fin, trace it again with clicks at "
                              "both ends of its root, else accept it."), name, at, off);
  if (body && passed == &((const Body *) piece)->side_passed)
    return g_strdup_printf (_("“%s” from the side passes your click %s aft of the datum by %s: hold V over its print and look, then trace "
                              "it again with more clicks there, or accept it."), name, at, off);
  if (body)
    return g_strdup_printf (_("“%s” from above passes your click %s aft of the datum by %s: hold V over its print and look, then trace "
                              "it again with more clicks there, or accept it."), name, at, off);
  if (passed->aside)
    return stepping_words ((const Surface *) piece, at, off);
  if (!surface_is_horizontal ((const Surface *) piece))
    return g_strdup_printf (_("“%s” passes your click at height %s by %s: hold V over its print and look, then trace it again with more "
                              "clicks there, or accept it."), name, at, off);
  return g_strdup_printf (_("“%s” passes your click at station %s by %s: hold V over its print and look, then trace it again with more "
                            "clicks there, or accept it."), name, at, off);
}

char *
passed_clicks_of (const Piece *piece, Units units)
{
  const PassedClicks clicks = passed_clicks (piece);
  g_autofree char *first = clicks.each[0] ? passed_click_words (piece, clicks.each[0], units) : NULL;
  g_autofree char *second = clicks.each[1] ? passed_click_words (piece, clicks.each[1], units) : NULL;

  if (first && second)
    return g_strdup_printf ("%s\n%s", first, second);
  return first ? g_steal_pointer (&first) : g_steal_pointer (&second);
}

void
passed_click_note (const Figures *figures, GPtrArray *notes)
{
  const Units millimetres = { LENGTH_MM, MASS_G };

  for (size_t i = 0; i < aeroplane_piece_count (figures->aeroplane); i++)
    {
      const Piece *piece = aeroplane_piece (figures->aeroplane, i);
      const PassedClicks clicks = passed_clicks (piece);

      for (size_t k = 0; k < G_N_ELEMENTS (clicks.each); k++)
        if (clicks.each[k])
          {
            g_autofree char *text = passed_click_words (piece, clicks.each[k], millimetres);

            notes_add (notes, NOTE_LOOK, piece, "%s", text);
            ((Note *) g_ptr_array_index (notes, notes->len - 1))->passed = clicks.each[k];
          }
    }
}

char *
note_words (const Note *note, Units units)
{
  if (note->loading_g_dm2 > 0)
    return flight_loading_words (note->loading_g_dm2, note->most_loading_g_dm2, units);
  return note->passed ? passed_click_words (note->piece, note->passed, units) : g_strdup (note->text);
}
