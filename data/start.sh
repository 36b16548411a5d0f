#!/bin/sh
# Builds Trammel and opens it: sh data/start.sh [FILE]
# Without a display it prints the example's report and writes its wall sheet as a picture.
set -e
cd "$(dirname "$0")/.."
here=$(pwd)
. data/packages.sh
install_missing $build_packages

build="$here/build"
[ -f "$build/build.ninja" ] || meson setup "$build" --buildtype=release >"$here/.build-log" 2>&1 || { cat "$here/.build-log" >&2; exit 1; }
rm -f "$here/.build-log"
echo "Building…"
ninja -C "$build" --quiet src/trammel trammel-gmo >&2

document=${1:-$here/data/examples/saltmarsh-racer.trammel}
if [ -n "$DISPLAY" ] || [ -n "$WAYLAND_DISPLAY" ]; then
  exec "$build/src/trammel" "$document"
fi
"$build/src/trammel" report "$document"
"$build/src/trammel" export "$document" --output "$build/wall-sheet.png"
echo "There is no display to open a window on. The wall sheet is in $build/wall-sheet.png"
