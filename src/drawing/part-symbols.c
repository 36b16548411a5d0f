#include "drawing/part-symbols.h"
#include <math.h>
#include <string.h>
#include "drawing/line-kind.h"
#include "drawing/part-draft.h"
#include "drawing/symbols.h"

void
part_ink (const PartDraft *d)
{
  look_set_source (d->cr, d->ink);
}

/* Details take the thin line, whatever the box has. */
void
part_detail_line (const PartDraft *d)
{
  line_kind_set (d->cr, d->look, LINE_INNER);
  part_ink (d);
}

static void
stroke_across (const PartDraft *d, double y)
{
  line_stroke (d->cr, (Point) { d->box.min.x, y }, (Point) { d->box.max.x, y });
}

static void
draw_motor (const PartDraft *d)
{
  const double ring = d->half_y * 0.5, shaft = look_size (d->look, 1.8, 0.5), reach = fmin (look_size (d->look, 7, 2.1), d->half_y);

  part_detail_line (d);
  stroke_across (d, d->middle.y - ring);
  stroke_across (d, d->middle.y + ring);
  line_add_box (d->cr, (Box) { { d->middle.x - shaft, d->box.min.y - reach }, { d->middle.x + shaft, d->box.min.y } });
  look_set_source (d->cr, d->look->part_fill);
  cairo_fill_preserve (d->cr);
  part_ink (d);
  cairo_stroke (d->cr);
  line_kind_set (d->cr, d->look, LINE_CENTRE);
  line_stroke (d->cr, (Point) { d->middle.x, d->box.max.y }, (Point) { d->middle.x, d->box.min.y - reach });
}

/* A joint along the longer way, poles at the forward end as strokes, so that no font is needed. */
static void
draw_battery (const PartDraft *d)
{
  const double arm = look_size (d->look, 2.4, 0.7), in = fmin (d->half_x / 2, look_size (d->look, 8, 2.4));
  const double y = d->box.min.y + fmin (look_size (d->look, 6, 1.8), d->half_y / 2);
  const Point plus = { d->middle.x - in, y }, minus = { d->middle.x + in, y };
  const bool tall = d->half_y >= d->half_x;

  line_kind_set (d->cr, d->look, LINE_HIDDEN);
  part_ink (d);
  if (tall)
    line_stroke (d->cr, (Point) { d->middle.x, d->box.min.y }, (Point) { d->middle.x, d->box.max.y });
  else
    stroke_across (d, d->middle.y);
  part_detail_line (d);
  line_stroke (d->cr, (Point) { plus.x - arm, y }, (Point) { plus.x + arm, y });
  line_stroke (d->cr, (Point) { plus.x, y - arm }, (Point) { plus.x, y + arm });
  line_stroke (d->cr, (Point) { minus.x - arm, y }, (Point) { minus.x + arm, y });
}

static void
draw_controller (const PartDraft *d)
{
  Look fine = *d->look;
  const double in_x = d->half_x * 0.6, in_y = d->half_y * 0.6;

  /* Much enlarged its lines stand further apart: some fifty say as much as hundreds. */
  fine.hatch_step = fmax (look_size (d->look, 3, 0.9), (in_x + in_y) / 24);
  draw_hatch (d->cr, &fine, (Box) { { d->middle.x - in_x, d->middle.y - in_y }, { d->middle.x + in_x, d->middle.y + in_y } }, d->ink);
}

static void
draw_receiver (const PartDraft *d)
{
  const double socket = fmin (look_size (d->look, 4.5, 1.4), d->half_y), step = 2 * d->half_x / 5, wave = look_size (d->look, 3, 0.9);
  const Point root = { d->box.max.x - wave, d->box.min.y };

  part_detail_line (d);
  for (int i = 1; i <= 4; i++)
    {
      const double x = d->box.min.x + i * step;

      line_stroke (d->cr, (Point) { x, d->box.max.y }, (Point) { x, d->box.max.y - socket });
    }
  cairo_move_to (d->cr, root.x, root.y);
  cairo_rel_curve_to (d->cr, 0, -wave, wave, -wave, wave, -2 * wave);
  cairo_rel_curve_to (d->cr, 0, -wave, -wave, -wave, -wave, -2 * wave);
  cairo_stroke (d->cr);
}

/* Its lugs stand at the ends of the longer side, the shaft nearer the forward (or left) one. */
static void
draw_servo (const PartDraft *d)
{
  const bool tall = d->half_y >= d->half_x;
  const double lug = 0.3 * fmax (d->half_x, d->half_y), small = fmin (d->half_x, d->half_y), r = small * 0.6;
  const Point shaft = tall ? (Point) { d->middle.x, d->box.min.y + lug + small } : (Point) { d->box.min.x + lug + small, d->middle.y };
  const Point arm = tall ? (Point) { d->box.max.x + small * 0.8, shaft.y } : (Point) { shaft.x, d->box.min.y - small * 0.8 };

  part_detail_line (d);
  for (int side = -1; side <= 1; side += 2)
    if (tall)
      stroke_across (d, d->middle.y + side * (d->half_y - lug));
    else
      line_stroke (d->cr, (Point) { d->middle.x + side * (d->half_x - lug), d->box.min.y },
                   (Point) { d->middle.x + side * (d->half_x - lug), d->box.max.y });
  cairo_arc (d->cr, shaft.x, shaft.y, r, 0, 2 * M_PI);
  cairo_stroke (d->cr);
  line_kind_set (d->cr, d->look, LINE_PART);
  line_stroke (d->cr, shaft, arm);
  cairo_arc (d->cr, shaft.x, shaft.y, look_size (d->look, 1.3, 0.4), 0, 2 * M_PI);
  cairo_fill (d->cr);
}

/* Two slender blades, widest at a third of their length, about a square hub. */
static void
draw_propeller (const PartDraft *d)
{
  const double hub = look_size (d->look, 3.5, 1.05), half = fmax (d->half_x, d->half_y), root = hub * 0.35;
  const double belly = fmin (fmax (0.045 * half, hub * 0.7), 2 * hub);
  const bool across = d->half_x >= d->half_y;

  cairo_save (d->cr);
  cairo_translate (d->cr, line_crisp_x (d->cr, d->middle.x, d->look->u), line_crisp_y (d->cr, d->middle.y, d->look->u));
  if (!across)
    cairo_rotate (d->cr, M_PI / 2);
  cairo_set_line_join (d->cr, CAIRO_LINE_JOIN_ROUND);
  for (int side = -1; side <= 1; side += 2)
    {
      cairo_move_to (d->cr, side * hub * 0.5, -root);
      cairo_curve_to (d->cr, side * 0.3 * half, -belly, side * 0.6 * half, -belly * 0.8, side * half, 0);
      cairo_curve_to (d->cr, side * 0.6 * half, belly * 0.8, side * 0.3 * half, belly, side * hub * 0.5, root);
      cairo_close_path (d->cr);
    }
  look_set_source (d->cr, d->look->part_fill);
  cairo_fill_preserve (d->cr);
  part_ink (d);
  cairo_stroke (d->cr);
  cairo_rectangle (d->cr, -hub, -hub, 2 * hub, 2 * hub);
  look_set_source (d->cr, d->look->part_fill);
  cairo_fill_preserve (d->cr);
  part_ink (d);
  cairo_stroke (d->cr);
  cairo_restore (d->cr);
}

typedef enum { BASE_BOX, BASE_ROUNDED, BASE_SOLID, BASE_NONE } PartBase;
typedef struct { const char *word; PartBase base; void (*draw) (const PartDraft *draft); } PartKind;

static const PartKind kinds[] = {
  { "motor", BASE_BOX, draw_motor }, { "battery", BASE_ROUNDED, draw_battery }, { "controller", BASE_BOX, draw_controller },
  { "receiver", BASE_BOX, draw_receiver }, { "servo", BASE_BOX, draw_servo }, { "switch", BASE_BOX, part_draw_switch },
  { "ballast", BASE_SOLID, NULL }, { "propeller", BASE_NONE, draw_propeller }, { "spinner", BASE_NONE, part_draw_spinner },
  { "wheels", BASE_NONE, part_draw_wheels }, { "undercarriage", BASE_NONE, part_draw_undercarriage },
  { "cowl", BASE_NONE, part_draw_shell }, { "canopy", BASE_NONE, part_draw_shell }, { "pilot", BASE_NONE, part_draw_pilot },
  { "pushrod", BASE_NONE, part_draw_pushrod },
};
static const PartKind unknown = { NULL, BASE_BOX, NULL };

static const PartKind *
part_kind (const char *word)
{
  for (size_t i = 0; word && i < sizeof kinds / sizeof kinds[0]; i++)
    if (strcmp (kinds[i].word, word) == 0)
      return &kinds[i];
  return &unknown;
}

bool
part_symbol_is_solid (const char *class_word)
{
  return part_kind (class_word)->base != BASE_NONE;
}

bool
part_symbol_is_shell (const char *class_word)
{
  return part_kind (class_word)->draw == part_draw_shell;
}

/* Whether all that is drawn of it lies inside its box. */
static bool
stays_within (const PartKind *kind)
{
  return kind->draw == draw_battery || kind->draw == draw_controller || kind->draw == part_draw_switch;
}

static bool
has_details (const PartDraft *draft, const PartKind *kind, PartState state)
{
  if (!kind->draw || kind->base == BASE_NONE)
    return kind->draw != NULL;
  if (draft->look->halo && stays_within (kind))
    return false;
  return state != PART_LEFT_OUT && 2 * fmax (draft->half_x, draft->half_y) >= look_size (draft->look, 14, 4);
}

/* A battery's corners are rounded. */
static void
add_part_box (const PartDraft *d, bool rounded)
{
  const double r = look_size (d->look, 1.5, 0.45), width = cairo_get_line_width (d->cr);
  const double x0 = line_crisp_x (d->cr, d->box.min.x, width), x1 = line_crisp_x (d->cr, d->box.max.x, width);
  const double y0 = line_crisp_y (d->cr, d->box.min.y, width), y1 = line_crisp_y (d->cr, d->box.max.y, width);

  if (!rounded)
    {
      cairo_rectangle (d->cr, x0, y0, x1 - x0, y1 - y0);
      return;
    }
  cairo_new_sub_path (d->cr);
  cairo_arc (d->cr, x1 - r, y0 + r, r, -M_PI / 2, 0);
  cairo_arc (d->cr, x1 - r, y1 - r, r, 0, M_PI / 2);
  cairo_arc (d->cr, x0 + r, y1 - r, r, M_PI / 2, M_PI);
  cairo_arc (d->cr, x0 + r, y0 + r, r, M_PI, 3 * M_PI / 2);
  cairo_close_path (d->cr);
}

static void
part_line (const PartDraft *d, PartState state)
{
  line_kind_set (d->cr, d->look, state == PART_PROPOSED ? LINE_PROPOSAL : state == PART_LEFT_OUT ? LINE_HIDDEN : LINE_PART);
  if (state == PART_SELECTED)
    cairo_set_line_width (d->cr, d->look->selected_width);
  cairo_set_line_join (d->cr, CAIRO_LINE_JOIN_MITER);
}

static void
draw_base (const PartDraft *d, PartBase base, PartState state)
{
  add_part_box (d, base == BASE_ROUNDED);
  if (state == PART_SETTLED || state == PART_SELECTED || state == PART_TO_COME)
    {
      look_set_source (d->cr, base == BASE_SOLID ? d->ink : d->look->part_fill);
      cairo_fill_preserve (d->cr);
    }
  part_ink (d);
  cairo_stroke (d->cr);
}

/* From the side a thing is its box; shells and sticks keep their shape, and a propeller is the line of its disc. */
static void
draw_side (const PartDraft *d, const PartSymbol *part, const PartKind *kind)
{
  if (kind->base != BASE_NONE)
    draw_base (d, kind->base, part->state);
  else if (kind->draw == part_draw_wheels || kind->draw == part_draw_undercarriage)
    part_draw_wheel_side (d);
  else if (kind->draw != draw_propeller)
    kind->draw (d);
  else
    {
      line_kind_set (d->cr, d->look, LINE_OTHER_POSITION);
      look_set_source (d->cr, part->state == PART_SETTLED ? d->look->construction : d->ink);
      line_stroke (d->cr, (Point) { d->box.min.x, d->middle.y }, (Point) { d->box.max.x, d->middle.y });
    }
}

Box
part_symbol_box (const Look *look, Box box)
{
  const double least = look_size (look, 6, 1.8) / 2;
  const Point middle = point_mix (box.min, box.max, 0.5);
  const double half_x = fmax ((box.max.x - box.min.x) / 2, least), half_y = fmax ((box.max.y - box.min.y) / 2, least);

  return (Box) { { middle.x - half_x, middle.y - half_y }, { middle.x + half_x, middle.y + half_y } };
}

/* What is not turned stays on the very pixels that it would have. */
static void
turn_about (cairo_t *cr, Point middle, double degrees)
{
  if (degrees == 0)
    return;
  cairo_translate (cr, middle.x, middle.y);
  cairo_rotate (cr, -degrees * M_PI / 180);
  cairo_translate (cr, -middle.x, -middle.y);
}

void
draw_part_symbol (cairo_t *cr, const Look *look, const PartSymbol *part)
{
  const PartKind *kind = part_kind (part->class_word);
  const Box box = part_symbol_box (look, part->box);
  const PartDraft draft = {
    .cr = cr, .look = look, .box = box, .middle = point_mix (box.min, box.max, 0.5),
    .half_x = (box.max.x - box.min.x) / 2, .half_y = (box.max.y - box.min.y) / 2,
    .ink = part->state == PART_SETTLED ? look->graphite 
         : part->state == PART_LEFT_OUT || part->state == PART_TO_COME ? look->construction : look->selection };

  cairo_save (cr);
  cairo_new_path (cr);
  turn_about (cr, draft.middle, part->turn);
  part_line (&draft, part->state);
  if (part->side)
    draw_side (&draft, part, kind);
  else
    {
      if (kind->base != BASE_NONE)
        draw_base (&draft, kind->base, part->state);
      if (has_details (&draft, kind, part->state))
        kind->draw (&draft);
    }
  cairo_restore (cr);
}
