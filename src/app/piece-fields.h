#pragma once
#include "app/field.h"

/** The rows of the panel, a list for each kind of thing; the same two functions serve every plain number of a piece. */
typedef struct { const FieldSpec *specs; size_t count; } FieldList;

FieldList surface_shape_fields   (void);      /* span, place, area, aspect ratio and mean chord */
FieldList surface_rigging_fields (void);      /* height, dihedral, incidence, washout, thickness */
FieldList surface_tail_fields    (void);     /* arm and volume: what only a surface behind or ahead of the wing has */
FieldList surface_section_fields (void);     /* of any but a fin; the last two are the first wing's greatest lift */
FieldList structure_fields       (void);     /* of the selected surface or body */
FieldList part_fields            (void);
FieldList part_size_fields       (void);      /* length, width, height */
FieldList part_group_fields      (void);      /* the group that it is counted to */
/** Of a battery on a rail that the hatch to cut is for; none of another part. */
FieldList part_hatch_fields      (TrammelSession *session);
/** Where the selected part stands, from a former and above the body's bottom; none where no rule on the body tells it. */
FieldList part_stand_fields      (TrammelSession *session);
FieldList part_rail_fields       (void);      /* both ends of its rail */
FieldList node_fields            (TrammelSession *session);      /* of the selected node: by what its outline is of */
FieldList body_fields            (void);      /* length, greatest width and height */
/** Its all-up mass can be typed while no structure has a mass: aeroplane_takes_total. */
FieldList aeroplane_fields       (TrammelSession *session);
bool      aeroplane_takes_total  (TrammelSession *session);      /* tells whether an all-up mass could be shared out */
FieldList balance_point_fields   (void);      /* where it is, how well that is known, and the moments of inertia */
FieldList neutral_point_fields   (void);      /* where it is and what it is made of */
FieldList motion_fields          (void);      /* lift slope, damping, span efficiency, stall, Reynolds number */

/** The double at spec->at of the selected piece, whatever its kind; NAN when nothing is selected. In the field's own unit (mm, grams, degrees …). */
double     piece_field_value  (TrammelSession *session, const FieldSpec *spec);
/** The aeroplane with that double changed, refused outside spec->least..most. In the field's own unit (mm, grams, degrees …). */
Aeroplane *piece_field_change (TrammelSession *session, const FieldSpec *spec, double value);
/** A remark behind a length off the centre line, which is typed with a sign: to which side it is. */
char      *off_centre_remark  (TrammelSession *session, const FieldSpec *spec);
/** A remark behind a height: what it is measured from. */
char      *piece_height_remark (TrammelSession *session, const FieldSpec *spec);
/** The one selected piece, NULL without. */
const Piece *piece_field_selected (TrammelSession *session);

/** The row of the balance mark of that number, from 0: its station, and beneath it where the mark stands and between what limits. */
const FieldSpec *mark_field (size_t mark, bool numbered);
/** The aeroplane with one mark more, where most of the wing's half is without one; where no mark is stated yet the usual one is, too. NULL
 *  without a wing. */
Aeroplane       *mark_added (TrammelSession *session);
