#pragma once
#include <gtk/gtk.h>

/** The desktop's own choosers, asked in one place. Paths are given lent, for the call. */
typedef void (*FileChosen)  (const char *path, gpointer data);
typedef void (*FileRefused) (gpointer data);
typedef char      *(*FileCompleted) (const char *typed, gpointer data);
/** Takes the paths, of char *, freed with the array. */
typedef void       (*FilesTold) (GPtrArray *takes, gpointer asked);
/** Tells, now or later and once, which files are there that saving to `path` would replace. */
typedef void       (*FilesInTheWay) (const char *path, FilesTold told, gpointer asked, gpointer data);

/** Asks for a document or a plan to open, over `parent`. `data` is the parent itself. */
void file_chooser_open (GtkWindow *parent, FileChosen chosen, gpointer data);
/** The same for a picture or a PDF, under that heading. */
void file_chooser_open_plan (GtkWindow *parent, const char *heading, FileChosen chosen, gpointer data);
/** The same for a drawing or a table of points that holds outlines. */
void file_chooser_open_outline (GtkWindow *parent, FileChosen chosen, gpointer data);

/** What is to be saved, and how the chooser speaks of it. */
typedef struct {
  const char *heading;       /* the chooser's title */
  const char *folder;        /* it opens in; NULL: that of `folder_of` */
  const char *folder_of;     /* a file whose folder it opens in; NULL: the last used */
  const char *name;          /* proposed, without its ending */
  const char *ending;        /* ".trammel": added when it was not typed */
  const char *kind;          /* what files of that ending are, for people */
  FileCompleted complete;    /* the path that is meant by what was typed, the caller's; NULL: with the ending */
  FilesInTheWay in_the_way;  /* what is there and would be replaced; NULL: the file itself */
  FileChosen chosen;
  FileRefused refused;       /* may be NULL */
  gpointer data;
} SaveChoice;

/** Asks where to save, over `parent`; asks again before other files are replaced, and where they are not to be, for another name in that folder. */
void file_chooser_save (GtkWindow *parent, const SaveChoice *choice);
