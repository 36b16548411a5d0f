#pragma once
#include <glib-object.h>
#include "app/settings.h"
#include "document/aeroplane.h"
#include "drawing/selection.h"
#include "figures/advice.h"
#include "figures/figures.h"

G_BEGIN_DECLS

#define TRAMMEL_TYPE_SESSION (trammel_session_get_type ())
G_DECLARE_FINAL_TYPE (TrammelSession, trammel_session, TRAMMEL, SESSION, GObject)

/** One document at work: its history, its figures, what is selected. The one place from which views read and through which
 *  they change; views keep no copy of a fact. Signals, none with arguments:
 *    "changed"            the aeroplane, and with it the figures (also for each preview of a drag)
 *    "selection-changed"  what is selected
 *    "state-changed"      undo, redo, saved or the file's name
 *    "offer-changed"      what is offered beside what is there, and whether parts are being arranged
 *  The settings' own "changed" says that units or view flags changed. */
TrammelSession  *trammel_session_new (TrammelSettings *settings);
TrammelSettings *trammel_session_settings  (TrammelSession *self);      /* lent */
Units            trammel_session_units     (TrammelSession *self);      /* those of the settings */

/* What is shown. Lent, until the next "changed". */
const Aeroplane *trammel_session_aeroplane (TrammelSession *self);
/** The same without the drag that is under way. */
const Aeroplane *trammel_session_settled   (TrammelSession *self);
const Figures   *trammel_session_figures   (TrammelSession *self);      /* reckoned when first asked for */
const Advice    *trammel_session_advice    (TrammelSession *self);      /* likewise */

/* Changing it. `takes` may be NULL (a change that was refused): nothing happens then. Labels are translated: "Move Node". */
void     trammel_session_do       (TrammelSession *self, Aeroplane *takes, const char *label);
void     trammel_session_preview  (TrammelSession *self, Aeroplane *takes);      /* shows it in place of the present one, no step yet: a drag */
/** The same for what is only offered: it is no unsaved work until it is settled. */
void     trammel_session_propose  (TrammelSession *self, Aeroplane *takes);
void     trammel_session_settle   (TrammelSession *self, const char *label);      /* makes one step of what was previewed or offered last */
void     trammel_session_abandon  (TrammelSession *self);      /* back to what was before the preview */
bool     trammel_session_is_previewing (TrammelSession *self);      /* also while something is offered */
void     trammel_session_undo     (TrammelSession *self);      /* nothing where there is no step */
void     trammel_session_redo     (TrammelSession *self);      /* nothing where there is no step */
const char *trammel_session_undo_label (TrammelSession *self);     /* NULL when there is nothing */
const char *trammel_session_redo_label (TrammelSession *self);

/* What is offered: another arrangement of the same parts, drawn beside what is there until it is taken or dropped. Any change drops it. */
void             trammel_session_offer   (TrammelSession *self, Figures *takes);       /* of the other arrangement; NULL: nothing any more */
const Figures   *trammel_session_offered (TrammelSession *self);                       /* lent; NULL: nothing */

/** While parts are arranged the sheet shows where they may be, and the status line says what to do. "offer-changed" tells of it. */
void             trammel_session_set_arranging (TrammelSession *self, bool arranging);
bool             trammel_session_is_arranging  (TrammelSession *self);      /* whether they are */

/* What is selected. */
const Selection *trammel_session_selection     (TrammelSession *self);
void             trammel_session_select        (TrammelSession *self, Selection takes);      /* takes it; "selection-changed" unless it is the same */
/** The one selected piece of that kind, or NULL. */
const Surface   *trammel_session_selected_surface (TrammelSession *self);
const Body      *trammel_session_selected_body    (TrammelSession *self);      /* lent */
const Part      *trammel_session_selected_part    (TrammelSession *self);      /* lent */

/* The file. */
const char *trammel_session_path     (TrammelSession *self);       /* NULL: not yet saved */
bool        trammel_session_is_saved (TrammelSession *self);       /* nothing to lose */
/** Starts afresh with that aeroplane, from that file (NULL: a new one, e.g. an example). Clears history and selection. */
void        trammel_session_open     (TrammelSession *self, Aeroplane *takes, const char *path);
/** Says that what is shown now stands in that file. */
void        trammel_session_mark_saved (TrammelSession *self, const char *path);
/** Says which value stands in that file, where it need not be the one shown: it was saved while the work went on. NULL: none of ours. */
void        trammel_session_mark_saved_as (TrammelSession *self, const Aeroplane *saved, const char *path);
/** The aeroplane's name, else the file's, else "New Aeroplane"; a new string. */
char       *trammel_session_title    (TrammelSession *self);

G_END_DECLS
