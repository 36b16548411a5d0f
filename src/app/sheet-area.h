#pragma once
#include <gtk/gtk.h>
#include "app/plan-store.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_SHEET_AREA (trammel_sheet_area_get_type ())
G_DECLARE_FINAL_TYPE (TrammelSheetArea, trammel_sheet_area, TRAMMEL, SHEET_AREA, GtkWidget)

/** The middle of the window: rulers, sheet, side view, tools column and status line. Turns pointer and keys into changes; holds no copy
 *  of any fact.
 *  Brings its own actions into the window: group "sheet" (tool, zoom-in, zoom-out, fit-sheet, fit-selection, true-size, snapping, …). */
GtkWidget *trammel_sheet_area_new  (TrammelSession *session);

/* Besides, a signal: "edit-requested" (const char *text): the person pressed Return or began to type on a selection that has its
 * fields in the panel; text is what was typed, may be "". */

/** Tools by word: "select", "move-sheet", "outline", "part", "rail", "balance-mark", "dimension". */
void        trammel_sheet_area_set_tool (TrammelSheetArea *self, const char *tool);
const char *trammel_sheet_area_tool     (TrammelSheetArea *self);      /* the word of the one in hand; lent */
/** A part like the one that the Part tool puts, lent; the panel chooses it. */
void        trammel_sheet_area_set_part_pattern (TrammelSheetArea *self, const Part *pattern);
void        trammel_sheet_area_fit      (TrammelSheetArea *self);      /* zooms so that all that is drawn has room, at once */
/** The plans beneath the sheet; lent. */
TrammelPlanStore *trammel_sheet_area_plan_store (TrammelSheetArea *self);
/** Brings the plan in hand into view where nothing else is drawn; it stays so while a strip slides in above it. */
void        trammel_sheet_area_show_plan (TrammelSheetArea *self);
/** Takes the Plan tool with its first step that makes sense: a known length for a picture, a view where the plan is true to size. */
void        trammel_sheet_area_begin_plan (TrammelSheetArea *self);
/** Hands on to the sheet a key that the focused widget had no use for; when the sheet has, it gets the keyboard. Whether it had. */
bool        trammel_sheet_area_hand_on  (TrammelSheetArea *self, GtkEventControllerKey *keys);
void        trammel_sheet_area_focus    (TrammelSheetArea *self);      /* puts the keyboard on the sheet */
/** Puts the keyboard on the tool in hand; false when it cannot be. And whether it is there. */
bool        trammel_sheet_area_focus_tools      (TrammelSheetArea *self);
bool        trammel_sheet_area_tools_have_focus (TrammelSheetArea *self);      /* whether the keyboard is among the tools */
/** The same of the plan's strip: false, too, while it is not shown. */
bool        trammel_sheet_area_focus_plan       (TrammelSheetArea *self);
bool        trammel_sheet_area_plan_has_focus   (TrammelSheetArea *self);      /* whether the keyboard is in that strip */
/** Where a pasted thing goes when nothing better is known: the middle of what is seen, mm. */
Point       trammel_sheet_area_middle   (TrammelSheetArea *self);
/** Takes back the last click of what the tool in hand has begun; false when nothing of it is unfinished. */
bool        trammel_sheet_area_take_back (TrammelSheetArea *self);
/** Brings the selection into view if it is outside (after undo). */
void        trammel_sheet_area_reveal_selection (TrammelSheetArea *self);

G_END_DECLS
