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
/** Whether something must be changed before the aeroplane is built: what NOTE_ACT says, what has no room where it stands, a lead that does
 *  not reach. A motor too far out of its cowl may stay there. */
bool note_needs_change (const Note *note);
/** The gravest first, within a severity what needs a change, errors before others of their severity, else as they were added. */
void notes_sort (GPtrArray *notes);
