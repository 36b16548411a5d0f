#include "trammel-config.h"
#include "app/traced.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/trace-landing.h"
#include "app/trace-telling.h"

struct _TrammelTraced {
  GObject parent;
  TrammelSession *session;      /* not owned: it owns this */
  TraceOrder *order;            /* the last one that was put; NULL none */
  char *id;                     /* of the piece that it became */
  Outline *own;                 /* as traced, in the view's own axes */
  Outline *standing;            /* as the document had it then */
  Piece *plan;                  /* as it was then */
  Outline *halves[2];           /* starboard and port, each as the right half; NULL where not traced */
  PassedClick passed[2];        /* by these, each in its own axes */
  double tolerance;             /* NAN: the usual */
  double tolerance_before;      /* of what stands, while something is traced that may not land */
  double shortened;             /* the factor its stations were put with */
  bool flat, open;              /* shortened; ended before it was done */
  GCancellable *work;           /* NULL: none under way */
};

G_DEFINE_FINAL_TYPE (TrammelTraced, trammel_traced, G_TYPE_OBJECT)

typedef struct {
  TrammelTraced *traced;
  TraceOrder *order;
  GWeakRef told;
  GCancellable *work;
  Piece *plan;                  /* the settled one that is traced over; NULL: it has none */
  guint timer;                  /* will say that it takes its time */
  const char *label;            /* the step's; NULL: the view's */
  bool again;                   /* the same trace anew: nothing is asked */
} Landing;

static guint changed_signal;

static void
traced_forget (TrammelTraced *self)
{
  g_clear_pointer (&self->order, trace_order_unref);
  g_clear_pointer (&self->id, g_free);
  g_clear_pointer (&self->plan, piece_unref);
  g_clear_pointer (&self->own, outline_unref);
  g_clear_pointer (&self->standing, outline_unref);
  for (int i = 0; i < 2; i++)
    g_clear_pointer (&self->halves[i], outline_unref);
}

static void
trammel_traced_finalize (GObject *object)
{
  traced_forget (TRAMMEL_TRACED (object));
  g_clear_object (&TRAMMEL_TRACED (object)->work);
  G_OBJECT_CLASS (trammel_traced_parent_class)->finalize (object);
}

static void
trammel_traced_class_init (TrammelTracedClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = trammel_traced_finalize;
  changed_signal = g_signal_new ("changed", TRAMMEL_TYPE_TRACED, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
trammel_traced_init (TrammelTraced *self)
{
  self->tolerance = NAN;
}

TrammelTraced *
trammel_traced_of (TrammelSession *session)
{
  static const char key[] = "trammel-traced";
  TrammelTraced *self = g_object_get_data (G_OBJECT (session), key);

  if (self == NULL) {
    self = g_object_new (TRAMMEL_TYPE_TRACED, NULL);
    self->session = session;
    g_object_set_data_full (G_OBJECT (session), key, self, g_object_unref);
  }
  return self;
}

/* What stands in the document of the piece; NULL when it is gone. */
static const Outline *
traced_outline (TrammelTraced *self)
{
  return self->id != NULL ? trace_landing_outline (trammel_session_settled (self->session), self->id, self->order->ground->shows) : NULL;
}

static bool
traced_stands (TrammelTraced *self)
{
  return self->order != NULL && outline_equal (traced_outline (self), self->standing);
}

static double
traced_shortening (TrammelTraced *self)
{
  const Surface *surface = self->id != NULL ? aeroplane_surface_by_id (trammel_session_settled (self->session), self->id) : NULL;

  return self->flat && surface != NULL ? cos (surface->dihedral * G_PI / 180) : 1;
}

/* The click that is passed furthest by what stands, in the view's own axes. */
static PassedClick
traced_passes (TrammelTraced *self)
{
  return self->passed[self->passed[1].by > self->passed[0].by];
}

/* Whether somebody has looked at what stands and found it right. */
static bool
traced_is_accepted (TrammelTraced *self)
{
  const PassedClick *passed = self->id == NULL || !traced_stands (self) ? NULL
                            : trace_landing_passed (trammel_session_settled (self->session), self->id, self->order->ground->shows);

  return passed != NULL && passed->by == 0;
}

/* Puts what was traced into the document once more, as it is to be now. What is only on offer there does not come along. */
static void
traced_put (TrammelTraced *self, const bool *root_open, const char *label)
{
  const double shortening = traced_shortening (self);
  LandingOutline own = { .passed = traced_passes (self) };
  Outline *outline = NULL;
  Aeroplane *next;
  char *id = NULL;

  if (traced_is_accepted (self))
    own.passed.by = self->passed[0].by = self->passed[1].by = 0;
  if (outline_mapped (self->own, (Point) { 1, shortening }, (Point) { 0, 0 }, &outline) != CORE_OK)
    return;
  own.outline = outline;
  own.passed.at.y *= shortening;
  next = trace_landed (trammel_session_settled (self->session), self->order->ground, &own, root_open, &id);
  outline_unref (outline);
  g_free (self->id);
  self->id = id;
  if (next == NULL)
    return;
  self->shortened = shortening;
  trammel_session_do (self->session, next, label);
  g_clear_pointer (&self->standing, outline_unref);
  if (traced_outline (self) != NULL)
    self->standing = outline_ref (traced_outline (self));
  trammel_session_select (self->session, selection_of (self->id));
  g_signal_emit (self, changed_signal, 0);
}

/* The plan that has the view which is traced, as it is now. */
static const Piece *
traced_plan (TrammelTraced *self, const TraceOrder *order)
{
  const Plan *plan = NULL;

  return aeroplane_view_by_id (trammel_session_settled (self->session), order->ground->view, &plan) != NULL ? &plan->piece : NULL;
}

static int
half_of (const TraceOrder *order)
{
  const double drawn = order->ground->placing.frame.side * order->side;

  return drawn > 0 ? 0 : 1;
}

static bool
has_both_halves (const TraceOrder *order)
{
  return order->ground->side == VIEW_BOTH && trace_ground_is_half (order->ground);
}

/* The half traced before this one in the same view, if what came of it still stands. */
static const Outline *
traced_other_half (TrammelTraced *self, const TraceOrder *order)
{
  if (!has_both_halves (order) || !traced_stands (self) || g_strcmp0 (self->order->ground->view, order->ground->view) != 0)
    return NULL;
  return self->halves[1 - half_of (order)];
}

static void
traced_take (TrammelTraced *self, const Landing *landing, const TraceResult *result)
{
  const int half = half_of (landing->order);
  const Outline *other = traced_other_half (self, landing->order);
  Outline *kept = other != NULL ? outline_ref (other) : NULL;
  const PassedClick kept_passed = other != NULL ? self->passed[1 - half] : (PassedClick) { .by = 0 };
  const bool flat = landing->again && self->flat, accepted = landing->again && traced_is_accepted (self);
  const double tolerance = self->tolerance;

  traced_forget (self);
  self->order = trace_order_ref (landing->order);
  self->plan = landing->plan != NULL ? piece_ref (landing->plan) : NULL;
  self->own = outline_ref (result->mean != NULL ? result->mean : result->outline);
  self->halves[half] = outline_ref (result->outline);
  self->halves[1 - half] = kept;
  self->passed[half] = accepted ? (PassedClick) { .by = 0 } : result->passed;
  self->passed[1 - half] = accepted ? (PassedClick) { .by = 0 } : kept_passed;
  self->flat = flat;
  self->tolerance = landing->again ? tolerance : NAN;
  self->open = !landing->order->ends_on_root && !landing->order->goes_round;
  traced_put (self, NULL, landing->label != NULL ? landing->label : trace_landing_label (landing->order->ground->shows));
}

static void
landing_free (Landing *landing)
{
  g_clear_handle_id (&landing->timer, g_source_remove);
  trace_order_unref (landing->order);
  g_weak_ref_clear (&landing->told);
  g_clear_pointer (&landing->plan, piece_unref);
  g_object_unref (landing->work);
  g_object_unref (landing->traced->session);
  g_free (landing);
}

/* What was traced over a plan that is another by now would land beside it. */
static void
traced_arrived (const TraceResult *result, gpointer data)
{
  Landing *landing = data;
  TrammelTraced *self = landing->traced;
  g_autoptr (GtkWidget) told = g_weak_ref_get (&landing->told);
  const bool stale = traced_plan (self, landing->order) != landing->plan;

  if (told != NULL && landing->timer == 0)
    trace_telling_done (told, landing->work);
  if (self->work == landing->work) {
    g_clear_object (&self->work);
    if (result->status != CORE_OK || stale)
      self->tolerance = self->tolerance_before;
  }
  if (result->status == CORE_OK && !stale)
    traced_take (self, landing, result);
  else
    g_signal_emit (self, changed_signal, 0);
  if (told != NULL && result->status == CORE_OK && stale)
    trace_telling_stale (told);
  else if (told != NULL && !landing->again)
    trace_telling_result (told, trammel_session_units (self->session), landing->order, result);
  landing_free (landing);
}

static void
traced_takes_its_time (gpointer data)
{
  Landing *landing = data;
  g_autoptr (GtkWidget) told = g_weak_ref_get (&landing->told);

  landing->timer = 0;
  if (told != NULL)
    trace_telling_busy (told, landing->work);
}

static void
traced_begin (TrammelTraced *self, TraceOrder *order, GtkWidget *told, const char *label, bool again)
{
  const Piece *plan = again ? self->plan : traced_plan (self, order);
  Landing *landing = g_new0 (Landing, 1);

  *landing = (Landing) { .traced = self, .order = trace_order_ref (order), .label = label, .again = again };
  g_object_ref (self->session);           /* and this with it, until the work is done */
  g_weak_ref_init (&landing->told, told);
  landing->plan = plan != NULL ? piece_ref ((Piece *) plan) : NULL;
  if (self->work != NULL)
    g_cancellable_cancel (self->work);
  g_clear_object (&self->work);
  self->work = g_cancellable_new ();
  landing->work = g_object_ref (self->work);
  landing->timer = g_timeout_add_once (TRACE_TELLING_QUIET_MS, traced_takes_its_time, landing);
  g_signal_emit (self, changed_signal, 0);
  trace_ask (order, traced_other_half (self, order), self->tolerance, self->work, traced_arrived, landing);
}

static void
traced_try_tolerance (TrammelTraced *self, double mm)
{
  if (!trammel_traced_is_busy (self))
    self->tolerance_before = self->tolerance;
  self->tolerance = mm;
}

void
trammel_traced_trace (TrammelTraced *self, TraceOrder *order, GtkWidget *told)
{
  traced_try_tolerance (self, NAN);
  traced_begin (self, order, told, NULL, false);
}

bool
trammel_traced_is_busy (TrammelTraced *self)
{
  return self->work != NULL;
}

bool
trammel_traced_cancel (TrammelTraced *self)
{
  const bool under_way = self->work != NULL && !g_cancellable_is_cancelled (self->work);

  if (under_way)
    g_cancellable_cancel (self->work);
  return under_way;
}

const TraceOrder *
trammel_traced_order (TrammelTraced *self)
{
  return self->order;
}

bool
trammel_traced_is_fresh (TrammelTraced *self, const Piece *piece)
{
  return piece != NULL && g_strcmp0 (self->id, piece->id) == 0 && traced_stands (self);
}

double
trammel_traced_tolerance (TrammelTraced *self)
{
  if (self->order == NULL || !isnan (self->tolerance))
    return self->tolerance;
  return trace_usual_tolerance (1 / trace_ground_scale (self->order->ground, self->order->clicks[0]));
}

void
trammel_traced_set_tolerance (TrammelTraced *self, double mm)
{
  if (self->order == NULL)
    return;
  traced_try_tolerance (self, mm);
  traced_begin (self, self->order, NULL, _("Change Tolerance"), true);
}

bool
trammel_traced_is_flat (TrammelTraced *self)
{
  return self->flat;
}

/* As it lies on the sheet without any shortening: undo may have taken that back. */
static bool
traced_stands_flat (TrammelTraced *self, const Outline *outline)
{
  const Point shift = { self->order->ground->placing.x, 0 };
  Outline *flat = NULL;
  bool same;

  if (outline_mapped (self->own, (Point) { 1, 1 }, shift, &flat) != CORE_OK)
    return false;
  same = outline_equal (flat, outline);
  outline_unref (flat);
  return same;
}

double
trammel_traced_shortening (TrammelTraced *self, const Surface *surface)
{
  if (!self->flat || g_strcmp0 (self->id, surface->piece.id) != 0 || traced_stands_flat (self, surface->outline))
    return 1;
  return self->shortened;
}

void
trammel_traced_set_flat (TrammelTraced *self, bool flat)
{
  if (self->flat == flat || !traced_stands (self))
    return;
  self->flat = flat;
  traced_put (self, NULL, flat ? _("Shorten by the Dihedral") : _("Do Not Shorten by the Dihedral"));
}

double
trammel_traced_root (TrammelTraced *self)
{
  return self->order != NULL && self->order->ends_on_root ? self->order->root : 0;
}

void
trammel_traced_set_root_open (TrammelTraced *self, bool open)
{
  if (traced_stands (self))
    traced_put (self, &open, open ? _("Leave Root Open") : _("Carry Root to the Centre Line"));
}

TraceOrder *
trammel_traced_unfinished (TrammelTraced *self, const char *view)
{
  if (!self->open || !traced_stands (self) || g_strcmp0 (self->order->ground->view, view) != 0)
    return NULL;
  return trace_order_ref (self->order);
}
