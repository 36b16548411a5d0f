#!/bin/sh
# Builds with address and undefined-behaviour sanitizers and runs every test without a display: sh tests/run.sh [MESON TEST ARGUMENTS]
# Closes with the count of all checks.
set -e
cd "$(dirname "$0")/.."
here=$(pwd)
. data/packages.sh
install_missing $build_packages $test_packages

build="$here/build-test"
[ -f "$build/build.ninja" ] || meson setup "$build" -Db_sanitize=address,undefined -Db_lundef=false
ninja -C "$build"
status=0
meson test -C "$build" --no-rebuild --print-errorlogs --timeout-multiplier 6 "$@" || status=$?

# Check's own closing line of each program: "100%: Checks: 12, Failures: 0, Errors: 0". A program that ended otherwise counts as one failure.
awk -v status="$status" '
  /^[0-9]+%: Checks: / { gsub (",", ""); checks += $3; failed += $5 + $7 }
  /^Fail: +[0-9]+/     { programs += $2 }
  /^Timeout: +[0-9]+/  { programs += $2 }
  END {
    if (failed == 0 && (programs > 0 || status != 0))
      failed = programs > 0 ? programs : 1
    passed = checks - failed
    if (passed < 0)
      passed = 0
    printf "%d passed, %d failed\n", passed, failed
  }' "$build/meson-logs/testlog.txt"
exit "$status"
