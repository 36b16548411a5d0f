#include "figures/before-closing.h"

#include <math.h>
#include "document/part-box.h"
#include "document/part-class.h"
#include "figures/ballast-told.h"
#include "figures/ballast-worst.h"
#include "figures/lead-need.h"
#include "figures/nose-figures.h"
#include "figures/passed-places.h"

typedef struct { const Figures *figures; const Aeroplane *aeroplane; PartRule *rule; GArray *steps; } Work;

static void
step_clear (gpointer data)
{
  ClosingStep *step = data;

  g_clear_pointer (&step->formers, g_ptr_array_unref);
  g_clear_pointer (&step->ribs, g_ptr_array_unref);
}

static ClosingStep
step_of (ClosingKind kind, const Piece *piece)
{
  return (ClosingStep) { .kind = kind, .piece = piece, .from_mm = NAN, .to_mm = NAN, .y_mm = NAN, .above_thrust_mm = NAN,
                         .stand = { NULL, NAN, NAN, NAN, NAN }, .wing = wing_stand_none (), .length_mm = NAN, .needed_mm = NAN, .extension_mm = NAN,
                         .height_mm = NAN, .station_mm = NAN, .aft_of_edge_mm = NAN, .ballast_g = NAN };
}

static bool
is_kind (const Part *part, const char *stem)
{
  return part->kind && g_str_has_prefix (part->kind, stem);
}

static bool
is_in_body (const Aeroplane *aeroplane, const Part *part)
{
  if (part->of && aeroplane_surface_by_id (aeroplane, part->of))
    return false;
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_BODY); i++)
    if (body_covers (aeroplane_body (aeroplane, i), (Point) { part->x, part->y }))
      return true;
  return false;
}

/* The line that heights are told from: where the thrust line begins, carried level; without one the drawing's own. */
static double
thrust_height (const Aeroplane *aeroplane)
{
  return aeroplane_count (aeroplane, PIECE_THRUST) > 0 ? ((const Thrust *) aeroplane_nth (aeroplane, PIECE_THRUST, 0))->z : 0;
}

/* Where the box stands, and adds the step. */
static void
add_box (const Work *work, ClosingStep step, const Part *box)
{
  const Point extent = part_extent (box);

  step.from_mm = box->x - extent.x / 2;
  step.to_mm = box->x + extent.x / 2;
  step.y_mm = box->y;
  step.width_mm = extent.y;
  step.above_thrust_mm = box->z - box->height / 2 - thrust_height (work->aeroplane);
  part_stand_of (work->rule, box, &step.stand);
  g_array_append_val (work->steps, step);
}

/* The last one goes from side to side, or is in the skin: no height tells it. */
static void
forget_height (const Work *work)
{
  ClosingStep *step = &g_array_index (work->steps, ClosingStep, work->steps->len - 1);

  step->above_thrust_mm = step->stand.front_height_mm = step->stand.rear_height_mm = NAN;
}

/* The part as long as all that it may slide over. */
static Part *
slid_along (const Part *part)
{
  Part *made = (Part *) piece_dup (&part->piece);

  if (part->has_rail)
    {
      made->length = part_extent (part).x + part->rail_to - part->rail_from;
      made->width = part_extent (part).y;
      made->turn = 0;
      made->x = (part->rail_from + part->rail_to) / 2;
    }
  return made;
}

static void
add_firewall_of (const Work *work, const Part *motor)
{
  Part *face = (Part *) piece_dup (&motor->piece);
  NoseFigures nose;

  face->x = motor->x + part_extent (motor).x / 2;
  if (nose_look (work->aeroplane, motor, &nose) == NOSE_KNOWN)
    face->x = nose.front_x_mm + nose.firewall_mm;
  face->length = face->turn = face->width = 0;
  add_box (work, step_of (CLOSING_FIREWALL, &motor->piece), face);
  forget_height (work);
  piece_unref (&face->piece);
}

static bool
has_firewall (const Aeroplane *aeroplane)
{
  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    if (aeroplane_part (aeroplane, i)->aboard && is_kind (aeroplane_part (aeroplane, i), "firewall"))
      return true;
  return false;
}

/* Of the body's own things: which kind of place is made ready for it; false: none, for it is put on from outside. */
static bool
kind_of (const Part *part, ClosingKind *kind)
{
  static const char *const trays[] = { "controller", "receiver", "servo", "switch", NULL };

  if (part_is_a (part, "battery") || part->has_rail)
    *kind = CLOSING_FLOOR;
  else if (part_is_a (part, "undercarriage"))
    *kind = CLOSING_UNDERCARRIAGE;
  else if (part_is_a (part, "pushrod"))
    *kind = CLOSING_PUSHROD;
  else if (part_is_a (part, "ballast"))
    *kind = CLOSING_BALLAST;
  else if (is_kind (part, "firewall"))
    *kind = CLOSING_FIREWALL;
  else if ((part->class_name && g_strv_contains (trays, part->class_name))
           || (part_is_a (part, "other") && part->length > 0 && !is_kind (part, "mount-") && !is_kind (part, "adapter-")))
    *kind = CLOSING_TRAY;
  else
    return false;
  return true;
}

static void
add_part (const Work *work, const Part *part, ClosingKind kind)
{
  Part *box = kind == CLOSING_FLOOR ? slid_along (part) : (Part *) piece_dup (&part->piece);
  ClosingStep step = step_of (kind, &part->piece);

  if (kind == CLOSING_PUSHROD)
    {
      const double half = part_extent (part).x / 2;

      step.formers = formers_passed (work->aeroplane, (Point[]) { { part->x - half, part->y }, { part->x + half, part->y } }, 2);
    }
  if (kind == CLOSING_BALLAST)
    step.ballast_g = part->mass;
  add_box (work, step, box);
  if (kind == CLOSING_UNDERCARRIAGE)      /* it hangs below; how high its block is, the body says */
    forget_height (work);
  piece_unref (&box->piece);
}

/* What a wing's covering closes in, of the same kinds: not what hangs on it, nor what moves in it. */
static void
add_part_in_wing (const Work *work, const Part *part, ClosingKind wanted)
{
  ClosingStep step = step_of (wanted, &part->piece);
  ClosingKind kind;

  if (part_is_a (part, "other") || !kind_of (part, &kind) || kind != wanted || kind == CLOSING_PUSHROD || kind == CLOSING_FIREWALL)
    return;
  Part *box = kind == CLOSING_FLOOR ? slid_along (part) : (Part *) piece_dup (&part->piece);
  if (wing_stand_of (work->aeroplane, box, &step.wing))
    {
      step.ballast_g = kind == CLOSING_BALLAST ? part->mass : NAN;
      add_box (work, step, box);
      forget_height (work);
    }
  piece_unref (&box->piece);
}

static void
add_parts (const Work *work, ClosingKind wanted)
{
  for (size_t i = 0; i < aeroplane_count (work->aeroplane, PIECE_PART); i++)
    {
      const Part *part = aeroplane_part (work->aeroplane, i);
      ClosingKind kind;

      if (!part->aboard)
        continue;
      if (!is_in_body (work->aeroplane, part))
        add_part_in_wing (work, part, wanted);
      else if (wanted == CLOSING_FIREWALL && part_is_a (part, "motor") && !has_firewall (work->aeroplane))
        add_firewall_of (work, part);
      else if (kind_of (part, &kind) && kind == wanted)
        add_part (work, part, kind);
    }
}

/* From the former nearest to its forward edge, as on the template. */
static void
measure_hatch (const Work *work)
{
  ClosingStep *step = &g_array_index (work->steps, ClosingStep, work->steps->len - 1);
  const NamedPlace *former;
  double behind;

  step->from_mm = work->figures->hatch.from_mm;      /* to the last bit, or it is rounded otherwise */
  step->to_mm = work->figures->hatch.to_mm;
  if (hatch_nearest_former (work->aeroplane, step->from_mm, &former, &behind))
    step->stand = (PartStand) { former, behind, step->to_mm - former->place, NAN, NAN };
}

static void
add_hatch (const Work *work)
{
  const HatchFigures *hatch = &work->figures->hatch;
  Part *opening;

  if (!hatch->part || !is_in_body (work->aeroplane, hatch->part))
    return;
  opening = (Part *) piece_dup (&hatch->part->piece);
  opening->x = (hatch->from_mm + hatch->to_mm) / 2;
  opening->length = hatch->to_mm - hatch->from_mm;
  opening->width = hatch->width_mm;
  opening->turn = 0;
  add_box (work, step_of (CLOSING_HATCH, &hatch->part->piece), opening);
  forget_height (work);
  measure_hatch (work);
  piece_unref (&opening->piece);
}

static bool
is_aboard (const Aeroplane *aeroplane, const char *id)
{
  const Part *part = aeroplane_part_by_id (aeroplane, id);

  return part && part->aboard;
}

/* One that passes neither former nor rib can be laid at any time. */
static void
add_leg (const Work *work, const Lead *lead, LeadLeg leg)
{
  g_autoptr (GArray) way = lead_route (work->aeroplane, lead, leg);
  ClosingStep step = step_of (CLOSING_LEAD, &lead->piece);

  if (!way || way->len == 0)
    return;
  const Point *places = (const Point *) (const void *) way->data, end = places[way->len - 1];
  step.leg = leg;
  step.formers = formers_passed (work->aeroplane, places, way->len);
  step.ribs = ribs_passed (work->aeroplane, places, way->len);
  step.from_mm = fmin (places[0].x, end.x);
  step.to_mm = fmax (places[0].x, end.x);
  const LeadNeed need = lead_need_along (work->aeroplane, lead, leg, lead_way_along (work->aeroplane, lead, leg, way));
  step.length_mm = lead_leg_length (lead, leg);
  step.needed_mm = need.needed;
  step.extension_mm = need.extension;
  if (step.formers->len + step.ribs->len > 0)
    g_array_append_val (work->steps, step);
  else
    step_clear (&step);
}

static void
add_leads (const Work *work)
{
  for (size_t i = 0; i < aeroplane_count (work->aeroplane, PIECE_LEAD); i++)
    {
      const Lead *lead = aeroplane_lead (work->aeroplane, i);

      if (!is_aboard (work->aeroplane, lead->from) || !is_aboard (work->aeroplane, lead->to)
          || (lead_is_joined (lead) && !is_aboard (work->aeroplane, lead->also)))
        continue;
      for (int leg = 0; leg < lead_leg_count (lead); leg++)
        add_leg (work, lead, leg);
    }
}

static void
add_marks (const Work *work)
{
  const BalanceFigures *balance = &work->figures->balance;

  for (size_t i = 0; i < balance->mark_count; i++)
    if (isfinite (balance->marks[i].target_mm))
      {
        ClosingStep step = step_of (CLOSING_MARK_BLOCK, NULL);

        step.station_mm = balance->marks[i].station_mm;
        step.aft_of_edge_mm = balance->marks[i].target_mm;
        step.from_mm = step.to_mm = balance->marks[i].leading_edge_x_mm + balance->marks[i].target_mm;
        step.wing = wing_stand_at (aeroplane_reference_wing (work->aeroplane), step.station_mm, step.aft_of_edge_mm);
        g_array_append_val (work->steps, step);
      }
}

/* Where a block of lead has room. */
static void
add_ballast_block (const Work *work, const BallastTold *told, bool in_case)
{
  ClosingStep step = step_of (CLOSING_BALLAST, NULL);
  Part *block;

  if (!(told->mass_g > 0) || !told->has_place)
    return;
  block = part_new (NULL, "ballast");
  block->x = told->x_mm;
  block->y = told->place.y_mm;
  block->z = told->place.z_mm;
  block->length = told->place.length_mm;
  block->width = told->place.width_mm;
  block->height = told->place.height_mm;
  step.ballast_g = told->mass_g;
  step.height_mm = block->height;
  step.in_case = in_case;
  add_box (work, step, block);
  piece_unref (&block->piece);
}

/* What the balance asks for as it stands; where that is nothing, what the worst case would. */
static void
add_ballast (const Work *work)
{
  const Figures *figures = work->figures;
  const BalanceFigures *balance = &figures->balance;

  if (isnan (balance->advised_x_mm) || isnan (figures->mass.x_mm))
    return;
  const BallastWorst worst = ballast_worst_of (figures);
  const Solution *solution = worst.slider ? figures_solution (figures, worst.slider->piece.id) : NULL;
  const BallastTold told = ballast_told_of (figures, solution);

  if (told.mass_g > 0)
    add_ballast_block (work, &told, false);
  else
    add_ballast_block (work, &worst.told, true);
}

GArray *
before_closing_of (const Figures *figures)
{
  g_autoptr (PartRule) rule = part_rule_new (figures->aeroplane);
  const Work work = { figures, figures->aeroplane, rule, g_array_new (FALSE, FALSE, sizeof (ClosingStep)) };

  g_array_set_clear_func (work.steps, step_clear);
  for (ClosingKind kind = 0; kind < CLOSING_KIND_COUNT; kind++)
    {
      add_parts (&work, kind);
      if (kind == CLOSING_HATCH)
        add_hatch (&work);
      else if (kind == CLOSING_LEAD)
        add_leads (&work);
      else if (kind == CLOSING_MARK_BLOCK)
        add_marks (&work);
      else if (kind == CLOSING_BALLAST)
        add_ballast (&work);
    }
  return work.steps;
}
