#include "geometry/quadrature.h"

#include <math.h>
#include <stdbool.h>

enum { PLACES = 11, DEEPEST = 24 };

/* Places on one side of the middle, the middle last; every second, beginning with the second, is Gauss's. */
static const double place[PLACES] = {
  0.995657163025808080735527280689003, 0.973906528517171720077964012084452, 0.930157491355708226001207180059508,
  0.865063366688984510732096688423493, 0.780817726586416897063717578345042, 0.679409568299024406234327365114874,
  0.562757134668604683339000099272694, 0.433395394129247190799265943165784, 0.294392862701460198131126603103866,
  0.148874338981631210884826001129720, 0.0
};
static const double kronrod[PLACES] = {
  0.011694638867371874278064396062192, 0.032558162307964727478818972459390, 0.054755896574351996031381300244580,
  0.075039674810919952767043140916190, 0.093125454583697605535065465083366, 0.109387158802297641899210590325805,
  0.123491976262065851077958109585166, 0.134709217311473325928054001771707, 0.142775938577060080797094273138717,
  0.147739104901338491374841515972068, 0.149445554002916905664936468389821
};
static const double gauss[PLACES] = {
  0, 0.066671344308688137593568809893332, 0, 0.149451349150580593145863396957658, 0, 0.219086362515982043995534934228163,
  0, 0.269266719309996355091226921569469, 0, 0.295524224714752870173815619188769, 0
};

typedef struct { double fine[QUADRATURE_MOST], coarse[QUADRATURE_MOST]; } Panel;

static void
panel_add (Panel *panel, const Quadrature *self, double at, size_t i)
{
  double values[QUADRATURE_MOST];

  self->values (at, self->data, values);
  for (size_t k = 0; k < self->count; k++)
    {
      panel->fine[k] += kronrod[i] * values[k];
      panel->coarse[k] += gauss[i] * values[k];
    }
}

static Panel
panel_sum (const Quadrature *self, double from, double to)
{
  const double middle = (from + to) / 2, half = (to - from) / 2;
  Panel panel = { 0 };

  for (size_t i = 0; i + 1 < PLACES; i++)
    {
      panel_add (&panel, self, middle - half * place[i], i);
      panel_add (&panel, self, middle + half * place[i], i);
    }
  panel_add (&panel, self, middle, PLACES - 1);
  for (size_t k = 0; k < self->count; k++)
    {
      panel.fine[k] *= half;
      panel.coarse[k] *= half;
    }
  return panel;
}

static bool
panel_is_accurate (const Panel *panel, const Quadrature *self)
{
  for (size_t k = 0; k < self->count; k++)
    if (fabs (panel->fine[k] - panel->coarse[k]) > self->accuracy[k])
      return false;
  return true;
}

static void
add_halving (const Quadrature *self, double from, double to, int depth, double sums[])
{
  const Panel panel = panel_sum (self, from, to);

  if (depth < DEEPEST && !panel_is_accurate (&panel, self))
    {
      add_halving (self, from, (from + to) / 2, depth + 1, sums);
      add_halving (self, (from + to) / 2, to, depth + 1, sums);
      return;
    }
  for (size_t k = 0; k < self->count; k++)
    sums[k] += panel.fine[k];
}

void
quadrature_add (const Quadrature *self, double from, double to, double sums[])
{
  add_halving (self, from, to, 0, sums);
}
