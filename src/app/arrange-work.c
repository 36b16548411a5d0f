#include "trammel-config.h"
#include "app/arrange-work.h"

enum { LOOK_MS = 60 };

/* Shared by the page and the worker. */
typedef struct {
  Arranging *arranging;
  ArrangingAnswer answer;
  Figures *offers[ARRANGE_OFFERS];
  GCancellable *cancellable;
  int permille;                 /* done; written by the worker */
  ArrangeWork *owner;           /* NULL: given up; the main thread's */
} ArrangeJob;

struct ArrangeWork {
  ArrangeJob *job;              /* lent by the task while it runs, owned once it arrived */
  bool arrived;
  guint timer;
  ArrangeDone done;
  ArrangeProgress progress;
  gpointer data;
};

static void
job_free (gpointer data)
{
  ArrangeJob *job = data;

  arranging_answer_clear (&job->answer);
  for (int i = 0; i < ARRANGE_OFFERS; i++)
    figures_unref (job->offers[i]);
  arranging_free (job->arranging);
  g_object_unref (job->cancellable);
  g_free (job);
}

static bool
job_goes_on (double done, void *data)
{
  ArrangeJob *job = data;

  g_atomic_int_set (&job->permille, (int) (1000 * done));
  return !g_cancellable_is_cancelled (job->cancellable);
}

static void
job_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  ArrangeJob *job = data;
  FiguresCache *cache = figures_cache_new ();

  arranging_find (job->arranging, ARRANGE_OFFERS, &job->answer);
  for (size_t i = 0; i < job->answer.found.count && job->answer.status == CORE_OK; i++) {
    g_autoptr (Aeroplane) arranged = arranging_applied (job->arranging, &job->answer.found.found[i]);

    job->offers[i] = figures_of (cache, arranged);
  }
  figures_cache_free (cache);
  g_task_return_boolean (task, TRUE);
}

static void
job_arrived (GObject *source, GAsyncResult *result, gpointer data)
{
  ArrangeJob *job = data;
  ArrangeWork *self = job->owner;

  if (self == NULL) {
    job_free (job);
    return;
  }
  g_clear_handle_id (&self->timer, g_source_remove);
  self->arrived = true;
  const ArrangeResult told = { job->arranging, &job->answer, { job->offers[0], job->offers[1], job->offers[2] } };
  self->done (&told, self->data);
}

static gboolean
work_looks (gpointer data)
{
  ArrangeWork *self = data;

  self->progress (g_atomic_int_get (&self->job->permille) / 1000.0, self->data);
  return G_SOURCE_CONTINUE;
}

ArrangeWork *
arrange_work_new (Arranging *takes, ArrangeDone done, ArrangeProgress progress, gpointer data)
{
  ArrangeWork *self = g_new (ArrangeWork, 1);
  ArrangeJob *job = g_new0 (ArrangeJob, 1);
  g_autoptr (GTask) task = g_task_new (NULL, NULL, job_arrived, job);

  *job = (ArrangeJob) { .arranging = takes, .cancellable = g_cancellable_new (), .owner = self };
  *self = (ArrangeWork) { .job = job, .done = done, .progress = progress, .data = data };
  arranging_case (takes)->goes_on = job_goes_on;
  arranging_case (takes)->data = job;
  self->timer = g_timeout_add (LOOK_MS, work_looks, self);
  g_task_set_task_data (task, job, NULL);
  g_task_run_in_thread (task, job_in_thread);
  return self;
}

void
arrange_work_free (ArrangeWork *self)
{
  if (self == NULL)
    return;
  g_clear_handle_id (&self->timer, g_source_remove);
  g_cancellable_cancel (self->job->cancellable);
  self->job->owner = NULL;
  if (self->arrived)
    job_free (self->job);
  g_free (self);
}
