#pragma once
#include <gtk/gtk.h>

/** Shares the room over the sheet between the page to start from and the card of cautions: the card lies at the foot and takes at most a
 *  little over half of it, the page stands in the middle of what is left. Neither lies over the other; where room is short each scrolls.
 *  `page` and the card are overlays of `table`; the card is what has the style "cautions". */
void start_room_share (GtkOverlay *table, GtkWidget *page);
