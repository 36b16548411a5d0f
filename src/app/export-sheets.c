#include "trammel-config.h"
#include "app/export-sheets.h"
#include <glib/gi18n-lib.h>

static const ExportFormatWords
  png  = { EXPORT_PNG,  N_("Picture (PNG)"),  ".png",  N_("PNG pictures") },
  pdf  = { EXPORT_PDF,  N_("Document (PDF)"), ".pdf",  N_("PDF documents") },
  svg  = { EXPORT_SVG,  N_("Drawing (SVG)"),  ".svg",  N_("SVG drawings") },
  dxf  = { EXPORT_DXF,  N_("Drawing (DXF)"),  ".dxf",  N_("DXF drawings") },
  csv  = { EXPORT_CSV,  N_("List (CSV)"),     ".csv",  N_("Comma-separated lists") },
  json = { EXPORT_JSON, N_("Figures (JSON)"), ".json", N_("JSON figures") };

enum { MOST_FORMATS = 6 };
static const ExportFormatWords *const formats[EXPORT_SHEET_COUNT][MOST_FORMATS] = {
  [EXPORT_WALL_SHEET]  = { &png, &pdf, &svg, &csv, &json },
  [EXPORT_TEMPLATE]    = { &pdf, &svg, &png },
  [EXPORT_PARTS_SHEET] = { &pdf, &png, &svg, &csv },
  [EXPORT_CUTTING]     = { &svg, &dxf },
};

const ExportFormatWords *
export_sheet_format (ExportSheet sheet, guint nth)
{
  return nth < MOST_FORMATS ? formats[sheet][nth] : NULL;
}

guint
export_sheet_format_place (ExportSheet sheet, ExportFormat format)
{
  for (guint i = 0; export_sheet_format (sheet, i) != NULL; i++)
    if (export_sheet_format (sheet, i)->format == format)
      return i;
  return 0;
}

static bool
sheet_has_format (ExportSheet sheet, ExportFormat format)
{
  const ExportFormatWords *words = export_sheet_format (sheet, export_sheet_format_place (sheet, format));

  return words->format == format;
}

char *
export_sheet_path (const ExportOptions *options, const char *typed)
{
  ExportFormat format;

  return export_format_of (typed, &format) && sheet_has_format (options->sheet, format) ? g_strdup (typed)
         : export_path_with (typed, options->format);
}

/* As on the command line. */
const char *
export_sheet_word (ExportSheet sheet)
{
  static const char *const words[EXPORT_SHEET_COUNT] = { [EXPORT_TEMPLATE] = "template", [EXPORT_PARTS_SHEET] = "parts", [EXPORT_CUTTING] = "cutting" };

  return words[sheet];
}

bool
export_is_drawn (const ExportOptions *options)
{
  return options->format != EXPORT_CSV && options->format != EXPORT_JSON;
}

bool
export_can_be_printed (const ExportOptions *options)
{
  return options->sheet != EXPORT_CUTTING && export_is_drawn (options);
}

/* Of a template. Its drawing is one page as large as it needs, whatever the paper. */
static guint
template_choices (const ExportOptions *options)
{
  const guint paper = options->format == EXPORT_SVG ? 0 : CHOICE_PAPER | CHOICE_PRINTER | (options->one_page ? 0 : CHOICE_ORIENTATION);

  return CHOICE_HALVES | CHOICE_LENGTHS | paper;
}

/* Lists have no paper, and figures are in millimetres and grams always. The pages of the parts sheet stand upright. */
guint
export_choices_that_matter (const ExportOptions *options)
{
  const guint dots = options->format == EXPORT_PNG ? CHOICE_RESOLUTION : 0;

  if (!export_is_drawn (options))
    return options->format == EXPORT_CSV ? CHOICE_LIST : 0;
  switch (options->sheet) {
  case EXPORT_TEMPLATE: return template_choices (options) | dots;
  case EXPORT_CUTTING:  return CHOICE_HALVES | CHOICE_KERF | dots;
  case EXPORT_PARTS_SHEET: return CHOICE_PAPER | CHOICE_LENGTHS | CHOICE_MASSES | dots;
  default:              return CHOICE_PAPER | CHOICE_ORIENTATION | CHOICE_LENGTHS | CHOICE_MASSES | dots;
  }
}
