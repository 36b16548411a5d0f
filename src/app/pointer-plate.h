#pragma once
#include <gtk/gtk.h>
#include "app/grip.h"
#include "document/units.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_POINTER_PLATE (trammel_pointer_plate_get_type ())
G_DECLARE_FINAL_TYPE (TrammelPointerPlate, trammel_pointer_plate, TRAMMEL, POINTER_PLATE, GtkWidget)

/** The plate beside the pointer: up to four figures, and a field over one of them while a value is typed. Signals:
 *    "typed" (guint row, double mm) → gboolean   a value is understood; FALSE says that it does not fit
 *    "entered"                                   Return: what was typed stands
 *    "left"                                      Esc: the field is closed, nothing of it counts */
GtkWidget *trammel_pointer_plate_new  (void);
/** Shows the rows; a row being typed keeps its field. */
void trammel_pointer_plate_show  (TrammelPointerPlate *self, Units units, const GripRow rows[], size_t count);
void trammel_pointer_plate_hide  (TrammelPointerPlate *self);      /* closes its field too */
/** Where the hand is, pixels of `over`, and what must not be covered there. */
void trammel_pointer_plate_stand (TrammelPointerPlate *self, GtkWidget *over, const double px[2], const GdkRectangle *clear);
/** Where the plate goes in its parent: beside the pointer, turned to the other side at an edge. */
void trammel_pointer_plate_position (TrammelPointerPlate *self, GtkWidget *parent, GdkRectangle *place);
/** Opens the field over the first row that can be typed. */
void trammel_pointer_plate_type  (TrammelPointerPlate *self, const char *text);
bool trammel_pointer_plate_is_typing (TrammelPointerPlate *self);      /* whether its field is open */
/** Takes what is typed if it is understood, and closes the field; neither "entered" nor "left" follows. */
void trammel_pointer_plate_accept (TrammelPointerPlate *self);

G_END_DECLS
