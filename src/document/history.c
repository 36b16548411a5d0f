#include "document/history.h"

/* One state of the document and how it was reached; the first has no label. */
typedef struct { Aeroplane *aeroplane; char *label; } Step;

struct History {
  GArray *steps;          /* of Step; steps[now] is what counts, those behind it can be redone */
  size_t now;
  Aeroplane *preview;     /* shown in its place during a drag; NULL without one */
  bool proposed;          /* the preview is only offered: nothing of it is done yet */
  Aeroplane *saved;
};

static void
step_clear (gpointer data)
{
  Step *step = data;

  aeroplane_unref (step->aeroplane);
  g_free (step->label);
}

static const Step *
history_step (const History *self, size_t index)
{
  return &g_array_index (self->steps, Step, index);
}

static void
history_append (History *self, Aeroplane *takes, const char *label)
{
  const Step step = { takes, g_strdup (label) };

  g_array_append_val (self->steps, step);
  self->now = self->steps->len - 1;
}

History *
history_new (Aeroplane *takes)
{
  History *self = g_new0 (History, 1);

  self->steps = g_array_new (FALSE, FALSE, sizeof (Step));
  g_array_set_clear_func (self->steps, step_clear);
  self->saved = aeroplane_ref (takes);
  history_append (self, takes, NULL);
  return self;
}

void
history_free (History *self)
{
  if (!self)
    return;
  g_array_unref (self->steps);
  aeroplane_unref (self->preview);
  aeroplane_unref (self->saved);
  g_free (self);
}

const Aeroplane *
history_now (const History *self)
{
  return self->preview ? self->preview : history_step (self, self->now)->aeroplane;
}

const Aeroplane *
history_settled (const History *self)
{
  return history_step (self, self->now)->aeroplane;
}

/* What was undone is forgotten as soon as something new is done. */
static void
history_push (History *self, Aeroplane *takes, const char *label)
{
  g_array_set_size (self->steps, self->now + 1);
  history_append (self, takes, label);
}

void
history_do (History *self, Aeroplane *takes, const char *label)
{
  history_abandon (self);
  if (takes == history_now (self))
    aeroplane_unref (takes);
  else
    history_push (self, takes, label);
}

void
history_preview (History *self, Aeroplane *takes)
{
  aeroplane_unref (self->preview);
  self->preview = takes;
  self->proposed = false;
}

void
history_propose (History *self, Aeroplane *takes)
{
  history_preview (self, takes);
  self->proposed = true;
}

void
history_settle (History *self, const char *label)
{
  Aeroplane *settled = g_steal_pointer (&self->preview);

  if (!settled || aeroplane_equal (settled, history_now (self)))
    aeroplane_unref (settled);
  else
    history_push (self, settled, label);
}

void
history_abandon (History *self)
{
  g_clear_pointer (&self->preview, aeroplane_unref);
}

bool
history_is_previewing (const History *self)
{
  return self->preview != NULL;
}

bool
history_undo (History *self)
{
  history_abandon (self);
  if (self->now == 0)
    return false;
  self->now--;
  return true;
}

bool
history_redo (History *self)
{
  history_abandon (self);
  if (self->now + 1 >= self->steps->len)
    return false;
  self->now++;
  return true;
}

const char *
history_undo_label (const History *self)
{
  return self->now > 0 ? history_step (self, self->now)->label : NULL;
}

const char *
history_redo_label (const History *self)
{
  return self->now + 1 < self->steps->len ? history_step (self, self->now + 1)->label : NULL;
}

size_t
history_step_count (const History *self)
{
  return self->now;
}

void
history_mark_saved_as (History *self, const Aeroplane *saved)
{
  Aeroplane *kept = saved ? aeroplane_ref (saved) : NULL;

  aeroplane_unref (self->saved);
  self->saved = kept;
}

void
history_mark_saved (History *self)
{
  history_mark_saved_as (self, history_now (self));
}

bool
history_is_saved (const History *self)
{
  const bool offered = self->preview && self->proposed;

  return self->saved && aeroplane_equal (offered ? history_settled (self) : history_now (self), self->saved);
}
