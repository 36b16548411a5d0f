#include <check.h>
#include <json-glib/json-glib.h>
#include <math.h>
#include "figures/names.h"
#include "figures/report.h"
#include "odd-aeroplanes.h"
#include "support/figures-once.h"
#include "support/run-suite.h"

/* Wherever the JSON has a null, a note says why; in a row of a table it names the row's thing, unless it is about the whole aeroplane. */

enum { MOST_REASONS = 8 };

/* Why a figure may be null: words of notes, one of which is enough, about the row's thing ("%s" is its name) or the whole aeroplane. */
typedef struct { const char *path; const char *words[3][MOST_REASONS]; } Reasons;

#define NO_WING    "no surface yet", "no wing with an area"
#define NO_POINT   { NO_WING, "point is withheld", "point cannot be found" }
#define NO_MASS    { "no masses yet", "has no place" }
#define FAULTS     { "“%s” is open", "“%s” crosses", "“%s” encloses nothing", "“%s” reaches inboard", "“%s” is too large" }
#define ALONE      "the wing's alone"

static const Reasons reasons[] = {
  { "surfaces.span_mm", { FAULTS } },
  { "surfaces.area_mm2", { FAULTS } },
  { "surfaces.aspect_ratio", { FAULTS } },
  { "surfaces.mean_chord_mm", { FAULTS } },
  { "surfaces.mac_mm", { FAULTS } },
  { "surfaces.mac_station_mm", { FAULTS } },
  { "surfaces.mac_leading_edge_x_mm", { FAULTS } },
  { "surfaces.quarter_mac_x_mm", { FAULTS } },
  { "surfaces.lift_slope_per_rad", { FAULTS, { NO_WING, "point cannot be found" } } },
  { "surfaces.lift_slope_sigma_per_rad", { FAULTS, { NO_WING, "point cannot be found" } } },
  { "surfaces.tail_arm_mm", { FAULTS, { NO_WING } } },
  { "surfaces.volume_coefficient", { FAULTS, { NO_WING } } },
  { "surfaces.volume_sigma", { FAULTS, { NO_WING } } },
  { "surfaces.reynolds", { FAULTS, { NO_WING }, { "no masses yet" } } },
  { "surfaces.reynolds_sigma", { FAULTS, { NO_WING }, NO_MASS } },
  { "reference", { { NO_WING } } },
  { "mass.x_mm", { NO_MASS } },
  { "mass.y_mm", { NO_MASS } },
  { "mass.z_mm", { NO_MASS } },
  { "mass.x_sigma_mm", { NO_MASS, { "Without a wing the deviation" } } },
  { "mass.y_sigma_mm", { NO_MASS, { "Without a wing the deviation" } } },
  { "mass.z_sigma_mm", { NO_MASS, { "Without a wing the deviation" } } },
  { "mass.inertia_roll_sigma_kgm2", { NO_MASS, { "Without a wing the deviation" } } },
  { "mass.inertia_pitch_sigma_kgm2", { NO_MASS, { "Without a wing the deviation" } } },
  { "mass.inertia_yaw_sigma_kgm2", { NO_MASS, { "Without a wing the deviation" } } },
  { "mass.total_sigma_g", { NO_MASS } },
  { "mass.inertia_roll_kgm2", { NO_MASS } },
  { "mass.inertia_pitch_kgm2", { NO_MASS } },
  { "mass.inertia_yaw_kgm2", { NO_MASS } },
  { "neutral_point.x_mm", { NO_POINT } },
  { "neutral_point.percent_mac", { NO_POINT } },
  { "neutral_point.lattice_x_mm", { NO_POINT } },
  { "neutral_point.lattice_sigma_mm", { NO_POINT } },
  { "neutral_point.handbook_x_mm", { NO_POINT, { "handbook's formulas do not hold" } } },
  { "neutral_point.handbook_sigma_mm", { NO_POINT, { "handbook's formulas do not hold" } } },
  { "neutral_point.body_shift_mm", { NO_POINT, { "no usable outline from above" } } },
  { "neutral_point.body_shift_sigma_mm", { NO_POINT, { "no usable outline from above" } } },
  { "neutral_point.downwash_gradient", { NO_POINT } },
  { "neutral_point.downwash_gradient_sigma", { NO_POINT } },
  { "neutral_point.sigma_mm", { NO_POINT } },
  { "neutral_point.section_shift_mm", { NO_POINT } },
  { "neutral_point.propeller_from_mm", { NO_POINT } },
  { "neutral_point.propeller_to_mm", { NO_POINT } },
  { "balance.percent_mac", { NO_MASS, { NO_WING } } },
  { "balance.static_margin_percent", { NO_MASS, NO_POINT } },
  { "balance.static_margin_sigma_percent", { NO_MASS, NO_POINT, { "Without a wing the deviation" } } },
  { "balance.target_x_mm", { NO_POINT, { ALONE } } },
  { "balance.forward_limit_x_mm", { NO_POINT, { ALONE } } },
  { "balance.aft_limit_x_mm", { NO_POINT, { ALONE } } },
  { "balance.marks", { NO_POINT, { ALONE } } },
  { "balance.marks.target_mm", { { "does not meet the wing" } } },
  { "balance.marks.forward_mm", { { "does not meet the wing" } } },
  { "balance.marks.aft_mm", { { "does not meet the wing" } } },
  { "balance.marks.sigma_mm", { { "does not meet the wing" } } },
  { "solutions.x_mm", { NO_POINT, NO_MASS, { ALONE, "“%s” weighs nothing" } } },
  { "solutions.advised_x_mm", { NO_POINT, NO_MASS, { ALONE, "“%s” weighs nothing" } } },
  { "solutions.reachable", { NO_POINT, NO_MASS, { ALONE, "“%s” weighs nothing" } } },
  { "solutions.ballast_g", { NO_POINT, NO_MASS, { ALONE, "“%s” weighs nothing", "no ballast makes up for the rail of “%s”" } } },
  { "solutions.ballast_sigma_g", { NO_POINT, NO_MASS, { ALONE, "“%s” weighs nothing", "no ballast makes up for the rail of “%s”" } } },
  { "solutions.ballast_x_mm", { NO_POINT, NO_MASS, { ALONE, "“%s” weighs nothing", "no ballast makes up for the rail of “%s”" } } },
  { "solutions.band_from_mm", { NO_POINT, NO_MASS, { ALONE, "“%s” weighs nothing", "The rail of “%s” ends too far" } } },
  { "solutions.band_to_mm", { NO_POINT, NO_MASS, { ALONE, "“%s” weighs nothing", "The rail of “%s” ends too far" } } },
  { "solutions.band_from_sigma_mm", { NO_POINT, NO_MASS, { ALONE, "“%s” weighs nothing", "The rail of “%s” ends too far" } } },
  { "solutions.band_to_sigma_mm", { NO_POINT, NO_MASS, { ALONE, "“%s” weighs nothing", "The rail of “%s” ends too far" } } },
  { "solutions.x_sigma_mm", { NO_POINT, NO_MASS, { ALONE, "“%s” weighs nothing", "Without a wing the deviation" } } },
  { "flight.wing_loading_g_dm2", { { NO_WING }, { "no masses yet" } } },
  { "flight.cube_loading_kg_m3", { { NO_WING }, { "no masses yet" } } },
  { "flight.stall_speed_m_s", { { NO_WING }, { "no masses yet" } } },
  { "flight.pitch_speed_m_s", { { "pitch speed needs" } } },
  { "flight.reynolds_mac", { { NO_WING }, { "no masses yet" } } },
  { "flight.lift_max", { { NO_WING }, { "no masses yet" } } },
  { "flight.lift_max_sigma", { { NO_WING }, { "no masses yet" } } },
  { "flight.wing_loading_sigma_g_dm2", { NO_MASS, { NO_WING } } },
  { "flight.cube_loading_sigma_kg_m3", { NO_MASS, { NO_WING } } },
  { "flight.stall_speed_sigma_m_s", { NO_MASS, { NO_WING } } },
  { "flight.reynolds_mac_sigma", { NO_MASS, { NO_WING } } },
  { "motion.lift_slope_per_rad", { NO_POINT } },
  { "motion.lift_slope_sigma_per_rad", { NO_POINT } },
  { "motion.roll_damping", { NO_POINT } },
  { "motion.roll_damping_sigma", { NO_POINT } },
  { "motion.pitch_damping", { NO_POINT } },
  { "motion.pitch_damping_sigma", { NO_POINT } },
  { "motion.span_efficiency", { NO_POINT } },
  { "motion.span_efficiency_sigma", { NO_POINT } },
  { "motion.first_stall_station_mm", { NO_POINT } },
  { "motion.first_stall_ratio", { NO_POINT } },
  { "controls.area_mm2", { FAULTS, { "of “%s” begins and ends at one station" } } },
  { "controls.area_share_percent", { FAULTS, { "of “%s” begins and ends at one station" } } },
  { "missing", { NO_POINT, NO_MASS, { ALONE } } },
  { "nose_weight_worst", { NO_POINT, NO_MASS, { ALONE } } },
  { "structures.items.mass_g", { { "weighs nothing until" } } },
  { "coverings.kinds.balance_x_mm", { NO_MASS } },
  { "coverings.kinds.balance_way_mm", { NO_MASS } },
  { "coverings.kinds.part_way_mm", { NO_MASS } },
  { "coverings.kinds.nose_g", { NO_MASS } },
  { "controls.roll_rate_deg_s", { { "Roll rates are not reckoned" } } },
};

/* The walk through one report. */
typedef struct {
  const char *because;
  const Figures *figures;
  JsonObject *row;              /* the innermost object */
  int nulls;
} Walk;

static const char *
id_of_row (JsonObject *row)
{
  static const char *const names[] = { "part", "surface", "id" };

  for (size_t i = 0; i < G_N_ELEMENTS (names); i++)
    if (json_object_has_member (row, names[i]))
      return json_object_get_string_member_with_default (row, names[i], "");
  return "";
}

static bool
has_tailplane (const Figures *figures)
{
  for (size_t i = 0; i < figures->surface_count; i++)
    if (figures->surfaces[i].surface->role == ROLE_TAILPLANE)
      return true;
  return false;
}

/* What is null because there is no such thing, and not because it could not be had. */
static bool
is_null_by_nature (const Walk *walk, const char *path)
{
  const char *id = id_of_row (walk->row);

  if (g_str_equal (path, "name") || g_str_has_suffix (path, "owed_to.of") || g_str_equal (path, "structures.of"))
    return true;
  if (g_str_has_prefix (path, "surfaces.lift_slope_"))
    return figures_of_surface (walk->figures, id)->surface->role == ROLE_FIN;
  if (g_str_equal (path, "surfaces.tail_arm_mm") || g_str_has_prefix (path, "surfaces.volume_"))
    return figures_of_surface (walk->figures, id) == walk->figures->reference;
  if (g_str_has_prefix (path, "neutral_point.downwash_gradient"))
    return !has_tailplane (walk->figures);
  if (g_str_equal (path, "parts.rail_from_mm") || g_str_equal (path, "parts.rail_to_mm"))
    return !aeroplane_part_by_id (walk->figures->aeroplane, id)->has_rail;
  /* No rule on the body measures it: no former has a name, it stands in the wing or hangs out of the body. */
  if (g_str_equal (path, "parts.former") || strstr (path, "_behind_former_mm") || strstr (path, "_above_bottom_mm"))
    return true;
  /* No part of any mass does it there; no ballast does it where the place lies beyond the ends of what is drawn. */
  if (g_str_equal (path, "movers.wanted_g"))
    return true;
  /* The nose does not lie ahead of the place that is wanted. */
  if (g_str_equal (path, "coverings.kinds.nose_g") && fmin (walk->figures->mass.x_mm, walk->figures->balance.advised_x_mm)
                                                      <= walk->figures->nose_x_mm)
    return true;
  if (g_str_equal (path, "missing"))
    return isfinite (walk->figures->balance.advised_x_mm) && isfinite (walk->figures->mass.x_mm);
  return g_str_equal (path, "solutions.ballast_x_mm") && figures_solution (walk->figures, id)->at_aim.reachable;
}

/* What a note calls the row's thing: a part by its name, all else by its id. */
static const char *
name_of_row (const Walk *walk)
{
  const Part *part = aeroplane_part_by_id (walk->figures->aeroplane, id_of_row (walk->row));

  return part ? piece_name (&part->piece) : id_of_row (walk->row);
}

static bool
is_said (const Walk *walk, const char *words)
{
  g_auto (GStrv) around = g_strsplit (words, "%s", 2);
  g_autofree char *named = around[1] ? g_strconcat (around[0], name_of_row (walk), around[1], NULL) : g_strdup (words);

  return note_with (walk->figures, named) != NULL;
}

static bool
has_reason (const Walk *walk, const Reasons *known)
{
  for (size_t i = 0; i < G_N_ELEMENTS (known->words); i++)
    for (size_t j = 0; j < MOST_REASONS && known->words[i][j]; j++)
      if (is_said (walk, known->words[i][j]))
        return true;
  return false;
}

static void
meet_null (Walk *walk, const char *path)
{
  walk->nulls++;
  if (is_null_by_nature (walk, path))
    return;
  for (size_t i = 0; i < G_N_ELEMENTS (reasons); i++)
    if (g_str_equal (reasons[i].path, path))
      {
        ck_assert_msg (has_reason (walk, &reasons[i]), "%s: %s of “%s” is null, and no note says why", walk->because, path,
                       id_of_row (walk->row));
        return;
      }
  ck_abort_msg ("%s: %s is null, and nothing is known that may be the reason", walk->because, path);
}

static void walk_object (Walk *walk, JsonObject *object, const char *path);

static void
walk_node (Walk *walk, JsonNode *node, const char *path)
{
  if (JSON_NODE_HOLDS_NULL (node))
    meet_null (walk, path);
  else if (JSON_NODE_HOLDS_OBJECT (node))
    walk_object (walk, json_node_get_object (node), path);
  else if (JSON_NODE_HOLDS_ARRAY (node))
    for (guint i = 0; i < json_array_get_length (json_node_get_array (node)); i++)
      walk_node (walk, json_array_get_element (json_node_get_array (node), i), path);
}

static void
walk_object (Walk *walk, JsonObject *object, const char *path)
{
  g_autoptr (GList) members = json_object_get_members (object);

  walk->row = object;
  for (GList *member = members; member; member = member->next)
    {
      g_autofree char *below = *path ? g_strconcat (path, ".", member->data, NULL) : g_strdup (member->data);

      walk_node (walk, json_object_get_member (object, member->data), below);
      walk->row = object;
    }
}

START_TEST (every_null_has_a_note_that_says_why)
{
  g_autoptr (Aeroplane) aeroplane = odd_aeroplanes[_i].made ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  g_autofree char *text = report_json (figures);
  g_autoptr (JsonParser) parser = json_parser_new ();
  Walk walk = { .because = odd_aeroplanes[_i].because, .figures = figures };

  ck_assert (json_parser_load_from_data (parser, text, -1, NULL));
  walk_node (&walk, json_parser_get_root (parser), "");
  ck_assert_int_gt (walk.nulls, 0);
}
END_TEST

static const struct { Aeroplane *(*made) (void); const char *note; } told[] = {
  { weightless_lead, "“lead” weighs nothing, so its place on its rail balances nothing. Type its mass." },
  { aim_ahead_of_the_nose, "The aim lies ahead of the nose, so no ballast makes up for the rail of “Battery”. Draw the nose further forward, "
                           "or move the wing aft." },
  { aim_behind_the_tail, "The aim lies behind the tail, so no ballast makes up for the rail of “Battery”. Draw the tail further aft, or move "
                         "the wing forward." },
  { control_without_width, "“flaps” of “main” begins and ends at one station, so it has no area. Set its inner and outer end apart." },
};

START_TEST (the_note_names_the_thing_and_what_to_do)
{
  g_autoptr (Aeroplane) aeroplane = told[_i].made ();
  g_autoptr (Figures) figures = figures_once (aeroplane);
  const Note *note = note_with (figures, told[_i].note);

  ck_assert_msg (note && g_str_equal (note->text, told[_i].note), "nobody says: %s", told[_i].note);
  ck_assert_ptr_nonnull (note->piece);
  ck_assert (!note->problem);
}
END_TEST

int
main (void)
{
  Suite *suite = suite_create ("figures nulls");
  TCase *tests = tcase_create ("nulls");

  tcase_add_loop_test (tests, every_null_has_a_note_that_says_why, 0, ODD_AEROPLANES);
  tcase_add_loop_test (tests, the_note_names_the_thing_and_what_to_do, 0, G_N_ELEMENTS (told));
  return run_suite (suite, tests);
}
