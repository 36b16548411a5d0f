#include "drawing/flat-half.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/hinge.h"
#include "drawing/wall-sheet-pen.h"

static const double overhang = 3;      /* of a centre line past both edges, mm */
static const double words_aft = 0.7, words_ahead = 0.4;      /* share of the chord: clear of leads at the centre line, of controls at a break */
static const double beside = 1.2;      /* between a line and its words, mm */

void
flat_half_add_words (const FlatHalf *half, FlatPurpose purpose, double caps, Point own, Point off, const char *text)
{
  flat_piece_add_words (half->piece, purpose, caps, point_add (flat_place (half->surface, own), off), text);
}

/* Along a station line, read from the right, outboard of it. */
static void
add_words_along (const FlatHalf *half, Point own, const char *text)
{
  const Point at = flat_place (half->surface, own);

  flat_piece_add_word (half->piece, &(FlatWord) { .purpose = FLAT_CENTRE, .text = (char *) text, .at = { at.x + beside + caps_small, at.y },
                                                  .caps = caps_small, .across = 0.5, .turn = -90 });
}

static void
add_line_at (const FlatHalf *half, double station, double past, double words_at, const char *text)
{
  double leading, trailing;

  if (!hinge_edges (half->surface, station, &leading, &trailing))
    return;
  flat_add_way (half->piece, half->surface, FLAT_CENTRE, (Point) { leading - past, station }, (Point) { trailing + past, station });
  add_words_along (half, (Point) { leading + words_at * (trailing - leading), station }, text);
}

static void
add_break (const FlatHalf *half, const DihedralBreak *outboard)
{
  g_autofree char *angle = units_angle (outboard->angle);
  /* Translators: an angle, at the line from which a wing's panel rises by it */
  g_autofree char *words = g_strdup_printf (_("outboard of this line dihedral %s"), angle);

  add_line_at (half, outboard->from, 0, words_ahead, words);
}

void
flat_half_add_centre (const FlatHalf *half)
{
  const Surface *surface = half->surface;
  const Box box = outline_bounds (surface->outline);
  g_autofree char *angle = units_angle (surface->dihedral);
  g_autofree char *with_angle = g_strdup_printf (_("centre line, dihedral %s"), angle);

  if (!surface_is_horizontal (surface))
    return;
  if (!surface->root_open)
    add_line_at (half, 0, overhang, words_aft, surface->dihedral != 0 ? with_angle : _("centre line"));
  for (size_t i = 0; i < surface->break_count; i++)
    if (surface->breaks[i].from > 0 && surface->breaks[i].from < box.max.y)
      add_break (half, &surface->breaks[i]);
}

void
flat_half_add_ribs (const FlatHalf *half)
{
  for (size_t i = 0; i < half->surface->rib_count; i++)
    {
      const NamedPlace *rib = &half->surface->ribs[i];
      double leading, trailing;

      if (!hinge_edges (half->surface, rib->place, &leading, &trailing))
        continue;
      flat_add_way (half->piece, half->surface, FLAT_STATION, (Point) { leading, rib->place }, (Point) { trailing, rib->place });
      if (rib->name)
        flat_half_add_words (half, FLAT_STATION, caps_small, (Point) { leading, rib->place }, (Point) { beside, 3 * caps_small }, rib->name);
    }
}
