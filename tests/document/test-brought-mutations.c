/* Drawings and tables changed at random, the same way in every run: each is read or refused with one sentence, and what is read is made of
 * places that a model can have and can be laid as an outline, or not, without harm. */
#include "brought-read.h"
#include "geometry/half-outline.h"
#include "support/random.h"
#include "support/run-suite.h"

enum { MUTATIONS = 3000 };

static const char *const samples[] = {
  "<svg xmlns='http://www.w3.org/2000/svg' width='80cm' height='60cm' viewBox='0 0 800 600'><g transform='translate(5,7) rotate(30 2 3)'>"
  "<path id='w' d='M400 60C520 62 690 70 718 110S700 150 640 160q-80 20-160 20T400 180a300 200 30 0 1-240-20H90V110l10-9.5e0z'/></g>"
  "<polygon points='1,2 3,4 5,0'/><ellipse cx='9' cy='9' rx='5' ry='3'/><rect x='1' y='2' width='30' height='40' transform='skewX(9)'/></svg>",
  "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n0\nLINE\n8\nA\n10\n0\n20\n0\n11\n50\n21\n9\n0\nARC\n8\nA\n10\n50\n20\n19\n"
  "40\n10\n50\n270\n51\n90\n0\nLWPOLYLINE\n8\nB\n90\n3\n70\n1\n10\n0\n20\n0\n42\n0.5\n10\n90\n20\n0\n10\n50\n20\n50\n0\nPOLYLINE\n8\nC\n66\n1\n0\nVERTEX\n8\nC\n"
  "10\n1\n20\n2\n0\nVERTEX\n8\nC\n10\n9\n20\n8\n0\nSEQEND\n0\nELLIPSE\n8\nD\n10\n0\n20\n0\n11\n9\n21\n3\n40\n0.5\n41\n0\n42\n6.28\n0\nSPLINE\n8\nE\n71\n2\n"
  "40\n0\n40\n0\n40\n0\n40\n1\n40\n1\n40\n1\n41\n1\n41\n0.7\n41\n1\n10\n0\n20\n0\n10\n9\n20\n9\n10\n18\n20\n0\n0\nENDSEC\n0\nEOF\n",
  "x (mm);y (mm)\n0;0\n12,5;100\n30;240\n\"60\";250\n# tip\n110;245\n1,3e2;0\n",
};
static const char *const tokens[] = { "-", "9", "0", ".", "e", "1e308", "nan", "inf", ",", ";", "\t", "\r\n", "\n", "\"", "<", ">", "&",
                                      "\xff", "z", "M", "a",
  "0\n", "EOF\n", "10\n", "42\n", "230\n-1\n", "<svg>", "<g>", "</g>", "matrix(", ")", "0x9" };

static void
mutate (Random *random, GString *text)
{
  const size_t at = random_below (random, text->len + 1), length = random_below (random, 60);
  g_autofree char *piece = g_strndup (text->str + at, MIN (text->len - at, length));

  switch (random_below (random, 5))
    {
    case 0:
      g_string_erase (text, (gssize) at, (gssize) MIN (text->len - at, length));
      break;
    case 1:
      g_string_insert (text, (gssize) random_below (random, text->len + 1), piece);
      break;
    case 2:
      for (size_t i = at; i < text->len; i++)
        if (g_ascii_isdigit (text->str[i]))
          {
            text->str[i] = (char) ('0' + random_below (random, 10));
            break;
          }
      break;
    default:
      g_string_insert (text, (gssize) at, tokens[random_below (random, G_N_ELEMENTS (tokens))]);
    }
}

static void
assert_of_use (const Brought *read)
{
  for (size_t i = 0; i < read->count; i++)
    {
      const BroughtLine *line = &read->lines[i];
      HalfOutline half = { 0 };
      Outline *side = NULL;
      const DrawnLine drawn = { .start = line->start, .segments = line->segments, .count = line->count, .quarter_turns = (int) (i % 4) };
      ck_assert_uint_ge (line->count, 1);
      for (size_t k = 0; k <= line->count; k++)
        ck_assert (fabs (brought_node (line, k).x) < 10000 && fabs (brought_node (line, k).y) < 10000);
      ck_assert (half_outline_make (&drawn, &half) == CORE_OK || !half.outline);
      ck_assert (side_outline_make (&drawn, &side) == CORE_OK || !side);
      outline_unref (half.outline);
      outline_unref (side);
    }
}

START_TEST (no_change_to_a_drawing_breaks_what_reads_it)
{
  Random random = { 20260417 + (uint64_t) _i };
  size_t read_well = 0;

  for (int n = 0; n < MUTATIONS; n++)
    {
      g_autoptr (GString) text = g_string_new (samples[_i]);
      g_autoptr (GError) error = NULL;
      for (size_t times = random_below (&random, 4); times > 0; times--)
        mutate (&random, text);
      Brought *read = brought_read (text->str, text->len, "drawing", &error);
      ck_assert ((read == NULL) == (error != NULL));
      if (read)
        assert_of_use (read);
      else
        ck_assert (g_str_has_prefix (error->message, "drawing:") && g_utf8_validate (error->message, -1, NULL));
      read_well += read != NULL;
      brought_free (read);
    }
  /* Else nothing but the refusals was tried. */
  ck_assert_uint_gt (read_well, MUTATIONS / 5);
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("brought mutations");

  tcase_set_timeout (tests, 120);
  tcase_add_loop_test (tests, no_change_to_a_drawing_breaks_what_reads_it, 0, G_N_ELEMENTS (samples));
  return run_suite (suite_create ("brought mutations"), tests);
}
