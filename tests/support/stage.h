#pragma once
#include "app/application.h"
#include "app/window.h"
#include "support/gui.h"

/** The whole program in this process, with a folder of its own for documents. Raised and struck around each test. */
void stage_raise  (void);
void stage_strike (void);

TrammelApplication *stage_application (void);
/** A path in the test's folder; whether there is a file is not looked at. Lent, until the test ends. */
const char    *stage_path    (const char *name);
/** A copy there of an example of data/examples ("saltmarsh-racer"), called `name`; its path. */
const char    *stage_example (const char *example, const char *name);
/** Runs these cases of window tests, a program raised and struck around each test, and gives main's exit status. To be called as all main does. */
int            stage_run     (const char *name, TCase *const *cases, size_t count);
/** Starts the program as from a desktop: on this file, or on nothing (NULL). Its window, in front and at rest. */
TrammelWindow *stage_open    (const char *path);
/** The same on a copy of the example. */
TrammelWindow *stage_racer   (void);
/** The window whose document has that title; waited for, brought to the front. */
TrammelWindow *stage_window  (const char *title);
const Aeroplane *stage_aeroplane (TrammelWindow *window);
/** What the header says under the name. */
const char    *stage_state   (TrammelWindow *window);
/** Waits until the header says so. */
void           stage_await_state (TrammelWindow *window, const char *state);
/** Waits until the strip says something that holds `words`; ends the test when it does not. */
void           stage_await_strip (TrammelWindow *window, const char *words);
/** The document at `path`, read again; the caller's. */
Aeroplane     *stage_read    (const char *path);
/** In a file chooser that is open: gives the whole path and accepts. */
void           stage_choose  (const char *chooser_title, const char *path, bool saving);
/** In a dialog of rows: opens the row's list and presses the line, as a hand does. */
void           stage_pick    (GtkWindow *dialog, const char *row, const char *line);
/** A question (AdwMessageDialog) of that heading, waited for, and in it the button of that answer. */
GtkWidget     *stage_answer  (const char *heading, const char *answer);
bool           stage_is_asking (void);
/** A file that is dragged or copied, for a drag source's "prepare": `path` is its path. The caller's. */
GdkContentProvider *stage_dragged_file (GtkDragSource *source, double x, double y, gpointer path);
/** How many windows with documents there are. */
int            stage_window_count (void);
