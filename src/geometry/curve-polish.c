#include <math.h>
#include "geometry/curve-fitting.h"

enum { POLISHES = 3 };
/* Of the shorter piece beside it: how far a node between two curves is slid. */
static const double SLIDE = 0.05;

/* Curves beside lines take their direction, so that they pass into each other. */
static void
follow_lines (CurveFitting *self)
{
  for (size_t i = 0; i + 1 < self->count; i++)
    {
      CurvePiece *before = &self->pieces[i], *after = &self->pieces[i + 1];
      if (self->corner[i] || self->line[i] == self->line[i + 1])
        continue;
      const CurvePiece *line = self->line[i] ? before : after;
      const double length = point_distance (line->begin.place, line->end.place);
      if (length > 0)
        before->end.direction = after->begin.direction
            = point_scale (point_sub (line->end.place, line->begin.place), 1 / length);
    }
}

Segment
curve_fitting_segment (const CurveFitting *self, size_t piece)
{
  return self->line[piece] ? segment_line (self->pieces[piece].end.place) : curve_piece_cubic (self->run, &self->pieces[piece]);
}

/* What the pieces about a node cost; those beside a line feel it through its direction. */
static double
cost_about (CurveFitting *self, size_t node)
{
  double cost = 0;

  follow_lines (self);
  for (size_t i = node > 1 ? node - 2 : 0; i < self->count && i <= node + 1; i++)
    {
      const Segment segment = curve_fitting_segment (self, i);
      cost += curve_piece_cost (self->run, &self->pieces[i], &segment);
    }
  return cost;
}

/* A node as one of the pieces about it has it, or both. */
typedef struct { CurvePiece *before, *after; } Grip;

/* One step: across or along by a vector, along the run (where it bends, with it), and by an angle. */
typedef struct { Point by; double along, turn; } Move;

static RunPassage
moved (RunPassage passage, const Move *move, double steps)
{
  const Point d = passage.direction, across = { -d.y, d.x };
  const double along = steps * move->along, turn = steps * move->turn + passage.curvature * along;

  passage.place = point_add (passage.place, point_scale (move->by, steps));
  passage.place = point_add (passage.place, point_scale (d, along));
  passage.place = point_add (passage.place, point_scale (across, passage.curvature * along * along / 2));
  if (turn != 0)
    passage.direction = (Point) { d.x * cos (turn) - d.y * sin (turn), d.x * sin (turn) + d.y * cos (turn) };
  return passage;
}

static void
put (const Grip *grip, const Grip *was, const Move *move, double steps)
{
  if (grip->before)
    {
      grip->before->end = moved (was->before->end, move, steps);
      grip->before->to = was->before->to + steps * move->along;
    }
  if (grip->after)
    {
      grip->after->begin = moved (was->after->begin, move, steps);
      grip->after->from = was->after->from + steps * move->along;
    }
}

/* The least of the parabola through three costs at -1, 0 and 1, no further than two off. */
static double
least_between (double before, double here, double after)
{
  const double bend = before - 2 * here + after;

  return bend > 0 ? fmin (fmax ((before - after) / (2 * bend), -2), 2) : 0;
}

static void
polish (CurveFitting *self, size_t node, const Grip *grip, const Move *move)
{
  CurvePiece before_was = grip->before ? *grip->before : (CurvePiece) { .to = 0 };
  CurvePiece after_was = grip->after ? *grip->after : (CurvePiece) { .to = 0 };
  const Grip was = { &before_was, &after_was };
  const double here = cost_about (self, node);

  put (grip, &was, move, 1);
  const double after = cost_about (self, node);
  put (grip, &was, move, -1);
  const double before = cost_about (self, node);
  const double steps = least_between (before, here, after);
  put (grip, &was, move, steps);
  if (steps == 0 || cost_about (self, node) > here)
    put (grip, &was, move, 0);
}

/* A step of a direction that moves the middle of the piece by about half the tolerance. */
static double
turn_step (const CurveFitting *self, double length)
{
  return 3 * self->options->tolerance / length;
}

static double
length_of (const CurvePiece *piece)
{
  return piece->to - piece->from;
}

static void
polish_inner (CurveFitting *self, size_t node)
{
  const double step = self->options->tolerance / 2;
  const Grip grip = { &self->pieces[node - 1], &self->pieces[node] };
  const double shorter = fmin (length_of (grip.before), length_of (grip.after));
  const Point d = grip.after->begin.direction;

  polish (self, node, &grip, &(Move) { .by = { -d.y * step, d.x * step } });
  if (self->corner[node - 1])
    polish (self, node, &grip, &(Move) { .by = point_scale (d, step) });
  else if (!self->line[node - 1] && !self->line[node])
    {
      polish (self, node, &grip, &(Move) { .turn = turn_step (self, shorter) });
      polish (self, node, &grip, &(Move) { .along = SLIDE * shorter });
    }
}

/* A curve's direction where no other takes it up: at the ends and at corners. */
static void
polish_free_end (CurveFitting *self, size_t node)
{
  const bool behind = node > 0 && !self->line[node - 1], ahead = node < self->count && !self->line[node];

  if (behind)
    polish (self, node, &(Grip) { &self->pieces[node - 1], NULL }, &(Move) { .turn = turn_step (self, length_of (&self->pieces[node - 1])) });
  if (ahead)
    polish (self, node, &(Grip) { NULL, &self->pieces[node] }, &(Move) { .turn = turn_step (self, length_of (&self->pieces[node])) });
}

void
curve_fitting_polish (CurveFitting *self, size_t first, size_t last)
{
  follow_lines (self);
  for (int round = 0; round < POLISHES; round++)
    for (size_t node = first; node <= last && node <= self->count; node++)
      {
        if (node > 0 && node < self->count)
          polish_inner (self, node);
        if (node == 0 || node == self->count || self->corner[node - 1])
          polish_free_end (self, node);
      }
  follow_lines (self);
}
