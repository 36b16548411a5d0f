#include <math.h>
#include "drawing/export.h"
#include "drawing/paper.h"
#include "support/run-suite.h"

/* ISO 216: A0 has 1 m² and sides as 1 : √2; each smaller one is half the larger, rounded down to whole mm. */
START_TEST (a_sizes_are_a_square_metre_halved_again_and_again)
{
  static const char *const words[] = { "a0", "a1", "a2", "a3", "a4" };
  double width = 1189, height = 841, got_width, got_height;

  ck_assert_double_eq_tol (width * height / 1e6, 1, 1e-3);
  ck_assert_double_eq_tol (width / height, M_SQRT2, 1e-3);
  for (size_t i = 0; i < G_N_ELEMENTS (words); i++)
    {
      const double half = floor (width / 2);

      ck_assert (export_paper_size (words[i], &got_width, &got_height));
      ck_assert_double_eq (got_width, width);
      ck_assert_double_eq (got_height, height);
      width = height;
      height = half;
    }
}
END_TEST

/* ASME Y14.1, from memory: A 8.5 × 11 in, B 11 × 17, C 17 × 22, D 22 × 34. */
START_TEST (ansi_sizes_are_their_inches)
{
  static const struct { const char *word; double width, height; } sizes[] = {
    { "letter", 11, 8.5 }, { "tabloid", 17, 11 }, { "ansi-c", 22, 17 }, { "ansi-d", 34, 22 } };

  for (size_t i = 0; i < G_N_ELEMENTS (sizes); i++)
    {
      double width, height;

      ck_assert (export_paper_size (sizes[i].word, &width, &height));
      ck_assert_double_eq_tol (width, sizes[i].width * 25.4, 1e-9);
      ck_assert_double_eq_tol (height, sizes[i].height * 25.4, 1e-9);
    }
}
END_TEST

START_TEST (the_case_of_a_papers_name_does_not_matter_and_an_unknown_one_changes_nothing)
{
  double width = -1, height = -2;

  ck_assert_str_eq (paper_find ("Tabloid")->word, "tabloid");
  ck_assert_str_eq (paper_find ("A3")->title, "A3");
  ck_assert (!export_paper_size ("foolscap", &width, &height));
  ck_assert_double_eq (width, -1);
  ck_assert_double_eq (height, -2);
  ck_assert_ptr_null (paper_find (""));
}
END_TEST

START_TEST (all_papers_are_offered_lying_landscape)
{
  size_t count = 0;

  for (; paper_nth (count) != NULL; count++)
    {
      ck_assert_ptr_eq (paper_find (paper_nth (count)->word), paper_nth (count));
      ck_assert_double_gt (paper_nth (count)->width, paper_nth (count)->height);
    }
  ck_assert_uint_eq (count, 9);
  g_autofree char *words = paper_words (", ");
  ck_assert_str_eq (words, "a4, a3, a2, a1, a0, letter, tabloid, ansi-c, ansi-d");
}
END_TEST

int
main (void)
{
  TCase *tests = tcase_create ("paper");

  tcase_add_test (tests, a_sizes_are_a_square_metre_halved_again_and_again);
  tcase_add_test (tests, ansi_sizes_are_their_inches);
  tcase_add_test (tests, the_case_of_a_papers_name_does_not_matter_and_an_unknown_one_changes_nothing);
  tcase_add_test (tests, all_papers_are_offered_lying_landscape);
  return run_suite (suite_create ("drawing paper"), tests);
}
