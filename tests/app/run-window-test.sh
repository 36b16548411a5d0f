#!/bin/sh
# Runs one window test on a display, a session bus and a home folder of its own, and leaves nothing behind.
# Exit 77 (skipped) where the display server or the bus is not installed.
# Where the sanitizers watch, who asked for memory is first noted as quickly as can be, which takes a seventh of the time. That finds every
# leak, but not always the library that a known one is by: a program whose checks passed and that leaked is run once more, noted in full.
for needed in Xvfb dbus-run-session; do
  command -v "$needed" >/dev/null || { echo "$needed is missing: skipped"; exit 77; }
done

home=$(mktemp -d) || exit 1
Xvfb -displayfd 3 -screen 0 "${WINDOW_TEST_SCREEN:-1280x800x24}" -nolisten tcp 3>"$home/display" 2>"$home/xvfb.log" &
server=$!
trap 'kill $server 2>/dev/null; wait $server 2>/dev/null; rm -rf "$home"' EXIT
trap 'exit 1' INT TERM

tries=0
while [ ! -s "$home/display" ] && [ $tries -lt 100 ]; do
  sleep 0.1
  tries=$((tries + 1))
done
[ -s "$home/display" ] || { cat "$home/xvfb.log"; exit 1; }

export DISPLAY=":$(cat "$home/display")"
export HOME="$home" XDG_CONFIG_HOME="$home/config" XDG_DATA_HOME="$home/data" XDG_STATE_HOME="$home/state" XDG_CACHE_HOME="$home/cache"
export XDG_RUNTIME_DIR="$home/run" GDK_BACKEND=x11 GSK_RENDERER=cairo GDK_DEBUG=gl-disable GTK_A11Y=test
export GIO_USE_VFS=local GTK_USE_PORTAL=0 ADW_DISABLE_PORTAL=1 G_SLICE=always-malloc LC_ALL=C.UTF-8 CK_FORK=no
mkdir -m 700 "$XDG_RUNTIME_DIR" "$XDG_STATE_HOME"
[ -n "$UNWOUND_IN_FULL" ] || watched="$ASAN_OPTIONS:fast_unwind_on_malloc=1"
ASAN_OPTIONS="${watched:-$ASAN_OPTIONS}" dbus-run-session -- "$@" >"$home/told" 2>"$home/wailed"
status=$?
if [ -z "$UNWOUND_IN_FULL" ] && [ $status != 0 ] && grep -q '^100%: Checks' "$home/told" \
   && grep -q 'LeakSanitizer: detected memory leaks' "$home/wailed"; then
  UNWOUND_IN_FULL=yes sh "$0" "$@"
  exit
fi
cat "$home/told"
cat "$home/wailed" >&2
exit $status
