#pragma once
#include "app/structure-fields.h"

/** One line of the selected structure is open in the panel at a time: its rows change that one. */

/** The open line's place; -1 none. It is forgotten when another structure is selected. */
int  structure_line_open     (TrammelSession *session);
void structure_line_set_open (TrammelSession *session, int place);      /* -1: none; the page shows it at its next look */
/** A press of its header opens a line, or closes it. */
void structure_line_press    (TrammelSession *session, int place);
/** Whether that line's header was just pressed, so that the keyboard belongs there when the page is another; asked once. */
bool structure_line_takes_keyboard (TrammelSession *session, int place);
/** The open line, lent until the next "changed"; NULL without. */
const StructureItem *structure_line (TrammelSession *session);
/** The aeroplane with the open line so, its texts copied; NULL without one. */
Aeroplane *structure_line_changed (TrammelSession *session, const StructureItem *next);

/** How a line is reckoned, and so which rows it has. */
typedef enum { LINE_SOLID, LINE_COVERING, LINE_PIECES, LINE_GLUE } LineKind;
LineKind  structure_line_kind   (const StructureItem *item);      /* by what is given of it */
/** Its rows; of width and length only what an area or length traced does not tell. */
FieldList structure_line_fields (const StructureItem *item);

/** What its choices and buttons are made of; each as piece-controls.h has them. */
GtkWidget *structure_line_header   (TrammelSession *session, int place);      /* its name and mass: a click opens or closes it */
GtkWidget *structure_line_material (TrammelSession *session);
GtkWidget *structure_line_measure  (TrammelSession *session);                 /* what traced area or length it goes by */
GtkWidget *structure_line_buttons  (TrammelSession *session);                 /* weigh a sheet, remove the line */
GtkWidget *structure_lines_buttons (TrammelSession *session);                 /* add a line, lay down the usual ones */

/** What the rows of the selected structure depend on. A new string. */
char *structure_lines_key (TrammelSession *session);
