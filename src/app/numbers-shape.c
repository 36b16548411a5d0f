#include "app/numbers-shape.h"
#include "geometry/planform.h"
#include "geometry/shapes.h"

/* Tip over root of what is known by its area alone. Common practice, no source. */
static const double AREA_TAPER = 0.65;

bool
numbers_asks (NumbersThing thing, NumbersShape shape, Number number)
{
  const bool body = thing == NUMBERS_BODY;

  switch (number) {
  case NUMBER_ROOT_X:        return body || shape != SHAPE_AREA || thing == NUMBERS_WING;
  case NUMBER_AREA:          return !body && shape == SHAPE_AREA;
  case NUMBER_ARM:           return !body && shape == SHAPE_AREA && thing != NUMBERS_WING;
  case NUMBER_LENGTH:
  case NUMBER_WIDTH:
  case NUMBER_HEIGHT:        return body;
  case NUMBER_SPAN:          return !body;
  case NUMBER_AHEAD:
  case NUMBER_BEHIND:        return !body && shape == SHAPE_ELLIPSE;
  case NUMBER_ROOT_CHORD:
  case NUMBER_TIP_CHORD:
  case NUMBER_TIP_BACK:      return !body && (shape == SHAPE_TAPER || shape == SHAPE_CRANK);
  default:                   return !body && shape == SHAPE_CRANK;
  }
}

/* Any of them may be how far something lies from the datum, or swept forward. */
static bool
is_of_either_sign (Number number)
{
  return number == NUMBER_ROOT_X || number == NUMBER_ARM || number == NUMBER_TIP_BACK || number == NUMBER_CRANK_BACK;
}

static bool
may_be_zero (Number number)
{
  return number == NUMBER_AHEAD || number == NUMBER_BEHIND || number == NUMBER_TIP_CHORD;
}

Number
numbers_too_small (NumbersThing thing, NumbersShape shape, const double values[NUMBER_COUNT])
{
  for (Number i = 0; i < NUMBER_COUNT; i++)
    if (numbers_asks (thing, shape, i) && !is_of_either_sign (i) && (may_be_zero (i) ? values[i] < 0 : !(values[i] > 0)))
      return i;
  if (numbers_asks (thing, shape, NUMBER_AHEAD) && !(values[NUMBER_AHEAD] + values[NUMBER_BEHIND] > 0))
    return NUMBER_AHEAD;
  return NUMBER_COUNT;
}

/* What is usual for each thing, as shares of the wing's span, before anything is drawn: a 700 mm model. Common practice, no source. */
static const struct { double span, chord, x; } usual[NUMBERS_THING_COUNT] = {
  [NUMBERS_WING]      = { 700, 130, 120 },
  [NUMBERS_TAILPLANE] = { 250,  70, 420 },
  [NUMBERS_FOREPLANE] = { 250,  60,   0 },
  [NUMBERS_FIN]       = {  90,  80, 415 },
  [NUMBERS_BODY]      = { 500,  55,   0 },
};

static double
usual_scale (const Aeroplane *aeroplane, double *shift)
{
  const Surface *wing = aeroplane_reference_wing (aeroplane);
  Planform planform;

  *shift = 0;
  if (wing == NULL || planform_measure (wing->outline, PLANFORM_CARRIED, &planform) != CORE_OK)
    return 1;
  *shift = outline_node (wing->outline, 0).x - usual[NUMBERS_WING].x * planform.span / usual[NUMBERS_WING].span;
  return planform.span / usual[NUMBERS_WING].span;
}

static double
usual_round (double mm)
{
  return mm >= 100 ? 5 * round (mm / 5) : round (mm);
}

/* The wing's quarter mean chord, which arms are measured from; the datum without a wing. */
static double
wing_quarter_x (const Aeroplane *aeroplane)
{
  const Surface *wing = aeroplane_reference_wing (aeroplane);
  Planform planform;

  if (wing == NULL || planform_measure (wing->outline, wing->root_open ? PLANFORM_OPEN : PLANFORM_CARRIED, &planform) != CORE_OK)
    return 0;
  return planform.mac_leading_edge_x + planform.mac / 4;
}

void
numbers_usual (const Aeroplane *aeroplane, NumbersThing thing, double values[NUMBER_COUNT])
{
  double shift;
  const double scale = usual_scale (aeroplane, &shift);
  const double span = usual_round (usual[thing].span * scale), chord = usual_round (usual[thing].chord * scale);

  values[NUMBER_SPAN] = values[NUMBER_LENGTH] = span;
  values[NUMBER_AHEAD] = usual_round (chord * 0.35);
  values[NUMBER_BEHIND] = chord - values[NUMBER_AHEAD];
  values[NUMBER_ROOT_CHORD] = chord;
  values[NUMBER_TIP_CHORD] = usual_round (chord * 0.65);
  values[NUMBER_TIP_BACK] = usual_round (chord * 0.15);
  values[NUMBER_CRANK_STATION] = usual_round (span * 0.25);
  values[NUMBER_CRANK_CHORD] = chord;
  values[NUMBER_CRANK_BACK] = 0;
  values[NUMBER_WIDTH] = chord;
  values[NUMBER_HEIGHT] = usual_round (chord * 1.2);
  values[NUMBER_AREA] = span * chord * (1 + AREA_TAPER) / 2;
  values[NUMBER_ARM] = usual_round (usual[thing].x * scale + shift + chord / 4 - wing_quarter_x (aeroplane));
  values[NUMBER_ROOT_X] = usual_round (usual[thing].x * scale + shift);
}

/* The usual taper with its quarter chords in a line across, as broad as the area asks. */
static bool
area_outline (const Aeroplane *aeroplane, NumbersThing thing, const double v[NUMBER_COUNT], Outline **made)
{
  const double tip = thing == NUMBERS_FIN ? v[NUMBER_SPAN] : v[NUMBER_SPAN] / 2;
  const double root = 2 * v[NUMBER_AREA] / (v[NUMBER_SPAN] * (1 + AREA_TAPER));
  const double front = thing == NUMBERS_WING ? v[NUMBER_ROOT_X] : wing_quarter_x (aeroplane) + v[NUMBER_ARM] - root / 4;
  const double station[] = { 0, tip }, chord[] = { root, AREA_TAPER * root };
  const double leading[] = { front, front + (1 - AREA_TAPER) * root / 4 };

  return shape_taper (station, leading, chord, 2, made) == CORE_OK;
}

static bool
surface_outline (const Aeroplane *aeroplane, NumbersThing thing, NumbersShape shape, const double v[NUMBER_COUNT], Outline **made)
{
  const double tip = thing == NUMBERS_FIN ? v[NUMBER_SPAN] : v[NUMBER_SPAN] / 2;
  const double x = v[NUMBER_ROOT_X];

  if (shape == SHAPE_AREA)
    return area_outline (aeroplane, thing, v, made);
  if (shape == SHAPE_ELLIPSE)
    return shape_ellipse (x, tip, v[NUMBER_AHEAD], v[NUMBER_BEHIND], made) == CORE_OK;
  if (shape == SHAPE_TAPER) {
    const double station[] = { 0, tip }, leading[] = { x, x + v[NUMBER_TIP_BACK] };
    const double chord[] = { v[NUMBER_ROOT_CHORD], v[NUMBER_TIP_CHORD] };

    return shape_taper (station, leading, chord, 2, made) == CORE_OK;
  }
  const double station[] = { 0, v[NUMBER_CRANK_STATION], tip };
  const double leading[] = { x, x + v[NUMBER_CRANK_BACK], x + v[NUMBER_TIP_BACK] };
  const double chord[] = { v[NUMBER_ROOT_CHORD], v[NUMBER_CRANK_CHORD], v[NUMBER_TIP_CHORD] };

  return shape_taper (station, leading, chord, 3, made) == CORE_OK;
}

/* A spindle from the nose through the widest place at three tenths of the length to a slim tail. */
static Outline *
body_half (double x, double length, double half, double tail)
{
  const Point widest = { x + 0.3 * length, half }, end = { x + length, tail };
  const Segment segments[] = {
    segment_curve ((Point) { x, 0.55 * half }, (Point) { x + 0.15 * length, half }, widest),
    segment_curve ((Point) { x + 0.55 * length, half }, (Point) { x + 0.8 * length, tail + 0.25 * half }, end),
    segment_line ((Point) { x + length, 0 }),
  };
  Outline *made = NULL;

  return outline_new ((Point) { x, 0 }, segments, G_N_ELEMENTS (segments), NULL, &made) == CORE_OK ? made : NULL;
}

/* The side view closes below: along the top to the tail and back. */
static Outline *
body_side (double x, double length, double half, double tail)
{
  const Point top = { x + 0.3 * length, half }, end_top = { x + length, tail }, end_low = { x + length, -tail }, low = { x + 0.3 * length, -half };
  const Segment segments[] = {
    segment_curve ((Point) { x, 0.55 * half }, (Point) { x + 0.15 * length, half }, top),
    segment_curve ((Point) { x + 0.55 * length, half }, (Point) { x + 0.8 * length, tail + 0.25 * half }, end_top),
    segment_line (end_low),
    segment_curve ((Point) { x + 0.8 * length, -tail - 0.25 * half }, (Point) { x + 0.55 * length, -half }, low),
    segment_curve ((Point) { x + 0.15 * length, -half }, (Point) { x, -0.55 * half }, (Point) { x, 0 }),
  };
  Outline *made = NULL;

  return outline_new ((Point) { x, 0 }, segments, G_N_ELEMENTS (segments), NULL, &made) == CORE_OK ? made : NULL;
}

static Piece *
numbers_body (const Aeroplane *aeroplane, const double v[NUMBER_COUNT])
{
  g_autofree char *id = aeroplane_free_id (aeroplane, "body");
  const double length = v[NUMBER_LENGTH], half = v[NUMBER_WIDTH] / 2, tall = v[NUMBER_HEIGHT] / 2;
  Body *body;

  if (!(length > 0 && half > 0 && tall > 0))
    return NULL;
  body = body_new (id);
  body->outline = body_half (v[NUMBER_ROOT_X], length, half, 0.08 * half);
  body->side_outline = body_side (v[NUMBER_ROOT_X], length, tall, 0.12 * tall);
  return &body->piece;
}

Piece *
numbers_piece (const Aeroplane *aeroplane, NumbersThing thing, NumbersShape shape, const double values[NUMBER_COUNT])
{
  static const SurfaceRole roles[] = {
    [NUMBERS_WING] = ROLE_WING, [NUMBERS_TAILPLANE] = ROLE_TAILPLANE, [NUMBERS_FOREPLANE] = ROLE_FOREPLANE, [NUMBERS_FIN] = ROLE_FIN,
  };
  g_autofree char *id = NULL;
  Outline *outline = NULL;
  Surface *surface;

  if (thing == NUMBERS_BODY)
    return numbers_body (aeroplane, values);
  if (!surface_outline (aeroplane, thing, shape, values, &outline))
    return NULL;
  if (outline_check (outline, NULL) != CORE_OK) {
    outline_unref (outline);
    return NULL;
  }
  id = aeroplane_free_id (aeroplane, surface_role_word (roles[thing]));
  surface = surface_new (id, roles[thing], outline);
  surface->provisional = shape == SHAPE_AREA;
  return &surface->piece;
}
