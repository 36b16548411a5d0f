#pragma once
#include <stdbool.h>
#include <gtk/gtk.h>

/** Whether a key begins a number: a digit of any script, a sign, a point or comma, with nothing held. Its text goes to `text`. */
bool digit_key_text (guint keyval, GdkModifierType state, char text[7]);
