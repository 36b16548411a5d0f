#include "app/first-place.h"
#include <math.h>
#include "app/numbers-shape.h"

static const NumbersThing things[VIEW_SHOWS_COUNT] = {
  [VIEW_WING] = NUMBERS_WING, [VIEW_TAILPLANE] = NUMBERS_TAILPLANE, [VIEW_FOREPLANE] = NUMBERS_FOREPLANE, [VIEW_FIN] = NUMBERS_FIN,
  [VIEW_BODY_TOP] = NUMBERS_BODY, [VIEW_BODY_SIDE] = NUMBERS_BODY };

/* Share of a body's length ahead of the thing's leading edge. */
static const double along_body[VIEW_SHOWS_COUNT] = {
  [VIEW_WING] = 0.25, [VIEW_TAILPLANE] = 0.85, [VIEW_FOREPLANE] = 0.08, [VIEW_FIN] = 0.83 };

static const Outline *
body_outline (const Aeroplane *aeroplane)
{
  const Body *body = aeroplane_count (aeroplane, PIECE_BODY) > 0 ? aeroplane_body (aeroplane, 0) : NULL;

  return body == NULL ? NULL : body->outline != NULL ? body->outline : body->side_outline;
}

double
first_place (const Aeroplane *aeroplane, ViewShows shows)
{
  const Outline *body = body_outline (aeroplane);
  const Box box = body != NULL ? outline_bounds (body) : (Box) { { 0, 0 }, { 0, 0 } };
  double values[NUMBER_COUNT];

  if (body != NULL && things[shows] == NUMBERS_BODY)
    return box.min.x;
  if (aeroplane_reference_wing (aeroplane) != NULL) {
    numbers_usual (aeroplane, things[shows], values);
    return values[NUMBER_ROOT_X];
  }
  return body != NULL ? round (box.min.x + along_body[shows] * (box.max.x - box.min.x)) : NAN;
}
