#pragma once
#include <glib.h>
#include "document/units.h"
#include "figures/report.h"

typedef enum { EXPORT_PNG, EXPORT_PDF, EXPORT_SVG, EXPORT_CSV, EXPORT_JSON, EXPORT_DXF } ExportFormat;

typedef enum { EXPORT_WALL_SHEET, EXPORT_TEMPLATE, EXPORT_PARTS_SHEET, EXPORT_CUTTING, EXPORT_SHEET_COUNT } ExportSheet;
/** Which halves of a wing or a tail a template and files for cutting hold. */
typedef enum { EXPORT_BOTH_HALVES, EXPORT_STARBOARD, EXPORT_PORT, EXPORT_HALVES_COUNT } ExportHalves;

typedef struct {
  ExportFormat format;
  ExportSheet sheet;       /* a DXF is a file for cutting whatever stands here */
  Units units;
  char paper[16];          /* its word: "a4", "letter"; see paper.h */
  bool portrait;           /* a parts sheet stands upright whatever this says */
  bool one_page;           /* a template: on one page as large as it needs, whatever the paper */
  ExportHalves halves;
  double read_short, read_long;     /* template: how long the printer at hand draws 100 mm along its paper's short and long side, mm, 90..110 */
  double kerf;             /* files for cutting: how wide the cut is, mm, 0..2 */
  size_t page;             /* PNG and SVG in memory: which one; the last where there are fewer */
  int dpi;                 /* PNG: 30..1200 */
  ReportList list;         /* CSV: which one */
} ExportOptions;

/** Wall sheet (files for cutting for a DXF), A4 landscape, 150 dpi, metric, the format by the file's ending (EXPORT_PNG for none it knows). */
ExportOptions export_default_options (const char *path);
/** The format of a file name by its ending; false for none of ours. */
bool export_format_of (const char *path, ExportFormat *format);
/** `path` with the ending of that format: in place of another of ours, or added. The caller's. */
char *export_path_with (const char *path, ExportFormat format);
/** Paths of files that are there and that such an export to `path` would replace; char *, freed with the array. The caller's.
 *  pages  how many the sheet has; 0 where that is not known: then every file that could be one of its pages */
GPtrArray *export_paths_in_the_way (const ExportOptions *options, const char *path, size_t pages);
/** Paper by name, landscape size in mm; false for one it does not know. */
bool export_paper_size (const char *name, double *width_mm, double *height_mm);

/** Writes the sheet (or list, or figures) atomically to `path`; several pages of a PNG or an SVG to path-1 and so on, once all of them are made.
 *  PNG records its resolution. The same document gives the same bytes:
 *  no clock is read. On an error the file at `path` is as it was, and the sentence says what and where:
 *    EXPORT_ERROR_PAPER      a paper that is not known
 *    EXPORT_ERROR_FORMAT     resolution or kerf out of range; a format that is none, or not one of that sheet's
 *    EXPORT_ERROR_TOO_LARGE  a picture of more than 20000 px a side
 *    EXPORT_ERROR_DRAWING    no memory, a paper on which nothing finds room, or nothing to cut
 *    of the writer           a folder that cannot be written */
bool export_write (const Figures *figures, const ExportOptions *options, const char *path, GError **error);
/** A file that is ready to be written. */
typedef struct { char *path; GBytes *bytes; } ExportFile;
/** All files of an export, in memory: ExportFile, freed with the array. NULL and the error on failure. */
GPtrArray *export_files (const Figures *figures, const ExportOptions *options, const char *path, GError **error);
/** Paths of those that would replace a file that is there; const char *, lent by `files`. The caller's. */
GPtrArray *export_files_in_the_way (const GPtrArray *files);
/** Writes them, each atomically; what fails ends it. */
bool       export_files_write (const GPtrArray *files, GError **error);
/** One page, list or set of figures in memory. */
GBytes *export_bytes (const Figures *figures, const ExportOptions *options, GError **error);

#define EXPORT_ERROR (export_error_quark ())
GQuark export_error_quark (void);     /* the domain of an ExportError */
typedef enum { EXPORT_ERROR_FORMAT, EXPORT_ERROR_PAPER, EXPORT_ERROR_TOO_LARGE, EXPORT_ERROR_DRAWING } ExportError;
