#include "drawing/sheet-plan-marks.h"

#include "drawing/dimension.h"
#include "drawing/handles.h"
#include "drawing/plan-placing.h"
#include "plan/mapping.h"

/* px: half of a corner's handle. */
static const double CORNER = 12, ARROW = 26, FAINT = 0.45;

/* What lies beyond the picture's horizon is drawn nowhere near. */
static Point
screen_of (const SheetPlanMarks *marks, const SheetView *view, Point px)
{
  const Point place = placing_sheet (&marks->placing, px);

  return point_is_finite (place) ? view_to_screen (view, place) : (Point) { -1e5, -1e5 };
}

bool
plan_marks_screen (const SheetPlanMarks *marks, const SheetView *view, PlanMark mark, Point *screen)
{
  Point px;

  /* What moves a whole view is held by the middle of its axis. */
  if (mark.kind == PLAN_MARK_STANDS && marks->plan && mark.index < marks->plan->view_count)
    px = point_mix (marks->plan->views[mark.index].fore, marks->plan->views[mark.index].aft, 0.5);
  else if (!marks->plan || !plan_mark_place (marks->plan, mark, &px))
    return false;
  *screen = screen_of (marks, view, px);
  return true;
}

PlanMark
plan_marks_hit (const SheetPlanMarks *marks, const SheetView *view, Point screen, double catch_px)
{
  PlanMark best = { .kind = PLAN_MARK_NONE };
  double nearest = catch_px;

  for (size_t k = 0; marks->plan && k < marks->kind_count; k++)
    for (size_t i = 0; marks->kinds[k] != PLAN_MARK_STANDS && i < plan_mark_count (marks->plan, marks->kinds[k]); i++)
      {
        const PlanMark mark = plan_mark_nth (marks->plan, marks->kinds[k], i);
        Point at;

        if (!plan_marks_screen (marks, view, mark, &at) || point_distance (at, screen) > nearest)
          continue;
        nearest = point_distance (at, screen);
        best = mark;
      }
  return best;
}

bool
plan_marks_side (const Plan *plan, int side, size_t ends[2])
{
  const size_t first = known_rectangle_widths (plan->corners) != side ? 1 : 0;      /* sides 0 and 2, or 1 and 3 */

  ends[0] = first;
  ends[1] = first + 1;
  return plan->has_corners;
}

static bool
is_chosen (const SheetPlanMarks *marks, PlanMark mark)
{
  return plan_mark_equal (marks->chosen, mark);
}

static bool
is_chosen_any (const SheetPlanMarks *marks, PlanMarkKind kind, size_t index)
{
  return marks->chosen.kind == kind && marks->chosen.index == index;
}

static void
draw_line (const SheetDraft *draft, LineKind kind, Colour colour, Point from, Point to)
{
  line_kind_set (draft->cr, draft->look, kind);
  look_set_source (draft->cr, colour);
  line_stroke (draft->cr, from, to);
}

static void
draw_end (const SheetDraft *draft, Point at, bool chosen)
{
  draw_node (draft->cr, draft->look, at, NODE_SMOOTH, chosen);
}

static void
draw_measure (const SheetDraft *draft, Point a, Point b, double mm, bool chosen)
{
  g_autofree char *text = isnan (mm) ? g_strdup ("?") : units_length_known (draft->scene->units, mm);
  const Dimension dimension = { .from = a, .to = b, .foot_from = a, .foot_to = b, .figure = text,
                                .line = chosen ? draft->look->selection : draft->look->graphite };

  dimension_draw (&draft->lettering, &dimension);
}

static void
draw_lengths (const SheetDraft *draft, const SheetPlanMarks *marks)
{
  for (size_t i = 0; i < marks->plan->length_count; i++)
    {
      const PlanLength *length = &marks->plan->lengths[i];
      const Point a = screen_of (marks, draft->view, length->a), b = screen_of (marks, draft->view, length->b);

      draw_measure (draft, a, b, length->mm, is_chosen_any (marks, PLAN_MARK_LENGTH, i));
      draw_end (draft, a, is_chosen (marks, (PlanMark) { PLAN_MARK_LENGTH, i, 0 }));
      draw_end (draft, b, is_chosen (marks, (PlanMark) { PLAN_MARK_LENGTH, i, 1 }));
    }
}

static void
draw_level (const SheetDraft *draft, const SheetPlanMarks *marks)
{
  const Point a = screen_of (marks, draft->view, marks->plan->level[0]), b = screen_of (marks, draft->view, marks->plan->level[1]);

  if (!marks->plan->has_level)
    return;
  draw_line (draft, LINE_PROPOSAL, draft->look->selection, a, b);
  draw_end (draft, a, is_chosen (marks, (PlanMark) { PLAN_MARK_LEVEL, 0, 0 }));
  draw_end (draft, b, is_chosen (marks, (PlanMark) { PLAN_MARK_LEVEL, 0, 1 }));
}

/* A ring with a cross in it: what it stands on stays to be seen. */
static void
draw_corner (const SheetDraft *draft, Point at, bool chosen)
{
  cairo_t *cr = draft->cr;
  Colour wash = draft->look->selection;

  wash.alpha = chosen ? 0.3 : 0;
  cairo_new_path (cr);
  cairo_arc (cr, at.x, at.y, CORNER, 0, 2 * M_PI);
  look_set_source (cr, wash);
  cairo_fill_preserve (cr);
  look_set_source (cr, draft->look->selection);
  cairo_set_dash (cr, NULL, 0, 0);
  cairo_set_line_width (cr, draft->look->selected_width);
  cairo_stroke (cr);
  line_kind_set (cr, draft->look, LINE_INNER);
  for (int i = 0; i < 4; i++)
    {
      const Point out = { (i == 0) - (i == 1), (i == 2) - (i == 3) };

      line_stroke (cr, point_add (at, point_scale (out, 3)), point_add (at, point_scale (out, CORNER)));
    }
}

static void
draw_side_figure (const SheetDraft *draft, const SheetPlanMarks *marks, int side)
{
  const double mm = side ? marks->plan->corners_height : marks->plan->corners_width;
  size_t ends[2];

  plan_marks_side (marks->plan, side, ends);
  draw_measure (draft, screen_of (marks, draft->view, marks->plan->corners[ends[0]]),
                screen_of (marks, draft->view, marks->plan->corners[ends[1] % 4]), mm, true);
}

static void
draw_rectangle (const SheetDraft *draft, const SheetPlanMarks *marks)
{
  Point at[4];

  if (!marks->plan->has_corners)
    return;
  for (size_t i = 0; i < 4; i++)
    at[i] = screen_of (marks, draft->view, marks->plan->corners[i]);
  for (size_t i = 0; i < 4; i++)
    draw_line (draft, LINE_PROPOSAL, draft->look->selection, at[i], at[(i + 1) % 4]);
  draw_side_figure (draft, marks, 0);
  draw_side_figure (draft, marks, 1);
  for (size_t i = 0; i < 4; i++)
    draw_corner (draft, at[i], is_chosen (marks, (PlanMark) { PLAN_MARK_CORNER, 0, i }));
}

static void
draw_straights (const SheetDraft *draft, const SheetPlanMarks *marks)
{
  for (size_t i = 0; i < marks->plan->place_count; i++)
    {
      const PlanMark mark = plan_mark_nth (marks->plan, PLAN_MARK_STRAIGHT, i);
      const Point at = screen_of (marks, draft->view, marks->plan->places[i]);

      if (mark.end > 0)
        draw_line (draft, LINE_PROPOSAL, draft->look->selection, screen_of (marks, draft->view, marks->plan->places[i - 1]), at);
    }
  for (size_t i = 0; i < marks->plan->place_count; i++)
    draw_end (draft, screen_of (marks, draft->view, marks->plan->places[i]),
              is_chosen (marks, plan_mark_nth (marks->plan, PLAN_MARK_STRAIGHT, i)));
}

/* The forward end is where the arrow points. */
static void
draw_axis_line (const SheetDraft *draft, Point fore, Point aft, Colour colour)
{
  const double length = fmax (point_distance (fore, aft), 1);
  const Point ahead = point_scale (point_sub (fore, aft), 1 / length);

  draw_line (draft, LINE_CENTRE, colour, fore, aft);
  draw_line (draft, LINE_INNER, colour, fore, point_add (fore, point_scale (ahead, ARROW)));
  draw_arrowhead (draft->cr, draft->look, point_add (fore, point_scale (ahead, ARROW)), ahead);
}

static void
draw_axes (const SheetDraft *draft, const SheetPlanMarks *marks)
{
  for (size_t i = 0; i < marks->plan->view_count; i++)
    {
      const PlanView *view = &marks->plan->views[i];
      const bool in_hand = g_strcmp0 (view->id, marks->view) == 0;
      const Point fore = screen_of (marks, draft->view, view->fore), aft = screen_of (marks, draft->view, view->aft);
      Colour colour = is_chosen_any (marks, PLAN_MARK_STANDS, i) ? draft->look->selection : draft->look->centre_line;

      colour.alpha *= in_hand ? 1 : FAINT;
      draw_axis_line (draft, fore, aft, colour);
      draw_end (draft, fore, is_chosen (marks, (PlanMark) { PLAN_MARK_AXIS, i, 0 }));
      draw_end (draft, aft, is_chosen (marks, (PlanMark) { PLAN_MARK_AXIS, i, 1 }));
    }
}

static bool
shows (const SheetPlanMarks *marks, PlanMarkKind kind)
{
  for (size_t i = 0; i < marks->kind_count; i++)
    if (marks->kinds[i] == kind)
      return true;
  return false;
}

static void
draw_pending (const SheetDraft *draft, const SheetPlanMarks *marks)
{
  const size_t count = marks->pending_count;
  Point at[PLAN_PENDING_MOST];

  for (size_t i = 0; i < count; i++)
    at[i] = screen_of (marks, draft->view, marks->pending[i]);
  if (marks->pending_kind == PLAN_PENDING_LENGTH && count == 2)
    draw_measure (draft, at[0], at[1], NAN, true);
  else
    for (size_t i = 0; i + 1 < count; i++)
      draw_line (draft, marks->pending_kind == PLAN_PENDING_AXIS ? LINE_CENTRE : LINE_PROPOSAL, draft->look->selection, at[i], at[i + 1]);
  if (marks->pending_kind == PLAN_PENDING_CORNERS && count > 2)
    draw_line (draft, LINE_PROPOSAL, draft->look->selection, at[count - 1], at[0]);
  for (size_t i = 0; i < count; i++)
    if (marks->pending_kind == PLAN_PENDING_CORNERS)
      draw_corner (draft, at[i], false);
    else
      draw_end (draft, at[i], i + 1 == count);
}

static void
draw_all (const SheetDraft *draft, const SheetPlanMarks *marks)
{
  if (shows (marks, PLAN_MARK_CORNER))
    draw_rectangle (draft, marks);
  if (shows (marks, PLAN_MARK_STRAIGHT))
    draw_straights (draft, marks);
  if (shows (marks, PLAN_MARK_LEVEL))
    draw_level (draft, marks);
  if (shows (marks, PLAN_MARK_AXIS))
    draw_axes (draft, marks);
  if (shows (marks, PLAN_MARK_LENGTH))
    draw_lengths (draft, marks);
  draw_pending (draft, marks);
}

void
sheet_draw_plan_marks (const SheetDraft *draft, const SheetPlanMarks *marks)
{
  const Look look = sheet_plan_halo_look (draft->look);
  SheetDraft halo = *draft;

  if (!marks->plan)
    return;
  halo.look = &look;
  halo.lettering.look = &look;
  draw_all (&halo, marks);
  draw_all (draft, marks);
}
