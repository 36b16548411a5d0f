#include "trammel-config.h"
#include "app/hinge-words.h"
#include <glib/gi18n-lib.h>

static char *
fault_of_ends (HingeFault fault, bool fin, const char *where)
{
  if (fault == HINGE_NO_LENGTH)
    return g_strdup_printf (fin ? _("Both ends stand at height %s: put them apart up the fin.")
                                : _("Both ends stand at station %s: put them apart along the span."), where);
  if (fault == HINGE_BACKWARDS)
    return g_strdup_printf (fin ? _("The lower end, at height %s, lies above the upper one: exchange them.")
                                : _("The inner end, at station %s, lies beyond the outer one: exchange them."), where);
  return g_strdup_printf (fin ? _("There is no fin at height %s: put the end within it.")
                              : _("There is no surface at station %s: put the end within it."), where);
}

char *
hinge_words_fault (Units units, const Surface *surface, HingeFault fault, double station)
{
  const bool fin = !surface_is_horizontal (surface);
  g_autofree char *where = units_length (units, station);

  switch (fault) {
    case HINGE_SOUND:
      return NULL;
    case HINGE_NO_SURFACE:
      return g_strdup (_("The outline is not closed yet, or crosses itself: finish it, then draw its hinge line."));
    case HINGE_AHEAD:
      return g_strdup_printf (fin ? _("The hinge line leaves the leading edge at height %s: bring it further aft.")
                                  : _("The hinge line leaves the leading edge at station %s: bring it further aft."), where);
    case HINGE_BEHIND:
      return g_strdup_printf (fin ? _("The hinge line leaves the trailing edge at height %s: bring it further forward.")
                                  : _("The hinge line leaves the trailing edge at station %s: bring it further forward."), where);
    default:
      return fault_of_ends (fault, fin, where);
  }
}

const char *
hinge_words_heading (ControlKind kind)
{
  switch (kind) {
    case CONTROL_AILERON:  return _("Ailerons");
    case CONTROL_ELEVATOR: return _("Elevator");
    case CONTROL_RUDDER:   return _("Rudder");
    default:               return _("Flaps");
  }
}

const char *
hinge_words_added (ControlKind kind)
{
  switch (kind) {
    case CONTROL_AILERON:  return _("Add Aileron");
    case CONTROL_ELEVATOR: return _("Add Elevator");
    case CONTROL_RUDDER:   return _("Add Rudder");
    default:               return _("Add Flap");
  }
}
