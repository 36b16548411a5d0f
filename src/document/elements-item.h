#pragma once
#include "document/elements.h"

/* The attributes of a structure's item: a part of the one table, in a file of its own. Private to this room. */
extern const Attribute attributes_of_item[];
