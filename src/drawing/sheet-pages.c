#include "trammel-config.h"
#include "drawing/sheet-pages.h"
#include <glib/gi18n-lib.h>
#include "drawing/flat-body.h"
#include "drawing/flat-pieces.h"
#include "drawing/paper.h"
#include "drawing/parts-sheet.h"
#include "drawing/template-sheet.h"
#include "drawing/wall-sheet.h"

struct SheetPages {
  const SheetPagesKind *kind;
  void *layout;
  char *title, *subject;
  char date[11];
};

SheetPages *
sheet_pages_of (const SheetPagesKind *kind, void *takes, const char *title, const char *subject)
{
  SheetPages *self = g_new (SheetPages, 1);

  *self = (SheetPages) { .kind = kind, .layout = takes, .title = g_strdup (title), .subject = g_strdup (subject) };
  return self;
}

void
sheet_pages_free (SheetPages *self)
{
  if (self == NULL)
    return;
  self->kind->free (self->layout);
  g_free (self->title);
  g_free (self->subject);
  g_free (self);
}

size_t
sheet_pages_count (const SheetPages *self)
{
  return self->kind->count (self->layout);
}

void
sheet_pages_size (const SheetPages *self, size_t page, double *width, double *height)
{
  self->kind->size (self->layout, page, width, height);
}

void
sheet_pages_draw (const SheetPages *self, size_t page, cairo_t *cr)
{
  self->kind->draw (self->layout, page, cr);
}

const char *
sheet_pages_title (const SheetPages *self)
{
  return self->title;
}

const char *
sheet_pages_subject (const SheetPages *self)
{
  return self->subject;
}

const char *
sheet_pages_date (const SheetPages *self)
{
  return self->date;
}

static size_t
wall_count (const void *layout)
{
  return 1;
}

static void
wall_size (const void *layout, size_t page, double *width, double *height)
{
  wall_sheet_layout_size (layout, width, height);
}

static void
wall_draw (const void *layout, size_t page, cairo_t *cr)
{
  wall_sheet_draw (layout, cr);
}

static void
wall_free (void *takes)
{
  wall_sheet_layout_free (takes);
}

static SheetPages *
wall_pages (const Figures *figures, const ExportOptions *options, const Paper *paper, const char *day, GError **error)
{
  static const SheetPagesKind kind = { .count = wall_count, .size = wall_size, .draw = wall_draw, .free = wall_free };
  const WallSheet sheet = {
    .figures = figures, .units = options->units, .paper = paper, .portrait = options->portrait, .date = day };
  WallSheetLayout *layout = wall_sheet_layout_new (&sheet);

  if (layout != NULL)
    return sheet_pages_of (&kind, layout, wall_sheet_title (&sheet), _("Wall sheet with the balance mark"));
  g_set_error (error, EXPORT_ERROR, EXPORT_ERROR_DRAWING, _("The wall sheet has no room on %s paper; take a larger one."), _(paper->title));
  return NULL;
}

/* An SVG is for cutting out of one piece: it is never tiled. */
static SheetPages *
template_pages (const Figures *figures, const ExportOptions *options, const Paper *paper, const char *day, GError **error)
{
  g_autoptr (GPtrArray) pieces = flat_pieces_of (figures, options->units, options->halves);
  const char *title = wall_sheet_title (&(WallSheet) { .figures = figures });
  const TemplateSheet sheet = {
    .pieces = pieces, .title = title, .paper = paper, .portrait = options->portrait, .one_page = options->one_page || options->format == EXPORT_SVG,
    .read_short = options->read_short, .read_long = options->read_long, .date = day };
  TemplateLayout *layout;

  if (pieces->len > 0)      /* without a wing there is nothing to cut out */
    flat_body_add (pieces, figures);
  layout = template_layout_new (&sheet, error);

  return layout != NULL ? sheet_pages_of (template_pages_kind (), layout, title, _("Template at full size")) : NULL;
}

static size_t
parts_count (const void *layout)
{
  return parts_sheet_layout_count (layout);
}

static void
parts_size (const void *layout, size_t page, double *width, double *height)
{
  parts_sheet_layout_size (layout, width, height);
}

static void
parts_draw (const void *layout, size_t page, cairo_t *cr)
{
  parts_sheet_draw (layout, page, cr);
}

static void
parts_free (void *takes)
{
  parts_sheet_layout_free (takes);
}

static SheetPages *
parts_pages (const Figures *figures, const ExportOptions *options, const Paper *paper, const char *day)
{
  static const SheetPagesKind kind = { .count = parts_count, .size = parts_size, .draw = parts_draw, .free = parts_free };
  const WallSheet sheet = { .figures = figures, .units = options->units, .paper = paper, .portrait = true, .date = day };

  return sheet_pages_of (&kind, parts_sheet_layout_new (&sheet), wall_sheet_title (&sheet),
                         parts_sheet_subject ());
}

/* `day` is that of the aeroplane's last change, which every sheet shows. */
static SheetPages *
pages_on (const Figures *figures, const ExportOptions *options, const Paper *paper, const char *day, GError **error)
{
  switch (options->sheet)
    {
    case EXPORT_TEMPLATE:    return template_pages (figures, options, paper, day, error);
    case EXPORT_PARTS_SHEET: return parts_pages (figures, options, paper, day);
    default:                 return wall_pages (figures, options, paper, day, error);
    }
}

SheetPages *
sheet_pages_new (const Figures *figures, const ExportOptions *options, GError **error)
{
  const AeroplaneTraits traits = aeroplane_traits (figures->aeroplane);
  const Paper *paper = paper_find (options->paper);

  if (paper == NULL)
    {
      g_autofree char *known = paper_words (", ");

      /* Translators: behind the colon a list of words that stay as they are, "a4, a3, letter" */
      g_set_error (error, EXPORT_ERROR, EXPORT_ERROR_PAPER, _("No paper is called “%s”. Known are: %s."), options->paper, known);
      return NULL;
    }
  SheetPages *self = pages_on (figures, options, paper, traits.changed, error);
  if (self != NULL)
    g_strlcpy (self->date, traits.changed, sizeof self->date);
  return self;
}
