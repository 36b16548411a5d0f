#include "geometry/curve-fit.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>
#include "geometry/corners.h"
#include "geometry/curve-fitting.h"

enum { MOST_CORNERS = 32, HALVINGS = 12, LENIENCES = 4 };
/* A line is chosen where it reaches so far as a curve would, times this, and is seen to be one: a gap may hide any bend.
 * And of the squares by which a curve would pass it. */
static const double LINE_SHARE = 0.5, LINE_TRUST = 0.5, NOT_BENT = 3;
/* Of the reach: corners want to see more than nodes do, and nodes stand on trusted ground. */
static const double CORNER_REACH = 2, NODE_TRUST = 0.5;
/* Of the tolerance: what a run may stray by and its direction is still measured over more of it. */
static const double SCATTER = 0.15;
/* Of the window: the shortest segment; what is long enough to go on from. */
static const double SHORTEST = 1.5, ENOUGH = 4;

static bool
add_piece (CurveFitting *self, const CurvePiece *piece, bool line)
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

/* From one corner to the next, along the run. */
typedef struct { RunPassage begin, end; double first, last; } Section;

/* The piece from its beginning to `to`: the run's end exactly, or how the run passes there. */
static bool
end_piece_at (const CurveFitting *self, CurvePiece *piece, double to, const Section *section)
{
  piece->to = to;
  if (to >= section->last)
    {
      piece->to = section->last;
      piece->end = section->end;
      return true;
    }
  return !drawn_run_long_passage (self->run, to, self->options->reach, fmin (to - section->first, section->last - to), PASSAGE_BOTH,
                                  SCATTER * self->options->tolerance, &piece->end);
}

static bool
keeps_tolerance (const CurveFitting *self, const CurvePiece *piece, bool line, double tolerance)
{
  const Segment segment = line ? segment_line (piece->end.place) : curve_piece_cubic (self->run, piece);

  return curve_piece_miss (self->run, piece, &segment, self->options->window) <= tolerance;
}

/* The longest line or curve from piece->from on that keeps the tolerance, ending on trusted ground; by halving. */
static CurvePiece
longest (const CurveFitting *self, CurvePiece piece, bool line, double tolerance, const Section *section)
{
  const double last = section->last;
  CurvePiece best = piece, tried = piece;
  const double shortest = fmin (SHORTEST * self->options->window, last - piece.from);
  double low = piece.from + shortest, high = last;

  if (end_piece_at (self, &tried, last, section) && keeps_tolerance (self, &tried, line, tolerance))
    return tried;
  if (!end_piece_at (self, &best, low, section))
    end_piece_at (self, &best, last, section);
  for (int i = 0; i < HALVINGS; i++)
    {
      const double middle = (low + high) / 2;
      const bool trusted = drawn_run_trust (self->run, middle - self->options->reach / 2, middle + self->options->reach / 2) >= NODE_TRUST;
      tried = piece;
      if (end_piece_at (self, &tried, middle, section) && keeps_tolerance (self, &tried, line, tolerance))
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

/* Whether a curve over the same stretch would hardly lie better: a shallow bend that a line still covers within the tolerance ends in
 * another direction than the line, and would spoil the curve that goes on from it. */
static bool
is_line (const CurveFitting *self, const CurvePiece *piece)
{
  const Segment line = segment_line (piece->end.place), curve = curve_piece_cubic (self->run, piece);

  return drawn_run_trust (self->run, piece->from, piece->to) >= LINE_TRUST
         && curve_piece_cost (self->run, piece, &line) <= NOT_BENT * curve_piece_cost (self->run, piece, &curve);
}

/* The next segment from piece->from on: a line or a curve. Where the run is so rough that none gets far (letters, a fold) more is let
 * pass, step by step, rather than following its grain. */
static CurvePiece
next_piece (const CurveFitting *self, const CurvePiece *piece, const Section *section, bool *straight)
{
  const double enough = fmin (ENOUGH * self->options->window, section->last - piece->from);
  double tolerance = self->options->tolerance;
  CurvePiece found;

  for (int i = 0; i <= LENIENCES; i++, tolerance *= 2)
    {
      const CurvePiece line = longest (self, *piece, true, tolerance, section);
      const CurvePiece curve = longest (self, *piece, false, tolerance, section);
      *straight = line.to - line.from >= LINE_SHARE * (curve.to - curve.from) && is_line (self, &line);
      found = *straight ? line : curve;
      if (fmax (line.to, curve.to) - piece->from >= enough)
        break;
    }
  return found;
}

/* From one corner to the next. */
static CoreStatus
fit_between (CurveFitting *self, const Section *section)
{
  CurvePiece next = { .from = section->first, .begin = section->begin };

  while (next.from < section->last)
    {
      bool straight;
      CurvePiece piece = next_piece (self, &next, section, &straight);
      /* What would be left over is no segment of its own. */
      if (section->last - piece.to < SHORTEST * self->options->window)
        end_piece_at (self, &piece, section->last, section);
      if (!(piece.to > piece.from))
        return CORE_OUT_OF_RANGE;
      if (!add_piece (self, &piece, straight))
        return CORE_NO_MEMORY;
      next = (CurvePiece) { .from = piece.to, .begin = piece.end };
    }
  return CORE_OK;
}

static CoreStatus
passage_at_end (const CurveFitting *self, double along, Point place, PassageSides side, double room, RunPassage *passage)
{
  const CoreStatus status = drawn_run_long_passage (self->run, along, self->options->reach * CORNER_REACH, room, side,
                                                    SCATTER * self->options->tolerance, passage);

  passage->place = place;
  return status;
}

static CoreStatus
fit_from_corner_to_corner (CurveFitting *self, const Corner corners[], size_t corner_count)
{
  const DrawnRun *run = self->run;
  Point from = run->places[0];
  double first = 0;

  for (size_t i = 0; i <= corner_count; i++)
    {
      const bool at_end = i == corner_count;
      const double last = at_end ? run->along[run->count - 1] : corners[i].along;
      const Point to = at_end ? run->places[run->count - 1] : corners[i].place;
      Section section = { .first = first, .last = last };
      CoreStatus status = passage_at_end (self, first, from, PASSAGE_AHEAD, last - first, &section.begin);
      if (!status)
        status = passage_at_end (self, last, to, PASSAGE_BEHIND, last - first, &section.end);
      if (!status)
        status = fit_between (self, &section);
      if (status)
        return status;
      self->corner[self->count - 1] = true;
      first = last;
      from = to;
    }
  return CORE_OK;
}

static CoreStatus
hand_over (CurveFitting *self, FittedCurve *made)
{
  Segment *segments = malloc (self->count * sizeof *segments);

  if (!segments)
    return CORE_NO_MEMORY;
  for (size_t i = 0; i < self->count; i++)
    segments[i] = curve_fitting_segment (self, i);
  *made = (FittedCurve) { .start = self->pieces[0].begin.place, .segments = segments, .corner = self->corner, .count = self->count };
  self->corner = NULL;
  return CORE_OK;
}

CoreStatus
curve_fit (const DrawnRun *run, const CurveFitOptions *options, FittedCurve *made)
{
  CurveFitting self = { .run = run, .options = options };
  Corner corners[MOST_CORNERS];

  if (run->count < 2 || !(run->along[run->count - 1] > 0))
    return CORE_TOO_FEW_NODES;
  const size_t corner_count = corners_find (run, CORNER_REACH * options->reach, options->least_turn, corners, MOST_CORNERS);
  CoreStatus status = fit_from_corner_to_corner (&self, corners, corner_count);
  if (!status)
    {
      curve_fitting_polish (&self, 0, self.count);
      curve_fitting_merge (&self);
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
