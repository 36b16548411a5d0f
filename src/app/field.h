#pragma once
#include <gtk/gtk.h>
#include "app/session.h"

G_BEGIN_DECLS

/** What a row of the panel shows and changes. Two plain functions stand between the row and the aeroplane, so that the row
 *  keeps no fact: `value` reads it from the session, `change` makes the next aeroplane. */
typedef enum {
  FIELD_LENGTH, FIELD_THIN /* a length in tenths */, FIELD_INCHES /* a length that is told in inches everywhere */,
  FIELD_MASS, FIELD_DEVIATION /* of a mass */, FIELD_ANGLE, FIELD_PERCENT, FIELD_NUMBER, FIELD_LOADING, FIELD_AREA, FIELD_RATIO,   /* can be typed */
  FIELD_SPEED,                                           /* shown only */
  FIELD_TEXT
} FieldKind;

typedef struct FieldSpec FieldSpec;
struct FieldSpec {
  const char *label;                                            /* marked for translation */
  FieldKind kind;
  double     (*value)  (TrammelSession *session, const FieldSpec *spec);               /* mm, g, degrees, %; NAN: nothing to show */
  Aeroplane *(*change) (TrammelSession *session, const FieldSpec *spec, double value); /* NULL: shown only; may return NULL: refused */
  size_t at;                                                    /* for shared functions: offset of the double in its piece */
  double least, most;                                           /* likewise: the range, ends included */
  char      *(*text)   (TrammelSession *session);               /* FIELD_TEXT: a new string */
  Aeroplane *(*change_text) (TrammelSession *session, const char *text);
  const char *step;                                             /* the undo step's name, marked for translation */
  char      *(*remark) (TrammelSession *session, const FieldSpec *spec);   /* dim, after the unit; NULL or a new string */
  bool remark_below;                                            /* the remark has a line of its own: beside the figure is no room */
  ExplainedFigure explained;                                    /* a button opens how it came about; EXPLAIN_NONE without */
  const char *hint;                                             /* the entry's tooltip, marked for translation; NULL: the usual one or none */
  const char *refused;                                          /* what to say when `change` refuses, marked for translation */
  char      *(*why) (TrammelSession *session, const FieldSpec *spec, double value);    /* likewise, a new string; NULL: as `refused` */
  bool optional;                                                /* emptied, it asks `change` for NAN: what nobody knows is reckoned */
  /* The same with its deviation, typed as "24.6 ± 0.5"; NULL: it has none. */
  Aeroplane *(*change_known) (TrammelSession *session, const FieldSpec *spec, double value, double deviation);
};

#define TRAMMEL_TYPE_FIELD (trammel_field_get_type ())
G_DECLARE_FINAL_TYPE (TrammelField, trammel_field, TRAMMEL, FIELD, GtkListBoxRow)

/** One row; `spec` must outlive it (a constant). */
GtkWidget *trammel_field_new     (TrammelSession *session, const FieldSpec *spec);
/** Shows the present value again, unless the person is typing. */
void       trammel_field_refresh (TrammelField *self);
/** Puts the keyboard into it; `text`, if not empty, replaces what stands there as if typed. */
void       trammel_field_edit    (TrammelField *self, const char *text);
bool       trammel_field_can_edit (TrammelField *self);      /* false for a figure that only follows from others */
FieldKind  trammel_field_kind    (TrammelField *self);      /* of its spec */
/** Puts a button at the end of the row. */
void       trammel_field_add_button (TrammelField *self, GtkWidget *button);
/** Forgets what is half typed: the row is about to go, and its text must not land on what is selected next. Of what could not be taken the window says
 *  why, and what stands still. */
void       trammel_field_discard  (TrammelField *self);

G_END_DECLS
