#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

/** A menu button that offers the classes of parts; the one chosen is put in its usual place, with its usual mass and size, and selected.
 *  `chosen` (may be NULL) is told the class's word. */
GtkWidget *part_adder_new (TrammelSession *session, void (*chosen) (gpointer data, const char *word), gpointer data);

/** The aeroplane with one more part of that class in its usual place; its new id in *id (a new string). */
Aeroplane *part_adder_with (const Aeroplane *aeroplane, const char *class_word, char **id);
