#include "trammel-config.h"
#include "app/wall-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/bay-rows.h"
#include "figures/body-walls.h"
#include "figures/part-places.h"

static const Body *
wall_body (TrammelSession *session)
{
  const Body *body = trammel_session_selected_body (session);
  const Bay *bay = bay_selected (session);
  double from, to;

  if (body != NULL || bay == NULL)
    return body;
  return bay_reach (trammel_session_aeroplane (session), bay, &body, &from, &to) ? body : NULL;
}

/* The spec's offset tells which of the two. */
static double
wall_given (const Body *body, const FieldSpec *spec)
{
  return *(const double *) (const void *) ((const char *) body + spec->at);
}

static double
wall_value (TrammelSession *session, const FieldSpec *spec)
{
  const Body *body = wall_body (session);

  if (body == NULL)
    return NAN;
  return spec->at == offsetof (Body, skin) ? body_skin (body) : body_former_thickness (body);
}

static char *
wall_remark (TrammelSession *session, const FieldSpec *spec)
{
  const Body *body = wall_body (session);

  return body != NULL && isnan (wall_given (body, spec)) ? g_strdup (_("as usual")) : NULL;
}

static Aeroplane *
with_wall (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Body *body = wall_body (session);
  Body *next;

  if (body == NULL || value < 0 || value > spec->most)
    return NULL;
  next = (Body *) piece_dup (&body->piece);
  *(double *) (void *) ((char *) next + spec->at) = value;
  return aeroplane_with_replaced (trammel_session_aeroplane (session), &body->piece, &next->piece);
}

FieldList
wall_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Skin"), .kind = FIELD_THIN, .value = wall_value, .change = with_wall, .optional = true, .remark = wall_remark,
      .at = offsetof (Body, skin), .most = 100, .step = N_("Change Skin"), .refused = N_("A skin is between 0 and 100 mm thick.") },
    { .label = N_("Formers"), .kind = FIELD_THIN, .value = wall_value, .change = with_wall, .optional = true, .remark = wall_remark,
      .at = offsetof (Body, former_thickness), .most = 100, .step = N_("Change Thickness of Formers"),
      .refused = N_("A former is between 0 and 100 mm thick.") },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}
