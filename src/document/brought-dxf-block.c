#include "document/brought-dxf-block.h"

#include <math.h>
#include <string.h>

enum { DEEPEST = 16, MOST_INSERTS = 100000 };

/* x' = a x + c y + e, y' = b x + d y + f, in DXF's axes. */
typedef struct { double a, b, c, d, e, f; } Map;

/* One INSERT, maybe of a whole grid of columns and rows. */
typedef struct {
  char block[DXF_NAME_ROOM], layer[DXF_NAME_ROOM];
  Map placed;                   /* where the first one goes, its base point yet to be taken off */
  double column_x, column_y, row_x, row_y;
  int columns, rows;
} Insert;

struct DxfBlock {
  char name[DXF_NAME_ROOM];
  double base_x, base_y;
  BroughtLines lines;
  GArray *inserts;
};

/* What is drawn as it is unfolded. */
typedef struct {
  GHashTable *blocks;
  BroughtLines *lines;
  guint inserts;
} Unfolding;

static double
number (const DxfEntity *entity, int code, double otherwise)
{
  return isnan (entity->number[code]) ? otherwise : entity->number[code];
}

DxfBlock *
dxf_block_new (const DxfEntity *head)
{
  DxfBlock *self = g_new0 (DxfBlock, 1);

  if (head)
    {
      g_strlcpy (self->name, head->name, sizeof self->name);
      self->base_x = number (head, 10, 0);
      self->base_y = number (head, 20, 0);
    }
  brought_lines_init (&self->lines);
  self->inserts = g_array_new (FALSE, FALSE, sizeof (Insert));
  return self;
}

void
dxf_block_free (gpointer data)
{
  DxfBlock *self = data;

  if (!self)
    return;
  brought_lines_clear (&self->lines);
  g_array_unref (self->inserts);
  g_free (self);
}

const char *
dxf_block_name (const DxfBlock *self)
{
  return self->name;
}

/* Inserting */

static int
times (double value)
{
  return value >= 1 ? (int) fmin (value, MOST_INSERTS) : 1;
}

/* Scaled, turned to the left, moved; what faces away from us has its x to the left. Columns and rows turn along but are not scaled. */
static bool
insert_read (const DxfEntity *entity, Insert *made)
{
  const double sx = number (entity, 41, 1), sy = number (entity, 42, 1), turn = number (entity, 50, 0) * M_PI / 180;
  const double cosine = cos (turn), sine = sin (turn), way = entity->number[230] < 0 ? -1 : 1;
  const double column = number (entity, 44, 0), row = number (entity, 45, 0);

  *made = (Insert) {
    .placed = { way * cosine * sx, sine * sx, way * -sine * sy, cosine * sy, way * number (entity, 10, 0), number (entity, 20, 0) },
    .column_x = way * cosine * column, .column_y = sine * column, .row_x = way * -sine * row, .row_y = cosine * row,
    .columns = times (entity->number[70]), .rows = times (entity->number[71]) };
  g_strlcpy (made->block, entity->name, sizeof made->block);
  g_strlcpy (made->layer, entity->layer, sizeof made->layer);
  return sx != 0 && sy != 0 && isfinite (sx + sy + turn + column + row + made->placed.e + made->placed.f) && *entity->name;
}

void
dxf_block_add (DxfBlock *self, const DxfEntity *entity, const char *kind)
{
  Insert insert;

  /* The end of what a POLYLINE or an INSERT has with it. */
  if (strcmp (kind, "SEQEND") == 0)
    return;
  if (strcmp (kind, "INSERT") != 0)
    self->lines.left_out += !dxf_entity_draw (entity, kind, &self->lines);
  else if (insert_read (entity, &insert))
    g_array_append_val (self->inserts, insert);
  else
    self->lines.left_out++;
}

/* Unfolding */

static Map
after (const Map *o, const Map *i)
{
  return (Map) { o->a * i->a + o->c * i->b, o->b * i->a + o->d * i->b, o->a * i->c + o->c * i->d, o->b * i->c + o->d * i->d,
                 o->a * i->e + o->c * i->f + o->e, o->b * i->e + o->d * i->f + o->f };
}

/* Our x runs down the page, their y up. */
static Point
place (const Map *map, Point ours)
{
  const double x = ours.y, y = -ours.x;

  return (Point) { -(map->b * x + map->d * y + map->f), map->a * x + map->c * y + map->e };
}

/* What lies on layer 0 of a block comes on the layer of whatever inserts it. */
static void
draw_line (const BroughtLine *line, const Map *map, const char *layer, BroughtLines *lines)
{
  brought_lines_begin (lines, place (map, line->start), g_strcmp0 (line->name, "0") == 0 && *layer ? layer : line->name);
  for (size_t i = 0; i < line->count; i++)
    {
      const Segment *segment = &line->segments[i];

      if (segment->kind == SEGMENT_LINE)
        brought_lines_line (lines, place (map, segment->to));
      else
        brought_lines_curve (lines, place (map, segment->control1), place (map, segment->control2), place (map, segment->to));
    }
  brought_lines_end (lines);
}

static void draw_block (Unfolding *self, const DxfBlock *block, const Map *map, const char *layer, int depth);

static void
draw_insert (Unfolding *self, const Insert *insert, const Map *outer, const char *layer, int depth)
{
  const DxfBlock *block = g_hash_table_lookup (self->blocks, insert->block);
  const char *own = g_strcmp0 (insert->layer, "0") == 0 && *layer ? layer : insert->layer;
  const int count = insert->columns * (double) insert->rows > MOST_INSERTS ? MOST_INSERTS : insert->columns * insert->rows;

  if (!block || depth >= DEEPEST)
    {
      self->inserts++;
      self->lines->left_out++;
      return;
    }
  for (int i = 0; i < count; i++)
    {
      const int column = i % insert->columns, row = i / insert->columns;
      const Map off_base = { 1, 0, 0, 1, -block->base_x, -block->base_y };
      Map here = insert->placed;

      if (self->inserts++ >= MOST_INSERTS)
        {
          self->lines->left_out++;
          return;
        }
      here.e += column * insert->column_x + row * insert->row_x;
      here.f += column * insert->column_y + row * insert->row_y;
      here = after (&here, &off_base);
      here = after (outer, &here);
      draw_block (self, block, &here, own, depth + 1);
    }
}

static void
draw_block (Unfolding *self, const DxfBlock *block, const Map *map, const char *layer, int depth)
{
  for (guint i = 0; i < block->lines.lines->len && self->lines->total <= BROUGHT_SEGMENTS_MOST; i++)
    draw_line (&g_array_index (block->lines.lines, BroughtLine, i), map, layer, self->lines);
  self->lines->left_out += block->lines.left_out;
  self->lines->total += block->lines.total > BROUGHT_SEGMENTS_MOST ? block->lines.total : 0;
  for (guint i = 0; i < block->inserts->len && self->lines->total <= BROUGHT_SEGMENTS_MOST; i++)
    draw_insert (self, &g_array_index (block->inserts, Insert, i), map, layer, depth);
}

void
dxf_block_unfold (const DxfBlock *self, GHashTable *blocks, BroughtLines *lines)
{
  const Map as_it_is = { 1, 0, 0, 1, 0, 0 };
  Unfolding unfolding = { .blocks = blocks, .lines = lines };

  draw_block (&unfolding, self, &as_it_is, "", 0);
}
