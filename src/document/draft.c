#include "document/draft-private.h"
#include <string.h>
#include "document/reader-values.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

static void
piece_unref_any (gpointer piece)
{
  piece_unref (piece);
}

Draft *
draft_new (Problems *problems)
{
  Draft *self = g_new0 (Draft, 1);

  self->problems = problems;
  self->root.from = self->root.to = self->root.aim = self->root.airframe_x = NAN;
  self->pieces = g_ptr_array_new_with_free_func (piece_unref_any);
  self->hoisted = g_ptr_array_new_with_free_func (piece_unref_any);
  self->ids = g_array_new (FALSE, FALSE, sizeof (Ident));
  self->nodes = g_array_new (FALSE, TRUE, sizeof (NodeRecord));
  self->node_lines = g_array_new (FALSE, FALSE, sizeof (int));
  self->kept = g_array_new (FALSE, FALSE, sizeof (Kept));
  for (int i = 0; i < LIST_COUNT; i++)
    self->lists[i] = g_array_new (FALSE, TRUE, element_of (element_lists[i].element)->size);
  return self;
}

static void
string_clear (GString **string)
{
  if (*string)
    g_string_free (*string, TRUE);
  *string = NULL;
}

/* Hands what was gathered of the piece over to it. */
static void
piece_fill (Draft *self, Piece *piece)
{
  for (int i = 0; i < LIST_COUNT; i++)
    if (element_lists[i].piece == piece->kind && self->lists[i]->len > 0)
      {
        const size_t size = element_of (element_lists[i].element)->size;

        *piece_list (&element_lists[i], piece) = g_memdup2 (self->lists[i]->data, self->lists[i]->len * size);
        *(size_t *) ((char *) piece + element_lists[i].count) = self->lists[i]->len;
        g_array_set_size (self->lists[i], 0);
      }
  piece->kept = self->kept->len > 0 ? g_memdup2 (self->kept->data, self->kept->len * sizeof (Kept)) : NULL;
  piece->kept_count = self->kept->len;
  g_array_set_size (self->kept, 0);
  piece_sort_kept (piece);
}

void
draft_free (Draft *self)
{
  while (self->depth > 0)      /* reading stopped in the middle */
    {
      Frame *frame = &self->frames[--self->depth];

      string_clear (&frame->waiting);
      if (frame->piece && frame->id != ELEMENT_BAY)
        piece_fill (self, frame->piece);
      piece_unref (frame->piece);
    }
  g_ptr_array_unref (self->pieces);
  g_ptr_array_unref (self->hoisted);
  g_array_unref (self->ids);
  g_array_unref (self->nodes);
  g_array_unref (self->node_lines);
  g_array_unref (self->kept);
  for (int i = 0; i < LIST_COUNT; i++)
    g_array_unref (self->lists[i]);
  string_clear (&self->before);
  string_clear (&self->behind);
  string_clear (&self->target_inside);
  string_clear (&self->image);
  g_free (self->root_attributes);
  g_free (self->target_attributes);
  g_free (self->root.name);
  g_free (self->root.changed);
  g_free (self);
}

static void
string_append_line (GString **string, const char *text, int indent)
{
  if (!*string)
    *string = g_string_new (NULL);
  else
    g_string_append_printf (*string, "\n%*s", indent, "");
  g_string_append (*string, text);
}

void
draft_keep (Draft *self, char *takes)
{
  Frame *open = self->depth > 0 ? &self->frames[self->depth - 1] : NULL;

  if (!open)
    string_append_line (self->root_met ? &self->behind : &self->before, takes, 0);
  else if (open->id == ELEMENT_AEROPLANE)
    g_ptr_array_add (self->pieces, foreign_new (takes));
  else
    string_append_line (&open->waiting, takes, 2 * self->depth);
  g_free (takes);
}

void
draft_keep_inner (Draft *self, InnerKind inner, size_t index, char *attributes)
{
  Frame *frame = &self->frames[self->depth - 1], *parent = frame - 1;
  Kept kept = { .inner = inner, .index = index, .attributes = attributes };

  frame->inner = inner;
  frame->index = index;
  if (parent->waiting)
    kept.before = g_string_free (g_steal_pointer (&parent->waiting), FALSE);
  if (!kept.before && !kept.attributes)
    return;
  frame->kept = self->kept->len;
  g_array_append_val (self->kept, kept);
}

static void
begin_root (Draft *self, const SaxElement *element)
{
  self->root_met = true;
  values_read (ELEMENT_AEROPLANE, element, &self->root, self->problems, &self->root_attributes);
}

static void
begin_target (Draft *self, const SaxElement *element)
{
  if (self->target_met)
    problems_add (self->problems, READER_ERROR_VALUE, element->line, _("there is a second <target>; keep one of them"));
  self->target_met = true;
  g_clear_pointer (&self->target_attributes, g_free);
  values_read (ELEMENT_TARGET, element, &self->root, self->problems, &self->target_attributes);
}

static Piece *
piece_of_kind (PieceKind kind)
{
  switch (kind)
    {
    case PIECE_SURFACE:   return &surface_new (NULL, ROLE_WING, NULL)->piece;
    case PIECE_BODY:      return &body_new (NULL)->piece;
    case PIECE_STRUCTURE: return &structure_new (NULL, NULL, NAN)->piece;
    case PIECE_PART:      return &part_new (NULL, NULL)->piece;
    case PIECE_LEAD:      return &lead_new (NULL, NULL)->piece;
    case PIECE_MARK:      return &mark_new (0)->piece;
    case PIECE_BAY:       return &bay_new (NULL, NULL, NULL)->piece;
    case PIECE_THRUST:    return &thrust_new ()->piece;
    case PIECE_PLAN:      return &plan_new (NULL)->piece;
    case PIECE_FOREIGN:
    case PIECE_KIND_COUNT: break;
    }
  return NULL;
}

static void
begin_piece (Draft *self, Frame *frame, const SaxElement *element)
{
  SaxAttribute mass;

  frame->piece = piece_of_kind (piece_of_element (frame->id));
  frame->piece->line = element->line;
  self->outline_met = self->outline_met && frame->id == ELEMENT_BAY;      /* a bay stands within a body */
  self->mass_met = sax_find (element, "mass", &mass);
  values_read (frame->id, element, frame->piece, self->problems, &frame->piece->foreign_attributes);
}

static void
remember_id (Draft *self, const char *id, int line, ElementId element)
{
  const Ident ident = { id, line, element };

  if (id)
    g_array_append_val (self->ids, ident);
}

/* One place more on the straight line that is open. */
static void
count_place (Draft *self)
{
  for (int i = 0; i < LIST_COUNT; i++)
    if (element_lists[i].element == ELEMENT_STRAIGHT)
      g_array_index (self->lists[i], PlanStraight, self->lists[i]->len - 1).count++;
}

static void
begin_list_record (Draft *self, Frame *frame, int list, const SaxElement *element)
{
  GArray *records = self->lists[list];
  const size_t size = element_of (frame->id)->size, index = records->len;
  const size_t told = problems_count (self->problems);
  char *attributes;
  void *record;

  g_array_set_size (records, (guint) index + 1);      /* zeroed */
  record = records->data + index * size;
  record_set_defaults (frame->id, record);
  values_read (frame->id, element, record, self->problems, &attributes);
  draft_keep_inner (self, element_lists[list].inner, index, attributes);
  if (frame->id == ELEMENT_CONTROL)
    remember_id (self, ((const Control *) record)->id, element->line, ELEMENT_CONTROL);
  else if (frame->id == ELEMENT_VIEW)
    remember_id (self, ((const PlanView *) record)->id, element->line, ELEMENT_VIEW);
  else if (frame->id == ELEMENT_AT)
    count_place (self);
  else if (frame->id == ELEMENT_ITEM && problems_count (self->problems) == told)
    draft_check_item (self, record, element->line);
}

static void
begin_outline (Draft *self, Frame *frame, const SaxElement *element)
{
  char *attributes;
  NodeRecord none = { 0 };

  values_read (frame->id, element, &none, self->problems, &attributes);
  draft_keep_inner (self, frame->id == ELEMENT_OUTLINE ? INNER_OUTLINE : INNER_SIDE_OUTLINE, 0, attributes);
  g_array_set_size (self->nodes, 0);
  g_array_set_size (self->node_lines, 0);
}

static void
begin_node (Draft *self, Frame *frame, ElementId outline, const SaxElement *element)
{
  const size_t index = self->nodes->len;
  NodeRecord node = { 0 };
  char *attributes;

  values_read (frame->id, element, &node, self->problems, &attributes);
  node.segment = frame->id;
  draft_keep_inner (self, outline == ELEMENT_OUTLINE ? INNER_NODE : INNER_SIDE_NODE, index, attributes);
  g_array_append_val (self->nodes, node);
  g_array_append_val (self->node_lines, element->line);
}

void
draft_begin (Draft *self, ElementId id, ElementId parent, const SaxElement *element)
{
  Frame *frame = &self->frames[self->depth++];

  *frame = (Frame) { .id = id, .line = element->line, .kept = -1 };
  switch (id)
    {
    case ELEMENT_AEROPLANE:    begin_root (self, element); return;
    case ELEMENT_TARGET:       begin_target (self, element); return;
    case ELEMENT_OUTLINE:
    case ELEMENT_SIDE_OUTLINE: begin_outline (self, frame, element); return;
    case ELEMENT_START:
    case ELEMENT_LINE:
    case ELEMENT_CURVE:
    case ELEMENT_ARC:          begin_node (self, frame, parent, element); return;
    case ELEMENT_IMAGE:        draft_begin_image (self, element); return;
    default:                   break;
    }
  for (const SingleField *field = element_singles; field->element != ELEMENT_NONE; field++)
    if (field->element == id)
      {
        draft_begin_single (self, field, element);
        return;
      }
  for (int i = 0; i < LIST_COUNT; i++)
    if (element_lists[i].element == id)
      {
        begin_list_record (self, frame, i, element);
        return;
      }
  begin_piece (self, frame, element);
}

static void
take_hoisted (Draft *self)
{
  size_t count;
  gpointer *bays = g_ptr_array_steal (self->hoisted, &count);

  for (size_t i = 0; i < count; i++)
    g_ptr_array_add (self->pieces, bays[i]);
  g_free (bays);
}

static void
end_piece (Draft *self, Frame *frame)
{
  Piece *piece = frame->piece;
  const bool hoisted = frame->id == ELEMENT_BAY && self->depth > 1;

  if (frame->waiting)
    piece->foreign_children = g_string_free (g_steal_pointer (&frame->waiting), FALSE);
  if (!hoisted)
    piece_fill (self, piece);
  draft_check_piece (self, piece, frame->line);
  remember_id (self, piece->id, frame->line, frame->id);
  g_ptr_array_add (hoisted ? self->hoisted : self->pieces, piece);
  if (!hoisted && self->hoisted->len > 0)
    take_hoisted (self);
}

static void
end_outline (Draft *self, const Frame *frame)
{
  Piece *piece = self->frames[self->depth - 1].piece;
  g_autofree char *subject = element_subject (element_of (element_of_piece (piece->kind))->name, piece->id);

  for (const OutlineField *field = element_outlines; field->element != ELEMENT_NONE; field++)
    if (field->piece == piece->kind && field->element == frame->id)
      {
        if (*piece_outline (field, piece))
          draft_tell_second (self, piece, frame->id, frame->line);
        self->outline_met = true;
        outline_unref (*piece_outline (field, piece));
        *piece_outline (field, piece) = draft_outline (self, subject, frame->line);
      }
}

/* What stands in an inner element is kept with it. */
static void
end_inner (Draft *self, Frame *frame)
{
  const Kept fresh = { .inner = frame->inner, .index = frame->index };

  if (!frame->waiting)
    return;
  if (frame->kept < 0)
    {
      frame->kept = self->kept->len;
      g_array_append_val (self->kept, fresh);
    }
  g_array_index (self->kept, Kept, frame->kept).inside = g_string_free (g_steal_pointer (&frame->waiting), FALSE);
}

void
draft_end (Draft *self, ElementId id)
{
  Frame *frame = &self->frames[--self->depth];

  if (id == ELEMENT_AEROPLANE)
    return;
  if (id == ELEMENT_TARGET)
    {
      string_clear (&self->target_inside);
      self->target_inside = g_steal_pointer (&frame->waiting);
      draft_check_target (self, frame->line);
    }
  else if (frame->piece)
    end_piece (self, frame);
  else
    {
      end_inner (self, frame);
      if (id == ELEMENT_OUTLINE || id == ELEMENT_SIDE_OUTLINE)
        end_outline (self, frame);
      else if (id == ELEMENT_IMAGE)
        draft_end_image (self, (Plan *) self->frames[self->depth - 1].piece, frame->line);
    }
}

static Target
target_of (const RootRecord *root)
{
  Target target = { .from = isnan (root->from) ? 5 : root->from, .to = isnan (root->to) ? 15 : root->to };

  target.aim = isnan (root->aim) ? CLAMP (12, target.from, target.to) : root->aim;
  target.all_up = root->all_up;
  target.loading = root->loading;
  return target;
}

Aeroplane *
draft_finish (Draft *self)
{
  AeroplaneTraits traits = { .name = self->root.name, .target = target_of (&self->root), .tailless = self->root.tailless,
                             .airframe = self->root.airframe, .airframe_sigma = self->root.airframe_sigma,
                             .airframe_balanced = !isnan (self->root.airframe_x), .airframe_x = self->root.airframe_x,
                             .airframe_x_sigma = self->root.airframe_x_sigma, .hatch = self->root.hatch };
  const AeroplaneKept kept = {
    .attributes = self->root_attributes, .before = self->before ? self->before->str : NULL,
    .behind = self->behind ? self->behind->str : NULL,
    .target_attributes = self->target_attributes, .target_inside = self->target_inside ? self->target_inside->str : NULL,
  };
  g_autoptr (Aeroplane) plain = NULL;
  size_t count;
  gpointer *pieces;

  if (self->root.changed)
    g_strlcpy (traits.changed, self->root.changed, sizeof traits.changed);
  draft_check_ids (self);
  if (problems_count (self->problems) > 0)
    return NULL;
  draft_name_nameless (self);
  pieces = g_ptr_array_steal (self->pieces, &count);
  plain = aeroplane_from_pieces (traits, (Piece *const *) pieces, count);
  g_free (pieces);
  if (!kept.attributes && !kept.before && !kept.behind && !kept.target_attributes && !kept.target_inside)
    return g_steal_pointer (&plain);
  return aeroplane_with_kept (plain, kept);
}
