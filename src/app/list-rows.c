#include "trammel-config.h"
#include "app/list-rows.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>
#include "figures/lead-lists.h"
#include "figures/lead-words.h"
#include "figures/mass-lists.h"
#include "figures/movers.h"
#include "figures/names.h"

static void
row_free (gpointer data)
{
  ListRow *row = data;

  for (guint i = 0; i < LIST_COLUMNS; i++)
    g_free (row->cells[i]);
  g_strfreev (row->ids);
  g_free (row->words);
  g_free (row);
}

static void
set_column (ListRows *self, guint column, const char *title, const char *unit)
{
  self->titles[column] = title;
  self->units[column] = unit;
}

/* It goes forward or aft: that is said in words. */
static void
set_way_column (ListRows *self, guint column, const char *title)
{
  set_column (self, column, title, units_length_name (self->in));
  self->ways[column] = true;
}

static void
set_shares (ListRows *self, int first, int second, int third)
{
  self->shares[1] = first;
  self->shares[2] = second;
  self->shares[3] = third;
}

/* "17 forward", or "17 mm forward"; takes the figure. What is nought has no side. */
static char *
with_side (char *takes, double mm, const char *nought)
{
  g_autofree char *figure = takes;

  if (!isfinite (mm) || g_str_equal (figure, nought))
    return g_steal_pointer (&figure);
  return g_strdup_printf (mm < 0 ? _("%s forward") : _("%s aft"), figure);
}

static char *
way_cell (Units units, double mm)
{
  return with_side (units_length_figure (units, fabs (mm)), mm, "0");
}

static char *
way_words (Units units, double mm)
{
  g_autofree char *nought = units_length (units, 0);

  return with_side (units_length (units, fabs (mm)), mm, nought);
}

/* "Battery: Mass 27 g, Share 18 %": what the eye gathers from the headings. */
static char *
row_words (const ListRows *self, const ListRow *row)
{
  GString *words = g_string_new (row->cells[0]);

  for (guint i = 1; i < LIST_COLUMNS; i++) {
    g_autofree char *way = self->ways[i] ? way_words (self->in, row->keys[i]) : NULL;

    g_string_append_printf (words, "%s %s %s", i == 1 ? ":" : ",", self->titles[i], way != NULL ? way : row->cells[i]);
    if (way == NULL && *self->units[i])
      g_string_append_printf (words, " %s", self->units[i]);
  }
  return g_string_free (words, FALSE);
}

/* Takes the cells and the ids. */
static void
add_row (ListRows *self, ListRow row)
{
  row.words = row_words (self, &row);
  g_ptr_array_add (self->rows, g_memdup2 (&row, sizeof row));
}

/* What is chosen on the sheet for it: a structure is not drawn, what it is of is. */
static char **
ids_of (const Piece *piece)
{
  const char *id = piece->kind == PIECE_STRUCTURE ? ((const Structure *) piece)->of : piece->id;

  return id != NULL ? g_strsplit (id, "\n", 1) : NULL;
}

/* All parts of that group that are aboard. */
static char **
ids_of_group (const Aeroplane *aeroplane, MassGroup group)
{
  g_autoptr (GStrvBuilder) ids = g_strv_builder_new ();

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++) {
    const Part *part = aeroplane_part (aeroplane, i);

    if (part->aboard && part->piece.id != NULL && mass_group_of (&part->piece) == group)
      g_strv_builder_add (ids, part->piece.id);
  }
  return g_strv_builder_end (ids);
}

static void
fill_groups (ListRows *self, const Figures *figures)
{
  const Units units = self->in;
  MassGroupSum groups[MASS_GROUP_COUNT];
  const double all = figures->mass.total_g;

  set_column (self, 0, _("Group"), "");
  set_column (self, 1, _("Mass"), units_mass_name (units));
  set_column (self, 2, _("±"), units_mass_name (units));
  set_column (self, 3, _("Share"), "%");
  set_shares (self, 12, 12, 12);
  mass_groups_of (figures, groups);
  for (MassGroup group = 0; group < MASS_GROUP_COUNT; group++)
    if (groups[group].mass_g > 0)
      add_row (self, (ListRow) {
        .ids = ids_of_group (figures->aeroplane, group),
        .cells = { g_strdup (mass_group_name (group)), units_mass_figure (units, groups[group].mass_g),
                   units_mass_deviation_figure (units, groups[group].sigma_g), units_number (100 * groups[group].mass_g / all, 0) },
        .keys = { NAN, groups[group].mass_g, groups[group].sigma_g, groups[group].mass_g / all } });
  self->empty = _("Nothing aboard weighs anything yet: add parts, or type what the structure weighs.");
}

static void
fill_moments (ListRows *self, const Figures *figures)
{
  const Units units = self->in;
  g_autoptr (GArray) moments = moments_of (figures);

  set_column (self, 0, _("Part"), "");
  set_column (self, 1, _("Mass"), units_mass_name (units));
  /* Translators: heading of a column: how far forward or aft of the balance point */
  set_way_column (self, 2, _("Arm"));
  set_column (self, 3, _("Moment"), units_moment_name (units));
  set_shares (self, 7, 14, 15);
  for (guint i = 0; i < moments->len && isfinite (figures->mass.x_mm); i++) {
    const Moment *moment = &g_array_index (moments, Moment, i);
    const double arm = moment->x_mm - figures->mass.x_mm;

    add_row (self, (ListRow) {
      .ids = ids_of (moment->piece),
      .cells = { g_strdup (piece_name (moment->piece)), units_mass_figure (units, moment->mass_g), way_cell (units, arm),
                 units_moment_figure (units, moment->about_balance_g_mm) },
      .keys = { NAN, moment->mass_g, arm, moment->about_balance_g_mm } });
  }
  self->beneath = g_strdup (_("About the balance point; the moment of what is forward of it is less than nought. All moments together are nought."));
  self->empty = _("There is no balance point to take moments about: nothing aboard has a mass and a place yet.");
}

static void
add_mover (ListRows *self, const Movers *movers, const Mover *mover)
{
  const Units units = self->in;
  const double way = mover->told_x_mm - mover->part->x;
  /* A part that may not move is told of where it would balance. */
  const double left = mover->can_move || isnan (mover->told_x_mm) ? fabs (mover->left_mm) : 0;
  ListRow row = {
    .ids = ids_of (&mover->part->piece),
    .cells = { g_strdup (piece_name (&mover->part->piece)), way_cell (units, way),
               units_length_figure (units, left), units_mass_figure (units, mover->wanted_g) },
    .keys = { NAN, way, left, mover->wanted_g } };
  g_autofree char *told = mover_text (movers, mover, units);

  add_row (self, row);
  if (told == NULL)
    return;
  ListRow *added = g_ptr_array_index (self->rows, self->rows->len - 1);
  g_free (added->words);
  added->words = g_strdup_printf ("%s: %s", added->cells[0], told);
}

/* What two do together or how much is missing, and what is worth knowing of both ends. */
static char *
movers_beneath (const Movers *movers, const Figures *figures, Units units)
{
  g_autofree char *together = movers_text (movers, units), *ends = movers_ends_text (figures, units);

  if (together == NULL || ends == NULL)
    return g_strdup (together != NULL ? together : ends);
  /* Translators: one whole sentence after another */
  return g_strdup_printf (_("%s %s"), together, ends);
}

static void
fill_movers (ListRows *self, const Figures *figures, PlacesMemo *memo)
{
  Movers movers = memo != NULL ? movers_of_remembered (figures, memo) : movers_of (figures);

  set_column (self, 0, _("Part"), "");
  /* Translators: heading of a column: how far forward or aft a part alone is to be moved, as far as it can */
  set_way_column (self, 1, _("Move"));
  /* Translators: heading of a column: how far the balance point is still off after that, as far as the part may go */
  set_column (self, 2, _("Short by"), units_length_name (self->in));
  /* Translators: heading of a column: what a part would have to weigh in its place instead */
  set_column (self, 3, _("or weigh"), units_mass_name (self->in));
  set_shares (self, 12, 13, 11);
  for (size_t i = 0; i < movers.count; i++)
    add_mover (self, &movers, &movers.of[i]);
  self->beneath = movers_beneath (&movers, figures, self->in);
  self->empty = isfinite (movers.off_mm) ? _("No part aboard weighs anything yet: add parts with their masses.")
                                         : _("Where it must balance is not known yet: the findings say what is missing.");
  movers_clear (&movers);
}

static void
add_leg (ListRows *self, const Aeroplane *aeroplane, const Lead *lead, LeadLeg leg)
{
  const Units units = self->in;
  const LeadNeed need = lead_need_of (aeroplane, lead, leg);
  const double length = lead_leg_length (lead, leg);

  add_row (self, (ListRow) {
    .ids = ids_of (&lead->piece),
    .cells = { lead_leg_title (aeroplane, lead, leg), units_length_figure (units, length), units_length_figure (units, need.needed),
               lead_extension_figure (&need, units) },
    /* More than one makes up for is the longest of all. */
    .keys = { NAN, length, need.needed, need.missing > 0 && isnan (need.extension) ? INFINITY : need.extension } });
}

static void
fill_leads (ListRows *self, const Figures *figures)
{
  const Aeroplane *aeroplane = figures->aeroplane;
  const char *unit = units_length_name (self->in);

  set_column (self, 0, _("Lead"), "");
  /* Translators: heading of a column: how long a lead is */
  set_column (self, 1, _("Length"), unit);
  /* Translators: heading of a column: how long a lead must be */
  set_column (self, 2, _("Needs"), unit);
  /* Translators: heading of a column: how long an extension lead is to be bought */
  set_column (self, 3, _("Extension"), unit);
  set_shares (self, 11, 11, 14);
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_LEAD); i++)
    for (int leg = 0; leg < lead_leg_count (aeroplane_lead (aeroplane, i)); leg++)
      add_leg (self, aeroplane, aeroplane_lead (aeroplane, i), leg);
  self->beneath = leads_to_buy (aeroplane, self->in);
  if (self->beneath == NULL)
    self->beneath = g_strdup (_("No extension is needed. A lead whose length is not given is not looked at."));
  self->empty = _("There is no lead yet: lay each with the Lead tool from part to part.");
}

ListRows *
list_rows_new (const Figures *figures, Units units, ReportList list, PlacesMemo *memo)
{
  ListRows *self = g_new0 (ListRows, 1);

  self->in = units;
  self->rows = g_ptr_array_new_with_free_func (row_free);
  if (list == REPORT_LIST_GROUPS)
    fill_groups (self, figures);
  else if (list == REPORT_LIST_MOMENTS)
    fill_moments (self, figures);
  else if (list == REPORT_LIST_LEADS)
    fill_leads (self, figures);
  else
    fill_movers (self, figures, memo);
  if (self->rows->len > 0)
    self->empty = NULL;
  else
    g_clear_pointer (&self->beneath, g_free);
  return self;
}

void
list_rows_free (ListRows *self)
{
  g_ptr_array_unref (self->rows);
  g_free (self->beneath);
  g_free (self);
}

typedef struct { guint column; bool descending; } Order;

static int
compare_rows (gconstpointer a, gconstpointer b, gpointer data)
{
  const ListRow *one = *(ListRow *const *) a, *other = *(ListRow *const *) b;
  const Order *order = data;
  const double first = one->keys[order->column], second = other->keys[order->column];
  int way = (first > second) - (first < second);

  if (order->column == 0)
    way = g_utf8_collate (one->cells[0], other->cells[0]);
  else if (isnan (first) || isnan (second))
    return !!isnan (first) - !!isnan (second);
  return order->descending ? -way : way;
}

void
list_rows_sort (ListRows *self, guint column, bool descending)
{
  Order order = { column, descending };

  g_ptr_array_sort_with_data (self->rows, compare_rows, &order);
}

/* A spreadsheet takes "−3" for a word, and "–" for one too. */
static char *
plain_text (const char *cell)
{
  GString *text = g_string_new (strcmp (cell, "\u2013") == 0 ? "" : cell);

  g_string_replace (text, "\u2212", "-", 0);
  g_string_replace (text, "\u00a0", " ", 0);
  g_string_replace (text, "\t", " ", 0);
  g_string_replace (text, "\n", " ", 0);
  return g_string_free (text, FALSE);
}

/* Translators: heading of a column of a spreadsheet: how far aft, less than nought where it is forward */
static const char aft_by[] = N_("Aft by");

char *
list_rows_text (const ListRows *self)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < LIST_COLUMNS; i++)
    g_string_append_printf (text, "%s%s%s%s", i > 0 ? "\t" : "", self->ways[i] ? _(aft_by) : self->titles[i],
                            *self->units[i] ? ", " : "", self->units[i]);
  for (guint k = 0; k < self->rows->len; k++) {
    const ListRow *row = g_ptr_array_index (self->rows, k);

    for (guint i = 0; i < LIST_COLUMNS; i++) {
      g_autofree char *way = self->ways[i] ? units_length_figure (self->in, row->keys[i]) : NULL;
      g_autofree char *cell = plain_text (way != NULL ? way : row->cells[i]);
      g_string_append_printf (text, "%c%s", i > 0 ? '\t' : '\n', cell);
    }
  }
  g_string_append_c (text, '\n');
  return g_string_free (text, FALSE);
}
