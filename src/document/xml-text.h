#pragma once
#include <stdbool.h>
#include <glib.h>

/** XML by hand: what the writer and the keeping of foreign text share. Private to this room. */

/** Appends text as an element's content; what XML cannot hold (control characters, broken UTF-8) becomes U+FFFD. */
void xml_append_text  (GString *to, const char *text, gssize length);
/** The same within double quotes: line ends and tabs stay what they are. */
void xml_append_value (GString *to, const char *text, gssize length);
/** Appends ' name="value"'. */
void xml_append_attribute (GString *to, const char *name, const char *value, gssize length);
