#include "balance/arrange-program-private.h"

#include <stdlib.h>

/* Of the rows that stay whether each bounds, then of the planes there were, then of the columns. */
struct Basis {
  size_t plane_count;
  int columns;
  Plane *planes;
  unsigned char *stats;
};

void
program_add_plane (Program *self, const int columns[], const double values[], int count, double least)
{
  if (self->plane_count == self->plane_space)
    {
      const size_t wider = 2 * self->plane_space + 64;
      Plane *planes = realloc (self->planes, wider * sizeof *planes);

      if (!planes)
        {
          self->no_memory = true;
          return;
        }
      self->planes = planes;
      self->plane_space = wider;
    }
  program_add_row (self, columns, values, count, least);
  self->planes[self->plane_count++] = (Plane) { .number = self->planes_made++ };
}

void
program_drop_planes (Program *self, bool all)
{
  int *rows = malloc ((self->plane_count + 1) * sizeof *rows), count = 0;
  size_t left = 0;

  if (!rows)
    return;
  for (size_t i = 0; i < self->plane_count; i++)
    {
      const int row = self->first_plane_row + (int) i;

      if (all || (glp_get_row_stat (self->lp, row) == GLP_BS && !self->planes[i].kept))
        rows[++count] = row;
      else
        self->planes[left++] = self->planes[i];
    }
  self->plane_count = left;
  if (count)
    glp_del_rows (self->lp, count, rows);
  free (rows);
}

Basis *
basis_keep (Program *program)
{
  const int rows = program->first_plane_row - 1 + (int) program->plane_count, columns = glp_get_num_cols (program->lp);
  Basis *self = calloc (1, sizeof *self);

  if (!self)
    return NULL;
  self->plane_count = program->plane_count;
  self->columns = columns;
  self->planes = malloc ((program->plane_count + 1) * sizeof *self->planes);
  self->stats = malloc ((size_t) (rows + columns));
  if (!self->planes || !self->stats)
    {
      self->plane_count = 0;
      basis_let_go (self, program);
      return NULL;
    }
  for (int i = 0; i < rows; i++)
    self->stats[i] = (unsigned char) glp_get_row_stat (program->lp, i + 1);
  for (int j = 0; j < columns; j++)
    self->stats[rows + j] = (unsigned char) glp_get_col_stat (program->lp, j + 1);
  for (size_t i = 0; i < program->plane_count; i++)
    {
      program->planes[i].kept += self->stats[program->first_plane_row - 1 + (int) i] != GLP_BS;
      self->planes[i] = program->planes[i];
    }
  return self;
}

/* Which of the basis's planes is the program's; plane_count when it was added since. Both are in the order of their numbers, so that
 * the search goes on from where the last one ended. */
static size_t
find_plane (const Basis *self, const Plane *plane, size_t *from)
{
  while (*from < self->plane_count && self->planes[*from].number < plane->number)
    ++*from;
  return *from < self->plane_count && self->planes[*from].number == plane->number ? *from : self->plane_count;
}

void
basis_take (const Basis *self, Program *program)
{
  const int fixed = program->first_plane_row - 1, rows = fixed + (int) self->plane_count;

  for (int i = 0; i < fixed; i++)
    glp_set_row_stat (program->lp, i + 1, self->stats[i]);
  for (size_t i = 0, from = 0; i < program->plane_count; i++)
    {
      const size_t was = find_plane (self, &program->planes[i], &from);

      glp_set_row_stat (program->lp, fixed + (int) i + 1, was < self->plane_count ? self->stats[fixed + (int) was] : GLP_BS);
    }
  for (int j = 0; j < self->columns; j++)
    glp_set_col_stat (program->lp, j + 1, self->stats[rows + j]);
}

void
basis_let_go (Basis *self, Program *program)
{
  if (!self)
    return;
  for (size_t i = 0, from = 0; i < program->plane_count; i++)
    {
      const size_t was = find_plane (self, &program->planes[i], &from);

      program->planes[i].kept -= was < self->plane_count && self->stats[program->first_plane_row - 1 + (int) was] != GLP_BS;
    }
  free (self->planes);
  free (self->stats);
  free (self);
}
