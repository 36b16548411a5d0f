#pragma once
#include <stdbool.h>

/** A language that nobody speaks: every vowel accented and twice, so that each message is about 40 % longer, as some translations are. It stands in
 *  for gettext in the program that is linked with it, which then speaks English until it is asked to. */
void pseudo_language_speak (bool speak);

/** Speaks a language of po/LINGUAS, such as "de", as the translation built in TRAMMEL_TRANSLATIONS has it; English again with NULL. Whether the
 *  translation was found. */
bool translation_speak (const char *language);

/** The languages of po/LINGUAS, to be freed with g_strfreev. */
char **translation_languages (void);
