#pragma once
#include "document/sax.h"

/** Puts an element that this version does not know, with all that is in it, back into XML text that can stand anywhere in a document:
 *  every prefix it needs is declared in it. Private to this room. */
typedef struct {
  GString *text;
  GArray *declared;       /* prefixes declared in it and still in force */
  int depth;              /* elements open */
  bool tag_open;          /* "<name …" still lacks its ">" */
} ForeignText;

void  foreign_text_init  (ForeignText *self);               /* empty; end it with foreign_text_clear */
void  foreign_text_clear (ForeignText *self);               /* frees what is in it, not itself */
bool  foreign_text_is_open (const ForeignText *self);       /* inside an element */
/* The parser's events, each appended as XML; texts are lent. */
void  foreign_text_start (ForeignText *self, const SaxElement *element);                      /* with its attributes */
void  foreign_text_end   (ForeignText *self, const char *prefix, const char *name);           /* prefix NULL: none */
void  foreign_text_add   (ForeignText *self, const char *text, size_t length);                /* characters, escaped anew */
void  foreign_text_cdata (ForeignText *self, const char *text, size_t length);                /* a CDATA section */
void  foreign_text_comment (ForeignText *self, const char *text);                             /* what stands between its signs */
void  foreign_text_instruction (ForeignText *self, const char *target, const char *data);     /* data NULL: none */
/** Hands the text over once nothing is open, and begins anew. */
char *foreign_text_take  (ForeignText *self);

/** The attributes for which `is_known` is false, as ' name="value" …' with the prefixes that the element declares or needs; NULL when
 *  there are none. */
char *foreign_attributes (const SaxElement *element, bool (*is_known) (const SaxAttribute *attribute, gconstpointer data),
                          gconstpointer data);
