#pragma once
#include "app/session.h"
#include <gtk/gtk.h>

/** A menu button "Weigh a Sheet": what a whole sheet weighs and measures gives the open line's density, as one undo step. */
GtkWidget *sheet_weighing_new (TrammelSession *session);
