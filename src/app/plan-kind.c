#include "trammel-config.h"
#include "app/plan-kind.h"
#include <fcntl.h>
#include <string.h>
#include <unistd.h>

static const char *const endings[] = { "png", "jpg", "jpeg", "tif", "tiff", "webp", "bmp", "gif", "svg", "svgz", "pdf", NULL };

/* Beginnings that no document of ours has. */
static const struct { const char *bytes; size_t length, at; } beginnings[] = {
  { "\x89PNG", 4, 0 }, { "\xFF\xD8\xFF", 3, 0 }, { "II*\0", 4, 0 }, { "MM\0*", 4, 0 }, { "WEBP", 4, 8 }, { "GIF8", 4, 0 }, { "%PDF", 4, 0 },
};

const char *const *
plan_kind_endings (void)
{
  return endings;
}

static bool
ends_like_a_plan (const char *path)
{
  const char *dot = strrchr (path, '.');

  for (size_t i = 0; dot != NULL && endings[i] != NULL; i++)
    if (g_ascii_strcasecmp (dot + 1, endings[i]) == 0)
      return true;
  return false;
}

bool
plan_kind_of_file (const char *path)
{
  const int file = open (path, O_RDONLY | O_CLOEXEC | O_NONBLOCK);
  char head[1024] = { 0 };
  const ssize_t length = file >= 0 ? read (file, head, sizeof head) : -1;

  if (file >= 0)
    close (file);
  for (size_t i = 0; i < G_N_ELEMENTS (beginnings); i++)
    if (length >= (ssize_t) (beginnings[i].at + beginnings[i].length)
        && memcmp (head + beginnings[i].at, beginnings[i].bytes, beginnings[i].length) == 0)
      return true;
  return ends_like_a_plan (path);
}

const char *
plan_kind_type (DecodeKind kind)
{
  static const char *const types[DECODE_KIND_END] = {
    [DECODE_PNG] = "image/png", [DECODE_JPEG] = "image/jpeg", [DECODE_TIFF] = "image/tiff", [DECODE_WEBP] = "image/webp",
    [DECODE_BMP] = "image/bmp", [DECODE_GIF] = "image/gif", [DECODE_SVG] = "image/svg+xml", [DECODE_PDF] = "application/pdf" };

  return (size_t) kind < DECODE_KIND_END ? types[kind] : "application/octet-stream";
}
