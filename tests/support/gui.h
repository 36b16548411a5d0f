#pragma once
#include <stdbool.h>
#include <check.h>
#include <gtk/gtk.h>

/** Drives real windows of this process with real events: pointer and keys go through the X server (XTEST) and come back as they do
 *  from a hand. Widgets are found by what a person reads or a screen reader says. Every function returns when the events have
 *  been taken and the window stands still; positions are px inside the widget. X11 only; see run-window-test.sh. */

/** Opens the display and turns off what never stands still. Call first in main (). */
void gui_begin (void);
/** Runs a suite in this very process (no forks: the display is open) and gives main's exit status. */
int  gui_run (Suite *takes);

/** Lets the main loop work until nothing is pending and a frame has been drawn. */
void gui_settle (void);
void gui_wait_ms (int milliseconds);
/** Until `met` holds; false when it does not within 10 s. */
bool gui_wait (bool (*met) (gpointer data), gpointer data);
/** Brings the window to the front and waits until the keyboard is its. */
void gui_present (GtkWindow *window);

void gui_move_to  (GtkWidget *widget, double x, double y);
void gui_press    (int button);       /* 1 first, 3 second */
void gui_release  (int button);
void gui_click    (GtkWidget *widget);                          /* its middle, first button */
void gui_click_at (GtkWidget *widget, double x, double y);
void gui_context_click_at (GtkWidget *widget, double x, double y);   /* second button */
typedef struct { double from_x, from_y, to_x, to_y; } GuiDrag;
void gui_drag     (GtkWidget *widget, GuiDrag drag);            /* in twelve steps */
void gui_scroll   (GtkWidget *widget, double x, double y, int steps);   /* > 0 down */

/** One key with what is held: "<Control>z", "Delete", "F9", "<Shift>Tab". */
void gui_key      (const char *accelerator);
void gui_key_down (const char *key);
void gui_key_up   (const char *key);
/** Types text with the keyboard's own characters (ASCII). */
void gui_type     (const char *text);

/** The first shown widget below `root` whose accessible label, label or title reads so; a mnemonic's underscore does not count. NULL when
 *  there is none. Waiting is gui_await's. */
GtkWidget *gui_find       (GtkWidget *root, const char *text);
GtkWidget *gui_find_type  (GtkWidget *root, GType type);
GtkWidget *gui_find_named (GtkWidget *root, const char *widget_name);    /* gtk_widget_set_name () */
/** The same, but waits for it and ends the test when it does not come. */
GtkWidget *gui_await      (GtkWidget *root, const char *text);
/** The shown toplevel of that title, waited for. */
GtkWindow *gui_await_window (const char *title);
bool       gui_window_is_there (const char *title);
/** The shown toplevel of that type, waited for. */
GtkWindow *gui_await_window_type (GType type);

/** What it looks like, as a PNG; for the eye, not for comparing. */
void gui_photograph (GtkWidget *widget, const char *path);
