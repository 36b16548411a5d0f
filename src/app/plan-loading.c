#define _GNU_SOURCE               /* memfd_create, malloc_trim */
#include "trammel-config.h"
#include "app/plan-loading.h"
#include <fcntl.h>
#include <malloc.h>
#include <sys/mman.h>
#include <unistd.h>

enum { TELL_MS = 60, STEPS = 1000 };
/* What decoding and taking off the paper have of the whole, by what they cost. Measured. */
static const double DECODE_SHARE = 0.6, INK_SHARE = 0.3;

struct PlanLoading {
  gatomicrefcount references;     /* of the main thread and of the worker */
  Plan *plan;
  char *document_path, *elsewhere;
  bool scanned;
  int stopped, done;              /* atomic; done in steps */
  PlanPicture picture;
  PlanLoaded loaded;
  PlanProgress progress;
  gpointer data;
  guint timer;
};

void
plan_picture_clear (PlanPicture *self)
{
  ink_levels_unref (self->ink);
  for (int i = 0; i < 3; i++)
    ink_levels_unref (self->scanned[i]);
  g_free (self->changed);
  *self = (PlanPicture) { .ink = NULL };
}

static void
loading_unref (gpointer data)
{
  PlanLoading *self = data;

  if (!g_atomic_ref_count_dec (&self->references))
    return;
  piece_unref (&self->plan->piece);
  plan_picture_clear (&self->picture);
  g_free (self->document_path);
  g_free (self->elsewhere);
  g_free (self);
}

/* Where the picture is */

static int
open_memory (GBytes *image)
{
  const int file = memfd_create ("plan", MFD_CLOEXEC);
  gsize size, written = 0;
  const char *bytes = g_bytes_get_data (image, &size);

  while (file >= 0 && written < size) {
    const ssize_t more = write (file, bytes + written, size - written);

    if (more <= 0) {
      close (file);
      return -1;
    }
    written += (gsize) more;
  }
  return file;
}

/* The same picture as the plan's, by its checksum, wherever it lies. */
static int
open_elsewhere (const PlanWanted *wanted)
{
  const int file = wanted->elsewhere != NULL ? open (wanted->elsewhere, O_RDONLY | O_CLOEXEC | O_NONBLOCK) : -1;
  g_autofree char *checksum = file >= 0 ? plan_file_checksum (file) : NULL;

  if (checksum != NULL && g_strcmp0 (checksum, wanted->plan->checksum) == 0)
    return file;
  if (file >= 0)
    close (file);
  return -1;
}

int
plan_picture_open (const PlanWanted *wanted, PlanFileStatus *status)
{
  int file = -1;

  *status = PLAN_FILE_SOUND;
  if (wanted->plan->image != NULL) {
    file = open_memory (wanted->plan->image);
    if (file < 0)
      *status = PLAN_FILE_UNREADABLE;
    return file;
  }
  *status = plan_file_open (wanted->plan, wanted->document_path, &file);
  if (*status == PLAN_FILE_SOUND || *status == PLAN_FILE_NONE)
    return file;
  const int other = open_elsewhere (wanted);

  if (other < 0)
    return file;
  if (file >= 0)
    close (file);
  *status = PLAN_FILE_SOUND;
  return other;
}

/* In the worker */

static bool
goes_on (PlanLoading *self, double done)
{
  g_atomic_int_set (&self->done, (int) (CLAMP (done, 0, 1) * STEPS));
  return g_atomic_int_get (&self->stopped) == 0;
}

static bool
decoding_goes_on (double done, void *self)
{
  return goes_on (self, DECODE_SHARE * done);
}

static bool
inking_goes_on (double done, void *self)
{
  return goes_on (self, DECODE_SHARE + INK_SHARE * done);
}

static void
take_ink (PlanLoading *self, const Raster *raster)
{
  Ink *ink = NULL;

  self->picture.core = ink_new (raster, inking_goes_on, self, &ink);
  if (self->picture.core == CORE_OK)
    self->picture.ink = ink_levels_new (ink);
  if (self->picture.core == CORE_OK && self->picture.ink == NULL)
    self->picture.core = CORE_NO_MEMORY;
}

static InkLevels *
colour_levels (const Raster *raster, int channel)
{
  Ink *plane = ink_of_channel (raster, channel);

  return plane != NULL ? ink_levels_new_even (plane) : NULL;
}

static void
take_colours (PlanLoading *self, const Raster *raster)
{
  InkLevels **planes = self->picture.scanned;

  for (int i = 0; i < 3; i++)
    planes[i] = i == 0 || raster_channels (raster) == 3 ? colour_levels (raster, i) : planes[0] != NULL ? ink_levels_ref (planes[0]) : NULL;
}

static void
decode_file (PlanLoading *self, int file)
{
  const Plan *plan = self->plan;
  const DecodeRequest request = { .file = file, .page = plan->page >= 1 ? (int) plan->page : 0, .dpi = plan->dpi > 0 ? plan->dpi : 0 };
  const DecodeWatch watch = { .go_on = decoding_goes_on, .data = self };
  Raster *raster = NULL;

  self->picture.decode = decode (&request, &watch, &self->picture.facts, &raster);
  if (self->picture.decode != DECODE_OK)
    return;
  take_ink (self, raster);
  if (self->scanned)
    take_colours (self, raster);
  raster_unref (raster);
}

/* The picture's pixels are ink now: their memory is the system's again at once. */
static void
load_in_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  PlanLoading *self = data;
  const PlanWanted wanted = { .plan = self->plan, .document_path = self->document_path, .elsewhere = self->elsewhere };
  const int file = plan_picture_open (&wanted, &self->picture.file);

  if (file >= 0) {
    if (self->picture.file == PLAN_FILE_CHANGED)
      self->picture.changed = plan_file_checksum (file);
    decode_file (self, file);
    close (file);
    malloc_trim (0);
  }
  g_task_return_boolean (task, TRUE);
}

/* In the main thread */

static void
load_arrived (GObject *nothing, GAsyncResult *result, gpointer data)
{
  PlanLoading *self = data;

  g_clear_handle_id (&self->timer, g_source_remove);
  if (g_atomic_int_get (&self->stopped) == 0)
    self->loaded (&self->picture, self->data);
  malloc_trim (0);
  loading_unref (self);
}

static gboolean
tell_progress (gpointer data)
{
  PlanLoading *self = data;

  self->progress ((double) g_atomic_int_get (&self->done) / STEPS, self->data);
  return G_SOURCE_CONTINUE;
}

PlanLoading *
plan_loading_begin (const PlanWanted *wanted, PlanLoaded loaded, PlanProgress progress, gpointer data)
{
  PlanLoading *self = g_new0 (PlanLoading, 1);
  g_autoptr (GTask) task = g_task_new (NULL, NULL, load_arrived, self);

  g_atomic_ref_count_init (&self->references);
  g_atomic_ref_count_inc (&self->references);
  self->plan = (Plan *) piece_ref (&wanted->plan->piece);
  self->document_path = g_strdup (wanted->document_path);
  self->elsewhere = g_strdup (wanted->elsewhere);
  self->scanned = wanted->scanned;
  self->loaded = loaded;
  self->progress = progress;
  self->data = data;
  if (progress != NULL)
    self->timer = g_timeout_add (TELL_MS, tell_progress, self);
  g_task_set_task_data (task, self, loading_unref);
  g_task_run_in_thread (task, load_in_thread);
  return self;
}

void
plan_loading_stop (PlanLoading *self)
{
  g_clear_handle_id (&self->timer, g_source_remove);
  g_atomic_int_set (&self->stopped, 1);
}
