#pragma once
#include <glib.h>

/** One page of the help, read from its Mallard source into what a window can show. Knows pages as ours are written: titles, sections,
 *  paragraphs, lists, steps, terms, notes, and links, keys, labels and stress inside them. */
typedef enum { HELP_TITLE, HELP_HEADING, HELP_PARAGRAPH, HELP_BULLET, HELP_STEP, HELP_TERM, HELP_NOTE } HelpBlockKind;

typedef struct {
  HelpBlockKind kind;
  int number;        /* of a step, from 1; else 0 */
  char *markup;      /* Pango markup; links are <a href="the page's id"> */
} HelpBlock;

/** The page's blocks in reading order (HelpBlock, freed with the array), or NULL and an error where it is not well-formed. */
GPtrArray *help_page_read (const char *text, gssize length, GError **error);
/** The text of the page's title, without markup; a new string, "" without one. */
char      *help_page_title (const GPtrArray *page);
