#pragma once
#include "drawing/lettering.h"
#include "drawing/line-kind.h"
#include "drawing/sheet-places.h"

enum { SHEET_TAKEN_ROOM = 4096 };

/** One drawing of the sheet under way: the scene's parts at hand, the one lettering, and the boxes that words must not cover (px). */
typedef struct {
  cairo_t *cr;
  const SheetScene *scene;
  const Look *look;
  const SheetView *view;
  const Figures *figures;
  const Aeroplane *aeroplane;
  const Selection *selection;
  Lettering lettering;
  Box taken[SHEET_TAKEN_ROOM];
  size_t taken_count;
} SheetDraft;

void sheet_take    (SheetDraft *draft, Box px);            /* words keep off it from now on; beyond SHEET_TAKEN_ROOM forgotten */
bool sheet_is_free (const SheetDraft *draft, Box px);      /* whether it meets nothing that was taken */
/** Puts a word with a halo where it is free and inside the window, trying each place in turn; which one it took, or -1 for none. */
int  sheet_put_word (SheetDraft *draft, const Letters tries[], size_t count);
/** The same for a word that must be said: when no place is free the first is taken, pushed into the window and put on a plate. */
void sheet_put_word_anyway (SheetDraft *draft, const Letters tries[], size_t count);

/* Each paints one layer of the sheet. */
void sheet_draw_grid    (const SheetDraft *draft);      /* fine and coarse, both ways */
void sheet_draw_datum   (const SheetDraft *draft);      /* across the window at x = 0 */
void sheet_draw_centre_line (const SheetDraft *draft);  /* a little beyond the shapes; all the way on an empty sheet */
void sheet_draw_shapes  (const SheetDraft *draft);      /* surfaces with their hinge lines, bodies with their formers */
void sheet_draw_construction (const SheetDraft *draft); /* of the selected reference wing's mean chord */
void sheet_draw_leads   (SheetDraft *draft);
void sheet_draw_lead_points (const SheetDraft *draft, const Lead *lead);      /* what a hand may take hold of on it */
void sheet_draw_parts   (const SheetDraft *draft);      /* with rails and the selected one's proposal */
void sheet_draw_signs   (const SheetDraft *draft);      /* band, MAC, neutral point, marks, balance point */
void sheet_draw_words   (SheetDraft *draft);      /* names of all these, where they are free */
void sheet_draw_dimensions (SheetDraft *draft);   /* and takes their figures' places */
/** Brackets beside the body, named, while a bay or a part that may be in one is selected, or parts are arranged. */
void sheet_draw_bays    (SheetDraft *draft);
/** Whether the bays' layer names that former: it bounds one of them, and parts are arranged. */
bool sheet_bays_name_former (const SheetDraft *draft, const Body *body, const NamedPlace *former);
void sheet_draw_hatch   (SheetDraft *draft);      /* the hatch to cut, while the battery is selected */
void sheet_draw_faults  (SheetDraft *draft);      /* loose ends, crossings */
void sheet_draw_nodes   (const SheetDraft *draft);      /* and handles and grips of the one thing selected; not on paper */
void sheet_draw_named_places (SheetDraft *draft); /* ribs and formers with their names, while they are being put */
void sheet_draw_print   (const SheetDraft *draft);      /* each outline over its own print; there is a plan that is worked on */
void sheet_draw_overlay (SheetDraft *draft);      /* what is being done; nothing without an overlay */
void sheet_draw_offer   (SheetDraft *draft);      /* where parts would stand that are arranged otherwise; nothing without an offer */
void sheet_draw_trace      (const SheetDraft *draft, const SheetTrace *trace);             /* what was found, and ahead of it the proposal */
void sheet_draw_departures (const SheetDraft *draft, const SheetDepartures *departures);   /* bars across where it is far off its line */
void sheet_draw_doubt      (const SheetDraft *draft, const SheetDoubt *doubt);             /* dashes in the colour of warnings */

/** The plan about a place, mm, four times as large, in a round window in the corner away from it. There is a plan. */
void sheet_draw_magnifier (const SheetDraft *draft, Point place);

/** Takes the places of everything that a word must not cover. */
void sheet_take_all (SheetDraft *draft);
