#include "trammel-config.h"
#include "app/session.h"
#include <glib/gi18n-lib.h>
#include "document/history.h"
#include "drawing/sheet-places.h"

struct _TrammelSession {
  GObject parent;
  TrammelSettings *settings;
  History *history;
  FiguresCache *cache;
  Figures *figures;      /* of history_now; NULL until asked for */
  Advice *advice;        /* of figures in the present units; NULL until asked for */
  Selection selection;
  Figures *offered;      /* NULL: nothing */
  bool arranging;
  char *path;
};

G_DEFINE_FINAL_TYPE (TrammelSession, trammel_session, G_TYPE_OBJECT)

enum { CHANGED, SELECTION_CHANGED, STATE_CHANGED, OFFER_CHANGED, SIGNAL_COUNT };
static guint signals[SIGNAL_COUNT];

static void
session_forget_advice (TrammelSession *self)
{
  g_clear_pointer (&self->advice, advice_free);
}

static void
trammel_session_finalize (GObject *object)
{
  TrammelSession *self = TRAMMEL_SESSION (object);

  session_forget_advice (self);
  g_clear_pointer (&self->figures, figures_unref);
  g_clear_pointer (&self->offered, figures_unref);
  figures_cache_free (self->cache);
  history_free (self->history);
  selection_clear (&self->selection);
  g_object_unref (self->settings);
  g_free (self->path);
  G_OBJECT_CLASS (trammel_session_parent_class)->finalize (object);
}

static guint
session_signal (const char *name)
{
  return g_signal_new (name, TRAMMEL_TYPE_SESSION, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
trammel_session_class_init (TrammelSessionClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = trammel_session_finalize;
  signals[CHANGED] = session_signal ("changed");
  signals[SELECTION_CHANGED] = session_signal ("selection-changed");
  signals[STATE_CHANGED] = session_signal ("state-changed");
  signals[OFFER_CHANGED] = session_signal ("offer-changed");
}

static void
trammel_session_init (TrammelSession *self)
{
  self->history = history_new (aeroplane_new ());
  self->cache = figures_cache_new ();
  self->selection = selection_none ();
}

TrammelSession *
trammel_session_new (TrammelSettings *settings)
{
  TrammelSession *self = g_object_new (TRAMMEL_TYPE_SESSION, NULL);

  self->settings = g_object_ref (settings);
  g_signal_connect_object (settings, "changed", G_CALLBACK (session_forget_advice), self, G_CONNECT_SWAPPED);
  return self;
}

TrammelSettings *
trammel_session_settings (TrammelSession *self)
{
  return self->settings;
}

Units
trammel_session_units (TrammelSession *self)
{
  return trammel_settings_units (self->settings);
}

const Aeroplane *
trammel_session_aeroplane (TrammelSession *self)
{
  return history_now (self->history);
}

const Aeroplane *
trammel_session_settled (TrammelSession *self)
{
  return history_settled (self->history);
}

const Figures *
trammel_session_figures (TrammelSession *self)
{
  if (self->figures == NULL)
    self->figures = figures_of (self->cache, history_now (self->history));
  return self->figures;
}

const Advice *
trammel_session_advice (TrammelSession *self)
{
  if (self->advice == NULL)
    self->advice = advice_new (trammel_session_figures (self), trammel_session_units (self));
  return self->advice;
}

/* What was selected and is no longer there must not stay selected. */
static void
session_prune_selection (TrammelSession *self)
{
  Selection kept = selection_kept (&self->selection, history_now (self->history));

  if (kept.point != SHEET_POINT_NONE && !sheet_has_point (trammel_session_figures (self), kept.point))
    kept.point = SHEET_POINT_NONE;
  if (selection_equal (&kept, &self->selection)) {
    selection_clear (&kept);
    return;
  }
  selection_clear (&self->selection);
  self->selection = kept;
  g_signal_emit (self, signals[SELECTION_CHANGED], 0);
}

void
trammel_session_offer (TrammelSession *self, Figures *takes)
{
  if (takes == NULL && self->offered == NULL)
    return;
  g_clear_pointer (&self->offered, figures_unref);
  self->offered = takes;
  g_signal_emit (self, signals[OFFER_CHANGED], 0);
}

const Figures *
trammel_session_offered (TrammelSession *self)
{
  return self->offered;
}

void
trammel_session_set_arranging (TrammelSession *self, bool arranging)
{
  if (self->arranging == arranging)
    return;
  self->arranging = arranging;
  g_signal_emit (self, signals[OFFER_CHANGED], 0);
}

bool
trammel_session_is_arranging (TrammelSession *self)
{
  return self->arranging;
}

static void
session_changed (TrammelSession *self)
{
  trammel_session_offer (self, NULL);
  session_forget_advice (self);
  g_clear_pointer (&self->figures, figures_unref);
  session_prune_selection (self);
  g_signal_emit (self, signals[CHANGED], 0);
}

static void
session_stepped (TrammelSession *self)
{
  session_changed (self);
  g_signal_emit (self, signals[STATE_CHANGED], 0);
}

/* A step was made today; `takes` is taken. */
static Aeroplane *
changed_today (Aeroplane *takes)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();
  g_autofree char *today = g_date_time_format (now, "%Y-%m-%d");
  Aeroplane *made = aeroplane_with_changed (takes, today);

  aeroplane_unref (takes);
  return made;
}

void
trammel_session_do (TrammelSession *self, Aeroplane *takes, const char *label)
{
  if (takes == NULL)
    return;
  history_do (self->history, changed_today (takes), label);
  session_stepped (self);
}

void
trammel_session_preview (TrammelSession *self, Aeroplane *takes)
{
  if (takes == NULL)
    return;
  history_preview (self->history, takes);
  session_changed (self);
}

void
trammel_session_propose (TrammelSession *self, Aeroplane *takes)
{
  if (takes == NULL)
    return;
  history_propose (self->history, takes);
  session_changed (self);
}

void
trammel_session_settle (TrammelSession *self, const char *label)
{
  /* What is dragged has no day before it is a step. */
  if (history_is_previewing (self->history))
    history_preview (self->history, changed_today (aeroplane_ref ((Aeroplane *) history_now (self->history))));
  history_settle (self->history, label);
  session_stepped (self);
}

void
trammel_session_abandon (TrammelSession *self)
{
  history_abandon (self->history);
  session_stepped (self);
}

bool
trammel_session_is_previewing (TrammelSession *self)
{
  return history_is_previewing (self->history);
}

void
trammel_session_undo (TrammelSession *self)
{
  if (history_undo (self->history))
    session_stepped (self);
}

void
trammel_session_redo (TrammelSession *self)
{
  if (history_redo (self->history))
    session_stepped (self);
}

const char *
trammel_session_undo_label (TrammelSession *self)
{
  return history_undo_label (self->history);
}

const char *
trammel_session_redo_label (TrammelSession *self)
{
  return history_redo_label (self->history);
}

const Selection *
trammel_session_selection (TrammelSession *self)
{
  return &self->selection;
}

void
trammel_session_select (TrammelSession *self, Selection takes)
{
  if (selection_equal (&self->selection, &takes)) {
    selection_clear (&takes);
    return;
  }
  selection_clear (&self->selection);
  self->selection = takes;
  g_signal_emit (self, signals[SELECTION_CHANGED], 0);
}

const Surface *
trammel_session_selected_surface (TrammelSession *self)
{
  return aeroplane_surface_by_id (history_now (self->history), selection_single (&self->selection));
}

const Body *
trammel_session_selected_body (TrammelSession *self)
{
  return aeroplane_body_by_id (history_now (self->history), selection_single (&self->selection));
}

const Part *
trammel_session_selected_part (TrammelSession *self)
{
  return aeroplane_part_by_id (history_now (self->history), selection_single (&self->selection));
}

const char *
trammel_session_path (TrammelSession *self)
{
  return self->path;
}

bool
trammel_session_is_saved (TrammelSession *self)
{
  return history_is_saved (self->history);
}

void
trammel_session_open (TrammelSession *self, Aeroplane *takes, const char *path)
{
  history_free (self->history);
  self->history = history_new (takes);
  g_free (self->path);
  self->path = g_strdup (path);
  /* Who hears of the selection must not meet the figures of what was there before. */
  session_forget_advice (self);
  g_clear_pointer (&self->figures, figures_unref);
  trammel_session_select (self, selection_none ());
  session_stepped (self);
}

void
trammel_session_mark_saved (TrammelSession *self, const char *path)
{
  trammel_session_mark_saved_as (self, history_now (self->history), path);
}

void
trammel_session_mark_saved_as (TrammelSession *self, const Aeroplane *saved, const char *path)
{
  char *copy = g_strdup (path);

  g_free (self->path);
  self->path = copy;
  history_mark_saved_as (self->history, saved);
  g_signal_emit (self, signals[STATE_CHANGED], 0);
}

char *
trammel_session_title (TrammelSession *self)
{
  const char *name = aeroplane_traits (history_now (self->history)).name;

  if (name != NULL && *name != '\0')
    return g_strdup (name);
  if (self->path != NULL)
    return g_path_get_basename (self->path);
  return g_strdup (_("New Aeroplane"));
}
