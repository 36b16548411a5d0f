#pragma once
#include <adwaita.h>
#include "app/session.h"
#include "app/strip.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_WINDOW (trammel_window_get_type ())
G_DECLARE_FINAL_TYPE (TrammelWindow, trammel_window, TRAMMEL, WINDOW, AdwApplicationWindow)

/** One document's window: header bar, strips, sheet and panel. Everything it does is an action of group "win", so that keys, menus,
 *  buttons and tests reach it alike. */
TrammelWindow  *trammel_window_new (GtkApplication *application, TrammelSettings *settings);
TrammelSession *trammel_window_session (TrammelWindow *self);      /* lent */
/** The page of the help about what is being done: that of the tool in hand; over a plan, of tracing. NULL: none in particular. */
const char     *trammel_window_help_page (TrammelWindow *self);

/** Whether it holds nothing yet, so that a document may be opened into it. */
bool trammel_window_is_untouched (TrammelWindow *self);
/** Reads a document into this window. What it held is lost, so ask trammel_window_is_untouched () first. When it cannot be read, the
 *  reason stands in the strip and nothing else changes. A window that is not shown yet is shown when the document has been read; when it
 *  cannot be, it goes, and the reason stands in the strip of the window in front. */
void trammel_window_open_file (TrammelWindow *self, const char *path);
/** Opens a picture or a page as a plan beneath the sheet, in one undo step; several come one after the other. When it cannot be had, the
 *  reason stands in the strip and nothing else changes. */
void trammel_window_open_plan (TrammelWindow *self, const char *path);
/** Offers the outlines of a drawing or a table of points in a strip under the header. When it cannot be read, the reason stands in the
 *  strip and nothing changes. */
void trammel_window_bring (TrammelWindow *self, const char *path);
/** Takes a file that is no document: a picture as a plan, a table or a cutter's drawing as an outline; of a drawing that may be either the
 *  strip asks which. False when it is none of these; nothing has happened then. */
bool trammel_window_take (TrammelWindow *self, const char *path);
/** Starts with that aeroplane, not yet saved anywhere: an example. */
void trammel_window_open_copy (TrammelWindow *self, Aeroplane *takes);

/** Offers in the strip to restore unsaved work that an earlier crash left over; nothing when there is none. */
void trammel_window_offer_recovery (TrammelWindow *self);

/** A short remark at the foot, with at most one button; `action` is a detailed name, `label` and `action` may be NULL. */
void trammel_window_toast (TrammelWindow *self, const char *text, const char *label, const char *action);
/** A sentence in the strip under the header, with nothing but "Close"; what stood there before and still holds comes back after it. */
void trammel_window_tell  (TrammelWindow *self, const char *sentence);

/** Whether the strip says just that. */
bool trammel_window_tells (TrammelWindow *self, const char *sentence);
/** It does so no more; nothing where it says something else. */
void trammel_window_tell_no_more (TrammelWindow *self, const char *sentence);

/** A question in the same place, with an answer on each of two buttons. */
void trammel_window_ask   (TrammelWindow *self, const char *sentence, StripButton first, StripButton second);

/** Says in the strip that something takes its time, with a button that cancels it; `sentence` NULL: it is done, and that is hidden again,
 *  unless the strip says something else by then, or speaks of other work. */
void trammel_window_tell_busy (TrammelWindow *self, const char *sentence, GCancellable *cancellable);

G_END_DECLS
