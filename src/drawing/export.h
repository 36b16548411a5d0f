#pragma once
#include <glib.h>
#include "document/units.h"
#include "figures/report.h"

typedef enum { EXPORT_PNG, EXPORT_PDF, EXPORT_SVG, EXPORT_CSV, EXPORT_JSON } ExportFormat;

typedef struct {
  ExportFormat format;
  Units units;
  char paper[16];          /* its word: "a4", "letter"; see paper.h */
  bool portrait;
  int dpi;                 /* PNG: 30..1200 */
  ReportList list;         /* CSV: which one */
  char date[11];           /* of the document's last change, "2026-11-25", for the title block and the PDF; "": a line to fill in by hand */
} ExportOptions;

/** Wall sheet, A4 landscape, 150 dpi, metric, the format by the file's ending (EXPORT_PNG for none it knows). */
ExportOptions export_default_options (const char *path);
/** The format of a file name by its ending; false for none of ours. */
bool export_format_of (const char *path, ExportFormat *format);
/** Paper by name, landscape size in mm; false for one it does not know. */
bool export_paper_size (const char *name, double *width_mm, double *height_mm);

/** Writes the wall sheet (or list, or figures) atomically to `path`. PNG records its resolution. The same document gives the same bytes:
 *  no clock is read. On an error the file at `path` is as it was, and the sentence says what and where:
 *    EXPORT_ERROR_PAPER      a paper that is not known
 *    EXPORT_ERROR_FORMAT     resolution out of range; a format that is none
 *    EXPORT_ERROR_TOO_LARGE  a picture of more than 20000 px a side
 *    EXPORT_ERROR_DRAWING    no memory, or a paper on which nothing finds room
 *    of the writer           a folder that cannot be written */
bool export_write (const Figures *figures, const ExportOptions *options, const char *path, GError **error);
/** The same into memory. */
GBytes *export_bytes (const Figures *figures, const ExportOptions *options, GError **error);

#define EXPORT_ERROR (export_error_quark ())
GQuark export_error_quark (void);     /* the domain of an ExportError */
typedef enum { EXPORT_ERROR_FORMAT, EXPORT_ERROR_PAPER, EXPORT_ERROR_TOO_LARGE, EXPORT_ERROR_DRAWING } ExportError;
