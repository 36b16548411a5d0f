#include "trammel-config.h"
#include "app/plan-opening.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/page-chooser.h"
#include "app/plan-beside.h"
#include "app/plan-fault.h"
#include "app/plan-source.h"
#include "document/changes.h"

/* Told from the first look on; the rest is the decoding. */
static const double LOOK_SHARE = 0.05;

struct PlanOpening {
  TrammelWindow *window;
  TrammelPlanStore *store;
  PlanSource source;
  char *name, *replaces;
  Plan *plan;                   /* as it will be */
  PlanLoading *loading;
  GtkWidget *chooser;           /* of pages; NULL */
  GCancellable *cancellable;
  bool examining, beside;
  int reduced;
  PlanRescaled marks;           /* of the plan whose picture this becomes */
  PlanOpeningProgress progress;
  PlanOpeningDone done;
};

static void
opening_free (PlanOpening *self)
{
  plan_source_clear (&self->source);
  if (self->plan != NULL)
    piece_unref (&self->plan->piece);
  g_object_unref (self->cancellable);
  g_object_unref (self->store);
  g_object_unref (self->window);
  g_free (self->name);
  g_free (self->replaces);
  g_free (self);
}

static void
opening_end (PlanOpening *self, const char *fault)
{
  self->done (self, fault, self->window);
  opening_free (self);
}

static void
opening_end_with (PlanOpening *self, char *takes_fault)
{
  g_autofree char *fault = takes_fault;

  opening_end (self, fault);
}

/* The picture is there */

static Plan *
opening_finished_plan (PlanOpening *self, const DecodeFacts *facts)
{
  const Plan *old = self->replaces == NULL ? NULL
                    : aeroplane_plan_by_id (trammel_session_settled (trammel_window_session (self->window)), self->replaces);
  Plan *plan = g_steal_pointer (&self->plan), *kept;

  plan->width = facts->width_px;
  plan->height = facts->height_px;
  if (old == NULL)
    return plan;
  /* All that is known of the old picture is kept: it may be a better scan of the same sheet, and undo brings the other back. */
  kept = (Plan *) piece_dup (&old->piece);
  self->marks = plan_take_picture (kept, plan);
  piece_unref (&plan->piece);
  return kept;
}

static void
opening_loaded (PlanPicture *picture, gpointer data)
{
  PlanOpening *self = data;
  char *fault = plan_fault (self->plan, picture);

  self->loading = NULL;
  if (picture->ink == NULL) {
    opening_end_with (self, fault);
    return;
  }
  g_free (fault);
  self->reduced = picture->facts.reduced;
  Plan *plan = opening_finished_plan (self, &picture->facts);

  if (self->replaces != NULL)
    trammel_plan_store_replace (self->store, self->replaces, plan, picture, _("Find Plan"));
  else
    trammel_plan_store_add (self->store, plan, picture, _("Open Plan"));
  opening_end (self, NULL);
}

static void
opening_came_further (double done, gpointer data)
{
  PlanOpening *self = data;

  self->progress (self, LOOK_SHARE + (1 - LOOK_SHARE) * done, self->window);
}

static void
opening_load (PlanOpening *self, int page)
{
  TrammelSession *session = trammel_window_session (self->window);
  g_autofree char *file = self->source.image != NULL ? NULL : plan_beside_name (session, self->source.path, self->source.checksum);
  PlanWanted wanted = { .document_path = trammel_session_path (session), .elsewhere = self->source.path };

  self->plan = plan_source_plan (&self->source, page, file);
  /* Translators: the name of a PDF or TIFF, and one of its pages. */
  self->plan->name = page > 0 ? g_strdup_printf (_("%s, page %d"), self->name, page) : g_strdup (self->name);
  wanted.plan = self->plan;
  if (file != NULL) {
    g_autofree char *within = wanted.document_path != NULL ? plan_file_within (wanted.document_path, self->source.path) : NULL;

    self->beside = within == NULL;
    trammel_plan_store_set_elsewhere (self->store, self->source.checksum, self->source.path);
  }
  self->loading = plan_loading_begin (&wanted, opening_loaded, opening_came_further, self);
}

/* Before */

static void
opening_page_chosen (int page, gpointer data)
{
  PlanOpening *self = data;

  g_clear_weak_pointer (&self->chooser);
  if (page > 0)
    opening_load (self, page);
  else
    opening_end (self, NULL);
}

/* What was looked at has to be there again: within the document, or as a file that is known by its checksum. */
static bool
opening_can_keep (const PlanOpening *self)
{
  return self->source.image != NULL || self->source.checksum != NULL;
}

static char *
opening_fault (const PlanOpening *self)
{
  const DecodeStatus status = self->source.decode == DECODE_OK && !opening_can_keep (self) ? DECODE_CANNOT_READ : self->source.decode;

  if (self->source.too_large_to_keep)
    return g_strdup (_("The pasted picture is too large to be kept within the document: save it as a file and open that."));
  if (status == DECODE_OK)
    return NULL;
  /* Translators: a plan's name, and a sentence that says why it cannot be shown. */
  return g_strdup_printf (_("%s: %s."), self->name, _(decode_status_sentence (status)));
}

static void
opening_examined (GObject *nothing, GAsyncResult *result, gpointer data)
{
  PlanOpening *self = data;
  char *fault = opening_fault (self);

  self->examining = false;
  if (g_cancellable_is_cancelled (self->cancellable)) {
    g_free (fault);
    opening_free (self);
  } else if (fault != NULL)
    opening_end_with (self, fault);
  else if (self->source.facts.pages > 1) {
    const PageChoice choice = { .file = plan_source_open (&self->source), .pages = self->source.facts.pages, .name = self->name,
                                .units = trammel_session_units (trammel_window_session (self->window)),
                                .chosen = opening_page_chosen, .data = self };
    self->progress (self, NAN, self->window);
    g_set_weak_pointer (&self->chooser, page_chooser_present (GTK_WINDOW (self->window), &choice));
  } else
    opening_load (self, 0);
}

PlanOpening *
plan_opening_begin (TrammelWindow *window, TrammelPlanStore *store, const PlanToOpen *what, PlanOpeningProgress progress, PlanOpeningDone done)
{
  PlanOpening *self = g_new0 (PlanOpening, 1);

  self->window = g_object_ref (window);
  self->store = g_object_ref (store);
  self->source.path = g_strdup (what->path);
  self->source.texture = what->texture == NULL ? NULL : g_object_ref (what->texture);
  self->name = what->path != NULL ? g_filename_display_basename (what->path) : g_strdup (_("Pasted picture"));
  self->replaces = g_strdup (what->replaces);
  self->cancellable = g_cancellable_new ();
  self->progress = progress;
  self->done = done;
  self->examining = true;
  plan_source_examine (&self->source, self->cancellable, opening_examined, self);
  return self;
}

/* What a thread still looks at is given back when the thread is done with it. */
void
plan_opening_stop (PlanOpening *self)
{
  g_cancellable_cancel (self->cancellable);
  if (self->examining)
    return;
  g_clear_pointer (&self->loading, plan_loading_stop);
  if (self->chooser != NULL)
    page_chooser_dismiss (self->chooser);
  g_clear_weak_pointer (&self->chooser);
  opening_free (self);
}

const char *
plan_opening_name (const PlanOpening *self)
{
  return self->name;
}

bool
plan_opening_replaces (const PlanOpening *self)
{
  return self->replaces != NULL;
}

bool
plan_opening_comes_beside (const PlanOpening *self)
{
  return self->beside;
}

int
plan_opening_reduced (const PlanOpening *self)
{
  return self->reduced;
}

PlanRescaled
plan_opening_marks (const PlanOpening *self)
{
  return self->marks;
}
