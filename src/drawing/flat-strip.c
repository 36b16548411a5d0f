#include "drawing/flat-aids.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "drawing/wall-sheet-pen.h"
#include "figures/balance-marks.h"
#include "geometry/section-shape.h"

static const double half_width = 20, behind = 15;      /* of the strip; how far it goes on behind the last line, mm */
static const double inset = 1.5, line = 3.5;

/* A strip under way. */
typedef struct { FlatPiece *piece; const MarkFigures *mark; double thickness; /* share of the chord; 0 not known */ } StripDraft;

/* From the leading edge along a face to a place that far aft of it along the chord. */
static double
along_face (const StripDraft *draft, double aft)
{
  return draft->thickness > 0 ? draft->mark->chord_mm * section_face_length (draft->thickness, fmin (1, aft / draft->mark->chord_mm)) : aft;
}

/* A line across both faces, and its words above it as far from the mark's as they need. */
static void
add_line (const StripDraft *draft, FlatPurpose purpose, double aft, const char *words)
{
  const double length = along_face (draft, aft), mark = along_face (draft, draft->mark->target_mm);
  const double words_at = aft < draft->mark->target_mm ? fmin (length, mark - line) : aft > draft->mark->target_mm ? fmax (length, mark + line) : length;

  if (!(aft > 0 && aft < draft->mark->chord_mm))
    return;
  for (int face = -1; face <= 1; face += 2)
    {
      flat_piece_add_straight (draft->piece, purpose, (Point) { -half_width, face * length }, (Point) { half_width, face * length });
      flat_piece_add_words (draft->piece, purpose, caps_small, (Point) { -half_width + inset, face * words_at - 0.8 }, words);
    }
}

static void
add_word (const StripDraft *draft, FlatPurpose purpose, double y, const char *text)
{
  flat_piece_add_word (draft->piece, &(FlatWord) { .purpose = purpose, .text = (char *) text, .at = { 0, y }, .caps = caps_small, .across = 0.5 });
}

static char *
remark_of (const StripDraft *draft, Units units, double percent)
{
  g_autofree char *length = paper_length (units, draft->mark->target_mm), *thick = units_number_exact (percent);

  if (!(draft->thickness > 0))
    return g_strdup_printf (_("Fold it over the leading edge. The wing's thickness is not given, so lengths are flat: check that the mark lies %s "
                              "aft of the leading edge, along the chord."), length);
  return g_strdup_printf (_("Fold it over the leading edge. Lengths follow the faces of an even section %s %% thick, for a mark %s aft of the "
                            "leading edge along the chord."), thick, length);
}

FlatPiece *
flat_strip_of (const Figures *figures, Units units)
{
  StripDraft draft = { .mark = balance_mark_on_wing (figures) };

  if (!draft.mark)
    return NULL;
  draft.thickness = figures->reference->surface->thickness > 0 ? figures->reference->surface->thickness / 100 : 0;
  const double last = fmin (draft.mark->chord_mm, fmax (draft.mark->target_mm, draft.mark->aft_mm)), end = along_face (&draft, last) + behind;
  g_autofree char *station = paper_length (units, draft.mark->station_mm);
  /* Translators: a station: "Marking strip for station 40 mm" */
  g_autofree char *name = g_strdup_printf (_("Marking strip for station %s"), station), *remark = remark_of (&draft, units, figures->reference->surface->thickness);
  draft.piece = flat_piece_new (name, remark);
  flat_piece_add_box (draft.piece, FLAT_CUT, (Box) { { -half_width, -end }, { half_width, end } });
  flat_piece_add_straight (draft.piece, FLAT_CENTRE, (Point) { -half_width, 0 }, (Point) { half_width, 0 });
  add_word (&draft, FLAT_CENTRE, -0.8, _("leading edge, fold here"));
  add_word (&draft, FLAT_CENTRE, -end + line, _("upper face"));
  add_word (&draft, FLAT_CENTRE, end - inset, _("lower face"));
  add_line (&draft, FLAT_MARK, draft.mark->target_mm, _("balance mark"));
  add_line (&draft, FLAT_LIMIT, draft.mark->forward_mm, _("forward limit"));
  add_line (&draft, FLAT_LIMIT, draft.mark->aft_mm, _("aft limit"));
  return draft.piece;
}
