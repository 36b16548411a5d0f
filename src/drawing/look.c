#include "drawing/look.h"

/* 0xRRGGBB as in the palette, so that a reader can compare it. */
static Colour
colour (unsigned rgb)
{
  return (Colour) { (rgb >> 16 & 0xFF) / 255.0, (rgb >> 8 & 0xFF) / 255.0, (rgb & 0xFF) / 255.0, 1 };
}

static Colour
colour_veil (unsigned rgb, double alpha)
{
  Colour made = colour (rgb);

  made.alpha = alpha;
  return made;
}

typedef struct {
  unsigned sheet, graphite, construction, centre_line, band, balance, neutral, warning, selection, part_fill, ruler_ground, dim_text;
  unsigned grid, plan_ink;
  double part_fill_alpha, grid_fine_alpha, grid_coarse_alpha;
} Palette;

static const Palette palettes[] = {
  [LOOK_LIGHT] = {
    .sheet = 0xFAF7EF, .graphite = 0x2B2A27, .construction = 0x6F6B62, .centre_line = 0x57534B, .band = 0x1F6B5C,
    .balance = 0x1C1B19, .neutral = 0x7B2D82, .warning = 0xB23C12, .selection = 0x1A5FB4, .part_fill = 0xFFFFFF,
    .ruler_ground = 0xF1EEE6, .dim_text = 0x5E5C64, .grid = 0x000000, .plan_ink = 0x5E4E33,
    .part_fill_alpha = 0.94, .grid_fine_alpha = 0.022, .grid_coarse_alpha = 0.05 },
  [LOOK_DARK] = {
    .sheet = 0x1D1F22, .graphite = 0xE9E4D8, .construction = 0xA09A8E, .centre_line = 0xB8B2A4, .band = 0x7FCDB4,
    .balance = 0xF4F0E6, .neutral = 0xDDA6EA, .warning = 0xFF9A6B, .selection = 0x78AEED, .part_fill = 0x2A2D31,
    .ruler_ground = 0x26282B, .dim_text = 0xB8B6BC, .grid = 0xFFFFFF, .plan_ink = 0xB9AD8E,
    .part_fill_alpha = 0.94, .grid_fine_alpha = 0.025, .grid_coarse_alpha = 0.055 },
  [LOOK_LIGHT_CONTRAST] = {
    .sheet = 0xFFFFFF, .graphite = 0x000000, .construction = 0x3A3A3A, .centre_line = 0x2A2A2A, .band = 0x00493B,
    .balance = 0x000000, .neutral = 0x5A0F63, .warning = 0x8A2400, .selection = 0x003C94, .part_fill = 0xFFFFFF,
    .ruler_ground = 0xFFFFFF, .dim_text = 0x3A3A3A, .grid = 0x000000, .plan_ink = 0x3A2300, .part_fill_alpha = 1 },
  [LOOK_DARK_CONTRAST] = {
    .sheet = 0x000000, .graphite = 0xFFFFFF, .construction = 0xCFCAC0, .centre_line = 0xE0DCD2, .band = 0x9BEBD0,
    .balance = 0xFFFFFF, .neutral = 0xF0C6FA, .warning = 0xFFB48C, .selection = 0xA6CBFF, .part_fill = 0x000000,
    .ruler_ground = 0x000000, .dim_text = 0xCFCAC0, .grid = 0xFFFFFF, .plan_ink = 0xDECEA2, .part_fill_alpha = 1 },
};

static void
look_take_palette (Look *look, const Palette *palette)
{
  look->sheet = colour (palette->sheet);
  look->graphite = colour (palette->graphite);
  look->construction = colour (palette->construction);
  look->centre_line = colour (palette->centre_line);
  look->band = colour (palette->band);
  look->balance = colour (palette->balance);
  look->neutral = colour (palette->neutral);
  look->warning = colour (palette->warning);
  look->selection = colour (palette->selection);
  look->part_fill = colour_veil (palette->part_fill, palette->part_fill_alpha);
  look->ruler_ground = colour (palette->ruler_ground);
  look->dim_text = colour (palette->dim_text);
  look->plan_ink = colour (palette->plan_ink);
  look->grid_fine = colour_veil (palette->grid, palette->grid_fine_alpha);
  look->grid_coarse = colour_veil (palette->grid, palette->grid_coarse_alpha);
}

static void
look_take_text_sizes (Look *look, double label)
{
  look->text_size = label;
  look->figure_size = label * 12.5 / 12;
  look->ruler_size = label * 10.5 / 12;
  look->plate_size = label * 13 / 12;
}

static void
look_take_contrast_widths (Look *look)
{
  look->outline_width = 2;
  look->selected_width = 3;
  look->inner_width = 1.4;
  look->part_width = 1.8;
  look->thin_width = 1.4;
  look->hatch_width = 1.5;
  look->hatch_step = 6;
  look->symbol_line = 1.5;
}

Look
look_for_screen (LookTheme theme, double text_factor)
{
  Look look = {
    .u = 1, .outline_width = 1.6, .selected_width = 2, .inner_width = 1, .part_width = 1.2, .thin_width = 0.9,
    .hatch_width = 1, .hatch_step = 5, .symbol_line = 1, .font = "Cantarell, Sans", .cap_height = 0.694 };

  look_take_palette (&look, &palettes[theme]);
  look_take_text_sizes (&look, 12 * text_factor);
  if (theme == LOOK_LIGHT_CONTRAST || theme == LOOK_DARK_CONTRAST)
    look_take_contrast_widths (&look);
  return look;
}

/* Heights of capitals on paper, mm, from the series of ISO 3098: text 2.5, figures 3.5, small print 2 (a step below the series). */
Look
look_for_paper (void)
{
  const unsigned black = 0x000000, white = 0xFFFFFF;
  const Palette palette = {
    .sheet = white, .graphite = black, .construction = black, .centre_line = black, .band = black, .balance = black,
    .neutral = black, .warning = black, .selection = black, .part_fill = white, .ruler_ground = white, .dim_text = black,
    .plan_ink = 0x999999, .part_fill_alpha = 1 };
  Look look = {
    .paper = true, .u = 0.3, .outline_width = 0.5, .selected_width = 0.5, .inner_width = 0.25, .part_width = 0.25,
    .thin_width = 0.18, .hatch_width = 0.13, .hatch_step = 1.7, .symbol_line = 1,
    .font = "Routed Gothic, Cantarell, Sans", .cap_height = 0.719 };

  look_take_palette (&look, &palette);
  look.text_size = look_em_of_caps (&look, 2.5);
  look.figure_size = look_em_of_caps (&look, 3.5);
  look.ruler_size = look_em_of_caps (&look, 2);
  look.plate_size = look_em_of_caps (&look, 3.5);
  return look;
}

void
look_set_source (cairo_t *cr, Colour c)
{
  cairo_set_source_rgba (cr, c.red, c.green, c.blue, c.alpha);
}

double
look_em_of_caps (const Look *look, double cap_height)
{
  return cap_height / look->cap_height;
}
