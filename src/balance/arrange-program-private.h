#pragma once
#include <glpk.h>
#include "balance/arrange-program.h"

/** Shared by the files of the linear program alone. GLPK counts rows, columns and the places of an array from 1. */
struct Program {
  const Space *space;
  const Node *whole;
  glp_prob *lp;
  glp_smcp options;
  Goal goal;
  int first_pair_row, first_cut_row, ballast_row;
  bool without_moments;
};

int column_of_part (size_t part, size_t axis);
/** Its length; the column after it is by how much that exceeds what the lead has. */
int column_of_lead (const Program *self, size_t lead);
/** Σ value column >= least. columns, values: from place 1 on. Returns the row. */
int program_add_row (Program *self, const int columns[], const double values[], int count, double least);
void program_apply (Program *self, const Node *node);
/** Adds the supporting planes of leads whose length is more than the solution has it. Returns how many. */
int program_add_planes (Program *self);
/** Adds bounds on moments that the solution falls short of. Returns how many. */
int program_add_moments (Program *self);
