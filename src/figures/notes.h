#pragma once
#include "figures/figures.h"

/** The notes of one set of figures, an array of Note. Their texts are shared, not copied: text is a GRefString. */
GPtrArray *notes_new (void);

/** Adds one. format and what follows make a whole, translated sentence; piece may be NULL. */
void notes_add (GPtrArray *notes, NoteSeverity severity, const Piece *piece, const char *format, ...) G_GNUC_PRINTF (4, 5);
/** The same for an error in the sense of `check`. */
void notes_add_problem (GPtrArray *notes, const Piece *piece, const char *format, ...) G_GNUC_PRINTF (3, 4);

/** Says of all notes from this place on which figure they speak of. */
void notes_explain (GPtrArray *notes, guint from, ExplainedFigure what);

/** Adds all of `more`, sharing the texts. */
void notes_append (GPtrArray *notes, const GPtrArray *more);
/** The gravest first, errors before others of their severity, else as they were added. */
void notes_sort (GPtrArray *notes);
