#include "app/piece-fields.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>

const Piece *
piece_field_selected (TrammelSession *session)
{
  const char *id = selection_single (trammel_session_selection (session));

  return id != NULL ? aeroplane_find (trammel_session_aeroplane (session), id) : NULL;
}

double
piece_field_value (TrammelSession *session, const FieldSpec *spec)
{
  const Piece *piece = piece_field_selected (session);

  return piece != NULL ? *(const double *) ((const char *) piece + spec->at) : NAN;
}

Aeroplane *
piece_field_change (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Piece *piece = piece_field_selected (session);
  Piece *next;

  if (piece == NULL || (isnan (value) ? !spec->optional : value < spec->least || value > spec->most))
    return NULL;
  next = piece_dup (piece);
  *(double *) ((char *) next + spec->at) = value;
  return aeroplane_with_replaced (trammel_session_aeroplane (session), piece, next);
}

char *
off_centre_remark (TrammelSession *session, const FieldSpec *spec)
{
  const Units units = trammel_session_units (session);
  const double mm = spec->value (session, spec);
  g_autofree char *figure = units_length_figure (units, fabs (mm)), *nothing = units_length_figure (units, 0);

  if (isnan (mm) || g_str_equal (figure, nothing))
    return NULL;
  /* Translators: behind a length off the centre line: its side, and the sign it is typed with */
  return g_strdup (mm < 0 ? _("to port (−)") : _("to starboard (+)"));
}

char *
piece_height_remark (TrammelSession *session, const FieldSpec *spec)
{
  return g_strdup (isnan (spec->value (session, spec)) ? NULL : _("above the side view's line"));
}
