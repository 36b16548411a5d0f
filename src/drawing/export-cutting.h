#pragma once
#include "drawing/cutting.h"
#include "drawing/export.h"

/** The greatest kerf, mm: what a hand-held router cuts; common practice, no source. */
#define EXPORT_KERF_MOST 2.0

/** The file for cutting, in memory: the aeroplane's flat pieces as SVG or DXF. NULL and an EXPORT_ERROR_FORMAT for another format or a
 *  kerf beyond 0 to EXPORT_KERF_MOST, an EXPORT_ERROR_DRAWING where there is nothing to cut. */
GBytes *export_cutting (const Figures *figures, const ExportOptions *options, GError **error);
/** What that file holds. The caller's. */
Cutting *export_cutting_sheet (const Figures *figures, const ExportOptions *options, GError **error);
