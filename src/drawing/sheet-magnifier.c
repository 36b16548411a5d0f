#include "drawing/sheet-draft.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* px, and how much larger than on the sheet. */
static const double ACROSS = 168, LARGER = 4, MARGIN = 14, FOOT = 46, GAP = 5, ARM = 24;

/* In the corner away from the pointer; below it there is room for the scale bar. */
static Point
corner_away (const SheetView *view, Point pointer)
{
  return (Point) { pointer.x > view->width / 2 ? MARGIN : view->width - MARGIN - ACROSS,
                   pointer.y > view->height / 2 ? MARGIN : view->height - FOOT - ACROSS };
}

static void
draw_cross (const SheetDraft *draft)
{
  const Point middle = { ACROSS / 2, ACROSS / 2 };

  line_kind_set (draft->cr, draft->look, LINE_PART);
  look_set_source (draft->cr, draft->look->graphite);
  for (int i = 0; i < 4; i++)
    {
      const Point out = { (i == 0) - (i == 1), (i == 2) - (i == 3) };

      line_stroke (draft->cr, point_add (middle, point_scale (out, GAP)), point_add (middle, point_scale (out, ARM)));
    }
}

/* What is compared with the print is seen over it here, too; but for the place itself, which lies free within the cross. */
static void
draw_over_print (const SheetDraft *draft, const SheetView *view)
{
  const SheetScene *scene = draft->scene;
  SheetDraft enlarged = *draft;
  SheetTrace trace;

  if (!scene->print || scene->print->bare)
    return;
  enlarged.view = view;
  sheet_draw_print (&enlarged);
  if (!scene->overlay->trace)
    return;
  trace = *scene->overlay->trace;
  trace.has_aim = trace.has_ring = false;
  sheet_draw_trace (&enlarged, &trace);
}

static void
draw_words (const SheetDraft *draft)
{
  /* Translators: below a round picture that shows the plan under the pointer four times as large; E is the key that hides it. */
  const char *words = draft->scene->print ? _("4 ×, E hides it") : _("enlarged 4 ×");

  lettering_draw (&draft->lettering, &(Letters) { .text = words, .place = { ACROSS / 2, ACROSS - 20 }, .across = 0.5,
                                                   .size = draft->look->ruler_size, .halo = 2 });
}

void
sheet_draw_magnifier (const SheetDraft *draft, Point place)
{
  cairo_t *cr = draft->cr;
  const double scale = draft->view->scale * LARGER;
  const SheetView view = { .scale = scale, .origin_x = ACROSS / 2 - place.y * scale, .origin_y = ACROSS / 2 - place.x * scale,
                           .width = ACROSS, .height = ACROSS };
  const Point corner = corner_away (draft->view, view_to_screen (draft->view, place));
  SheetPlan plan = *draft->scene->plan;

  plan.copy = plan.enlarged;
  cairo_save (cr);
  cairo_translate (cr, corner.x, corner.y);
  cairo_new_path (cr);
  cairo_arc (cr, ACROSS / 2, ACROSS / 2, ACROSS / 2 - 1, 0, 2 * M_PI);
  cairo_clip_preserve (cr);
  look_set_source (cr, draft->look->sheet);
  cairo_paint (cr);
  cairo_new_path (cr);
  sheet_plan_draw (cr, draft->look, &view, &plan);
  draw_over_print (draft, &view);
  draw_cross (draft);
  draw_words (draft);
  cairo_reset_clip (cr);
  cairo_new_path (cr);
  cairo_arc (cr, ACROSS / 2, ACROSS / 2, ACROSS / 2 - 1, 0, 2 * M_PI);
  line_kind_set (cr, draft->look, LINE_OUTLINE);
  look_set_source (cr, draft->look->graphite);
  cairo_stroke (cr);
  cairo_restore (cr);
}
