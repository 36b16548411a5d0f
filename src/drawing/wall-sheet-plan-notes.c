#include "trammel-config.h"
#include "drawing/wall-sheet-plan.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>
#include "drawing/runs.h"
#include "drawing/symbols.h"
#include "drawing/wall-sheet-plan-disc.h"

/* Words and balloons find their places one after the other: each takes the candidate that costs least. */
typedef struct {
  const SheetPen *pen;
  const SheetView *view;
  FreeSpace *space;
  Box within;
  PlanDisc disc;
  PlanNotes notes;
} NotesDraft;

static bool
box_lies_within (Box box, Box within)
{
  return box.min.x >= within.min.x && box.max.x <= within.max.x && box.min.y >= within.min.y && box.max.y <= within.max.y;
}

static Box
word_box (const PlanWord *word, double width)
{
  const Point at = word->at;

  return (Box) { { at.x - word->across * width, at.y - caps_text }, { at.x + (1 - word->across) * width, at.y + 0.3 * caps_text } };
}

/* Puts a word where it covers least ink, mm²; each later place counts as a little more. */
static void
put_word (NotesDraft *draft, const char *text, const PlanWord tries[], size_t count)
{
  const double width = pen_width (draft->pen, caps_text, text);
  const PlanWord *best = NULL;
  double least = INFINITY;
  PlanWord word;

  for (size_t i = 0; i < count; i++)
    {
      const Box box = word_box (&tries[i], width);
      const double ink = free_space_ink (draft->space, box_grown (box, 0.5)) + 0.3 * i;

      if (box_lies_within (box, draft->within) && ink < least)
        {
          least = ink;
          best = &tries[i];
        }
    }
  if (best == NULL)
    return;
  word = (PlanWord) { .text = g_strdup (text), .at = best->at, .across = best->across, .caps = caps_text };
  g_array_append_val (draft->notes.words, word);
  free_space_take (draft->space, word_box (&word, width));
}

static void
put_neutral_word (NotesDraft *draft)
{
  const NeutralPointFigures *point = &draft->pen->sheet->figures->neutral_point;
  const char *text = point->wing_alone ? _("neutral point of the wing alone") : _("neutral point");
  const double half = neutral_diamond_half (draft->pen->look), below = half + 1.2 + caps_text, beside = 0.8 * half + 1.5;
  Point place, at;

  if (!sheet_neutral_point (draft->pen->sheet->figures, &place))
    return;
  at = view_to_screen (draft->view, place);
  put_word (draft, text, (PlanWord[]) {
    { .at = { at.x, at.y + below }, .across = 0.5 },
    { .at = { at.x - beside, at.y + caps_text / 2 }, .across = 1 },
    { .at = { at.x, at.y + below }, .across = 0.75 },
    { .at = { at.x, at.y + below }, .across = 0.95 },
    { .at = { at.x, at.y + below + 3 }, .across = 0.5 },
    { .at = { at.x, at.y - half - 1.2 }, .across = 0.75 },
    { .at = { at.x, at.y + below + 3 }, .across = 0.8 } }, 7);
}

static void
put_chord_word (NotesDraft *draft)
{
  const SurfaceFigures *reference = draft->pen->sheet->figures->reference;
  g_autofree char *length = NULL, *text = NULL;
  double ahead, behind;
  Point at;

  if (reference == NULL || !isfinite (reference->planform.mac))
    return;
  length = paper_length_figure (draft->pen->sheet->units, reference->planform.mac);
  /* Translators: mean aerodynamic chord and its length, "MAC 110" */
  text = g_strdup_printf (_("MAC %s"), length);
  at = sheet_px (draft->view, reference->planform.mac_leading_edge_x + 0.62 * reference->planform.mac, reference->planform.mac_station);
  ahead = sheet_px (draft->view, reference->planform.mac_leading_edge_x, 0).y - 3;
  behind = sheet_px (draft->view, reference->planform.mac_leading_edge_x + reference->planform.mac, 0).y + 3 + caps_text;
  put_word (draft, text, (PlanWord[]) {
    { .at = { at.x + 2.5, at.y }, .across = 0 },
    { .at = { at.x + 2.5, at.y + 4 }, .across = 0 },
    { .at = { at.x + 2.5, at.y - 3 }, .across = 0 },
    { .at = { at.x + 2.5, at.y - 6 }, .across = 0 },
    { .at = { at.x - 2.5, at.y }, .across = 1 },
    { .at = { at.x, behind }, .across = 0 },
    { .at = { at.x, ahead }, .across = 0 } }, 7);
}

/* Ink under a leader, as if it were 0.5 mm wide: a box every millimetre. */
static double
ink_along (const FreeSpace *space, Point from, Point to)
{
  const double length = point_distance (from, to), step = 1;
  double ink = 0;

  for (double at = 0; at < length; at += step)
    {
      const Point p = point_mix (from, to, at / length);

      ink += free_space_ink (space, (Box) { { p.x - 0.5, p.y - 0.5 }, { p.x + 0.5, p.y + 0.5 } }) / 2;
    }
  return ink;
}

/* Which side of a line from a to b the point lies on. */
static double
turn (Point a, Point b, Point p)
{
  return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
}

static bool
lines_cross (Point a, Point b, Point c, Point d)
{
  return turn (a, b, c) * turn (a, b, d) < 0 && turn (c, d, a) * turn (c, d, b) < 0;
}

/* Balloons and leaders placed so far are not to be met. */
static bool
meets_a_balloon (const NotesDraft *draft, Point on_part, Point at, double radius)
{
  for (guint i = 0; i < draft->notes.balloons->len; i++)
    {
      const Balloon *other = &g_array_index (draft->notes.balloons, Balloon, i);

      if (lines_cross (on_part, at, other->on_part, other->at) || plan_distance_to_line (other->at, on_part, at) < radius + 1
          || plan_distance_to_line (at, other->on_part, other->at) < radius + 1)
        return true;
    }
  return false;
}

/* Balloons in one column read better. */
static bool
stands_in_a_column (const NotesDraft *draft, Point at)
{
  for (guint i = 0; i < draft->notes.balloons->len; i++)
    if (fabs (g_array_index (draft->notes.balloons, Balloon, i).at.x - at.x) < 0.01)
      return true;
  return false;
}

typedef struct { Point at; double cost; } BalloonTry;
static const double dearest = 60;      /* where parts crowd, a number with no place of its own is left to the list */

/* What a place costs for its way and its slant; what it covers comes on top. */
static double
leader_cost (const NotesDraft *draft, Point on_part, Point at)
{
  const double reach = point_distance (on_part, at);

  return 0.12 * reach + 4 * fabs (at.y - on_part.y) / reach - (stands_in_a_column (draft, at) ? 1.5 : 0);
}

static double
covering_cost (const NotesDraft *draft, Point on_part, Point at)
{
  const double radius = number_radius (draft->pen->look);
  const Box box = { { at.x - radius, at.y - radius }, { at.x + radius, at.y + radius } };
  const Point edge = point_mix (at, on_part, radius / point_distance (on_part, at));

  if (!box_lies_within (box, draft->within) || meets_a_balloon (draft, on_part, at, radius))
    return INFINITY;
  return plan_disc_cost (&draft->disc, on_part, at, radius) + 8 * free_space_ink (draft->space, box_grown (box, 0.8))
         + 6 * ink_along (draft->space, edge, on_part);
}

static void
try_place (const NotesDraft *draft, Point on_part, Point at, BalloonTry *best)
{
  double cost = leader_cost (draft, on_part, at);

  if (cost < best->cost)
    cost += covering_cost (draft, on_part, at);
  if (cost < best->cost)
    *best = (BalloonTry) { at, cost };
}

/* Columns on both sides of the body, then round about the part, further and further out. */
static BalloonTry
best_place (const NotesDraft *draft, Point on_part)
{
  const double radius = number_radius (draft->pen->look), scale = draft->view->scale;
  const double column = sheet_greatest_half_width (draft->pen->sheet->figures->aeroplane) * scale + 3 * radius;
  const double right = draft->view->origin_x + column, left = draft->view->origin_x - column;
  BalloonTry best = { .cost = INFINITY };

  for (double rise = -24; rise <= 24; rise += 2)
    {
      try_place (draft, on_part, (Point) { right, on_part.y + rise }, &best);
      try_place (draft, on_part, (Point) { left, on_part.y + rise }, &best);
    }
  for (double reach = 2.2 * radius; reach < 14 * radius; reach += radius)
    for (int angle = 0; angle < 24; angle++)
      try_place (draft, on_part, (Point) { on_part.x + reach * cos (angle * M_PI / 12), on_part.y + reach * sin (angle * M_PI / 12) }, &best);
  return best;
}

static bool
put_balloon (NotesDraft *draft, const PartLine *line)
{
  const double radius = number_radius (draft->pen->look);
  const Point on_part = plan_disc_anchor (&draft->disc, draft->view, line->part);
  const BalloonTry best = best_place (draft, on_part);
  const Balloon balloon = { line->number, on_part, best.at };

  if (best.cost > dearest)
    return false;
  g_array_append_val (draft->notes.balloons, balloon);
  free_space_take (draft->space, (Box) { { best.at.x - radius, best.at.y - radius }, { best.at.x + radius, best.at.y + radius } });
  return true;
}

/* One after the other in that order. Returns the first that found no place, `count` when all did. */
static size_t
put_in_order (NotesDraft *draft, const PartLine *const order[], size_t count)
{
  size_t stuck = count;

  for (size_t i = 0; i < count; i++)
    if (!put_balloon (draft, order[i]) && stuck == count)
      stuck = i;
  return stuck;
}

/* Who finds no place goes first the next time. */
static void
put_balloons (NotesDraft *draft, const PartList *parts)
{
  enum { MOST_TRIES = 6 };
  const size_t taken = free_space_taken (draft->space);
  g_autofree const PartLine **order = g_new (const PartLine *, parts->count + 1);
  size_t count = 0;

  for (size_t i = 0; i < parts->count; i++)
    if (parts->lines[i].number > 0)
      order[count++] = &parts->lines[i];
  for (int i = 0; i < MOST_TRIES; i++)
    {
      const size_t stuck = put_in_order (draft, order, count);
      const PartLine *first = order[stuck < count ? stuck : 0];

      if (stuck == count || i + 1 == MOST_TRIES)
        return;
      memmove (order + 1, order, stuck * sizeof *order);
      order[0] = first;
      g_array_set_size (draft->notes.balloons, 0);
      free_space_give_back (draft->space, taken);
    }
}

static void
word_clear (gpointer data)
{
  g_free (((PlanWord *) data)->text);
}

static PlanNotes
plan_notes_new (void)
{
  PlanNotes self = { g_array_new (FALSE, FALSE, sizeof (PlanWord)), g_array_new (FALSE, FALSE, sizeof (Balloon)) };

  g_array_set_clear_func (self.words, word_clear);
  return self;
}

PlanNotes
plan_notes_of (const SheetPen *pen, const SheetView *view, const PartList *parts, FreeSpace *space, Box within)
{
  NotesDraft draft = { .pen = pen, .view = view, .space = space, .within = within, .disc = plan_disc_of (pen, view), .notes = plan_notes_new () };

  if (draft.disc.keep > 0)
    free_space_take (space, plan_disc_box (&draft.disc));
  put_neutral_word (&draft);
  put_chord_word (&draft);
  put_balloons (&draft, parts);
  return draft.notes;
}

void
plan_notes_draw (const SheetPen *pen, const PlanNotes *notes)
{
  for (guint i = 0; i < notes->words->len; i++)
    {
      const PlanWord *word = &g_array_index (notes->words, PlanWord, i);
      const double size = look_em_of_caps (pen->look, word->caps);

      lettering_draw (&pen->lettering, &(Letters) {
        .text = word->text, .place = word->at, .size = size, .across = word->across, .rise = word->rise, .turned = word->turned,
        .halo = 0.26 * size });
    }
  for (guint i = 0; i < notes->balloons->len; i++)
    {
      const Balloon *balloon = &g_array_index (notes->balloons, Balloon, i);
      g_autofree char *number = g_strdup_printf ("%d", balloon->number);

      draw_leader (pen->cr, pen->look, balloon->on_part, balloon->at, LEADER_DOT);
      draw_number (&pen->lettering, balloon->at, number);
    }
}

PlanNotes
plan_notes_copy (const PlanNotes *self)
{
  PlanNotes made = { NULL, NULL };

  if (self->words == NULL)
    return made;
  made = plan_notes_new ();
  for (guint i = 0; i < self->words->len; i++)
    {
      PlanWord word = g_array_index (self->words, PlanWord, i);

      word.text = g_strdup (word.text);
      g_array_append_val (made.words, word);
    }
  g_array_append_vals (made.balloons, self->balloons->data, self->balloons->len);
  return made;
}

void
plan_notes_clear (PlanNotes *self)
{
  g_clear_pointer (&self->words, g_array_unref);
  g_clear_pointer (&self->balloons, g_array_unref);
}
