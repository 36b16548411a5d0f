#include "app/recorder.h"
#include <gio/gio.h>

enum { DELAY_MS = 1000 };       /* steps in quick succession are one writing */

typedef enum { KEEP, REMOVE, ENDED, LEFT } Fate;

struct Recorder {
  TrammelSession *session;
  Journal *journal;             /* NULL while there is nothing to lose */
  guint timer;
  bool writing;                 /* a thread has the journal */
  Fate fate;                    /* what is to become of the journal when that thread is done */
  bool told;
  RecorderFailed failed;
  gpointer data;
};

static void
recorder_free (Recorder *self)
{
  g_object_unref (self->session);
  g_free (self);
}

/* Only called when no thread has the journal. */
static void
recorder_meet_fate (Recorder *self)
{
  if (self->fate == REMOVE || self->fate == ENDED)
    g_clear_pointer (&self->journal, journal_close);
  if (self->fate == LEFT)
    g_clear_pointer (&self->journal, journal_leave);
  if (self->fate == ENDED || self->fate == LEFT)
    recorder_free (self);
  else
    self->fate = KEEP;
}

static void
put_arrived (GObject *nothing, GAsyncResult *result, gpointer recorder)
{
  Recorder *self = recorder;
  g_autoptr (GError) error = NULL;

  self->writing = false;
  if (!g_task_propagate_boolean (G_TASK (result), &error) && self->fate == KEEP && !self->told) {
    self->told = true;
    self->failed (error->message, self->data);
  }
  recorder_meet_fate (self);
}

typedef struct { Journal *journal; Aeroplane *aeroplane; } Put;

static void
put_free (gpointer data)
{
  Put *put = data;

  aeroplane_unref (put->aeroplane);
  g_free (put);
}

static void
put_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  const Put *put = data;
  GError *error = NULL;

  if (journal_put (put->journal, put->aeroplane, &error))
    g_task_return_boolean (task, TRUE);
  else
    g_task_return_error (task, error);
}

static void
recorder_put (Recorder *self)
{
  g_autoptr (GTask) task = g_task_new (NULL, NULL, put_arrived, self);
  Put *put = g_new0 (Put, 1);

  if (self->journal == NULL)
    self->journal = journal_new (trammel_session_path (self->session));
  journal_set_path (self->journal, trammel_session_path (self->session));
  put->journal = self->journal;
  put->aeroplane = aeroplane_ref (trammel_session_settled (self->session));
  self->writing = true;
  g_task_set_task_data (task, put, put_free);
  g_task_run_in_thread (task, put_in_thread);
}

static gboolean
recorder_due (gpointer recorder)
{
  Recorder *self = recorder;

  /* A journal is written by one thread at a time. */
  if (self->writing)
    return G_SOURCE_CONTINUE;
  self->timer = 0;
  recorder_put (self);
  return G_SOURCE_REMOVE;
}

static void
recorder_follow (Recorder *self)
{
  if (!trammel_session_is_saved (self->session)) {
    if (self->timer == 0)
      self->timer = g_timeout_add (DELAY_MS, recorder_due, self);
    return;
  }
  g_clear_handle_id (&self->timer, g_source_remove);
  self->fate = REMOVE;
  if (!self->writing)
    recorder_meet_fate (self);
}

Recorder *
recorder_new (TrammelSession *session, RecorderFailed failed, gpointer data)
{
  Recorder *self = g_new0 (Recorder, 1);

  self->session = g_object_ref (session);
  self->failed = failed;
  self->data = data;
  g_signal_connect_swapped (session, "state-changed", G_CALLBACK (recorder_follow), self);
  return self;
}

void
recorder_adopt (Recorder *self, Journal *takes)
{
  /* A session that takes work up again was untouched, so there is no other journal. */
  g_return_if_fail (self->journal == NULL && !self->writing);
  self->journal = takes;
}

static void
recorder_finish (Recorder *self, Fate fate)
{
  if (self == NULL)
    return;
  g_signal_handlers_disconnect_by_data (self->session, self);
  g_clear_handle_id (&self->timer, g_source_remove);
  self->fate = fate;
  if (!self->writing)
    recorder_meet_fate (self);
}

void
recorder_end (Recorder *self)
{
  recorder_finish (self, ENDED);
}

void
recorder_leave (Recorder *self)
{
  recorder_finish (self, LEFT);
}
