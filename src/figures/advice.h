#pragma once
#include "document/units.h"
#include "figures/figures.h"

/** The one answer in words, in the person's units: state first, then one action with one length. New strings, translated. */
typedef struct {
  char *headline;     /* at most two lines of the panel: "In the band. For a first flight move the battery 31 mm forward." */
  char *second;       /* "Limits 33 and 44 mm; now it balances at 40 mm."; "" when there is nothing to add */
  char *mark_figure;  /* "36", or "not yet" */
  char *mark_place;   /* "aft of the leading edge at station 40" */
  char *margin_figure;/* "9 %", or "wing alone", or "parts alone" while no structure weighs anything, or "not yet" */
  char *margin_sigma; /* "± 3", or "" */
  char *chord_text;   /* the same for a screen reader: "Balance at 30 % of MAC, wanted 24 to 34, neutral point 39 ± 3" */
  bool  has_mark, has_margin;
  const Piece *unweighed;   /* the first whose mass the headline asks for; NULL: it asks for none. Lent by the figures */
  const Solution *to_move;  /* whose part the headline asks to move into the band, or as far towards it as its rail goes; NULL: of none, or all
                               is in the band already. Lent by the figures */
} Advice;

/** At most the first mark's station is spoken of. */
Advice *advice_new  (const Figures *figures, Units units);
void    advice_free (Advice *advice);      /* NULL is fine */
