#include "trammel-config.h"
#include "app/piece-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/report-hatch.h"

/* The spec's `at` is the figure's place in HatchFigures. */
static double
hatch_value (TrammelSession *session, const FieldSpec *spec)
{
  return *(const double *) (const void *) ((const char *) &trammel_session_figures (session)->hatch + spec->at);
}

static char *
hatch_remark (TrammelSession *session, const FieldSpec *spec)
{
  return hatch_edge_text (trammel_session_aeroplane (session), hatch_value (session, spec), trammel_session_units (session));
}

FieldList
part_hatch_fields (TrammelSession *session)
{
  static const FieldSpec specs[] = {
    { .label = N_("Forward edge"), .kind = FIELD_LENGTH, .value = hatch_value, .at = offsetof (HatchFigures, from_mm), .remark = hatch_remark },
    { .label = N_("After edge"), .kind = FIELD_LENGTH, .value = hatch_value, .at = offsetof (HatchFigures, to_mm), .remark = hatch_remark },
    { .label = N_("Hatch's width"), .kind = FIELD_LENGTH, .value = hatch_value, .at = offsetof (HatchFigures, width_mm) },
    { .label = N_("Floor to leave, from"), .kind = FIELD_LENGTH, .value = hatch_value, .at = offsetof (HatchFigures, floor_from_mm) },
    { .label = N_("Floor to leave, to"), .kind = FIELD_LENGTH, .value = hatch_value, .at = offsetof (HatchFigures, floor_to_mm) },
  };
  const Part *part = trammel_session_selected_part (session);
  const bool is_pack = part != NULL && trammel_session_figures (session)->hatch.part != NULL && part->has_rail
                       && g_strcmp0 (part->class_name, "battery") == 0;

  return (FieldList) { specs, is_pack ? G_N_ELEMENTS (specs) : 0 };
}
