#include "trammel-config.h"
#include "app/structure-line.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/changes.h"
#include "figures/structure-figures.h"

static const char key[] = "trammel-open-line";

/* The structure's id, the line's place, and the line whose header was just pressed; -1 none. */
typedef struct { char *structure; int place, pressed; } OpenLine;

static void
open_line_free (gpointer data)
{
  OpenLine *open = data;

  g_free (open->structure);
  g_free (open);
}

int
structure_line_open (TrammelSession *session)
{
  const OpenLine *open = g_object_get_data (G_OBJECT (session), key);
  const Structure *structure = structure_selected (session);

  if (open == NULL || structure == NULL || g_strcmp0 (open->structure, structure->piece.id) != 0)
    return -1;
  return open->place < (int) structure->item_count ? open->place : -1;
}

bool
structure_line_takes_keyboard (TrammelSession *session, int place)
{
  OpenLine *open = g_object_get_data (G_OBJECT (session), key);

  if (open == NULL || open->pressed != place)
    return false;
  open->pressed = -1;
  return true;
}

void
structure_line_press (TrammelSession *session, int place)
{
  OpenLine *open;

  structure_line_set_open (session, place == structure_line_open (session) ? -1 : place);
  open = g_object_get_data (G_OBJECT (session), key);
  if (open != NULL)
    open->pressed = place;
}

void
structure_line_set_open (TrammelSession *session, int place)
{
  const Structure *structure = structure_selected (session);
  OpenLine *open;

  if (structure == NULL)
    return;
  open = g_new (OpenLine, 1);
  *open = (OpenLine) { g_strdup (structure->piece.id), place, -1 };
  g_object_set_data_full (G_OBJECT (session), key, open, open_line_free);
}

const StructureItem *
structure_line (TrammelSession *session)
{
  const int place = structure_line_open (session);

  return place >= 0 ? &structure_selected (session)->items[place] : NULL;
}

Aeroplane *
structure_line_changed (TrammelSession *session, const StructureItem *next)
{
  const int place = structure_line_open (session);

  if (place < 0)
    return NULL;
  return change_structure_item (trammel_session_aeroplane (session), structure_selected (session)->piece.id, (size_t) place, next);
}

LineKind
structure_line_kind (const StructureItem *item)
{
  if (!isnan (item->of_others))
    return LINE_GLUE;
  if (!isnan (item->mass))
    return LINE_PIECES;
  if (!isnan (structure_item_area_density (item)))
    return LINE_COVERING;
  return isnan (structure_item_density (item)) ? LINE_PIECES : LINE_SOLID;
}

/* The rows of a line */

static double
item_number (const StructureItem *item, const FieldSpec *spec)
{
  return *(const double *) ((const char *) item + spec->at);
}

static double
line_value (TrammelSession *session, const FieldSpec *spec)
{
  const StructureItem *item = structure_line (session);
  const double value = item != NULL ? item_number (item, spec) : NAN;

  return spec->kind == FIELD_PERCENT ? round (value * 1e5) / 1e3 : value;
}

static Aeroplane *
with_line_value (TrammelSession *session, const FieldSpec *spec, double value)
{
  const StructureItem *item = structure_line (session);
  StructureItem next;

  if (item == NULL || value < spec->least || value > spec->most)
    return NULL;
  next = *item;
  *(double *) ((char *) &next + spec->at) = spec->kind == FIELD_PERCENT ? value / 100 : value;
  return structure_line_changed (session, &next);
}

/* A density that is typed anew is no longer that of the weighed sheet. */
static Aeroplane *
with_line_density (TrammelSession *session, const FieldSpec *spec, double value)
{
  const StructureItem *item = structure_line (session);
  StructureItem next;

  if (item == NULL || value < spec->least || value > spec->most)
    return NULL;
  next = *item;
  next.density = value;
  next.density_weighed = false;
  return structure_line_changed (session, &next);
}

static double
line_density (TrammelSession *session, const FieldSpec *spec)
{
  const StructureItem *item = structure_line (session);

  return item != NULL ? structure_item_density (item) : NAN;
}

static double
line_area_density (TrammelSession *session, const FieldSpec *spec)
{
  const StructureItem *item = structure_line (session);

  return item != NULL ? structure_item_area_density (item) : NAN;
}

/* For who builds in inches in pounds a cubic foot too, as sheets are sold. */
static char *
density_remark (TrammelSession *session, const FieldSpec *spec)
{
  const StructureItem *item = structure_line (session);

  if (item != NULL && item->density_weighed)
    return g_strdup (_("kg/m³, weighed"));
  if (item == NULL || isnan (structure_item_density (item)) || trammel_session_units (session).length != LENGTH_INCH)
    return g_strdup (_("kg/m³"));
  /* Translators: pounds a cubic foot */
  return g_strdup_printf (_("kg/m³, %.1f lb/ft³"), density_lb_ft3 (structure_item_density (item)));
}

static char *
line_name (TrammelSession *session)
{
  const StructureItem *item = structure_line (session);

  return g_strdup (item != NULL && item->name != NULL ? item->name : "");
}

static Aeroplane *
with_line_name (TrammelSession *session, const char *text)
{
  const StructureItem *item = structure_line (session);
  StructureItem next;

  if (item == NULL)
    return NULL;
  next = *item;
  next.name = *text != '\0' ? (char *) text : NULL;
  return structure_line_changed (session, &next);
}

#define NAME_ROW { .label = N_("Name"), .kind = FIELD_TEXT, .text = line_name, .change_text = with_line_name, .step = N_("Rename Line") }
#define SIZE_ROW(words, its_kind, field) \
  { .label = words, .kind = its_kind, .value = line_value, .change = with_line_value, .step = N_("Change Line"), .optional = true, \
    .at = offsetof (StructureItem, field), .least = 0, .most = 5000, .refused = N_("A size lies between 0 and 5 m.") }
#define COUNT_ROW \
  { .label = N_("How many"), .kind = FIELD_NUMBER, .value = line_value, .change = with_line_value, .step = N_("Change Line"), \
    .at = offsetof (StructureItem, count), .least = 0, .most = 10000, .refused = N_("There are between 0 and 10000 of a kind.") }
#define SHARE_ROW \
  { .label = N_("Share left or taken"), .kind = FIELD_PERCENT, .value = line_value, .change = with_line_value, .step = N_("Change Line"), \
    .at = offsetof (StructureItem, share), .least = 0, .most = 1000, \
    .refused = N_("Write 95 where notches take a twentieth, 105 where overlaps add one.") }
#define WEIGHED_ROW \
  { .label = N_("On the scale"), .kind = FIELD_MASS, .value = line_value, .change = with_line_value, .step = N_("Weigh Line"), \
    .optional = true, .at = offsetof (StructureItem, weighed), .least = 0, .most = 100000, \
    .refused = N_("A mass lies between 0 and 100 kg.") }
#define DENSITY_ROW \
  { .label = N_("Density"), .kind = FIELD_NUMBER, .value = line_density, .change = with_line_density, .step = N_("Change Density"), \
    .optional = true, .remark = density_remark, .at = offsetof (StructureItem, density), .least = 1, .most = 20000, \
    .refused = N_("A density lies between 1 and 20000 kg/m³; balsa has 60 to 300.") }

#define PLACE_ROW \
  { .label = N_("Middle, aft of datum"), .kind = FIELD_LENGTH, .value = line_value, .change = with_line_value, .step = N_("Change Line"), \
    .optional = true, .at = offsetof (StructureItem, x), .least = -5000, .most = 5000, \
    .hint = N_("Where it runs in the surface: the plan, the template and the files for cutting show it there, and its mass moves there, " \
             "so the structure’s centre moves a little. Left empty its mass is spread like the rest."), \
    .refused = N_("A place lies within 5 m of the datum.") }
#define SOLID_ROWS \
  NAME_ROW, WEIGHED_ROW, COUNT_ROW, SHARE_ROW, DENSITY_ROW, SIZE_ROW (N_("Thickness"), FIELD_THIN, thickness), \
  SIZE_ROW (N_("Width"), FIELD_THIN, width)

/* Of the last two rows, width and length, those that what is traced does not tell. */
static size_t
rows_told (const StructureItem *item)
{
  switch (item->of) {
    case TRACED_NONE:   return isnan (item->area) ? 0 : 2;
    case TRACED_SPAN:
    case TRACED_LENGTH: return 1;
    default:            return 2;
  }
}

FieldList
structure_line_fields (const StructureItem *item)
{
  static const FieldSpec solid[] = { SOLID_ROWS, SIZE_ROW (N_("Length"), FIELD_LENGTH, length) };
  static const FieldSpec spanning[] = { SOLID_ROWS, PLACE_ROW };
  static const FieldSpec covering[] = {
    NAME_ROW, WEIGHED_ROW, SHARE_ROW,
    { .label = N_("Finished, g/m²"), .kind = FIELD_NUMBER, .value = line_area_density, .change = with_line_value,
      .step = N_("Change Line"), .optional = true, .at = offsetof (StructureItem, area_density), .least = 1, .most = 100000,
      .refused = N_("A covering weighs between 1 and 100000 g/m²; tissue and film 7 to 90.") },
    SIZE_ROW (N_("Width"), FIELD_THIN, width), SIZE_ROW (N_("Length"), FIELD_LENGTH, length) };
  static const FieldSpec pieces[] = {
    NAME_ROW, WEIGHED_ROW, COUNT_ROW,
    { .label = N_("One of them"), .kind = FIELD_MASS, .value = line_value, .change = with_line_value, .step = N_("Change Line"),
      .at = offsetof (StructureItem, mass), .least = 0, .most = 100000, .refused = N_("A mass lies between 0 and 100 kg.") } };
  static const FieldSpec glue[] = {
    NAME_ROW, WEIGHED_ROW,
    { .label = N_("Share of what is glued"), .kind = FIELD_PERCENT, .value = line_value, .change = with_line_value,
      .step = N_("Change Line"), .at = offsetof (StructureItem, of_others), .least = 0, .most = 100,
      /* xgettext:no-c-format */
      .refused = N_("Glue is between 0 and 100 % of what is glued; 4 to 15 % is usual.") } };

  switch (structure_line_kind (item)) {
    case LINE_SOLID:    return item->of == TRACED_SPAN ? (FieldList) { spanning, G_N_ELEMENTS (spanning) }
                                                       : (FieldList) { solid, G_N_ELEMENTS (solid) - rows_told (item) };
    case LINE_COVERING: return (FieldList) { covering, G_N_ELEMENTS (covering) - rows_told (item) };
    case LINE_PIECES:   return (FieldList) { pieces, G_N_ELEMENTS (pieces) };
    default:            return (FieldList) { glue, G_N_ELEMENTS (glue) };
  }
}

char *
structure_lines_key (TrammelSession *session)
{
  const Structure *structure = structure_selected (session);
  GString *made = g_string_new (NULL);

  if (structure == NULL)
    return g_string_free (made, FALSE);
  g_string_append_printf (made, " lines %d ", structure_line_open (session));
  for (size_t i = 0; i < structure->item_count; i++)
    g_string_append_printf (made, "%d%d ", (int) structure_line_kind (&structure->items[i]), (int) structure->items[i].of);
  return g_string_free (made, FALSE);
}
