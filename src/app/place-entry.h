#pragma once
#include "app/tool.h"

/** A place typed while a drawing tool is in hand: the plate with a field for each direction. */
typedef struct PlaceEntry PlaceEntry;
typedef void (*PlaceDone) (Tool *tool, Point place);

/** If the key begins a number: opens the fields at `place` (mm, to a whole step), the first holding that text. Return calls `done` with
 *  the place typed, to the last digit; Esc closes. *entry is the tool's and holds the one that is open. Returns whether the key was taken. */
bool place_entry_key   (PlaceEntry **entry, Tool *tool, guint keyval, GdkModifierType state, Point place, PlaceDone done);
/** Where the plate stands and what the first row is called, where that is not the place itself and a station. */
typedef struct { const char *across; GtkWidget *over; Point px; } PlaceStand;
/** The same with the plate there; `stand` is copied, its widget outlives the entry. */
bool place_entry_key_at (PlaceEntry **entry, Tool *tool, guint keyval, GdkModifierType state, Point place, PlaceDone done,
                         const PlaceStand *stand);
/** Closes it; NULL inside is fine. */
void place_entry_close (PlaceEntry **entry);
