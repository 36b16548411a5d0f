#include "document/elements-plan.h"
#include "document/elements-item.h"
#include <string.h>

#define IN(element) (1u << ELEMENT_##element)

const char *const element_role_words[]    = { "wing", "tailplane", "foreplane", "fin", NULL };
const char *const element_control_words[] = { "aileron", "elevator", "rudder", "flap", NULL };
/* In the order of SectionClass; the first cannot be written. */
const char *const element_section_words[] = { "", "flat-plate", "curved-plate", "flat-bottomed", "symmetrical", NULL };
static const char *const yes_words[]      = { "no", "yes", NULL };
static const char *const root_words[]     = { "carried", "open", NULL };
static const char *const node_words[]     = { "", "corner", "smooth", "symmetric", NULL };     /* the first cannot be written */
static const char *const leg_words[]      = { "from", "also", "to", NULL };
static const char *const hatch_words[]    = { "", "top", "bottom", NULL };                     /* likewise */
static const char *const unplugs_words[]  = { "", "no", "yes", NULL };                         /* likewise */

static const Attribute of_aeroplane[] = {
  { .name = "version", .presence = PRESENCE_REQUIRED, .offset = offsetof (RootRecord, version), .least = 1, .most = 1 },
  { .name = "name", .kind = VALUE_TEXT, .offset = offsetof (RootRecord, name) },
  { .name = "changed", .kind = VALUE_DATE, .offset = offsetof (RootRecord, changed) },
  { .name = "tailless", .kind = VALUE_FLAG, .offset = offsetof (RootRecord, tailless), .words = yes_words },
  { .name = "airframe-mass", .offset = offsetof (RootRecord, airframe), .most = DOCUMENT_REACH, .unit = "g" },
  { .name = "airframe-mass-sigma", .offset = offsetof (RootRecord, airframe_sigma), .most = DOCUMENT_REACH, .unit = "g" },
  { .name = "airframe-x", .offset = offsetof (RootRecord, airframe_x), .fallback = NAN, .unit = "mm" },
  { .name = "airframe-x-sigma", .offset = offsetof (RootRecord, airframe_x_sigma), .most = DOCUMENT_REACH, .unit = "mm" },
  { .name = "hatch", .kind = VALUE_WORD, .offset = offsetof (RootRecord, hatch), .words = hatch_words },
  { .name = NULL }
};

static const Attribute of_target[] = {
  { .name = "margin-from", .presence = PRESENCE_SHOWN, .offset = offsetof (RootRecord, from), .least = -100, .most = 100,
    .fallback = NAN, .unit = "%" },
  { .name = "margin-to", .presence = PRESENCE_SHOWN, .offset = offsetof (RootRecord, to), .least = -100, .most = 100,
    .fallback = NAN, .unit = "%" },
  { .name = "margin-aim", .presence = PRESENCE_SHOWN, .offset = offsetof (RootRecord, aim), .least = -100, .most = 100,
    .fallback = NAN, .unit = "%" },
  { .name = "all-up", .offset = offsetof (RootRecord, all_up), .most = DOCUMENT_REACH, .unit = "g" },
  { .name = "loading", .offset = offsetof (RootRecord, loading), .most = 10000, .unit = "g/dm²" },
  { .name = NULL }
};

/* What a traced outline passes: its distance, and the click's place. `prefix` is before the name of each. */
#define PASSED_CLICK(prefix, record, field) \
  { .name = prefix "passed", .offset = offsetof (record, field.by), .most = DOCUMENT_REACH, .unit = "mm" }, \
  { .name = prefix "passed-x", .offset = offsetof (record, field.at.x), .unit = "mm" }, \
  { .name = prefix "passed-y", .offset = offsetof (record, field.at.y), .unit = "mm" }

static const Attribute of_surface[] = {
  { .name = "id", .kind = VALUE_ID, .offset = offsetof (Surface, piece.id) },
  { .name = "role", .kind = VALUE_WORD, .presence = PRESENCE_REQUIRED, .offset = offsetof (Surface, role), .words = element_role_words },
  { .name = "z", .presence = PRESENCE_SHOWN, .offset = offsetof (Surface, z), .unit = "mm" },
  { .name = "dihedral", .presence = PRESENCE_SHOWN, .offset = offsetof (Surface, dihedral), .least = -60, .most = 60, .unit = "°" },
  { .name = "incidence", .presence = PRESENCE_SHOWN, .offset = offsetof (Surface, incidence), .least = -45, .most = 45, .unit = "°" },
  { .name = "washout", .presence = PRESENCE_SHOWN, .offset = offsetof (Surface, washout), .least = -45, .most = 45, .unit = "°" },
  { .name = "thickness", .offset = offsetof (Surface, thickness), .least = 0, .most = 100, .fallback = NAN, .unit = "%" },
  { .name = "pressure-ratio", .offset = offsetof (Surface, pressure_ratio), .least = 0, .most = 2, .fallback = NAN, .unit = "" },
  { .name = "pressure-ratio-sigma", .offset = offsetof (Surface, pressure_ratio_sigma), .least = 0, .most = 2, .fallback = NAN, .unit = "" },
  { .name = "section", .kind = VALUE_WORD, .offset = offsetof (Surface, section), .words = element_section_words },
  { .name = "section-slope", .offset = offsetof (Surface, section_slope), .least = 0.1, .most = 2, .fallback = NAN, .unit = "" },
  { .name = "section-slope-sigma", .offset = offsetof (Surface, section_slope_sigma), .least = 0, .most = 2, .fallback = NAN, .unit = "" },
  { .name = "lift-max", .offset = offsetof (Surface, lift_max), .least = 0.1, .most = 5, .fallback = NAN, .unit = "" },
  { .name = "lift-max-sigma", .offset = offsetof (Surface, lift_max_sigma), .least = 0, .most = 5, .fallback = NAN, .unit = "" },
  { .name = "root", .kind = VALUE_FLAG, .offset = offsetof (Surface, root_open), .words = root_words },
  { .name = "provisional", .kind = VALUE_FLAG, .offset = offsetof (Surface, provisional), .words = yes_words },
  { .name = "traced", .kind = VALUE_ID, .offset = offsetof (Surface, traced) },
  PASSED_CLICK ("", Surface, passed),
  { .name = "passed-aside", .kind = VALUE_FLAG, .offset = offsetof (Surface, passed.aside), .words = yes_words },
  { .name = NULL }
};

static const Attribute of_body[] = {
  { .name = "id", .kind = VALUE_ID, .offset = offsetof (Body, piece.id) },
  { .name = "traced", .kind = VALUE_ID, .offset = offsetof (Body, traced) },
  { .name = "side-traced", .kind = VALUE_ID, .offset = offsetof (Body, side_traced) },
  PASSED_CLICK ("", Body, passed),
  PASSED_CLICK ("side-", Body, side_passed),
  { .name = "side-passed-aside", .kind = VALUE_FLAG, .offset = offsetof (Body, side_passed.aside), .words = yes_words },
  { .name = "skin", .offset = offsetof (Body, skin), .most = DOCUMENT_REACH, .fallback = NAN, .unit = "mm" },
  { .name = "former-thickness", .offset = offsetof (Body, former_thickness), .most = DOCUMENT_REACH, .fallback = NAN, .unit = "mm" },
  { .name = NULL }
};

static const Attribute of_structure[] = {
  { .name = "id", .kind = VALUE_ID, .offset = offsetof (Structure, piece.id) },
  { .name = "of", .kind = VALUE_ID, .offset = offsetof (Structure, of) },
  { .name = "mass", .offset = offsetof (Structure, mass), .most = DOCUMENT_REACH, .fallback = NAN, .unit = "g" },
  { .name = "mass-sigma", .offset = offsetof (Structure, mass_sigma), .most = DOCUMENT_REACH, .fallback = NAN, .unit = "g" },
  { .name = "centre", .offset = offsetof (Structure, centre), .least = 0, .most = 1, .fallback = NAN, .unit = "" },
  { .name = "x", .offset = offsetof (Structure, x), .fallback = NAN, .unit = "mm" },
  { .name = "y", .offset = offsetof (Structure, y), .unit = "mm" },
  { .name = "z", .offset = offsetof (Structure, z), .unit = "mm" },
  { .name = "x-sigma", .offset = offsetof (Structure, x_sigma), .most = DOCUMENT_REACH, .fallback = NAN, .unit = "mm" },
  { .name = "excess", .offset = offsetof (Structure, excess), .least = 0, .most = 1, .fallback = 0.12, .unit = "" },
  { .name = NULL }
};

static const Attribute of_part[] = {
  { .name = "id", .kind = VALUE_ID, .offset = offsetof (Part, piece.id) },
  { .name = "class", .kind = VALUE_TEXT, .offset = offsetof (Part, class_name) },
  { .name = "name", .kind = VALUE_TEXT, .offset = offsetof (Part, name) },
  { .name = "mass", .presence = PRESENCE_REQUIRED, .offset = offsetof (Part, mass), .most = DOCUMENT_REACH, .unit = "g" },
  { .name = "mass-sigma", .offset = offsetof (Part, mass_sigma), .most = DOCUMENT_REACH, .fallback = NAN, .unit = "g" },
  { .name = "x", .presence = PRESENCE_REQUIRED, .offset = offsetof (Part, x), .unit = "mm" },
  { .name = "y", .presence = PRESENCE_SHOWN, .offset = offsetof (Part, y), .unit = "mm" },
  { .name = "z", .presence = PRESENCE_SHOWN, .offset = offsetof (Part, z), .unit = "mm" },
  { .name = "x-sigma", .offset = offsetof (Part, x_sigma), .most = DOCUMENT_REACH, .fallback = NAN, .unit = "mm" },
  { .name = "length", .offset = offsetof (Part, length), .most = DOCUMENT_REACH, .unit = "mm" },
  { .name = "width", .offset = offsetof (Part, width), .most = DOCUMENT_REACH, .unit = "mm" },
  { .name = "height", .offset = offsetof (Part, height), .most = DOCUMENT_REACH, .unit = "mm" },
  { .name = "bays", .kind = VALUE_TEXT, .offset = offsetof (Part, bays) },
  { .name = "aboard", .kind = VALUE_FLAG, .offset = offsetof (Part, aboard), .fallback = 1, .words = yes_words },
  { .name = "to-come", .kind = VALUE_FLAG, .offset = offsetof (Part, to_come), .words = yes_words },
  { .name = "turn", .offset = offsetof (Part, turn), .least = -180, .most = 180, .unit = "°" },
  { .name = "of", .kind = VALUE_ID, .offset = offsetof (Part, of) },
  { .name = "group", .kind = VALUE_TEXT, .offset = offsetof (Part, group) },
  { .name = "kind", .kind = VALUE_TEXT, .offset = offsetof (Part, kind) },
  { .name = "cells", .offset = offsetof (Part, cells), .most = DOCUMENT_REACH, .unit = "" },
  { .name = "capacity", .offset = offsetof (Part, capacity), .most = DOCUMENT_REACH, .unit = "mAh" },
  { .name = "rpm-per-volt", .offset = offsetof (Part, rpm_per_volt), .most = DOCUMENT_REACH, .unit = "" },
  { .name = "power", .offset = offsetof (Part, power), .most = DOCUMENT_REACH, .unit = "W" },
  { .name = "input", .offset = offsetof (Part, input), .most = DOCUMENT_REACH, .unit = "W" },
  { .name = "current", .offset = offsetof (Part, current), .most = DOCUMENT_REACH, .unit = "A" },
  { .name = "pitch", .offset = offsetof (Part, pitch), .most = DOCUMENT_REACH, .unit = "mm" },
  { .name = NULL }
};

static const Attribute of_lead[] = {
  { .name = "id", .kind = VALUE_ID, .offset = offsetof (Lead, piece.id) },
  { .name = "from", .kind = VALUE_ID, .presence = PRESENCE_REQUIRED, .offset = offsetof (Lead, from) },
  { .name = "also", .kind = VALUE_ID, .offset = offsetof (Lead, also) },
  { .name = "to", .kind = VALUE_ID, .presence = PRESENCE_REQUIRED, .offset = offsetof (Lead, to) },
  { .name = "length", .offset = offsetof (Lead, length), .most = DOCUMENT_REACH, .fallback = NAN, .unit = "mm" },
  { .name = "also-length", .offset = offsetof (Lead, also_length), .most = DOCUMENT_REACH, .fallback = NAN, .unit = "mm" },
  { .name = "to-length", .offset = offsetof (Lead, to_length), .most = DOCUMENT_REACH, .fallback = NAN, .unit = "mm" },
  { .name = "joint-x", .offset = offsetof (Lead, joint_x), .fallback = NAN, .unit = "mm" },
  { .name = "joint-y", .offset = offsetof (Lead, joint_y), .fallback = NAN, .unit = "mm" },
  { .name = "slack", .offset = offsetof (Lead, slack), .least = 1, .most = 3, .fallback = NAN, .unit = "" },
  { .name = "unplugs", .kind = VALUE_WORD, .offset = offsetof (Lead, unplugs), .words = unplugs_words },
  { .name = "allowance", .offset = offsetof (Lead, allowance), .most = DOCUMENT_REACH, .fallback = NAN, .unit = "mm" },
  { .name = "mass", .offset = offsetof (Lead, mass), .most = DOCUMENT_REACH, .unit = "g" },
  { .name = "mass-sigma", .offset = offsetof (Lead, mass_sigma), .most = DOCUMENT_REACH, .fallback = NAN, .unit = "g" },
  { .name = "name", .kind = VALUE_TEXT, .offset = offsetof (Lead, name) },
  { .name = "kind", .kind = VALUE_TEXT, .offset = offsetof (Lead, kind) },
  { .name = NULL }
};

static const Attribute of_mark[] = {
  { .name = "station", .presence = PRESENCE_REQUIRED, .offset = offsetof (Mark, station), .most = DOCUMENT_REACH, .unit = "mm" },
  { .name = NULL }
};

static const Attribute of_bay[] = {
  { .name = "id", .kind = VALUE_ID, .offset = offsetof (Bay, piece.id) },
  { .name = "from-former", .kind = VALUE_TEXT, .presence = PRESENCE_REQUIRED, .offset = offsetof (Bay, from_former) },
  { .name = "to-former", .kind = VALUE_TEXT, .presence = PRESENCE_REQUIRED, .offset = offsetof (Bay, to_former) },
  { .name = NULL }
};

static const Attribute of_thrust[] = {
  { .name = "x", .presence = PRESENCE_SHOWN, .offset = offsetof (Thrust, x), .unit = "mm" },
  { .name = "z", .presence = PRESENCE_SHOWN, .offset = offsetof (Thrust, z), .unit = "mm" },
  { .name = "down", .presence = PRESENCE_SHOWN, .offset = offsetof (Thrust, down), .least = -90, .most = 90, .unit = "°" },
  { .name = "right", .presence = PRESENCE_SHOWN, .offset = offsetof (Thrust, right), .least = -90, .most = 90, .unit = "°" },
  { .name = NULL }
};

static const Attribute of_outline[] = { { .name = NULL } };

static const Attribute of_rib[] = {
  { .name = "name", .kind = VALUE_TEXT, .offset = offsetof (NamedPlace, name) },
  { .name = "station", .presence = PRESENCE_REQUIRED, .offset = offsetof (NamedPlace, place), .unit = "mm" },
  { .name = NULL }
};

static const Attribute of_control[] = {
  { .name = "id", .kind = VALUE_ID, .offset = offsetof (Control, id) },
  { .name = "kind", .kind = VALUE_WORD, .presence = PRESENCE_REQUIRED, .offset = offsetof (Control, kind), .words = element_control_words },
  { .name = "inner", .presence = PRESENCE_REQUIRED, .offset = offsetof (Control, inner), .unit = "mm" },
  { .name = "outer", .presence = PRESENCE_REQUIRED, .offset = offsetof (Control, outer), .unit = "mm" },
  { .name = "hinge-inner-x", .presence = PRESENCE_REQUIRED, .offset = offsetof (Control, hinge_inner_x), .unit = "mm" },
  { .name = "hinge-outer-x", .presence = PRESENCE_REQUIRED, .offset = offsetof (Control, hinge_outer_x), .unit = "mm" },
  { .name = "up", .offset = offsetof (Control, up), .least = -180, .most = 180, .fallback = NAN, .unit = "°" },
  { .name = "down", .offset = offsetof (Control, down), .least = -180, .most = 180, .fallback = NAN, .unit = "°" },
  { .name = NULL }
};

static const Attribute of_break[] = {
  { .name = "from", .presence = PRESENCE_REQUIRED, .offset = offsetof (DihedralBreak, from), .unit = "mm" },
  { .name = "angle", .presence = PRESENCE_REQUIRED, .offset = offsetof (DihedralBreak, angle), .least = -80, .most = 80, .unit = "°" },
  { .name = NULL }
};

static const Attribute of_former[] = {
  { .name = "name", .kind = VALUE_TEXT, .offset = offsetof (NamedPlace, name) },
  { .name = "x", .presence = PRESENCE_REQUIRED, .offset = offsetof (NamedPlace, place), .unit = "mm" },
  { .name = NULL }
};

static const Attribute of_rail[] = {
  { .name = "from", .presence = PRESENCE_REQUIRED, .offset = offsetof (Part, rail_from), .unit = "mm" },
  { .name = "to", .presence = PRESENCE_REQUIRED, .offset = offsetof (Part, rail_to), .unit = "mm" },
  { .name = NULL }
};

static const Attribute of_via[] = {
  { .name = "x", .presence = PRESENCE_REQUIRED, .offset = offsetof (LeadVia, place.x), .unit = "mm" },
  { .name = "y", .presence = PRESENCE_REQUIRED, .offset = offsetof (LeadVia, place.y), .unit = "mm" },
  { .name = "leg", .kind = VALUE_WORD, .offset = offsetof (LeadVia, leg), .words = leg_words },
  { .name = NULL }
};

#define NODE_END \
  { .name = "x", .presence = PRESENCE_REQUIRED, .offset = offsetof (NodeRecord, x), .unit = "mm" }, \
  { .name = "y", .presence = PRESENCE_REQUIRED, .offset = offsetof (NodeRecord, y), .unit = "mm" }, \
  { .name = "node", .kind = VALUE_WORD, .offset = offsetof (NodeRecord, node), .words = node_words }, \
  { .name = NULL }

static const Attribute of_point[] = { NODE_END };

static const Attribute of_curve[] = {
  { .name = "x1", .presence = PRESENCE_REQUIRED, .offset = offsetof (NodeRecord, x1), .unit = "mm" },
  { .name = "y1", .presence = PRESENCE_REQUIRED, .offset = offsetof (NodeRecord, y1), .unit = "mm" },
  { .name = "x2", .presence = PRESENCE_REQUIRED, .offset = offsetof (NodeRecord, x2), .unit = "mm" },
  { .name = "y2", .presence = PRESENCE_REQUIRED, .offset = offsetof (NodeRecord, y2), .unit = "mm" },
  NODE_END
};

static const Attribute of_arc[] = {
  { .name = "cx", .presence = PRESENCE_REQUIRED, .offset = offsetof (NodeRecord, cx), .unit = "mm" },
  { .name = "cy", .presence = PRESENCE_REQUIRED, .offset = offsetof (NodeRecord, cy), .unit = "mm" },
  { .name = "rx", .presence = PRESENCE_REQUIRED, .offset = offsetof (NodeRecord, rx), .most = DOCUMENT_REACH, .unit = "mm" },
  { .name = "ry", .presence = PRESENCE_REQUIRED, .offset = offsetof (NodeRecord, ry), .most = DOCUMENT_REACH, .unit = "mm" },
  NODE_END
};

static const Element elements[ELEMENT_COUNT] = {
  [ELEMENT_AEROPLANE]    = { "aeroplane",    0,                                sizeof (RootRecord),    of_aeroplane },
  [ELEMENT_TARGET]       = { "target",       IN (AEROPLANE),                   sizeof (RootRecord),    of_target },
  [ELEMENT_SURFACE]      = { "surface",      IN (AEROPLANE),                   sizeof (Surface),       of_surface },
  [ELEMENT_BODY]         = { "body",         IN (AEROPLANE),                   sizeof (Body),          of_body },
  [ELEMENT_STRUCTURE]    = { "structure",    IN (AEROPLANE),                   sizeof (Structure),     of_structure },
  [ELEMENT_PART]         = { "part",         IN (AEROPLANE),                   sizeof (Part),          of_part },
  [ELEMENT_LEAD]         = { "lead",         IN (AEROPLANE),                   sizeof (Lead),          of_lead },
  [ELEMENT_MARK]         = { "mark",         IN (AEROPLANE),                   sizeof (Mark),          of_mark },
  [ELEMENT_BAY]          = { "bay",          IN (AEROPLANE) | IN (BODY),       sizeof (Bay),           of_bay },
  [ELEMENT_THRUST]       = { "thrust",       IN (AEROPLANE),                   sizeof (Thrust),        of_thrust },
  [ELEMENT_PLAN]         = { "plan",         IN (AEROPLANE),                   sizeof (Plan),          attributes_of_plan },
  [ELEMENT_OUTLINE]      = { "outline",      IN (SURFACE) | IN (BODY),         sizeof (NodeRecord),    of_outline },
  [ELEMENT_SIDE_OUTLINE] = { "side-outline", IN (BODY),                        sizeof (NodeRecord),    of_outline },
  [ELEMENT_RIB]          = { "rib",          IN (SURFACE),                     sizeof (NamedPlace),    of_rib },
  [ELEMENT_CONTROL]      = { "control",      IN (SURFACE),                     sizeof (Control),       of_control },
  [ELEMENT_BREAK]        = { "dihedral",     IN (SURFACE),                     sizeof (DihedralBreak), of_break },
  [ELEMENT_FORMER]       = { "former",       IN (BODY),                        sizeof (NamedPlace),    of_former },
  [ELEMENT_RAIL]         = { "rail",         IN (PART),                        sizeof (Part),          of_rail },
  [ELEMENT_VIA]          = { "via",          IN (LEAD),                        sizeof (LeadVia),       of_via },
  [ELEMENT_IMAGE]        = { "image",        IN (PLAN),                        sizeof (Plan),          attributes_of_image },
  [ELEMENT_CORNERS]      = { "corners",      IN (PLAN),                        sizeof (Plan),          attributes_of_corners },
  [ELEMENT_LEVEL]        = { "level",        IN (PLAN),                        sizeof (Plan),          attributes_of_level },
  [ELEMENT_LENGTH]       = { "length",       IN (PLAN),                        sizeof (PlanLength),    attributes_of_length },
  [ELEMENT_STRAIGHT]     = { "straight",     IN (PLAN),                        sizeof (PlanStraight),  attributes_of_straight },
  [ELEMENT_AT]           = { "at",           IN (STRAIGHT),                    sizeof (Point),         attributes_of_at },
  [ELEMENT_VIEW]         = { "view",         IN (PLAN),                        sizeof (PlanView),      attributes_of_view },
  [ELEMENT_ITEM]         = { "item",         IN (STRUCTURE),                   sizeof (StructureItem), attributes_of_item },
  [ELEMENT_START]        = { "start",        IN (OUTLINE) | IN (SIDE_OUTLINE), sizeof (NodeRecord),    of_point },
  [ELEMENT_LINE]         = { "line",         IN (OUTLINE) | IN (SIDE_OUTLINE), sizeof (NodeRecord),    of_point },
  [ELEMENT_CURVE]        = { "curve",        IN (OUTLINE) | IN (SIDE_OUTLINE), sizeof (NodeRecord),    of_curve },
  [ELEMENT_ARC]          = { "arc",          IN (OUTLINE) | IN (SIDE_OUTLINE), sizeof (NodeRecord),    of_arc },
};

const SingleField element_singles[] = {
  { PIECE_PART, ELEMENT_RAIL,    INNER_RAIL,    offsetof (Part, has_rail) },
  { PIECE_PLAN, ELEMENT_CORNERS, INNER_CORNERS, offsetof (Plan, has_corners) },
  { PIECE_PLAN, ELEMENT_LEVEL,   INNER_LEVEL,   offsetof (Plan, has_level) },
  { .element = ELEMENT_NONE }
};

const ListField element_lists[] = {
  { PIECE_SURFACE, ELEMENT_RIB,     INNER_RIB,     offsetof (Surface, ribs),     offsetof (Surface, rib_count) },
  { PIECE_SURFACE, ELEMENT_CONTROL, INNER_CONTROL, offsetof (Surface, controls), offsetof (Surface, control_count) },
  { PIECE_SURFACE, ELEMENT_BREAK,   INNER_BREAK,   offsetof (Surface, breaks),   offsetof (Surface, break_count) },
  { PIECE_BODY,    ELEMENT_FORMER,  INNER_FORMER,  offsetof (Body, formers),     offsetof (Body, former_count) },
  { PIECE_STRUCTURE, ELEMENT_ITEM,  INNER_ITEM,    offsetof (Structure, items),  offsetof (Structure, item_count) },
  { PIECE_LEAD,    ELEMENT_VIA,     INNER_VIA,     offsetof (Lead, via),         offsetof (Lead, via_count) },
  { PIECE_PLAN,    ELEMENT_LENGTH,   INNER_LENGTH,   offsetof (Plan, lengths),  offsetof (Plan, length_count) },
  { PIECE_PLAN,    ELEMENT_STRAIGHT, INNER_STRAIGHT, offsetof (Plan, straight), offsetof (Plan, straight_count) },
  { PIECE_PLAN,    ELEMENT_AT,       INNER_AT,       offsetof (Plan, places),   offsetof (Plan, place_count) },
  { PIECE_PLAN,    ELEMENT_VIEW,     INNER_VIEW,     offsetof (Plan, views),    offsetof (Plan, view_count) },
  { .element = ELEMENT_NONE }
};

const OutlineField element_outlines[] = {
  { PIECE_SURFACE, ELEMENT_OUTLINE,      INNER_OUTLINE,      INNER_NODE,      offsetof (Surface, outline) },
  { PIECE_BODY,    ELEMENT_OUTLINE,      INNER_OUTLINE,      INNER_NODE,      offsetof (Body, outline) },
  { PIECE_BODY,    ELEMENT_SIDE_OUTLINE, INNER_SIDE_OUTLINE, INNER_SIDE_NODE, offsetof (Body, side_outline) },
  { .element = ELEMENT_NONE }
};

const Element *
element_of (ElementId id)
{
  return &elements[id];
}

ElementId
element_find (ElementId parent, const char *name)
{
  for (ElementId id = 0; id < ELEMENT_COUNT; id++)
    if ((elements[id].inside & (1u << parent)) && strcmp (elements[id].name, name) == 0)
      return id;
  return ELEMENT_NONE;
}

ElementId
element_of_piece (PieceKind kind)
{
  static const ElementId of[PIECE_KIND_COUNT] = {
    [PIECE_SURFACE] = ELEMENT_SURFACE, [PIECE_BODY] = ELEMENT_BODY, [PIECE_STRUCTURE] = ELEMENT_STRUCTURE,
    [PIECE_PART] = ELEMENT_PART, [PIECE_LEAD] = ELEMENT_LEAD, [PIECE_MARK] = ELEMENT_MARK, [PIECE_BAY] = ELEMENT_BAY,
    [PIECE_THRUST] = ELEMENT_THRUST, [PIECE_PLAN] = ELEMENT_PLAN, [PIECE_FOREIGN] = ELEMENT_NONE,
  };

  return of[kind];
}

PieceKind
piece_of_element (ElementId id)
{
  for (PieceKind kind = 0; kind < PIECE_FOREIGN; kind++)
    if (element_of_piece (kind) == id)
      return kind;
  return PIECE_FOREIGN;
}

int
word_find (const char *const *words, const char *word)
{
  for (int i = 0; word && words[i]; i++)
    if (strcmp (words[i], word) == 0)
      return i;
  return -1;
}
