#include "drawing/flat-half.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/hinge.h"
#include "drawing/spar-runs.h"
#include "drawing/wall-sheet-pen.h"

static const double mark_half = 8, rib_half = 4, limit_half = 5;      /* half the length of a tick along the span, mm */
static const double line = 4;                           /* from one line of words to the next, mm */

static const double on_rib = 0.5;                       /* nearer than that a mark is on a rib, mm */

/* One mark on a half; x as the document has it. */
typedef struct {
  const FlatHalf *half;
  const MarkFigures *mark;
  double x;
  const NamedPlace *rib;      /* nearest to it; NULL where none has a name */
  double outboard;            /* of the rib, along the surface */
} MarkDraft;

static void
add_tick (const MarkDraft *draft, FlatPurpose purpose, double station, double x, double length)
{
  flat_add_way (draft->half->piece, draft->half->surface, purpose, (Point) { x, fmax (0, station - length) }, (Point) { x, station + length });
}

/* Words under way: no line of a spar goes through them, nor too near. */
typedef struct { const MarkDraft *draft; double caps, down, step; } OffSpars;

static void
keep_off_spar (const StructureItem *spar, void *data)
{
  static const double clear = 0.8, descent = 0.35;      /* mm; of a small letter below its foot, in capitals */
  OffSpars *self = data;
  const double half = spar->width > 0 ? spar->width / 2 : 0, above = self->caps / 2 + clear;
  const double below = self->caps / 2 + descent * self->caps + clear, first = spar->x - half - self->draft->x, last = spar->x + half - self->draft->x;

  if (self->down + below > first && self->down - above < last)
    self->down = self->step < 0 ? first - below : last + above;
}

/* The same place down the wing, or the next beyond the spars in that direction. */
static double
off_spars (const MarkDraft *draft, double caps, double down, double step)
{
  OffSpars words = { draft, caps, down, step };

  spars_visit (draft->half->figures->aeroplane, draft->half->surface, keep_off_spar, &words);
  return words.down;
}

/* Words beside the mark, `down` mm further down than it, outboard of its tick and of the rib's. Gives how far down they stand. */
static double
add_words (const MarkDraft *draft, FlatPurpose purpose, double caps, double down, const char *text)
{
  const double tick = draft->rib ? fmax (mark_half, fmin (-draft->outboard, 3 * mark_half) + rib_half) : mark_half;
  const double free_down = off_spars (draft, caps, down, down);

  flat_half_add_words (draft->half, purpose, caps, (Point) { draft->x, draft->mark->station_mm }, (Point) { tick + 2, free_down + caps / 2 }, text);
  return free_down;
}

/* A limit's words stand at its tick, or as near to it as the mark's leave room; how far down, 0 for one that is not there. */
static double
add_limit (const MarkDraft *draft, double aft_of_edge, bool forward)
{
  g_autofree char *length = paper_length (draft->half->units, aft_of_edge);
  g_autofree char *words = g_strdup_printf (forward ? _("forward limit %s") : _("aft limit %s"), length);
  const double away = aft_of_edge - draft->mark->target_mm;

  if (!(aft_of_edge > 0 && aft_of_edge < draft->mark->chord_mm))
    return 0;
  add_tick (draft, FLAT_LIMIT, draft->mark->station_mm, draft->mark->leading_edge_x_mm + aft_of_edge, limit_half);
  return add_words (draft, FLAT_LIMIT, caps_small, forward ? fmin (away, -line) : fmax (away, line), words);
}

static void
find_rib (MarkDraft *draft)
{
  const Surface *surface = draft->half->surface;
  const double own = flat_station (surface, draft->mark->station_mm);

  for (size_t i = 0; i < surface->rib_count; i++)
    {
      const double away = own - flat_station (surface, surface->ribs[i].place);

      if (surface->ribs[i].name && (!draft->rib || fabs (away) < fabs (draft->outboard)))
        {
          draft->rib = &surface->ribs[i];
          draft->outboard = away;
        }
    }
}

/* The same line across the aeroplane on the rib, where wood is under the finger. */
static void
add_mark_on_rib (const MarkDraft *draft, double down)
{
  const NamedPlace *rib = draft->rib;
  double leading, trailing;

  if (!hinge_edges (draft->half->surface, rib->place, &leading, &trailing) || draft->x <= leading || draft->x >= trailing)
    return;
  g_autofree char *length = paper_length (draft->half->units, draft->x - leading);
  g_autofree char *words = g_strdup_printf (_("on rib %s it is %s aft of the leading edge"), rib->name, length);
  add_tick (draft, FLAT_MARK, rib->place, draft->x, rib_half);
  add_words (draft, FLAT_MARK, caps_small, down, words);
}

static char *
station_words (const MarkDraft *draft)
{
  g_autofree char *station = paper_length (draft->half->units, draft->mark->station_mm);
  g_autofree char *away = paper_length (draft->half->units, fabs (draft->outboard));

  if (!draft->rib)
    return g_strdup_printf (_("mark at station %s"), station);
  if (fabs (draft->outboard) < on_rib)
    return g_strdup_printf (_("mark at station %s, on rib %s"), station, draft->rib->name);
  return g_strdup_printf (draft->outboard > 0 ? _("mark at station %s, %s outboard of rib %s") : _("mark at station %s, %s inboard of rib %s"),
                          station, away, draft->rib->name);
}

static void
add_station_words (const MarkDraft *draft, double down)
{
  g_autofree char *words = station_words (draft);
  const double stood = add_words (draft, FLAT_MARK, caps_small, down, words);

  if (draft->rib && fabs (draft->outboard) >= on_rib)
    add_mark_on_rib (draft, stood + line);
}

static void
add_mark (const FlatHalf *half, const MarkFigures *mark)
{
  MarkDraft draft = { .half = half, .mark = mark, .x = mark->leading_edge_x_mm + mark->target_mm };
  g_autofree char *length = paper_length (half->units, mark->target_mm);
  g_autofree char *words = g_strdup_printf (_("balance mark, %s aft of the leading edge"), length);

  find_rib (&draft);
  /* No rib stands there: a chain line. */
  flat_add_way (half->piece, half->surface, FLAT_CENTRE, (Point) { mark->leading_edge_x_mm, mark->station_mm },
                (Point) { mark->leading_edge_x_mm + mark->chord_mm, mark->station_mm });
  add_tick (&draft, FLAT_MARK, mark->station_mm, draft.x, mark_half);
  add_words (&draft, FLAT_MARK, caps_text, 0, words);
  add_limit (&draft, mark->forward_mm, true);
  add_station_words (&draft, fmax (line, add_limit (&draft, mark->aft_mm, false)) + line);
}

void
flat_half_add_marks (const FlatHalf *half)
{
  const BalanceFigures *balance = &half->figures->balance;

  if (!half->figures->reference || half->figures->reference->surface != half->surface)
    return;
  for (size_t i = 0; i < balance->mark_count; i++)
    if (balance->marks[i].target_mm > 0 && balance->marks[i].target_mm < balance->marks[i].chord_mm)
      add_mark (half, &balance->marks[i]);
}
