#pragma once
#include <glib.h>

/** JSON written member by member, two blanks a level, numbers as digits_of() has them. (A general library prints seventeen digits.) */
typedef struct {
  GString *text;
  int depth;
  gboolean empty;       /* nothing yet at this depth */
} JsonText;

/** Begins it with the outermost object open. */
JsonText json_text_begin (void);
/** Ends it with a newline and gives the string away. */
char    *json_text_end   (JsonText *self);

/* Members: name is NULL for an element of an array. Whoever opens an object or an array closes it. */
void json_text_open_object  (JsonText *self, const char *name);
void json_text_close_object (JsonText *self);                       /* the one opened last */
void json_text_open_array   (JsonText *self, const char *name);     /* its elements follow */
void json_text_close_array  (JsonText *self);                       /* the one opened last */
/** A number, null unless it is finite; its unit stands in its name: no unit is written. */
void json_text_number (JsonText *self, const char *name, double value);
/** A place: an array of two numbers on one line, null unless both are finite; no unit is written. */
void json_text_pair   (JsonText *self, const char *name, double first, double second);
/** A string of UTF-8; NULL gives null. */
void json_text_string (JsonText *self, const char *name, const char *value);
void json_text_bool   (JsonText *self, const char *name, gboolean value);     /* true or false */
void json_text_null   (JsonText *self, const char *name);                     /* what cannot be had */
