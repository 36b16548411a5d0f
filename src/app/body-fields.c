#include "trammel-config.h"
#include "app/piece-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/length-limit.h"
#include "document/body-size.h"

typedef Aeroplane *(*BodyChange) (const Aeroplane *self, const char *id, double mm);

/* The spec's `at` is the place of the figure in a BodySize; how each is changed, in the same order. */
static const BodyChange changes[] = { change_body_length, change_body_width, change_body_height };

static double
body_value (TrammelSession *session, const FieldSpec *spec)
{
  const Body *body = trammel_session_selected_body (session);
  BodySize size;

  if (body == NULL)
    return NAN;
  size = body_size (body);
  return *(const double *) ((const char *) &size + spec->at);
}

static Aeroplane *
with_body_value (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Body *body = trammel_session_selected_body (session);

  if (body == NULL || !(value > 0 && value <= LENGTH_LIMIT_MM))
    return NULL;
  return changes[spec->at / sizeof (double)] (trammel_session_aeroplane (session), body->piece.id, value);
}

static char *
why_no_size (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Units units = trammel_session_units (session);
  g_autofree char *most = length_limit_words (units);

  if (spec->at == offsetof (BodySize, length) && isnan (body_value (session, spec)))
    return g_strdup (_("The body has no outline yet: trace or draw one, and its length can be typed."));
  if (isnan (body_value (session, spec)))
    return g_strdup (spec->at == offsetof (BodySize, width)
                     ? _("The body has no outline from above yet: trace or draw that, and its width can be typed.")
                     : _("The body has no outline from the side yet: trace or draw that, and its height can be typed."));
  /* Translators: %s is a length with its unit. */
  return g_strdup_printf (_("A body's measure is more than 0 and at most %s."), most);
}

FieldList
body_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Length"), .kind = FIELD_LENGTH, .value = body_value, .change = with_body_value, .why = why_no_size,
      .step = N_("Change Length"), .at = offsetof (BodySize, length),
      .hint = N_("Stretches both outlines from the nose, and formers and bays with them. Parts, wing and tail stay where they are.") },
    { .label = N_("Greatest width"), .kind = FIELD_LENGTH, .value = body_value, .change = with_body_value, .why = why_no_size,
      .step = N_("Change Width"), .at = offsetof (BodySize, width),
      .hint = N_("Stretches the outline from above, from the centre line to both sides. Parts stay where they are.") },
    { .label = N_("Greatest height"), .kind = FIELD_LENGTH, .value = body_value, .change = with_body_value, .why = why_no_size,
      .step = N_("Change Height of Body"), .at = offsetof (BodySize, height),
      .hint = N_("Stretches the outline from the side, up and down from the thrust line. Parts, wing and tail stay where they are.") },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}
