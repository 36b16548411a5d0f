#include "figures/report.h"

#include <math.h>
#include "figures/budget.h"
#include "figures/contribution.h"
#include "figures/json-text.h"
#include "figures/lead-words.h"
#include "figures/names.h"
#include "figures/nose-figures.h"
#include "figures/part-stand.h"
#include "figures/report-coverings.h"
#include "figures/report-hatch.h"
#include "figures/report-leads.h"
#include "figures/report-lists.h"
#include "figures/report-ballast.h"
#include "figures/report-movers.h"
#include "figures/report-structure.h"

static void
write_surface (JsonText *json, const SurfaceFigures *surface)
{
  const Planform *planform = &surface->planform;

  json_text_open_object (json, NULL);
  json_text_string (json, "id", surface->surface->piece.id);
  json_text_string (json, "role", surface_role_word (surface->surface->role));
  json_text_number (json, "span_mm", planform->span);
  json_text_number (json, "area_mm2", planform->area);
  json_text_number (json, "aspect_ratio", planform->aspect_ratio);
  json_text_number (json, "mean_chord_mm", planform->mean_chord);
  json_text_number (json, "mac_mm", planform->mac);
  json_text_number (json, "mac_station_mm", planform->mac_station);
  json_text_number (json, "mac_leading_edge_x_mm", planform->mac_leading_edge_x);
  json_text_number (json, "quarter_mac_x_mm", surface->quarter_mac_x_mm);
  json_text_number (json, "lift_slope_per_rad", surface->lift_slope_per_rad);
  json_text_number (json, "tail_arm_mm", surface->tail_arm_mm);
  json_text_number (json, "volume_coefficient", surface->volume_coefficient);
  json_text_number (json, "reynolds", surface->reynolds);
  json_text_number (json, "section_slope_ratio", surface->section_slope);
  json_text_number (json, "section_slope_sigma", surface->section_slope_sigma);
  json_text_number (json, "lift_slope_sigma_per_rad", surface->lift_slope_sigma);
  json_text_number (json, "volume_sigma", surface->volume_sigma);
  json_text_number (json, "reynolds_sigma", surface->reynolds_sigma);
  json_text_close_object (json);
}

static void
write_surfaces (JsonText *json, const Figures *figures)
{
  json_text_open_array (json, "surfaces");
  for (size_t i = 0; i < figures->surface_count; i++)
    write_surface (json, &figures->surfaces[i]);
  json_text_close_array (json);
}

static void
write_reference (JsonText *json, const SurfaceFigures *reference)
{
  if (!reference)
    {
      json_text_null (json, "reference");
      return;
    }
  json_text_open_object (json, "reference");
  json_text_string (json, "surface", reference->surface->piece.id);
  json_text_number (json, "area_mm2", reference->planform.area);
  json_text_number (json, "span_mm", reference->planform.span);
  json_text_number (json, "mac_mm", reference->planform.mac);
  json_text_number (json, "mac_leading_edge_x_mm", reference->planform.mac_leading_edge_x);
  json_text_close_object (json);
}

/* What a deviation owes to what, the greatest first. */
static void
write_owed (JsonText *json, const Contributions *owed)
{
  json_text_open_array (json, "owed_to");
  for (size_t i = 0; i < owed->count; i++)
    {
      json_text_open_object (json, NULL);
      json_text_string (json, "what", contribution_word (owed->of[i].kind));
      json_text_string (json, "of", owed->of[i].piece ? owed->of[i].piece->id : NULL);
      json_text_number (json, "sigma_mm", owed->of[i].sigma);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}

static void
write_mass (JsonText *json, const MassFigures *mass)
{
  json_text_open_object (json, "mass");
  json_text_number (json, "total_g", mass->total_g);
  json_text_number (json, "x_mm", mass->x_mm);
  json_text_number (json, "y_mm", mass->y_mm);
  json_text_number (json, "z_mm", mass->z_mm);
  json_text_number (json, "x_sigma_mm", mass->x_sigma_mm);
  json_text_number (json, "inertia_roll_kgm2", mass->inertia_roll_kgm2);
  json_text_number (json, "inertia_pitch_kgm2", mass->inertia_pitch_kgm2);
  json_text_number (json, "inertia_yaw_kgm2", mass->inertia_yaw_kgm2);
  json_text_number (json, "total_sigma_g", mass->total_sigma_g);
  write_owed (json, &mass->owed);
  json_text_number (json, "y_sigma_mm", mass->y_sigma_mm);
  json_text_number (json, "z_sigma_mm", mass->z_sigma_mm);
  json_text_number (json, "inertia_roll_sigma_kgm2", mass->inertia_roll_sigma_kgm2);
  json_text_number (json, "inertia_pitch_sigma_kgm2", mass->inertia_pitch_sigma_kgm2);
  json_text_number (json, "inertia_yaw_sigma_kgm2", mass->inertia_yaw_sigma_kgm2);
  json_text_close_object (json);
}

static void
write_neutral_point (JsonText *json, const NeutralPointFigures *point)
{
  json_text_open_object (json, "neutral_point");
  json_text_number (json, "x_mm", point->x_mm);
  json_text_number (json, "percent_mac", point->percent_mac);
  json_text_number (json, "lattice_x_mm", point->lattice_x_mm);
  json_text_number (json, "handbook_x_mm", point->handbook_x_mm);
  json_text_number (json, "body_shift_mm", point->body_shift_mm);
  json_text_number (json, "downwash_gradient", point->downwash_gradient);
  json_text_number (json, "sigma_mm", point->sigma_mm);
  json_text_bool (json, "wing_alone", point->wing_alone);
  json_text_number (json, "section_shift_mm", point->section_shift_mm);
  json_text_number (json, "propeller_from_mm", point->propeller_from_mm);
  json_text_number (json, "propeller_to_mm", point->propeller_to_mm);
  write_owed (json, &point->owed);
  json_text_number (json, "lattice_sigma_mm", point->lattice_sigma_mm);
  json_text_number (json, "handbook_sigma_mm", point->handbook_sigma_mm);
  json_text_number (json, "body_shift_sigma_mm", point->body_shift_sigma_mm);
  json_text_number (json, "downwash_gradient_sigma", point->downwash_gradient_sigma);
  json_text_close_object (json);
}

static void
write_marks (JsonText *json, const BalanceFigures *balance)
{
  if (!balance->mark_count)
    {
      json_text_null (json, "marks");
      return;
    }
  json_text_open_array (json, "marks");
  for (size_t i = 0; i < balance->mark_count; i++)
    {
      json_text_open_object (json, NULL);
      json_text_number (json, "station_mm", balance->marks[i].station_mm);
      json_text_number (json, "target_mm", balance->marks[i].target_mm);
      json_text_number (json, "forward_mm", balance->marks[i].forward_mm);
      json_text_number (json, "aft_mm", balance->marks[i].aft_mm);
      json_text_number (json, "sigma_mm", balance->marks[i].sigma_mm);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}

static void
write_balance (JsonText *json, const BalanceFigures *balance)
{
  json_text_open_object (json, "balance");
  json_text_number (json, "percent_mac", balance->percent_mac);
  json_text_number (json, "static_margin_percent", balance->static_margin_percent);
  json_text_number (json, "static_margin_sigma_percent", balance->static_margin_sigma_percent);
  json_text_number (json, "target_x_mm", balance->target_x_mm);
  json_text_number (json, "forward_limit_x_mm", balance->forward_limit_x_mm);
  json_text_number (json, "aft_limit_x_mm", balance->aft_limit_x_mm);
  write_marks (json, balance);
  json_text_close_object (json);
}

static void
write_part (JsonText *json, const PartRule *rule, const Part *part)
{
  json_text_open_object (json, NULL);
  json_text_string (json, "id", part->piece.id);
  json_text_string (json, "name", piece_name (&part->piece));
  json_text_number (json, "mass_g", part->mass);
  json_text_number (json, "x_mm", part->x);
  json_text_number (json, "y_mm", part->y);
  json_text_number (json, "z_mm", part->z);
  json_text_number (json, "rail_from_mm", part->has_rail ? part->rail_from : NAN);
  json_text_number (json, "rail_to_mm", part->has_rail ? part->rail_to : NAN);
  json_text_bool (json, "aboard", part->aboard);
  json_text_bool (json, "to_come", part->to_come);
  part_stand_write (json, rule, part);
  json_text_close_object (json);
}

static void
write_parts (JsonText *json, const Aeroplane *aeroplane)
{
  g_autoptr (PartRule) rule = part_rule_new (aeroplane);

  json_text_open_array (json, "parts");
  for (size_t i = 0; i < aeroplane_piece_count (aeroplane); i++)
    {
      Part *part = piece_as_part (aeroplane, aeroplane_piece (aeroplane, i));

      if (part)
        write_part (json, rule, part);
      piece_unref (part ? &part->piece : NULL);
    }
  json_text_close_array (json);
}

static void
write_solution (JsonText *json, const Solution *solution)
{
  json_text_open_object (json, NULL);
  json_text_string (json, "part", solution->part->piece.id);
  json_text_number (json, "x_mm", solution->at_aim.x_mm);
  if (isnan (solution->at_aim.x_mm))
    json_text_null (json, "reachable");
  else
    json_text_bool (json, "reachable", solution->at_aim.reachable);
  json_text_number (json, "ballast_g", solution->at_aim.ballast_g);
  json_text_number (json, "ballast_x_mm", solution->at_aim.ballast_x_mm);
  json_text_number (json, "band_from_mm", solution->band_from_mm);
  json_text_number (json, "band_to_mm", solution->band_to_mm);
  json_text_number (json, "advised_x_mm", solution->x_mm);
  json_text_number (json, "x_sigma_mm", solution->x_sigma_mm);
  json_text_number (json, "band_from_sigma_mm", solution->band_from_sigma_mm);
  json_text_number (json, "band_to_sigma_mm", solution->band_to_sigma_mm);
  json_text_number (json, "ballast_sigma_g", solution->ballast_sigma_g);
  json_text_close_object (json);
}

static void
write_solutions (JsonText *json, const Figures *figures)
{
  json_text_open_array (json, "solutions");
  for (size_t i = 0; i < figures->solution_count; i++)
    write_solution (json, &figures->solutions[i]);
  json_text_close_array (json);
}

static void
write_flight (JsonText *json, const FlightFigures *flight)
{
  json_text_open_object (json, "flight");
  json_text_number (json, "wing_loading_g_dm2", flight->wing_loading_g_dm2);
  json_text_number (json, "cube_loading_kg_m3", flight->cube_loading_kg_m3);
  json_text_number (json, "stall_speed_m_s", flight->stall_speed_m_s);
  json_text_number (json, "pitch_speed_m_s", flight->pitch_speed_m_s);
  json_text_number (json, "reynolds_mac", flight->reynolds_mac);
  json_text_number (json, "lift_max", flight->lift_max);
  json_text_number (json, "lift_max_sigma", flight->lift_max_sigma);
  json_text_number (json, "wing_loading_sigma_g_dm2", flight->wing_loading_sigma_g_dm2);
  json_text_number (json, "stall_speed_sigma_m_s", flight->stall_speed_sigma_m_s);
  json_text_number (json, "cube_loading_sigma_kg_m3", flight->cube_loading_sigma_kg_m3);
  json_text_number (json, "reynolds_mac_sigma", flight->reynolds_mac_sigma);
  json_text_close_object (json);
}

static void
write_loading (JsonText *json, const GArray *loading)
{
  json_text_open_array (json, "span_loading");
  for (guint i = 0; loading && i < loading->len; i++)
    {
      json_text_open_object (json, NULL);
      json_text_number (json, "station_mm", g_array_index (loading, SpanLoading, i).station_mm);
      json_text_number (json, "lift_ratio", g_array_index (loading, SpanLoading, i).lift_ratio);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}

static void
write_motion (JsonText *json, const MotionFigures *motion)
{
  json_text_open_object (json, "motion");
  json_text_number (json, "lift_slope_per_rad", motion->lift_slope_per_rad);
  json_text_number (json, "roll_damping", motion->roll_damping);
  json_text_number (json, "pitch_damping", motion->pitch_damping);
  json_text_number (json, "span_efficiency", motion->span_efficiency);
  json_text_number (json, "first_stall_station_mm", motion->first_stall_station_mm);
  json_text_number (json, "first_stall_ratio", motion->first_stall_ratio);
  write_loading (json, motion->loading);
  json_text_number (json, "lift_slope_sigma_per_rad", motion->lift_slope_sigma);
  json_text_number (json, "roll_damping_sigma", motion->roll_damping_sigma);
  json_text_number (json, "pitch_damping_sigma", motion->pitch_damping_sigma);
  json_text_number (json, "span_efficiency_sigma", motion->span_efficiency_sigma);
  json_text_close_object (json);
}

static void
write_controls (JsonText *json, const Figures *figures)
{
  json_text_open_array (json, "controls");
  for (size_t i = 0; i < figures->control_count; i++)
    {
      const ControlFigures *control = &figures->controls[i];

      json_text_open_object (json, NULL);
      json_text_string (json, "surface", control->surface->piece.id);
      json_text_string (json, "kind", control_kind_word (control->control->kind));
      json_text_number (json, "area_mm2", control->area_mm2);
      json_text_number (json, "roll_rate_deg_s", control->roll_rate_deg_s);
      json_text_string (json, "id", control->control->id);
      json_text_number (json, "area_share_percent", control->area_share_percent);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}

static const char *
severity_word (NoteSeverity severity)
{
  switch (severity)
    {
    case NOTE_ACT:
      return "act";
    case NOTE_LOOK:
      return "look";
    default:
      return "note";
    }
}

static void
write_notes (JsonText *json, const GPtrArray *notes)
{
  json_text_open_array (json, "notes");
  for (guint i = 0; i < notes->len; i++)
    {
      const Note *note = g_ptr_array_index (notes, i);

      json_text_open_object (json, NULL);
      json_text_string (json, "severity", severity_word (note->severity));
      json_text_string (json, "text", note->text);
      json_text_close_object (json);
    }
  json_text_close_array (json);
}

char *
report_json (const Figures *figures)
{
  JsonText json = json_text_begin ();

  json_text_string (&json, "name", aeroplane_traits (figures->aeroplane).name);
  write_surfaces (&json, figures);
  write_reference (&json, figures->reference);
  write_mass (&json, &figures->mass);
  write_neutral_point (&json, &figures->neutral_point);
  write_balance (&json, &figures->balance);
  write_parts (&json, figures->aeroplane);
  write_solutions (&json, figures);
  write_flight (&json, &figures->flight);
  write_controls (&json, figures);
  write_notes (&json, figures->notes);
  write_motion (&json, &figures->motion);
  report_write_structures (&json, figures);
  report_write_movers (&json, figures);
  report_write_ballast (&json, figures);
  report_write_hatch (&json, figures);
  nose_write (&json, figures->aeroplane);
  report_write_coverings (&json, figures);
  report_write_leads (&json, figures);
  budget_write (&json, figures);
  power_write (&json, &figures->power);
  report_write_groups (&json, figures);
  report_write_moments (&json, figures);
  return json_text_end (&json);
}
