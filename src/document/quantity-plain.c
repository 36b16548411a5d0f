#include "document/quantity.h"
#include <string.h>

static const struct { gunichar sign; const char *plain; } plain_signs[] = {
  { 0x2212, "-" }, { 0x2010, "-" }, { 0x2011, "-" },                        /* minus, hyphens */
  { 0x2044, "/" }, { 0x2215, "/" },                                         /* fraction slash, division slash */
  { 0x2033, "\"" }, { 0x201D, "\"" }, { 0x2032, "'" }, { 0x2019, "'" },     /* double prime, prime, and the quotes typed for them */
  { 0x00BC, " 1/4" }, { 0x00BD, " 1/2" }, { 0x00BE, " 3/4" },
  { 0x215B, " 1/8" }, { 0x215C, " 3/8" }, { 0x215D, " 5/8" }, { 0x215E, " 7/8" },
  { 0x066B, "." }, { 0x066C, "," },                                         /* the Arabic decimal and thousands signs */
};

static void
append_plain (GString *plain, gunichar sign)
{
  for (size_t i = 0; i < G_N_ELEMENTS (plain_signs); i++)
    if (plain_signs[i].sign == sign)
      {
        g_string_append (plain, plain_signs[i].plain);
        return;
      }
  if (g_unichar_isspace (sign) || sign == 0x202F || sign == 0x00A0)
    g_string_append_c (plain, ' ');
  else if (g_unichar_isdigit (sign))
    g_string_append_c (plain, (char) ('0' + g_unichar_digit_value (sign)));
  else if (sign < 0x80)
    g_string_append_c (plain, g_ascii_tolower ((char) sign));
  else
    g_string_append_unichar (plain, sign);
}

char *
quantity_plain (const char *typed)
{
  char *valid = g_utf8_make_valid (typed, -1);
  GString *plain = g_string_new (NULL);

  for (const char *at = valid; *at; at = g_utf8_next_char (at))
    append_plain (plain, g_utf8_get_char (at));
  g_free (valid);
  return g_strstrip (g_string_free (plain, FALSE));
}
