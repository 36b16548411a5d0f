#pragma once
#include <glib.h>
#include "drawing/export.h"

/** What the dialog offers of each sheet, in its order, and which of the choices have an effect. */

/** A format as people read of it. */
typedef struct {
  ExportFormat format;
  const char *title;        /* "Document (PDF)"; marked for translation, as `kind` is */
  const char *ending;       /* ".pdf" */
  const char *kind;         /* "PDF documents" */
} ExportFormatWords;

/** A sheet's formats, the usual one first; NULL from `nth` on that there is none. */
const ExportFormatWords *export_sheet_format (ExportSheet sheet, guint nth);
/** Where that format stands among the sheet's; 0 when it has it not. */
guint export_sheet_format_place (ExportSheet sheet, ExportFormat format);
/** The path that is meant by what was typed: an ending of a format that the sheet has stands, and tells the format; another of ours goes for that of
 *  the format that was chosen, and where there is none it is added. The caller's. */
char *export_sheet_path (const ExportOptions *options, const char *typed);
/** What stands behind the document's name in a file's: "template"; NULL for the wall sheet. */
const char *export_sheet_word (ExportSheet sheet);

typedef enum {
  CHOICE_LIST = 1 << 0, CHOICE_PAPER = 1 << 1, CHOICE_ORIENTATION = 1 << 2, CHOICE_HALVES = 1 << 3, CHOICE_RESOLUTION = 1 << 4,
  CHOICE_LENGTHS = 1 << 5, CHOICE_MASSES = 1 << 6, CHOICE_KERF = 1 << 7, CHOICE_PRINTER = 1 << 8
} ExportChoice;
/** The choices that have an effect on what these options make: a sum of ExportChoice. */
guint export_choices_that_matter (const ExportOptions *options);
/** Whether it is drawn: pages, not a list or figures. */
bool  export_is_drawn (const ExportOptions *options);
/** Whether a printer can have it: all pages; files for cutting are none. */
bool  export_can_be_printed (const ExportOptions *options);
