#include "balance/arrange-program-private.h"

#include <math.h>
#include <stdlib.h>

/* Columns: three a part, those below, two a lead, three a part for how far it is moved. */
enum { NOSE, TAIL, OFF, BAND, SINGLE_COLUMNS };

static const double thousandth = 1e-3;
/* Small enough that a millimetre of lead is worth any of it. */
static const double weight_across = 1e-2, weight_moved = 1e-3;

int
column_of_part (size_t part, size_t axis)
{
  return 1 + (int) (AXES * part + axis);
}

static int
column_single (const Program *self, int which)
{
  return 1 + (int) (AXES * self->space->part_count) + which;
}

int
column_of_lead (const Program *self, size_t lead)
{
  return column_single (self, SINGLE_COLUMNS) + 2 * (int) lead;
}

static int
column_moved (const Program *self, size_t part, size_t axis)
{
  return column_of_lead (self, self->space->lead_count) + (int) (AXES * part + axis);
}

int
program_add_row (Program *self, const int columns[], const double values[], int count, double least)
{
  const int row = glp_add_rows (self->lp, 1);

  /* GLPK counts from one: the arrays' first place is not used. */
  glp_set_mat_row (self->lp, row, count, columns, values);
  glp_set_row_bnds (self->lp, row, GLP_LO, least, 0);
  return row;
}

/* Σ share x + ballast (at − limit) is with sign 1 not less than the limit, with −1 not more. `lax` is the column of what may be missed. */
static void
add_balance_row (Program *self, double limit, double sign, int lax)
{
  const Space *space = self->space;
  int columns[PARTS_MOST + 4];
  double values[PARTS_MOST + 4];
  int count = 0;

  for (size_t i = 0; i < space->part_count; i++)
    {
      columns[++count] = column_of_part (i, 0);
      values[count] = sign * space->parts[i].share;
    }
  columns[++count] = column_single (self, NOSE);
  values[count] = sign * (space->nose - limit) * thousandth;
  columns[++count] = column_single (self, TAIL);
  values[count] = sign * (space->tail - limit) * thousandth;
  columns[++count] = column_single (self, lax);
  values[count] = 1;
  program_add_row (self, columns, values, count, sign * (limit - space->other));
}

static void
add_ballast_row (Program *self)
{
  const int columns[3] = { 0, column_single (self, NOSE), column_single (self, TAIL) };

  self->ballast_row = program_add_row (self, columns, (const double[]) { 0, -1, -1 }, 2, 0);
  glp_set_row_bnds (self->lp, self->ballast_row, GLP_FR, 0, 0);
}

/* One a pair; along which axis it keeps the two apart is set when that is decided. */
static void
add_pair_rows (Program *self)
{
  const Space *space = self->space;

  self->first_pair_row = glp_get_num_rows (self->lp) + 1;
  for (size_t i = 0; i < space->pair_count; i++)
    {
      glp_add_rows (self->lp, 1);
      self->axes[i] = AXES;
    }
}

/* Across a part is moved from the centre line, else from where it is. */
static void
add_moved_rows (Program *self)
{
  const Space *space = self->space;

  for (size_t i = 0; i < space->part_count; i++)
    for (size_t axis = 0; axis < AXES; axis++)
      {
        const double from = axis == 1 ? 0 : space->parts[i].now[axis];
        const int columns[3] = { 0, column_moved (self, i, axis), column_of_part (i, axis) };

        if (!space->parts[i].moves)
          continue;
        program_add_row (self, columns, (const double[]) { 0, 1, -1 }, 2, -from);
        program_add_row (self, columns, (const double[]) { 0, 1, 1 }, 2, from);
      }
}

static void
add_order_rows (Program *self)
{
  const Space *space = self->space;

  for (size_t i = 0; i < space->part_count; i++)
    if (space->parts[i].before < space->part_count)
      program_add_row (self, (const int[]) { 0, column_of_part (i, 0), column_of_part (space->parts[i].before, 0) },
                       (const double[]) { 0, 1, -1 }, 2, 0);
}

static void
add_tie_rows (Program *self)
{
  const Space *space = self->space;

  for (size_t i = 0; i < space->part_count; i++)
    for (size_t axis = 0; axis < AXES && space->parts[i].leader != i; axis++)
      {
        const double offset = space_tie_offset (space, i, axis);
        const int columns[3] = { 0, column_of_part (i, axis), column_of_part (space->parts[i].leader, axis) };

        glp_set_row_bnds (self->lp, program_add_row (self, columns, (const double[]) { 0, 1, -1 }, 2, offset), GLP_FX, offset, offset);
      }
}

static void
add_lead_rows (Program *self)
{
  const Space *space = self->space;

  for (size_t i = 0; i < space->lead_count; i++)
    {
      const int columns[3] = { 0, column_of_lead (self, i) + 1, column_of_lead (self, i) };

      glp_set_col_bnds (self->lp, column_of_lead (self, i) + 1, GLP_FX, 0, 0);
      if (isfinite (space->leads[i].limit))
        program_add_row (self, columns, (const double[]) { 0, 1, -1 }, 2, -space->leads[i].limit);
    }
}

Program *
program_new (const Space *space, const Node *whole)
{
  Program *self = calloc (1, sizeof *self);

  if (!self || !(self->axes = malloc (space->pair_count + 1)))
    {
      free (self);
      return NULL;
    }
  self->space = space;
  self->whole = whole;
  self->lp = glp_create_prob ();
  glp_add_cols (self->lp, column_moved (self, space->part_count, 0) - 1);
  for (int j = column_single (self, 0); j <= glp_get_num_cols (self->lp); j++)
    glp_set_col_bnds (self->lp, j, GLP_LO, 0, 0);
  glp_set_col_bnds (self->lp, column_single (self, BAND), GLP_FX, 0, 0);
  add_balance_row (self, space->forward, 1, BAND);
  add_balance_row (self, space->aft, -1, BAND);
  add_balance_row (self, space->aim, 1, OFF);
  add_balance_row (self, space->aim, -1, OFF);
  add_ballast_row (self);
  add_order_rows (self);
  add_tie_rows (self);
  add_lead_rows (self);
  add_moved_rows (self);
  add_pair_rows (self);
  self->first_plane_row = glp_get_num_rows (self->lp) + 1;
  glp_init_smcp (&self->options);
  self->options.msg_lev = GLP_MSG_OFF;
  self->options.meth = GLP_DUALP;
  self->options.it_lim = 20000;
  return self;
}

void
program_free (Program *self)
{
  if (!self)
    return;
  glp_delete_prob (self->lp);
  free (self->planes);
  free (self->axes);
  free (self);
}

static void
free_columns (Program *self, bool leads, bool band)
{
  for (size_t i = 0; i < self->space->lead_count; i++)
    glp_set_col_bnds (self->lp, column_of_lead (self, i) + 1, leads ? GLP_LO : GLP_FX, 0, 0);
  glp_set_col_bnds (self->lp, column_single (self, BAND), band ? GLP_LO : GLP_FX, 0, 0);
}

void
program_set_goal (Program *self, Goal goal)
{
  const Space *space = self->space;

  self->goal = goal;
  program_drop_planes (self, false);
  for (int j = 0; j <= glp_get_num_cols (self->lp); j++)
    glp_set_obj_coef (self->lp, j, 0);
  glp_set_obj_coef (self->lp, column_single (self, NOSE), goal == GOAL_BALLAST);
  glp_set_obj_coef (self->lp, column_single (self, TAIL), goal == GOAL_BALLAST);
  glp_set_obj_coef (self->lp, column_single (self, OFF), goal == GOAL_AIM);
  glp_set_obj_coef (self->lp, column_single (self, BAND), goal == GOAL_BAND);
  for (size_t i = 0; i < space->lead_count; i++)
    {
      glp_set_obj_coef (self->lp, column_of_lead (self, i), goal == GOAL_LEADS);
      glp_set_obj_coef (self->lp, column_of_lead (self, i) + 1, goal == GOAL_LONGER_LEADS);
    }
  for (size_t i = 0; i < space->part_count && goal == GOAL_LEADS; i++)
    for (size_t axis = 0; axis < AXES && space->parts[i].moves; axis++)
      glp_set_obj_coef (self->lp, column_moved (self, i, axis), axis == 1 ? weight_across : space->parts[i].alike ? 0 : weight_moved);
  free_columns (self, goal == GOAL_LONGER_LEADS || goal == GOAL_BAND, goal == GOAL_BAND);
}

void
program_let_go (Program *self)
{
  self->without_moments = true;
  program_drop_planes (self, true);
  glp_std_basis (self->lp);
  free_columns (self, true, true);
}

void
program_hold (Program *self, Goal goal, double most)
{
  if (goal == GOAL_AIM)
    glp_set_col_bnds (self->lp, column_single (self, OFF), most > 0 ? GLP_DB : GLP_FX, 0, most);
  else if (goal == GOAL_BALLAST)
    glp_set_row_bnds (self->lp, self->ballast_row, GLP_LO, -most, 0);
}

void
program_hold_nothing (Program *self)
{
  glp_set_col_bnds (self->lp, column_single (self, OFF), GLP_LO, 0, 0);
  glp_set_row_bnds (self->lp, self->ballast_row, GLP_FR, 0, 0);
}
