#pragma once
#include "document/aeroplane.h"
#include "drawing/selection.h"

/** What a key or menu does to whole pieces. Each makes the next aeroplane, or NULL when it does not apply. */

/** Without what is selected: a control, a mark, or pieces with what hangs on them. */
Aeroplane *piece_edit_removed      (const Aeroplane *aeroplane, const Selection *selection);
/** What is selected, and with the servos among it what serves them alone (servo_fittings); the caller's. */
Selection  piece_edit_with_fittings (const Aeroplane *aeroplane, const Selection *selection);
/** The step's name: "Delete Battery". A new string, translated. */
char      *piece_edit_removed_label (const Aeroplane *aeroplane, const Selection *selection);
/** A rail through a part, 30 mm each way. */
Aeroplane *piece_edit_rail_added   (const Aeroplane *aeroplane, const char *id);
Aeroplane *piece_edit_rail_removed (const Aeroplane *aeroplane, const char *id);      /* the part without its rail; NULL where it has none */
/** What a piece is called: a part's name or class, a surface's role, "Body". Lent or static, translated; never NULL. */
const char *piece_edit_name        (const Aeroplane *aeroplane, const char *id);
