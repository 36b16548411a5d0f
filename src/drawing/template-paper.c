#include "trammel-config.h"
#include "drawing/template-paper.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/units.h"

static const double margin = 8;                          /* printers leave as much blank, of the file's mm */
static const double foot_wide = 12, foot_narrow = 17;    /* of the strip with the control lines */
static const double foot_sentence = 4;                   /* more where a correction is told of */
static const double width_of_wide = 250, least_width = 160, least_step = 40;

Point
template_correction (const TemplateSheet *sheet)
{
  return (Point) { 100 / sheet->read_across, 100 / sheet->read_along };
}

static bool
is_corrected (const TemplateSheet *sheet)
{
  return sheet->read_across != 100 || sheet->read_along != 100;
}

char *
template_correction_sentence (const TemplateSheet *sheet)
{
  g_autofree char *across = units_number_exact (sheet->read_across), *along = units_number_exact (sheet->read_along);

  if (!is_corrected (sheet))
    return NULL;
  if (sheet->read_across == sheet->read_along)
    return g_strdup_printf (_("Corrected for a printer that draws 100 mm as %s mm."), across);
  return g_strdup_printf (_("Corrected for a printer that draws 100 mm as %s mm across the page and as %s mm down it."), across, along);
}

bool
template_paper_divide (const TemplateSheet *sheet, TemplatePaper *paper)
{
  const double width = sheet->portrait ? sheet->paper->height : sheet->paper->width;
  const double height = sheet->portrait ? sheet->paper->width : sheet->paper->height;
  const Point k = template_correction (sheet);
  const Box room = { { margin / k.x, margin / k.y }, { (width - margin) / k.x, (height - margin) / k.y } };
  const bool wide = room.max.x - room.min.x >= width_of_wide;
  const double foot = (wide ? foot_wide : foot_narrow) + (is_corrected (sheet) ? foot_sentence : 0);
  const Point corner = { room.min.x + TEMPLATE_COLUMN, room.min.y };
  const Point step = { floor (room.max.x - corner.x - TEMPLATE_OVERLAP), floor (room.max.y - foot - corner.y - TEMPLATE_OVERLAP) };

  if (!(room.max.x - room.min.x >= least_width && step.x >= least_step && step.y >= least_step))
    return false;
  *paper = (TemplatePaper) { .correction = k, .room = room, .step = step, .wide = wide,
                             .field = { corner, { corner.x + step.x + TEMPLATE_OVERLAP, corner.y + step.y + TEMPLATE_OVERLAP } } };
  return true;
}
