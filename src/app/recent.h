#pragma once
#include <gio/gio.h>

/** The documents worked on lately, kept on the desktop's own list so that other programs show them, too. */

/** A menu of them, the latest first, with the examples below; follows the list by itself. Items activate app.open-path (the path) and
 *  app.open-example. The caller's. */
GMenuModel *recent_menu (void);
/** Nothing where the desktop is set to remember no files. */
void        recent_add  (const char *path);
/** Takes a file that is gone off the list; one that is still there stays. */
void        recent_forget_missing (const char *path);
