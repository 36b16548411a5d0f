#pragma once
#include <math.h>
#include "app/plan-look.h"
#include "app/plan-strip.h"
#include "app/plan-work.h"
#include "app/sheet-field.h"
#include "app/tool.h"
#include "document/plan-marks.h"
#include "drawing/plan-placing.h"
#include "support/sheet-hand.h"

/** A plan drawn here beneath the sheet, and a hand that makes it true: what its tests share. */

enum { WIDTH = 1200, HEIGHT = 900 };

/* The ends of a ruled line, where a tick crosses it, 800 px from one to the other and turned a little; an upright one of 400. */
static const Point level_from = { 200, 402 }, level_to = { 1000, 410 }, upright_from = { 150, 200 }, upright_to = { 146, 600 };
/* A rectangle seen askew, its corners round from the upper left. */
static const Point corners[4] = { { 300.5, 250.5 }, { 900.5, 230.5 }, { 1050.5, 760.5 }, { 230.5, 700.5 } };

static inline void
draw_line (cairo_t *cr, Point a, Point b)
{
  cairo_move_to (cr, a.x, a.y);
  cairo_line_to (cr, b.x, b.y);
  cairo_stroke (cr);
}

static inline void
draw_ruled (cairo_t *cr, Point a, Point b)
{
  const double length = point_distance (a, b);
  const Point across = { -(b.y - a.y) / length * 16, (b.x - a.x) / length * 16 }, along = { across.y, -across.x };

  draw_line (cr, point_sub (a, along), point_add (b, along));
  draw_line (cr, point_sub (a, across), point_add (a, across));
  draw_line (cr, point_sub (b, across), point_add (b, across));
}

static inline cairo_status_t
append (void *closure, const unsigned char *data, unsigned length)
{
  g_byte_array_append (closure, data, length);
  return CAIRO_STATUS_SUCCESS;
}

/* The sheet as a PNG: two ruled lines, or the rectangle askew. */
static inline GBytes *
drawn_sheet (bool askew)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, WIDTH, HEIGHT);
  cairo_t *cr = cairo_create (surface);
  GByteArray *png = g_byte_array_new ();

  cairo_set_source_rgb (cr, 0.97, 0.96, 0.92);
  cairo_paint (cr);
  cairo_set_source_rgb (cr, 0.1, 0.1, 0.15);
  cairo_set_line_width (cr, 3);
  for (int i = 0; askew && i < 4; i++)
    draw_line (cr, corners[i], corners[(i + 1) % 4]);
  if (!askew) {
    draw_ruled (cr, level_from, level_to);
    draw_ruled (cr, upright_from, upright_to);
  }
  cairo_destroy (cr);
  ck_assert_int_eq (cairo_surface_write_to_png_stream (surface, append, png), CAIRO_STATUS_SUCCESS);
  cairo_surface_destroy (surface);
  return g_byte_array_free_to_bytes (png);
}

static inline TrammelPlanStore *
plans (void)
{
  return trammel_sheet_canvas_plan_store (hand_sheet ());
}

static inline bool
has_looked (gpointer data)
{
  return !plan_look_is_busy (hand_sheet ());
}

/** What was clicked has been looked for in the picture, and has become what it becomes. */
static inline void
await_look (void)
{
  ck_assert (gui_wait (has_looked, NULL));
  gui_settle ();
}

static inline const Plan *
plan (void)
{
  await_look ();
  return trammel_plan_store_plan (plans ());
}

static inline bool
has_ink (gpointer data)
{
  return trammel_plan_store_ink (plans ()) != NULL;
}

/* The window with that plan beneath its sheet, the Plan tool in hand. */
static inline void
begin_with (Plan *takes)
{
  hand_begin_empty ();
  trammel_session_open (hand_session (), aeroplane_with_added (hand_aeroplane (), &takes->piece), NULL);
  ck_assert (gui_wait (has_ink, NULL));
  trammel_plan_work_set_step (trammel_plan_work_of (hand_sheet ()), PLAN_STEP_LENGTH);
  trammel_plan_work_set_next_view (trammel_plan_work_of (hand_sheet ()), (PlanView) { .shows = VIEW_WING });
  trammel_plan_work_set_way (trammel_plan_work_of (hand_sheet ()), PLAN_SQUARE_LEVEL);
  gtk_widget_grab_focus (GTK_WIDGET (hand_sheet ()));
  gui_key ("t");
  gui_wait_ms (250);                /* the strip has slid in */
  hand_look ((Point) { 150, 0 }, 1.9);
  gui_settle ();
}

static inline Plan *
new_plan (bool askew)
{
  Plan *made = plan_new ("sheet");

  made->image = drawn_sheet (askew);
  made->image_type = g_strdup ("image/png");
  made->width = WIDTH;
  made->height = HEIGHT;
  return made;
}

static inline void
begin (void)
{
  begin_with (new_plan (false));
}

/* Where a pixel of the picture lies on the sheet now, mm. */
static inline Point
on_sheet (Point px)
{
  Placing placing;

  ck_assert (trammel_plan_store_placing (plans (), &placing));
  return placing_sheet (&placing, px);
}

static inline void
click_px (Point px)
{
  hand_click (on_sheet (px));
  await_look ();
}

static inline void
assert_px (Point got, Point wanted, double tolerance)
{
  ck_assert_msg (point_distance (got, wanted) <= tolerance, "(%g, %g) px, wanted (%g, %g)", got.x, got.y, wanted.x, wanted.y);
}

static inline GtkWidget *
strip (void)
{
  return gui_find_type (GTK_WIDGET (hand_window ()), TRAMMEL_TYPE_PLAN_STRIP);
}

static inline void
step (const char *name)
{
  gui_click (gui_await (strip (), name));
  gui_settle ();
}

static inline bool
field_is_open (gpointer data)
{
  return trammel_sheet_field_is_open (trammel_sheet_canvas_field (hand_sheet ()));
}

static inline void
type_length (const char *text)
{
  ck_assert (gui_wait (field_is_open, NULL));
  gui_type (text);
  gui_key ("Return");
  gui_settle ();
}

static inline void
click_level (void)
{
  click_px (point_add (level_from, (Point) { 4, -5 }));
  click_px (point_add (level_to, (Point) { -5, 3 }));
}

static inline void
set_level_length (const char *text)
{
  click_level ();
  type_length (text);
}

static inline const PlanLength *
length (void)
{
  ck_assert_uint_gt (plan ()->length_count, 0);
  return &plan ()->lengths[0];
}

static inline const PlanView *
view (void)
{
  ck_assert_uint_gt (plan ()->view_count, 0);
  return &plan ()->views[0];
}

/* Undo is so called and leads back there. */
static inline void
undoes (const char *label, const Aeroplane *there)
{
  await_look ();
  ck_assert_str_eq (trammel_session_undo_label (hand_session ()), label);
  trammel_session_undo (hand_session ());
  ck_assert (aeroplane_equal (hand_aeroplane (), there));
}

/* Where a pixel of the picture is seen, px of the window: what the strip says may take a line more. */
static inline Point
seen_at (Point px)
{
  const Point at = view_to_screen (trammel_sheet_canvas_view (hand_sheet ()), on_sheet (px));
  Point seen = { NAN, NAN };

  gui_settle ();
  gtk_widget_translate_coordinates (GTK_WIDGET (hand_sheet ()), GTK_WIDGET (hand_window ()), at.x, at.y, &seen.x, &seen.y);
  return seen;
}

static inline void
add_view (void)
{
  step ("View");
  click_px (point_add (upright_from, (Point) { 5, 40 }));
  click_px (point_add (upright_to, (Point) { -5, -40 }));
}

/* What can be said and done of the view in hand beyond what stands in the strip. */
static inline GtkWidget *
about_view (const char *name)
{
  GtkWidget *button = gui_await (strip (), "About This View"), *found;

  if (gui_find (strip (), name) == NULL)
    gui_click (button);
  gui_settle ();
  found = gui_await (strip (), name);
  if (!GTK_IS_LABEL (found))
    return found;
  if (gtk_widget_get_next_sibling (found) == NULL)      /* a row's name stands by itself */
    found = gtk_widget_get_parent (found);
  return gtk_widget_get_next_sibling (found);           /* a list stands behind its name */
}

/* A plan with a wing's view, and a tailplane's that nobody has placed. */
static inline Plan *
plan_with_a_guess (void)
{
  Plan *made = new_plan (false), *one, *both;

  one = plan_with_view (made, (PlanView) { .shows = VIEW_WING, .fore = upright_from, .aft = upright_to, .x = 10 });
  both = plan_with_view (one, (PlanView) { .shows = VIEW_TAILPLANE, .fore = { 600, 550 }, .aft = { 600, 800 }, .x = 90, .for_now = true });
  piece_unref (&made->piece);
  piece_unref (&one->piece);
  both->views[0].id = g_strdup ("wing-view");
  both->views[1].id = g_strdup ("tail-view");
  return both;
}

/* A plan with a side view and a wing's, which is in its place or nobody has placed. */
static inline Plan *
plan_with_a_side_view (bool guessed)
{
  Plan *made = new_plan (false), *one, *both;

  one = plan_with_view (made, (PlanView) { .shows = VIEW_BODY_SIDE, .fore = { 200, 402 }, .aft = { 1000, 410 }, .x = 10, .z = 4 });
  both = plan_with_view (one, (PlanView) { .shows = VIEW_WING, .fore = upright_from, .aft = upright_to, .for_now = guessed });
  piece_unref (&made->piece);
  piece_unref (&one->piece);
  both->views[0].id = g_strdup ("side");
  both->views[1].id = g_strdup ("wing-view");
  return both;
}
