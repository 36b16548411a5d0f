#pragma once
/* What the files window*.c share, and nobody else. */
#include "app/file-watch.h"
#include "app/panel.h"
#include "app/plan-opening.h"
#include "app/recorder.h"
#include "app/sheet-area.h"
#include "app/strip.h"
#include "app/window.h"

/** What the panel is asked to do; `text` may be NULL where it does not matter. */
typedef void (*PanelAct) (TrammelPanel *panel, const char *text);

struct _TrammelWindow {
  AdwApplicationWindow parent;
  TrammelSession *session;

  /* from window.ui */
  AdwWindowTitle *title;
  AdwSplitButton *open_button;
  GtkMenuButton *menu_button;
  GMenuModel *main_menu;
  GtkWidget *undo_button, *redo_button;
  TrammelStrip *strip;
  AdwFlap *flap;
  GtkOverlay *table;              /* the sheet with what lies on it */
  AdwToastOverlay *toasts;

  GtkWidget *area, *panel, *start_page;
  bool start_page_dismissed;
  AdwToast *undo_toast;           /* offers to undo the last step; gone with the next */

  PlanOpening *plan_opening;      /* a plan that is being opened; NULL */
  GQueue plans_waiting;           /* paths of those behind it */
  char *plan_busy;                /* what the strip says while one is read; NULL: none is */
  double plan_done;               /* how far that is, 0 to 1 */
  guint plan_timer;               /* will say so; 0 once said or done */
  char *plan_fault;               /* what was said of the plan in hand; NULL nothing */

  GtkWidget *brought;             /* strip of an outline drawn elsewhere; NULL before the first */

  GPtrArray *drawings;            /* paths: the strip asks, or asked last, what they are to be */

  FileWatch *watch;               /* of the session's path; NULL without one */
  bool opening, saving;           /* under way */
  bool close_when_saved;
  Recorder *recorder;             /* NULL once closed */
  bool offers_recovery;           /* this window asks what is to become of work left over */
  GCancellable *busy;             /* what the strip can cancel; NULL without such work */
  char *busy_words;               /* what it says of that, or of the last */

  bool sheet_had_keys;            /* the keyboard, before a menu was opened */
  bool in_menu, menu_closed;      /* it is in one; one was closed a moment ago that was opened over the sheet */

  int width, height;              /* px, as last laid out */
  bool narrow;                    /* the panel folds over the sheet */
  PanelAct panel_act;             /* to be done as soon as the panel is shown */
  char *panel_text;
  guint panel_waiting;            /* tick that waits for it; 0 none */
  guint fitting;                  /* source that will fit the panel to the width; 0 none */
};

/* window.c */
/** Whether it was closed; what arrives from another thread may come after that. */
bool window_is_gone            (const TrammelWindow *self);
void window_dismiss_start_page (TrammelWindow *self);      /* it does not come again in this window */
/* window-actions.c: undo, redo, ways to start, dialogs; which of them can be done now */
void window_actions_begin      (TrammelWindow *self);
void window_actions_refresh    (TrammelWindow *self);      /* enables what can be done now, and names what undo and redo would do */
/** Makes one action of the window possible or not. */
void window_enable             (TrammelWindow *self, const char *action, bool possible);
/* window-keys.c: keys that a field with the keyboard takes for itself first */
void window_keys_install       (GtkWidgetClass *klass);
/** Letters mean the sheet's tools wherever the keyboard is, but where text is typed. */
void window_keys_begin         (TrammelWindow *self);
/* window-strip.c: what stands under the header */
void window_strip_begin        (TrammelWindow *self);
/** The strip's sentence holds no longer; what else holds comes back. */
void window_strip_done         (TrammelWindow *self);
/* window-view.c: what is shown, the panel's fold and width, where the keyboard goes */
void window_view_begin         (TrammelWindow *self);
/** Unfolds the panel if need be and has it do something that needs the keyboard. */
void window_with_panel         (TrammelWindow *self, PanelAct act, const char *text);
/** Fits the panel to the window's width, px. */
void window_view_fit           (TrammelWindow *self, int width, int height);
/* window-clipboard.c */
void window_clipboard_begin    (TrammelWindow *self);
/* window-lists.c: a list saved by itself */
void window_lists_begin        (TrammelWindow *self);
/* window-plans.c: plans on their way in, and what is wrong with the one in hand */
void window_plans_begin        (TrammelWindow *self);
void window_plans_end          (TrammelWindow *self);      /* forgets plans that are still on their way */
void window_paste_plan         (TrammelWindow *self, GdkTexture *texture);      /* a picture from the clipboard as a plan */
/* window-brought.c: outlines drawn elsewhere */
void window_brought_begin      (TrammelWindow *self);
/** Offers what a clipboard's table or drawing holds; a word where it is none. */
void window_bring_text         (TrammelWindow *self, GBytes *text);
/* window-taking.c: which way in a file takes */
void window_taking_begin       (TrammelWindow *self);
void window_taking_end         (TrammelWindow *self);      /* frees what waits */
/* window-files.c */
void window_files_begin        (TrammelWindow *self);
void window_save               (TrammelWindow *self);      /* to its file; asks for one where it has none */
/** Opens files (of GFile) that were dropped or pasted here: plans beneath this sheet, documents as ever. False when there are none. */
bool window_take_files         (TrammelWindow *self, GSList *list);
/** Holds that document from now on, as read from the file with that stamp. */
void window_hold               (TrammelWindow *self, Aeroplane *takes, const char *path, const FileStamp *stamp);
/* window-recovery.c: the journal, and what it brings back */
void window_recovery_begin     (TrammelWindow *self);
/** The work is saved or was let go: nothing is left to bring back. */
void window_recovery_end       (TrammelWindow *self);
/* window-closing.c */
void window_closing_begin      (TrammelWindow *self);
/** Closes without another question. */
void window_close_now          (TrammelWindow *self);
