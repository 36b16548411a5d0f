#pragma once
#include "app/sheet-canvas.h"
#include "support/stage.h"

/** A hand on the sheet of a real window. One window serves all tests of a file; each begins with the racer opened afresh, nothing selected,
 *  Select in hand, snapping on, and the sheet seen at 4 px a millimetre, where every whole millimetre is a whole px. Places are mm. */
int  hand_run     (const char *name, TCase *cases[], size_t count);      /* main's whole work */
void hand_begin_empty (void);      /* within a test: the same on an empty sheet */

TrammelWindow      *hand_window  (void);
TrammelSession     *hand_session (void);
TrammelSheetCanvas *hand_sheet   (void);
const Aeroplane    *hand_aeroplane (void);
const Part         *hand_part    (const char *id);
const Surface      *hand_surface (const char *id);
Point               hand_node    (const char *id, size_t node);

/** Brings that place to the middle of the sheet, at so many px a mm. */
void  hand_look   (Point middle, double scale);
/** Until the window's widgets have found their sizes after a zoom. */
void  hand_await_layout (void);
Point hand_px     (Point place);
void  hand_move   (Point place);
void  hand_press  (Point place);
void  hand_release (void);
void  hand_click  (Point place);
void  hand_context_click (Point place);
/** Press, move in steps, release. */
void  hand_drag   (Point from, Point to);
/** The same without the release. */
void  hand_pull   (Point from, Point to);

/** The id that is selected alone; "" otherwise. */
const char *hand_selected (void);
/** The document as text: byte for byte. */
char *hand_text (void);
/** What the plate beside the pointer says in the row of that name; NULL when it is not there. Lent. */
const char *hand_plate (const char *row);
/** Ends the test unless undo is so called and takes the document back to `text`. */
void  hand_undoes (const char *label, const char *text);
