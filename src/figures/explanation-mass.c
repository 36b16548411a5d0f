#include "figures/reckoning.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/contribution.h"
#include "figures/budget.h"
#include "figures/loads.h"
#include "figures/lead-words.h"
#include "figures/names.h"

/* As many rows as a person reads; the rest together in one. */
enum { ROWS = 10 };

/* One row to be: what is sorted by, and the sums that it brings. */
typedef struct { const Piece *piece; double weight, amount, moment; } Row;
typedef void (*AddRow) (Reckoning *self, const char *label, const Row *row);

static int
heavier_first (gconstpointer a, gconstpointer b)
{
  const Row *first = a, *second = b;

  return (first->weight < second->weight) - (first->weight > second->weight);
}

static void
add_rows (Reckoning *self, GArray *rows, AddRow add)
{
  Row rest = { .piece = NULL };
  guint left = 0;

  g_array_sort (rows, heavier_first);     /* a merge sort: stable */
  for (guint i = 0; i < rows->len; i++)
    {
      const Row *row = &g_array_index (rows, Row, i);

      if (i < ROWS || rows->len == ROWS + 1)
        add (self, piece_name (row->piece), row);
      else
        {
          rest.amount += row->amount;
          rest.moment += row->moment;
          left++;
        }
    }
  g_autofree char *label = g_strdup_printf (ngettext ("%u other", "%u others together", left), left);
  if (left)
    add (self, label, &rest);
}

/* "27 g at 124 mm" */
static void
add_place (Reckoning *self, const char *label, const Row *row)
{
  const double place = row->amount > 0 ? row->moment / row->amount : NAN;
  g_autofree char *mass = units_mass (self->units, row->amount), *at = units_length (self->units, place);

  if (row->amount > 0)
    /* TRANSLATORS: a mass and its place */
    reckoning_pair (self, label, g_strdup_printf (_("%s at %s"), mass, at), row->amount, place);
}

/* Each mass at its place along one axis, which `offset` names within LoadFigures; of the bare airframe, or of all aboard. */
static void
add_places (Reckoning *self, size_t offset, bool airframe)
{
  const Figures *figures = self->figures;
  g_autoptr (GArray) rows = g_array_new (FALSE, FALSE, sizeof (Row));

  for (size_t i = 0; i < figures->load_count; i++)
    {
      const LoadFigures *load = &figures->loads[i];
      const double place = *(const double *) ((const char *) load + offset);
      const Row row = { load->piece, load->mass_g, load->mass_g, load->mass_g * place };

      if (!airframe || budget_counts_as_airframe (load->piece, true))
        g_array_append_val (rows, row);
    }
  add_rows (self, rows, add_place);
}

static bool
reckon_centre (Reckoning *self, size_t offset, double centre, double sigma)
{
  if (!isfinite (centre))
    return false;
  add_places (self, offset, false);
  reckoning_gives_length (self, centre, sigma);
  return true;
}

/* Found by lifting it; once it was on the scale, masses have given in and no longer make what was reckoned of it before. */
bool
reckon_airframe_place (Reckoning *self)
{
  const AirframeFigures *airframe = &self->figures->airframe;
  const AeroplaneTraits traits = aeroplane_traits (self->figures->aeroplane);
  const bool found = traits.airframe > 0 && traits.airframe_balanced;
  const double sigma = found ? airframe_place_sigma (&traits) : airframe->reckoned_x_sigma_mm;
  Budget budget;

  if (!budget_of (self->figures, &budget) || !isfinite (budget.airframe_x_mm))
    return false;
  if (found)
    {
      reckoning_by (self, _("as found"));
      reckoning_length_known (self, _("Where it was found to balance"), traits.airframe_x, sigma);
    }
  if (found || airframe->weighed)
    reckoning_length_known (self, _("The same by its structures and parts"), airframe->reckoned_x_mm, airframe->reckoned_x_sigma_mm);
  else
    add_places (self, offsetof (LoadFigures, x_mm), true);
  reckoning_gives_length (self, budget.airframe_x_mm, sigma);
  reckoning_owes_words (self, found ? _("It is the hand's that lifted it: as typed, or two millimetres.")
                              : _("It is made of the deviations of the airframe's masses and places: find where it balances and type that, "
                                  "and it shrinks."));
  return true;
}

bool
reckon_balance_point (Reckoning *self)
{
  const MassFigures *mass = &self->figures->mass;

  if (!reckon_centre (self, offsetof (LoadFigures, x_mm), mass->x_mm, mass->x_sigma_mm))
    return false;
  if (isfinite (mass->x_sigma_mm))
    reckoning_owes (self, &mass->owed, NULL);
  return true;
}

/* What the deviation of a quantity is made of: every load's mass, place and shape. In m or kg m², for only their proportions are told. */
static void
owe_to_loads (Reckoning *self, MassQuantity quantity, double sigma)
{
  const Figures *figures = self->figures;
  const MassFigures *mass = &figures->mass;
  const MassSum centre = { .mass = mass->total_g * 1e-3, .x = mass->x_mm * 1e-3, .y = mass->y_mm * 1e-3, .z = mass->z_mm * 1e-3 };
  Contributions owed = { .count = 0 };

  if (!(sigma > 0))
    return;
  for (size_t i = 0; i < figures->load_count; i++)
    {
      const MassItem item = load_figures_item (&figures->loads[i]);
      const MassShares shares = mass_item_shares (&item, &centre, quantity);

      contribution_add (&owed, CONTRIBUTION_MASS, figures->loads[i].piece, sqrt (shares.by_mass));
      contribution_add (&owed, CONTRIBUTION_PLACE, figures->loads[i].piece, sqrt (shares.by_place));
      contribution_add (&owed, CONTRIBUTION_SHAPE, figures->loads[i].piece, sqrt (shares.by_shape));
    }
  reckoning_owes (self, &owed, NULL);
}

bool
reckon_balance_across (Reckoning *self)
{
  const MassFigures *mass = &self->figures->mass;

  if (!reckon_centre (self, offsetof (LoadFigures, y_mm), mass->y_mm, mass->y_sigma_mm))
    return false;
  owe_to_loads (self, MASS_Y, mass->y_sigma_mm);
  return true;
}

bool
reckon_balance_height (Reckoning *self)
{
  const MassFigures *mass = &self->figures->mass;

  if (!reckon_centre (self, offsetof (LoadFigures, z_mm), mass->z_mm, mass->z_sigma_mm))
    return false;
  owe_to_loads (self, MASS_Z, mass->z_sigma_mm);
  return true;
}

Contributions
reckoning_mass_owed (const Figures *figures)
{
  Contributions owed = { .count = 0 };

  for (size_t i = 0; i < figures->load_count; i++)
    contribution_add (&owed, CONTRIBUTION_MASS, figures->loads[i].piece, figures->loads[i].mass_sigma_g);
  return owed;
}

static void
add_mass (Reckoning *self, const char *label, const Row *row)
{
  reckoning_mass (self, label, row->amount);
}

bool
reckon_mass (Reckoning *self)
{
  const Figures *figures = self->figures;
  g_autoptr (GArray) rows = g_array_new (FALSE, FALSE, sizeof (Row));

  if (!(figures->mass.total_g > 0))
    return false;
  for (size_t i = 0; i < aeroplane_piece_count (figures->aeroplane); i++)
    {
      const Piece *piece = aeroplane_piece (figures->aeroplane, i);
      Part *part = piece_as_part (figures->aeroplane, piece);
      const double mass = piece->kind == PIECE_STRUCTURE ? figures_of_structure (figures, (const Structure *) piece)->mass_g
                        : part && part->aboard ? part->mass : 0;
      const Row row = { piece, mass, mass, 0 };

      if (mass > 0)
        g_array_append_val (rows, row);
      piece_unref (part ? &part->piece : NULL);
    }
  add_rows (self, rows, add_mass);
  reckoning_gives_mass (self, figures->mass.total_g, figures->mass.total_sigma_g);
  if (figures->mass.total_sigma_g > 0)
    {
      const Contributions owed = reckoning_mass_owed (figures);

      reckoning_owes (self, &owed, NULL);
    }
  return true;
}

static void
add_inertia (Reckoning *self, const char *label, const Row *row)
{
  reckoning_number (self, label, row->amount, 2, _("kg cm²"));
}

/* A load's share: its own and its mass times the squared distance from the axis through the balance point, kg cm². */
static double
share_of (const LoadFigures *load, double own_kgm2, double a_mm, double b_mm)
{
  return own_kgm2 * 1e4 + load->mass_g * (a_mm * a_mm + b_mm * b_mm) * 1e-5;
}

static double
share_about (const LoadFigures *load, const MassFigures *mass, MassQuantity axis)
{
  const double x = load->x_mm - mass->x_mm, y = load->y_mm - mass->y_mm, z = load->z_mm - mass->z_mm;

  switch (axis)
    {
    case MASS_ROLL:
      return share_of (load, load->own_roll_kgm2, y, z);
    case MASS_PITCH:
      return share_of (load, load->own_pitch_kgm2, x, z);
    default:
      return share_of (load, load->own_yaw_kgm2, x, y);
    }
}

static bool
reckon_inertia (Reckoning *self, MassQuantity axis, double inertia_kgm2, double sigma_kgm2)
{
  const Figures *figures = self->figures;
  g_autoptr (GArray) rows = g_array_new (FALSE, FALSE, sizeof (Row));

  if (!isfinite (inertia_kgm2))
    return false;
  for (size_t i = 0; i < figures->load_count; i++)
    {
      const double share = share_about (&figures->loads[i], &figures->mass, axis);
      const Row row = { figures->loads[i].piece, share, share, 0 };

      g_array_append_val (rows, row);
    }
  add_rows (self, rows, add_inertia);
  reckoning_gives_number (self, inertia_kgm2 * 1e4, sigma_kgm2 * 1e4, 2, _("kg cm²"));
  owe_to_loads (self, axis, sigma_kgm2);
  return true;
}

bool
reckon_inertia_roll (Reckoning *self)
{
  return reckon_inertia (self, MASS_ROLL, self->figures->mass.inertia_roll_kgm2, self->figures->mass.inertia_roll_sigma_kgm2);
}

bool
reckon_inertia_pitch (Reckoning *self)
{
  return reckon_inertia (self, MASS_PITCH, self->figures->mass.inertia_pitch_kgm2, self->figures->mass.inertia_pitch_sigma_kgm2);
}

bool
reckon_inertia_yaw (Reckoning *self)
{
  return reckon_inertia (self, MASS_YAW, self->figures->mass.inertia_yaw_kgm2, self->figures->mass.inertia_yaw_sigma_kgm2);
}
