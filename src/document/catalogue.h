#pragma once
#include <stdbool.h>
#include <glib.h>
#include "document/aeroplane.h"

/** The catalogue of part classes: what is sold and built for small models, each with its usual mass and size. Classes, not makes.
 *  It comes with the program as data/catalogue.xml; a file of the same form of a person's own is read after it. A catalogue is a value:
 *  nobody changes one that exists; counted references, safe across threads. */
typedef struct Catalogue Catalogue;

/** One of its entries. Masses grams, lengths millimetres; NAN, or a NULL text, stands for "not given". Lent by the catalogue. */
typedef struct {
  char *id;                         /* as a part remembers it (Part.kind): "battery-2s-450" */
  char *class_name;                 /* a word of part-class.h */
  char *name;                       /* for people, as the file has it */
  double mass, mass_sigma;          /* sigma: one standard deviation of one bought and not weighed; NAN: by its class */
  double length, width, height;     /* along x, y, z; 0 not given */
  double lead;                      /* of the lead that it comes with, mm */
  double cells, capacity;           /* of a pack: in series; mAh */
  double power;                     /* greatest input, W */
  double current;                   /* greatest, A */
  double rpm_per_volt;              /* of a motor, unloaded */
  double pitch;                     /* of a propeller, mm */
  double fits_from, fits_to;        /* all-up masses of the models that it is usual for, g */
  char *use;                        /* what else is to be known, a sentence; NULL none */
  char *source;                     /* where its figures come from */
} CatalogueEntry;

#define CATALOGUE_NAMESPACE "urn:trammel:catalogue"
#define CATALOGUE_VERSION 1

/** `before` (lent; NULL: nothing) with the entries of one more file: one of an id that is there already takes its place, others come
 *  behind. Hardened as the document's reader is. What cannot be is told, and all other entries are taken, up to the twentieth mistake; a file
 *  that cannot be read at all adds none.
 *  problems  if not NULL, filled with new strings "FILE:LINE: what; what to do" (at most 20)
 *  returns   one reference, the caller's; never NULL */
Catalogue *catalogue_read_file (const Catalogue *before, const char *path, GPtrArray *problems);
/** The same from memory; `name` stands for the file in messages. */
Catalogue *catalogue_read_data (const Catalogue *before, const char *data, size_t length, const char *name, GPtrArray *problems);
/** What there is to choose from: the program's catalogue with the person's own behind it, where that file is (catalogue_own_path). */
Catalogue *catalogue_load      (GPtrArray *problems);
/** Where a person's own is looked for: trammel/catalogue.xml in the user's data folder. A new string. */
char      *catalogue_own_path  (void);

Catalogue *catalogue_ref   (const Catalogue *self);       /* one reference more, the caller's; not NULL */
void       catalogue_unref (Catalogue *self);             /* NULL is fine */
G_DEFINE_AUTOPTR_CLEANUP_FUNC (Catalogue, catalogue_unref)

size_t                catalogue_count (const Catalogue *self);
const CatalogueEntry *catalogue_entry (const Catalogue *self, size_t index);      /* in the order of the files; index < count */
const CatalogueEntry *catalogue_find  (const Catalogue *self, const char *id);    /* NULL when there is none; id may be NULL */

/** Whether all words of `words` (parted by blanks) stand in the entry's name, class, id or use, in whatever case; true for no words. */
bool catalogue_entry_matches (const CatalogueEntry *entry, const char *words);
/** A part as the entry has it, at the datum, without an id: its class, name, mass with deviation, size, what its class goes by (cells, pitch),
 *  and the entry's id as its kind. */
Part *catalogue_entry_part (const CatalogueEntry *entry);
/** The aeroplane with the part of that id made one of that entry: kind, class, mass, deviation and size are the entry's, and its name, unless
 *  it says what the part does, as a servo's may; place, rail and all else stay, and a servo that lies on its side lies on. NULL where there is no
 *  such part. */
Aeroplane *catalogue_change_kind (const Catalogue *self, const Aeroplane *aeroplane, const char *part_id, const CatalogueEntry *entry);
