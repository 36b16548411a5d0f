#pragma once
#include <stdbool.h>
#include <stddef.h>

/** A sheet of paper as it lies landscape. Sizes: ISO 216, ANSI/ASME Y14.1 (from memory). */
typedef struct {
  const char *word;      /* "a4": in options and on the command line */
  const char *title;     /* "A4": on the drawing; marked for translation where it is a word */
  double width, height;  /* mm */
} Paper;

/** The paper of that word, whatever the case of its letters; NULL for one not known. */
const Paper *paper_find (const char *word);
/** All papers in the order in which they are offered; NULL from `index` on that there is none. */
const Paper *paper_nth (size_t index);
/** The words of all papers in that order, "a4, a3, …", with that between any two. A new string. */
char *paper_words (const char *between);
