#include "app/brought-offer.h"
#include <math.h>
#include "app/numbers-shape.h"
#include "document/changes.h"

static const double LONGEST = 10000;        /* mm */
enum { MOST_PIECES = 20000, LINES_TRIED = 64 };

static const SurfaceRole roles[VIEW_SHOWS_COUNT] = {
  [VIEW_WING] = ROLE_WING, [VIEW_TAILPLANE] = ROLE_TAILPLANE, [VIEW_FOREPLANE] = ROLE_FOREPLANE, [VIEW_FIN] = ROLE_FIN };
static const NumbersThing things[VIEW_SHOWS_COUNT] = {
  [VIEW_WING] = NUMBERS_WING, [VIEW_TAILPLANE] = NUMBERS_TAILPLANE, [VIEW_FOREPLANE] = NUMBERS_FOREPLANE, [VIEW_FIN] = NUMBERS_FIN,
  [VIEW_BODY_TOP] = NUMBERS_BODY, [VIEW_BODY_SIDE] = NUMBERS_BODY };

static bool
is_body (ViewShows shows)
{
  return shows == VIEW_BODY_TOP || shows == VIEW_BODY_SIDE;
}

/* The outline, whose foremost end stands at x = 0 */

static OfferStatus
status_of (CoreStatus status)
{
  switch (status) {
  case CORE_OK:             return OFFER_FITS;
  case CORE_OPEN:           return OFFER_OPEN;
  case CORE_OUT_OF_RANGE:   return OFFER_NO_ROOT;
  case CORE_CROSSES_ITSELF: return OFFER_CROSSES;
  default:                  return OFFER_NOTHING;
  }
}

static Segment
segment_scaled (const Segment *segment, double scale)
{
  return segment->kind == SEGMENT_LINE ? segment_line (point_scale (segment->to, scale))
                                       : segment_curve (point_scale (segment->control1, scale), point_scale (segment->control2, scale),
                                                        point_scale (segment->to, scale));
}

static OfferStatus
outline_of (const Brought *brought, const OfferChoice *choice, Outline **made, Offer *offer)
{
  const BroughtLine *line = &brought->lines[choice->line];
  const double scale = choice->unit_mm / brought->unit_mm;
  g_autofree Segment *segments = NULL;
  HalfOutline half;
  CoreStatus status;

  if (line->count > MOST_PIECES)
    return OFFER_TOO_LARGE;
  segments = g_new (Segment, line->count);
  for (size_t i = 0; i < line->count; i++)
    segments[i] = segment_scaled (&line->segments[i], scale);
  const DrawnLine drawn = { .start = point_scale (line->start, scale), .segments = segments, .count = line->count,
    .quarter_turns = choice->quarter_turns, .mirrored = choice->mirrored, .half_only = choice->half_only || choice->shows == VIEW_FIN };
  if (choice->shows == VIEW_BODY_SIDE)
    return status_of (side_outline_make (&drawn, made));
  status = half_outline_make (&drawn, &half);
  if (status == CORE_OK) {
    *made = half.outline;
    offer->drawn = half.drawn;
    offer->asymmetry = half.asymmetry;
  }
  return status_of (status);
}

/* Size of a line before it is turned. */
static void
measure (const BroughtLine *line, double scale, Box *box)
{
  *box = (Box) { line->start, line->start };
  for (size_t i = 0; i < line->count; i++) {
    const Box one = segment_bounds (i ? line->segments[i - 1].to : line->start, &line->segments[i]);
    box->min = (Point) { fmin (box->min.x, one.min.x), fmin (box->min.y, one.min.y) };
    box->max = (Point) { fmax (box->max.x, one.max.x), fmax (box->max.y, one.max.y) };
  }
  box->min = point_scale (box->min, scale);
  box->max = point_scale (box->max, scale);
}

static void
offer_measure (Offer *self, const Brought *brought, const OfferChoice *choice)
{
  const bool turned = choice->quarter_turns % 2;
  Box box;

  measure (&brought->lines[choice->line], choice->unit_mm / brought->unit_mm, &box);
  self->across = turned ? box.max.x - box.min.x : box.max.y - box.min.y;
  self->along = turned ? box.max.y - box.min.y : box.max.x - box.min.x;
}

/* Where it goes */

/* The selected one, else one that lacks this view, else the first. */
static const Body *
body_for (const Aeroplane *aeroplane, const char *selected, const OfferChoice *choice)
{
  const Body *body = selected == NULL ? NULL : aeroplane_body_by_id (aeroplane, selected), *first = NULL;

  for (size_t i = 0; body == NULL && i < aeroplane_count (aeroplane, PIECE_BODY); i++) {
    const Body *each = (const Body *) aeroplane_nth (aeroplane, PIECE_BODY, i);
    if ((choice->shows == VIEW_BODY_TOP ? each->outline : each->side_outline) == NULL)
      body = each;
    first = first != NULL ? first : each;
  }
  return choice->another ? NULL : body != NULL ? body : first;
}

static const Surface *
surface_for (const Aeroplane *aeroplane, const char *selected, const OfferChoice *choice)
{
  const Surface *surface = selected == NULL ? NULL : aeroplane_surface_by_id (aeroplane, selected);

  if (choice->another)
    return NULL;
  if (surface != NULL && surface->role == roles[choice->shows])
    return surface;
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    if (aeroplane_surface (aeroplane, i)->role == roles[choice->shows])
      return aeroplane_surface (aeroplane, i);
  return NULL;
}

static Outline *
outline_put_at (Outline *takes, double x, double y)
{
  Outline *moved = NULL;

  if (outline_mapped (takes, (Point) { 1, 1 }, (Point) { x, y }, &moved) != CORE_OK)
    return takes;
  outline_unref (takes);
  return moved;
}

/* mm: further aft no piece of a small model begins. */
static const double FARTHEST_AFT = 2000;

/* Where the file itself has the foremost place, aft of the datum; NAN where it says nothing of that: a drawing's page has no datum, what
 * begins at nought begins at its own, and what is turned lies otherwise than it was written. */
static double
own_x (const Brought *brought, const OfferChoice *choice)
{
  Box box;

  measure (&brought->lines[choice->line], choice->unit_mm / brought->unit_mm, &box);
  return brought->has_place && choice->quarter_turns == 0 && box.min.x > 0 && box.min.x <= FARTHEST_AFT ? box.min.x : NAN;
}

static double
new_x (const Aeroplane *aeroplane, ViewShows shows, double own)
{
  double values[NUMBER_COUNT];

  if (!isnan (own))
    return own;
  numbers_usual (aeroplane, things[shows], values);
  return values[NUMBER_ROOT_X];
}

static Aeroplane *
put_body (const Aeroplane *aeroplane, const Body *there, ViewShows shows, double own, Outline *takes, char **id)
{
  const bool top = shows == VIEW_BODY_TOP;
  const Outline *place = there == NULL ? NULL : top ? there->outline ? there->outline : there->side_outline
                                                    : there->side_outline ? there->side_outline : there->outline;
  const double x = place != NULL ? outline_bounds (place).min.x : new_x (aeroplane, shows, own);
  const Box old_side = !top && place != NULL && place == there->side_outline ? outline_bounds (place) : (Box) { { 0, 0 }, { 0, 0 } };
  Outline *outline = outline_put_at (takes, x, (old_side.min.y + old_side.max.y) / 2);
  Body *fresh;

  *id = there != NULL ? g_strdup (there->piece.id) : aeroplane_free_id (aeroplane, "body");
  if (there != NULL)
    return top ? change_body_traced (aeroplane, *id, outline, NULL, NULL) : change_body_side_traced (aeroplane, *id, outline, NULL, NULL);
  fresh = body_new (*id);
  if (top)
    fresh->outline = outline;
  else
    fresh->side_outline = outline;
  return aeroplane_with_added (aeroplane, &fresh->piece);
}

static Aeroplane *
put_surface (const Aeroplane *aeroplane, const Surface *there, ViewShows shows, double own, Outline *takes, char **id)
{
  const double x = there != NULL ? outline_node (there->outline, 0).x : new_x (aeroplane, shows, own);
  Outline *outline = outline_put_at (takes, x, 0);

  *id = there != NULL ? g_strdup (there->piece.id) : aeroplane_free_id (aeroplane, surface_role_word (roles[shows]));
  return there != NULL ? change_surface_traced (aeroplane, *id, outline, NULL, NULL)
                       : aeroplane_with_added (aeroplane, &surface_new (*id, roles[shows], outline)->piece);
}

Offer
offer_make (const Brought *brought, const Aeroplane *aeroplane, const char *selected, const OfferChoice *choice)
{
  const Body *body = is_body (choice->shows) ? body_for (aeroplane, selected, choice) : NULL;
  const Surface *surface = is_body (choice->shows) ? NULL : surface_for (aeroplane, selected, choice);
  Offer offer = { .status = OFFER_NOTHING };
  Outline *outline = NULL;

  offer_measure (&offer, brought, choice);
  if (!(fmax (offer.across, offer.along) <= LONGEST)) {
    offer.status = OFFER_TOO_LARGE;
    return offer;
  }
  offer.status = outline_of (brought, choice, &outline, &offer);
  if (offer.status != OFFER_FITS)
    return offer;
  offer.replaces = surface != NULL || (body != NULL && (choice->shows == VIEW_BODY_TOP ? body->outline : body->side_outline) != NULL);
  offer.next = is_body (choice->shows) ? put_body (aeroplane, body, choice->shows, own_x (brought, choice), outline, &offer.id)
                                       : put_surface (aeroplane, surface, choice->shows, own_x (brought, choice), outline, &offer.id);
  if (offer.next == NULL)
    offer.status = OFFER_NOTHING;
  return offer;
}

void
offer_clear (Offer *self)
{
  g_clear_pointer (&self->next, aeroplane_unref);
  g_clear_pointer (&self->id, g_free);
}

/* What to try first */

/* How well it lies; below zero where it does not fit at all. */
static double
fit_of (const Brought *brought, const OfferChoice *choice)
{
  Offer offer = { 0 };
  Outline *outline = NULL;

  if (outline_of (brought, choice, &outline, &offer) != OFFER_FITS)
    return -1;
  const Box box = outline_bounds (outline);
  const double along = box.max.x - box.min.x, across = box.max.y - box.min.y;
  outline_unref (outline);
  /* A fin or half a body would do either way; it is the order that tells. */
  if (choice->shows == VIEW_FIN)
    return 1;
  return is_body (choice->shows) ? along / across : across / along;
}

void
offer_lay (const Brought *brought, OfferChoice *choice)
{
  const bool upright = choice->shows == VIEW_FIN || choice->shows == VIEW_BODY_SIDE;
  double best = 0;
  int turns = upright ? 1 : 0;

  choice->mirrored = false;
  for (int i = 0; i < 2; i++) {
    choice->quarter_turns = upright ? 1 - i : i;
    const double fit = fit_of (brought, choice);
    if (fit > best * (1 + 1e-9)) {
      best = fit;
      turns = choice->quarter_turns;
    }
  }
  choice->quarter_turns = turns;
}

/* A rectangle around all other lines: the drawing's own border. */
static bool
is_border (const Brought *brought, size_t which)
{
  const BroughtLine *line = &brought->lines[which];
  Box border, box;

  if (brought->count < 2 || !line->closed || line->count != 4)
    return false;
  for (size_t i = 0; i < line->count; i++) {
    const Point from = i ? line->segments[i - 1].to : line->start, way = point_sub (line->segments[i].to, from);
    if (line->segments[i].kind != SEGMENT_LINE || fmin (fabs (way.x), fabs (way.y)) > 1e-3)
      return false;
  }
  measure (line, 1, &border);
  for (size_t i = 0; i < brought->count; i++) {
    measure (&brought->lines[i], 1, &box);
    if (box.min.x < border.min.x || box.min.y < border.min.y || box.max.x > border.max.x || box.max.y > border.max.y)
      return false;
  }
  return true;
}

static bool
has_role (const Aeroplane *aeroplane, SurfaceRole role)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    if (aeroplane_surface (aeroplane, i)->role == role)
      return true;
  return false;
}

static ViewShows
missing (const Aeroplane *aeroplane, const char *selected)
{
  const Surface *surface = selected == NULL ? NULL : aeroplane_surface_by_id (aeroplane, selected);
  const Body *body = aeroplane_count (aeroplane, PIECE_BODY) > 0 ? (const Body *) aeroplane_nth (aeroplane, PIECE_BODY, 0) : NULL;

  for (ViewShows shows = VIEW_WING; surface != NULL && shows <= VIEW_FIN; shows++)
    if (roles[shows] == surface->role)
      return shows;
  if (!has_role (aeroplane, ROLE_WING))
    return VIEW_WING;
  if (!has_role (aeroplane, ROLE_TAILPLANE) && !has_role (aeroplane, ROLE_FOREPLANE))
    return VIEW_TAILPLANE;
  if (!has_role (aeroplane, ROLE_FIN))
    return VIEW_FIN;
  if (body == NULL || body->outline == NULL)
    return VIEW_BODY_TOP;
  return body->side_outline == NULL ? VIEW_BODY_SIDE : VIEW_WING;
}

OfferChoice
offer_first (const Brought *brought, const Aeroplane *aeroplane, const char *selected)
{
  OfferChoice choice = { .shows = missing (aeroplane, selected), .unit_mm = brought->unit_mm };

  for (size_t i = 0; i < brought->count && i < LINES_TRIED; i++) {
    choice.line = i;
    offer_lay (brought, &choice);
    if (!is_border (brought, i) && fit_of (brought, &choice) >= 0)
      return choice;
  }
  choice.line = 0;
  offer_lay (brought, &choice);
  return choice;
}
