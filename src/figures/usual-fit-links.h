#pragma once
#include "document/catalogue.h"
#include "figures/usual-fit-place.h"

/** What joins the parts of the usual fit: pushrods, horns, leads. Private to this room. */

/** One fit in the making. Ids are its own, NULL where there is no such part. */
typedef struct {
  FitGround ground;
  const Catalogue *catalogue;
  double all_up;                        /* g */
  const CatalogueEntry *servo;
  size_t servos_there;                  /* of those that were there before, not yet counted against what is asked for */
  char *motor, *propeller, *controller, *battery, *receiver;
  char *aileron_servos[2];              /* two that have one channel between them: left, right */
} FitWork;

/** A pushrod from the servo (lent) to that control of a tail surface, with its horn. */
void fit_link_tail   (FitWork *work, const Part *servo, const Surface *surface, ControlKind kind);
/** A horn at a wing servo's aileron. */
void fit_link_wing   (FitWork *work, const Part *servo);
/** Torque rods of 1.2 mm wire from one servo to both ailerons. */
void fit_link_centre (FitWork *work, const Part *servo, const Surface *wing);
/** Leads between all that have one, where none is yet, as long as their classes' are; both aileron servos share a
 *  two-into-one lead; one that is too short gets an extension as sold between servos, controller and receiver, else it is as long as it has to
 *  be, in whole centimetres. */
void fit_wire        (FitWork *work);
