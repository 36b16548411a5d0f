#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/elements.h"

const char *
surface_role_word (SurfaceRole role)
{
  return element_role_words[role];
}

bool
surface_role_from_word (const char *word, SurfaceRole *role)
{
  const int place = word_find (element_role_words, word);

  if (place >= 0)
    *role = (SurfaceRole) place;
  return place >= 0;
}

const char *
surface_role_name (SurfaceRole role)
{
  static const char *const names[ROLE_COUNT] = { N_("Wing"), N_("Tailplane"), N_("Foreplane"), N_("Fin") };

  return _(names[role]);
}

const char *
section_class_name (SectionClass section)
{
  static const char *const names[SECTION_CLASSES] = { N_("Not stated"), N_("Flat plate"), N_("Curved plate"), N_("Flat-bottomed"),
                                                      N_("Symmetrical") };

  return _(names[section]);
}

const char *
control_kind_word (ControlKind kind)
{
  return element_control_words[kind];
}

const char *
control_kind_name (ControlKind kind)
{
  static const char *const names[CONTROL_KIND_COUNT] = { N_("Aileron"), N_("Elevator"), N_("Rudder"), N_("Flap") };

  return _(names[kind]);
}

const char *
view_shows_name (ViewShows shows)
{
  static const char *const names[VIEW_SHOWS_COUNT] = {
    N_("Wing"), N_("Tailplane"), N_("Foreplane"), N_("Fin"), N_("Body from above"), N_("Body from the side"),
  };

  return _(names[shows]);
}

double
surface_pressure_ratio (const Surface *surface)
{
  if (!isnan (surface->pressure_ratio))
    return surface->pressure_ratio;
  return surface->role == ROLE_TAILPLANE ? 0.9 : 1;
}

bool
surface_is_horizontal (const Surface *surface)
{
  return surface->role != ROLE_FIN;
}

/* Its own edge at the root is within it: a place on the centre line lies there. */
bool
surface_covers (const Surface *surface, Point place)
{
  const double inside = 1e-3;      /* mm */
  double across = fabs (place.y);

  if (!surface || !surface_is_horizontal (surface))
    return false;
  if (!surface->root_open)
    across = fmax (across, outline_bounds (surface->outline).min.y + inside);
  return outline_contains (surface->outline, (Point) { place.x, across });
}

bool
body_covers (const Body *body, Point place)
{
  Box box;

  if (!body || !body->outline)
    return false;
  box = outline_bounds (body->outline);
  return place.x >= box.min.x && place.x <= box.max.x && fabs (place.y) <= box.max.y;
}
