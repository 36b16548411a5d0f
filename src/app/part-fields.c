#include "trammel-config.h"
#include "app/piece-fields.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/length-limit.h"
#include "document/catalogue.h"
#include "document/changes.h"
#include "document/part-class.h"
#include "figures/loads.h"

static char *
part_name (TrammelSession *session)
{
  const Part *part = trammel_session_selected_part (session);
  const PartClass *class;

  if (part == NULL)
    return g_strdup ("");
  class = part_class_find (part->class_name);
  return g_strdup (part->name != NULL ? part->name : class != NULL ? _(class->name) : part->piece.id);
}

static Aeroplane *
with_part_name (TrammelSession *session, const char *text)
{
  const Part *part = trammel_session_selected_part (session);
  Part *next;

  if (part == NULL)
    return NULL;
  next = (Part *) piece_dup (&part->piece);
  g_free (next->name);
  next->name = *text != '\0' ? g_strdup (text) : NULL;
  return aeroplane_with_replaced (trammel_session_aeroplane (session), &part->piece, &next->piece);
}

static Aeroplane *
with_part_known (TrammelSession *session, const FieldSpec *spec, double value, double deviation)
{
  const Part *part = trammel_session_selected_part (session);
  Part *next;

  if (part == NULL || fmin (value, deviation) < spec->least || fmax (value, deviation) > spec->most)
    return NULL;
  next = (Part *) piece_dup (&part->piece);
  next->mass = value;
  next->mass_sigma = deviation;
  return aeroplane_with_replaced (trammel_session_aeroplane (session), &part->piece, &next->piece);
}

/* What is typed alone comes from a scale: it is known to half a gram, or as well as it was where that is better. Of nothing there is
 * nothing to know. */
static Aeroplane *
with_part_mass (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Part *part = trammel_session_selected_part (session);
  Part *weighed;

  if (part == NULL)
    return NULL;
  weighed = (Part *) piece_dup (&part->piece);
  weighed->mass = value;
  const double known = part_mass_deviation (weighed);
  piece_unref (&weighed->piece);
  return value > 0 ? with_part_known (session, spec, value, known > 0 ? fmin (known, SCALE_SIGMA_G) : SCALE_SIGMA_G)
                   : piece_field_change (session, spec, value);
}

typedef struct { double mass, sigma; } KindMass;      /* g; NAN without */

/* What the catalogue has for parts of that kind. Remembered for the kind asked about last: a file is read. */
static KindMass
mass_of_kind (const char *kind)
{
  static char *known;
  static KindMass mass;

  if (kind == NULL)
    return (KindMass) { NAN, NAN };
  if (g_strcmp0 (known, kind) == 0)
    return mass;
  g_autoptr (Catalogue) catalogue = catalogue_load (NULL);
  const CatalogueEntry *entry = catalogue_find (catalogue, kind);
  g_free (known);
  known = g_strdup (kind);
  return mass = entry != NULL ? (KindMass) { entry->mass, entry->mass_sigma } : (KindMass) { NAN, NAN };
}

/* One that still has its kind's mass and deviation has not been on a scale. */
static bool
part_is_unweighed (const Part *part)
{
  const KindMass usual = mass_of_kind (part->kind);

  return isnan (part->mass_sigma) || (part->mass_sigma == usual.sigma && part->mass == usual.mass);
}

static char *
part_mass_remark (TrammelSession *session, const FieldSpec *spec)
{
  const Part *part = trammel_session_selected_part (session);
  g_autofree char *sigma = NULL;

  if (part == NULL || !part_is_unweighed (part))
    return NULL;
  sigma = units_mass_deviation_figure (trammel_session_units (session), part_mass_deviation (part));
  /* Translators: one standard deviation of a mass that nobody has weighed */
  return g_strdup_printf (_("± %s, not weighed"), sigma);
}

/* It is taken as typed: what holds it may be longer than the rail that was drawn. Half a millimetre nobody sees. */
static char *
part_place_remark (TrammelSession *session, const FieldSpec *spec)
{
  const Part *part = trammel_session_selected_part (session);
  const bool ahead = part != NULL && part->has_rail && part->x < part->rail_from - 0.5;
  const bool behind = part != NULL && part->has_rail && part->x > part->rail_to + 0.5;
  g_autofree char *end = NULL;

  if (!ahead && !behind)
    return NULL;
  end = units_length (trammel_session_units (session), ahead ? part->rail_from : part->rail_to);
  return g_strdup_printf (ahead ? _("Ahead of its rail, which begins at %s: move it aft, or lengthen the rail.")
                                : _("Behind its rail, which ends at %s: move it forward, or lengthen the rail."), end);
}

FieldList
part_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Name"), .kind = FIELD_TEXT, .text = part_name, .change_text = with_part_name, .step = N_("Change Name") },
    { .label = N_("Mass"), .kind = FIELD_MASS, .value = piece_field_value, .change = with_part_mass, .step = N_("Change Mass"),
      .hint = N_("What the scale says: 24.6, which counts as known to 0.5 g, or with its deviation, 24.6 ± 0.5 or 24.6 +- 0.5."),
      .at = offsetof (Part, mass), .least = 0, .most = 100000, .remark = part_mass_remark,
      .change_known = with_part_known, .refused = N_("A mass lies between 0 and 100 kg.") },
    { .label = N_("Known to ±"), .kind = FIELD_DEVIATION, .value = piece_field_value, .change = piece_field_change,
      .step = N_("Change Deviation"), .at = offsetof (Part, mass_sigma), .least = 0, .most = 100000, .optional = true,
      .refused = N_("A deviation lies between 0 and 100 kg.") },
    { .label = N_("Middle, aft of datum"), .kind = FIELD_LENGTH, .value = piece_field_value, .change = piece_field_change,
      .remark = part_place_remark, .remark_below = true, .step = N_("Move Part"), .at = offsetof (Part, x), .least = -LENGTH_LIMIT_MM,
      .most = LENGTH_LIMIT_MM, .refused = N_("That is further than 20 m away.") },
    { .label = N_("Off centre"), .kind = FIELD_LENGTH, .value = piece_field_value, .change = piece_field_change,
      .remark = off_centre_remark, .step = N_("Move Part"), .at = offsetof (Part, y), .least = -LENGTH_LIMIT_MM, .most = LENGTH_LIMIT_MM,
      .refused = N_("That is further than 20 m away.") },
    { .label = N_("Turn"), .kind = FIELD_ANGLE, .value = piece_field_value, .change = piece_field_change, .step = N_("Turn Part"),
      .at = offsetof (Part, turn), .least = -360, .most = 360, .refused = N_("A turn lies between −360 and 360 degrees.") },
    { .label = N_("Height of the middle"), .kind = FIELD_LENGTH, .value = piece_field_value, .change = piece_field_change,
      .remark = piece_height_remark, .remark_below = true, .step = N_("Move Part"), .at = offsetof (Part, z), .least = -LENGTH_LIMIT_MM, .most = LENGTH_LIMIT_MM,
      .refused = N_("That is further than 20 m away.") },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}

static char *
part_group (TrammelSession *session)
{
  const Part *part = trammel_session_selected_part (session);

  return g_strdup (part != NULL && part->group != NULL ? part->group : "");
}

static Aeroplane *
with_part_group (TrammelSession *session, const char *text)
{
  const Part *part = trammel_session_selected_part (session);
  Part *next;

  if (part == NULL)
    return NULL;
  next = (Part *) piece_dup (&part->piece);
  g_free (next->group);
  next->group = *text != '\0' ? g_strdup (text) : NULL;
  return aeroplane_with_replaced (trammel_session_aeroplane (session), &part->piece, &next->piece);
}

FieldList
part_group_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Group"), .kind = FIELD_TEXT, .text = part_group, .change_text = with_part_group, .step = N_("Change Group") },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}

FieldList
part_size_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Length"), .kind = FIELD_LENGTH, .value = piece_field_value, .change = piece_field_change, .step = N_("Change Size"),
      .at = offsetof (Part, length), .least = 0, .most = 5000, .refused = N_("A size lies between 0 and 5 m.") },
    { .label = N_("Width"), .kind = FIELD_LENGTH, .value = piece_field_value, .change = piece_field_change, .step = N_("Change Size"),
      .at = offsetof (Part, width), .least = 0, .most = 5000, .refused = N_("A size lies between 0 and 5 m.") },
    { .label = N_("Height"), .kind = FIELD_LENGTH, .value = piece_field_value, .change = piece_field_change, .step = N_("Change Size"),
      .at = offsetof (Part, height), .least = 0, .most = 5000, .refused = N_("A size lies between 0 and 5 m.") },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}

/* A rail's end stays on its side of the other: a value beyond it is refused, not exchanged. */
static Aeroplane *
with_rail_end (TrammelSession *session, const FieldSpec *spec, double value)
{
  const Part *part = trammel_session_selected_part (session);
  const bool forward = spec->at == offsetof (Part, rail_from);

  if (part == NULL || (forward ? value > part->rail_to : value < part->rail_from))
    return NULL;
  return piece_field_change (session, spec, value);
}

FieldList
part_rail_fields (void)
{
  static const FieldSpec specs[] = {
    { .label = N_("Forward end"), .kind = FIELD_LENGTH, .value = piece_field_value, .change = with_rail_end, .step = N_("Change Rail"),
      .at = offsetof (Part, rail_from), .least = -LENGTH_LIMIT_MM, .most = LENGTH_LIMIT_MM,
      .refused = N_("The forward end lies ahead of the aft end.") },
    { .label = N_("Aft end"), .kind = FIELD_LENGTH, .value = piece_field_value, .change = with_rail_end, .step = N_("Change Rail"),
      .at = offsetof (Part, rail_to), .least = -LENGTH_LIMIT_MM, .most = LENGTH_LIMIT_MM,
      .refused = N_("The aft end lies behind the forward end.") },
  };

  return (FieldList) { specs, G_N_ELEMENTS (specs) };
}
