#include "trammel-config.h"
#include "drawing/template-paper.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/units.h"

static const double margin = 8;                          /* printers leave as much blank, of the file's mm */
static const double foot_wide = 16, foot_narrow = 21;    /* of the strip with the control lines and the sentence on a correction */
static const double spare = 1.02;                        /* up to that correction tiles are as large as without one, lest it lay all of them anew */
static const double width_of_wide = 250, least_width = 160, least_step = 40;

Point
template_correction (const TemplateSheet *sheet)
{
  const double on_short = 100 / sheet->read_short, on_long = 100 / sheet->read_long;

  return sheet->portrait ? (Point) { on_short, on_long } : (Point) { on_long, on_short };
}

static bool
is_corrected (const TemplateSheet *sheet)
{
  return sheet->read_short != 100 || sheet->read_long != 100;
}

char *
template_correction_sentence (const TemplateSheet *sheet)
{
  g_autofree char *on_short = units_number_exact (sheet->read_short), *on_long = units_number_exact (sheet->read_long);

  if (!is_corrected (sheet))
    return NULL;
  if (sheet->read_short == sheet->read_long)
    return g_strdup_printf (_("Corrected for a printer that draws 100 mm as %s mm."), on_short);
  return g_strdup_printf (_("Corrected for a printer that draws 100 mm as %s mm along the paper's short side and as %s mm along its long side."), on_short,
                          on_long);
}

bool
template_paper_divide (const TemplateSheet *sheet, TemplatePaper *paper)
{
  const double width = sheet->portrait ? sheet->paper->height : sheet->paper->width;
  const double height = sheet->portrait ? sheet->paper->width : sheet->paper->height;
  const Point k = template_correction (sheet);
  const Box room = { { margin / k.x, margin / k.y }, { (width - margin) / k.x, (height - margin) / k.y } };
  const Point least = { (width - 2 * margin) / fmax (k.x, spare), (height - 2 * margin) / fmax (k.y, spare) };      /* of the room's size */
  const bool wide = least.x >= width_of_wide;
  const Point corner = { room.min.x + TEMPLATE_COLUMN, room.min.y };
  const Point step = { floor (least.x - TEMPLATE_COLUMN - TEMPLATE_OVERLAP), floor (least.y - (wide ? foot_wide : foot_narrow) - TEMPLATE_OVERLAP) };

  if (!(least.x >= least_width && step.x >= least_step && step.y >= least_step))
    return false;
  *paper = (TemplatePaper) { .correction = k, .room = room, .step = step, .wide = wide,
                             .field = { corner, { corner.x + step.x + TEMPLATE_OVERLAP, corner.y + step.y + TEMPLATE_OVERLAP } } };
  return true;
}
