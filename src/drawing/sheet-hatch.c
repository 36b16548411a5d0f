#include "drawing/sheet-draft.h"
#include <math.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "drawing/side-hatch.h"
#include "drawing/symbols.h"
#include "figures/hatch-shape.h"
#include "figures/report-hatch.h"

/* A thin line from the hatch's corner to its word, as a part's name has one. */
static void
draw_leader_to (const SheetDraft *draft, Point corner, const Letters *word)
{
  const double air = look_size (draft->look, 3, 1);
  const Point end = { word->place.x + (word->across > 0 ? air : -air), word->place.y };

  line_kind_set (draft->cr, draft->look, LINE_CONSTRUCTION);
  look_set_source (draft->cr, draft->look->construction);
  line_stroke (draft->cr, corner, end);
}

/* An edge's distance from the nearest former, outside the body and as near to the edge's height as there is room. Of an edge that is not in
 * sight nothing is said. */
static void
draw_edge_word (SheetDraft *draft, double x, double beside, double half, const char *before)
{
  static const double ways[] = { 0, -0.5, 0.5, -1, 1, -1.5, 1.5, -2, 2 };
  const double off = look_size (draft->look, 14, 4.2), step = look_size (draft->look, 15, 4.5);
  const double y = draft->figures->hatch.part->y, level = sheet_px (draft->view, x, y).y;
  g_autofree char *edge = hatch_edge_text (draft->aeroplane, x, draft->scene->units);
  g_autofree char *words = edge && before ? g_strdup_printf ("%s, %s", before, edge) : g_strdup (edge ? edge : before);
  Letters tries[2 * G_N_ELEMENTS (ways)];
  int taken;

  if (!words || level < 0 || level > draft->view->height)
    return;
  for (size_t i = 0; i < G_N_ELEMENTS (tries); i++)
    {
      const bool port = i % 2;
      const Point at = sheet_px (draft->view, x, port ? -beside : beside);
      tries[i] = (Letters) { .text = words, .place = { at.x + (port ? -off : off), at.y + ways[i / 2] * step }, .across = port,
                             .rise = LETTERS_AT_MIDDLE, .colour = draft->look->graphite };
    }
  taken = sheet_put_word (draft, tries, G_N_ELEMENTS (tries));
  if (taken < 0)
    sheet_put_word_anyway (draft, tries, G_N_ELEMENTS (tries));
  else
    draw_leader_to (draft, sheet_px (draft->view, x, y + (taken % 2 ? -half : half)), &tries[taken]);
}

static void
draw_hole (SheetDraft *draft, const HatchFigures *hatch)
{
  HatchStation stations[HATCH_HOLE_STATIONS];
  Point corners[2 * HATCH_HOLE_STATIONS];
  const size_t count = hatch_hole (hatch, 0, stations);

  hatch_corners (stations, count, hatch->part->y, corners);
  line_kind_set (draft->cr, draft->look, LINE_OTHER_POSITION);
  look_set_source (draft->cr, draft->look->graphite);
  for (size_t i = 0; i < 2 * count; i++)
    {
      const Point px = sheet_px (draft->view, corners[i].x, corners[i].y);
      cairo_line_to (draft->cr, px.x, px.y);
    }
  cairo_close_path (draft->cr);
  cairo_stroke (draft->cr);
}

void
sheet_draw_hatch (SheetDraft *draft)
{
  const HatchFigures *hatch = &draft->figures->hatch;

  if (!hatch_is_asked_for (draft->figures, draft->selection))
    return;
  const double half = hatch->width_mm / 2, beside = hatch->part->y + fmax (half, 0);
  draw_hole (draft, hatch);
  draw_edge_word (draft, hatch->from_mm, fmax (beside, sheet_half_width (draft->aeroplane, hatch->from_mm)), hatch->from_width_mm / 2, _("Hatch to Cut"));
  draw_edge_word (draft, hatch->to_mm, fmax (beside, sheet_half_width (draft->aeroplane, hatch->to_mm)), hatch->to_width_mm / 2, NULL);
}
