#pragma once
#include <gtk/gtk.h>
#include "app/node-edit.h"
#include "app/plan-store.h"
#include "app/session.h"
#include "drawing/hit.h"

G_BEGIN_DECLS

typedef struct Tool Tool;
typedef struct Pull Pull;
typedef struct _TrammelPointerPlate TrammelPointerPlate;
typedef struct _TrammelSheetField TrammelSheetField;

#define TRAMMEL_TYPE_SHEET_CANVAS (trammel_sheet_canvas_get_type ())
G_DECLARE_FINAL_TYPE (TrammelSheetCanvas, trammel_sheet_canvas, TRAMMEL, SHEET_CANVAS, GtkWidget)

/** The paper itself: paints the aeroplane from above and hands pointer and keys to the tool in hand. Holds where it is looked at from and
 *  what is being done just now; every fact is the session's. Signals, none with arguments:
 *    "view-changed"     zoom, place, size or look
 *    "pointer-changed"  where the pointer is; at most once a frame
 *    "hint-changed"     the sentence for the status line
 *    "tool-changed"
 *  and "edit-requested" (const char *text): the person wants the selection's first field in the panel; text is what was typed, may be "". */
TrammelSheetCanvas *trammel_sheet_canvas_new (TrammelSession *session);
/** What floats over the sheet; both outlive the canvas's use of them. */
void trammel_sheet_canvas_set_floating (TrammelSheetCanvas *self, TrammelPointerPlate *plate, TrammelSheetField *field);

TrammelSession      *trammel_sheet_canvas_session (TrammelSheetCanvas *self);      /* lent */
/** The plans beneath the sheet; never NULL, lent. */
TrammelPlanStore    *trammel_sheet_canvas_plan_store (TrammelSheetCanvas *self);
TrammelPointerPlate *trammel_sheet_canvas_plate   (TrammelSheetCanvas *self);      /* the plate beside the pointer; lent */
TrammelSheetField   *trammel_sheet_canvas_field   (TrammelSheetCanvas *self);      /* the field that opens over a figure; lent */

/* Seeing (sheet-zoom.c). */
const SheetView *trammel_sheet_canvas_view     (TrammelSheetCanvas *self);
void       trammel_sheet_canvas_set_view       (TrammelSheetCanvas *self, SheetView view);      /* at once; ends a glide and the fit to the window */
void       trammel_sheet_canvas_zoom           (TrammelSheetCanvas *self, double factor, double x, double y);   /* pixel (x, y) stays; a ratio > 0 */
void       trammel_sheet_canvas_zoom_middle    (TrammelSheetCanvas *self, double factor);      /* by a ratio > 0, about the window's middle */
void       trammel_sheet_canvas_pan            (TrammelSheetCanvas *self, double dx, double dy);                /* pixels to the right and down */
void       trammel_sheet_canvas_fit            (TrammelSheetCanvas *self, bool glide);
/** Whether there is a plan to be seen, and nothing drawn over it yet: then the whole sheet is the plan. */
bool       trammel_sheet_canvas_has_plan_alone (TrammelSheetCanvas *self);
void       trammel_sheet_canvas_fit_selection  (TrammelSheetCanvas *self);      /* glides; nothing without a selection */
/** Where not all of that box, mm, is in sight it comes to the middle: at the present zoom, or one at which it has room. */
void       trammel_sheet_canvas_bring_into_sight (TrammelSheetCanvas *self, Box box);
/** What is worked on of the plan in hand, mm: of its view the axis and, along that, what was traced there; of the sheet itself all of its
 *  picture. False where there is none. */
bool       trammel_sheet_canvas_work_extent   (TrammelSheetCanvas *self, Box *box);
void       trammel_sheet_canvas_true_size      (TrammelSheetCanvas *self);      /* glides to full size on this screen, about the middle */
/** px of the screen that are 1 mm of it, as the monitor says; 96 to the inch where it says nothing. */
double     trammel_sheet_canvas_true_scale     (TrammelSheetCanvas *self);
/** Whether its zoom is one that was chosen for the sheet as a whole, and not a hand's or one on its way somewhere. */
bool       trammel_sheet_canvas_is_fitted      (TrammelSheetCanvas *self);
/** Pans so that the selection is seen; nothing when it is already. */
void       trammel_sheet_canvas_reveal_selection (TrammelSheetCanvas *self);

/** What draw_sheet and sheet_hit want; all lent, for this moment (sheet-scene.c). */
SheetScene    trammel_sheet_canvas_scene   (TrammelSheetCanvas *self);
/** What tools draw over the sheet. Write, then trammel_sheet_canvas_refresh. */
SheetOverlay *trammel_sheet_canvas_overlay (TrammelSheetCanvas *self);
void          trammel_sheet_canvas_refresh (TrammelSheetCanvas *self);      /* paints it with the next frame */
/** Shows the plan about that place of the sheet, mm, enlarged in a corner, unless that is switched off; not finite: nothing is. */
void          trammel_sheet_canvas_magnify (TrammelSheetCanvas *self, Point place);
void          trammel_sheet_canvas_px      (GtkWidget *canvas, Point place, double px[2]);      /* where a place, mm, is on the canvas, pixels */

/** Snaps a place and shows the guides; as it is when snapping is off or `loose`. `id` (may be NULL) and `node` do not attract. */
Point trammel_sheet_canvas_snapped (TrammelSheetCanvas *self, Point place, const char *id, size_t node, bool loose);
void  trammel_sheet_canvas_clear_guides (TrammelSheetCanvas *self);      /* shows none */
/** The smallest step that keys move by: 1 mm or 1/32 in, in mm. */
double trammel_sheet_canvas_key_step (TrammelSheetCanvas *self);

/* The tool in hand, and what it says. */
void        trammel_sheet_canvas_set_tool (TrammelSheetCanvas *self, const char *word);
Tool       *trammel_sheet_canvas_tool     (TrammelSheetCanvas *self);      /* lent, until another is taken */
void        trammel_sheet_canvas_set_hint (TrammelSheetCanvas *self, const char *hint);     /* NULL: the tool's own */
const char *trammel_sheet_canvas_hint     (TrammelSheetCanvas *self);
void        trammel_sheet_canvas_set_part_class (TrammelSheetCanvas *self, const char *class_name);    /* the usual one of that class */
/** What the Part tool puts from now on: a part like this one, lent; NULL: as nothing were chosen. */
void        trammel_sheet_canvas_set_part_pattern (TrammelSheetCanvas *self, const Part *pattern);
/** The one chosen, else one of the first usual class that the aeroplane has not. A reference of the caller's. */
Part       *trammel_sheet_canvas_part_pattern (TrammelSheetCanvas *self);

/* The pull under way, if any; the canvas owns it. */
Pull *trammel_sheet_canvas_pull      (TrammelSheetCanvas *self);
void  trammel_sheet_canvas_take_pull (TrammelSheetCanvas *self, Pull *takes);      /* ends the one before */
void  trammel_sheet_canvas_end_pull  (TrammelSheetCanvas *self);        /* frees it */

/** The place on a line that was clicked last: where Insert puts a node. */
OutlineSpot *trammel_sheet_canvas_spot (TrammelSheetCanvas *self);
/** Takes back the last click of what the tool in hand has begun; false when nothing of it is unfinished. */
bool trammel_sheet_canvas_take_back (TrammelSheetCanvas *self);
/** Where the pointer is, mm; false when it is elsewhere. */
bool trammel_sheet_canvas_pointer (TrammelSheetCanvas *self, Point *place);

G_END_DECLS
