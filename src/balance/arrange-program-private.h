#pragma once
#include <glpk.h>
#include "balance/arrange-program.h"

/** A row that was added because a solution violated it. It stays while some kept basis needs it, or it bounds the solution. */
typedef struct { unsigned long number; unsigned kept; } Plane;

/** Shared by the files of the linear program alone. GLPK counts rows, columns and the places of an array from 1. */
struct Program {
  const Space *space;
  const Node *whole;
  glp_prob *lp;
  glp_smcp options;
  Goal goal;
  int first_pair_row, first_plane_row, ballast_row;
  unsigned char *axes;            /* along which each pair's row is; AXES at first */
  Plane *planes;                  /* one for each row from first_plane_row on, oldest first */
  size_t plane_count, plane_space;
  unsigned long planes_made;
  bool without_moments, no_memory;
};

int column_of_part (size_t part, size_t axis);      /* the column of a part's place along an axis, 0 to AXES - 1 */
/** Its length; the column after it is by how much that exceeds what the lead has. */
int column_of_lead (const Program *self, size_t lead);
/** Σ value column >= least. columns, values: from place 1 on. Returns the row.
 *  `least` is in the columns' unit (mm; ballast: thousandths of all mass) times the values', which have no unit. */
int program_add_row (Program *self, const int columns[], const double values[], int count, double least);
void program_apply (Program *self, const Node *node);      /* sets the bounds that follow from what a node has decided: boxes, mm, leads and ways */
/** The same for a row that may be dropped again. Units likewise (mm). */
void program_add_plane (Program *self, const int columns[], const double values[], int count, double least);
/** Drops planes that bound nothing at the solution and that no kept basis needs; with `all`, every one (no basis may be kept then). */
void program_drop_planes (Program *self, bool all);
/** Adds the supporting planes of leads whose length is by `rounding` more, mm, than the solution has it. Returns how many. */
int program_add_lead_planes (Program *self, double rounding);
/** Adds bounds on moments that the solution falls short of. Returns how many. */
int program_add_moments (Program *self);
