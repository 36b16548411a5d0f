#pragma once
#include "document/aeroplane.h"
#include "document/units.h"
#include "figures/body-profile.h"
#include "figures/json-text.h"

/** A motor behind the front of its cowl: where the propeller's plane is, and how deep the firewall has to sit so that spinner or hub clears
 *  the cowl. Millimetres, along the body; an angle of the thrust line moves none of these by more than a few hundredths. */
typedef struct {
  const Part *motor, *propeller, *spinner, *cowl;       /* spinner and cowl NULL without; lent */
  double front_x_mm;            /* the front of the cowl, without one of the body's nose, aft of the datum */
  double plane_ahead_mm;        /* the propeller's plane ahead of that front */
  double shaft_mm;              /* that plane ahead of the can's front */
  double gap_mm;                /* from the spinner's rear face, without one the hub's, to the front; negative within the cowl */
  double out_mm;                /* the motor is so much too far out (positive) or sunk (negative) for the usual gap; 0 within its band */
  double firewall_mm;           /* the firewall's face behind the front, as the motor and its mount stand */
  double firewall_then_mm;      /* and where the gap is as usual */
  const NamedPlace *former;     /* the named former nearest to the firewall then, and how far behind it (negative ahead); NULL without */
  double behind_former_mm;
  double to_port_mm, up_mm;     /* how far the shaft has to stand off at the firewall where it should be, so that the thrust
                                   line's angles leave it in the middle of the cowl's front; 0 without a thrust line */
} NoseFigures;

/** The propeller aboard that turns on the motor's shaft, nearest to its front; where neither is in its place yet, the only propeller of the
 *  only motor. Lent; NULL without. */
const Part *nose_propeller_of (const Aeroplane *aeroplane, const Part *motor);

/** What is lacking before any of that can be said. */
typedef enum {
  NOSE_KNOWN,           /* nothing */
  NOSE_NO_MOTOR,        /* the part is no motor, or not aboard */
  NOSE_NO_PROPELLER,    /* none on its shaft */
  NOSE_NO_SIZE,         /* the motor has no length */
  NOSE_PUSHER,          /* the propeller is behind it */
  NOSE_NO_FRONT,        /* neither a cowl about it nor a body in whose nose it stands */
  NOSE_COWL_SIZE,       /* the cowl about it has no length */
  NOSE_POINTED          /* the propeller is inside a nose that ends narrower than the hub */
} NoseLack;

/** The figures of a motor; they are untouched where the answer is not NOSE_KNOWN. */
NoseLack nose_look (const Aeroplane *aeroplane, const Part *motor, NoseFigures *nose);

/** What to do about it, a sentence, translated: "No propeller is on the shaft of “Motor”: …". NULL for NOSE_KNOWN and NOSE_NO_MOTOR. A new
 *  string. */
char *nose_lack_text (NoseLack lack, const Part *motor);

/** False for no motor aboard, one without a propeller on its shaft, one that stands off the centre line without a cowl
 *  of its own, one that pushes, and where the drawn nose ends narrower than the hub: then it is drawn with the spinner, and only a cowl among
 *  the parts tells where its front is.
 *  band     1.5 to 3 mm behind a spinner, aimed at 2; behind a bare hub up to 8, aimed at 3
 *  usual    shaft 12 to 20 mm proud of the can, hub 9 mm thick, mount 3 mm behind the can where none is among the parts
 *  source   common practice, no source; offsets: geometry, length × tangent of the angle */
bool nose_figures_of (const Aeroplane *aeroplane, const Part *motor, NoseFigures *nose);

/** The same by the inside of the first body, made already; NULL: no body is drawn. */
bool nose_figures_within (const Aeroplane *aeroplane, const BodyProfile *profile, const Part *motor, NoseFigures *nose);
/** How thick a firewall is as a rule, mm. Common practice, no source. */
#define NOSE_FIREWALL_MM 3.0
/** Where the face of a motor's firewall is, mm aft of the datum: firewall_mm behind the front, and where that cannot be said the motor's own rear.
 *  profile  as above */
double nose_firewall_face (const Aeroplane *aeroplane, const BodyProfile *profile, const Part *motor);
/** Of all motors of which that can be said, among the first NOSE_MOST aboard; how many. */
enum { NOSE_MOST = 8 };
size_t nose_figures_all (const Aeroplane *aeroplane, NoseFigures noses[NOSE_MOST]);      /* fills the first so many of `noses` */

/** The aeroplane with the motor where the gap is as usual, and propeller, spinner, adapter, mount, firewall and the thrust line's origin
 *  moved along; the angles stay. The same aeroplane where it stands so already; NULL where nose_figures_of says nothing. */
Aeroplane *nose_settled (const Aeroplane *aeroplane, const Part *motor);

/** "Motor is too far out of the cowl by 6 mm: the firewall belongs 24 mm behind the cowl's front, 3 mm behind F1." A new string. */
char *nose_text (const NoseFigures *nose, Units units);

/** Adds `nose`, an array with one object for each motor of which that can be said. */
void nose_write (JsonText *json, const Aeroplane *aeroplane);
