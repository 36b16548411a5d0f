#include "figures/ballast-places.h"

#include <math.h>
#include "document/part-box.h"
#include "document/part-class.h"
#include "figures/body-walls.h"
#include "figures/free-section.h"
#include "figures/nose-figures.h"
#include "figures/part-places.h"

/* g/mm³ */
static const double LEAD = 11.34e-3;
/* mm: a block shorter along the body nobody gets into its place, and across it what is thinner is foil: common practice, no source. How far it keeps
 * from a part, and from what turns. */
static const double SHORT = 4, THIN = 2, CLEAR = 1, CLEAR_OF_MOTOR = 2;
/* mm: how finely a stretch is looked through. */
static const double FINEST = 1;
/* mm: what is nearer to the centre line is on it. How much heavier a block on it may be before one beside it is preferred: common practice, no
 * source. */
static const double ON_CENTRE = 0.5, DEARER_OFF_CENTRE = 1.15;
enum { STEPS = 48, BLOCKED_MOST = 64 };

/* What stands in the way, all round with what it is kept clear by. */
typedef struct { double from, to; Section section; } Blocked;

/* Filled from its end towards the other. */
typedef struct {
  BallastPlaceKind kind;
  const Bay *bay;
  const BodyProfile *profile;   /* NULL: within the cowl */
  const Part *cowl;
  double end, other;
  bool on_centre;               /* wanted on the centre line */
} Stretch;

typedef struct {
  const Aeroplane *aeroplane;
  BallastNeed need;
  const Part *moved;            /* aboard, and its middle at moved_x; may be NULL */
  double moved_x;
  double moment;                /* what ballast has to make up for, g mm, > 0 */
  int aft;                      /* 1 when the nose is heavy: ballast goes aft; else −1 */
  size_t blocked_count, body_count;
  Blocked blocked[BLOCKED_MOST];
  BodyProfile **profiles;
  NoseFigures noses[NOSE_MOST];
  size_t nose_count;
  GArray *places;
} Looking;

static void
block (Looking *self, const Part *part, double from, double to, double clear)
{
  const double y = part_extent (part).y / 2 + clear, z = part->height / 2 + clear;

  if (self->blocked_count < BLOCKED_MOST)
    self->blocked[self->blocked_count++] = (Blocked) { from - clear, to + clear, { part->y - y, part->y + y, part->z - z, part->z + z } };
}

static bool
is_turning (const Part *part)
{
  return part_is_a (part, "propeller") || part_is_a (part, "spinner");
}

static bool
is_motor_in_middle (const Part *part)
{
  return part_is_a (part, "motor") && fabs (part->y) < part_extent (part).y / 2;
}

/* Between what turns and the face of a motor in the nose there is no way in, however wide that is. */
static void
block_slot (Looking *self, const Part *turning)
{
  for (size_t i = 0; i < aeroplane_count (self->aeroplane, PIECE_PART) && self->blocked_count < BLOCKED_MOST; i++)
    {
      const Part *motor = aeroplane_part (self->aeroplane, i);
      const double face = motor->x - part_extent (motor).x / 2;

      if (motor->aboard && is_motor_in_middle (motor) && turning->x < face)
        self->blocked[self->blocked_count++] = (Blocked) { turning->x, face, { -INFINITY, INFINITY, -INFINITY, INFINITY } };
    }
}

/* Whatever its height is now, it comes round. */
static void
block_turning (Looking *self, const Part *part, double x)
{
  const Point extent = part_extent (part);
  const double reach = fmax (extent.y, part->height) / 2 + CLEAR_OF_MOTOR, half = extent.x / 2 + CLEAR_OF_MOTOR;

  block_slot (self, part);
  if (self->blocked_count < BLOCKED_MOST)
    self->blocked[self->blocked_count++] = (Blocked) { x - half, x + half, { part->y - reach, part->y + reach, part->z - reach, part->z + reach } };
}

/* From side to side of the body. */
static void
block_firewall (Looking *self, double face)
{
  if (self->blocked_count < BLOCKED_MOST)
    self->blocked[self->blocked_count++] = (Blocked) { face, face + NOSE_FIREWALL_MM, { -INFINITY, INFINITY, -INFINITY, INFINITY } };
}

/* A motor with its shaft ahead of it and its mount behind, and what it turns. */
static void
block_all (Looking *self)
{
  for (size_t i = 0; i < aeroplane_count (self->aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (self->aeroplane, i);
      const double half = part_extent (part).x / 2, x = part == self->moved ? self->moved_x : part->x;

      if (!part->aboard && part != self->moved)
        continue;
      if (is_motor_in_middle (part))
        block_firewall (self, nose_firewall_face (self->aeroplane, self->body_count > 0 ? self->profiles[0] : NULL, part));
      if (is_turning (part))
        block_turning (self, part, x);
      else if (part_stands_clear (part))
        block (self, part, x - half, x + half, CLEAR);
    }
  for (size_t i = 0; i < self->nose_count; i++)
    {
      const NoseFigures *nose = &self->noses[i];

      block (self, nose->motor, nose->front_x_mm, nose->front_x_mm + nose->firewall_mm, CLEAR_OF_MOTOR);
    }
}

/* What one view leaves open is as the other has it. */
static Section
section_of_profile (const BodyProfile *profile, double from, double to)
{
  const BodyClear clear = body_profile_clear (profile, from, to);
  const double half_width = isnan (clear.half_width) ? (clear.top - clear.bottom) / 2 : clear.half_width;

  if (isnan (clear.top))
    return (Section) { -half_width, half_width, -half_width, half_width };
  return (Section) { -half_width, half_width, clear.bottom, clear.top };
}

static Section
section_of_cowl (const Part *cowl)
{
  const double y = part_extent (cowl).y / 2 - BODY_SKIN_MM, z = cowl->height / 2 - BODY_SKIN_MM;

  return (Section) { cowl->y - y, cowl->y + y, cowl->z - z, cowl->z + z };
}

/* One within another takes nothing more away, and time grows with the cube of how many there are. */
static size_t
add_blocked (Section blocked[], size_t count, const Section *one)
{
  for (size_t i = 0; i < count; i++)
    if (blocked[i].y_from <= one->y_from && blocked[i].y_to >= one->y_to && blocked[i].z_from <= one->z_from && blocked[i].z_to >= one->z_to)
      return count;
  blocked[count] = *one;
  return count + 1;
}

static Section
free_between (const Looking *self, const Stretch *stretch, double from, double to)
{
  const Section whole = stretch->profile ? section_of_profile (stretch->profile, from, to) : section_of_cowl (stretch->cowl);
  Section blocked[BLOCKED_MOST];
  size_t count = 0;

  for (size_t i = 0; i < self->blocked_count; i++)
    if (self->blocked[i].from < to && self->blocked[i].to > from)
      count = add_blocked (blocked, count, &self->blocked[i].section);
  const Section free = stretch->on_centre ? section_largest_centred (whole, blocked, count) : section_largest_free (whole, blocked, count);
  return fmin (free.y_to - free.y_from, free.z_to - free.z_from) < THIN ? (Section) { 0, 0, 0, 0 } : free;
}

/* A block between two places that is just heavy enough: as much narrower and lower than the room, on its floor, and as near to the centre line as that
 * lets it. */
static void
take_block (BallastPlace *place, Section room, double from, double to, double mass)
{
  const double share = sqrt (mass / (LEAD * section_area (room) * (to - from)));

  place->has_room = true;
  place->mass_g = mass;
  place->x_mm = (from + to) / 2;
  place->length_mm = to - from;
  place->width_mm = share * (room.y_to - room.y_from);
  place->height_mm = share * (room.z_to - room.z_from);
  place->y_mm = fmin (fmax (0, room.y_from + place->width_mm / 2), room.y_to - place->width_mm / 2);
  place->z_mm = room.z_from + place->height_mm / 2;
}

/* Of all that begin so far from the end the shortest that does. */
static void
try_from (const Looking *self, const Stretch *stretch, double begin, double step, BallastPlace *place)
{
  const double length = fabs (stretch->other - stretch->end);

  for (double thick = SHORT; begin + thick <= length; thick += step)
    {
      const double one = stretch->end - self->aft * begin, other = one - self->aft * thick, from = fmin (one, other), to = fmax (one, other);
      const double lever = self->aft * ((from + to) / 2 - self->need.target_x_mm);
      const Section room = free_between (self, stretch, from, to);
      const double most = LEAD * section_area (room) * thick;
      /* A longer one is no wider and no higher, and lies nearer. */
      const double never_more = LEAD * section_area (room) * (length - begin);

      if (!(lever > 0) || !(most > 0) || (never_more * lever < self->moment && never_more <= place->holds_g))
        return;
      if (most * lever >= self->moment)
        {
          /* Of those as heavy the nearest to the end, however the sums are rounded. */
          if (!place->has_room || self->moment / lever < place->mass_g * (1 - 1e-9))
            take_block (place, room, from, to, self->moment / lever);
          place->holds_g = fmax (place->holds_g, most);
          return;
        }
      if (most <= place->holds_g || place->has_room)
        continue;
      place->holds_g = most;
      place->x_mm = (from + to) / 2;
      place->mass_g = self->moment / lever;
    }
}

static BallastPlace
look_along (const Looking *self, const Stretch *stretch)
{
  BallastPlace place = { .kind = stretch->kind, .bay = stretch->bay, .mass_g = NAN, .x_mm = NAN, .y_mm = NAN, .z_mm = NAN,
                         .length_mm = NAN, .width_mm = NAN, .height_mm = NAN };
  const double length = fabs (stretch->other - stretch->end), step = fmax (FINEST, length / STEPS);

  for (double begin = 0; begin + SHORT <= length; begin += step)
    {
      const double lever = self->aft * (stretch->end - self->need.target_x_mm) - begin;

      if (lever <= 0 || (place.has_room && self->moment / lever > place.mass_g))
        break;
      try_from (self, stretch, begin, step, &place);
    }
  return place;
}

/* What it costs to have it there: off the centre line it tips the wings too. */
static double
cost_of (const BallastPlace *place)
{
  return place->mass_g * (fabs (place->y_mm) < ON_CENTRE ? 1 : DEARER_OFF_CENTRE);
}

static BallastPlace
look_best (const Looking *self, const Stretch *stretch)
{
  Stretch centred = *stretch;
  BallastPlace place = look_along (self, stretch);

  centred.on_centre = true;
  if (!place.has_room || fabs (place.y_mm) < ON_CENTRE)
    return place;
  const BallastPlace on_it = look_along (self, &centred);
  return on_it.has_room && cost_of (&on_it) < cost_of (&place) ? on_it : place;
}

/* Where ballast helps. */
static void
add_place (Looking *self, const Stretch *stretch, BallastPlace place)
{
  if (self->aft * (stretch->end - self->need.target_x_mm) > 0)
    g_array_append_val (self->places, place);
}

static void
look_at (Looking *self, const Stretch *stretch)
{
  if (self->aft * (stretch->end - stretch->other) >= SHORT)
    add_place (self, stretch, look_best (self, stretch));
}

static void
look_before_firewalls (Looking *self)
{
  for (size_t i = 0; i < self->nose_count && self->aft < 0; i++)
    {
      const NoseFigures *nose = &self->noses[i];
      const Stretch stretch = { BALLAST_BEFORE_FIREWALL, NULL, nose->cowl ? NULL : self->profiles[0], nose->cowl, nose->front_x_mm,
                                nose->front_x_mm + nose->firewall_mm, false };
      look_at (self, &stretch);
    }
}

static void
look_in_bays (Looking *self)
{
  for (size_t i = 0; i < aeroplane_count (self->aeroplane, PIECE_BAY); i++)
    {
      Stretch stretch = { .bay = (const Bay *) aeroplane_nth (self->aeroplane, PIECE_BAY, i),
                          .kind = self->aft < 0 ? BALLAST_BAY_FORE : BALLAST_BAY_AFT };
      const Body *body;
      double from, to;

      if (!bay_inside (self->aeroplane, stretch.bay, &body, &from, &to))
        continue;
      for (size_t b = 0; b < self->body_count; b++)
        if (aeroplane_body (self->aeroplane, b) == body)
          stretch.profile = self->profiles[b];
      stretch.end = self->aft < 0 ? from : to;
      stretch.other = self->aft < 0 ? to : from;
      look_at (self, &stretch);
    }
}

/* The former at which the body's end stops, before where it is to balance; NULL: none. */
static const NamedPlace *
former_beyond (const Looking *self, const Body *body, double end)
{
  const NamedPlace *nearest = NULL;
  double at = self->need.target_x_mm;

  for (size_t i = 0; i < body->former_count; i++)
    if (self->aft * (end - body->formers[i].place) >= SHORT && self->aft * (body->formers[i].place - at) > 0)
      at = (nearest = &body->formers[i])->place;
  return nearest;
}

/* From its end on between one former and the next, until there is room; where bays are given, these go on. */
static void
look_from_end (Looking *self, Stretch stretch, const Body *body)
{
  const double half = body_former_thickness (body) / 2;
  const Stretch whole = stretch;
  BallastPlace most = { .holds_g = -1 };

  for (const NamedPlace *former, *passed = NULL;; passed = former, stretch.end = former->place - self->aft * half)
    {
      former = former_beyond (self, body, stretch.end);
      stretch.other = former ? former->place + self->aft * half : self->need.target_x_mm;
      BallastPlace place = look_best (self, &stretch);
      place.former = passed;
      if (place.has_room || place.holds_g > most.holds_g)
        most = place;
      if (place.has_room || !former || aeroplane_count (self->aeroplane, PIECE_BAY) > 0)
        break;
    }
  add_place (self, &whole, most);
}

static void
look_at_end (Looking *self)
{
  Stretch stretch = { .kind = self->aft < 0 ? BALLAST_NOSE_END : BALLAST_TAIL_END, .end = NAN };
  const Body *body = NULL;

  for (size_t b = 0; b < self->body_count; b++)
    {
      double from, to;

      if (!body_profile_ends (self->profiles[b], &from, &to) || self->aft * ((self->aft < 0 ? from : to) - stretch.end) <= 0)
        continue;
      stretch.end = self->aft < 0 ? from : to;
      stretch.profile = self->profiles[b];
      body = aeroplane_body (self->aeroplane, b);
    }
  for (size_t i = 0; i < self->nose_count && self->aft < 0; i++)
    stretch.end = fmax (stretch.end, self->noses[i].front_x_mm + self->noses[i].firewall_mm);
  if (body)
    look_from_end (self, stretch, body);
}

static gint
least_first (gconstpointer a, gconstpointer b)
{
  const BallastPlace *one = a, *other = b;

  if (one->has_room != other->has_room)
    return one->has_room ? -1 : 1;
  if (one->has_room)
    return (cost_of (one) > cost_of (other)) - (cost_of (one) < cost_of (other));
  return (one->holds_g < other->holds_g) - (one->holds_g > other->holds_g);
}

GArray *
ballast_places_beside (const Aeroplane *aeroplane, BallastNeed need, const Part *moved, double moved_x_mm)
{
  Looking self = { .aeroplane = aeroplane, .need = need, .moved = moved, .moved_x = moved_x_mm, .moment = need.mass_g * fabs (need.x_mm - need.target_x_mm),
                   .aft = need.x_mm > need.target_x_mm ? -1 : 1, .body_count = aeroplane_count (aeroplane, PIECE_BODY),
                   .places = g_array_new (FALSE, FALSE, sizeof (BallastPlace)) };

  if (!(self.moment > 0) || !isfinite (self.moment) || !self.body_count)
    return self.places;
  self.profiles = g_new (BodyProfile *, self.body_count);
  for (size_t b = 0; b < self.body_count; b++)
    self.profiles[b] = body_profile_new (aeroplane_body (aeroplane, b));
  self.nose_count = nose_figures_all (aeroplane, self.noses);
  block_all (&self);
  look_before_firewalls (&self);
  look_at_end (&self);
  look_in_bays (&self);
  g_array_sort (self.places, least_first);
  for (size_t b = 0; b < self.body_count; b++)
    body_profile_free (self.profiles[b]);
  g_free (self.profiles);
  return self.places;
}

GArray *
ballast_places (const Aeroplane *aeroplane, BallastNeed need)
{
  return ballast_places_beside (aeroplane, need, NULL, NAN);
}
