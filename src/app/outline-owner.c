#include "app/outline-owner.h"
#include "document/changes.h"

const Outline *
outline_owner_outline (const Aeroplane *aeroplane, const char *id, bool side)
{
  const Surface *surface = aeroplane_surface_by_id (aeroplane, id);
  const Body *body = aeroplane_body_by_id (aeroplane, id);

  if (surface != NULL)
    return surface->outline;
  if (body != NULL)
    return side ? body->side_outline : body->outline;
  return NULL;
}

Aeroplane *
outline_owner_with (const Aeroplane *aeroplane, const char *id, bool side, Outline *takes)
{
  if (aeroplane_surface_by_id (aeroplane, id) != NULL)
    return change_surface_outline (aeroplane, id, takes);
  return side ? change_body_side (aeroplane, id, takes) : change_body_outline (aeroplane, id, takes);
}

double
outline_owner_lift (const Aeroplane *aeroplane, const char *id)
{
  const Surface *surface = aeroplane_surface_by_id (aeroplane, id);

  return surface != NULL && surface->role == ROLE_FIN ? surface->z : 0;
}
