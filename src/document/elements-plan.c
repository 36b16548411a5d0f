#include "document/elements-plan.h"

/* In the order of their enumerations. */
static const char *const shown_words[] = { "ink", "scanned", "no", NULL };
static const char *const view_words[]  = { "wing", "tailplane", "foreplane", "fin", "body-top", "body-side", NULL };
static const char *const side_words[]  = { "starboard", "port", "both", NULL };
static const char *const yes_words[]   = { "no", "yes", NULL };
static const char *const not_words[]   = { "yes", "no", NULL };      /* of a flag that is the opposite of its attribute */

/* No length that can be measured on paper is shorter, mm. */
#define LEAST_LENGTH 0.001
#define PX(attribute, type, field) \
  { .name = attribute, .presence = PRESENCE_REQUIRED, .offset = offsetof (type, field), .unit = "px" }

const Attribute attributes_of_plan[] = {
  { .name = "id", .kind = VALUE_ID, .offset = offsetof (Plan, piece.id) },
  { .name = "name", .kind = VALUE_TEXT, .offset = offsetof (Plan, name) },
  { .name = "file", .kind = VALUE_TEXT, .offset = offsetof (Plan, file) },
  { .name = "checksum", .kind = VALUE_TEXT, .offset = offsetof (Plan, checksum) },
  { .name = "page", .offset = offsetof (Plan, page), .least = 1, .most = 100000, .fallback = 1, .unit = "" },
  { .name = "dpi", .offset = offsetof (Plan, dpi), .least = 1, .most = 9600, .fallback = NAN, .unit = "" },
  { .name = "width", .offset = offsetof (Plan, width), .least = 1, .most = 1e6, .fallback = NAN, .unit = "px" },
  { .name = "height", .offset = offsetof (Plan, height), .least = 1, .most = 1e6, .fallback = NAN, .unit = "px" },
  { .name = "shown", .kind = VALUE_WORD, .offset = offsetof (Plan, shown), .words = shown_words },
  { .name = "strength", .offset = offsetof (Plan, strength), .least = 0, .most = 100, .fallback = 75, .unit = "%" },
  { .name = "cling", .kind = VALUE_FLAG, .offset = offsetof (Plan, cling), .fallback = 1, .words = yes_words },
  { .name = "locked", .kind = VALUE_FLAG, .offset = offsetof (Plan, locked), .fallback = 1, .words = yes_words },
  { .name = NULL }
};

const Attribute attributes_of_image[] = {
  { .name = "type", .kind = VALUE_TEXT, .offset = offsetof (Plan, image_type) },
  { .name = NULL }
};

const Attribute attributes_of_corners[] = {
  PX ("x1", Plan, corners[0].x), PX ("y1", Plan, corners[0].y), PX ("x2", Plan, corners[1].x), PX ("y2", Plan, corners[1].y),
  PX ("x3", Plan, corners[2].x), PX ("y3", Plan, corners[2].y), PX ("x4", Plan, corners[3].x), PX ("y4", Plan, corners[3].y),
  { .name = "width", .presence = PRESENCE_REQUIRED, .offset = offsetof (Plan, corners_width), .least = LEAST_LENGTH,
    .most = DOCUMENT_REACH, .unit = "mm" },
  { .name = "height", .presence = PRESENCE_REQUIRED, .offset = offsetof (Plan, corners_height), .least = LEAST_LENGTH,
    .most = DOCUMENT_REACH, .unit = "mm" },
  { .name = NULL }
};

const Attribute attributes_of_level[] = {
  PX ("x1", Plan, level[0].x), PX ("y1", Plan, level[0].y), PX ("x2", Plan, level[1].x), PX ("y2", Plan, level[1].y),
  { .name = NULL }
};

const Attribute attributes_of_length[] = {
  PX ("x1", PlanLength, a.x), PX ("y1", PlanLength, a.y), PX ("x2", PlanLength, b.x), PX ("y2", PlanLength, b.y),
  { .name = "mm", .presence = PRESENCE_REQUIRED, .offset = offsetof (PlanLength, mm), .least = LEAST_LENGTH, .most = DOCUMENT_REACH,
    .unit = "mm" },
  { .name = "sigma1", .offset = offsetof (PlanLength, sigma_a), .least = 0, .most = 1e7, .unit = "px" },
  { .name = "sigma2", .offset = offsetof (PlanLength, sigma_b), .least = 0, .most = 1e7, .unit = "px" },
  { .name = NULL }
};

const Attribute attributes_of_straight[] = { { .name = NULL } };

const Attribute attributes_of_at[] = { PX ("x", Point, x), PX ("y", Point, y), { .name = NULL } };

const Attribute attributes_of_view[] = {
  { .name = "id", .kind = VALUE_ID, .offset = offsetof (PlanView, id) },
  { .name = "shows", .kind = VALUE_WORD, .presence = PRESENCE_REQUIRED, .offset = offsetof (PlanView, shows), .words = view_words },
  PX ("fore-x", PlanView, fore.x), PX ("fore-y", PlanView, fore.y), PX ("aft-x", PlanView, aft.x), PX ("aft-y", PlanView, aft.y),
  { .name = "x", .presence = PRESENCE_SHOWN, .offset = offsetof (PlanView, x), .unit = "mm" },
  { .name = "z", .presence = PRESENCE_SHOWN, .offset = offsetof (PlanView, z), .unit = "mm" },
  { .name = "side", .kind = VALUE_WORD, .offset = offsetof (PlanView, side), .words = side_words },
  { .name = "flipped", .kind = VALUE_FLAG, .offset = offsetof (PlanView, flipped), .words = yes_words },
  { .name = "placed", .kind = VALUE_FLAG, .offset = offsetof (PlanView, for_now), .words = not_words },
  { .name = NULL }
};
