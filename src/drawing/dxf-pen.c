#include "drawing/dxf-pen.h"
#include <math.h>
#include <string.h>
#include "drawing/cutting.h"

void
dxf_pen_text (DxfPen *self, int code, const char *text)
{
  g_string_append_printf (self->to, "%3d\r\n", code);
  for (const char *at = text; *at != '\0'; at = g_utf8_next_char (at))
    {
      const gunichar letter = g_utf8_get_char (at);

      if (letter >= 0x20 && letter < 0x7f)
        g_string_append_c (self->to, (char) letter);
      else if (letter < 0xa0)
        g_string_append_c (self->to, ' ');
      else
        g_string_append_printf (self->to, "\\U+%04X", letter <= 0xffff ? letter : 0xfffd);
    }
  g_string_append (self->to, "\r\n");
}

void
dxf_pen_whole (DxfPen *self, int code, int number)
{
  g_string_append_printf (self->to, "%3d\r\n%6d\r\n", code, number);
}

void
dxf_pen_real (DxfPen *self, int code, double number)
{
  char text[G_ASCII_DTOSTR_BUF_SIZE];

  g_ascii_formatd (text, sizeof text, "%.6f", number);
  dxf_pen_text (self, code, strcmp (text, "-0.000000") == 0 ? text + 1 : text);
}

void
dxf_pen_angle (DxfPen *self, int code, double radians)
{
  const double turned = fmod (radians * 180 / M_PI, 360);

  dxf_pen_real (self, code, turned < 0 ? turned + 360 : turned);
}

void
dxf_pen_place (DxfPen *self, int code, Point place)
{
  dxf_pen_real (self, code, place.x);
  dxf_pen_real (self, code + 10, self->height - place.y);
  dxf_pen_real (self, code + 20, 0);
}

void
dxf_pen_section (DxfPen *self, const char *name)
{
  dxf_pen_text (self, 0, "SECTION");
  dxf_pen_text (self, 2, name);
}

void
dxf_pen_entity (DxfPen *self, const char *kind)
{
  dxf_pen_text (self, 0, kind);
  dxf_pen_text (self, 8, self->layer);
}

static void
begin_table (DxfPen *self, const char *name, int count)
{
  dxf_pen_text (self, 0, "TABLE");
  dxf_pen_text (self, 2, name);
  dxf_pen_whole (self, 70, count);
}

static void
begin_entry (DxfPen *self, const char *table, const char *name)
{
  dxf_pen_text (self, 0, table);
  dxf_pen_text (self, 2, name);
  dxf_pen_whole (self, 70, 0);
}

static void
add_line_kinds (DxfPen *self)
{
  begin_table (self, "LTYPE", 1);
  begin_entry (self, "LTYPE", "CONTINUOUS");
  dxf_pen_text (self, 3, "Solid line");
  dxf_pen_whole (self, 72, 65);
  dxf_pen_whole (self, 73, 0);
  dxf_pen_real (self, 40, 0);
  dxf_pen_text (self, 0, "ENDTAB");
}

static void
add_layer (DxfPen *self, const char *name, int colour)
{
  begin_entry (self, "LAYER", name);
  dxf_pen_whole (self, 62, colour);
  dxf_pen_text (self, 6, "CONTINUOUS");
}

static void
add_layers (DxfPen *self)
{
  begin_table (self, "LAYER", CUTTING_LAYER_COUNT + 1);
  add_layer (self, "0", 7);
  for (int i = 0; i < CUTTING_LAYER_COUNT; i++)
    {
      const CuttingLayer *layer = cutting_layer (cutting_layer_order (i));
      g_autofree char *name = g_ascii_strup (layer->id, -1);
      add_layer (self, name, layer->index);
    }
  dxf_pen_text (self, 0, "ENDTAB");
}

static void
add_lettering (DxfPen *self)
{
  begin_table (self, "STYLE", 1);
  begin_entry (self, "STYLE", "STANDARD");
  dxf_pen_real (self, 40, 0);
  dxf_pen_real (self, 41, 1);
  dxf_pen_real (self, 50, 0);
  dxf_pen_whole (self, 71, 0);
  dxf_pen_real (self, 42, 2.5);
  dxf_pen_text (self, 3, "txt");
  dxf_pen_text (self, 4, "");
  dxf_pen_text (self, 0, "ENDTAB");
}

void
dxf_pen_tables (DxfPen *self)
{
  dxf_pen_section (self, "TABLES");
  add_line_kinds (self);
  add_layers (self);
  add_lettering (self);
  dxf_pen_text (self, 0, "ENDSEC");
}
