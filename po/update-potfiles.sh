#!/bin/sh
# Lists every source file that speaks to people: sh po/update-potfiles.sh
cd "$(dirname "$0")/.."
{
  echo "# Written by po/update-potfiles.sh."
  grep -rlE '\b(_|N_|C_|NC_|ngettext|g_dngettext) ?\("' src --include='*.c' --include='*.h' | LC_ALL=C sort
  grep -rl 'translatable="yes"' src --include='*.ui' | LC_ALL=C sort
  ls data/*.desktop.in data/*.metainfo.xml.in 2>/dev/null
} > po/POTFILES.tmp
mv po/POTFILES.tmp po/POTFILES
