#include "figures/usual-fit.h"

#include <math.h>
#include <string.h>
#include "figures/surface-figures.h"
#include "figures/usual-fit-choose.h"
#include "figures/usual-fit-links.h"
#include "figures/usual-fit-place.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

static const struct { const char *name; bool motor, rudder, elevator; int aileron_servos; } choices[USUAL_FIT_COUNT] = {
  [FIT_MOTOR]                       = { N_("Motor"), true, false, false, 0 },
  [FIT_MOTOR_RUDDER_ELEVATOR]       = { N_("Motor, rudder and elevator"), true, true, true, 0 },
  [FIT_MOTOR_ELEVATOR_AILERONS]     = { N_("Motor, elevator and ailerons by one servo"), true, false, true, 1 },
  [FIT_MOTOR_ELEVATOR_AILERONS_TWO] = { N_("Motor, elevator and ailerons by two servos"), true, false, true, 2 },
  [FIT_MOTOR_ALL]                   = { N_("Motor, rudder, elevator and ailerons"), true, true, true, 2 },
  [FIT_GLIDER_RUDDER_ELEVATOR]      = { N_("Glider: rudder and elevator"), false, true, true, 0 },
  [FIT_GLIDER_ELEVATOR_AILERONS]    = { N_("Glider: elevator and ailerons"), false, false, true, 2 },
  [FIT_GLIDER_ALL]                  = { N_("Glider: rudder, elevator and ailerons"), false, true, true, 2 },
};

static const double on_centre[] = { 0, NAN };

/* Along the body, mm: the can behind the nose's cap, the shaft, between motor and controller, controller and battery; what a hub clears
 * a cowl by. */
static const double NOSE_GAP = 2, SHAFT = 12, GAP = 4, HUB_GAP = 3;
/* Of the wing's root chord behind its leading edge. */
static const double RECEIVER_PLACE = 0.4, SERVO_PLACE = 0.6, WING_SERVO_PLACE = 0.4, WING_SERVO_STATION = 0.5;

const char *
usual_fit_name (UsualFit choice)
{
  return _(choices[choice].name);
}

bool
usual_fit_lacks_fin (const Aeroplane *aeroplane, UsualFit choice)
{
  return choices[choice].rudder && !fit_rudder_surface (aeroplane);
}

/* A part of that entry with that name and the stem of its id; NULL when the catalogue has no such entry. */
static Part *
part_called (const CatalogueEntry *entry, const char *stem, const char *name)
{
  Part *part = entry ? catalogue_entry_part (entry) : NULL;

  if (!part)
    return NULL;
  part->piece.id = g_strdup (stem);
  if (name)
    {
      g_free (part->name);
      part->name = g_strdup (name);
    }
  return part;
}

/* The id of the first part of that class; NULL. A new string. */
static char *
id_of_class (const FitGround *ground, const char *class_name)
{
  for (size_t i = 0; i < aeroplane_count (ground->made, PIECE_PART); i++)
    if (g_strcmp0 (aeroplane_part (ground->made, i)->class_name, class_name) == 0)
      return g_strdup (aeroplane_part (ground->made, i)->piece.id);
  return NULL;
}

static double
aft_end (const FitGround *ground, const char *id, double otherwise)
{
  const Part *part = id ? aeroplane_part_by_id (ground->made, id) : NULL;

  return part ? part->x + part->length / 2 : otherwise;
}

/* The class's one part: as it is there, else put by its usual place. Whether it was put. */
static bool
put_one (FitWork *work, const CatalogueEntry *entry, const char *class_name, double from, char **id)
{
  Part *part;

  *id = id_of_class (&work->ground, class_name);
  if (*id || !entry)
    return false;
  part = part_called (entry, class_name, NULL);
  *id = g_strdup (fit_put (&work->ground, part, from + part->length / 2, 1, on_centre)->piece.id);
  return true;
}

/* What holds a part, there where it does; it takes no place of its own. NULL where the catalogue has none. */
static const Part *
put_fastening (FitWork *work, const char *entry_id, const char *stem, double x, double z)
{
  Part *part = part_called (catalogue_find (work->catalogue, entry_id), stem, NULL);

  if (!part)
    return NULL;
  part->length = part->width = part->height = 0;
  part->x = round (x);
  part->z = z;
  return fit_add (&work->ground, part);
}

/* Ahead of the can by the shaft's length, and of a nose that is too slim for the can by as much as a hub clears a cowl. */
static double
propeller_place (const FitGround *ground, const Part *motor, const Part *propeller)
{
  const double plane = motor->x - motor->length / 2 - SHAFT;
  const bool in_nose = motor->y == 0 && motor->x < (ground->nose + ground->tail) / 2;

  return in_nose ? fmin (plane, ground->nose - HUB_GAP - propeller->length / 2) : plane;
}

static void
put_motor (FitWork *work)
{
  const CatalogueEntry *motor = fit_entry_for (work->catalogue, "motor", work->all_up);
  const Part *placed;
  Part *propeller;
  const bool put = put_one (work, motor, "motor", work->ground.nose + NOSE_GAP, &work->motor);
  placed = work->motor ? aeroplane_part_by_id (work->ground.made, work->motor) : NULL;
  if (put)
    put_fastening (work, "mount-cross", "mount", placed->x + placed->length / 2, placed->z);
  propeller = placed ? part_called (fit_propeller_of (work->catalogue, placed), "propeller", NULL) : NULL;
  if (propeller && !(work->propeller = id_of_class (&work->ground, "propeller")))
    {
      propeller->x = propeller_place (&work->ground, placed, propeller);
      propeller->z = placed->z;
      work->propeller = g_strdup (fit_add (&work->ground, propeller)->piece.id);
    }
  else if (propeller)
    piece_unref (&propeller->piece);
  put_one (work, fit_controller_of (work->catalogue, placed, fit_entry_for (work->catalogue, "battery", work->all_up)), "controller",
           aft_end (&work->ground, work->motor, work->ground.nose) + GAP, &work->controller);
}

static void
put_receiver (FitWork *work)
{
  const CatalogueEntry *receiver = fit_entry_for (work->catalogue, "receiver", work->all_up);
  Part *part;

  work->receiver = id_of_class (&work->ground, "receiver");
  if (work->receiver || !receiver)
    return;
  part = part_called (receiver, "receiver", NULL);
  fit_put (&work->ground, part, work->ground.leading + RECEIVER_PLACE * work->ground.chord, 1, on_centre);
  work->receiver = g_strdup (part->piece.id);
}

/* In the body behind the receiver, two of them side by side. */
static const Part *
put_body_servo (FitWork *work, const char *stem, const char *name)
{
  Part *part = part_called (work->servo, stem, name);
  const double beside = part->width / 2 + 1, sides[] = { beside, -beside, 0, NAN };

  return fit_put (&work->ground, part, work->ground.leading + SERVO_PLACE * work->ground.chord, 1, sides);
}

static const Part *
put_wing_servo (FitWork *work, const Surface *wing, double station, const char *stem, const char *name)
{
  Part *part = part_called (work->servo, stem, name);
  const double across = part->width;
  StationCut cut;

  part->width = part->height;         /* it lies on its side */
  part->height = across;
  part->of = g_strdup (wing->piece.id);
  part->y = station;
  part->z = wing->z + surface_lift (wing, fabs (station));
  part->x = planform_cut (wing->outline, surface_sides (wing), fabs (station), &cut) == CORE_OK
            ? round (cut.leading_x + WING_SERVO_PLACE * cut.chord) : work->ground.leading;
  return fit_add (&work->ground, part);
}

/* Where a wing's aileron servos stand: at the inner end of its ailerons, else half-way out. */
static double
wing_servo_station (const Surface *wing)
{
  const double tip = outline_bounds (wing->outline).max.y;

  for (size_t i = 0; i < wing->control_count; i++)
    if (wing->controls[i].kind == CONTROL_AILERON)
      return round (fmin (fabs (wing->controls[i].inner), fabs (wing->controls[i].outer)));
  return round (WING_SERVO_STATION * tip);
}

/* Servos that are there already are the first that were asked for. */
static bool
is_wanted (FitWork *work)
{
  if (!work->servo)
    return false;
  if (work->servos_there == 0)
    return true;
  work->servos_there--;
  return false;
}

/* One side's: 0 left, 1 right. The part may be another one after its horn is added: its id is kept. */
static void
put_side_servo (FitWork *work, const Surface *wing, int side)
{
  const double station = wing_servo_station (wing);
  const Part *servo = side == 0 ? put_wing_servo (work, wing, -station, "servo-left", _("Servo, left aileron"))
                                : put_wing_servo (work, wing, station, "servo-right", _("Servo, right aileron"));

  work->aileron_servos[side] = g_strdup (servo->piece.id);
  fit_link_wing (work, servo);
}

/* Where they are the elevator as well each has its own channel. */
static void
put_wing_servos (FitWork *work, const Surface *wing, bool one_channel)
{
  for (int side = 0; side < 2; side++)
    if (is_wanted (work))
      put_side_servo (work, wing, side);
  for (int side = 0; side < 2 && !one_channel; side++)
    g_clear_pointer (&work->aileron_servos[side], g_free);
}

static void
put_servos (FitWork *work, UsualFit choice)
{
  const Surface *wing = aeroplane_reference_wing (work->ground.made);
  const Surface *tail = fit_elevator_surface (work->ground.made), *fin = fit_rudder_surface (work->ground.made);

  if (choices[choice].elevator && tail && is_wanted (work))
    fit_link_tail (work, put_body_servo (work, "servo-elevator", _("Servo, elevator")), tail, CONTROL_ELEVATOR);
  if (choices[choice].rudder && fin && is_wanted (work))
    fit_link_tail (work, put_body_servo (work, "servo-rudder", _("Servo, rudder")), fin, CONTROL_RUDDER);
  /* Without a tail the wing's own flaps are its elevator: two of them. */
  if (choices[choice].aileron_servos == 2 || (choices[choice].elevator && !tail))
    put_wing_servos (work, wing, tail != NULL || !choices[choice].elevator);
  else if (choices[choice].aileron_servos == 1 && is_wanted (work))
    fit_link_centre (work, put_body_servo (work, "servo-ailerons", _("Servo, ailerons")), wing);
}

/* Last, between what stands before and behind it, with a rail over all that is left. */
static void
put_battery (FitWork *work, bool motor)
{
  const CatalogueEntry *entry = motor ? fit_entry_for (work->catalogue, "battery", work->all_up)
                                      : fit_glider_pack (work->catalogue, work->all_up);
  const double from = aft_end (&work->ground, work->controller, work->ground.nose + NOSE_GAP);
  const Part *receiver = work->receiver ? aeroplane_part_by_id (work->ground.made, work->receiver) : NULL;
  const double to = receiver ? receiver->x - receiver->length / 2 : work->ground.leading;
  const Part *fastening;
  Part *part;

  work->battery = id_of_class (&work->ground, "battery");
  if (work->battery || !entry)
    return;
  part = part_called (entry, "battery", NULL);
  /* A glider's sits as far forward as it can. */
  fit_put (&work->ground, part, motor ? (from + to) / 2 : from + part->length / 2, motor ? 0 : 1, on_centre);
  work->battery = g_strdup (part->piece.id);
  fit_rail (&work->ground, work->battery);
  part = (Part *) aeroplane_part_by_id (work->ground.made, work->battery);
  fastening = put_fastening (work, "hook-and-loop", "hook-and-loop", part->x, part->z - part->height / 2);
  if (fastening)
    fit_group (&work->ground, work->battery, fastening->piece.id);
}

static Aeroplane *
without_parts (const Aeroplane *aeroplane)
{
  Aeroplane *made = aeroplane_ref (aeroplane);

  while (aeroplane_count (made, PIECE_PART) > 0)
    {
      Aeroplane *next = aeroplane_without_dependents (made, &aeroplane_part (made, 0)->piece);

      aeroplane_unref (made);
      made = next;
    }
  return made;
}

static size_t
count_servos (const Aeroplane *aeroplane)
{
  size_t count = 0;

  for (size_t i = 0; i < aeroplane_count (aeroplane, PIECE_PART); i++)
    count += g_strcmp0 (aeroplane_part (aeroplane, i)->class_name, "servo") == 0;
  return count;
}

static void
work_clear (FitWork *work)
{
  char *const ids[] = { work->motor, work->propeller, work->controller, work->battery, work->receiver, work->aileron_servos[0],
                        work->aileron_servos[1] };

  for (size_t i = 0; i < G_N_ELEMENTS (ids); i++)
    g_free (ids[i]);
  fit_ground_end (&work->ground);
}

Aeroplane *
usual_fit (const Aeroplane *aeroplane, const Catalogue *catalogue, UsualFit choice, bool replace)
{
  g_autoptr (Aeroplane) ground = replace ? without_parts (aeroplane) : aeroplane_ref (aeroplane);
  FitWork work = { .catalogue = catalogue, .all_up = usual_all_up (aeroplane), .servos_there = count_servos (ground) };

  if (isnan (work.all_up) || !fit_ground_begin (&work.ground, ground))
    return aeroplane_ref (aeroplane);
  work.servo = fit_entry_for (catalogue, "servo", work.all_up);
  if (choices[choice].motor)
    put_motor (&work);
  put_receiver (&work);
  put_servos (&work, choice);
  put_battery (&work, choices[choice].motor);
  fit_wire (&work);
  work_clear (&work);
  return work.ground.made;
}
