#pragma once
#include "document/elements.h"

/* The attributes of a plan's elements: a part of the one table, in a file of their own. Private to this room. */
extern const Attribute attributes_of_plan[], attributes_of_image[], attributes_of_corners[], attributes_of_level[],
  attributes_of_length[], attributes_of_straight[], attributes_of_at[], attributes_of_view[];
