#include "geometry/curve-fit.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>
#include "geometry/corners.h"
#include "geometry/curve-piece.h"
#include "geometry/stretch.h"

enum { MOST_CORNERS = 32, HALVINGS = 12, POLISHES = 3, LENIENCES = 4 };
/* A line is chosen where it reaches so far as a curve would, times this, and is seen to be one: a gap may hide any bend. */
static const double LINE_SHARE = 0.5, LINE_TRUST = 0.5;
/* Of the reach: corners want to see more than nodes do, and nodes stand on trusted ground. */
static const double CORNER_REACH = 2, NODE_TRUST = 0.5;
/* Of the window: the shortest segment; what is long enough to go on from. */
static const double SHORTEST = 1.5, ENOUGH = 4;

typedef struct {
  const DrawnRun *run;
  const CurveFitOptions *options;
  CurvePiece *pieces;
  bool *line, *corner;
  size_t count, room;
} Fitting;

static bool
add_piece (Fitting *self, const CurvePiece *piece, bool line)
{
  if (self->count == self->room)
    {
      const size_t room = 2 * self->room + 8;
      CurvePiece *pieces = realloc (self->pieces, room * sizeof *pieces);
      if (pieces)
        self->pieces = pieces;
      bool *lines = realloc (self->line, room * sizeof *lines);
      if (lines)
        self->line = lines;
      bool *corners = realloc (self->corner, room * sizeof *corners);
      if (corners)
        self->corner = corners;
      if (!pieces || !lines || !corners)
        return false;
      self->room = room;
    }
  self->pieces[self->count] = *piece;
  self->line[self->count] = line;
  self->corner[self->count++] = false;
  return true;
}

/* The piece from its beginning to `to`: the run's end exactly, or how the run passes there. */
static bool
end_piece_at (const Fitting *self, CurvePiece *piece, double to, const RunPassage *end, double last)
{
  piece->to = to;
  if (to >= last)
    {
      piece->to = last;
      piece->end = *end;
      return true;
    }
  return !drawn_run_passage (self->run, to, fmin (self->options->reach, last - to), PASSAGE_BOTH, &piece->end);
}

static bool
keeps_tolerance (const Fitting *self, const CurvePiece *piece, bool line, double tolerance)
{
  const Segment segment = line ? segment_line (piece->end.place) : curve_piece_cubic (self->run, piece);

  return curve_piece_miss (self->run, piece, &segment, self->options->window) <= tolerance;
}

/* The longest line or curve from piece->from on that keeps the tolerance, ending on trusted ground; by halving. */
static CurvePiece
longest (const Fitting *self, CurvePiece piece, bool line, double tolerance, const RunPassage *end, double last)
{
  CurvePiece best = piece, tried = piece;
  const double shortest = fmin (SHORTEST * self->options->window, last - piece.from);
  double low = piece.from + shortest, high = last;

  if (end_piece_at (self, &tried, last, end, last) && keeps_tolerance (self, &tried, line, tolerance))
    return tried;
  if (!end_piece_at (self, &best, low, end, last))
    end_piece_at (self, &best, last, end, last);
  for (int i = 0; i < HALVINGS; i++)
    {
      const double middle = (low + high) / 2;
      const bool trusted = drawn_run_trust (self->run, middle - self->options->reach / 2, middle + self->options->reach / 2) >= NODE_TRUST;
      tried = piece;
      if (end_piece_at (self, &tried, middle, end, last) && keeps_tolerance (self, &tried, line, tolerance))
        {
          low = middle;
          if (trusted)
            best = tried;
        }
      else
        high = middle;
    }
  return best;
}

/* The next segment from piece->from on: a line or a curve. Where the run is so rough that none gets far (letters, a fold) more is let
 * pass, step by step, rather than following its grain. */
static CurvePiece
next_piece (const Fitting *self, const CurvePiece *piece, const RunPassage *end, double last, bool *straight)
{
  const double enough = fmin (ENOUGH * self->options->window, last - piece->from);
  double tolerance = self->options->tolerance;
  CurvePiece found;

  for (int i = 0; i <= LENIENCES; i++, tolerance *= 2)
    {
      const CurvePiece line = longest (self, *piece, true, tolerance, end, last);
      const CurvePiece curve = longest (self, *piece, false, tolerance, end, last);
      *straight = line.to - line.from >= LINE_SHARE * (curve.to - curve.from)
                  && drawn_run_trust (self->run, line.from, line.to) >= LINE_TRUST;
      found = *straight ? line : curve;
      if (fmax (line.to, curve.to) - piece->from >= enough)
        break;
    }
  return found;
}

/* From one corner to the next. */
static CoreStatus
fit_between (Fitting *self, const RunPassage *begin, double first, const RunPassage *end, double last)
{
  CurvePiece next = { .from = first, .begin = *begin };

  while (next.from < last)
    {
      bool straight;
      CurvePiece piece = next_piece (self, &next, end, last, &straight);
      /* What would be left over is no segment of its own. */
      if (last - piece.to < SHORTEST * self->options->window)
        end_piece_at (self, &piece, last, end, last);
      if (!(piece.to > piece.from))
        return CORE_OUT_OF_RANGE;
      if (!add_piece (self, &piece, straight))
        return CORE_NO_MEMORY;
      next = (CurvePiece) { .from = piece.to, .begin = piece.end };
    }
  return CORE_OK;
}

static CoreStatus
passage_at_end (const Fitting *self, double along, Point place, PassageSides side, double room, RunPassage *passage)
{
  const CoreStatus status = drawn_run_passage (self->run, along, fmin (self->options->reach * CORNER_REACH, room), side, passage);

  passage->place = place;
  return status;
}

static CoreStatus
fit_from_corner_to_corner (Fitting *self, const Corner corners[], size_t corner_count)
{
  const DrawnRun *run = self->run;
  Point from = run->places[0];
  double first = 0;

  for (size_t i = 0; i <= corner_count; i++)
    {
      const bool at_end = i == corner_count;
      const double last = at_end ? run->along[run->count - 1] : corners[i].along;
      const Point to = at_end ? run->places[run->count - 1] : corners[i].place;
      RunPassage begin, end;
      CoreStatus status = passage_at_end (self, first, from, PASSAGE_AHEAD, last - first, &begin);
      if (!status)
        status = passage_at_end (self, last, to, PASSAGE_BEHIND, last - first, &end);
      if (!status)
        status = fit_between (self, &begin, first, &end, last);
      if (status)
        return status;
      self->corner[self->count - 1] = true;
      first = last;
      from = to;
    }
  return CORE_OK;
}

/* Curves beside lines take their direction, so that they pass into each other. */
static void
follow_lines (Fitting *self)
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

static Segment
segment_of (const Fitting *self, size_t i)
{
  return self->line[i] ? segment_line (self->pieces[i].end.place) : curve_piece_cubic (self->run, &self->pieces[i]);
}

/* What the pieces about a node cost; those beside a line feel it through its direction. */
static double
cost_about (Fitting *self, size_t node)
{
  double cost = 0;

  follow_lines (self);
  for (size_t i = node > 1 ? node - 2 : 0; i < self->count && i <= node + 1; i++)
    {
      const Segment segment = segment_of (self, i);
      cost += curve_piece_cost (self->run, &self->pieces[i], &segment);
    }
  return cost;
}

/* Moves the node between two pieces by `across` (and turns its direction by `turn`). */
static void
shift_node (Fitting *self, size_t node, Point by, double turn)
{
  RunPassage *before = &self->pieces[node - 1].end, *after = &self->pieces[node].begin;

  before->place = after->place = point_add (before->place, by);
  if (turn == 0)
    return;
  const Point d = before->direction;
  before->direction = after->direction = (Point) { d.x * cos (turn) - d.y * sin (turn), d.x * sin (turn) + d.y * cos (turn) };
}

/* The least of the parabola through three costs at -step, 0 and step, no further than two steps off. */
static double
least_between (double before, double here, double after, double step)
{
  const double bend = before - 2 * here + after;

  return bend > 0 ? fmin (fmax ((before - after) / (2 * bend), -2), 2) * step : 0;
}

static void
polish (Fitting *self, size_t node, Point way, double turn)
{
  const double here = cost_about (self, node);

  shift_node (self, node, way, turn);
  const double after = cost_about (self, node);
  shift_node (self, node, point_scale (way, -2), -2 * turn);
  const double before = cost_about (self, node);
  const double steps = 1 + least_between (before, here, after, 1);
  shift_node (self, node, point_scale (way, steps), steps * turn);
  if (cost_about (self, node) > here)
    shift_node (self, node, point_scale (way, 1 - steps), (1 - steps) * turn);
}

/* A node taken from a few millimetres of line is moved to where all of its two segments fits best. */
static void
polish_nodes (Fitting *self)
{
  const double step = self->options->tolerance / 2;

  for (int round = 0; round < POLISHES; round++)
    for (size_t node = 1; node < self->count; node++)
      {
        const Point d = self->pieces[node].begin.direction;
        polish (self, node, (Point) { -d.y * step, d.x * step }, 0);
        if (self->corner[node - 1])
          polish (self, node, point_scale (d, step), 0);
        else if (!self->line[node - 1] && !self->line[node])
          polish (self, node, (Point) { 0, 0 }, step / self->options->reach);
      }
  follow_lines (self);
}

static CoreStatus
hand_over (Fitting *self, FittedCurve *made)
{
  Segment *segments = malloc (self->count * sizeof *segments);

  if (!segments)
    return CORE_NO_MEMORY;
  for (size_t i = 0; i < self->count; i++)
    segments[i] = segment_of (self, i);
  *made = (FittedCurve) { .start = self->pieces[0].begin.place, .segments = segments, .corner = self->corner, .count = self->count };
  self->corner = NULL;
  return CORE_OK;
}

CoreStatus
curve_fit (const DrawnRun *run, const CurveFitOptions *options, FittedCurve *made)
{
  Fitting self = { .run = run, .options = options };
  Corner corners[MOST_CORNERS];

  if (run->count < 2 || !(run->along[run->count - 1] > 0))
    return CORE_TOO_FEW_NODES;
  const size_t corner_count = corners_find (run, CORNER_REACH * options->reach, options->least_turn, corners, MOST_CORNERS);
  CoreStatus status = fit_from_corner_to_corner (&self, corners, corner_count);
  if (!status)
    {
      follow_lines (&self);
      polish_nodes (&self);
      status = hand_over (&self, made);
    }
  free (self.pieces);
  free (self.line);
  free (self.corner);
  return status;
}

void
fitted_curve_clear (FittedCurve *self)
{
  free (self->segments);
  free (self->corner);
  *self = (FittedCurve) { 0 };
}
