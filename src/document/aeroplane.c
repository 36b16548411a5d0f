#include "document/aeroplane.h"
#include <stdint.h>
#include <string.h>
#include "document/aeroplane-index.h"

/* Texts that outlast many aeroplanes are counted strings. */
typedef struct { GRefString *name, *attributes, *before, *behind, *target_attributes, *target_inside; } Texts;
enum { TEXT_COUNT = sizeof (Texts) / sizeof (GRefString *) };

struct Aeroplane {
  gatomicrefcount references;
  Target target;
  bool tailless;
  double airframe, airframe_sigma, airframe_x, airframe_x_sigma;
  bool airframe_balanced;
  HatchSide hatch;
  char changed[11];
  union { Texts texts; GRefString *text[TEXT_COUNT]; };
  AeroplaneIndex *index;      /* made with the pieces, never changed */
  size_t count;
  Piece *pieces[];
};

static GRefString *
text_new (const char *text)
{
  return text && *text ? g_ref_string_new (text) : NULL;
}

/* A name may be empty and yet be one. */
static GRefString *
name_new (const char *name)
{
  return name ? g_ref_string_new (name) : NULL;
}

static Aeroplane *
aeroplane_alloc (size_t count)
{
  Aeroplane *self = g_malloc0 (sizeof *self + count * sizeof self->pieces[0]);

  g_atomic_ref_count_init (&self->references);
  self->count = count;
  return self;
}

/* With all of `model` but its pieces and their index. */
static Aeroplane *
aeroplane_alike (const Aeroplane *model, size_t count)
{
  Aeroplane *self = aeroplane_alloc (count);

  self->target = model->target;
  self->tailless = model->tailless;
  self->airframe = model->airframe;
  self->airframe_sigma = model->airframe_sigma;
  self->airframe_balanced = model->airframe_balanced;
  self->airframe_x = model->airframe_x;
  self->airframe_x_sigma = model->airframe_x_sigma;
  self->hatch = model->hatch;
  g_strlcpy (self->changed, model->changed, sizeof self->changed);
  for (int i = 0; i < TEXT_COUNT; i++)
    self->text[i] = model->text[i] ? g_ref_string_acquire (model->text[i]) : NULL;
  return self;
}

static Aeroplane *
aeroplane_copy (const Aeroplane *model)
{
  Aeroplane *self = aeroplane_alike (model, model->count);

  for (size_t i = 0; i < model->count; i++)
    self->pieces[i] = piece_ref (model->pieces[i]);
  self->index = aeroplane_index_ref (model->index);
  return self;
}

Aeroplane *
aeroplane_from_pieces (AeroplaneTraits traits, Piece *const takes[], size_t count)
{
  Aeroplane *self = aeroplane_alloc (count);

  self->target = traits.target;
  self->tailless = traits.tailless;
  self->airframe = traits.airframe;
  self->airframe_sigma = traits.airframe_sigma;
  self->airframe_balanced = traits.airframe_balanced;
  self->airframe_x = traits.airframe_x;
  self->airframe_x_sigma = traits.airframe_x_sigma;
  self->hatch = traits.hatch;
  g_strlcpy (self->changed, traits.changed, sizeof self->changed);
  self->texts.name = name_new (traits.name);
  if (count > 0)
    memcpy (self->pieces, takes, count * sizeof takes[0]);
  self->index = aeroplane_index_new (self->pieces, count);
  return self;
}

Aeroplane *
aeroplane_new (void)
{
  return aeroplane_from_pieces ((AeroplaneTraits) { .target = { .from = 5, .to = 15, .aim = 12 } }, NULL, 0);
}

Aeroplane *
aeroplane_ref (const Aeroplane *aeroplane)
{
  Aeroplane *self = (Aeroplane *) aeroplane;      /* only the count changes, and that safely */

  g_atomic_ref_count_inc (&self->references);
  return self;
}

void
aeroplane_unref (Aeroplane *self)
{
  if (!self || !g_atomic_ref_count_dec (&self->references))
    return;
  for (int i = 0; i < TEXT_COUNT; i++)
    g_clear_pointer (&self->text[i], g_ref_string_release);
  for (size_t i = 0; i < self->count; i++)
    piece_unref (self->pieces[i]);
  aeroplane_index_unref (self->index);
  g_free (self);
}

static bool
target_equal (Target a, Target b)
{
  return a.from == b.from && a.to == b.to && a.aim == b.aim && a.all_up == b.all_up && a.loading == b.loading;
}

bool
aeroplane_equal (const Aeroplane *a, const Aeroplane *b)
{
  if (a == b)
    return true;
  if (!a || !b || a->count != b->count || a->tailless != b->tailless || a->hatch != b->hatch || !target_equal (a->target, b->target))
    return false;
  if (a->airframe != b->airframe || a->airframe_sigma != b->airframe_sigma || a->airframe_balanced != b->airframe_balanced)
    return false;
  if (a->airframe_balanced && (a->airframe_x != b->airframe_x || a->airframe_x_sigma != b->airframe_x_sigma))
    return false;
  for (int i = 0; i < TEXT_COUNT; i++)
    if (g_strcmp0 (a->text[i], b->text[i]) != 0)
      return false;
  for (size_t i = 0; i < a->count; i++)
    if (!piece_equal (a->pieces[i], b->pieces[i]))
      return false;
  return true;
}

AeroplaneTraits
aeroplane_traits (const Aeroplane *self)
{
  AeroplaneTraits traits = { .name = self->texts.name, .target = self->target, .tailless = self->tailless,
                             .airframe = self->airframe, .airframe_sigma = self->airframe_sigma,
                             .airframe_balanced = self->airframe_balanced, .airframe_x = self->airframe_x,
                             .airframe_x_sigma = self->airframe_x_sigma, .hatch = self->hatch };

  g_strlcpy (traits.changed, self->changed, sizeof traits.changed);
  return traits;
}

const char *
aeroplane_foreign_attributes (const Aeroplane *self)
{
  return self->texts.attributes ? self->texts.attributes : "";
}

AeroplaneKept
aeroplane_kept (const Aeroplane *self)
{
  return (AeroplaneKept) {
    .attributes = self->texts.attributes, .before = self->texts.before, .behind = self->texts.behind,
    .target_attributes = self->texts.target_attributes, .target_inside = self->texts.target_inside,
  };
}

size_t
aeroplane_piece_count (const Aeroplane *self)
{
  return self->count;
}

const Piece *
aeroplane_piece (const Aeroplane *self, size_t index)
{
  g_return_val_if_fail (index < self->count, NULL);
  return self->pieces[index];
}

size_t
aeroplane_count (const Aeroplane *self, PieceKind kind)
{
  return aeroplane_index_count (self->index, kind);
}

const Piece *
aeroplane_nth (const Aeroplane *self, PieceKind kind, size_t index)
{
  const size_t place = aeroplane_index_nth (self->index, kind, index);

  g_return_val_if_fail (place != SIZE_MAX, NULL);
  return self->pieces[place];
}

const Piece *
aeroplane_find (const Aeroplane *self, const char *id)
{
  const size_t place = id ? aeroplane_index_find (self->index, id) : SIZE_MAX;

  return place < self->count ? self->pieces[place] : NULL;
}

static void
aeroplane_set_text (Aeroplane *self, GRefString **text, GRefString *takes)
{
  if (*text)
    g_ref_string_release (*text);
  *text = takes;
}

Aeroplane *
aeroplane_with_traits (const Aeroplane *self, AeroplaneTraits traits)
{
  Aeroplane *made = aeroplane_copy (self);

  made->target = traits.target;
  made->tailless = traits.tailless;
  made->airframe = traits.airframe;
  made->airframe_sigma = traits.airframe_sigma;
  made->airframe_balanced = traits.airframe_balanced;
  made->airframe_x = traits.airframe_x;
  made->airframe_x_sigma = traits.airframe_x_sigma;
  made->hatch = traits.hatch;
  g_strlcpy (made->changed, traits.changed, sizeof made->changed);
  aeroplane_set_text (made, &made->texts.name, name_new (traits.name));
  return made;
}

Aeroplane *
aeroplane_with_changed (const Aeroplane *self, const char *day)
{
  if (g_str_equal (self->changed, day))
    return aeroplane_ref (self);
  Aeroplane *made = aeroplane_copy (self);
  g_strlcpy (made->changed, day, sizeof made->changed);
  return made;
}

Aeroplane *
aeroplane_with_foreign_attributes (const Aeroplane *self, const char *text)
{
  Aeroplane *made = aeroplane_copy (self);

  aeroplane_set_text (made, &made->texts.attributes, text_new (text));
  return made;
}

Aeroplane *
aeroplane_with_kept (const Aeroplane *self, AeroplaneKept kept)
{
  Aeroplane *made = aeroplane_copy (self);

  aeroplane_set_text (made, &made->texts.attributes, text_new (kept.attributes));
  aeroplane_set_text (made, &made->texts.before, text_new (kept.before));
  aeroplane_set_text (made, &made->texts.behind, text_new (kept.behind));
  aeroplane_set_text (made, &made->texts.target_attributes, text_new (kept.target_attributes));
  aeroplane_set_text (made, &made->texts.target_inside, text_new (kept.target_inside));
  return made;
}

Aeroplane *
aeroplane_with_added (const Aeroplane *self, Piece *takes)
{
  Aeroplane *made = aeroplane_alike (self, self->count + 1);

  for (size_t i = 0; i < self->count; i++)
    made->pieces[i] = piece_ref (self->pieces[i]);
  made->pieces[self->count] = takes;
  made->index = aeroplane_index_new (made->pieces, made->count);
  return made;
}

/* Whether one may stand for the other without a new index. */
static bool
piece_is_found_alike (const Piece *a, const Piece *b)
{
  return a->kind == b->kind && g_strcmp0 (a->id, b->id) == 0;
}

Aeroplane *
aeroplane_with_replaced (const Aeroplane *self, const Piece *old, Piece *takes)
{
  Aeroplane *made = aeroplane_alike (self, self->count);
  bool found = false;

  for (size_t i = 0; i < self->count; i++)
    {
      const bool here = !found && self->pieces[i] == old;

      made->pieces[i] = here ? takes : piece_ref (self->pieces[i]);
      found = found || here;
    }
  if (!found)
    piece_unref (takes);
  made->index = !found || piece_is_found_alike (old, takes) ? aeroplane_index_ref (self->index)
                                                            : aeroplane_index_new (made->pieces, made->count);
  g_warn_if_fail (found);
  return made;
}

static Aeroplane *
aeroplane_filtered (const Aeroplane *self, const Piece *old, Piece *(*left_of) (Piece *piece, const Piece *old))
{
  Aeroplane *made = aeroplane_alike (self, self->count);

  made->count = 0;
  for (size_t i = 0; i < self->count; i++)
    {
      Piece *left = left_of (self->pieces[i], old);

      if (left)
        made->pieces[made->count++] = left;
    }
  made->index = aeroplane_index_new (made->pieces, made->count);
  return made;
}

/* What is left of a piece when another goes, one reference more; NULL: nothing. */
static Piece *
left_without (Piece *piece, const Piece *old)
{
  return piece == old ? NULL : piece_ref (piece);
}

/* Of a two-into-one lead that keeps one of its servos, that servo's plain lead. */
static Piece *
lead_left (Piece *piece, const char *gone)
{
  const Lead *lead = (const Lead *) piece;
  const bool from = g_strcmp0 (lead->from, gone) == 0, also = g_strcmp0 (lead->also, gone) == 0;
  Piece *left;

  if (g_strcmp0 (lead->to, gone) == 0 || (from && !lead_is_joined (lead)) || (from && also))
    return NULL;
  if (!from && !also)
    return piece_ref (piece);
  left = piece_dup (piece);
  lead_become_plain ((Lead *) left, gone);
  return left;
}

static Piece *
left_without_dependents (Piece *piece, const Piece *old)
{
  if (piece == old)
    return NULL;
  if (old->id && piece->kind == PIECE_STRUCTURE && g_strcmp0 (((const Structure *) piece)->of, old->id) == 0)
    return NULL;
  return old->id && piece->kind == PIECE_LEAD ? lead_left (piece, old->id) : piece_ref (piece);
}

Aeroplane *
aeroplane_without (const Aeroplane *self, const Piece *old)
{
  return aeroplane_filtered (self, old, left_without);
}

Aeroplane *
aeroplane_without_dependents (const Aeroplane *self, const Piece *old)
{
  return aeroplane_filtered (self, old, left_without_dependents);
}
