#include "support/sheets.h"
#include <check.h>
#include <string.h>
#include "document/reader.h"

#define WING "<surface id='wing' role='wing' z='-12' dihedral='5' incidence='2' thickness='10'><outline><start x='112' y='0'/>" \
  "<line x='117' y='353'/><line x='221' y='353'/><line x='237' y='0'/></outline><rib name='R1' station='61'/>" \
  "<control id='ailerons' kind='aileron' inner='190' outer='331' hinge-inner-x='206' hinge-outer-x='201' up='14' down='9'/></surface>"
#define TAIL "<surface id='tail' role='tailplane' z='10'><outline><start x='483' y='0'/><line x='491' y='127'/><line x='553' y='127'/>" \
  "<line x='561' y='0'/></outline></surface>"
#define TOP_VIEW "<outline><start x='0' y='0'/><curve x1='0' y1='18' x2='60' y2='28' x='150' y='28'/>" \
  "<curve x1='260' y1='28' x2='400' y2='12' x='561' y='5'/></outline>"
#define BODY "<body id='body'>" TOP_VIEW "</body>"
#define WHOLE_BODY "<body id='body'>" TOP_VIEW "<side-outline><start x='0' y='0'/><curve x1='20' y1='30' x2='100' y2='40' x='170' y='40'/>" \
  "<line x='561' y='15'/><line x='561' y='-5'/><line x='200' y='-40'/><curve x1='80' y1='-40' x2='0' y2='-20' x='0' y='0'/></side-outline></body>"
#define PARTS "<part id='motor' class='motor' mass='24' x='21' y='0' z='0' length='18' width='28' height='28'/>" \
  "<part id='battery' class='battery' mass='41' x='93' y='0' z='0' length='55' width='30' height='12'><rail from='50' to='150'/></part>" \
  "<part id='receiver' class='receiver' mass='6' x='203' y='0' z='0' length='36' width='21' height='11'/>"
#define BUILT "<structure id='built' of='wing' mass='63'/>"
#define LONG_NAME "The Extraordinarily Long Name of an Aeroplane that Nobody Could Ever Paint on Its Side, Number Seventeen"

/* An aeroplane of this name and these elements, attributes in single quotes. */
static Aeroplane *
aeroplane_from (const char *attributes, const char *elements)
{
  g_autofree char *text = g_strdup_printf ("<aeroplane xmlns='urn:trammel:aeroplane' version='1' %s>%s</aeroplane>", attributes, elements);
  GError *error = NULL;
  Aeroplane *made = reader_read_data (text, strlen (text), "case", NULL, &error);

  ck_assert_msg (made != NULL, "%s", error ? error->message : "");
  return made;
}

static Aeroplane *
example (const char *name)
{
  g_autofree char *path = g_build_filename (g_getenv ("TRAMMEL_SOURCE_ROOT"), "data", "examples", name, NULL);
  GError *error = NULL;
  Aeroplane *made = reader_read_file (path, NULL, &error);

  ck_assert_msg (made != NULL, "%s", error ? error->message : "");
  return made;
}

Aeroplane *example_racer (void)  { return example ("saltmarsh-racer.trammel"); }
Aeroplane *example_tourer (void) { return example ("heron-tourer.trammel"); }
Aeroplane *wing_only (void)      { return aeroplane_from ("name='Plank'", WING); }
Aeroplane *without_tail (void)   { return aeroplane_from ("", WING BODY PARTS BUILT); }
static Aeroplane *without_body (void)  { return aeroplane_from ("name='Bodyless'", WING TAIL PARTS BUILT "<mark station='44'/>"); }
static Aeroplane *without_parts (void) { return aeroplane_from ("name='Partless'", WING TAIL BODY); }
static Aeroplane *complete (void) { return aeroplane_from ("name='Complete'", WING TAIL WHOLE_BODY PARTS BUILT "<mark station='61'/><mark station='93'/>"); }

Aeroplane *
of_700_mm (void)
{
  return aeroplane_from ("name='Seven Hundred'", "<surface id='wing' role='wing' z='20' dihedral='4' incidence='2' thickness='11'><outline>"
    "<start x='120' y='0'/><line x='120' y='350'/><line x='249' y='350'/><line x='249' y='0'/></outline></surface>" TAIL WHOLE_BODY PARTS BUILT);
}

Aeroplane *
with_long_names (void)
{
  return aeroplane_from ("name='" LONG_NAME "'", WING TAIL WHOLE_BODY PARTS BUILT
    "<part id='a' class='servo' name='" LONG_NAME "' mass='5' x='303' y='0' z='0' length='21' width='9' height='20'/>"
    "<part id='b' class='servo' name='Servowithouteveranyblankinitsnamewhichcannotbebrokenatall' mass='5' x='333' y='0' z='0'/>");
}

static Aeroplane *
with_forty_parts (void)
{
  g_autoptr (GString) parts = g_string_new (WING TAIL WHOLE_BODY BUILT);

  for (int i = 1; i <= 40; i++)
    g_string_append_printf (parts, "<part id='p%d' class='other' name='Thing number %d' mass='2' x='%d' y='%d' z='0' length='8' width='8' height='5'/>",
                            i, i, i * 12, (i % 5 - 2) * 8);
  return aeroplane_from ("name='Forty parts'", parts->str);
}

static Aeroplane *
tailless (void)
{
  return aeroplane_from ("name='Swept' tailless='yes'", PARTS BUILT "<surface id='wing' role='wing' thickness='12'><outline><start x='61' y='0'/>"
    "<line x='263' y='503'/><line x='341' y='503'/><line x='261' y='0'/></outline></surface><mark station='41'/>");
}

static Aeroplane *
canard (void)
{
  return aeroplane_from ("name='Duck'", BODY PARTS BUILT "<surface id='wing' role='wing' z='30' thickness='12'><outline><start x='262' y='0'/>"
    "<line x='121' y='503'/><line x='203' y='503'/><line x='441' y='0'/></outline></surface><surface id='foreplane' role='foreplane' z='10'>"
    "<outline><start x='21' y='0'/><line x='41' y='151'/><line x='91' y='151'/><line x='93' y='0'/></outline></surface>");
}

static Aeroplane *
biplane (void)
{
  return aeroplane_from ("name='Two Wings'", WING TAIL WHOLE_BODY PARTS BUILT "<surface id='upper' role='wing' z='90' thickness='9'><outline>"
    "<start x='91' y='0'/><line x='91' y='351'/><line x='211' y='351'/><line x='211' y='0'/></outline></surface><mark station='61'/>");
}

static Aeroplane *
open_outline (void)
{
  return aeroplane_from ("name='Open'", TAIL BODY PARTS "<surface id='wing' role='wing'><outline><start x='112' y='0'/><line x='112' y='353'/>"
    "<line x='233' y='353'/><line x='233' y='41'/></outline></surface>");
}

static Aeroplane *
tiny (void)
{
  return aeroplane_from ("name='Gnat'", "<surface id='wing' role='wing' thickness='3'><outline><start x='11' y='0'/><line x='12' y='61'/>"
    "<line x='28' y='61'/><line x='32' y='0'/></outline></surface><surface id='t' role='tailplane'><outline><start x='81' y='0'/>"
    "<line x='81' y='22'/><line x='92' y='22'/><line x='92' y='0'/></outline></surface><structure id='s' of='wing' mass='2'/>"
    "<part id='clay' class='ballast' mass='1' x='2' y='0' z='0' length='4' width='4' height='4'/><mark station='11'/>");
}

static Aeroplane *
giant (void)
{
  return aeroplane_from ("name='Giant'", "<surface id='wing' role='wing' thickness='12'><outline><start x='1121' y='0'/><line x='1121' y='3531'/>"
    "<line x='2371' y='3531'/><line x='2371' y='0'/></outline></surface><surface id='t' role='tailplane'><outline><start x='4831' y='0'/>"
    "<line x='4831' y='1271'/><line x='5531' y='1271'/><line x='5531' y='0'/></outline></surface><structure id='s' of='wing' mass='9000'/>"
    "<mark station='611'/>");
}

const SheetCase *
sheet_cases (void)
{
  static const SheetCase cases[] = {
    { "the racer", example_racer }, { "the tourer", example_tourer }, { "nothing", aeroplane_new }, { "a wing alone", wing_only },
    { "no tail", without_tail }, { "no body", without_body }, { "no parts", without_parts }, { "everything", complete },
    { "long names", with_long_names }, { "forty parts", with_forty_parts }, { "a swept wing without a tail", tailless },
    { "a foreplane", canard }, { "two wings", biplane }, { "an open outline", open_outline }, { "120 mm of span", tiny },
    { "7 m of span", giant }, { NULL, NULL } };

  return cases;
}
