#include "figures/part-stand.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/part-box.h"

/* mm: nearer than that an edge stands at a former. */
static const double AT = 0.5;

struct PartRule {
  const Aeroplane *aeroplane;
  size_t count;
  BodyProfile **profiles;               /* one a body, in the document's order */
};

PartRule *
part_rule_new (const Aeroplane *aeroplane)
{
  PartRule *self = g_new0 (PartRule, 1);

  self->aeroplane = aeroplane;
  self->count = aeroplane_count (aeroplane, PIECE_BODY);
  self->profiles = g_new (BodyProfile *, self->count);
  for (size_t i = 0; i < self->count; i++)
    self->profiles[i] = body_profile_new (aeroplane_body (aeroplane, i));
  return self;
}

void
part_rule_free (PartRule *self)
{
  if (!self)
    return;
  for (size_t i = 0; i < self->count; i++)
    body_profile_free (self->profiles[i]);
  g_free (self->profiles);
  g_free (self);
}

/* No rule on the body reaches it: it is in the wing, or out on it. */
static bool
is_beside (const Body *body, const Part *part)
{
  return body->outline && fabs (part->y) - part_extent (part).y / 2 > outline_bounds (body->outline).max.y;
}

/* The nearest at or ahead of x, else the one nearest behind it. */
static bool
is_nearer (const NamedPlace *one, const NamedPlace *best, double x)
{
  const bool ahead = one->place <= x + AT, best_ahead = best && best->place <= x + AT;

  if (!best || ahead != best_ahead)
    return !best || ahead;
  return ahead ? one->place > best->place : one->place < best->place;
}

static bool
is_measured_on (const Body *body, const Part *part)
{
  return (!part->of || g_strcmp0 (part->of, body->piece.id) == 0) && !is_beside (body, part);
}

static const NamedPlace *
find_former (const PartRule *self, const Part *part, double x, size_t *number)
{
  const NamedPlace *best = NULL;

  for (size_t b = 0; b < self->count; b++)
    {
      const Body *body = aeroplane_body (self->aeroplane, b);

      for (size_t i = 0; is_measured_on (body, part) && i < body->former_count; i++)
        if (body->formers[i].name && *body->formers[i].name && is_nearer (&body->formers[i], best, x))
          {
            best = &body->formers[i];
            *number = b;
          }
    }
  return best;
}

static double
height_at (const BodyProfile *profile, double x, double underside)
{
  double half_width, bottom, top;

  body_profile_at (profile, x, &half_width, &bottom, &top);
  return underside - bottom >= -AT ? fmax (underside - bottom, 0) : NAN;
}

bool
part_stand_of (const PartRule *self, const Part *part, PartStand *stand)
{
  const double half = part_extent (part).x / 2, underside = part->z - part->height / 2;
  const double front = part->x - half, rear = part->x + half;
  size_t number = 0;
  const NamedPlace *former = isfinite (front) && isfinite (rear) ? find_former (self, part, front, &number) : NULL;

  if (!former)
    return false;
  *stand = (PartStand) { former, front - former->place, rear - former->place, height_at (self->profiles[number], front, underside),
                         height_at (self->profiles[number], rear, underside) };
  return true;
}

char *
part_stand_text (const PartStand *stand, double edge_mm, Units units)
{
  g_autofree char *length = units_length (units, fabs (edge_mm));

  if (fabs (edge_mm) < AT)
    return g_strdup_printf (_("at %s"), stand->former->name);
  /* Translators: where an edge lies: a length and a former's name, "18 mm behind F3" */
  return g_strdup_printf (edge_mm > 0 ? _("%s behind %s") : _("%s ahead of %s"), length, stand->former->name);
}

char *
part_stand_height_text (const PartStand *stand, Units units)
{
  g_autofree char *front = units_length_figure (units, stand->front_height_mm), *rear = units_length (units, stand->rear_height_mm);
  g_autofree char *rear_figure = units_length_figure (units, stand->rear_height_mm);

  if (isnan (stand->front_height_mm) || isnan (stand->rear_height_mm))
    return g_strdup ("–");
  return g_str_equal (front, rear_figure) ? g_steal_pointer (&rear) : g_strdup_printf (_("%s to %s"), front, rear);
}

void
part_stand_write (JsonText *json, const PartRule *rule, const Part *part)
{
  PartStand stand = { NULL, NAN, NAN, NAN, NAN };

  part_stand_of (rule, part, &stand);
  json_text_string (json, "former", stand.former ? stand.former->name : NULL);
  json_text_number (json, "front_behind_former_mm", stand.front_mm);
  json_text_number (json, "rear_behind_former_mm", stand.rear_mm);
  json_text_number (json, "front_above_bottom_mm", stand.front_height_mm);
  json_text_number (json, "rear_above_bottom_mm", stand.rear_height_mm);
}
