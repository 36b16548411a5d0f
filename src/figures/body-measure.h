#pragma once
#include "document/piece.h"

/** What a body's traced outlines come to for what it is made of; NAN where they do not tell. */
typedef struct {
  double plan;            /* mm², seen from above */
  double skin;            /* mm², all round, without the ends */
  double formers;         /* mm², one side each of all named formers, not cut out */
  double length;          /* mm */
} BodyMeasure;

/** Every section is taken for an ellipse as wide as the outline from above and as high as that from the side, a circle where one of them
 *  is not traced; the girth by Ramanujan's first formula, and the skin between two sections as that of a cone between them. Within 1 %
 *  of an ellipsoid's for 100 mm and more.
 *  source  S. Ramanujan, "Modular equations and approximations to π", Quarterly Journal of Mathematics 45, 1914 */
BodyMeasure body_measure (const Body *body);
