#pragma once
#include <poppler.h>
#include <string.h>
#include "drawing/export-sheet.h"
#include "drawing/template-sheet.h"
#include "support/run-suite.h"

/** Pieces for tests of templates, their pages, and what other programs read of them. mm */

static const double mm_in_inch = 25.4, true_to_size = 0.01;

static inline void
free_piece (gpointer data)
{
  flat_piece_free (data);
}

/* Half a wing as wide as a sheet is long, with an elliptic tip, a hinge line, stations, the mark and its limits, a servo. */
static inline FlatPiece *
half_wing (void)
{
  FlatPiece *piece = flat_piece_new ("Wing, starboard", "Developed flat: its panels are laid into one plane at 5° dihedral each.");
  const Segment edge[] = {
    segment_line ((Point) { 260, 66 }), segment_arc ((Point) { 260, 106 }, 60, 40, (Point) { 320, 106 }),
    segment_curve ((Point) { 320, 130 }, (Point) { 290, 152 }, (Point) { 260, 156 }), segment_line ((Point) { 0, 168 }) };

  flat_piece_add_line (piece, FLAT_CUT, true, (Point) { 0, 56 }, edge, G_N_ELEMENTS (edge));
  flat_piece_add_straight (piece, FLAT_HINGE, (Point) { 40, 140 }, (Point) { 240, 132 });
  flat_piece_add_straight (piece, FLAT_BEVEL, (Point) { 40, 141 }, (Point) { 240, 133 });
  for (int y = 40; y <= 240; y += 40)
    flat_piece_add_straight (piece, FLAT_STATION, (Point) { y, 58 }, (Point) { y, 160 });
  flat_piece_add_straight (piece, FLAT_CENTRE, (Point) { 0, 50 }, (Point) { 0, 174 });
  flat_piece_add_straight (piece, FLAT_MARK, (Point) { 34, 94 }, (Point) { 46, 94 });
  flat_piece_add_straight (piece, FLAT_LIMIT, (Point) { 34, 89 }, (Point) { 46, 89 });
  flat_piece_add_straight (piece, FLAT_LIMIT, (Point) { 34, 99 }, (Point) { 46, 99 });
  flat_piece_add_box (piece, FLAT_ROOM, (Box) { { 150, 100 }, { 173, 112 } });
  flat_piece_add_words (piece, FLAT_MARK, 2.5, (Point) { 50, 95 }, "balance mark, 36 mm");
  flat_piece_add_word (piece, &(FlatWord) { FLAT_HINGE, (char *) "bevel here", { 140, 134 }, 2, 0.5, -2.3, 0 });
  return piece;
}

static inline FlatPiece *
plate (const char *name, double width, double height)
{
  FlatPiece *piece = flat_piece_new (name, NULL);

  flat_piece_add_box (piece, FLAT_CUT, (Box) { { 0, 0 }, { width, height } });
  flat_piece_add_box (piece, FLAT_OPENING, (Box) { { 6, 6 }, { width / 2, height / 2 } });
  return piece;
}

static inline GPtrArray *
usual_pieces (void)
{
  GPtrArray *pieces = g_ptr_array_new_with_free_func (free_piece);
  FlatPiece *starboard = half_wing ();

  g_ptr_array_add (pieces, starboard);
  g_ptr_array_add (pieces, flat_piece_mirrored (starboard, "Wing, port"));
  g_ptr_array_add (pieces, plate ("Tail, starboard", 120, 70));
  g_ptr_array_add (pieces, plate ("Fin", 74, 82));
  g_ptr_array_add (pieces, plate ("Hatch", 40, 24));
  return pieces;
}

static inline TemplateSheet
sheet_of (const GPtrArray *pieces, const char *paper)
{
  return (TemplateSheet) { .pieces = pieces, .title = "Saltmarsh Racer", .paper = paper_find (paper), .read_short = 100, .read_long = 100,
                           .date = "2026-11-25" };
}

static inline SheetPages *
pages_of (const TemplateSheet *sheet)
{
  GError *error = NULL;
  TemplateLayout *layout = template_layout_new (sheet, &error);

  ck_assert_msg (layout != NULL, "%s", error ? error->message : "");
  return sheet_pages_of (template_pages_kind (), layout, sheet->title, "Template");
}

static inline SheetPages *
usual_pages (const char *paper, bool portrait, bool one_page)
{
  g_autoptr (GPtrArray) pieces = usual_pieces ();
  TemplateSheet sheet = sheet_of (pieces, paper);

  sheet.portrait = portrait;
  sheet.one_page = one_page;
  return pages_of (&sheet);
}

static inline PopplerDocument *
pdf_of (const SheetPages *pages)
{
  g_autoptr (GBytes) bytes = sheet_pdf (pages, NULL);
  PopplerDocument *document = poppler_document_new_from_bytes (bytes, NULL, NULL);

  ck_assert_ptr_nonnull (document);
  ck_assert_uint_eq (poppler_document_get_n_pages (document), sheet_pages_count (pages));
  return document;
}

/* What a reader copies out of the page, with plain blanks. */
static inline char *
words_of (PopplerDocument *document, size_t page)
{
  PopplerPage *read = poppler_document_get_page (document, (int) page);
  g_autofree char *text = poppler_page_get_text (read);
  g_auto (GStrv) parts = g_strsplit (text, "\u00A0", -1);

  g_object_unref (read);
  return g_strjoinv (" ", parts);
}

/* ISO 216 and ANSI/ASME Y14.1, from memory; Letter and Tabloid are 8 1/2 × 11 and 11 × 17 in. */
static const struct { const char *paper; bool portrait; double width, height; } papers[] = {
  { "a4", false, 297, 210 }, { "a4", true, 210, 297 }, { "a3", false, 420, 297 }, { "a2", true, 420, 594 },
  { "letter", false, 11 * 25.4, 8.5 * 25.4 }, { "letter", true, 8.5 * 25.4, 11 * 25.4 }, { "tabloid", false, 17 * 25.4, 11 * 25.4 },
  { "ansi-c", true, 17 * 25.4, 22 * 25.4 } };
