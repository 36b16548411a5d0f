#include "trammel-config.h"
#include "drawing/export-cutting.h"
#include <glib/gi18n-lib.h>
#include "drawing/cutting-dxf.h"
#include "drawing/cutting-svg.h"
#include "drawing/flat-pieces.h"

static bool
options_make_sense (const ExportOptions *options, GError **error)
{
  if (options->format != EXPORT_SVG && options->format != EXPORT_DXF)
    g_set_error_literal (error, EXPORT_ERROR, EXPORT_ERROR_FORMAT, _("A file for cutting is an SVG or a DXF file."));
  else if (!(options->kerf >= 0 && options->kerf <= EXPORT_KERF_MOST))
    g_set_error (error, EXPORT_ERROR, EXPORT_ERROR_FORMAT, _("A kerf is from 0 to %g mm, not %g."), EXPORT_KERF_MOST, options->kerf);
  else
    return true;
  return false;
}

Cutting *
export_cutting_sheet (const Figures *figures, const ExportOptions *options, GError **error)
{
  if (!options_make_sense (options, error))
    return NULL;
  g_autoptr (GPtrArray) pieces = flat_pieces_of (figures, options->units, options->halves);
  g_autoptr (Cutting) cutting = cutting_new (pieces, options->kerf, aeroplane_traits (figures->aeroplane).name);
  if (cutting->pieces->len > 0)
    return g_steal_pointer (&cutting);
  g_set_error_literal (error, EXPORT_ERROR, EXPORT_ERROR_DRAWING, _("There is nothing to cut out yet; draw a wing, a tail or a fin with a closed outline."));
  return NULL;
}

GBytes *
export_cutting (const Figures *figures, const ExportOptions *options, GError **error)
{
  g_autoptr (Cutting) cutting = export_cutting_sheet (figures, options, error);

  if (cutting == NULL)
    return NULL;
  return options->format == EXPORT_DXF ? cutting_dxf (cutting) : cutting_svg (cutting);
}
