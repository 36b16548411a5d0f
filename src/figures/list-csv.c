#include "figures/report.h"

#include <math.h>
#include "figures/before-closing.h"
#include "figures/coverings.h"
#include "figures/csv-text.h"
#include "figures/cutting-list.h"
#include "figures/lead-lists.h"
#include "figures/mass-lists.h"
#include "figures/movers.h"
#include "figures/names.h"
#include "figures/station-list.h"

static const char *const words[REPORT_LIST_COUNT] = { "parts", "groups", "moments", "movers", "coverings", "leads", "cutting",
                                                      "before-closing", "formers" };

bool
report_list_from_word (const char *word, ReportList *list)
{
  for (size_t i = 0; i < G_N_ELEMENTS (words); i++)
    if (g_str_equal (words[i], word))
      {
        *list = (ReportList) i;
        return true;
      }
  return false;
}

const char *
report_list_word (ReportList list)
{
  return words[list];
}

static void
add_groups (GString *text, const Figures *figures)
{
  MassGroupSum groups[MASS_GROUP_COUNT];

  g_string_append (text, "group,mass_g,mass_sigma_g,share,pieces\r\n");
  mass_groups_of (figures, groups);
  for (MassGroup group = 0; group < MASS_GROUP_COUNT; group++)
    {
      csv_field (text, mass_group_word (group));
      csv_number (text, groups[group].mass_g);
      csv_number (text, groups[group].sigma_g);
      csv_share (text, groups[group].mass_g / figures->mass.total_g);
      csv_number (text, (double) groups[group].count);
      csv_end (text);
    }
}

static void
add_moments (GString *text, const Figures *figures)
{
  g_autoptr (GArray) moments = moments_of (figures);

  g_string_append (text, "id,name,group,mass_g,x_mm,about_balance_point_g_mm,about_datum_g_mm\r\n");
  for (guint i = 0; i < moments->len; i++)
    {
      const Moment *moment = &g_array_index (moments, Moment, i);

      csv_field (text, moment->piece->id);
      csv_field (text, piece_name (moment->piece));
      csv_field (text, mass_group_word (mass_group_of (moment->piece)));
      csv_number (text, moment->mass_g);
      csv_number (text, moment->x_mm);
      csv_number (text, moment->about_balance_g_mm);
      csv_number (text, moment->about_datum_g_mm);
      csv_end (text);
    }
}

static void
add_numbers (GString *text, const double *numbers, size_t count)
{
  for (size_t i = 0; i < count; i++)
    csv_number (text, numbers[i]);
}

static void
add_mover (GString *text, const Mover *mover)
{
  const double before[] = { mover->part->mass, mover->part->x, mover->moment_g_mm };
  const double behind[] = { mover->wanted_x_mm, mover->reach_x_mm, mover->left_mm };

  csv_field (text, mover->part->piece.id);
  csv_field (text, piece_name (&mover->part->piece));
  add_numbers (text, before, G_N_ELEMENTS (before));
  csv_share (text, mover->share);
  csv_field (text, mover->can_move ? "yes" : "no");
  add_numbers (text, behind, G_N_ELEMENTS (behind));
  csv_field (text, mover->balances ? "yes" : "no");
  csv_number (text, mover->wanted_g);
  csv_end (text);
}

static void
add_movers (GString *text, const Figures *figures)
{
  Movers movers = movers_of (figures);

  g_string_append (text, "id,name,mass_g,x_mm,about_balance_point_g_mm,share_of_all_mass,may_move,balances_alone_at_x_mm,"
                         "nearest_allowed_x_mm,balance_point_off_then_mm,balances_there,balances_with_mass_g\r\n");
  for (size_t i = 0; i < movers.count; i++)
    add_mover (text, &movers.of[i]);
  movers_clear (&movers);
}

static void
add_covering (GString *text, const Coverings *coverings, const CoveringFigures *covering)
{
  const double numbers[] = { covering->mass_g, covering->mass_sigma_g, covering->change_g, covering->balance_x_mm,
                             covering->balance_way_mm, covering->nose_g };

  csv_field (text, covering_scope_word (coverings->where.scope));
  csv_field (text, coverings->where.of ? coverings->where.of->id : NULL);
  csv_field (text, covering->covering->word);
  csv_field (text, covering->present ? "yes" : "no");
  add_numbers (text, numbers, G_N_ELEMENTS (numbers));
  csv_field (text, coverings->part ? coverings->part->piece.id : NULL);
  csv_number (text, covering->part_way_mm);
  csv_field (text, !coverings->part ? NULL : covering->part_reaches ? "yes" : "no");
  csv_end (text);
}

static void
add_coverings (GString *text, const Figures *figures)
{
  g_autoptr (GArray) wheres = covering_wheres (figures);

  g_string_append (text, "covers,piece_id,covering,there_now,covering_mass_g,covering_mass_sigma_g,aeroplane_heavier_by_g,"
                         "balance_point_x_mm,balance_point_aft_by_mm,more_at_the_nose_g,part_to_move_id,part_aft_by_mm,part_may_be_there\r\n");
  for (guint i = 0; i < wheres->len; i++)
    {
      const Coverings coverings = coverings_of (figures, g_array_index (wheres, CoveringWhere, i));

      for (size_t k = 0; k < coverings.count; k++)
        add_covering (text, &coverings, &coverings.of[k]);
    }
}

char *
report_list_csv (const Figures *figures, ReportList list)
{
  GString *text;

  if (list == REPORT_LIST_PARTS)
    return report_parts_csv (figures);
  text = g_string_new (NULL);
  if (list == REPORT_LIST_GROUPS)
    add_groups (text, figures);
  else if (list == REPORT_LIST_MOMENTS)
    add_moments (text, figures);
  else if (list == REPORT_LIST_MOVERS)
    add_movers (text, figures);
  else if (list == REPORT_LIST_COVERINGS)
    add_coverings (text, figures);
  else if (list == REPORT_LIST_LEADS)
    csv_leads (text, figures->aeroplane);
  else if (list == REPORT_LIST_FORMERS)
    csv_stations (text, figures->aeroplane);
  else if (list == REPORT_LIST_CUTTING)
    csv_cutting (text, figures);
  else
    csv_before_closing (text, figures);
  return g_string_free (text, FALSE);
}
