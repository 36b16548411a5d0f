#!/bin/sh
# What the desktop is told of the program passes the desktop's own validators without a note; a document is known by its ending and by
# its root element. desktop-entries.sh DESKTOP-FILE METAINFO-FILE DATA-FOLDER
desktop=$1 metainfo=$2 data=$3
for needed in desktop-file-validate appstreamcli update-mime-database gio xmllint; do
  command -v "$needed" >/dev/null || { echo "$needed is missing: skipped"; exit 77; }
done

failures=0
fail () { echo "FAIL: $1"; failures=$((failures + 1)); }
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT

said=$(desktop-file-validate "$desktop" 2>&1)
[ -z "$said" ] || fail "desktop entry: $said"

said=$(appstreamcli validate --no-net "$metainfo" 2>&1) || fail "metainfo: $said"
echo "$said" | grep -qE '^[EWI]:' && fail "metainfo: $said"

# A summary of at most 35 characters, without a full stop (Flathub, quality guidelines).
summary=$(xmllint --xpath 'string(/component/summary[not(@*)])' "$metainfo")
[ "${#summary}" -le 35 ] || fail "the summary is ${#summary} characters long"
case $summary in *.) fail "the summary ends with a full stop" ;; esac

for icon in scalable/apps/org.trammel.Trammel symbolic/apps/org.trammel.Trammel-symbolic; do
  box=$(xmllint --xpath 'string(/*/@viewBox)' "$data/icons/hicolor/$icon.svg") || fail "$icon is no SVG"
  set -- $box
  [ "$3" = "$4" ] || fail "$icon is not square"
done

mkdir -p "$work/mime/packages"
cp "$data/org.trammel.Trammel.mime.xml" "$work/mime/packages/"
said=$(XDG_DATA_DIRS=$work update-mime-database "$work/mime" 2>&1)
[ -z "$said" ] || fail "MIME type: $said"
cp "$data/examples/saltmarsh-racer.trammel" "$work/racer.trammel"
XDG_DATA_DIRS=$work XDG_DATA_HOME=$work gio info -a standard::content-type "$work/racer.trammel" | grep -q 'application/x-trammel+xml' \
  || fail "a .trammel file is not recognised by its ending"
grep -q '^urn:trammel:aeroplane aeroplane application/x-trammel+xml$' "$work/mime/XMLnamespaces" || fail "nor by its root element"
grep -q '^MimeType=.*application/x-trammel+xml' "$desktop" || fail "the desktop entry does not open its documents"

[ $failures -eq 0 ]
