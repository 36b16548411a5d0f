#include "trammel-config.h"
#include "app/plan-beside.h"
#include <fcntl.h>
#include <glib/gi18n-lib.h>
#include <glib/gstdio.h>
#include <string.h>
#include <unistd.h>

typedef struct { Plan *plan; char *from; } Errand;     /* from NULL: beside the document's old place */

struct PlanBeside {
  char *old_path;             /* of the document; NULL */
  GPtrArray *errands;
  GPtrArray *copied;          /* names, lent by the errands */
  char *refused;              /* the first that could not be, and why */
  const char *refused_name;
};

/* Naming */

static bool
another_plan_has (const Aeroplane *aeroplane, const char *name, const char *checksum)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PLAN); i++) {
    const Plan *plan = aeroplane_plan (aeroplane, i);

    if (g_strcmp0 (plan->file, name) == 0 && g_strcmp0 (plan->checksum, checksum) != 0)
      return true;
  }
  return false;
}

static bool
is_taken (TrammelSession *session, const char *name, const char *checksum)
{
  const char *document = trammel_session_path (session);
  g_autofree char *folder = document != NULL ? g_path_get_dirname (document) : NULL;
  g_autofree char *path = folder != NULL ? g_build_filename (folder, name, NULL) : NULL;

  return another_plan_has (trammel_session_settled (session), name, checksum) || (path != NULL && g_file_test (path, G_FILE_TEST_EXISTS));
}

char *
plan_beside_name (TrammelSession *session, const char *path, const char *checksum)
{
  const char *document = trammel_session_path (session);
  char *name = document != NULL ? plan_file_within (document, path) : NULL;
  g_autofree char *base = g_path_get_basename (path);
  const char *dot = strrchr (base, '.');
  const int stem = dot != NULL && dot > base ? (int) (dot - base) : (int) strlen (base);

  if (name != NULL)
    return name;
  name = g_strdup (base);
  for (int i = 2; is_taken (session, name, checksum); i++) {
    g_free (name);
    name = g_strdup_printf ("%.*s-%d%s", stem, base, i, base + stem);
  }
  return name;
}

PlanRescaled
plan_take_picture (Plan *plan, const Plan *from)
{
  const PlanRescaled rescaled = plan_rescale (plan, from->width, from->height);

  g_free (plan->file);
  g_free (plan->checksum);
  g_free (plan->image_type);
  g_clear_pointer (&plan->image, g_bytes_unref);
  plan->file = g_strdup (from->file);
  plan->checksum = g_strdup (from->checksum);
  plan->image_type = g_strdup (from->image_type);
  plan->image = from->image == NULL ? NULL : g_bytes_ref (from->image);
  plan->page = from->page;
  plan->dpi = from->dpi;
  plan->width = from->width;
  plan->height = from->height;
  return rescaled;
}

/* Copying */

static void
errand_free (gpointer data)
{
  Errand *errand = data;

  piece_unref (&errand->plan->piece);
  g_free (errand->from);
  g_free (errand);
}

/* A document may say anything; a copy is only ever made within its folder. */
static bool
stays_within (const char *file)
{
  g_auto (GStrv) steps = g_strsplit (file, "/", -1);

  return !g_path_is_absolute (file) && !g_strv_contains ((const char *const *) steps, "..");
}

PlanBeside *
plan_beside_new (TrammelPlanStore *store, const Aeroplane *aeroplane, const char *old_path)
{
  PlanBeside *self = g_new0 (PlanBeside, 1);

  self->old_path = g_strdup (old_path);
  self->errands = g_ptr_array_new_with_free_func (errand_free);
  self->copied = g_ptr_array_new ();
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PLAN); i++) {
    const Plan *plan = aeroplane_plan (aeroplane, i);
    const char *from = trammel_plan_store_elsewhere (store, plan);
    Errand *errand;

    if (plan->file == NULL || !stays_within (plan->file))
      continue;
    errand = g_new0 (Errand, 1);
    errand->plan = (Plan *) piece_ref (&plan->piece);
    errand->from = g_strdup (from);
    g_ptr_array_add (self->errands, errand);
  }
  return self;
}

void
plan_beside_free (PlanBeside *self)
{
  if (self == NULL)
    return;
  g_ptr_array_unref (self->copied);
  g_ptr_array_unref (self->errands);
  g_free (self->refused);
  g_free (self->old_path);
  g_free (self);
}

static bool
is_there (const Plan *plan, const char *document_path)
{
  int file = -1;
  const PlanFileStatus status = plan_file_open (plan, document_path, &file);

  if (file >= 0)
    close (file);
  return status == PLAN_FILE_SOUND;
}

/* Where the picture is now; NULL: nowhere that is known. */
static char *
source_of (const PlanBeside *self, const Errand *errand)
{
  g_autofree char *folder = self->old_path != NULL ? g_path_get_dirname (self->old_path) : NULL;

  if (errand->from != NULL && g_file_test (errand->from, G_FILE_TEST_IS_REGULAR))
    return g_strdup (errand->from);
  return folder != NULL && is_there (errand->plan, self->old_path) ? g_build_filename (folder, errand->plan->file, NULL) : NULL;
}

/* What was copied may have changed since it was looked at, also while it was copied: only the copy's own checksum tells. */
static bool
copy_is_sound (const Plan *plan, const char *path)
{
  const int file = open (path, O_RDONLY | O_CLOEXEC | O_NOFOLLOW);
  g_autofree char *checksum = file >= 0 ? plan_file_checksum (file) : NULL;

  if (file >= 0)
    close (file);
  return checksum != NULL && (plan->checksum == NULL || g_ascii_strcasecmp (checksum, plan->checksum) == 0);
}

static void
refuse (PlanBeside *self, const Errand *errand, const char *why)
{
  if (self->refused != NULL)
    return;
  self->refused = g_strdup (why);
  self->refused_name = errand->plan->file;
}

static void
copy_one (PlanBeside *self, const Errand *errand, const char *document_path)
{
  g_autofree char *folder = g_path_get_dirname (document_path);
  g_autofree char *path = g_build_filename (folder, errand->plan->file, NULL);
  g_autofree char *inner = g_path_get_dirname (path);
  g_autofree char *source = is_there (errand->plan, document_path) ? NULL : source_of (self, errand);
  g_autoptr (GFile) from = source != NULL ? g_file_new_for_path (source) : NULL;
  g_autoptr (GFile) to = g_file_new_for_path (path);
  g_autoptr (GError) error = NULL;

  if (from == NULL)
    return;
  g_mkdir_with_parents (inner, 0755);
  if (!g_file_copy (from, to, G_FILE_COPY_NONE, NULL, NULL, NULL, &error))
    refuse (self, errand, error->message);
  else if (copy_is_sound (errand->plan, path))
    g_ptr_array_add (self->copied, errand->plan->file);
  else {
    g_unlink (path);
    /* Translators: why a plan's picture was not copied; stands behind a colon and before a full stop. */
    refuse (self, errand, _("it has changed since it was put here"));
  }
}

void
plan_beside_copy (PlanBeside *self, const char *document_path)
{
  for (guint i = 0; i < self->errands->len; i++)
    copy_one (self, g_ptr_array_index (self->errands, i), document_path);
}

char *
plan_beside_word (const PlanBeside *self, bool *failed)
{
  *failed = self->refused != NULL;
  if (self->refused != NULL)
    /* Translators: the name of a picture, and what kept it from being copied, e.g. "No space left on device". */
    return g_strdup_printf (_("The document is saved, but the plan %s could not be copied beside it: %s."), self->refused_name, self->refused);
  if (self->copied->len == 0)
    return NULL;
  if (self->copied->len == 1)
    /* Translators: %s is the name of a picture. */
    return g_strdup_printf (_("The plan %s was copied beside the document"), (const char *) g_ptr_array_index (self->copied, 0));
  return g_strdup_printf (ngettext ("%u plan was copied beside the document", "%u plans were copied beside the document", self->copied->len),
                          self->copied->len);
}
