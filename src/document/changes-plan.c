#include "document/changes-private.h"
#include <string.h>

/* Whether another piece than `but`, a control or a view of another plan has that id. */
static bool
id_is_taken (const Aeroplane *self, const char *id, const Piece *but)
{
  g_autofree char *free_one = aeroplane_free_id (self, id);
  const Plan *plan = NULL;

  if (strcmp (free_one, id) == 0)
    return false;
  if (but && g_strcmp0 (but->id, id) == 0)
    return false;
  return !but || !aeroplane_view_by_id (self, id, &plan) || &plan->piece != but;
}

/* Whether the plan itself, or a view of it before number `count`, has that id. */
static bool
id_is_own (const Plan *plan, size_t count, const char *id)
{
  for (size_t i = 0; i < count; i++)
    if (g_strcmp0 (plan->views[i].id, id) == 0)
      return true;
  return g_strcmp0 (plan->piece.id, id) == 0;
}

/* Ids for views without one, or with one that is somebody's already. `old` is the plan that this one stands for; NULL none. */
static void
name_views (const Aeroplane *self, Plan *plan, const Plan *old)
{
  for (size_t i = 0; i < plan->view_count; i++)
    {
      PlanView *view = &plan->views[i];
      const Piece *but = old ? &old->piece : NULL;

      if (view->id && !id_is_own (plan, i, view->id) && !id_is_taken (self, view->id, but))
        continue;
      g_free (view->id);
      view->id = g_strdup ("view");
      for (unsigned number = 2; id_is_own (plan, i, view->id) || id_is_taken (self, view->id, NULL); number++)
        {
          g_free (view->id);
          view->id = g_strdup_printf ("view-%u", number);
        }
    }
}

Aeroplane *
change_plan_added (const Aeroplane *self, Plan *takes)
{
  if (!takes->piece.id || id_is_taken (self, takes->piece.id, NULL))
    {
      g_free (takes->piece.id);
      takes->piece.id = aeroplane_free_id (self, "plan");
    }
  name_views (self, takes, NULL);
  return aeroplane_with_added (self, &takes->piece);
}

/* Whether the plan (NULL: none) has a view of that id. */
static bool
has_view (const Plan *plan, const char *id)
{
  for (size_t i = 0; plan && i < plan->view_count; i++)
    if (g_strcmp0 (plan->views[i].id, id) == 0)
      return true;
  return false;
}

/* Whether it names a view that `old` had and `next` (NULL: nothing) has no more. */
static bool
is_gone (const char *traced, const Plan *old, const Plan *next)
{
  return traced && has_view (old, traced) && !has_view (next, traced);
}

static void
clear_gone (char **traced, const Plan *old, const Plan *next)
{
  if (is_gone (*traced, old, next))
    g_clear_pointer (traced, g_free);
}

/* The piece traced in none of the views that are gone; NULL when it was not. */
static Piece *
piece_untraced (const Piece *piece, const Plan *old, const Plan *next)
{
  const Surface *surface = piece->kind == PIECE_SURFACE ? (const Surface *) piece : NULL;
  const Body *body = piece->kind == PIECE_BODY ? (const Body *) piece : NULL;
  Piece *copy;

  if (!(surface && is_gone (surface->traced, old, next))
      && !(body && (is_gone (body->traced, old, next) || is_gone (body->side_traced, old, next))))
    return NULL;
  copy = piece_dup (piece);
  if (surface)
    clear_gone (&((Surface *) copy)->traced, old, next);
  else
    {
      clear_gone (&((Body *) copy)->traced, old, next);
      clear_gone (&((Body *) copy)->side_traced, old, next);
    }
  return copy;
}

/* Takes the aeroplane and gives it with nothing traced in views that are gone. */
static Aeroplane *
untraced (Aeroplane *takes, const Plan *old, const Plan *next)
{
  const size_t count = aeroplane_piece_count (takes);
  Aeroplane *now = takes;

  for (size_t i = 0; i < count; i++)
    {
      const Piece *piece = aeroplane_piece (now, i);
      Piece *copy = piece_untraced (piece, old, next);
      Aeroplane *before = now;

      if (!copy)
        continue;
      now = aeroplane_with_replaced (before, piece, copy);
      aeroplane_unref (before);
    }
  return now;
}

Aeroplane *
change_plan (const Aeroplane *self, const char *id, Plan *takes)
{
  const Plan *old = aeroplane_plan_by_id (self, id);
  Aeroplane *made = NULL;

  if (old)
    {
      g_free (takes->piece.id);
      takes->piece.id = g_strdup (old->piece.id);
      name_views (self, takes, old);
      made = untraced (changed_to (self, &old->piece, piece_ref (&takes->piece)), old, takes);
    }
  piece_unref (&takes->piece);
  return made;
}

Aeroplane *
change_plan_removed (const Aeroplane *self, const char *id)
{
  const Plan *old = aeroplane_plan_by_id (self, id);

  return old ? untraced (aeroplane_without (self, &old->piece), old, NULL) : NULL;
}

static void
set_text (char **place, const char *text)
{
  g_free (*place);
  *place = g_strdup (text);
}

/* Where a piece has the view that one of its outlines is traced in, and the click that this outline passes. */
typedef struct { size_t view, passed; } TracedField;

/* A piece of `changed`, taken, traced so; NULL stays NULL. */
static Aeroplane *
with_traced (Aeroplane *changed, const char *id, TracedField field, const char *view, const PassedClick *passed)
{
  const Piece *old = changed ? aeroplane_find (changed, id) : NULL;
  Piece *next = old ? piece_dup (old) : NULL;
  Aeroplane *made = NULL;

  if (next)
    {
      set_text ((char **) ((char *) next + field.view), view);
      *(PassedClick *) ((char *) next + field.passed) = passed ? *passed : (PassedClick) { .by = 0 };
      made = changed_to (changed, old, next);
    }
  aeroplane_unref (changed);
  return made;
}

Aeroplane *
change_surface_traced (const Aeroplane *self, const char *id, Outline *takes, const char *view, const PassedClick *passed)
{
  return with_traced (change_surface_outline (self, id, takes), id, (TracedField) { offsetof (Surface, traced), offsetof (Surface, passed) }, view, passed);
}

Aeroplane *
change_body_traced (const Aeroplane *self, const char *id, Outline *takes, const char *view, const PassedClick *passed)
{
  return with_traced (change_body_outline (self, id, takes), id, (TracedField) { offsetof (Body, traced), offsetof (Body, passed) }, view, passed);
}

Aeroplane *
change_body_side_traced (const Aeroplane *self, const char *id, Outline *takes, const char *view, const PassedClick *passed)
{
  return with_traced (change_body_side (self, id, takes), id, (TracedField) { offsetof (Body, side_traced), offsetof (Body, side_passed) }, view, passed);
}

Aeroplane *
change_outline_accepted (const Aeroplane *self, const char *id)
{
  const Piece *old = aeroplane_find (self, id);
  Piece *next;

  if (!old || (old->kind != PIECE_SURFACE && old->kind != PIECE_BODY))
    return NULL;
  next = piece_dup (old);
  if (old->kind == PIECE_SURFACE)
    ((Surface *) next)->passed = (PassedClick) { .by = 0 };
  else
    ((Body *) next)->passed = ((Body *) next)->side_passed = (PassedClick) { .by = 0 };
  return changed_to (self, old, next);
}

/* Takes the aeroplane and gives it with all carried along; NULL when something cannot be. */
static Aeroplane *
carried (Aeroplane *takes, const TracedMove *move)
{
  const size_t count = aeroplane_piece_count (takes);
  Aeroplane *now = takes;

  for (size_t i = 0; now && i < count; i++)
    {
      const Piece *piece = aeroplane_piece (now, i);
      Aeroplane *before = now;
      Piece *copy;

      if (piece->kind != PIECE_SURFACE && piece->kind != PIECE_BODY)
        continue;
      copy = piece_carried (piece, move);
      now = copy ? changed_to (before, piece, copy) : NULL;
      aeroplane_unref (before);
    }
  return now;
}

Aeroplane *
change_plan_carrying (const Aeroplane *self, const char *id, Plan *takes, const TracedMove moves[], size_t count)
{
  Aeroplane *now = change_plan (self, id, takes);

  for (size_t i = 0; now && i < count; i++)
    if (moves[i].view)
      now = carried (now, &moves[i]);
  return now;
}
