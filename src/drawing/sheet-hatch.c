#include "drawing/sheet-draft.h"
#include <math.h>
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include "drawing/symbols.h"
#include "figures/report-hatch.h"

/* Whether it is the battery, or another pack in its place, that is looked at. */
static bool
hatch_is_asked_for (const SheetDraft *draft)
{
  const char *id = selection_single (draft->selection);
  const Part *part = id ? aeroplane_part_by_id (draft->aeroplane, id) : NULL;

  return draft->figures->hatch.part && part && (part == draft->figures->hatch.part
                                                || (part->has_rail && g_strcmp0 (part->class_name, "battery") == 0));
}

/* An edge's distance from the nearest former, outside the body. */
static void
draw_edge_word (SheetDraft *draft, double x, double beside, const char *before)
{
  g_autofree char *edge = hatch_edge_text (draft->aeroplane, x, draft->scene->units);
  g_autofree char *words = edge && before ? g_strdup_printf ("%s, %s", before, edge) : g_strdup (edge ? edge : before);
  const double off = look_size (draft->look, 10, 3), step = look_size (draft->look, 15, 4.5), ways[] = { 0, -1, 1, -2, 2 };
  Letters tries[2 * G_N_ELEMENTS (ways)];

  if (!words)
    return;
  for (size_t i = 0; i < G_N_ELEMENTS (tries); i++)
    {
      const bool port = i % 2;
      const Point at = sheet_px (draft->view, x, port ? -beside : beside);
      tries[i] = (Letters) { .text = words, .place = { at.x + (port ? -off : off), at.y + ways[i / 2] * step }, .across = port,
                             .rise = LETTERS_AT_MIDDLE, .colour = draft->look->graphite };
    }
  sheet_put_word_anyway (draft, tries, G_N_ELEMENTS (tries));
}

void
sheet_draw_hatch (SheetDraft *draft)
{
  const HatchFigures *hatch = &draft->figures->hatch;

  if (!hatch_is_asked_for (draft))
    return;
  const double half = hatch->width_mm / 2, y = hatch->part->y, beside = y + fmax (half, 0);
  const Box box = box_to_screen (draft->view, (Box) { { hatch->from_mm, y - half }, { hatch->to_mm, y + half } });
  line_kind_set (draft->cr, draft->look, LINE_OTHER_POSITION);
  look_set_source (draft->cr, draft->look->graphite);
  line_add_box (draft->cr, box);
  cairo_stroke (draft->cr);
  draw_edge_word (draft, hatch->from_mm, fmax (beside, sheet_half_width (draft->aeroplane, hatch->from_mm)), _("Hatch to Cut"));
  draw_edge_word (draft, hatch->to_mm, fmax (beside, sheet_half_width (draft->aeroplane, hatch->to_mm)), NULL);
}
