#include "trammel-config.h"
#include "app/tracing-private.h"
#include <glib/gi18n-lib.h>
#include <math.h>

/* px of the screen: from place to place of what is drawn by hand; mm: of what is held to. */
static const double HAND_PX = 6, HELD = 10;
/* The file's px: a click there again is none. */
static const double SAME = 1.5;

TraceClick *
tracing_click_at (Tracing *self, guint i)
{
  return &g_array_index (self->clicks, TraceClick, i);
}

TraceClick *
tracing_last (Tracing *self)
{
  return self->clicks->len > 0 ? tracing_click_at (self, self->clicks->len - 1) : NULL;
}

static void
click_clear (gpointer click)
{
  g_free (((TraceClick *) click)->found);
}

void
tracing_forget (Tracing *self)
{
  g_array_set_size (self->clicks, 0);
  g_clear_pointer (&self->ordered, trace_order_unref);
  tracing_drop_proposal (self);
}

/* The plan and its view are looked at anew each time: the strip beside may have changed them. Clicks belong to the view they were made in. */
static bool
tracing_look (Tracing *self)
{
  TrammelPlanStore *store = trammel_sheet_canvas_plan_store (self->sheet);
  const Plan *plan = trammel_plan_store_plan (store);
  TraceGround *ground = plan != NULL && plan->cling ? trace_ground_new (store) : NULL;

  if (self->ground != NULL && (ground == NULL || g_strcmp0 (self->ground->view, ground->view) != 0))
    tracing_forget (self);
  trace_ground_unref (self->ground);
  self->ground = ground;
  return ground != NULL;
}

/* The outline has come, or it could not be had; then the clicks are still in hand. */
static void
tracing_arrived (Tracing *self)
{
  TrammelTraced *traced = trammel_traced_of (trammel_sheet_canvas_session (self->sheet));

  if (self->ordered == NULL || trammel_traced_is_busy (traced))
    return;
  if (trammel_traced_order (traced) == self->ordered) {
    tracing_forget (self);
    self->has_aim = false;
  }
  g_clear_pointer (&self->ordered, trace_order_unref);
  if (self->ground != NULL)
    tracing_show (self);
}

Tracing *
tracing_new (TrammelSheetCanvas *sheet)
{
  Tracing *self = g_rc_box_new0 (Tracing);

  self->sheet = sheet;
  self->clicks = g_array_new (FALSE, FALSE, sizeof (TraceClick));
  g_array_set_clear_func (self->clicks, click_clear);
  self->accepted = g_array_new (FALSE, FALSE, sizeof (Point));
  self->ahead = g_array_new (FALSE, FALSE, sizeof (Point));
  self->dots = g_array_new (FALSE, FALSE, sizeof (Point));
  self->arrival = g_signal_connect_swapped (trammel_traced_of (trammel_sheet_canvas_session (sheet)), "changed",
                                            G_CALLBACK (tracing_arrived), self);
  return self;
}

void
tracing_free (Tracing *self)
{
  if (self == NULL)
    return;
  tracing_hide (self);
  g_clear_signal_handler (&self->arrival, trammel_traced_of (trammel_sheet_canvas_session (self->sheet)));
  self->sheet = NULL;
  tracing_forget (self);
  g_clear_pointer (&self->ground, trace_ground_unref);
  g_array_unref (self->clicks);
  g_array_unref (self->accepted);
  g_array_unref (self->ahead);
  g_array_unref (self->dots);
  g_rc_box_release (self);
}

bool
tracing_applies (Tracing *self)
{
  return tracing_look (self);
}

/* Clicks */

TraceClick *
tracing_add (Tracing *self, Point px, bool drawn, bool via)
{
  const TraceClick click = { .px = px, .drawn = drawn, .via = via, .serial = ++self->serials };

  g_array_append_val (self->clicks, click);
  return tracing_last (self);
}

/* So that the whole trace, too, keeps to the line that was held to. */
static void
tracing_add_held (Tracing *self, const Stretch *stretch)
{
  const double apart = HELD * trace_ground_scale (self->ground, tracing_last (self)->px);
  Point from = tracing_last (self)->px;

  for (size_t i = 0; i < stretch->count; i++)
    if (point_distance (stretch->places[i], from) >= apart && point_distance (stretch->places[i], self->aim.px) >= apart / 2) {
      from = stretch->places[i];
      tracing_add (self, from, false, true);
    }
}

static void
tracing_take_stretch (TraceClick *click, const Stretch *stretch)
{
  click->found = g_memdup2 (stretch->places, stretch->count * sizeof *stretch->places);
  click->found_count = stretch->count;
}

static void
tracing_accept (Tracing *self)
{
  const bool proposed = tracing_has_proposal (self) && !self->aim.drawn;
  const bool exactly = proposed && point_distance (self->proposed.px, self->aim.px) < 1;
  Stretch held = { .count = 0 };
  Point to = self->aim.px;

  if (tracing_last (self) != NULL && point_distance (tracing_last (self)->px, to) < SAME)
    return;
  if (self->holds && proposed) {
    held = self->proposal;
    held.places = g_memdup2 (held.places, held.count * sizeof *held.places);
    tracing_add_held (self, &held);
    to = held.places[held.count - 1];
  }
  const guint from = self->clicks->len;
  TraceClick *click = tracing_add (self, to, self->aim.drawn, false);

  if (held.count > 0)
    tracing_take_stretch (click, &held);
  else if (exactly)
    tracing_take_stretch (click, &self->proposal);
  else if (from > 0 && !self->aim.drawn)
    tracing_find (self, from);
  /* What lies behind is known better by where it goes on. */
  if (from > 1 && !click->drawn && !tracing_click_at (self, from - 1)->drawn && !tracing_click_at (self, from - 1)->via)
    tracing_find (self, from - 1);
  g_free (held.places);
  tracing_drop_proposal (self);
}

/* The hand */

void
tracing_click (Tracing *self, const ToolEvent *event)
{
  if (self->ordered != NULL)
    return;
  tracing_resume (self, placing_px (&self->ground->placing, event->place));
  self->aim = tracing_aim (self, event);
  self->has_aim = true;
  if (!point_is_finite (self->aim.px))
    return;
  tracing_accept (self);
  self->keyed = trammel_sheet_canvas_overlay (self->sheet)->has_cursor ? event->place : (Point) { NAN, NAN };
  if (self->aim.ends)
    tracing_end (self, false);
  else
    tracing_show (self);
}

void
tracing_pull (Tracing *self, const ToolEvent *event)
{
  const double apart = HAND_PX / trammel_sheet_canvas_view (self->sheet)->scale;

  if (self->ordered != NULL || !tracing_lets_go (event) || self->clicks->len == 0)
    return;
  self->aim = tracing_aim (self, event);
  self->has_aim = true;
  if (!point_is_finite (self->aim.px)
      || point_distance (self->aim.own, trace_ground_own (self->ground, tracing_last (self)->px)) < apart)
    return;
  tracing_add (self, self->aim.px, true, true);
  self->pulled = true;
  tracing_drop_proposal (self);
  tracing_show (self);
}

void
tracing_drop (Tracing *self, const ToolEvent *event)
{
  if (!self->pulled)
    tracing_click (self, event);
  else if (self->clicks->len > 0)
    tracing_last (self)->via = false;
  self->pulled = false;
  tracing_show (self);
}

void
tracing_hover (Tracing *self, const ToolEvent *event)
{
  if (self->ordered != NULL)
    return;
  self->aim = tracing_aim (self, event);
  self->has_aim = self->aim.drawn ? point_is_finite (self->aim.px) : tracing_has_picture (self, self->aim.px);
  tracing_propose (self);
  tracing_show (self);
}

void
tracing_leave (Tracing *self)
{
  self->has_aim = false;
  tracing_show (self);
}

bool
tracing_take_back (Tracing *self)
{
  /* It would land a moment later: first of all it does not, and its clicks are in hand again. */
  if (self->ordered != NULL) {
    trammel_traced_cancel (trammel_traced_of (trammel_sheet_canvas_session (self->sheet)));
    return true;
  }
  if (self->clicks->len == 0)
    return false;
  do
    g_array_set_size (self->clicks, self->clicks->len - 1);
  while (self->clicks->len > 0 && tracing_last (self)->via);
  self->keyed = (Point) { NAN, NAN };
  tracing_drop_proposal (self);
  tracing_propose (self);
  tracing_show (self);
  return true;
}

static void
tracing_hold (Tracing *self, bool holds)
{
  if (self->holds == holds)
    return;
  self->holds = holds;
  tracing_propose (self);
}

/* Translators: the key that, held down, keeps a trace to the line it is on; one letter, lower case. */
static bool
is_holding_key (guint keyval)
{
  return gdk_keyval_to_unicode (gdk_keyval_to_lower (keyval)) == g_utf8_get_char (C_("key", "h"));
}

bool
tracing_key (Tracing *self, guint keyval, GdkModifierType state)
{
  if (keyval == GDK_KEY_BackSpace)
    return tracing_take_back (self);
  if (keyval == GDK_KEY_Return || keyval == GDK_KEY_KP_Enter)
    return tracing_return (self);
  /* Elsewhere it takes a tool in hand: not because it is still down when the trace has ended. */
  if (is_holding_key (keyval) && (self->clicks->len > 0 || self->holds) && (state & (GDK_CONTROL_MASK | GDK_ALT_MASK)) == 0) {
    tracing_hold (self, true);
    return true;
  }
  return false;
}

void
tracing_key_up (Tracing *self, guint keyval)
{
  if (is_holding_key (keyval))
    tracing_hold (self, false);
}

void
tracing_changed (Tracing *self)
{
  if (tracing_look (self))
    tracing_show (self);
  else
    tracing_hide (self);
}
