#include "document/draft-private.h"
#include <string.h>
#include "document/number-text.h"
#include "document/reader-values.h"
#include "trammel-config.h"
#include <glib/gi18n-lib.h>

/* A number in a sentence. */
typedef struct { char text[NUMBER_ROOM]; } NumberText;

static NumberText
number_text (double value)
{
  NumberText number;

  number_write (value, number.text);
  return number;
}

static char *
subject_of (const Piece *piece)
{
  return element_subject (element_of (element_of_piece (piece->kind))->name, piece->id);
}

static void
check_surface (const Draft *self, const Surface *surface, int line)
{
  g_autofree char *subject = subject_of (&surface->piece);

  if (!self->outline_met)
    problems_add (self->problems, READER_ERROR_VALUE, line, _("%s has no outline; give it an <outline>"), subject);
  for (size_t i = 0; i < surface->control_count; i++)
    if (surface->controls[i].inner > surface->controls[i].outer)
      problems_add (self->problems, READER_ERROR_VALUE, line,
                    _("%s: a <control> ends at %s before it begins at %s; exchange inner and outer"), subject,
                    number_text (surface->controls[i].outer).text, number_text (surface->controls[i].inner).text);
  for (size_t i = 1; i < surface->break_count; i++)
    if (!(surface->breaks[i].from > surface->breaks[i - 1].from))
      problems_add (self->problems, READER_ERROR_VALUE, line,
                    _("%s: a <dihedral> from %s comes behind one from %s; put them in order from root to tip"), subject,
                    number_text (surface->breaks[i].from).text, number_text (surface->breaks[i - 1].from).text);
}

static void
check_structure (const Draft *self, const Structure *structure, int line)
{
  g_autofree char *subject = subject_of (&structure->piece);

  if (!structure->of && isnan (structure->x))
    problems_add (self->problems, READER_ERROR_VALUE, line,
                  _("%s is of nothing drawn and has no place; add of=\"…\" or x=\"…\""), subject);
  if (!self->mass_met && structure->item_count == 0)
    problems_add (self->problems, READER_ERROR_VALUE, line, _("%s has no mass; add mass=\"…\", in g, or an <item> for each thing it is made of"),
                  subject);
}

static void
check_part (const Draft *self, const Part *part, int line)
{
  g_autofree char *subject = subject_of (&part->piece);

  if (part->has_rail && part->rail_from > part->rail_to)
    problems_add (self->problems, READER_ERROR_VALUE, line, _("%s: its <rail> ends at %s before it begins at %s; exchange from and to"),
                  subject, number_text (part->rail_to).text, number_text (part->rail_from).text);
}

/* Half a place is none, and a second lead that is the first joins nothing. */
static void
check_lead (const Draft *self, const Lead *lead, int line)
{
  if (isnan (lead->joint_x) != isnan (lead->joint_y))
    problems_add (self->problems, READER_ERROR_VALUE, line, _("<lead>: its joint has only one of joint-x and joint-y; write both or neither"));
  if (lead->also && (g_strcmp0 (lead->also, lead->from) == 0 || g_strcmp0 (lead->also, lead->to) == 0))
    problems_add (self->problems, READER_ERROR_VALUE, line,
                  _("<lead>: also is the same part as one of its other ends; write another or leave it out"));
}

static void
check_plan (const Draft *self, const Plan *plan, int line)
{
  g_autofree char *subject = subject_of (&plan->piece);

  if (plan->page != floor (plan->page))
    problems_add (self->problems, READER_ERROR_VALUE, line, _("%s: page is %s; write a whole number"), subject, number_text (plan->page).text);
}

void
draft_check_piece (const Draft *self, const Piece *piece, int line)
{
  switch (piece->kind)
    {
    case PIECE_SURFACE:   check_surface (self, (const Surface *) piece, line); break;
    case PIECE_STRUCTURE: check_structure (self, (const Structure *) piece, line); break;
    case PIECE_PART:      check_part (self, (const Part *) piece, line); break;
    case PIECE_LEAD:      check_lead (self, (const Lead *) piece, line); break;
    case PIECE_PLAN:      check_plan (self, (const Plan *) piece, line); break;
    default:              break;
    }
}

void
draft_check_target (const Draft *self, int line)
{
  const RootRecord *root = &self->root;
  const double from = isnan (root->from) ? 5 : root->from, to = isnan (root->to) ? 15 : root->to;

  if (from > to)
    problems_add (self->problems, READER_ERROR_VALUE, line,
                  _("<target>: margin-from is %s and margin-to is %s; the band must not end before it begins"),
                  number_text (from).text, number_text (to).text);
  else if (root->aim < from || root->aim > to)
    problems_add (self->problems, READER_ERROR_VALUE, line, _("<target>: margin-aim is %s; write one from %s to %s"),
                  number_text (root->aim).text, number_text (from).text, number_text (to).text);
}

static int
ident_compare (gconstpointer a, gconstpointer b)
{
  const Ident *one = a, *other = b;
  const int order = strcmp (one->id, other->id);

  return order ? order : (one->line > other->line) - (one->line < other->line);
}

/* The first that has the id; NULL when nobody has. The ids are sorted. */
static const Ident *
ident_find (const Draft *self, const char *id)
{
  guint low = 0, high = self->ids->len;

  while (low < high)
    {
      const guint middle = low + (high - low) / 2;

      if (strcmp (g_array_index (self->ids, Ident, middle).id, id) < 0)
        low = middle + 1;
      else
        high = middle;
    }
  if (low == self->ids->len || strcmp (g_array_index (self->ids, Ident, low).id, id) != 0)
    return NULL;
  return &g_array_index (self->ids, Ident, low);
}

static void
check_structure_of (const Draft *self, const Structure *structure)
{
  const Ident *of = structure->of ? ident_find (self, structure->of) : NULL;
  g_autofree char *subject = subject_of (&structure->piece);
  g_autofree char *quote = structure->of ? problems_quote (structure->of, -1) : NULL;

  if (structure->of && !(of && (of->element == ELEMENT_SURFACE || of->element == ELEMENT_BODY)))
    problems_add (self->problems, READER_ERROR_VALUE, structure->piece.line,
                  _("%s is of “%s”, and there is no surface or body with that id; correct it"), subject, quote);
}

static void
check_lead_end (const Draft *self, const Lead *lead, const char *end, const char *id)
{
  const Ident *part = id ? ident_find (self, id) : NULL;
  g_autofree char *quote = id ? problems_quote (id, -1) : NULL;

  if (id && !(part && part->element == ELEMENT_PART))
    problems_add (self->problems, READER_ERROR_VALUE, lead->piece.line,
                  _("<lead>: %s is “%s”, and there is no part with that id; correct it or take the lead out"), end, quote);
}

void
draft_check_ids (Draft *self)
{
  g_array_sort (self->ids, ident_compare);
  for (guint i = 1; i < self->ids->len; i++)
    {
      const Ident *before = &g_array_index (self->ids, Ident, i - 1), *ident = before + 1;
      g_autofree char *quote = NULL;

      if (strcmp (before->id, ident->id) != 0)
        continue;
      quote = problems_quote (ident->id, -1);
      problems_add (self->problems, READER_ERROR_VALUE, ident->line, _("the id “%s” is used already in line %d; write another"),
                    quote, before->line);
    }
  for (guint i = 0; i < self->pieces->len && problems_count (self->problems) < PROBLEMS_MOST; i++)
    {
      const Piece *piece = g_ptr_array_index (self->pieces, i);

      if (piece->kind == PIECE_STRUCTURE)
        check_structure_of (self, (const Structure *) piece);
      else if (piece->kind == PIECE_LEAD)
        {
          check_lead_end (self, (const Lead *) piece, "from", ((const Lead *) piece)->from);
          check_lead_end (self, (const Lead *) piece, "also", ((const Lead *) piece)->also);
          check_lead_end (self, (const Lead *) piece, "to", ((const Lead *) piece)->to);
        }
    }
}

/* How many ids a stem has got already; the same few stems serve a whole document. */
typedef struct { const char *stem; unsigned number; } Stem;

static char *
free_id (const Draft *self, GArray *stems, const char *stem)
{
  Stem *counted = NULL;
  char *id = NULL;

  for (guint i = 0; i < stems->len && !counted; i++)
    if (strcmp (g_array_index (stems, Stem, i).stem, stem) == 0)
      counted = &g_array_index (stems, Stem, i);
  if (!counted)
    {
      const Stem fresh = { stem, 0 };

      g_array_append_val (stems, fresh);
      counted = &g_array_index (stems, Stem, stems->len - 1);
    }
  do
    {
      g_free (id);
      counted->number++;
      id = counted->number == 1 ? g_strdup (stem) : g_strdup_printf ("%s-%u", stem, counted->number);
    }
  while (ident_find (self, id));
  return id;
}

/* A word for the id of a piece, of a fixed list; NULL where its kind has none. */
static const char *
stem_of (const Piece *piece)
{
  switch (piece->kind)
    {
    case PIECE_SURFACE: return surface_role_word (((const Surface *) piece)->role);
    case PIECE_BODY:
    case PIECE_STRUCTURE:
    case PIECE_PART:
    case PIECE_LEAD:
    case PIECE_PLAN:
    case PIECE_BAY:     return element_of (element_of_piece (piece->kind))->name;
    default:            return NULL;
    }
}

void
draft_name_nameless (Draft *self)
{
  GArray *stems = g_array_new (FALSE, FALSE, sizeof (Stem));

  for (guint i = 0; i < self->pieces->len; i++)
    {
      Piece *piece = g_ptr_array_index (self->pieces, i);
      Surface *surface = piece->kind == PIECE_SURFACE ? (Surface *) piece : NULL;
      Plan *plan = piece->kind == PIECE_PLAN ? (Plan *) piece : NULL;

      if (!piece->id && stem_of (piece))
        piece->id = free_id (self, stems, stem_of (piece));
      for (size_t k = 0; surface && k < surface->control_count; k++)
        if (!surface->controls[k].id)
          surface->controls[k].id = free_id (self, stems, control_kind_word (surface->controls[k].kind));
      for (size_t k = 0; plan && k < plan->view_count; k++)
        if (!plan->views[k].id)
          plan->views[k].id = free_id (self, stems, "view");
    }
  g_array_unref (stems);
}
