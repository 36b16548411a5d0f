#include "figures/usual-lines-private.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/body-measure.h"

/* Rims, holes left: a former is so much of what it fills. */
static const double rim = 0.55;

/* A section of the mean girth, mm². */
static double
mean_section (const BodyMeasure *measure)
{
  const double girth = measure->skin / measure->length;

  return girth * girth / (4 * G_PI);
}

/* Without named formers one each 70 mm is taken. */
static void
add_formers (GArray *lines, const BodyMeasure *measure)
{
  const double apart = 70;
  StructureItem *formers = usual_line (lines, _("Formers"), "balsa-medium", isnan (measure->formers) ? TRACED_NONE : TRACED_FORMERS);

  if (isnan (measure->formers))
    formers->area = round (fmax (4, measure->length / apart) * mean_section (measure));
  formers->thickness = 1.5 * sixteenth;
  formers->share = rim;
}

static void
add_sticks (GArray *lines, const char *name, double count, double width, double thickness)
{
  StructureItem *sticks = usual_line (lines, name, "balsa-medium", TRACED_LENGTH);

  sticks->count = count;
  sticks->width = width;
  sticks->thickness = thickness;
}

static void
add_sheet (GArray *lines, const char *name, double share, double thickness)
{
  StructureItem *sheet = usual_line (lines, name, "balsa-medium", TRACED_SKIN);

  sheet->thickness = thickness;
  sheet->share = share;
}

bool
usual_body (const Body *body, GArray *lines, double *centre)
{
  const BodyMeasure measure = body_measure (body);
  StructureItem *item;

  if (!(measure.skin > 0))
    return false;
  *centre = 0.42;
  add_formers (lines, &measure);
  add_sticks (lines, _("Keels"), 2, 8, 2 * sixteenth);
  add_sticks (lines, _("Stringers"), 20, sixteenth, sixteenth);
  add_sheet (lines, _("Nose sheet"), 0.28, sixteenth);
  item = usual_line (lines, _("Firewall"), "birch-ply", TRACED_NONE);
  item->area = round (1.3 * mean_section (&measure));
  item->thickness = 3;
  add_sheet (lines, _("Floors, trays, doublers"), 0.32, 1.5 * sixteenth);
  usual_line (lines, _("Hatch and magnets"), NULL, TRACED_NONE)->mass = 1.5;
  usual_line (lines, _("Glue"), NULL, TRACED_NONE)->of_others = 0.1;
  usual_line (lines, _("Covering"), "iron-on-light", TRACED_SKIN)->share = 1.1;
  return true;
}
