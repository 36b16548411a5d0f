#include "figures/loads.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "figures/contribution.h"
#include "figures/lead-words.h"
#include "figures/names.h"
#include "figures/notes.h"
#include "figures/structure-figures.h"

static const unsigned kinds = 1u << PIECE_SURFACE | 1u << PIECE_BODY | 1u << PIECE_STRUCTURE | 1u << PIECE_PART
                              | 1u << PIECE_LEAD;

static const unsigned kinds_of_structures = 1u << PIECE_SURFACE | 1u << PIECE_BODY | 1u << PIECE_STRUCTURE;

static void
clear_sum (Loads *self)
{
  piece_key_clear (&self->key);
  g_clear_pointer (&self->items, g_free);
  g_clear_pointer (&self->pieces, g_free);
  g_clear_pointer (&self->told, g_free);
  g_clear_pointer (&self->notes, g_ptr_array_unref);
}

static void
clear_structures (Loads *self)
{
  piece_key_clear (&self->structure_key);
  structure_figures_free (self->structures, self->structure_count);
  self->structures = NULL;
  self->structure_count = 0;
}

void
loads_clear (Loads *self)
{
  clear_sum (self);
  clear_structures (self);
}

static const Spread *
spread_of (const Aerodynamics *aerodynamics, const Structure *structure)
{
  return structure->of ? aerodynamics_spread (aerodynamics, structure->of) : NULL;
}

/* What structures weigh is no matter of the parts, one of which is moved far more often. */
static void
weigh_structures (Loads *self, const Aerodynamics *aerodynamics, const Aeroplane *aeroplane)
{
  const size_t count = aeroplane_count (aeroplane, PIECE_STRUCTURE);

  self->structure_key.kinds = kinds_of_structures;
  if (piece_key_matches (&self->structure_key, aeroplane))
    return;
  clear_structures (self);
  piece_key_take (&self->structure_key, aeroplane);
  self->structure_count = count;
  self->structures = g_new (StructureFigures, count);
  for (size_t i = 0; i < count; i++)
    self->structures[i] = structure_figures_of (aeroplane_structure (aeroplane, i), spread_of (aerodynamics, aeroplane_structure (aeroplane, i)));
}

/* A part that is still the same one, at the same place in the list, is the same mass: most are, when one is moved. */
static void
add_part (Loads *self, const Loads *before, const Part *part)
{
  const size_t at = self->count;

  if (!part->aboard)
    return;
  self->figures.total_g += part->mass;
  self->pieces[at] = &part->piece;
  self->items[at] = at < before->count && before->pieces[at] == &part->piece ? before->told[at] : load_of_part (part);
  self->count++;
}

/* What a lead weighs itself; mostly it is part of what hangs on it. */
static void
add_lead (Loads *self, const Aeroplane *aeroplane, const Lead *lead)
{
  Part *part = lead->mass > 0 ? lead_as_part (aeroplane, lead) : NULL;

  if (part && part->aboard)
    {
      self->figures.total_g += part->mass;
      self->pieces[self->count] = &lead->piece;
      self->items[self->count++] = load_of_part (part);
    }
  if (part)
    piece_unref (&part->piece);
}

/* A mass without a place spoils the whole sum, so it is told and the sum withheld. */
static void
add_structure (Loads *self, const Aerodynamics *aerodynamics, const StructureFigures *weighed)
{
  const SurfaceFigures *reference = aerodynamics_reference (aerodynamics);
  const Structure *structure = weighed->structure;
  const Spread *spread = spread_of (aerodynamics, structure);
  CoreStatus status;

  self->figures.total_g += weighed->mass_g;
  status = load_of_structure (weighed, spread, reference ? reference->planform.mac : NAN, &self->items[self->count]);
  if (status == CORE_OK)
    self->pieces[self->count++] = &structure->piece;
  else
    {
      self->status = status;
      if (!spread)
        notes_add_problem (self->notes, &structure->piece, _("The mass “%s” has no place: it is of nothing that is drawn. Give it "
                                                             "a place, or draw what it is of."), piece_name (&structure->piece));
      else
        notes_add (self->notes, NOTE_LOOK, &structure->piece, _("The mass “%s” has no place until the outline of “%s” encloses "
                                                                "an area; the balance point is withheld."),
                   piece_name (&structure->piece), piece_name (spread->piece));
    }
}

static void
gather (Loads *self, const Loads *before, const Aerodynamics *aerodynamics, const Aeroplane *aeroplane)
{
  const StructureFigures *weighed = self->structures;      /* as many, and in the same order */

  self->items = g_new (MassItem, self->key.pieces->len);
  self->pieces = g_new (const Piece *, self->key.pieces->len);
  for (guint i = 0; i < self->key.pieces->len; i++)
    {
      const Piece *piece = g_ptr_array_index (self->key.pieces, i);

      if (piece->kind == PIECE_PART)
        add_part (self, before, (const Part *) piece);
      else if (piece->kind == PIECE_STRUCTURE)
        add_structure (self, aerodynamics, weighed++);
      else if (piece->kind == PIECE_LEAD)
        add_lead (self, aeroplane, (const Lead *) piece);
    }
  self->told = g_memdup2 (self->items, self->count * sizeof *self->items);
}

/* What each mass and each place adds to the balance point's deviation, and to the total's. */
static void
share_deviations (Loads *self)
{
  double variance = 0;

  for (size_t i = 0; i < self->count; i++)
    {
      const MassItem *item = &self->items[i];

      variance += item->mass_sigma * item->mass_sigma;
      contribution_add (&self->figures.owed, CONTRIBUTION_MASS, self->pieces[i],
                        1e3 * (item->x - self->sum.x) * item->mass_sigma / self->sum.mass);
      contribution_add (&self->figures.owed, CONTRIBUTION_PLACE, self->pieces[i], 1e3 * item->mass * item->x_sigma / self->sum.mass);
    }
  self->figures.total_sigma_g = 1e3 * sqrt (variance);
}

/* An item of unknown deviation leaves the balance point known and its deviation unknown. */
static bool
strip_unknown_deviations (MassItem items[], size_t count)
{
  bool known = true;

  for (size_t i = 0; i < count; i++)
    if (isnan (items[i].x_sigma))
      {
        items[i].x_sigma = 0;
        known = false;
      }
  return known;
}

static void
take_deviations (MassFigures *figures, const MassSum *sum)
{
  figures->y_sigma_mm = sum->y_sigma * 1e3;
  figures->z_sigma_mm = sum->z_sigma * 1e3;
  figures->inertia_roll_sigma_kgm2 = sum->roll_sigma;
  figures->inertia_pitch_sigma_kgm2 = sum->pitch_sigma;
  figures->inertia_yaw_sigma_kgm2 = sum->yaw_sigma;
}

static void
add_up (Loads *self)
{
  const bool known = strip_unknown_deviations (self->items, self->count);
  const double total = self->figures.total_g;

  self->figures = (MassFigures) { total, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, { .count = 0 }, NAN, NAN, NAN, NAN, NAN };
  if (self->status == CORE_OK)
    self->status = mass_sum (self->items, self->count, &self->sum);
  if (self->status != CORE_OK)
    return;
  self->figures = (MassFigures) {
    .total_g = total, .x_mm = self->sum.x * 1e3, .y_mm = self->sum.y * 1e3, .z_mm = self->sum.z * 1e3,
    .x_sigma_mm = known ? self->sum.x_sigma * 1e3 : NAN,
    .inertia_roll_kgm2 = self->sum.roll, .inertia_pitch_kgm2 = self->sum.pitch, .inertia_yaw_kgm2 = self->sum.yaw,
    .y_sigma_mm = NAN, .z_sigma_mm = NAN, .inertia_roll_sigma_kgm2 = NAN, .inertia_pitch_sigma_kgm2 = NAN, .inertia_yaw_sigma_kgm2 = NAN,
  };
  share_deviations (self);
  if (known)
    take_deviations (&self->figures, &self->sum);
  if (!known)
    notes_add (self->notes, NOTE_NOTE, NULL, _("Without a wing the deviation of a structure's place is not known, nor is that of "
                                               "the balance point."));
}

/* By value: a name is no matter of the scale's. */
static bool
is_weighed_alike (const AeroplaneTraits *a, const AeroplaneTraits *b)
{
  return a->airframe == b->airframe && a->airframe_sigma == b->airframe_sigma && a->airframe_balanced == b->airframe_balanced
         && (!a->airframe_balanced || (a->airframe_x == b->airframe_x && a->airframe_x_sigma == b->airframe_x_sigma));
}

static void
find_what_to_weigh (Loads *self)
{
  double most = 0, second = 0;

  if (self->status != CORE_OK)
    return;
  for (size_t i = 0; i < self->count; i++)
    {
      const double variance = mass_item_x_variance (&self->items[i], self->sum.x);

      if (variance > most)
        {
          second = most, self->weigh_first[1] = self->weigh_first[0];
          most = variance, self->weigh_first[0] = self->pieces[i];
        }
      else if (variance > second)
        second = variance, self->weigh_first[1] = self->pieces[i];
    }
}

void
loads_update (Loads *self, const Aerodynamics *aerodynamics, const Aeroplane *aeroplane)
{
  const AeroplaneTraits traits = aeroplane_traits (aeroplane);
  PieceKey key = { .kinds = kinds };
  Loads before = *self;          /* and its key: no other piece can lie where one of it does */

  self->key.kinds = kinds;
  if (piece_key_matches (&self->key, aeroplane) && is_weighed_alike (&self->traits, &traits))
    return;
  piece_key_take (&key, aeroplane);
  *self = (Loads) { .key = key, .notes = notes_new (), .traits = traits,
                    .structure_key = self->structure_key, .structures = self->structures, .structure_count = self->structure_count };
  self->traits.name = NULL;
  weigh_structures (self, aerodynamics, aeroplane);
  gather (self, &before, aerodynamics, aeroplane);
  clear_sum (&before);
  loads_weigh_airframe (self);
  add_up (self);
  find_what_to_weigh (self);
  if (!(self->figures.total_g > 0) && !self->notes->len)
    notes_add (self->notes, NOTE_LOOK, NULL, _("There are no masses yet, so there is no balance point. Add parts and structures."));
  for (size_t i = 0; i < self->structure_count; i++)
    structure_note (&self->structures[i], self->notes);
  structure_note_sheets (aeroplane, self->notes);
}
