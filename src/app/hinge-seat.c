#include "app/hinge-seat.h"
#include <math.h>

/* A surface that a hinge line could be drawn on: closed, with an id. */
static bool
can_be_hinged (const Surface *surface)
{
  const CoreStatus status = outline_check (surface->outline, NULL);

  return surface->piece.id != NULL && (status == CORE_OK || status == CORE_MULTI_VALUED);
}

static double
off_surface (const Surface *surface, Point own)
{
  size_t segment;
  double t;

  return outline_contains (surface->outline, own) ? 0 : outline_nearest (surface->outline, own, &segment, &t);
}

/* The better of two: the nearer one; of those that hold the place the one that counts more. */
typedef struct { const Surface *surface; double far; int rank; } Candidate;

static void
consider (Candidate *best, const Surface *surface, Point own, int rank)
{
  const double far = can_be_hinged (surface) ? off_surface (surface, own) : INFINITY;

  if (far > best->far || (far == best->far && rank <= best->rank))
    return;
  *best = (Candidate) { surface, far, rank };
}

static HingeSeat
seat_of_fin (const Surface *fin, const TraceGround *ground, Point place)
{
  const bool own_view = g_strcmp0 (fin->traced, ground->view) == 0;

  return (HingeSeat) { .id = g_strdup (fin->piece.id), .laid_down = true, .port = ground->shows == VIEW_FIN && place.y < 0,
                       .lift = own_view ? 0 : fin->z - ground->z };
}

/* The plan's view shows it from the side. */
static HingeSeat
fin_over_plan (const Aeroplane *aeroplane, const TraceGround *ground, Point place, double reach)
{
  Candidate best = { NULL, reach, -1 };

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++) {
    const Surface *fin = aeroplane_surface (aeroplane, i);
    HingeSeat seat;

    if (surface_is_horizontal (fin))
      continue;
    seat = seat_of_fin (fin, ground, place);
    consider (&best, fin, hinge_seat_own (&seat, place), g_strcmp0 (fin->traced, ground->view) == 0);
    hinge_seat_clear (&seat);
  }
  return best.surface != NULL ? seat_of_fin (best.surface, ground, place) : (HingeSeat) { .id = NULL };
}

HingeSeat
hinge_seat_at (const Aeroplane *aeroplane, const Selection *selection, const TraceGround *ground, Point place, double reach)
{
  const bool from_the_side = ground != NULL && (ground->shows == VIEW_FIN || ground->shows == VIEW_BODY_SIDE);
  const HingeSeat fin = from_the_side ? fin_over_plan (aeroplane, ground, place, reach) : (HingeSeat) { .id = NULL };
  Candidate best = { NULL, reach, -1 };

  if (fin.id != NULL)
    return fin;
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++) {
    const Surface *surface = aeroplane_surface (aeroplane, i);
    const bool selected = selection_has (selection, surface->piece.id);
    const bool traced = ground != NULL && g_strcmp0 (surface->traced, ground->view) == 0;

    if (surface_is_horizontal (surface))
      consider (&best, surface, (Point) { place.x, fabs (place.y) }, selected ? G_MAXINT : traced ? G_MAXINT - 1 : (int) i);
  }
  return (HingeSeat) { .id = best.surface != NULL ? g_strdup (best.surface->piece.id) : NULL, .port = place.y < 0 };
}

HingeSeat
hinge_seat_upright (const Aeroplane *aeroplane, Point place, double reach)
{
  Candidate best = { NULL, reach, -1 };

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++) {
    const Surface *fin = aeroplane_surface (aeroplane, i);

    if (!surface_is_horizontal (fin))
      consider (&best, fin, (Point) { place.x, place.y - fin->z }, (int) i);
  }
  if (best.surface == NULL)
    return (HingeSeat) { .id = NULL };
  return (HingeSeat) { .id = g_strdup (best.surface->piece.id), .upright = true, .lift = best.surface->z };
}

void
hinge_seat_clear (HingeSeat *self)
{
  g_free (self->id);
  *self = (HingeSeat) { .id = NULL };
}

const Surface *
hinge_seat_surface (const HingeSeat *self, const Aeroplane *aeroplane)
{
  return self->id != NULL ? aeroplane_surface_by_id (aeroplane, self->id) : NULL;
}

Point
hinge_seat_own (const HingeSeat *self, Point place)
{
  return (Point) { place.x, (self->port ? -place.y : place.y) - self->lift };
}

Point
hinge_seat_printed (const HingeSeat *self, Point place)
{
  const Point own = hinge_seat_own (self, place);

  return (Point) { own.x, own.y * (self->shortening > 0 ? self->shortening : 1) };
}

Point
hinge_seat_place (const HingeSeat *self, Point own)
{
  return (Point) { own.x, (self->port ? -1 : 1) * (own.y + self->lift) };
}
