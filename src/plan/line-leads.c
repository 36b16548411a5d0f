#include "plan/line-leads.h"

#include <stdlib.h>
#include "plan/cornered.h"
#include "plan/sureness.h"

/* mm: how far a place that leads keeps from a click; how far off it is, one standard deviation; from one to the next where the line is held. */
static const double CLEAR = 4, SIGMA = 0.4, HOLD = 10;
/* The weight of a place on a line that is seen. mm: a click so near the line that goes on may belong to it. */
static const double SEEN = 0.5, BELONGS = 8;

typedef struct { size_t column; Point place; } Lead;
typedef struct { Lead *leads; size_t count; } Leads;

static int
by_column (const void *a, const void *b)
{
  const Lead *one = a, *other = b;

  return (one->column > other->column) - (one->column < other->column);
}

static bool
lies_by (const LineOnward *onward, Point place, double reach)
{
  for (size_t i = 0; i < onward->count; i++)
    if (point_distance (onward->places[i], place) < reach)
      return true;
  return false;
}

/* The clicks: those off the line that goes on are brought onto the line followed. False where they do not lie along it in their order. */
static bool
lead_by_clicks (const LedWay *way, const LineOnward *onward, Leads *made)
{
  const FollowedLine *line = way->line;
  size_t least = 0;

  for (size_t i = 0; i < way->click_count; i++)
    {
      const size_t nearest = followed_line_nearest (line, way->clicks[i]);
      const size_t column = i == 0 ? 0 : i + 1 == way->click_count ? line->count : nearest;
      if (column < least)
        return false;
      least = column;
      made->leads[made->count++] = (Lead) { column, lies_by (onward, line->places[nearest], BELONGS * way->options->px_per_mm)
                                                      ? way->clicks[i] : line->places[nearest] };
    }
  return true;
}

static void
add_lead (const LedWay *way, size_t column, Point place, Leads *made)
{
  for (size_t i = 0; i < way->click_count; i++)
    if (point_distance (made->leads[i].place, place) <= CLEAR * way->options->px_per_mm)
      return;
  if (column > 0 && column + 1 < way->line->count)
    made->leads[made->count++] = (Lead) { column, place };
}

/* Clear of the step and of what is to take another way. */
static void
hold_the_rest (const LedWay *way, const LineStep *step, const LineOnward *onward, Leads *made)
{
  const size_t hold = (size_t) (HOLD * way->options->px_per_mm);
  const size_t a = followed_line_nearest (way->line, onward->places[0]);
  const size_t b = followed_line_nearest (way->line, onward->places[onward->count - 1]);
  const size_t near = a < b ? a : b, far = a < b ? b : a;
  const size_t from = near < step->before ? near : step->before, to = far > step->behind ? far : step->behind;

  for (size_t column = hold; column < way->line->count; column += hold)
    if ((column + hold < from || column > to + hold) && way->line->weights[column] > SEEN)
      add_lead (way, column, way->line->places[column], made);
}

CoreStatus
follow_led (const LedWay *way, const LineStep *step, const LineOnward *onward, FollowedLine *made)
{
  const double px_per_mm = way->options->px_per_mm;
  const size_t room = way->click_count + onward->count + (size_t) ((double) way->line->count / (size_t) (HOLD * px_per_mm)) + 1;
  FollowOptions sure = *way->options;
  Leads leads = { .leads = malloc (room * sizeof *leads.leads) };
  Point *places = malloc (room * sizeof *places);
  CoreStatus status = leads.leads && places ? CORE_OK : CORE_NO_MEMORY;

  *made = (FollowedLine) { .count = 0 };
  sure.click_sigma = SIGMA * px_per_mm;
  if (!status && lead_by_clicks (way, onward, &leads))
    {
      for (size_t i = 0; i < onward->count; i++)
        add_lead (way, followed_line_nearest (way->line, onward->places[i]), onward->places[i], &leads);
      hold_the_rest (way, step, onward, &leads);
      qsort (leads.leads, leads.count, sizeof *leads.leads, by_column);
      for (size_t i = 0; i < leads.count; i++)
        places[i] = leads.leads[i].place;
      status = follow_cornered (way->ink, places, leads.count, &sure, made);
    }
  free (leads.leads);
  free (places);
  return status;
}
