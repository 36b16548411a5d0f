#include "document/writer-private.h"
#include "document/base64.h"

void
write_image (GString *to, const Plan *plan)
{
  Kept kept;

  if (!plan->image)
    {
      write_kept_behind (to, 2, &plan->piece, INNER_IMAGE, 0);
      return;
    }
  kept = write_kept_before (to, 2, &plan->piece, INNER_IMAGE, 0);
  write_tag (to, 2, ELEMENT_IMAGE, plan, kept.attributes);
  g_string_append (to, ">\n");
  base64_append (to, plan->image);
  write_foreign (to, 3, kept.inside);
  write_end (to, 2, ELEMENT_IMAGE);
}

/* The places of one line, `count` of the plan's from `first` on, and what is kept in the line's own element. */
static void
write_places (GString *to, const Plan *plan, size_t first, size_t count, const char *inside)
{
  for (size_t i = first; i < first + count && i < plan->place_count; i++)
    {
      const Kept kept = write_kept_before (to, 3, &plan->piece, INNER_AT, i);

      write_tag (to, 3, ELEMENT_AT, &plan->places[i], kept.attributes);
      write_tag_end (to, 3, ELEMENT_AT, kept.inside);
    }
  write_foreign (to, 3, inside);
}

void
write_straight (GString *to, const Plan *plan)
{
  size_t first = 0;

  for (size_t i = 0; i < plan->straight_count; i++)
    {
      const Kept kept = write_kept_before (to, 2, &plan->piece, INNER_STRAIGHT, i);

      write_tag (to, 2, ELEMENT_STRAIGHT, &plan->straight[i], kept.attributes);
      g_string_append (to, ">\n");
      write_places (to, plan, first, plan->straight[i].count, kept.inside);
      write_end (to, 2, ELEMENT_STRAIGHT);
      first += plan->straight[i].count;
    }
  write_kept_behind (to, 2, &plan->piece, INNER_AT, plan->place_count);
  write_kept_behind (to, 2, &plan->piece, INNER_STRAIGHT, plan->straight_count);
}
