#pragma once
#include <gtk/gtk.h>
#include "document/piece.h"
#include "plan/decode.h"

/** What a person hands over to become a plan, a file or a pasted picture, and what a first look tells about it. */
typedef struct {
  char *path;               /* of the file; NULL: pasted */
  GdkTexture *texture;      /* what was pasted; NULL: a file */

  GBytes *image;            /* the encoded picture, where it can be kept within the document; else NULL */
  char *checksum;           /* of the file, where it is not kept within */
  DecodeStatus decode;
  DecodeFacts facts;        /* where decode says DECODE_OK */
  bool too_large_to_keep;   /* pasted, and more than a document holds */
} PlanSource;

/** Takes the first look in a thread of its own: reads or encodes what is to be kept, asks the decoder for the facts. `self` has to last
 *  until `done` was called, cancelled or not. */
void  plan_source_examine (PlanSource *self, GCancellable *cancellable, GAsyncReadyCallback done, gpointer data);
/** A descriptor of the picture to read, the caller's, or −1. After the first look. */
int   plan_source_open    (const PlanSource *self);
/** The plan that becomes of it, without a name and without marks: of a PDF that page; what is true to size is drawn at 300 dots to the
 *  inch. A file that is not kept within the document is named by `file`. */
Plan *plan_source_plan    (const PlanSource *self, int page, const char *file);
void  plan_source_clear   (PlanSource *self);      /* frees what it holds; again is fine */
