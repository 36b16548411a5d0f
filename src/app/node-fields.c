#include "trammel-config.h"
#include "app/node-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/length-limit.h"
#include "app/piece-fields.h"
#include "document/changes.h"

const Outline *
node_selected_outline (TrammelSession *session, size_t *node)
{
  const Selection *selection = trammel_session_selection (session);
  const Surface *surface = trammel_session_selected_surface (session);
  const Body *body = trammel_session_selected_body (session);
  const Outline *outline = surface != NULL ? surface->outline : body == NULL ? NULL : selection->side ? body->side_outline : body->outline;

  if (outline == NULL || selection->node_count != 1 || selection->nodes[0] >= outline_node_count (outline))
    return NULL;
  *node = selection->nodes[0];
  return outline;
}

Aeroplane *
node_with_outline (TrammelSession *session, Outline *takes)
{
  const Aeroplane *aeroplane = trammel_session_aeroplane (session);
  const Selection *selection = trammel_session_selection (session);
  const char *id = selection_single (selection);

  if (trammel_session_selected_surface (session) != NULL)
    return change_surface_outline (aeroplane, id, takes);
  return selection->side ? change_body_side (aeroplane, id, takes) : change_body_outline (aeroplane, id, takes);
}

/* The spec's offset tells which of the two coordinates. */
static double
node_place (TrammelSession *session, const FieldSpec *spec)
{
  size_t node;
  const Outline *outline = node_selected_outline (session, &node);
  Point place;

  if (outline == NULL)
    return NAN;
  place = outline_node (outline, node);
  return *(const double *) ((const char *) &place + spec->at);
}

static Aeroplane *
with_node_place (TrammelSession *session, const FieldSpec *spec, double value)
{
  size_t node;
  const Outline *outline = node_selected_outline (session, &node);
  Outline *next = NULL;
  Point place;

  if (outline == NULL || value < spec->least || value > spec->most)
    return NULL;
  place = outline_node (outline, node);
  *(double *) ((char *) &place + spec->at) = value;
  if (outline_with_node_at (outline, node, place, &next) != CORE_OK)
    return NULL;
  return node_with_outline (session, next);
}

/* A half-outline has no nodes across the centre line; a height goes either way. */
static const FieldSpec surface_specs[] = {
  { .label = N_("Station"), .kind = FIELD_LENGTH, .value = node_place, .change = with_node_place, .step = N_("Move Node"),
    .at = offsetof (Point, y), .most = LENGTH_LIMIT_MM, .refused = N_("A station lies between the centre line and 20 m from it.") },
  { .label = N_("Aft of datum"), .kind = FIELD_LENGTH, .value = node_place, .change = with_node_place, .step = N_("Move Node"),
    .at = offsetof (Point, x), .least = -LENGTH_LIMIT_MM, .most = LENGTH_LIMIT_MM, .refused = N_("That is further than 20 m away.") },
}, body_specs[] = {
  { .label = N_("Half width"), .kind = FIELD_LENGTH, .value = node_place, .change = with_node_place, .step = N_("Move Node"),
    .at = offsetof (Point, y), .most = LENGTH_LIMIT_MM, .refused = N_("A half width lies between 0 and 20 m.") },
  { .label = N_("Aft of datum"), .kind = FIELD_LENGTH, .value = node_place, .change = with_node_place, .step = N_("Move Node"),
    .at = offsetof (Point, x), .least = -LENGTH_LIMIT_MM, .most = LENGTH_LIMIT_MM, .refused = N_("That is further than 20 m away.") },
}, height_specs[] = {
  { .label = N_("Height"), .kind = FIELD_LENGTH, .value = node_place, .change = with_node_place, .step = N_("Move Node"),
    .at = offsetof (Point, y), .least = -LENGTH_LIMIT_MM, .most = LENGTH_LIMIT_MM, .refused = N_("That is further than 20 m away.") },
  { .label = N_("Aft of datum"), .kind = FIELD_LENGTH, .value = node_place, .change = with_node_place, .step = N_("Move Node"),
    .at = offsetof (Point, x), .least = -LENGTH_LIMIT_MM, .most = LENGTH_LIMIT_MM, .refused = N_("That is further than 20 m away.") },
};

FieldList
node_fields (TrammelSession *session)
{
  const Surface *surface = trammel_session_selected_surface (session);

  if (surface != NULL && surface_is_horizontal (surface))
    return (FieldList) { surface_specs, G_N_ELEMENTS (surface_specs) };
  if (surface == NULL && !trammel_session_selection (session)->side)
    return (FieldList) { body_specs, G_N_ELEMENTS (body_specs) };
  return (FieldList) { height_specs, G_N_ELEMENTS (height_specs) };
}
