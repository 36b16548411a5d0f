#include "figures/cutting-list.h"

#include "trammel-config.h"
#include <glib/gi18n-lib.h>
#include <math.h>
#include "document/material-class.h"
#include "figures/csv-text.h"
#include "figures/names.h"
#include "figures/spread.h"
#include "figures/structure-figures.h"

/* Glue and paint are no pieces. */
static bool
is_cut (const StructureItem *item)
{
  return isnan (item->of_others) && g_strcmp0 (item->material, "paint") != 0;
}

static bool
goes_by_length (const StructureItem *item)
{
  return item->of == TRACED_SPAN || item->of == TRACED_LENGTH;
}

/* Both halves, a rib on the centre line once; or a body's formers. */
static double
count_named (const Aeroplane *aeroplane, const Structure *structure, ItemTraced of)
{
  const Surface *surface = aeroplane_surface_by_id (aeroplane, structure->of);
  const Body *body = aeroplane_body_by_id (aeroplane, structure->of);
  double count = 0;

  if (of == TRACED_FORMERS)
    return body ? (double) body->former_count : NAN;
  for (size_t i = 0; surface && i < surface->rib_count; i++)
    count += surface->ribs[i].place > 0 && surface->role != ROLE_FIN ? 2 : 1;
  return surface ? count : NAN;
}

static double
count_of (const Aeroplane *aeroplane, const Structure *structure, const StructureItem *item)
{
  if (item->of == TRACED_RIBS || item->of == TRACED_FORMERS)
    return count_named (aeroplane, structure, item->of);
  return item->of == TRACED_PLAN || item->of == TRACED_SKIN ? NAN : item->count;      /* a whole wing's sheet is of how many it needs */
}

/* The area of all of them: what is notched is cut whole first, what overlaps needs more. */
static double
area_of (const StructureItem *item, double traced, double length)
{
  const double share = fmax (item->share, 1);

  if (item->of != TRACED_NONE && !goes_by_length (item))
    return traced * item->count * share;
  return (isnan (item->area) ? length * item->width : item->area) * item->count * share;
}

/* Wider it is cut from a sheet, and plywood and plastic always are. */
static bool
is_stick (const StructureItem *item)
{
  static const char *const sheets[] = { "birch-ply", "light-ply", "styrene", "foam-board", NULL };
  const double widest = 15;

  return isnan (item->area) && !(item->width > widest) && !(item->material && g_strv_contains (sheets, item->material));
}

static CuttingLine
line_of (const Figures *figures, const StructureFigures *structure, size_t i)
{
  const StructureItem *item = &structure->structure->items[i];
  const Spread spread = spread_of_id (figures, structure->structure->of);
  const double traced = spread.traced[item->of], length = goes_by_length (item) ? traced : item->length;

  return (CuttingLine) {
    .structure = structure->structure, .item = item, .count = count_of (figures->aeroplane, structure->structure, item),
    .thickness_mm = item->thickness, .width_mm = item->width, .length_mm = length, .area_mm2 = area_of (item, traced, length),
    .total_length_mm = is_stick (item) ? length * item->count : NAN, .mass_g = g_array_index (structure->items_g, double, i) };
}

static bool
has_size (const CuttingLine *line)
{
  return isfinite (line->area_mm2) || isfinite (line->total_length_mm) || isfinite (line->thickness_mm);
}

/* As materials are offered; behind them those of a later version, then what is known by its density alone. */
static size_t
rank_of (const CuttingLine *line)
{
  const MaterialClass *class = material_classes ();
  size_t rank = 0;

  for (; class->word; class++, rank++)
    if (g_strcmp0 (class->word, line->item->material) == 0)
      return rank;
  return line->item->material ? rank : rank + 1;
}

static int
order (double a, double b)
{
  if (isnan (a) || isnan (b))
    return isnan (a) - isnan (b);
  return (a > b) - (a < b);
}

/* A weighed sheet's density makes no other group, except where nothing else names the wood. */
static int
compare_groups (const CuttingLine *a, const CuttingLine *b)
{
  const size_t rank_a = rank_of (a), rank_b = rank_of (b);
  int way = has_size (b) - has_size (a);

  if (way == 0)
    way = (rank_a > rank_b) - (rank_a < rank_b);
  if (way == 0)
    way = g_strcmp0 (a->item->material, b->item->material);
  if (way == 0 && !a->item->material)
    way = order (a->item->density, b->item->density);
  return way != 0 ? way : order (a->thickness_mm, b->thickness_mm);
}

static gint
compare_lines (gconstpointer a, gconstpointer b, gpointer unused)
{
  return compare_groups (a, b);
}

static double
plus (double sum, double more)
{
  return isfinite (more) ? sum + more : sum;
}

static CuttingGroup
group_from (const CuttingList *list, size_t first)
{
  CuttingGroup made = { .first = first };
  bool one_width = true;

  for (; first + made.count < list->count && compare_groups (&list->lines[first], &list->lines[first + made.count]) == 0; made.count++)
    {
      const CuttingLine *line = &list->lines[first + made.count];

      made.area_mm2 = plus (made.area_mm2, line->area_mm2);
      made.mass_g = plus (made.mass_g, line->mass_g);
      made.total_length_mm += line->total_length_mm;
      one_width = one_width && line->width_mm == list->lines[first].width_mm;
    }
  if (!one_width)
    made.total_length_mm = NAN;
  return made;
}

CuttingList
cutting_list_of (const Figures *figures)
{
  GArray *lines = g_array_new (FALSE, FALSE, sizeof (CuttingLine)), *groups = g_array_new (FALSE, FALSE, sizeof (CuttingGroup));
  CuttingList list;

  for (size_t s = 0; s < figures->structure_count; s++)
    for (size_t i = 0; i < figures->structures[s].structure->item_count; i++)
      if (is_cut (&figures->structures[s].structure->items[i]))
        {
          const CuttingLine line = line_of (figures, &figures->structures[s], i);

          g_array_append_val (lines, line);
        }
  g_array_sort_with_data (lines, compare_lines, NULL);      /* stable */
  list = (CuttingList) { .lines = (CuttingLine *) (void *) lines->data, .count = lines->len };
  for (size_t first = 0; first < list.count; )
    {
      const CuttingGroup group = group_from (&list, first);

      g_array_append_val (groups, group);
      first += group.count;
    }
  list.group_count = groups->len;
  list.groups = (CuttingGroup *) (void *) g_array_free (groups, FALSE);
  g_array_free (lines, FALSE);
  return list;
}

void
cutting_list_clear (CuttingList *self)
{
  g_clear_pointer (&self->lines, g_free);
  g_clear_pointer (&self->groups, g_free);
}

char *
cutting_material (const CuttingLine *line)
{
  const MaterialClass *class = material_class_find (line->item->material);

  if (class)
    return g_strdup (_(class->name));
  if (line->item->material)
    return g_strdup (line->item->material);
  return isnan (line->item->density) ? g_strdup ("") : g_strdup_printf (_("%.0f\u00A0kg/m³"), line->item->density);
}

static void
csv_line (GString *text, const CuttingLine *line)
{
  const double numbers[] = { structure_item_density (line->item), line->thickness_mm, line->width_mm, line->length_mm, line->count,
                             line->area_mm2, line->total_length_mm, line->mass_g };

  csv_field (text, line->item->material ? line->item->material : "");
  csv_field (text, structure_item_name (line->item));
  csv_field (text, line->structure->piece.id);
  for (size_t i = 0; i < G_N_ELEMENTS (numbers); i++)
    csv_number (text, numbers[i]);
  csv_end (text);
}

void
csv_cutting (GString *text, const Figures *figures)
{
  CuttingList list = cutting_list_of (figures);

  g_string_append (text, "material,name,structure_id,density_kg_m3,thickness_mm,width_mm,length_mm,count,total_area_mm2,total_length_mm,mass_g\r\n");
  for (size_t i = 0; i < list.count; i++)
    csv_line (text, &list.lines[i]);
  cutting_list_clear (&list);
}
