#include "figures/mass-lists.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/lead-words.h"
#include "figures/loads.h"

static const struct { const char *word, *name; } groups_told[MASS_GROUP_COUNT] = {
  [MASS_STRUCTURE] = { "structure", NC_("group of masses", "Structure") }, [MASS_POWER] = { "power", NC_("group of masses", "Power") },
  [MASS_CONTROL] = { "control", NC_("group of masses", "Control") }, [MASS_GEAR] = { "landing-gear", NC_("group of masses", "Landing gear") },
  [MASS_BALLAST] = { "ballast", NC_("group of masses", "Ballast") }, [MASS_OTHER] = { "other", NC_("group of masses", "Other") } };

static const struct { const char *class; MassGroup group; } classes[] = {
  { "motor", MASS_POWER }, { "propeller", MASS_POWER }, { "spinner", MASS_POWER }, { "controller", MASS_POWER }, { "battery", MASS_POWER },
  { "receiver", MASS_CONTROL }, { "servo", MASS_CONTROL }, { "switch", MASS_CONTROL }, { "pushrod", MASS_CONTROL },
  { "wheels", MASS_GEAR }, { "undercarriage", MASS_GEAR }, { "cowl", MASS_STRUCTURE }, { "canopy", MASS_STRUCTURE },
  { "ballast", MASS_BALLAST } };

/* Kinds of the catalogue whose class is "other", by how they begin. */
static const struct { const char *kind; MassGroup group; } kinds[] = {
  { "mount-", MASS_POWER }, { "adapter-", MASS_POWER }, { "firewall", MASS_STRUCTURE }, { "lead-", MASS_CONTROL },
  { "plug-", MASS_CONTROL }, { "extension-", MASS_CONTROL }, { "horn", MASS_CONTROL }, { "clevis", MASS_CONTROL },
  { "connector", MASS_CONTROL }, { "hinges-", MASS_CONTROL }, { "tail-skid", MASS_GEAR }, { "tail-wheel", MASS_GEAR } };

const char *
mass_group_name (MassGroup group)
{
  return g_dpgettext2 (GETTEXT_PACKAGE, "group of masses", groups_told[group].name);
}

const char *
mass_group_word (MassGroup group)
{
  return groups_told[group].word;
}

MassGroup
mass_group_of (const Piece *piece)
{
  const Part *part = (const Part *) piece;

  if (piece->kind == PIECE_STRUCTURE)
    return MASS_STRUCTURE;
  if (piece->kind == PIECE_LEAD)
    return MASS_CONTROL;
  for (size_t i = 0; i < G_N_ELEMENTS (classes); i++)
    if (g_strcmp0 (part->class_name, classes[i].class) == 0)
      return classes[i].group;
  for (size_t i = 0; part->kind && i < G_N_ELEMENTS (kinds); i++)
    if (g_str_has_prefix (part->kind, kinds[i].kind))
      return kinds[i].group;
  return MASS_OTHER;
}

static void
add_to (MassGroupSum *sum, double mass, double sigma)
{
  sum->mass_g += mass;
  sum->sigma_g = hypot (sum->sigma_g, sigma);
  sum->count++;
}

/* As the figures have it, which a bare airframe on the scale corrects; what has no place yet is in no load. */
static const LoadFigures *
load_of (const Figures *figures, const Piece *piece)
{
  for (size_t i = 0; i < figures->load_count; i++)
    if (figures->loads[i].piece == piece)
      return &figures->loads[i];
  return NULL;
}

static void
add_piece (MassGroupSum groups[], const Figures *figures, const Piece *piece)
{
  const LoadFigures *load = load_of (figures, piece);
  Part *part = piece_as_part (figures->aeroplane, piece);

  if (load)
    add_to (&groups[mass_group_of (piece)], load->mass_g, load->mass_sigma_g);
  else if (part && part->aboard)
    add_to (&groups[mass_group_of (piece)], part->mass, part_mass_deviation (part));
  else if (piece->kind == PIECE_STRUCTURE)
    {
      const StructureFigures *structure = figures_of_structure (figures, (const Structure *) piece);

      add_to (&groups[MASS_STRUCTURE], structure->mass_g, structure->mass_sigma_g);
    }
  piece_unref (part ? &part->piece : NULL);
}

void
mass_groups_of (const Figures *figures, MassGroupSum groups[MASS_GROUP_COUNT])
{
  for (size_t i = 0; i < MASS_GROUP_COUNT; i++)
    groups[i] = (MassGroupSum) { 0 };
  for (size_t i = 0; i < aeroplane_piece_count (figures->aeroplane); i++)
    add_piece (groups, figures, aeroplane_piece (figures->aeroplane, i));
}

/* What differs by less than the first is equal, and stands in the document's order: processors differ in the last bits. */
static int
greatest_first (const void *a, const void *b, void *unused)
{
  const double equal = 1e-6, one = fabs (((const Moment *) a)->about_balance_g_mm), other = fabs (((const Moment *) b)->about_balance_g_mm);

  return (one < other - equal) - (one > other + equal);
}

GArray *
moments_of (const Figures *figures)
{
  GArray *moments = g_array_new (FALSE, FALSE, sizeof (Moment));

  for (size_t i = 0; i < figures->load_count; i++)
    {
      const LoadFigures *load = &figures->loads[i];
      const Moment moment = { load->piece, load->mass_g, load->x_mm, load->mass_g * (load->x_mm - figures->mass.x_mm),
                              load->mass_g * load->x_mm };
      g_array_append_val (moments, moment);
    }
  g_array_sort_with_data (moments, greatest_first, NULL);
  return moments;
}
