#include "drawing/sheet-hinge.h"
#include <math.h>
#include "drawing/handles.h"
#include "drawing/line-kind.h"
#include "drawing/sheet-plan.h"
#include "drawing/sheet-places.h"

Point
hinge_px (const SheetView *view, double x, double station, double lift, double side)
{
  return sheet_px (view, x, side * (station + lift));
}

void
hinge_stroke (cairo_t *cr, const SheetView *view, const Surface *surface, const Control *control, double lift, double side)
{
  const double station[] = { control->inner, control->outer }, hinge[] = { control->hinge_inner_x, control->hinge_outer_x };

  line_stroke (cr, hinge_px (view, hinge[0], station[0], lift, side), hinge_px (view, hinge[1], station[1], lift, side));
  for (int i = 0; i < 2; i++)
    {
      const double cut = sheet_control_cut (surface, station[i], hinge[i]);

      if (!isnan (cut))
        line_stroke (cr, hinge_px (view, hinge[i], station[i], lift, side), hinge_px (view, cut, station[i], lift, side));
    }
}

static void
draw_once (cairo_t *cr, const Look *look, const SheetView *view, const SheetHinge *hinge, double lift, double side)
{
  const Control *line = &hinge->line;

  line_kind_set (cr, look, LINE_PROPOSAL);
  look_set_source (cr, hinge->wrong ? look->warning : look->selection);
  if (hinge->has_line)
    hinge_stroke (cr, view, hinge->surface, line, lift, side);
}

void
hinge_draw_proposal (cairo_t *cr, const Look *look, const SheetView *view, const SheetHinge *hinge, double lift, double side)
{
  const Look halo = sheet_plan_halo_look (look);

  draw_once (cr, &halo, view, hinge, lift, side);
  draw_once (cr, look, view, hinge, lift, side);
  if ((side < 0) != hinge->port)
    return;
  draw_grip (cr, look, hinge_px (view, hinge->line.hinge_inner_x, hinge->line.inner, lift, side));
  if (hinge->has_line)
    draw_grip (cr, look, hinge_px (view, hinge->line.hinge_outer_x, hinge->line.outer, lift, side));
}
