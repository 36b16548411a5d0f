#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

/** The panel's controls that are no plain field: choices and buttons for what is selected. Each shows the present value and
 *  changes it as one undo step. */
GtkWidget *surface_role_control (TrammelSession *session);
GtkWidget *surface_section_control (TrammelSession *session);     /* choosing a class forgets what was typed against another */
GtkWidget *part_class_control   (TrammelSession *session);
/** The rail's picture with its buttons, or the button that gives the part a rail. */
GtkWidget *part_rail_control    (TrammelSession *session);
/** Where the hatch is, how large its hole and lid are and what its length is made of, in sentences beneath its rows. */
GtkWidget *part_hatch_control   (TrammelSession *session);
/** What stands in the way of the selected battery's hatch, in sentences; not seen where nothing does. */
GtkWidget *part_hatch_hindrance (TrammelSession *session);
/** On which side of the body it opens. */
GtkWidget *part_hatch_side_control (TrammelSession *session);
GtkWidget *node_kind_control    (TrammelSession *session);      /* corner, smooth or symmetric: of the selected node */

GtkWidget *control_kind_control (TrammelSession *session);         /* control-kind.c */

/** For a control made elsewhere: it holds the session, and shows the present value by `show`. */
void piece_control_adopt (GtkWidget *control, TrammelSession *session, void (*show) (GtkWidget *, TrammelSession *));
/** A choice of words, which it takes; a screen reader calls it by the label. `show` selects the present one, `chosen` does what another one
 *  asks for. */
GtkWidget *piece_choice_control (TrammelSession *session, GtkStringList *takes, const char *label,
                                 void (*show) (GtkWidget *, TrammelSession *), void (*chosen) (GtkWidget *));
/** Words across a whole row; `show` sets them in the control's one child, a label. */
GtkWidget *piece_words_control (TrammelSession *session, void (*show) (GtkWidget *, TrammelSession *));
/** The session, while a person chooses; NULL while it is only being shown. */
TrammelSession *piece_control_choosing (GtkWidget *control);
/** However long a choice is, the panel is no wider for it: its words are cut in the middle. */
void piece_control_may_be_cut (GtkDropDown *list);
/** Shows the present value again. */
void piece_control_refresh (GtkWidget *control);
