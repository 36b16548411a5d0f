#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

/** The selected part's choices in the panel, each one undo step; to be refreshed by piece_control_refresh. */
GtkWidget *part_aboard_control (TrammelSession *session);       /* Aboard, Left Out, Still to Come */
GtkWidget *part_of_control     (TrammelSession *session);       /* nothing, a surface or a body that it moves with */
GtkWidget *part_rooms_control  (TrammelSession *session);       /* a check for each bay and each wing */

/** What a bay, a surface or a body is called among its like: "Wing", "Wing wing-2", "nose". A new string. */
char *part_room_name (const Aeroplane *aeroplane, const Piece *room);
