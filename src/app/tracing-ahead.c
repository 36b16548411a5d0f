#include "trammel-config.h"
#include "app/tracing-private.h"
#include <math.h>

/* px of the screen: so near a root or the first click it is meant; how far off a line a hand clicks, one standard deviation. */
static const double NEAR_PX = 6, CLICK_PX = 0.8;
/* mm: what a trace must have come away from its root before it can end there; how far behind the last click the way of a line is taken
 * that is held to, the furthest first. */
static const double AWAY = 5, BEHIND[] = { 40, 12 };
enum { FEWEST_ROUND = 3 };

double
tracing_near (Tracing *self)
{
  return NEAR_PX / trammel_sheet_canvas_view (self->sheet)->scale;
}

double
tracing_click_sigma (const Tracing *self, Point px)
{
  const double scale = trace_ground_scale (self->ground, px);

  return fmax (CLICK_PX / trammel_sheet_canvas_view (self->sheet)->scale * scale, 2);
}

/* Where a click would go */

static void
aim_at_own (Tracing *self, TraceAim *aim, Point own)
{
  aim->own = own;
  aim->px = mapping_to_px (&self->ground->placing.mapping, axis_frame_paper (&self->ground->placing.frame, own));
}

static void
aim_straight (Tracing *self, TraceAim *aim)
{
  const Point last = trace_ground_own (self->ground, tracing_last (self)->px), own = aim->own;

  aim_at_own (self, aim, fabs (own.x - last.x) >= fabs (own.y - last.y) ? (Point) { own.x, last.y } : (Point) { last.x, own.y });
}

/* Where the first click stands: on the axis when near enough to it. A body ends on its axis, however far off it a blunt nose is clicked. */
double
tracing_root (Tracing *self)
{
  if (self->ground->shows == VIEW_BODY_TOP)
    return 0;
  const double y = self->clicks->len > 0 ? fabs (trace_ground_own (self->ground, tracing_click_at (self, 0)->px).y) : 0;

  return y <= 1 ? 0 : y;
}

static bool
has_left_root (Tracing *self, double root)
{
  double most = 0;

  for (guint i = 0; i < self->clicks->len; i++)
    most = fmax (most, fabs (trace_ground_own (self->ground, tracing_click_at (self, i)->px).y));
  return self->clicks->len > 1 && most > root + AWAY;
}

/* A slender body is near its axis all along: its tail is aft of every click. */
static bool
can_end_there (Tracing *self, const TraceAim *aim)
{
  return self->ground->shows != VIEW_BODY_TOP
         || (self->clicks->len > 0 && aim->own.x > trace_ground_own (self->ground, tracing_last (self)->px).x);
}

static void
aim_at_root (Tracing *self, TraceAim *aim)
{
  const double root = tracing_root (self), near = tracing_near (self);

  if (fabs (fabs (aim->own.y) - root) > near)
    return;
  aim->ends = has_left_root (self, root) && can_end_there (self, aim);
  if (aim->ends || self->clicks->len == 0)
    aim_at_own (self, aim, (Point) { aim->own.x, aim->own.y < 0 ? -root : root });
}

static void
aim_at_first (Tracing *self, TraceAim *aim)
{
  const Point first = self->clicks->len > 0 ? trace_ground_own (self->ground, tracing_click_at (self, 0)->px) : (Point) { NAN, NAN };

  if (self->clicks->len < FEWEST_ROUND || !(point_distance (aim->own, first) <= 1.5 * tracing_near (self)))
    return;
  aim->ends = true;
  aim_at_own (self, aim, first);
}

bool
tracing_lets_go (const ToolEvent *event)
{
  return event->loose && !event->keyed;
}

TraceAim
tracing_aim (Tracing *self, const ToolEvent *event)
{
  TraceAim aim = { .px = placing_px (&self->ground->placing, event->place) };

  aim.own = trace_ground_own (self->ground, aim.px);
  aim.drawn = self->clicks->len > 0 && (tracing_lets_go (event) || event->shift);
  if (self->clicks->len > 0 && event->shift)
    aim_straight (self, &aim);
  if (tracing_lets_go (event) || !point_is_finite (aim.px))
    return aim;
  if (self->ground->shows == VIEW_BODY_SIDE)
    aim_at_first (self, &aim);
  else
    aim_at_root (self, &aim);
  return aim;
}

/* Beyond the picture there is no line. The lens is centred in the picture. */
bool
tracing_has_picture (Tracing *self, Point px)
{
  const Point centre = self->ground->placing.mapping.lens_centre;

  return px.x >= 0 && px.y >= 0 && px.x <= 2 * centre.x && px.y <= 2 * centre.y;
}

/* The proposal */

/* How far behind `from` a place of the stretches that arrive there is, for as long as they were followed without a break. */
static bool
place_behind (Tracing *self, guint from, double mm, Point *behind)
{
  const Point px = tracing_click_at (self, from)->px;
  const double back = mm * trace_ground_scale (self->ground, px);

  for (guint i = from; i > 0; i--) {
    const TraceClick *click = tracing_click_at (self, i);

    if (click->drawn || click->found_count == 0)
      return false;
    for (size_t k = click->found_count; k-- > 0;)
      if (point_distance (click->found[k], px) >= back) {
        *behind = click->found[k];
        return true;
      }
  }
  return false;
}

/* What is shown before the click is what the click will give: the clicks behind it say which of two lines is meant, as they will to the whole
 * trace. */
static void
go_by_clicks (Tracing *self, guint from, StretchRequest *request)
{
  guint first = from;

  while (first > 0 && from - first < STRETCH_BEHIND && !tracing_click_at (self, first)->drawn)
    first--;
  request->behind_count = 0;
  for (guint i = first; i < from; i++)
    request->behind[request->behind_count++] = tracing_click_at (self, i)->px;
}

static StretchRequest
request_from (Tracing *self, guint from, Point to)
{
  StretchRequest request = { .from = tracing_click_at (self, from)->px, .to = to, .click_sigma = tracing_click_sigma (self, to),
                             .holds_on = self->holds };

  if (!self->holds) {
    go_by_clicks (self, from, &request);
    return request;
  }
  for (size_t i = 0; i < G_N_ELEMENTS (BEHIND); i++)
    request.behind_count += place_behind (self, from, BEHIND[i], &request.behind[request.behind_count]);
  return request;
}

static void
take_stretch (Stretch *to, const Stretch *from)
{
  stretch_clear (to);
  if (from == NULL)
    return;
  *to = *from;
  to->places = g_memdup2 (from->places, from->count * sizeof *from->places);
}

static void
proposal_arrived (const Stretch *stretch, gpointer data)
{
  Tracing *self = data;
  const TraceClick *last = self->sheet != NULL ? tracing_last (self) : NULL;

  self->following = false;
  if (last != NULL && last->serial == self->asked_from && self->has_aim && !self->aim.drawn) {
    take_stretch (&self->proposal, stretch);
    self->proposed = self->asked;
    self->proposed_from = self->asked_from;
    tracing_show (self);
  }
  if (self->sheet != NULL && self->wanted)
    tracing_propose (self);
  g_rc_box_release (self);
}

void
tracing_propose (Tracing *self)
{
  const TraceClick *last = tracing_last (self);
  StretchRequest request;

  self->wanted = self->following;
  if (self->following || last == NULL || !self->has_aim || self->aim.drawn || !point_is_finite (self->aim.px)
      || point_distance (last->px, self->aim.px) < 2)
    return;
  request = request_from (self, self->clicks->len - 1, self->aim.px);
  self->following = true;
  self->asked = self->aim;
  self->asked_from = last->serial;
  stretch_ask (self->ground, &request, proposal_arrived, g_rc_box_acquire (self));
}

bool
tracing_has_proposal (Tracing *self)
{
  const TraceClick *last = tracing_last (self);

  return last != NULL && self->proposal.count > 0 && self->proposed_from == last->serial;
}

void
tracing_drop_proposal (Tracing *self)
{
  stretch_clear (&self->proposal);
  self->proposed_from = 0;        /* no click's: what lies ahead of one that is the last again is not known yet */
  self->wanted = false;
}

/* What is accepted */

typedef struct { Tracing *tracing; guint serial, asked; } Find;

static void
found_arrived (const Stretch *stretch, gpointer data)
{
  Find *find = data;
  Tracing *self = find->tracing;

  for (guint i = 0; self->sheet != NULL && stretch != NULL && i < self->clicks->len; i++) {
    TraceClick *click = tracing_click_at (self, i);

    if (click->serial != find->serial || click->asked != find->asked)
      continue;
    g_free (click->found);
    click->found = g_memdup2 (stretch->places, stretch->count * sizeof *stretch->places);
    click->found_count = stretch->count;
    tracing_show (self);
  }
  g_free (find);
  g_rc_box_release (self);
}

/* Between its neighbours a stretch is looked at as the whole trace will be: by the clicks alone. */
static void
see_neighbours (Tracing *self, guint to, StretchRequest *request)
{
  go_by_clicks (self, to - 1, request);
  request->ahead = tracing_click_at (self, to + 1)->px;
  request->has_ahead = true;
  request->holds_on = false;
}

void
tracing_find (Tracing *self, guint to)
{
  TraceClick *click = tracing_click_at (self, to);
  StretchRequest request = request_from (self, to - 1, click->px);
  Find *find = g_new (Find, 1);

  if (to + 1 < self->clicks->len && !tracing_click_at (self, to + 1)->drawn)
    see_neighbours (self, to, &request);
  *find = (Find) { .tracing = g_rc_box_acquire (self), .serial = click->serial, .asked = ++click->asked };
  stretch_ask (self->ground, &request, found_arrived, find);
}
