#include "document/changes-private.h"
#include <math.h>
#include <string.h>
#include "document/hinge.h"
#include "document/kept-follow.h"

/* The place of that control among its surface's; the count when it has none of that id. */
static size_t
place_of (const Surface *surface, const char *control)
{
  size_t i = 0;

  while (i < surface->control_count && g_strcmp0 (surface->controls[i].id, control) != 0)
    i++;
  return i;
}

static bool
can_be_saved (const Control *control)
{
  return !isinf (control->up) && !isinf (control->down) && (unsigned) control->kind < CONTROL_KIND_COUNT;
}

Aeroplane *
change_control_added (const Aeroplane *self, const char *surface, const Control *control, char **id)
{
  const Surface *old = aeroplane_surface_by_id (self, surface);
  Control added = *control;
  Surface *next;

  if (!old || !can_be_saved (control) || hinge_check (old, control, NULL) != HINGE_SOUND)
    return NULL;
  added.id = aeroplane_free_id (self, control_kind_word (control->kind));
  next = (Surface *) piece_dup (&old->piece);
  next->controls = g_renew (Control, next->controls, next->control_count + 1);
  next->controls[next->control_count++] = added;
  if (id)
    *id = g_strdup (added.id);
  return changed_to (self, &old->piece, &next->piece);
}

static bool
is_same_line (const Control *a, const Control *b)
{
  return a->inner == b->inner && a->outer == b->outer && a->hinge_inner_x == b->hinge_inner_x && a->hinge_outer_x == b->hinge_outer_x;
}

Aeroplane *
change_control (const Aeroplane *self, const char *surface, const char *control, const Control *next)
{
  const Surface *old = aeroplane_surface_by_id (self, surface);
  const size_t at = old ? place_of (old, control) : 0;
  Surface *made;

  if (!old || at == old->control_count || !can_be_saved (next)
      || (!is_same_line (&old->controls[at], next) && hinge_check (old, next, NULL) != HINGE_SOUND))
    return NULL;
  made = (Surface *) piece_dup (&old->piece);
  char *id = made->controls[at].id;
  made->controls[at] = *next;
  made->controls[at].id = id;
  return changed_to (self, &old->piece, &made->piece);
}

Aeroplane *
change_control_removed (const Aeroplane *self, const char *surface, const char *control)
{
  const Surface *old = aeroplane_surface_by_id (self, surface);
  const size_t at = old ? place_of (old, control) : 0;
  Surface *next;

  if (!old || at == old->control_count)
    return NULL;
  next = (Surface *) piece_dup (&old->piece);
  g_free (next->controls[at].id);
  memmove (next->controls + at, next->controls + at + 1, (next->control_count - at - 1) * sizeof *next->controls);
  next->control_count--;
  kept_follow_removed (&next->piece, INNER_CONTROL, at);
  return changed_to (self, &old->piece, &next->piece);
}
