#include "balance/arrange-program-private.h"

#include <math.h>

/* No shorter than between both boxes, nor than one box beside the other. */
static double
least_length (const Space *space, const Node *node, size_t index)
{
  const SpaceLead *lead = &space->leads[index];
  const Span *from = &node->spans[lead->from], *to = &node->spans[lead->to];
  double sum = 0, apart = 0;

  if (lead->over)
    return lead->fixed;
  for (size_t axis = 0; axis < AXES; axis++)
    {
      const double between = fmax (0, fmax (from->low[axis] - to->high[axis], to->low[axis] - from->high[axis]));

      sum += between * between;
    }
  if (lead->pair < space->pair_count)
    apart = node_least_apart (space, node, lead->pair);
  return lead->fixed + fmax (sqrt (sum), apart);
}

static void
bound_column (glp_prob *lp, int column, double low, double high)
{
  glp_set_col_bnds (lp, column, high - low > 1e-9 ? GLP_DB : GLP_FX, low, high);
}

static void
apply_way (Program *self, size_t index, int way)
{
  const SpacePair *pair = &self->space->pairs[index];
  const int row = self->first_pair_row + (int) index;
  const size_t axis = (size_t) way / 2;

  if (way < 0 || way >= WAYS)
    {
      glp_set_row_bnds (self->lp, row, GLP_FR, 0, 0);
      return;
    }
  if (self->axes[index] != axis)
    glp_set_mat_row (self->lp, row, 2, (const int[]) { 0, column_of_part (pair->b, axis), column_of_part (pair->a, axis) },
                     (const double[]) { 0, 1, -1 });
  self->axes[index] = (unsigned char) axis;
  if (way % 2 == 0)
    glp_set_row_bnds (self->lp, row, GLP_LO, pair->apart[axis], 0);
  else
    glp_set_row_bnds (self->lp, row, GLP_UP, 0, -pair->apart[axis]);
}

void
program_apply (Program *self, const Node *node)
{
  const Space *space = self->space;

  for (size_t i = 0; i < space->part_count; i++)
    for (size_t axis = 0; axis < AXES; axis++)
      bound_column (self->lp, column_of_part (i, axis), node->spans[i].low[axis], node->spans[i].high[axis]);
  for (size_t i = 0; i < space->lead_count; i++)
    glp_set_col_bnds (self->lp, column_of_lead (self, i), GLP_LO, least_length (space, node, i), 0);
  for (size_t i = 0; i < space->pair_count; i++)
    apply_way (self, i, node->ways[i]);
}

static bool
solve_once (Program *self, double cutoff, bool *failed)
{
  int error;

  self->options.obj_ul = cutoff;
  error = glp_simplex (self->lp, &self->options);
  if (error && error != GLP_EOBJUL)
    {
      glp_std_basis (self->lp);
      self->options.meth = GLP_PRIMAL;
      error = glp_simplex (self->lp, &self->options);
      self->options.meth = GLP_DUALP;
    }
  *failed = *failed || (error && error != GLP_EOBJUL);
  return error == 0 && glp_get_status (self->lp) == GLP_OPT && glp_get_obj_val (self->lp) < cutoff;
}

bool
program_bound (Program *self, const Node *node, double cutoff, bool *failed)
{
  program_apply (self, node);
  return solve_once (self, cutoff, failed);
}

bool
program_solve (Program *self, const Node *node, double cutoff, double rounding, bool *failed)
{
  const int many = 60;
  const size_t many_planes = 60;

  if (self->plane_count > many_planes)
    program_drop_planes (self, false);
  program_apply (self, node);
  for (int round = 0; round < many; round++)
    {
      if (!solve_once (self, cutoff, failed))
        return false;
      if (program_add_lead_planes (self, rounding) + program_add_moments (self) == 0)
        return true;
      *failed = *failed || self->no_memory;
    }
  *failed = true;
  return true;
}

double
program_value (const Program *self)
{
  return glp_get_obj_val (self->lp);
}

void
program_places (const Program *self, double places[][AXES])
{
  for (size_t i = 0; i < self->space->part_count; i++)
    for (size_t axis = 0; axis < AXES; axis++)
      places[i][axis] = glp_get_col_prim (self->lp, column_of_part (i, axis));
}
