#pragma once
#include "app/grip.h"
#include "app/sheet-canvas.h"

/** A pull: a grip under way, from the press to the release, with snapping, guides, the plate beside the pointer and values typed into it.
 *  One undo step when it ends, none when it is put back. The canvas owns it (trammel_sheet_canvas_take_pull) and it ends itself there. */

/** How it is pulled just now. */
typedef struct { bool straight, loose; } PullManner;
/** The widget over which it happens and how mm become its px. */
typedef struct { GtkWidget *widget; void (*px) (GtkWidget *widget, Point place, double px[2]); } PullGround;

/** Begins; takes the grip. `pointer` is where the hand is, mm; the thing keeps its distance from it. */
Pull *pull_new  (TrammelSheetCanvas *sheet, Grip *takes, PullGround ground, Point pointer);
/** The same over the sheet itself; the canvas holds it then. */
Pull *pull_begin_on_sheet (TrammelSheetCanvas *sheet, Grip *takes, Point pointer);
void  pull_free (Pull *self);                     /* ends it without settling; NULL is fine */
/** Names the step otherwise than the grip does: "Add Battery". */
void  pull_set_label (Pull *self, const char *label);
/** The pointer has come there. Does nothing while a value is being typed. */
void  pull_to   (Pull *self, Point pointer, PullManner manner);
/** The button is up: one step. While a value is being typed the step waits for it. */
void  pull_drop (Pull *self);
/** Puts everything back. */
void  pull_cancel (Pull *self);
/** Opens the field in the plate with the text typed. */
void  pull_type (Pull *self, const char *text);
/** Ends it because the hand went elsewhere: what was typed counts where it is understood. */
void  pull_accept (Pull *self);
bool  pull_is_typing (const Pull *self);      /* whether a value is being typed */
/** Whether it happens in the side view, where places are x and z. */
bool  pull_is_of_side (const Pull *self);
/** Where the thing is now, mm. */
Point pull_place (const Pull *self);
