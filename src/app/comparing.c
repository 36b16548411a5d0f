#include "trammel-config.h"
#include "app/comparing.h"
#include <math.h>
#include "app/trace-ground.h"
#include "app/traced.h"

/* A trace keeps to its line within its tolerance, and the line's middle is known about as well: beyond twice that an outline is off it. */
static const double OFF_THE_LINE = 2;

struct _TrammelComparing {
  GObject parent;
  TrammelSession *session;          /* not owned: it owns this */
  TrammelSheetCanvas *sheet;        /* weak */
  Comparison comparison;            /* spots NULL: none */
  double shortening;                /* of the sheet's stations against the view's */
  Outline *outline;                 /* compared, or being compared; NULL */
  char *view;
  ViewShows shows;
  InkLevels *ink;                   /* held, so that no other can be taken for it */
  Placing placing;
  GCancellable *work;               /* NULL: none under way */
  guint idle;
  SheetDeparture *spots;
  SheetDepartures departures;
};

G_DEFINE_FINAL_TYPE (TrammelComparing, trammel_comparing, G_TYPE_OBJECT)

typedef struct {
  TraceGround *ground;
  Outline *own;
  bool half;                        /* a side view of a body goes round its axis; all else ends on it */
  GCancellable *cancellable;
  CoreStatus status;
  Comparison comparison;
} CompareWork;

static guint changed_signal;

static void
comparing_drop (TrammelComparing *self)
{
  if (self->work != NULL)
    g_cancellable_cancel (self->work);
  g_clear_object (&self->work);
  comparison_clear (&self->comparison);
  g_clear_pointer (&self->spots, g_free);
  self->departures = (SheetDepartures) { .count = 0 };
  if (self->sheet == NULL)
    return;
  trammel_sheet_canvas_overlay (self->sheet)->departures = NULL;
  trammel_sheet_canvas_refresh (self->sheet);
}

static void
comparing_forget (TrammelComparing *self)
{
  comparing_drop (self);
  g_clear_pointer (&self->outline, outline_unref);
  g_clear_pointer (&self->view, g_free);
  g_clear_pointer (&self->ink, ink_levels_unref);
}

static void
trammel_comparing_finalize (GObject *object)
{
  TrammelComparing *self = TRAMMEL_COMPARING (object);

  g_clear_handle_id (&self->idle, g_source_remove);
  g_clear_weak_pointer (&self->sheet);
  comparing_forget (self);
  G_OBJECT_CLASS (trammel_comparing_parent_class)->finalize (object);
}

static void
trammel_comparing_class_init (TrammelComparingClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = trammel_comparing_finalize;
  changed_signal = g_signal_new ("changed", TRAMMEL_TYPE_COMPARING, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
trammel_comparing_init (TrammelComparing *self)
{
}

/* The session is going; a worker may still hold on to this. */
static void
comparing_let_go (gpointer data)
{
  TrammelComparing *self = data;

  comparing_forget (self);
  g_clear_handle_id (&self->idle, g_source_remove);
  self->session = NULL;
  g_object_unref (self);
}

TrammelComparing *
trammel_comparing_of (TrammelSession *session)
{
  static const char key[] = "trammel-comparing";
  TrammelComparing *self = g_object_get_data (G_OBJECT (session), key);

  if (self == NULL) {
    self = g_object_new (TRAMMEL_TYPE_COMPARING, NULL);
    self->session = session;
    g_object_set_data_full (G_OBJECT (session), key, self, comparing_let_go);
  }
  return self;
}

/* In the worker */

static void
compare_work_free (gpointer data)
{
  CompareWork *work = data;

  trace_ground_unref (work->ground);
  outline_unref (work->own);
  g_object_unref (work->cancellable);
  comparison_clear (&work->comparison);
  g_free (work);
}

static bool
compare_goes_on (double done, void *data)
{
  return !g_cancellable_is_cancelled (data);
}

static void
compare_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  CompareWork *work = data;
  const CompareRequest request = { .mapping = &work->ground->placing.mapping, .frame = work->ground->placing.frame, .outline = work->own,
                                   .half = work->half, .goes_on = compare_goes_on, .data = work->cancellable };

  work->status = compare_outline (ink_levels_ink (work->ground->ink), &request, &work->comparison);
  g_task_return_boolean (task, TRUE);
}

/* On the sheet */

/* The picture lies there with its axis on the centre line, however high what it shows stands. */
static Point
comparing_place (TrammelComparing *self, Point own)
{
  return (Point) { own.x + self->placing.x, own.y * self->shortening };
}

/* mm: of what was traced last in this view its own, else the usual. */
static double
comparing_tolerance (TrammelComparing *self)
{
  TrammelTraced *traced = trammel_traced_of (self->session);
  const TraceOrder *order = trammel_traced_order (traced);
  const Point fore = mapping_to_px (&self->placing.mapping, self->placing.frame.fore);

  if (order != NULL && g_strcmp0 (order->ground->view, self->view) == 0)
    return trammel_traced_tolerance (traced);
  return trace_usual_tolerance (mapping_mm_per_px (&self->placing.mapping, fore, (Point) { 1, 0 }));
}

static void
comparing_show (TrammelComparing *self)
{
  const double limit = OFF_THE_LINE * comparing_tolerance (self);
  const Comparison *comparison = &self->comparison;

  self->spots = g_new (SheetDeparture, comparison->count + 1);
  for (size_t i = 0; i < comparison->count; i++)
    self->spots[i] = (SheetDeparture) { .drawn = comparing_place (self, comparison->spots[i].drawn),
                                        .printed = comparing_place (self, comparison->spots[i].printed),
                                        .far_off = comparison->spots[i].off > limit };
  self->departures = (SheetDepartures) { self->spots, comparison->count };
  if (self->sheet != NULL) {
    trammel_sheet_canvas_overlay (self->sheet)->departures = &self->departures;
    trammel_sheet_canvas_refresh (self->sheet);
  }
}

/* Another tool begins with nothing over the sheet. */
static void
comparing_show_again (TrammelComparing *self)
{
  if (self->sheet != NULL && self->comparison.spots != NULL)
    trammel_sheet_canvas_overlay (self->sheet)->departures = &self->departures;
}

static void
compare_arrived (GObject *source, GAsyncResult *result, gpointer data)
{
  TrammelComparing *self = TRAMMEL_COMPARING (source);
  CompareWork *work = g_task_get_task_data (G_TASK (result));

  if (self->work != work->cancellable)
    return;
  g_clear_object (&self->work);
  if (work->status == CORE_OK) {
    self->comparison = work->comparison;
    work->comparison = (Comparison) { .count = 0 };
    comparing_show (self);
  }
  g_signal_emit (self, changed_signal, 0);
}

/* The outline of what is selected, and no control of it, that was traced in that view; NULL: there is none. */
static const Outline *
comparing_selected (TrammelComparing *self, const TraceGround *ground)
{
  const bool whole = trammel_session_selection (self->session)->control == NULL;
  const Surface *surface = whole ? trammel_session_selected_surface (self->session) : NULL;
  const Body *body = trammel_session_selected_body (self->session);

  if (surface != NULL && g_strcmp0 (surface->traced, ground->view) == 0)
    return surface->outline;
  if (body != NULL && g_strcmp0 (body->traced, ground->view) == 0)
    return body->outline;
  return body != NULL && g_strcmp0 (body->side_traced, ground->view) == 0 ? body->side_outline : NULL;
}

static void
comparing_begin (TrammelComparing *self, TraceGround *ground)
{
  const Surface *surface = trammel_session_selected_surface (self->session);
  const bool round = ground->shows == VIEW_BODY_SIDE;
  CompareWork *work;
  g_autoptr (GTask) task = NULL;
  Outline *own = NULL;

  self->shortening = surface != NULL ? trammel_traced_shortening (trammel_traced_of (self->session), surface) : 1;
  if (outline_mapped (self->outline, (Point) { 1, 1 / self->shortening }, (Point) { -ground->placing.x, round ? -ground->z : 0 }, &own)
      != CORE_OK)
    return;
  self->work = g_cancellable_new ();
  work = g_new0 (CompareWork, 1);
  *work = (CompareWork) { .ground = trace_ground_ref (ground), .own = own, .half = !round, .cancellable = g_object_ref (self->work) };
  task = g_task_new (self, NULL, compare_arrived, NULL);
  g_task_set_task_data (task, work, compare_work_free);
  g_task_run_in_thread (task, compare_in_thread);
}

static bool
comparing_holds (TrammelComparing *self, const TraceGround *ground, const Outline *outline)
{
  return outline_equal (self->outline, outline) && g_strcmp0 (self->view, ground->view) == 0 && self->ink == ground->ink
         && memcmp (&self->placing, &ground->placing, sizeof self->placing) == 0;
}

/* While a hand pulls, what it pulls is compared when it rests. Of a control that is selected its surface's outline is no concern. */
static gboolean
comparing_look (gpointer data)
{
  TrammelComparing *self = data;
  TraceGround *ground = self->sheet != NULL ? trace_ground_new (trammel_sheet_canvas_plan_store (self->sheet)) : NULL;
  const Outline *outline = ground != NULL ? comparing_selected (self, ground) : NULL;
  const bool had = self->comparison.spots != NULL;

  self->idle = 0;
  if (outline == NULL) {
    comparing_forget (self);
    if (had)
      g_signal_emit (self, changed_signal, 0);
  } else if (!comparing_holds (self, ground, outline)) {
    comparing_forget (self);
    self->outline = outline_ref ((Outline *) outline);
    self->view = g_strdup (ground->view);
    self->shows = ground->shows;
    self->ink = ink_levels_ref (ground->ink);
    self->placing = ground->placing;
    comparing_begin (self, ground);
  }
  trace_ground_unref (ground);
  return G_SOURCE_REMOVE;
}

static void
comparing_ask (TrammelComparing *self)
{
  enum { REST_MS = 60 };

  if (self->idle == 0)
    self->idle = g_timeout_add (REST_MS, comparing_look, self);
}

/* What is drawn over one view's print means nothing over another's, not for a moment. */
static void
comparing_plan_changed (TrammelComparing *self)
{
  const PlanView *view = self->sheet != NULL ? trammel_plan_store_view (trammel_sheet_canvas_plan_store (self->sheet)) : NULL;
  const bool had = self->comparison.spots != NULL;

  if (self->view != NULL && g_strcmp0 (view != NULL ? view->id : NULL, self->view) != 0) {
    comparing_forget (self);
    if (had)
      g_signal_emit (self, changed_signal, 0);
  }
  comparing_ask (self);
}

void
trammel_comparing_watch (TrammelComparing *self, TrammelSheetCanvas *sheet)
{
  g_set_weak_pointer (&self->sheet, sheet);
  g_signal_connect_object (self->session, "changed", G_CALLBACK (comparing_ask), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->session, "selection-changed", G_CALLBACK (comparing_ask), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (sheet, "tool-changed", G_CALLBACK (comparing_show_again), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (trammel_sheet_canvas_plan_store (sheet), "changed", G_CALLBACK (comparing_plan_changed), self, G_CONNECT_SWAPPED);
}

const Comparison *
trammel_comparing_result (TrammelComparing *self)
{
  return self->comparison.spots != NULL ? &self->comparison : NULL;
}

Point
trammel_comparing_worst (TrammelComparing *self, ViewShows *shows)
{
  *shows = self->shows;
  return point_add (self->comparison.most_at, (Point) { self->placing.x, 0 });
}
