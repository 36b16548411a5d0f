#include "document/elements-item.h"

/* In the order of ItemTraced; the first cannot be written. */
static const char *const traced_words[] = { "", "plan", "skin", "ribs", "formers", "span", "length", NULL };
static const char *const yes_words[]    = { "no", "yes", NULL };

/* Not given unless it is: a size, a mass, a density. */
#define OPTIONAL(attribute, field, most_of_it, its_unit) \
  { .name = attribute, .offset = offsetof (StructureItem, field), .most = most_of_it, .fallback = NAN, .unit = its_unit }
/* No metal is denser than osmium, kg/m³; no sheet of it heavier than 10 mm of lead, g/m². */
#define MOST_DENSITY 22600
#define MOST_AREA_DENSITY 120000

const Attribute attributes_of_item[] = {
  { .name = "name", .kind = VALUE_TEXT, .offset = offsetof (StructureItem, name) },
  { .name = "material", .kind = VALUE_TEXT, .offset = offsetof (StructureItem, material) },
  { .name = "count", .offset = offsetof (StructureItem, count), .least = 0, .most = 100000, .fallback = 1, .unit = "" },
  OPTIONAL ("density", density, MOST_DENSITY, "kg/m³"),
  OPTIONAL ("density-sigma", density_sigma, 1, ""),
  { .name = "density-weighed", .kind = VALUE_FLAG, .offset = offsetof (StructureItem, density_weighed), .words = yes_words },
  OPTIONAL ("thickness", thickness, DOCUMENT_REACH, "mm"),
  OPTIONAL ("width", width, DOCUMENT_REACH, "mm"),
  OPTIONAL ("length", length, DOCUMENT_REACH, "mm"),
  OPTIONAL ("area", area, DOCUMENT_REACH, "mm²"),
  OPTIONAL ("area-density", area_density, MOST_AREA_DENSITY, "g/m²"),
  { .name = "of", .kind = VALUE_WORD, .offset = offsetof (StructureItem, of), .words = traced_words },
  { .name = "share", .offset = offsetof (StructureItem, share), .least = 0, .most = 10, .fallback = 1, .unit = "" },
  OPTIONAL ("of-others", of_others, 10, ""),
  OPTIONAL ("mass", mass, DOCUMENT_REACH, "g"),
  OPTIONAL ("weighed", weighed, DOCUMENT_REACH, "g"),
  OPTIONAL ("weighed-sigma", weighed_sigma, DOCUMENT_REACH, "g"),
  { .name = "x", .offset = offsetof (StructureItem, x), .fallback = NAN, .unit = "mm" },
  { .name = "z", .offset = offsetof (StructureItem, z), .fallback = NAN, .unit = "mm" },
  { .name = NULL }
};
