#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

/** The panel's controls that are no plain field: choices and buttons for what is selected. Each shows the present value and
 *  changes it as one undo step. */
GtkWidget *surface_role_control (TrammelSession *session);
GtkWidget *surface_section_control (TrammelSession *session);     /* choosing a class forgets what was typed against another */
GtkWidget *part_class_control   (TrammelSession *session);
GtkWidget *part_aboard_control  (TrammelSession *session);
/** The rail's picture with its buttons, or the button that gives the part a rail. */
GtkWidget *part_rail_control    (TrammelSession *session);
GtkWidget *node_kind_control    (TrammelSession *session);

/** Shows the present value again. */
void piece_control_refresh (GtkWidget *control);
