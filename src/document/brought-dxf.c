#include "document/brought-dxf-block.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

/* Groups 10 to 59 hold lengths, angles and knots, and what does not read as a number there is damage. */
static bool
is_measure (int code)
{
  return code >= 10 && code < 60;
}

bool
dxf_next (DxfWalk *self)
{
  char *lines[2];
  char *end;

  if (self->pushed_back)
    {
      self->pushed_back = false;
      return true;
    }
  if (self->broken)
    return false;
  for (int i = 0; i < 2; i++)
    {
      if (!self->rest || *self->rest == '\0')
        {
          self->broken = self->broken || i == 1;
          return false;
        }
      lines[i] = self->rest;
      self->rest = strchr (self->rest, '\n');
      if (self->rest)
        *self->rest++ = '\0';
      g_strstrip (lines[i]);
      self->line++;
    }
  self->group = (DxfGroup) { (int) g_ascii_strtoll (lines[0], &end, 10), lines[1] };
  const bool no_code = end == lines[0] || *end != '\0';
  self->broken = no_code || (is_measure (self->group.code) && isnan (dxf_number (&self->group)));
  self->line -= no_code ? 1 : 0;
  return !self->broken;
}

void
dxf_push_back (DxfWalk *self)
{
  self->pushed_back = true;
}

/* Hexadecimal digits and the words for what is no number are read by the library, and are none of the format's. */
double
dxf_number (const DxfGroup *group)
{
  char *end;

  if (group->text[strspn (group->text, "0123456789+-.eE \t")] != '\0')
    return NAN;
  const double value = g_ascii_strtod (group->text, &end);

  return end != group->text && *end == '\0' ? value : NAN;
}

/* $INSUNITS of the header, mm: 1 inches, 2 feet, 4 millimetres, 5 centimetres, 6 metres. */
static double
unit_of (double number)
{
  switch (number >= 0 && number < 100 ? (int) number : 0)
    {
    case 1:  return 25.4;
    case 2:  return 304.8;
    case 4:  return 1;
    case 5:  return 10;
    case 6:  return 1000;
    default: return NAN;
    }
}

static bool
is_section_end (const DxfGroup *group)
{
  return group->code == 0 && strcmp (group->text, "ENDSEC") == 0;
}

/* What a file is read into. */
typedef struct {
  DxfBlock *drawn;              /* in the ENTITIES section */
  GHashTable *blocks;           /* name -> DxfBlock */
  DxfBlock *block;              /* under way, in the BLOCKS section; NULL */
  double unit;
} Reading;

/* The block goes by its name from here on; the first of two with one. */
static void
end_block (Reading *self)
{
  if (self->block && !g_hash_table_contains (self->blocks, dxf_block_name (self->block)))
    g_hash_table_insert (self->blocks, g_strdup (dxf_block_name (self->block)), self->block);
  else
    dxf_block_free (self->block);
  self->block = NULL;
}

static void
read_entity (Reading *self, DxfWalk *walk, bool in_blocks)
{
  g_autofree char *kind = g_strdup (walk->group.text);
  DxfEntity entity;

  dxf_entity_init (&entity);
  dxf_entity_read (&entity, walk, kind);
  if (!in_blocks)
    dxf_block_add (self->drawn, &entity, kind);
  else if (strcmp (kind, "BLOCK") == 0 || strcmp (kind, "ENDBLK") == 0)
    {
      end_block (self);
      self->block = strcmp (kind, "BLOCK") == 0 ? dxf_block_new (&entity) : NULL;
    }
  else if (self->block)
    dxf_block_add (self->block, &entity, kind);
  dxf_entity_clear (&entity);
}

/* Reads one section, whose name has just come; entities and blocks are gathered, the header is asked for the unit, the rest is skipped.
 * One without an end is half a file. */
static void
read_section (DxfWalk *walk, Reading *self)
{
  const bool header = strcmp (walk->group.text, "HEADER") == 0, entities = strcmp (walk->group.text, "ENTITIES") == 0;
  const bool blocks = strcmp (walk->group.text, "BLOCKS") == 0;
  bool asked = false;

  while (true)
    {
      if (!dxf_next (walk))
        {
          walk->broken = true;
          return;
        }
      if (is_section_end (&walk->group))
        return;
      if (header && walk->group.code == 9)
        asked = strcmp (walk->group.text, "$INSUNITS") == 0;
      else if (header && asked && walk->group.code == 70)
        self->unit = unit_of (dxf_number (&walk->group));
      if ((entities || blocks) && walk->group.code == 0)
        read_entity (self, walk, blocks);
    }
}

/* What is drawn, all blocks unfolded; the reading is given back. */
static void
reading_end (Reading *self, BroughtLines *lines)
{
  end_block (self);
  brought_lines_init (lines);
  dxf_block_unfold (self->drawn, self->blocks, lines);
  dxf_block_free (self->drawn);
  g_hash_table_unref (self->blocks);
}

Brought *
brought_read_dxf (const char *data, size_t length, const char *name, GError **error)
{
  g_autofree char *text = g_strndup (data, length);
  DxfWalk walk = { .rest = text };
  Reading reading = { .drawn = dxf_block_new (NULL), .blocks = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, dxf_block_free),
                      .unit = NAN };
  BroughtLines lines;

  while (dxf_next (&walk) && !(walk.group.code == 0 && strcmp (walk.group.text, "EOF") == 0))
    if (walk.group.code == 2)
      read_section (&walk, &reading);
  reading_end (&reading, &lines);
  const double unit = reading.unit > 0 ? reading.unit : 1;
  if (walk.broken)
    {
      g_set_error (error, BROUGHT_ERROR, BROUGHT_ERROR_FOREIGN,
                   _("%s:%u: this DXF is broken here; save it again as ASCII DXF of release 12."), name, walk.line);
      brought_lines_clear (&lines);
      return NULL;
    }
  brought_lines_join (&lines, 0.01 / unit);
  return brought_lines_finish (&lines, unit, reading.unit > 0, name, error);
}
