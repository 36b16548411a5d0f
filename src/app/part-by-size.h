#pragma once
#include "app/part-list.h"

/** Rows to make a part by its size: a pack, a motor, a propeller; what it comes to is shown while it is typed. `chosen` is told when the
 *  person adds it. */
GtkWidget *part_by_size_new (TrammelSession *session, PartChosen chosen, gpointer data);
