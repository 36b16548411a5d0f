#include "document/writer.h"
#include "document/writer-private.h"

static void
write_target (GString *to, const Aeroplane *aeroplane)
{
  const AeroplaneTraits traits = aeroplane_traits (aeroplane);
  const AeroplaneKept kept = aeroplane_kept (aeroplane);
  const RootRecord record = { .from = traits.target.from, .to = traits.target.to, .aim = traits.target.aim,
                              .all_up = traits.target.all_up, .loading = traits.target.loading };

  write_tag (to, 1, ELEMENT_TARGET, &record, kept.target_attributes);
  write_tag_end (to, 1, ELEMENT_TARGET, kept.target_inside);
}

char *
writer_text (const Aeroplane *aeroplane, size_t *length)
{
  const AeroplaneTraits traits = aeroplane_traits (aeroplane);
  const AeroplaneKept kept = aeroplane_kept (aeroplane);
  const RootRecord root = { .name = (char *) traits.name, .changed = traits.changed[0] ? (char *) traits.changed : NULL, .tailless = traits.tailless, .version = DOCUMENT_VERSION,
                            .airframe = traits.airframe, .airframe_sigma = traits.airframe_sigma,
                            .airframe_x = traits.airframe_balanced ? traits.airframe_x : NAN, .airframe_x_sigma = traits.airframe_x_sigma, .hatch = traits.hatch };
  const size_t count = aeroplane_piece_count (aeroplane);
  GString *to = g_string_sized_new (4096);
  gsize text_length;

  g_string_append (to, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
  write_foreign (to, 0, kept.before);
  g_string_append (to, "<aeroplane xmlns=\"" DOCUMENT_NAMESPACE "\"");
  write_attributes (to, ELEMENT_AEROPLANE, &root);
  if (kept.attributes)
    g_string_append (to, kept.attributes);
  g_string_append (to, ">\n");
  write_target (to, aeroplane);
  for (size_t i = 0; i < count; i++)
    write_piece (to, aeroplane_piece (aeroplane, i));
  g_string_append (to, "</aeroplane>\n");
  write_foreign (to, 0, kept.behind);
  text_length = to->len;
  if (length)
    *length = text_length;
  return g_string_free (to, FALSE);
}
