#include "app/digit-key.h"
#include <string.h>

bool
digit_key_text (guint keyval, GdkModifierType state, char text[7])
{
  const gunichar typed = gdk_keyval_to_unicode (keyval);

  if (typed == 0 || (state & (GDK_CONTROL_MASK | GDK_ALT_MASK | GDK_SUPER_MASK)))
    return false;
  if (!g_unichar_isdigit (typed) && (typed >= 128 || strchr ("-.,", (int) typed) == NULL))
    return false;
  text[g_unichar_to_utf8 (typed, text)] = '\0';
  return true;
}
