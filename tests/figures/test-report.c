#include <check.h>
#include <json-glib/json-glib.h>
#include <math.h>
#include "document/changes.h"
#include "figures/cautions.h"
#include "figures/explanation.h"
#include "figures/report.h"
#include "support/aeroplanes.h"
#include "support/comma-locale.h"
#include "support/figures-once.h"
#include "support/run-suite.h"
#include "support/shapes.h"

/* The contract with programs: every name, in this order; what comes after them is an addition. */
static const struct { const char *where; const char *names[14]; } contract[] = {
  { "", { "name", "surfaces", "reference", "mass", "neutral_point", "balance", "parts", "solutions", "flight", "controls", "notes" } },
  { "surfaces", { "id", "role", "span_mm", "area_mm2", "aspect_ratio", "mean_chord_mm", "mac_mm", "mac_station_mm",
                  "mac_leading_edge_x_mm", "quarter_mac_x_mm", "lift_slope_per_rad", "tail_arm_mm", "volume_coefficient" } },
  { "reference", { "surface", "area_mm2", "span_mm", "mac_mm", "mac_leading_edge_x_mm" } },
  { "mass", { "total_g", "x_mm", "y_mm", "z_mm", "x_sigma_mm", "inertia_roll_kgm2", "inertia_pitch_kgm2", "inertia_yaw_kgm2" } },
  { "neutral_point", { "x_mm", "percent_mac", "lattice_x_mm", "handbook_x_mm", "body_shift_mm", "downwash_gradient", "sigma_mm" } },
  { "balance", { "percent_mac", "static_margin_percent", "static_margin_sigma_percent", "target_x_mm", "forward_limit_x_mm",
                 "aft_limit_x_mm", "marks" } },
  { "parts", { "id", "name", "mass_g", "x_mm", "y_mm", "z_mm", "rail_from_mm", "rail_to_mm" } },
  { "solutions", { "part", "x_mm", "reachable", "ballast_g", "ballast_x_mm", "band_from_mm", "band_to_mm" } },
  { "flight", { "wing_loading_g_dm2", "cube_loading_kg_m3", "stall_speed_m_s", "pitch_speed_m_s", "reynolds_mac" } },
  { "controls", { "surface", "kind", "area_mm2", "roll_rate_deg_s" } },
  { "notes", { "severity", "text" } },
};

static Aeroplane *
racer_with_ailerons (void)
{
  g_autoptr (Aeroplane) made = racer ();
  const Piece *old = aeroplane_find (made, "wing");
  Surface *wing = (Surface *) piece_dup (old);

  wing->controls = g_new0 (Control, 1);
  wing->control_count = 1;
  wing->controls[0] = (Control) { .id = g_strdup ("ailerons"), .kind = CONTROL_AILERON, .inner = 160, .outer = 290,
                                  .hinge_inner_x = 203, .hinge_outer_x = 179, .up = 12, .down = 8 };
  return aeroplane_with_replaced (made, old, &wing->piece);
}

/* The figures' JSON, parsed; the parser owns the root. */
static JsonObject *
parsed (JsonParser *parser, const Aeroplane *aeroplane)
{
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *text = report_json (figures);
  g_autoptr (GError) error = NULL;

  json_parser_load_from_data (parser, text, -1, &error);
  ck_assert_msg (!error, "%s in\n%s", error ? error->message : "", text);
  return json_node_get_object (json_parser_get_root (parser));
}

START_TEST (the_json_has_every_name_of_the_contract_in_its_order)
{
  g_autoptr (JsonParser) parser = json_parser_new ();
  g_autoptr (Aeroplane) aeroplane = racer_with_ailerons ();
  JsonObject *object = parsed (parser, aeroplane);

  if (*contract[_i].where)
    {
      JsonNode *node = json_object_get_member (object, contract[_i].where);

      object = JSON_NODE_HOLDS_ARRAY (node) ? json_array_get_object_element (json_node_get_array (node), 0)
                                            : json_node_get_object (node);
    }
  g_autoptr (GList) members = json_object_get_members (object);
  const GList *member = members;
  for (size_t i = 0; contract[_i].names[i]; i++, member = member->next)
    {
      ck_assert_ptr_nonnull (member);
      ck_assert_str_eq (member->data, contract[_i].names[i]);
    }
}
END_TEST

START_TEST (the_json_says_what_the_figures_say)
{
  g_autoptr (JsonParser) parser = json_parser_new ();
  g_autoptr (Aeroplane) aeroplane = racer_with_ailerons ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  JsonObject *root = parsed (parser, aeroplane);
  JsonObject *point = json_object_get_object_member (root, "neutral_point");
  JsonObject *balance = json_object_get_object_member (root, "balance");
  JsonObject *mark = json_array_get_object_element (json_object_get_array_member (balance, "marks"), 0);

  /* Twelve digits are kept. */
  ck_assert_double_eq_tol (json_object_get_double_member (point, "x_mm"), figures->neutral_point.x_mm, 1e-9);
  ck_assert_double_eq_tol (json_object_get_double_member (mark, "target_mm"), figures->balance.marks[0].target_mm, 1e-9);
  ck_assert_double_eq_tol (json_object_get_double_member (balance, "static_margin_percent"),
                           figures->balance.static_margin_percent, 1e-9);
  ck_assert_str_eq (json_object_get_string_member (json_object_get_object_member (root, "reference"), "surface"), "wing");
}
END_TEST

static bool
is_null (JsonObject *object, const char *name)
{
  return JSON_NODE_HOLDS_NULL (json_object_get_member (object, name));
}

START_TEST (what_cannot_be_had_is_null_and_a_note_says_why)
{
  g_autoptr (JsonParser) parser = json_parser_new ();
  g_autoptr (Aeroplane) aeroplane = aeroplane_new ();
  JsonObject *root = parsed (parser, aeroplane);
  JsonObject *balance = json_object_get_object_member (root, "balance");

  ck_assert (is_null (root, "name") && is_null (root, "reference"));
  ck_assert_uint_eq (json_array_get_length (json_object_get_array_member (root, "surfaces")), 0);
  ck_assert (is_null (json_object_get_object_member (root, "neutral_point"), "x_mm"));
  ck_assert (is_null (balance, "target_x_mm") && is_null (balance, "marks") && is_null (balance, "percent_mac"));
  ck_assert (is_null (json_object_get_object_member (root, "flight"), "pitch_speed_m_s"));
  ck_assert (is_null (json_object_get_object_member (root, "mass"), "x_mm"));
  ck_assert_str_eq (json_object_get_string_member (json_array_get_object_element (json_object_get_array_member (root, "notes"), 0),
                                                   "severity"), "act");
}
END_TEST

START_TEST (a_wing_alone_has_a_neutral_point_and_neither_target_nor_marks)
{
  g_autoptr (JsonParser) parser = json_parser_new ();
  Aeroplane *made = with_mark (with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (100, 600, 100)), 40);
  g_autoptr (Aeroplane) aeroplane = with_battery (made, 27, 110, 80, 130);
  JsonObject *root = parsed (parser, aeroplane);
  JsonObject *balance = json_object_get_object_member (root, "balance");
  JsonObject *solution = json_array_get_object_element (json_object_get_array_member (root, "solutions"), 0);

  ck_assert (!is_null (json_object_get_object_member (root, "neutral_point"), "x_mm"));
  ck_assert (is_null (balance, "target_x_mm") && is_null (balance, "forward_limit_x_mm") && is_null (balance, "marks"));
  ck_assert (is_null (solution, "x_mm") && is_null (solution, "reachable"));
}
END_TEST

START_TEST (names_with_quotes_and_newlines_come_through_json)
{
  const char *name = "Heron \"2\"\n\\ ü\t";
  g_autoptr (JsonParser) parser = json_parser_new ();
  g_autoptr (Aeroplane) made = aeroplane_new ();
  AeroplaneTraits traits = aeroplane_traits (made);

  traits.name = name;
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_traits (made, traits);
  ck_assert_str_eq (json_object_get_string_member (parsed (parser, aeroplane), "name"), name);
}
END_TEST

/* The comma of a locale must not reach a program. */
START_TEST (the_json_and_the_parts_list_are_the_same_bytes_in_a_comma_locale)
{
  g_autoptr (Aeroplane) aeroplane = racer_with_ailerons ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *json = report_json (figures), *csv = report_parts_csv (figures);
  char *folder = comma_locale_enter ();
  g_autofree char *comma_json = report_json (figures), *comma_csv = report_parts_csv (figures);
  g_autofree char *text = report_text (figures, (Units) { LENGTH_MM, MASS_G });

  comma_locale_leave (folder);
  ck_assert_str_eq (comma_json, json);
  ck_assert_str_eq (comma_csv, csv);
  ck_assert_ptr_nonnull (strstr (text, "6,53\u00a0dm²"));        /* people, though, read their own sign */
}
END_TEST

/* RFC 4180: lines end in CR LF, a field with a comma or a quote is quoted, quotes are doubled. */
START_TEST (the_parts_list_quotes_what_would_mislead)
{
  Part *part = part_new ("odd", NULL);

  part->name = g_strdup ("Lead, \"long\"");
  part->mass = 2.5, part->x = 101.25;
  g_autoptr (Aeroplane) aeroplane = with_piece (aeroplane_new (), part);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *csv = report_parts_csv (figures);
  ck_assert_str_eq (csv, "id,name,class,mass_g,x_mm,y_mm,z_mm,length_mm,width_mm,height_mm,rail_from_mm,rail_to_mm,aboard,"
                         "former,front_behind_former_mm,rear_behind_former_mm,front_above_bottom_mm,rear_above_bottom_mm,"
                         "lead_from,lead_to,lead_length_mm,lead_needed_mm,lead_missing_mm,extension_mm,side,off_centre_line_mm,"
                         "surface,front_behind_leading_edge_mm,rear_behind_leading_edge_mm,rib,outboard_of_rib_mm,"
                         "rpm_per_volt,power_w,input_w,diameter_mm,pitch_mm,cells,capacity_mah,current_a\r\n"
                         "odd,\"Lead, \"\"long\"\"\",,2.5,101.25,0,0,0,0,0,,,yes,,,,,,,,,,,,,0,,,,,,,,,,,,,\r\n");
}
END_TEST

START_TEST (what_is_still_to_come_says_so_in_the_parts_list)
{
  Part *part = part_new ("pack", "battery");

  part->mass = 27;
  part->to_come = true;
  g_autoptr (Aeroplane) aeroplane = with_piece (aeroplane_new (), part);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *csv = report_parts_csv (figures), *text = report_text (figures, (Units) { LENGTH_MM, MASS_G });
  ck_assert_ptr_nonnull (strstr (csv, ",to come,"));
  ck_assert_ptr_nonnull (strstr (text, "to come"));
  ck_assert_double_eq (figures->mass.total_g, 27);
}
END_TEST

static void
assert_has (const char *text, const char *words)
{
  ck_assert_msg (strstr (text, words) != NULL, "“%s” is missing from\n%s", words, text);
}

START_TEST (the_text_names_methods_units_deviations_and_cautions)
{
  g_autoptr (Aeroplane) aeroplane = racer_with_ailerons ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *text = report_text (figures, (Units) { LENGTH_MM, MASS_G });
  g_autofree char *inches = report_text (figures, (Units) { LENGTH_INCH, MASS_G });

  assert_has (text, "vortex lattice");
  assert_has (text, "handbook formulas");
  assert_has (text, "Multhopp");
  assert_has (text, "640\u00a0mm");
  assert_has (text, "to centre line");
  assert_has (text, "±");
  assert_has (text, "Check the balance on the bench");
  assert_has (inches, "25\u00a0" "3/16\u00a0in");
  assert_has (inches, "27\u00a0g");                          /* inches and grams, chosen apart */
  ck_assert (g_str_has_suffix (text, "\n"));
  ck_assert (g_utf8_validate (text, -1, NULL));
}
END_TEST

/* 4.5 g is a servo and 5 g is not; a gram square metre is ten kilogram square centimetres. */
START_TEST (the_text_shows_small_masses_their_deviations_and_inertia_as_finely_as_they_are_read)
{
  g_autoptr (Aeroplane) made = racer ();
  Part *servo = part_new ("light-servo", "servo"), *lead = part_new ("lead", NULL);

  servo->mass = 4.5, servo->mass_sigma = 0.02, servo->x = 180;
  lead->mass = 1250, lead->mass_sigma = 40, lead->x = 150;
  g_autoptr (Aeroplane) with_servo = aeroplane_with_added (made, &servo->piece);
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_added (with_servo, &lead->piece);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *text = report_text (figures, (Units) { LENGTH_MM, MASS_G });
  g_autofree char *ounces = report_text (figures, (Units) { LENGTH_INCH, MASS_OZ });
  g_autofree char *inertia = g_strdup_printf ("%.2f  ± %.2f kg cm²", 1e4 * figures->mass.inertia_yaw_kgm2,
                                              1e4 * figures->mass.inertia_yaw_sigma_kgm2);

  assert_has (text, "4.5\u00a0g ± 0.1");
  assert_has (text, "1.25\u00a0kg ± 40\u00a0g");
  assert_has (text, inertia);
  assert_has (ounces, "0.16\u00a0oz ± 0.01");
}
END_TEST

/* An elliptical wing's sections all carry the same, near enough (Glauert, Elements of Aerofoil and Airscrew Theory, chapter XI): to name
 * a station would claim what nobody knows. A rectangle stalls at its root. */
START_TEST (an_elliptical_wing_stalls_nowhere_in_particular)
{
  const Units metric = { LENGTH_MM, MASS_G };
  g_autoptr (Aeroplane) curved = racer ();
  g_autoptr (Aeroplane) straight = with_surface (aeroplane_new (), "wing", ROLE_WING, rectangle (0, 660, 110));
  g_autoptr (Figures) of_curved = figures_once (curved), of_straight = figures_once (straight);
  g_autofree char *curved_text = report_text (of_curved, metric), *straight_text = report_text (of_straight, metric);
  g_autoptr (Explanation) how = explanation_new (of_curved, EXPLAIN_FIRST_STALL, NULL, metric);

  ck_assert_double_lt (of_curved->motion.first_stall_ratio, 1.03);
  ck_assert (!motion_stalls_somewhere (&of_curved->motion) && motion_stalls_somewhere (&of_straight->motion));
  assert_has (curved_text, "nowhere in particular");
  ck_assert_ptr_null (strstr (curved_text, "stalls first at station"));
  assert_has (straight_text, "stalls first at station");
  ck_assert_str_eq (how->result, "nowhere in particular");
}
END_TEST

START_TEST (the_text_closes_with_the_cautions_of_every_sheet)
{
  g_autoptr (Aeroplane) aeroplane = racer ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *text = report_text (figures, (Units) { LENGTH_MM, MASS_G });
  g_auto (GStrv) lines = g_strsplit (text, "\n", -1);
  GString *unwrapped = g_string_new (NULL);

  for (char **line = lines; *line; line++)
    g_string_append_printf (unwrapped, "%s ", g_strstrip (*line));
  for (size_t i = 0; i < 5; i++)
    assert_has (unwrapped->str, cautions_sentence (i));
  ck_assert_ptr_null (cautions_sentence (5));
  g_string_free (unwrapped, TRUE);
}
END_TEST

/* Typed so, the band must be read so; a comma where the locale has one. */
START_TEST (the_text_tells_the_band_with_its_half_percents)
{
  g_autoptr (Aeroplane) made = racer ();
  AeroplaneTraits traits = aeroplane_traits (made);

  traits.target = (Target) { .from = 7.5, .to = 17.5, .aim = 12.25 };
  g_autoptr (Aeroplane) aeroplane = aeroplane_with_traits (made, traits);
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *text = report_text (figures, (Units) { LENGTH_MM, MASS_G });
  char *folder = comma_locale_enter ();
  g_autofree char *comma = report_text (figures, (Units) { LENGTH_MM, MASS_G });

  comma_locale_leave (folder);
  assert_has (text, "wanted 7.5 to 17.5, aim 12.25");
  assert_has (comma, "wanted 7,5 to 17,5, aim 12,25");
}
END_TEST

START_TEST (the_text_tells_a_balance_point_off_centre_by_its_side)
{
  g_autoptr (Aeroplane) made = with_part (racer (), "lead", 20, 150), to_port = NULL;

  to_port = change_part_place (made, "lead", 150, -80, 0);
  g_autoptr (Figures) port = figures_once (to_port);
  g_autofree char *text = report_text (port, (Units) { LENGTH_MM, MASS_G });

  ck_assert_double_lt (port->mass.y_mm, -1);
  assert_has (text, "Balance point, to port");
  ck_assert_ptr_null (strstr (text, "Balance point, to starboard"));
}
END_TEST

/* Half a screen is too little to read a table in: the racer's fits the eighty characters of a terminal. */
START_TEST (the_text_fits_a_terminal)
{
  g_autoptr (Aeroplane) aeroplane = racer_with_ailerons ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *text = report_text (figures, (Units) { LENGTH_MM, MASS_G });
  g_auto (GStrv) lines = g_strsplit (text, "\n", -1);

  for (char **line = lines; *line; line++)
    ck_assert_msg (g_utf8_strlen (*line, -1) <= 80, "too long: %s", *line);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("figures report");
  TCase *tests = tcase_create ("report");

  tcase_add_loop_test (tests, the_json_has_every_name_of_the_contract_in_its_order, 0, G_N_ELEMENTS (contract));
  tcase_add_test (tests, the_json_says_what_the_figures_say);
  tcase_add_test (tests, what_cannot_be_had_is_null_and_a_note_says_why);
  tcase_add_test (tests, a_wing_alone_has_a_neutral_point_and_neither_target_nor_marks);
  tcase_add_test (tests, names_with_quotes_and_newlines_come_through_json);
  tcase_add_test (tests, the_json_and_the_parts_list_are_the_same_bytes_in_a_comma_locale);
  tcase_add_test (tests, the_parts_list_quotes_what_would_mislead);
  tcase_add_test (tests, what_is_still_to_come_says_so_in_the_parts_list);
  tcase_add_test (tests, the_text_names_methods_units_deviations_and_cautions);
  tcase_add_test (tests, the_text_shows_small_masses_their_deviations_and_inertia_as_finely_as_they_are_read);
  tcase_add_test (tests, an_elliptical_wing_stalls_nowhere_in_particular);
  tcase_add_test (tests, the_text_closes_with_the_cautions_of_every_sheet);
  tcase_add_test (tests, the_text_tells_the_band_with_its_half_percents);
  tcase_add_test (tests, the_text_tells_a_balance_point_off_centre_by_its_side);
  tcase_add_test (tests, the_text_fits_a_terminal);
  return run_suite (suite, tests);
}
