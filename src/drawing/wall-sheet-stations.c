#include "drawing/wall-sheet-stations.h"
#include <math.h>
#include "drawing/runs.h"
#include "drawing/wall-sheet-frame.h"
#include "drawing/wall-sheet-plan-disc.h"
#include "drawing/wall-sheet-title.h"
#include "figures/body-profile.h"
#include "figures/station-list.h"
#include "figures/surface-figures.h"

/* Names stand in rows, all of one row at one edge; what finds no room in the best row is tried in the next. Rows inside the shape, beside the
 * stations' lines and further off them, take what finds none outside. */
enum { OUTSIDE = 4, ROWS = 12 };
/* Of a name from its edge, which may be slanted, and where a line runs along it, and inside the shape; of everything from a name, mm. */
static const double nearest = 0.8, furthest = 3.3, furthest_inside = 15, step = 0.5, clear = 0.2;

typedef struct {
  const SheetPen *pen;
  const SheetArrangement *arrangement;
  FreeSpace *space;
  Box within;
  const GArray *lines;           /* of StationLine */
  gboolean *named;               /* each of them, by now */
  GArray *words;                 /* of PlanWord: where they go */
} StationDraft;

/* A name's place in a row, so far from the edge, mm; false where its line has no such end. */
typedef bool (*StationPlace) (const StationDraft *draft, const StationLine *line, int row, double off, PlanWord *word);

static Box
word_box (const StationDraft *draft, const PlanWord *word)
{
  const double size = look_em_of_caps (draft->pen->look, word->caps);

  return lettering_box (&draft->pen->lettering, &(Letters) {
    .text = word->text, .place = word->at, .size = size, .across = word->across, .rise = word->rise, .turned = word->turned });
}

/* Inside a shape there is its own ground, which is no ink. */
static bool
is_free (const StationDraft *draft, Box box, bool inside)
{
  const double blank = 1e-3;      /* mm² */
  const Box grown = box_grown (box, clear);

  return grown.min.x > draft->within.min.x && grown.min.y > draft->within.min.y && grown.max.x < draft->within.max.x
         && grown.max.y < draft->within.max.y
         && (inside ? free_space_ink (draft->space, grown) < blank : free_space_is_clear (draft->space, grown));
}

/* As near to its edge as it has room there. */
static bool
find_room (const StationDraft *draft, StationPlace place, const StationLine *line, int row, PlanWord *word)
{
  for (double off = nearest; off < (row < OUTSIDE ? furthest : furthest_inside); off += step)
    if (!place (draft, line, row, off, word))
      return false;
    else if (is_free (draft, word_box (draft, word), row >= OUTSIDE))
      return true;
  return false;
}

/* Puts the names that have room in that row, or counts them alone. */
static guint
fill_row (StationDraft *draft, StationPlace place, int row, bool keep)
{
  const size_t taken = free_space_taken (draft->space);
  guint count = 0;

  for (guint i = 0; i < draft->lines->len; i++)
    {
      const StationLine *line = &g_array_index (draft->lines, StationLine, i);
      PlanWord word = { .text = line->place->name, .caps = caps_field };

      if (draft->named[i] || word.text == NULL || !find_room (draft, place, line, row, &word))
        continue;
      count++;
      free_space_take (draft->space, word_box (draft, &word));
      if (!keep)
        continue;
      word.text = g_strdup (word.text);
      g_array_append_val (draft->words, word);
      draft->named[i] = true;
    }
  if (!keep)
    free_space_give_back (draft->space, taken);
  return count;
}

static void
fill_rows_from (StationDraft *draft, StationPlace place, int from, int to)
{
  guint best = 1;

  while (best > 0)
    {
      int row = from;

      best = 0;
      for (int i = from; i < to; i++)
        {
          const guint count = fill_row (draft, place, i, false);

          if (count > best)
            row = i, best = count;
        }
      fill_row (draft, place, row, best > 0);
    }
}

static void
fill_rows (StationDraft *draft, const GArray *lines, StationPlace place)
{
  draft->lines = lines;
  draft->named = g_new0 (gboolean, lines->len + 1);
  fill_rows_from (draft, place, 0, OUTSIDE);
  fill_rows_from (draft, place, OUTSIDE, ROWS);
  g_clear_pointer (&draft->named, g_free);
}

/* Upright, all of a surface, where some of its ribs stand too close for names that lie. */
static bool
ribs_are_turned (const StationDraft *draft, const Piece *of)
{
  for (guint i = 0; i < draft->lines->len; i++)
    {
      const StationLine *line = &g_array_index (draft->lines, StationLine, i);
      const double apart = line->apart_mm * draft->arrangement->scale;

      if (line->of == of && line->place->name != NULL && pen_width (draft->pen, caps_field, line->place->name) + 4 * clear > apart)
        return true;
    }
  return false;
}

/* Upright, outboard of its line and inside the edge. */
static void
place_inside (PlanWord *word, int row, bool ahead, double off)
{
  const bool starboard = row % OUTSIDE < 2;
  const double further = 0.8, beside = caps_field / 2 + 2 * clear + 0.3 + further * (row / OUTSIDE - 1);      /* mm */


  word->at.x += starboard ? beside : -beside;
  word->at.y += ahead ? off : -off;
  word->turned = true;
  word->across = ahead ? 1 : 0;
  word->rise = LETTERS_AT_MIDDLE;
}

/* Behind the trailing edge to starboard, ahead of the leading edge there, and the same to port; then inside, likewise. */
static bool
rib_place (const StationDraft *draft, const StationLine *line, int row, double off, PlanWord *word)
{
  const bool ahead = row % 2 == 1, starboard = row % OUTSIDE < 2;
  const Surface *surface = (const Surface *) line->of;
  const double y = (starboard ? 1 : -1) * line->place->place;
  StationCut cut;

  if (!surface_is_horizontal (surface) || planform_cut (surface->outline, surface_sides (surface), line->place->place, &cut) != CORE_OK)
    return false;
  word->at = sheet_px (&draft->arrangement->plan, ahead ? cut.leading_x : cut.trailing_x, y);
  if (row >= OUTSIDE)
    {
      place_inside (word, row, ahead, off);
      return true;
    }
  word->at.y += ahead ? -off : off;
  word->turned = ribs_are_turned (draft, line->of);
  word->across = !word->turned ? 0.5 : ahead ? 0 : 1;
  word->rise = word->turned ? LETTERS_AT_MIDDLE : ahead ? LETTERS_ON_LINE : LETTERS_BELOW;
  return true;
}

/* Above and below the body from the side, then beside it from above. */
static bool
former_place (const StationDraft *draft, const StationLine *line, int row, double off, PlanWord *word)
{
  const SheetArrangement *views = draft->arrangement;
  const double x = line->place->place;
  BodyProfile *profile = body_profile_new ((const Body *) line->of);
  double half_width, bottom, top;

  body_profile_at (profile, x, &half_width, &bottom, &top);
  body_profile_free (profile);
  if (row >= OUTSIDE || (row < 2 ? !views->has_side || !isfinite (top - bottom) : !isfinite (half_width)))
    return false;
  word->at.y = (row < 2 ? views->side : views->plan).origin_y + x * views->scale;
  word->at.x = row < 2 ? views->side.origin_x + (row == 0 ? top : bottom) * views->scale
                       : views->plan.origin_x + (row == 2 ? half_width : -half_width) * views->scale;
  word->at.x += row % 2 == 0 ? off : -off;
  word->across = row % 2;
  word->rise = LETTERS_AT_MIDDLE;
  return true;
}

/* All that is on the sheet, and the room round balloons. */
static FreeSpace *
space_with_all (const SheetPen *measure, const SheetArrangement *arrangement)
{
  const double radius = number_radius (measure->look);
  const PlanDisc disc = plan_disc_of (measure, &arrangement->plan);
  double width, height;

  wall_sheet_size (measure->sheet, &width, &height);
  FreeSpace *space = free_space_new (width, height);
  cairo_t *cr = free_space_open (space);
  SheetPen pen = pen_begin (cr, measure->sheet, measure->look);
  pen.words_are_solid = true;
  views_draw (&pen, arrangement);
  cairo_destroy (cr);
  free_space_close (space);
  for (int kind = 0; kind < BLOCK_COUNT; kind++)
    if (arrangement->blocks[kind].form >= 0)
      free_space_take (space, arrangement->blocks[kind].box);
  for (guint i = 0; i < arrangement->notes.balloons->len; i++)
    {
      const Point at = g_array_index (arrangement->notes.balloons, Balloon, i).at;

      free_space_take (space, (Box) { { at.x - radius, at.y - radius }, { at.x + radius, at.y + radius } });
    }
  if (disc.keep > 0)
    free_space_take (space, plan_disc_box (&disc));
  free_space_take (space, wall_title_box (measure->sheet));
  free_space_take (space, wall_lower_mark_box (measure->sheet));
  return space;
}

void
station_names_put (const WallSheet *sheet, const Look *look, SheetArrangement *arrangement)
{
  if (arrangement->notes.words == NULL)
    return;
  const SheetPen pen = pen_begin (NULL, sheet, look);
  g_autoptr (GArray) formers = former_stations (sheet->figures->aeroplane), ribs = rib_stations (sheet->figures->aeroplane);
  StationDraft draft = {
    .pen = &pen, .arrangement = arrangement, .space = space_with_all (&pen, arrangement), .within = wall_room_box (sheet),
    .words = arrangement->notes.words };

  fill_rows (&draft, formers, former_place);
  fill_rows (&draft, ribs, rib_place);
  free_space_free (draft.space);
}
