#include "trammel-config.h"
#include "app/trace-landing.h"
#include <glib/gi18n-lib.h>
#include "document/changes.h"

static const SurfaceRole roles[] = { [VIEW_WING] = ROLE_WING, [VIEW_TAILPLANE] = ROLE_TAILPLANE, [VIEW_FOREPLANE] = ROLE_FOREPLANE,
                                     [VIEW_FIN] = ROLE_FIN };

static bool
shows_body (ViewShows shows)
{
  return shows == VIEW_BODY_TOP || shows == VIEW_BODY_SIDE;
}

/* Also one that only stood for an area at an arm until now. */
static const Piece *
traced_surface (const Aeroplane *aeroplane, const TraceGround *ground)
{
  const Piece *stands_for_it = NULL;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++) {
    const Surface *surface = aeroplane_surface (aeroplane, i);

    if (g_strcmp0 (surface->traced, ground->view) == 0)
      return &surface->piece;
    if (stands_for_it == NULL && surface->provisional && surface->role == roles[ground->shows])
      stands_for_it = &surface->piece;
  }
  return stands_for_it;
}

/* A body's two views are of one body. */
static const Piece *
traced_body (const Aeroplane *aeroplane, const TraceGround *ground)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++) {
    const Body *body = aeroplane_body (aeroplane, i);

    if (g_strcmp0 (ground->shows == VIEW_BODY_TOP ? body->traced : body->side_traced, ground->view) == 0)
      return &body->piece;
  }
  return aeroplane_count (aeroplane, PIECE_BODY) > 0 ? &aeroplane_body (aeroplane, 0)->piece : NULL;
}

const Piece *
trace_landing_piece (const Aeroplane *aeroplane, const TraceGround *ground)
{
  return shows_body (ground->shows) ? traced_body (aeroplane, ground) : traced_surface (aeroplane, ground);
}

bool
trace_landing_is_taken (const Aeroplane *aeroplane, const TraceGround *ground)
{
  const Piece *piece = trace_landing_piece (aeroplane, ground);

  if (piece == NULL)
    return false;
  if (!shows_body (ground->shows))
    return g_strcmp0 (((const Surface *) piece)->traced, ground->view) == 0;
  return (ground->shows == VIEW_BODY_TOP ? ((const Body *) piece)->outline : ((const Body *) piece)->side_outline) != NULL;
}

const Outline *
trace_landing_outline (const Aeroplane *aeroplane, const char *id, ViewShows shows)
{
  const Surface *surface = aeroplane_surface_by_id (aeroplane, id);
  const Body *body = aeroplane_body_by_id (aeroplane, id);

  if (surface != NULL)
    return surface->outline;
  return body == NULL ? NULL : shows == VIEW_BODY_SIDE ? body->side_outline : body->outline;
}

const PassedClick *
trace_landing_passed (const Aeroplane *aeroplane, const char *id, ViewShows shows)
{
  const Surface *surface = aeroplane_surface_by_id (aeroplane, id);
  const Body *body = aeroplane_body_by_id (aeroplane, id);

  if (surface != NULL)
    return &surface->passed;
  return body == NULL ? NULL : shows == VIEW_BODY_SIDE ? &body->side_passed : &body->passed;
}

static Aeroplane *
landed_body (const Aeroplane *aeroplane, const TraceGround *ground, Outline *takes, const PassedClick *passed, const char *id)
{
  if (ground->shows == VIEW_BODY_TOP)
    return change_body_traced (aeroplane, id, takes, ground->view, passed);
  return change_body_side_traced (aeroplane, id, takes, ground->view, passed);
}

static Aeroplane *
with_root (Aeroplane *takes, const char *id, bool open)
{
  const Surface *surface = takes != NULL ? aeroplane_surface_by_id (takes, id) : NULL;
  Aeroplane *made;
  Surface *next;

  if (surface == NULL || surface->root_open == open)
    return takes;
  next = (Surface *) piece_dup (&surface->piece);
  next->root_open = open;
  made = aeroplane_with_replaced (takes, &surface->piece, &next->piece);
  aeroplane_unref (takes);
  return made;
}

/* With a piece of what the view shows, not yet of that outline. */
static Aeroplane *
with_new_piece (const Aeroplane *aeroplane, const TraceGround *ground, Outline *outline, char **id)
{
  Surface *surface;

  if (shows_body (ground->shows)) {
    *id = aeroplane_free_id (aeroplane, "body");
    return aeroplane_with_added (aeroplane, &body_new (*id)->piece);
  }
  *id = aeroplane_free_id (aeroplane, surface_role_word (roles[ground->shows]));
  surface = surface_new (*id, roles[ground->shows], outline_ref (outline));
  surface->z = ground->z;
  surface->traced = g_strdup (ground->view);
  return aeroplane_with_added (aeroplane, &surface->piece);
}

Aeroplane *
trace_landed (const Aeroplane *aeroplane, const TraceGround *ground, const LandingOutline *own, const bool *root_open, char **id)
{
  const Piece *piece = trace_landing_piece (aeroplane, ground);
  const Point shift = { ground->placing.x, ground->shows == VIEW_BODY_SIDE ? ground->z : 0 };
  PassedClick passed = own->passed;
  Aeroplane *with_piece, *made;
  Outline *standing;

  if (outline_mapped (own->outline, (Point) { 1, 1 }, shift, &standing) != CORE_OK)
    return NULL;
  passed_click_move (&passed, shift.x, shift.y);
  if (piece != NULL) {
    *id = g_strdup (piece->id);
    with_piece = aeroplane_ref ((Aeroplane *) aeroplane);
  } else
    with_piece = with_new_piece (aeroplane, ground, standing, id);
  if (shows_body (ground->shows))
    made = landed_body (with_piece, ground, standing, &passed, *id);
  else
    made = change_surface_traced (with_piece, *id, standing, ground->view, &passed);
  aeroplane_unref (with_piece);
  return root_open != NULL ? with_root (made, *id, *root_open) : made;
}

const char *
trace_landing_label (ViewShows shows)
{
  switch (shows) {
  case VIEW_WING:      return _("Trace Wing");
  case VIEW_TAILPLANE: return _("Trace Tailplane");
  case VIEW_FOREPLANE: return _("Trace Foreplane");
  case VIEW_FIN:       return _("Trace Fin");
  case VIEW_BODY_TOP:  return _("Trace Body from Above");
  default:             return _("Trace Body from the Side");
  }
}
