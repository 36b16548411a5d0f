#include "trammel-config.h"
#include "app/plan-source.h"
#include <fcntl.h>
#include <math.h>
#include <sys/stat.h>
#include <unistd.h>
#include "app/plan-kind.h"
#include "app/plan-loading.h"

/* Fine enough for a line of 0.2 mm to be three pixels wide, and what scanners are set to. Common practice, no source. */
static const double PAGE_DPI = 300;

static void
keep_file (PlanSource *self, int file)
{
  struct stat state;
  g_autofree char *contents = NULL;
  gsize length = 0;

  if (fstat (file, &state) != 0 || !S_ISREG (state.st_mode))
    return;
  if (state.st_size <= PLAN_IMAGE_MOST && !g_file_get_contents (self->path, &contents, &length, NULL))
    return;
  /* It may have grown meanwhile. */
  if (contents == NULL || length > PLAN_IMAGE_MOST)
    self->checksum = plan_file_checksum (file);
  else
    self->image = g_bytes_new_take (g_steal_pointer (&contents), length);
}

static void
keep_texture (PlanSource *self)
{
  self->image = gdk_texture_save_to_png_bytes (self->texture);
  self->too_large_to_keep = g_bytes_get_size (self->image) > PLAN_IMAGE_MOST;
}

int
plan_source_open (const PlanSource *self)
{
  PlanFileStatus status;
  int file = -1;

  if (self->image != NULL) {
    Plan *plan = plan_new (NULL);

    plan->image = g_bytes_ref (self->image);
    file = plan_picture_open (&(PlanWanted) { .plan = plan }, &status);
    piece_unref (&plan->piece);
  } else if (self->path != NULL)
    file = open (self->path, O_RDONLY | O_CLOEXEC | O_NONBLOCK);
  return file;
}

static bool
examine_goes_on (double done, void *cancellable)
{
  return !g_cancellable_is_cancelled (cancellable);
}

static void
examine_in_thread (GTask *task, gpointer nothing, gpointer data, GCancellable *cancellable)
{
  PlanSource *self = data;
  const DecodeWatch watch = { .go_on = examine_goes_on, .data = cancellable };
  int file = self->path != NULL ? open (self->path, O_RDONLY | O_CLOEXEC | O_NONBLOCK) : -1;

  if (self->texture != NULL)
    keep_texture (self);
  else if (file >= 0)
    keep_file (self, file);
  if (file < 0)
    file = plan_source_open (self);
  self->decode = file < 0 ? DECODE_CANNOT_READ : decode (&(DecodeRequest) { .file = file, .dpi = PAGE_DPI, .facts_only = true },
                                                         &watch, &self->facts, NULL);
  if (file >= 0)
    close (file);
  g_task_return_boolean (task, TRUE);
}

void
plan_source_examine (PlanSource *self, GCancellable *cancellable, GAsyncReadyCallback done, gpointer data)
{
  g_autoptr (GTask) task = g_task_new (NULL, cancellable, done, data);

  g_task_set_check_cancellable (task, FALSE);
  g_task_set_task_data (task, self, NULL);
  g_task_run_in_thread (task, examine_in_thread);
}

Plan *
plan_source_plan (const PlanSource *self, int page, const char *file)
{
  Plan *plan = plan_new (NULL);
  const bool true_to_size = !isnan (self->facts.page_width_mm);

  if (self->image != NULL) {
    plan->image = g_bytes_ref (self->image);
    plan->image_type = g_strdup (plan_kind_type (self->facts.kind));
  } else {
    plan->file = g_strdup (file);
    plan->checksum = g_strdup (self->checksum);
  }
  if (self->facts.kind == DECODE_PDF || self->facts.pages > 1)
    plan->page = MAX (page, 1);
  if (true_to_size)
    plan->dpi = PAGE_DPI;
  return plan;
}

void
plan_source_clear (PlanSource *self)
{
  g_clear_pointer (&self->path, g_free);
  g_clear_object (&self->texture);
  g_clear_pointer (&self->image, g_bytes_unref);
  g_clear_pointer (&self->checksum, g_free);
}
