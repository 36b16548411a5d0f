#include "trammel-config.h"
#include "app/window-private.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/file-chooser.h"
#include "app/plan-fault.h"
#include "app/plan-opening.h"

/* Shorter work is done before anybody could read that it is under way. */
enum { QUIET_MS = 100 };

static TrammelPlanStore *
window_store (TrammelWindow *self)
{
  return trammel_sheet_area_plan_store (TRAMMEL_SHEET_AREA (self->area));
}

/* What takes its time */

static void
busy_say (gpointer window)
{
  TrammelWindow *self = window;

  self->plan_timer = 0;
  trammel_strip_show (self->strip, self->plan_busy, (StripButton) { _("_Stop"), "win.stop-plan" }, (StripButton) { .label = NULL });
  trammel_strip_set_progress (self->strip, self->plan_done);
}

static bool
strip_says (TrammelWindow *self, const char *sentence)
{
  return sentence != NULL && g_strcmp0 (trammel_strip_sentence (self->strip), sentence) == 0;
}

static void
busy_begin (TrammelWindow *self, const char *name)
{
  g_free (self->plan_busy);
  /* Translators: %s is a plan's name. */
  self->plan_busy = g_strdup_printf (_("Reading the plan %s…"), name);
  self->plan_done = 0;
  if (self->plan_timer == 0)
    self->plan_timer = g_timeout_add_once (QUIET_MS, busy_say, self);
}

static void
busy_came_further (TrammelWindow *self, double done)
{
  self->plan_done = done;
  if (strip_says (self, self->plan_busy))
    trammel_strip_set_progress (self->strip, done);
}

static void
busy_end (TrammelWindow *self)
{
  g_clear_handle_id (&self->plan_timer, g_source_remove);
  if (strip_says (self, self->plan_busy))
    window_strip_done (self);
  g_clear_pointer (&self->plan_busy, g_free);
}

/* Opening one, and those that wait behind it */

static void window_open_next_plan (TrammelWindow *self);

static void
opening_came_further (PlanOpening *opening, double done, gpointer window)
{
  TrammelWindow *self = window;

  if (isnan (done))
    busy_end (self);
  else if (self->plan_busy == NULL)
    busy_begin (self, plan_opening_name (opening));
  else
    busy_came_further (self, done);
}

static void
window_say_opened (TrammelWindow *self, PlanOpening *opening)
{
  const int reduced = plan_opening_reduced (opening);
  g_autofree char *text = NULL;

  if (plan_opening_marks (opening) == PLAN_RESCALED_OTHER_SHAPE)
    text = g_strdup (_("This picture has another shape than the one before, and the marks stay where they were: check the lengths."));
  else if (plan_opening_marks (opening) == PLAN_RESCALED_UNKNOWN)
    text = g_strdup (_("How large the picture before was is not known, and the marks stay where they were: check the lengths."));
  else if (reduced > 1)
    /* Translators: how many pixels of a picture, across and down, are shown as one. */
    text = g_strdup_printf (_("The picture is large: %d × %d of its pixels are shown as one"), reduced, reduced);
  else if (plan_opening_comes_beside (opening))
    /* Translators: %s is a picture's name. */
    text = g_strdup_printf (_("%s will be copied beside the document when it is saved"), plan_opening_name (opening));
  if (text != NULL)
    trammel_window_toast (self, text, NULL, NULL);
}

static void
opening_done (PlanOpening *opening, const char *fault, gpointer window)
{
  TrammelWindow *self = window;

  self->plan_opening = NULL;
  if (window_is_gone (self))
    return;
  busy_end (self);
  if (fault != NULL)
    trammel_window_tell (self, fault);
  else if (plan_opening_reduced (opening) > 0) {
    window_say_opened (self, opening);
    if (!plan_opening_replaces (opening))
      trammel_sheet_area_begin_plan (TRAMMEL_SHEET_AREA (self->area));
    trammel_sheet_area_show_plan (TRAMMEL_SHEET_AREA (self->area));
  }
  window_open_next_plan (self);
}

static void
window_open_plan_now (TrammelWindow *self, const PlanToOpen *what)
{
  if (self->plan_opening != NULL)
    plan_opening_stop (self->plan_opening);
  busy_end (self);
  self->plan_opening = plan_opening_begin (self, window_store (self), what, opening_came_further, opening_done);
  busy_begin (self, plan_opening_name (self->plan_opening));
}

static void
window_open_next_plan (TrammelWindow *self)
{
  g_autofree char *path = self->plans_waiting.length > 0 ? g_queue_pop_head (&self->plans_waiting) : NULL;

  if (path != NULL)
    window_open_plan_now (self, &(PlanToOpen) { .path = path });
}

void
trammel_window_open_plan (TrammelWindow *self, const char *path)
{
  g_queue_push_tail (&self->plans_waiting, g_strdup (path));
  if (self->plan_opening == NULL)
    window_open_next_plan (self);
}

void
window_paste_plan (TrammelWindow *self, GdkTexture *texture)
{
  window_open_plan_now (self, &(PlanToOpen) { .texture = texture });
}

static void
plan_chosen (const char *path, gpointer window)
{
  trammel_window_open_plan (window, path);
}

static void
open_plan (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  file_chooser_open_plan (window, _("Open a Plan"), plan_chosen, window);
}

/* Another picture for the plan in hand, which is missing or has changed. */
static void
plan_found (const char *path, gpointer window)
{
  const Plan *plan = trammel_plan_store_plan (window_store (window));

  if (plan != NULL)
    window_open_plan_now (window, &(PlanToOpen) { .path = path, .replaces = plan->piece.id });
}

static void
find_plan (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  file_chooser_open_plan (window, _("Find the Plan"), plan_found, window);
}

static void
keep_plan (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  trammel_plan_store_keep (window_store (window), _("Keep the Plan’s Marks"));
}

static void
read_plan (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  trammel_plan_store_retry (window_store (window));
}

static void
stop_plan (GSimpleAction *action, GVariant *parameter, gpointer window)
{
  TrammelWindow *self = window;

  g_queue_clear_full (&self->plans_waiting, g_free);
  if (self->plan_opening != NULL) {
    plan_opening_stop (g_steal_pointer (&self->plan_opening));
    busy_end (self);
  } else
    trammel_plan_store_stop (window_store (self));
}

/* The plan in hand */

static void
store_progressed (TrammelWindow *self)
{
  const Plan *plan = trammel_plan_store_plan (window_store (self));
  const double done = trammel_plan_store_progress (window_store (self));

  if (self->plan_opening != NULL)
    return;
  if (isnan (done) || plan == NULL)
    busy_end (self);
  else if (self->plan_busy == NULL) {
    g_autofree char *title = plan_title (plan);

    busy_begin (self, title);
  } else
    busy_came_further (self, done);
}

static void
fault_say (TrammelWindow *self)
{
  const StripButton find = { _("_Find…"), "win.find-plan" }, close = { _("_Close"), "win.close-strip" };

  if (trammel_plan_store_is_stopped (window_store (self)))
    trammel_strip_show (self->strip, self->plan_fault, (StripButton) { _("_Read It"), "win.read-plan" }, close);
  else if (trammel_plan_store_may_keep (window_store (self)))
    trammel_strip_show (self->strip, self->plan_fault, (StripButton) { _("_Keep Marks"), "win.keep-plan" }, find);
  else
    trammel_strip_show (self->strip, self->plan_fault, find, close);
}

/* A standing condition: it is said once, and goes when it no longer holds. */
static void
store_changed (TrammelWindow *self)
{
  const char *fault = trammel_plan_store_fault (window_store (self));

  if (g_strcmp0 (fault, self->plan_fault) == 0)
    return;
  if (fault == NULL && strip_says (self, self->plan_fault))
    window_strip_done (self);
  g_free (self->plan_fault);
  self->plan_fault = g_strdup (fault);
  if (fault != NULL)
    fault_say (self);
}

void
window_plans_begin (TrammelWindow *self)
{
  static const GActionEntry entries[] = {
    { .name = "open-plan", .activate = open_plan },
    { .name = "find-plan", .activate = find_plan },
    { .name = "keep-plan", .activate = keep_plan },
    { .name = "read-plan", .activate = read_plan },
    { .name = "stop-plan", .activate = stop_plan },
  };

  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
  g_signal_connect_object (window_store (self), "progress", G_CALLBACK (store_progressed), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (window_store (self), "changed", G_CALLBACK (store_changed), self, G_CONNECT_SWAPPED);
}

void
window_plans_end (TrammelWindow *self)
{
  g_clear_pointer (&self->plan_opening, plan_opening_stop);
  g_clear_handle_id (&self->plan_timer, g_source_remove);
  g_queue_clear_full (&self->plans_waiting, g_free);
  g_clear_pointer (&self->plan_busy, g_free);
  g_clear_pointer (&self->plan_fault, g_free);
}
