#pragma once
#include "document/units.h"
#include "figures/figures.h"

/** One thing that a figure was made of. */
typedef struct {
  char *label;          /* "Mean chord (MAC)", a part's name */
  char *text;           /* "110 mm", "27 g at 124 mm", or words */
  double value;         /* the first number that text shows, unrounded: mm, mm², g, kg cm², %, m/s as the text's kind; NAN for words */
  double second;        /* the second one; NAN without */
} ExplanationInput;

/** How one figure of this aeroplane came about, in the person's units, translated. */
typedef struct {
  ExplainedFigure what;
  char *title;          /* "Static margin", "Tail volume of “tail”" */
  char *formula;        /* in words or in signs that the inputs' labels name */
  ExplanationInput *inputs;  size_t input_count;      /* at least one */
  char *result;         /* "9 % ± 4" */
  double value;         /* the same, unrounded, in the units of the figures */
  char *source;         /* the published one, or "Common practice, no source." */
  char *limits;         /* where it holds, one or two sentences */
  char *owed;           /* what the deviation is owed to, a sentence; NULL without a known deviation */
} Explanation;

/** What a figure is about. */
typedef enum { ABOUT_AEROPLANE, ABOUT_SURFACE, ABOUT_RAIL, ABOUT_MARK, ABOUT_CONTROL, ABOUT_PART } ExplanationAbout;
/** Which of these one figure is about; what < EXPLAIN_COUNT. */
ExplanationAbout explanation_about (ExplainedFigure what);

/** Explains one figure from what the figures hold.
 *  id       the surface or part it is about, or the place of its mark or control among the figures', as decimal digits; NULL for one of
 *           the whole aeroplane
 *  returns  NULL when the figure cannot be had (a note says why) or there is no such thing */
Explanation *explanation_new  (const Figures *figures, ExplainedFigure what, const char *id, Units units);
void         explanation_free (Explanation *self);     /* NULL is fine */
G_DEFINE_AUTOPTR_CLEANUP_FUNC (Explanation, explanation_free)

/** Every explanation that can be had, surface by surface and so on, in the order of the report: a new array of Explanation. */
GPtrArray *explanations_of (const Figures *figures, Units units);
