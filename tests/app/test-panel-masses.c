/* The masses of the panel under a real hand: what was typed, how well it is known, and what is said of that. */
#include <math.h>
#include "document/part-class.h"
#include "support/panel-stage.h"

START_TEST (a_deviation_without_a_mass_is_refused_and_makes_no_structure)
{
  take_away (&structure_of ("fin")->piece);
  choose ("fin");
  retype ("Known to ±, g", "2");
  find ("Type the mass first.");
  ck_assert_ptr_null (structure_of ("fin"));
}
END_TEST

START_TEST (how_well_a_part_s_mass_is_known_can_be_typed_and_taken_back)
{
  choose ("battery");
  retype ("Known to ±, g", "0.5");
  ck_assert_double_eq (battery ()->mass_sigma, 0.5);
  gtk_widget_grab_focus (find ("Known to ±, g"));
  gui_key ("<Control>a");
  gui_key ("Delete");
  gui_key ("Return");
  ck_assert_double_nan (battery ()->mass_sigma);
}
END_TEST

START_TEST (a_mass_stands_with_the_digits_it_was_typed_with)
{
  choose ("battery");
  retype ("Mass, g", "24.6");
  gtk_widget_grab_focus (find ("Known to ±, g"));
  gui_settle ();
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (find ("Mass, g"))), "24.6");
  retype ("Mass, g", "24.61234");
  gtk_widget_grab_focus (find ("Known to ±, g"));
  gui_settle ();
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (find ("Mass, g"))), "25");
}
END_TEST

/* A light part that nobody weighed: its deviation is never shown as nothing. */
START_TEST (what_is_not_weighed_shows_its_deviation_as_all_deviations_are_shown)
{
  g_autofree char *figure = units_mass_deviation_figure ((Units) { LENGTH_MM, MASS_G }, part_class_mass_sigma ("receiver", 0.02));
  g_autofree char *remark = g_strdup_printf ("± %s, not weighed", figure);

  const Part *receiver = aeroplane_part_by_id (trammel_session_aeroplane (stage.session), "receiver");
  Part *light = (Part *) piece_dup (&receiver->piece);

  light->mass = 0.02;
  light->mass_sigma = NAN;
  trammel_session_do (stage.session, aeroplane_with_replaced (trammel_session_aeroplane (stage.session), &receiver->piece, &light->piece), "Lighten");
  choose ("receiver");
  find (remark);
  ck_assert (strstr (remark, "± 0,") == NULL && strstr (remark, "± 0.0") == NULL);
}
END_TEST

START_TEST (a_mass_is_typed_with_its_deviation_in_one_go)
{
  choose ("battery");
  retype ("Mass, g", "24.6 +- 0.5");
  ck_assert_double_eq (battery ()->mass, 24.6);
  ck_assert_double_eq (battery ()->mass_sigma, 0.5);
  ck_assert_str_eq (trammel_session_undo_label (stage.session), "Change Mass");
}
END_TEST

/* Half a gram is a kitchen scale's deviation: common practice, no source. */
START_TEST (a_mass_typed_alone_is_a_scale_s_and_is_undone_with_its_deviation)
{
  const double mass = battery ()->mass, sigma = battery ()->mass_sigma;

  choose ("battery");
  retype ("Mass, g", "24 +- 3");
  retype ("Mass, g", "24.6");
  ck_assert_double_eq (battery ()->mass, 24.6);
  ck_assert_double_eq (battery ()->mass_sigma, 0.5);
  trammel_session_undo (stage.session);
  ck_assert_double_eq (battery ()->mass_sigma, 3);
  trammel_session_undo (stage.session);
  ck_assert_double_eq (battery ()->mass, mass);
  ck_assert (battery ()->mass_sigma == sigma || (isnan (sigma) && isnan (battery ()->mass_sigma)));
}
END_TEST

START_TEST (a_mass_typed_alone_is_known_no_worse_than_it_was)
{
  choose ("battery");
  retype ("Mass, g", "24 +- 0.05");
  retype ("Mass, g", "24.6");
  ck_assert_double_eq (battery ()->mass_sigma, 0.05);
  retype ("Mass, g", "0");
  retype ("Mass, g", "24 +- 0");
  retype ("Mass, g", "25");
  ck_assert_double_eq (battery ()->mass_sigma, 0.5);
}
END_TEST

/* The catalogue's stiff 5 × 3 is 2.5 ± 0.5 g: that deviation is a scale's too. */
START_TEST (what_was_typed_is_not_called_unweighed_even_where_the_kind_has_a_scale_s_deviation)
{
  Part *propeller = (Part *) piece_dup (&battery ()->piece);

  propeller->kind = g_strdup ("propeller-5x3");
  propeller->mass = 2.5;
  propeller->mass_sigma = 0.5;
  trammel_session_do (stage.session, aeroplane_with_replaced (trammel_session_aeroplane (stage.session), &battery ()->piece, &propeller->piece), "Put");
  choose ("battery");
  find ("± 0.5, not weighed");
  retype ("Mass, g", "2.9");
  ck_assert_double_eq (battery ()->mass_sigma, 0.5);
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "± 0.5, not weighed"));
}
END_TEST

/* 150 g are 5.29109… oz. */
START_TEST (a_mass_in_ounces_is_edited_as_it_is_read_and_left_as_it_was_it_stays)
{
  const Aeroplane *before;

  choose ("battery");
  retype ("Mass, g", "150");
  trammel_settings_set_units (stage.settings, (Units) { LENGTH_INCH, MASS_OZ });
  gui_settle ();
  before = trammel_session_aeroplane (stage.session);
  gtk_widget_grab_focus (find ("Mass, oz"));
  gui_settle ();
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (find ("Mass, oz"))), "5.29");
  gui_key ("<Control>a");
  gui_type ("5.29");
  gui_key ("Return");
  ck_assert_ptr_eq (trammel_session_aeroplane (stage.session), before);
  retype ("Mass, oz", "5.345");
  ck_assert_str_eq (gtk_editable_get_text (GTK_EDITABLE (find ("Mass, oz"))), "5.345");
}
END_TEST

START_TEST (a_structure_s_mass_without_a_deviation_is_typed_and_nobody_says_that_it_is_not_weighed)
{
  choose ("fin");
  find ("typed");
  retype ("Known to ±, g", "0.2");
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "typed"));
  trammel_session_undo (stage.session);
  gui_settle ();
  find ("typed");
  retype ("Mass, g", "4");
  ck_assert_double_eq (structure_of ("fin")->mass_sigma, 0.5);
  ck_assert_ptr_null (gui_find (GTK_WIDGET (stage.window), "typed"));
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("panel-masses");
  TCase *with = tcase_create ("example");

  gui_begin ();
  tcase_add_checked_fixture (with, stage_raise, stage_strike);
  tcase_set_timeout (with, 60);
  tcase_add_test (with, a_deviation_without_a_mass_is_refused_and_makes_no_structure);
  tcase_add_test (with, how_well_a_part_s_mass_is_known_can_be_typed_and_taken_back);
  tcase_add_test (with, a_mass_stands_with_the_digits_it_was_typed_with);
  tcase_add_test (with, what_is_not_weighed_shows_its_deviation_as_all_deviations_are_shown);
  tcase_add_test (with, a_mass_is_typed_with_its_deviation_in_one_go);
  tcase_add_test (with, a_mass_typed_alone_is_a_scale_s_and_is_undone_with_its_deviation);
  tcase_add_test (with, a_mass_typed_alone_is_known_no_worse_than_it_was);
  tcase_add_test (with, what_was_typed_is_not_called_unweighed_even_where_the_kind_has_a_scale_s_deviation);
  tcase_add_test (with, a_mass_in_ounces_is_edited_as_it_is_read_and_left_as_it_was_it_stays);
  tcase_add_test (with, a_structure_s_mass_without_a_deviation_is_typed_and_nobody_says_that_it_is_not_weighed);
  suite_add_tcase (suite, with);
  return gui_run (suite);
}
