#include "trammel-config.h"
#include "app/tracing-private.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "app/pointer-plate.h"
#include "app/trace-words.h"

static void
add_px (Tracing *self, GArray *to, Point px)
{
  const Point place = placing_sheet (&self->ground->placing, px);

  if (point_is_finite (place))
    g_array_append_val (to, place);
}

static void
show_accepted (Tracing *self)
{
  g_array_set_size (self->accepted, 0);
  g_array_set_size (self->dots, 0);
  for (guint i = 0; i < self->clicks->len; i++) {
    const TraceClick *click = tracing_click_at (self, i);

    for (size_t at = 0; at < click->found_count; at++)
      add_px (self, self->accepted, click->found[at]);
    if (click->found_count == 0)
      add_px (self, self->accepted, click->px);
    if (!click->via)
      add_px (self, self->dots, click->px);
  }
}

static void
show_ahead (Tracing *self)
{
  g_array_set_size (self->ahead, 0);
  if (!self->has_aim || self->clicks->len == 0 || self->ordered != NULL)
    return;
  if (self->aim.drawn) {
    add_px (self, self->ahead, tracing_last (self)->px);
    add_px (self, self->ahead, self->aim.px);
  } else if (tracing_has_proposal (self))
    for (size_t i = 0; i < self->proposal.count; i++)
      add_px (self, self->ahead, self->proposal.places[i]);
}

/* Whether it is known what lies ahead of the last click, be it nothing. */
static bool
has_looked (Tracing *self)
{
  const TraceClick *last = tracing_last (self);

  return last != NULL && self->proposed_from == last->serial;
}

static const Stretch *
proposal_seen (Tracing *self)
{
  return tracing_has_proposal (self) ? &self->proposal : NULL;
}

/* mm: from the last click to where it was looked for. */
static double
proposal_length (Tracing *self)
{
  return point_distance (trace_ground_own (self->ground, tracing_last (self)->px), self->proposed.own);
}

/* mm: by how much the line that was found passes where it was looked for; 0 where that is no more than a hand misses. Held to its line
 * it is asked only how far. */
static double
proposal_astray (Tracing *self)
{
  const Stretch *seen = proposal_seen (self);

  if (seen == NULL || self->holds)
    return 0;
  return trace_astray (seen->missed, tracing_click_sigma (self, self->proposed.px) / trace_ground_scale (self->ground, self->proposed.px));
}

static bool
is_lost (Tracing *self)
{
  return !self->aim.drawn && has_looked (self) && trace_words_is_lost (proposal_seen (self), proposal_length (self));
}

static char *
plate_sentence (Tracing *self)
{
  const Units units = trammel_session_units (trammel_sheet_canvas_session (self->sheet));

  if (self->aim.ends)
    return g_strdup (self->ground->shows == VIEW_BODY_SIDE ? _("Ends here, where it began")
                     : fabs (self->aim.own.y) > 0 ? _("Ends here, at the root") : _("Ends here, on the centre line"));
  if (self->aim.drawn)
    return g_strdup (_("Drawn by hand"));
  return has_looked (self) ? trace_words_sure (units, proposal_seen (self), proposal_length (self), proposal_astray (self)) : NULL;
}

static void
show_plate (Tracing *self)
{
  TrammelPointerPlate *plate = trammel_sheet_canvas_plate (self->sheet);
  const bool upright = !trace_ground_is_half (self->ground);
  g_autofree char *sentence = NULL;
  double px[2];

  if (trammel_pointer_plate_is_typing (plate))
    return;
  if (!self->has_aim || self->clicks->len == 0 || self->ordered != NULL) {
    trammel_pointer_plate_hide (plate);
    return;
  }
  sentence = plate_sentence (self);
  if (sentence == NULL && self->following && !has_looked (self))
    return;                       /* the first proposal comes in a moment */
  const size_t unsaid = sentence == NULL ? 1 : 0;
  const GripRow rows[] = {
    { .name = sentence, .said = "" },
    { .name = upright ? _("Height") : _("Station"), .value = upright ? self->aim.own.y : fabs (self->aim.own.y) },
    { .name = _("Aft of datum"), .value = self->ground->placing.x + self->aim.own.x },
  };

  trammel_pointer_plate_show (plate, trammel_session_units (trammel_sheet_canvas_session (self->sheet)), rows + unsaid,
                              G_N_ELEMENTS (rows) - unsaid);
  trammel_sheet_canvas_px (GTK_WIDGET (self->sheet), placing_sheet (&self->ground->placing, self->aim.px), px);
  trammel_pointer_plate_stand (plate, GTK_WIDGET (self->sheet), px, &(GdkRectangle) { (int) px[0], (int) px[1], 1, 1 });
}

/* A surface that was traced here already. */
static bool
has_traced_surface (Tracing *self)
{
  const Aeroplane *aeroplane = trammel_session_settled (trammel_sheet_canvas_session (self->sheet));

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_SURFACE); i++)
    if (g_strcmp0 (aeroplane_surface (aeroplane, i)->traced, self->ground->view) == 0
        && outline_check (aeroplane_surface (aeroplane, i)->outline, NULL) == CORE_OK)
      return true;
  return false;
}

static bool
has_traced_body (Tracing *self)
{
  const Aeroplane *aeroplane = trammel_session_settled (trammel_sheet_canvas_session (self->sheet));

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++) {
    const Body *body = aeroplane_body (aeroplane, i);

    if (g_strcmp0 (body->traced, self->ground->view) == 0 || g_strcmp0 (body->side_traced, self->ground->view) == 0)
      return true;
  }
  return false;
}

/* What ends it stands first: a click there may be meant for less. */
static const char *
hint_on_the_way (Tracing *self)
{
  if (self->ground->shows == VIEW_BODY_SIDE)
    return _("Click along the line. A click where it began or Return ends it. Ctrl lets go, H holds, Backspace undoes.");
  if (tracing_root (self) > 0)
    return _("Click along the line. A click at the root or Return ends it. Ctrl lets go, H holds, Backspace undoes.");
  return _("Click along the line. A click on the centre line or Return ends it. Ctrl lets go, H holds, Backspace undoes.");
}

/* Return clicks at the key cursor, wherever it has come to. */
static const char *
hint_by_keys (Tracing *self)
{
  if (self->clicks->len == 0)
    return _("Arrows step a pixel of the screen, with Shift ten; Return clicks at the cursor.");
  if (self->ground->shows == VIEW_BODY_SIDE)
    return _("Arrows step a pixel, with Shift ten. Return clicks; again at the same place, or where it began, it ends.");
  if (tracing_root (self) > 0)
    return _("Arrows step a pixel, with Shift ten. Return clicks; again at the same place, or at the root, it ends.");
  return _("Arrows step a pixel, with Shift ten. Return clicks; again at the same place, or on the centre line, it ends.");
}

static const char *
tracing_hint (Tracing *self)
{
  if (self->ordered != NULL)
    return _("The outline is being traced.");
  if (trammel_sheet_canvas_overlay (self->sheet)->has_cursor)
    return hint_by_keys (self);
  if (self->clicks->len > 0)
    return hint_on_the_way (self);
  if (tracing_is_unfinished (self))
    return _("Not finished: a click goes on from where it was left. A click where it began starts anew.");
  if (has_traced_surface (self))
    return _("Traced. Hold V to see the print alone. H draws its hinge line; another click along the outline traces it anew.");
  if (has_traced_body (self))
    return _("Traced. Hold V to see the print alone; another click along the outline traces it anew.");
  switch (self->ground->shows) {
  case VIEW_BODY_TOP:  return _("Click the nose on the printed line, then along it to the tail.");
  case VIEW_BODY_SIDE: return _("Click the nose on the printed line, then along the top to the tail and back below.");
  case VIEW_FIN:       return _("Click the fin's printed outline: root's leading edge, tip, root's trailing edge.");
  default:             return _("Click along the printed outline: root's leading edge, tip, root's trailing edge.");
  }
}

void
tracing_show (Tracing *self)
{
  SheetOverlay *overlay = trammel_sheet_canvas_overlay (self->sheet);

  show_accepted (self);
  show_ahead (self);
  self->shown = (SheetTrace) {
    .accepted = (const Point *) self->accepted->data, .accepted_count = self->accepted->len,
    .proposal = (const Point *) self->ahead->data, .proposal_count = self->ahead->len,
    .by_hand = self->aim.drawn, .lost = is_lost (self),
    .clicks = (const Point *) self->dots->data, .click_count = self->dots->len, .one_sided = !trace_ground_is_half (self->ground),
    .has_aim = self->has_aim && self->ordered == NULL && !self->aim.ends, .has_ring = self->has_aim && self->ordered == NULL && self->aim.ends };
  if (self->has_aim)
    self->shown.aim = self->shown.ring = placing_sheet (&self->ground->placing, self->aim.px);
  overlay->trace = &self->shown;
  trammel_sheet_canvas_magnify (self->sheet, self->has_aim && self->ordered == NULL ? self->shown.aim : (Point) { NAN, NAN });
  show_plate (self);
  trammel_sheet_canvas_set_hint (self->sheet, tracing_hint (self));
  trammel_sheet_canvas_refresh (self->sheet);
}

void
tracing_hide (Tracing *self)
{
  if (trammel_sheet_canvas_overlay (self->sheet)->trace == NULL)
    return;
  trammel_sheet_canvas_overlay (self->sheet)->trace = NULL;
  trammel_sheet_canvas_overlay (self->sheet)->has_magnified = false;
  if (gtk_widget_get_root (GTK_WIDGET (self->sheet)) == NULL)
    return;                       /* the window is going, and the plate may be gone */
  trammel_pointer_plate_hide (trammel_sheet_canvas_plate (self->sheet));
  trammel_sheet_canvas_set_hint (self->sheet, NULL);
  trammel_sheet_canvas_refresh (self->sheet);
}
