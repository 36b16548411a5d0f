/* A body's measures in the panel under a real hand. */
#include "document/body-size.h"
#include "document/changes.h"
#include "support/panel-stage.h"

static const Body *
body (void)
{
  return aeroplane_body_by_id (trammel_session_aeroplane (stage.session), "body");
}

static void
raise_on_body (void)
{
  stage_raise ();
  trammel_session_select (stage.session, selection_of ("body"));
  gui_settle ();
}

static void
undoes (const char *label, const Aeroplane *there)
{
  ck_assert_str_eq (trammel_session_undo_label (stage.session), label);
  trammel_session_undo (stage.session);
  ck_assert (aeroplane_equal (trammel_session_aeroplane (stage.session), there));
}

START_TEST (length_and_greatest_width_and_height_are_typed_each_in_one_step)
{
  static const struct { const char *field, *step; size_t at; } measures[] = {
    { "Length, mm", "Change Length", offsetof (BodySize, length) },
    { "Greatest width, mm", "Change Width", offsetof (BodySize, width) },
    { "Greatest height, mm", "Change Height of Body", offsetof (BodySize, height) } };
  g_autoptr (Aeroplane) before = aeroplane_ref ((Aeroplane *) trammel_session_aeroplane (stage.session));

  for (size_t i = 0; i < G_N_ELEMENTS (measures); i++) {
    BodySize size;

    retype (measures[i].field, "123");
    size = body_size (body ());
    ck_assert_double_eq_tol (*(double *) ((char *) &size + measures[i].at), 123, 1e-9);
    undoes (measures[i].step, before);
  }
}
END_TEST

/* As after the side view alone was traced. */
START_TEST (a_body_that_is_known_from_the_side_alone_shows_its_length_and_height)
{
  Body *next = (Body *) piece_dup (&body ()->piece);
  BodySize size;

  g_clear_pointer (&next->outline, outline_unref);
  trammel_session_do (stage.session, aeroplane_with_replaced (trammel_session_aeroplane (stage.session), &body ()->piece, &next->piece), "Edit");
  gui_settle ();
  size = body_size (body ());
  g_autofree char *length = units_length_figure (trammel_session_units (stage.session), size.length);
  g_autofree char *height = units_length_figure (trammel_session_units (stage.session), size.height);
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (find ("Length, mm"))), length);
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (find ("Greatest height, mm"))), height);
  retype ("Greatest width, mm", "40");
  find ("The body has no outline from above yet: trace or draw that, and its width can be typed.");
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("panel-body");
  TCase *tests = tcase_create ("body");

  gui_begin ();
  tcase_add_checked_fixture (tests, raise_on_body, stage_strike);
  tcase_set_timeout (tests, 60);
  tcase_add_test (tests, length_and_greatest_width_and_height_are_typed_each_in_one_step);
  tcase_add_test (tests, a_body_that_is_known_from_the_side_alone_shows_its_length_and_height);
  suite_add_tcase (suite, tests);
  return gui_run (suite);
}
