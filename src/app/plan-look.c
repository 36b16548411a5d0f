#include "trammel-config.h"
#include "app/plan-look.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/plan-edit.h"
#include "app/plan-work.h"
#include "app/window.h"
#include "plan/straight-run.h"

/* Shorter work is done before anybody could read that it is under way. */
enum { QUIET_MS = 100 };

typedef struct {
  TrammelSheetCanvas *sheet;
  Plan *plan;                     /* in hand when it began */
  InkLevels *ink;                 /* NULL: no picture */
  KnownRectangle clicked;
  bool of_sides;
  AxisClicks clicks;
  PlanLooked looked;
  GCancellable *work;
  guint timer;                    /* will say that it takes its time */
  PlanLookDone done;
  gpointer data;
} PlanLook;

static const char key[] = "trammel-plan-look";      /* the cancellable of the one under way */

static GCancellable *
work_of (TrammelSheetCanvas *sheet)
{
  return g_object_get_data (G_OBJECT (sheet), key);
}

static TrammelWindow *
window_of (TrammelSheetCanvas *sheet)
{
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (sheet));

  return TRAMMEL_IS_WINDOW (root) ? TRAMMEL_WINDOW (root) : NULL;
}

static void
look_free (gpointer data)
{
  PlanLook *self = data;

  g_clear_handle_id (&self->timer, g_source_remove);
  piece_unref (&self->plan->piece);
  if (self->ink != NULL)
    ink_levels_unref (self->ink);
  g_object_unref (self->work);
  g_object_unref (self->sheet);
  g_free (self->data);
  g_free (self);
}

/* In the worker */

static bool
look_goes_on (double done, void *work)
{
  return !g_cancellable_is_cancelled (work);
}

/* A line that a lens bends is no axis to follow exactly, but the straight line closest to it is better than two clicks. */
static bool
look_for_line (const Ink *ink, const AxisClicks *clicks, GCancellable *work, ViewAxis *line)
{
  StraightRun run;

  if (printed_axis (ink, clicks, look_goes_on, work, line))
    return true;
  if (g_cancellable_is_cancelled (work) || !straight_run (ink, clicks->axis.fore, clicks->axis.aft, clicks->px_per_mm, &run))
    return false;
  *line = (ViewAxis) { run.from, run.to };
  return true;
}

static void
look_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  PlanLook *self = data;
  const Ink *ink = ink_levels_ink (self->ink);
  PlanLooked *looked = &self->looked;

  if (self->of_sides)
    looked->found = printed_sides_find (ink, &self->clicked, look_goes_on, self->work, &looked->sides) == CORE_OK;
  else
    looked->found = look_for_line (ink, &self->clicks, self->work, &looked->line);
  g_task_return_boolean (task, TRUE);
}

/* In the main thread */

static void
look_end (PlanLook *self)
{
  const bool stopped = g_cancellable_is_cancelled (self->work), stale = plan_edit_plan (self->sheet) != self->plan;

  if (self->timer == 0 && self->ink != NULL && window_of (self->sheet) != NULL)
    trammel_window_tell_busy (window_of (self->sheet), NULL, self->work);
  if (work_of (self->sheet) == self->work)
    g_object_set_data (G_OBJECT (self->sheet), key, NULL);
  if (!stopped && !stale)
    self->done (self->sheet, &self->looked, self->data);
  else if (!stopped)
    trammel_plan_work_set_note (trammel_plan_work_of (self->sheet), plan_edit_plan (self->sheet),
                                _("The plan was changed meanwhile, and that was dropped: do it again."));
}

static void
look_arrived (GObject *source, GAsyncResult *result, gpointer nothing)
{
  look_end (g_task_get_task_data (G_TASK (result)));
}

static void
look_takes_its_time (gpointer data)
{
  PlanLook *self = data;

  self->timer = 0;
  if (window_of (self->sheet) != NULL)
    trammel_window_tell_busy (window_of (self->sheet), _("Looking for the printed line…"), self->work);
}

static void
look_begin (PlanLook *takes)
{
  const InkLevels *ink = trammel_plan_store_ink (trammel_sheet_canvas_plan_store (takes->sheet));
  g_autoptr (GTask) task = g_task_new (NULL, NULL, look_arrived, NULL);

  plan_look_stop (takes->sheet);
  g_object_ref (takes->sheet);
  takes->plan = (Plan *) piece_ref ((Piece *) &plan_edit_plan (takes->sheet)->piece);
  takes->ink = ink != NULL ? ink_levels_ref ((InkLevels *) ink) : NULL;
  takes->work = g_cancellable_new ();
  g_task_set_task_data (task, takes, look_free);
  if (ink == NULL) {
    look_end (takes);
    return;
  }
  g_object_set_data_full (G_OBJECT (takes->sheet), key, g_object_ref (takes->work), g_object_unref);
  takes->timer = g_timeout_add_once (QUIET_MS, look_takes_its_time, takes);
  g_task_run_in_thread (task, look_in_thread);
}

void
plan_look_line (TrammelSheetCanvas *sheet, Point a, Point b, PlanLookDone done, gpointer takes)
{
  PlanLook *self = g_new0 (PlanLook, 1);
  const Point middle = point_mix (a, b, 0.5);

  *self = (PlanLook) { .sheet = sheet, .looked = { .a = a, .b = b }, .done = done, .data = takes,
                       .clicks = { { a, b }, fmax (plan_edit_click_sigma (sheet, middle), 1), plan_edit_px_per_mm (sheet, middle) } };
  look_begin (self);
}

void
plan_look_sides (TrammelSheetCanvas *sheet, const KnownRectangle *clicked, PlanLookDone done, gpointer takes)
{
  PlanLook *self = g_new0 (PlanLook, 1);

  *self = (PlanLook) { .sheet = sheet, .of_sides = true, .clicked = *clicked, .done = done, .data = takes };
  look_begin (self);
}

bool
plan_look_is_busy (TrammelSheetCanvas *sheet)
{
  return work_of (sheet) != NULL;
}

bool
plan_look_stop (TrammelSheetCanvas *sheet)
{
  GCancellable *work = work_of (sheet);

  if (work == NULL)
    return false;
  g_cancellable_cancel (work);
  g_object_set_data (G_OBJECT (sheet), key, NULL);
  return true;
}
