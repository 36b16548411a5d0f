#pragma once
#include "app/comparing.h"
#include "app/strip.h"
#include "app/tool.h"
#include "app/trace-telling.h"
#include "app/trace-unseen.h"
#include "app/traced.h"
#include "document/changes.h"
#include "geometry/planform.h"
#include "support/drawn-plan.h"
#include "support/shapes.h"
#include "support/sheet-hand.h"
#include <math.h>

/** A trace over a plan under a real hand: what its tests share. What is printed is drawn by the test, and so the truth. */

/* Half an elliptical wing: root 40, 85 to the tip. */
static inline Outline *
printed_wing (void)
{
  return ellipse_from (0, 85, 16, 24);
}

/* Where a person clicks on it, on the sheet: beside the line, not on it. */
static const Point clicks[] = { { 100.4, 0.3 }, { 104.4, 60 }, { 116.3, 84.4 }, { 133.3, 60 }, { 139.7, 0.2 } };

static inline TrammelPlanStore *
store (void)
{
  return trammel_sheet_canvas_plan_store (hand_sheet ());
}

static inline bool
ink_is_there (gpointer data)
{
  return trammel_plan_store_ink (store ()) != NULL;
}

/* Over a plan of its own outline. */
static inline void
begin_over (DrawnPlan plan)
{
  trammel_session_open (hand_session (), aeroplane_on_plan (&plan), NULL);
  gtk_widget_activate_action (GTK_WIDGET (hand_window ()), "win.empty-sheet", NULL);
  ck_assert (gui_wait (ink_is_there, NULL));
  trammel_sheet_canvas_set_tool (hand_sheet (), "outline");
  hand_look ((Point) { 120, 0 }, 3.5);
  gui_settle ();
}

static inline void
begin_on (DrawnPlan plan)
{
  Outline *printed = printed_wing ();

  plan.outline = printed;
  begin_over (plan);
  outline_unref (printed);
}

static inline void
begin (void)
{
  begin_on ((DrawnPlan) { .starboard = 1, .shows = VIEW_WING, .side = VIEW_STARBOARD });
}

static inline const SheetTrace *
shown (void)
{
  ck_assert_ptr_nonnull (trammel_sheet_canvas_overlay (hand_sheet ())->trace);
  return trammel_sheet_canvas_overlay (hand_sheet ())->trace;
}

static inline bool
proposal_reaches (gpointer place)
{
  const SheetTrace *trace = trammel_sheet_canvas_overlay (hand_sheet ())->trace;

  return trace != NULL && trace->proposal_count > 0
         && point_distance (trace->proposal[trace->proposal_count - 1], *(const Point *) place) < 3;
}

static inline bool
rests (gpointer data)
{
  return !trammel_traced_is_busy (trammel_traced_of (hand_session ()));
}

static inline void
trace_with (const Point places[], size_t count, double side)
{
  for (size_t i = 0; i < count; i++)
    hand_click ((Point) { places[i].x, side * places[i].y });
  ck_assert (gui_wait (rests, NULL));
  gui_settle ();
}

static inline const Surface *
wing (void)
{
  ck_assert_uint_eq (aeroplane_count (hand_aeroplane (), PIECE_SURFACE), 1);
  return aeroplane_surface (hand_aeroplane (), 0);
}

static inline double
area_of (const Outline *outline)
{
  Planform planform;

  ck_assert_int_eq (planform_measure (outline, PLANFORM_CARRIED, &planform), CORE_OK);
  return planform.area;
}

static inline void
expect_printed_wing (void)
{
  Outline *printed = printed_wing ();

  ck_assert_double_eq_tol (area_of (wing ()->outline) / area_of (printed), 1, 0.005);
  ck_assert_double_eq_tol (outline_node (wing ()->outline, 0).x, 100, 0.3);
  ck_assert_double_eq (outline_node (wing ()->outline, 0).y, 0);
  outline_unref (printed);
}

static inline ToolEvent
event_at (Point place)
{
  const Point px = hand_px (place);

  return (ToolEvent) { .x = px.x, .y = px.y, .place = place };
}

/* A click that has done its work when this returns: what it set off is still under way. */
static inline void
click_at_once (Point place)
{
  Tool *tool = trammel_sheet_canvas_tool (hand_sheet ());
  const ToolEvent event = event_at (place);

  tool->kind->press (tool, &event);
  tool->kind->click (tool, &event);
}

static inline Aeroplane *
with_dihedral (double degrees)
{
  Surface *next = (Surface *) piece_dup (&wing ()->piece);

  next->dihedral = degrees;
  return aeroplane_with_replaced (hand_aeroplane (), &wing ()->piece, &next->piece);
}
