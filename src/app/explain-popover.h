#pragma once
#include <gtk/gtk.h>
#include "figures/explanation.h"

/** A popover that lays an explanation out: title and formula, what it was made of in two columns, what it gives, its source and limits.
 *  Scrolls when it is long, also by the arrow keys; a screen reader says all of it at once. It is a child of `parent`, which unparents it. */
GtkWidget *explain_popover_new (const Explanation *explanation, GtkWidget *parent);
