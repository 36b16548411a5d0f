#pragma once
#include <gtk/gtk.h>

/** A drop-down list as every one of ours is: opened by keys it begins at the line that is chosen, and each of its lines bears its words as a
 *  name, for a screen reader. The toolkit's own begins at its first line, and its lines have no names. */
GtkWidget *choice_list_new          (GListModel *takes);
/** The same of these words, NULL behind the last; they are copied. */
GtkWidget *choice_list_new_of_words (const char *const words[]);

/** The same of a list that is there: a GtkDropDown or an AdwComboRow. */
void choice_list_attend (GtkWidget *list);
