#include "trammel-config.h"
#include "drawing/wall-sheet-layout.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "drawing/wall-sheet-frame.h"
#include "drawing/wall-sheet-side.h"
#include "drawing/wall-sheet-stations.h"
#include "drawing/wall-sheet-title.h"

/* Scales that a rule can be laid on: the 1, 2, 5 of ISO 5455 (from memory), and what the trade draws between. */
static const double reductions[] = { 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12.5, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 500, 1000, 2000, 5000 };
static const double air = 2.5;               /* round a block, mm */
static const double between_views = 7;

/* In which order blocks choose their places. Whoever comes first stands as it wishes. */
static const BlockKind orders[][BLOCK_COUNT] = {
  { BLOCK_SECTION, BLOCK_PARTS, BLOCK_CONTROL_LINES, BLOCK_NOTES, BLOCK_FIGURES },
  { BLOCK_SECTION, BLOCK_PARTS, BLOCK_NOTES, BLOCK_FIGURES, BLOCK_CONTROL_LINES },
  { BLOCK_PARTS, BLOCK_SECTION, BLOCK_CONTROL_LINES, BLOCK_FIGURES, BLOCK_NOTES },
  { BLOCK_SECTION, BLOCK_NOTES, BLOCK_CONTROL_LINES, BLOCK_PARTS, BLOCK_FIGURES },
  { BLOCK_SECTION, BLOCK_PARTS, BLOCK_FIGURES, BLOCK_NOTES, BLOCK_CONTROL_LINES },
  { BLOCK_PARTS, BLOCK_SECTION, BLOCK_CONTROL_LINES, BLOCK_NOTES, BLOCK_FIGURES },
};

/* What an arrangement is worth, on the scale of the logarithm of its scale: from 1 : 5 to 1 : 4 is 0.22. The mark at full size is what the
 * sheet is for: no scale of the views makes up for it. */
static const double worth_whole = 12.08, worth_broken = 12, worth_text_size = 0.05, cost_short_list = 2, cost_later_form = 0.03;
static const double cost_mm_off = 0.0005;      /* a mm that a block stands off its wish */

/* The search under way. */
typedef struct {
  const WallSheet *sheet;
  const Look *look;
  const SheetBlocks *blocks;       /* two: text size, small */
  Box room, title;
  Box plan_ink, side_ink;          /* of the views at the scale being tried, their origin at 0, 0; empty without */
  SheetArrangement best;
  double best_worth;
  bool found;
  bool possible[2][BLOCK_COUNT][BLOCK_FORMS];      /* by print: whether a form has room beside the views alone */
} LayoutSearch;

static void
draw_views (const SheetPen *pen, const SheetArrangement *arrangement, bool mark_on_plan)
{
  wall_plan_draw (pen, &arrangement->plan, mark_on_plan);
  if (arrangement->has_side)
    wall_side_draw (pen, &arrangement->side);
}

/* What a view covers when its origin is at 0, 0. */
static Box
view_ink (const LayoutSearch *search, double scale, bool side)
{
  cairo_surface_t *record = cairo_recording_surface_create (CAIRO_CONTENT_COLOR_ALPHA, NULL);
  cairo_t *cr = cairo_create (record);
  SheetPen pen = pen_begin (cr, search->sheet, search->look);
  const SheetView view = { .scale = scale };
  double x, y, width, height;

  if (side)
    wall_side_draw (&pen, &view);
  else
    wall_plan_draw (&pen, &view, true);
  cairo_destroy (cr);
  cairo_recording_surface_ink_extents (record, &x, &y, &width, &height);
  cairo_surface_destroy (record);
  return (Box) { { x, y }, { x + width, y + height } };
}

/* Puts the views side by side from the top of the room: the side view at its right edge, the plan at `share` of the way that is left
 *  between the left edge and the side view. False when they do not fit. */
static bool
place_views (const LayoutSearch *search, double share, SheetArrangement *made)
{
  const Box plan = search->plan_ink, side = search->side_ink, room = search->room;
  const Box both = made->has_side ? box_joined (plan, (Box) { { plan.min.x, side.min.y }, { plan.max.x, side.max.y } }) : plan;
  const double side_width = made->has_side ? box_width (side) + between_views : 0;
  const double slack = box_width (room) - side_width - box_width (plan), top = room.min.y - both.min.y;

  if (slack < 0 || box_height (both) > box_height (room))
    return false;
  made->plan.origin_x = room.min.x + share * slack - plan.min.x;
  made->plan.origin_y = made->side.origin_y = top;
  made->side.origin_x = room.max.x - side.max.x;
  made->plan.scale = made->side.scale = made->scale;
  return true;
}

/* Where an empty sheet says so. */
static Box
emptiness_box (Box room)
{
  const Point middle = { (room.min.x + room.max.x) / 2, room.min.y + 0.25 * box_height (room) };

  return (Box) { { middle.x - 35, middle.y - 6 }, { middle.x + 35, middle.y + 6 } };
}

void
views_draw (const SheetPen *pen, const SheetArrangement *arrangement)
{
  const Box room = wall_room_box (pen->sheet), words = emptiness_box (room);

  if (arrangement->scale > 0)
    {
      draw_views (pen, arrangement, arrangement->blocks[BLOCK_SECTION].form >= SECTION_FORM_MISSING);
      plan_notes_draw (pen, &arrangement->notes);
    }
  else
    pen_write_within (pen, (Script) { { (words.min.x + words.max.x) / 2, words.max.y - 4 }, caps_figure, 0.5 }, caps_small, box_width (words),
                      _("Nothing is drawn yet."));
}

/* The views as they stand, and the title block; NULL when they reach into that. */
static FreeSpace *
space_with_views (const LayoutSearch *search, const SheetArrangement *made, bool mark_on_plan)
{
  FreeSpace *space;
  double width, height;
  cairo_t *cr;

  wall_sheet_size (search->sheet, &width, &height);
  space = free_space_new (width, height);
  cr = free_space_open (space);
  if (made->scale > 0)
    {
      SheetPen pen = pen_begin (cr, search->sheet, search->look);

      pen.words_are_solid = true;
      wall_plan_fill (cr, &made->plan, search->sheet);
      if (made->has_side)
        wall_side_fill (cr, &made->side, search->sheet);
      draw_views (&pen, made, mark_on_plan);
    }
  cairo_destroy (cr);
  free_space_close (space);
  if (!free_space_is_clear (space, box_grown (search->title, air)))
    {
      free_space_free (space);
      return NULL;
    }
  if (made->scale <= 0)
    free_space_take (space, emptiness_box (search->room));
  free_space_take (space, box_grown (search->title, 1));
  free_space_take (space, wall_lower_mark_box (search->sheet));
  return space;
}

/* Where each block would like to stand: the section and the parts at the lower left, all else on the title block, in line with its edge. */
static Wish
block_wish (const LayoutSearch *search, BlockKind kind, Point size)
{
  const bool left = kind == BLOCK_SECTION || kind == BLOCK_PARTS;
  const Point lower_left = { search->room.min.x, search->room.max.y }, on_title = { search->title.min.x, search->title.min.y - air - 1 };

  return (Wish) {
    .size = size, .within = search->room, .anchor = left ? lower_left : on_title, .corner = { 0, 1 }, .across = 2, .down = 1, .clear = air };
}

/* What has no room with nothing but the views there has none later. */
static void
find_possible (LayoutSearch *search, const FreeSpace *space)
{
  for (int small = 0; small < 2; small++)
    for (int kind = 0; kind < BLOCK_COUNT; kind++)
      for (int form = 0; form < BLOCK_FORMS; form++)
        {
          const Point size = search->blocks[small].size[kind][form];
          Wish wish = block_wish (search, kind, size);
          double off;
          Box box;

          wish.across = wish.down = 0;      /* any place will do: the first ends the search */
          search->possible[small][kind][form] = size.x > 0 && free_space_find (space, &wish, &box, &off);
        }
}

/* The first form from `from` up to `to` that finds a place. */
static bool
place_block (const LayoutSearch *search, FreeSpace *space, SheetArrangement *made, BlockKind kind, int from, int to)
{
  for (int form = from; form < to; form++)
    {
      const Point size = search->blocks[made->small].size[kind][form];
      const Wish wish = block_wish (search, kind, size);
      double off;
      Box box;

      if (search->possible[made->small][kind][form] && free_space_find (space, &wish, &box, &off))
        {
          free_space_take (space, box);
          made->blocks[kind] = (BlockPlace) { form, box };
          made->off += off;
          return true;
        }
    }
  return false;
}

static bool
has_form (const LayoutSearch *search, BlockKind kind, int form)
{
  return search->blocks[0].size[kind][form].x > 0;
}

/* All blocks but the section in any form; that in one alone. */
static bool
place_blocks (const LayoutSearch *search, FreeSpace *space, SheetArrangement *made, const BlockKind order[], int section_form)
{
  for (int i = 0; i < BLOCK_COUNT; i++)
    {
      const bool section = order[i] == BLOCK_SECTION;
      const int to = !section || section_form == SECTION_FORM_MISSING ? BLOCK_FORMS : section_form + 1;

      if (order[i] == BLOCK_PARTS && !has_form (search, BLOCK_PARTS, 0))
        continue;
      if (!place_block (search, space, made, order[i], section ? section_form : 0, to))
        return false;
    }
  return true;
}

/* The most that an arrangement of these choices can be worth. */
static double
greatest_worth (double scale, bool small, int section_form)
{
  return (scale > 0 ? log (scale) : 0) + (small ? 0 : worth_text_size)
         + (section_form == SECTION_FORM_WHOLE ? worth_whole : section_form == SECTION_FORM_BROKEN ? worth_broken : 0);
}

static double
arrangement_worth (const SheetArrangement *made)
{
  double worth = greatest_worth (made->scale, made->small, made->blocks[BLOCK_SECTION].form) - cost_mm_off * made->off;

  worth -= made->blocks[BLOCK_PARTS].form >= PARTS_FORM_SHORT ? cost_short_list : 0;
  for (int kind = BLOCK_PARTS; kind < BLOCK_COUNT; kind++)
    worth -= cost_later_form * fmax (0, made->blocks[kind].form);
  return worth;
}

/* The best so far keeps words and balloons of its own; those under way serve others too. */
static void
keep_if_better (LayoutSearch *search, const SheetArrangement *made)
{
  const double worth = arrangement_worth (made);

  if (worth <= search->best_worth)
    return;
  plan_notes_clear (&search->best.notes);
  search->best = *made;
  search->best.notes = plan_notes_copy (&made->notes);
  search->best_worth = worth;
  search->found = true;
}

/* All that can stand round views whose places are settled. */
static void
try_blocks (LayoutSearch *search, FreeSpace *space, const SheetArrangement *views, bool mark_on_plan)
{
  const size_t taken = free_space_taken (space);

  find_possible (search, space);
  for (int small = 0; small < 2; small++)
    for (int section = SECTION_FORM_WHOLE; section <= SECTION_FORM_MISSING; section++)
      for (size_t i = 0; i < G_N_ELEMENTS (orders); i++)
        {
          SheetArrangement made = *views;

          if ((section == SECTION_FORM_MISSING) != mark_on_plan
              || (section != SECTION_FORM_MISSING && !search->possible[small][BLOCK_SECTION][section])
              || greatest_worth (views->scale, small, section) <= search->best_worth)
            continue;
          made.small = small;
          if (place_blocks (search, space, &made, orders[i], section))
            keep_if_better (search, &made);
          free_space_give_back (space, taken);
        }
}

static void
try_views (LayoutSearch *search, SheetArrangement views, bool mark_on_plan)
{
  FreeSpace *space = space_with_views (search, &views, mark_on_plan);

  if (space == NULL)
    return;
  if (views.scale > 0)
    {
      SheetPen pen = pen_begin (NULL, search->sheet, search->look);

      views.notes = plan_notes_of (&pen, &views.plan, &search->blocks[0].parts, space, search->room);
    }
  try_blocks (search, space, &views, mark_on_plan);
  plan_notes_clear (&views.notes);
  free_space_free (space);
}

static void
try_scale (LayoutSearch *search, double scale)
{
  static const double shares[] = { 0.5, 0, 1 };
  SheetArrangement views = { .scale = scale, .has_side = scale > 0 && wall_side_exists (search->sheet) };

  for (int kind = 0; kind < BLOCK_COUNT; kind++)
    views.blocks[kind].form = -1;
  if (scale > 0)
    {
      search->plan_ink = view_ink (search, scale, false);
      search->side_ink = views.has_side ? view_ink (search, scale, true) : box_empty ();
    }
  for (size_t i = 0; i < (scale > 0 ? G_N_ELEMENTS (shares) : 1); i++)
    for (int mark_on_plan = 0; mark_on_plan < 2; mark_on_plan++)
      if ((scale == 0 || place_views (search, shares[i], &views)) && (mark_on_plan || has_form (search, BLOCK_SECTION, SECTION_FORM_WHOLE))
          && greatest_worth (scale, false, mark_on_plan ? SECTION_FORM_MISSING : SECTION_FORM_WHOLE) > search->best_worth)
        try_views (search, views, mark_on_plan);
}

bool
layout_search (const WallSheet *sheet, const Look *look, const SheetBlocks blocks[2], SheetArrangement *found)
{
  LayoutSearch search = {
    .sheet = sheet, .look = look, .blocks = blocks, .room = wall_room_box (sheet), .title = wall_title_box (sheet), .best_worth = -INFINITY };

  if (!wall_plan_exists (sheet))
    try_scale (&search, 0);
  for (size_t i = 0; wall_plan_exists (sheet) && i < G_N_ELEMENTS (reductions); i++)
    if (greatest_worth (1 / reductions[i], false, SECTION_FORM_WHOLE) > search.best_worth)
      try_scale (&search, 1 / reductions[i]);
  *found = search.best;
  return search.found;
}

/* Whether nothing on the sheet has given way. */
static bool
is_as_good (const SheetArrangement *one, const SheetArrangement *other)
{
  const BlockPlace *a = one->blocks, *b = other->blocks;

  return one->scale >= other->scale && one->small <= other->small && a[BLOCK_SECTION].form <= b[BLOCK_SECTION].form
         && a[BLOCK_CONTROL_LINES].form <= b[BLOCK_CONTROL_LINES].form
         && (a[BLOCK_PARTS].form < PARTS_FORM_SHORT || a[BLOCK_PARTS].form <= b[BLOCK_PARTS].form);
}

bool
layout_arrange (const WallSheet *sheet, const Look *look, SheetBlocks blocks[2], SheetArrangement *found)
{
  SheetBlocks trays[2] = { 0 };
  SheetArrangement with = { 0 };

  sheet_blocks_init (blocks, sheet, look, false);
  if (!layout_search (sheet, look, blocks, found))
    return false;
  sheet_blocks_init (trays, sheet, look, true);
  if ((trays[0].parts.has_stands || trays[0].parts.has_wings) && layout_search (sheet, look, trays, &with) && is_as_good (&with, found))
    for (int small = 0; small < 2; small++)
      {
        const SheetBlocks plain = blocks[small];

        blocks[small] = trays[small];
        trays[small] = plain;
      }
  else
    {
      plan_notes_clear (&with.notes);
      with = *found;
      found->notes = (PlanNotes) { 0 };
    }
  plan_notes_clear (&found->notes);
  *found = with;
  sheet_blocks_clear (trays);
  station_names_put (sheet, look, found);
  return true;
}
