# Debian packages, read by the scripts. A line each: what the program is built from, what its tests need besides.
build_packages="gcc libc6-dev meson ninja-build pkg-config gettext libgtk-4-dev libadwaita-1-dev libxml2-dev libopenblas-dev libglpk-dev
 libjson-glib-dev libpng-dev libpoppler-glib-dev librsvg2-dev libgdk-pixbuf-2.0-dev libseccomp-dev
 webp-pixbuf-loader adwaita-icon-theme librsvg2-common fonts-cantarell"
test_packages="check xvfb xauth dbus at-spi2-core libxml2-utils appstream desktop-file-utils locales libxtst-dev
 libjpeg-dev binutils python3-ezdxf python3-svgelements"

# Installs those of the packages named that are missing, and says which. With nothing missing it touches nothing.
install_missing () {
  missing=
  for package in "$@"; do
    case "$(dpkg-query -W -f='${Status}' "$package" 2>/dev/null)" in
      *"ok installed"*) ;;
      *) missing="$missing $package" ;;
    esac
  done
  [ -n "$missing" ] || return 0
  echo "Installing with apt:$missing"
  if [ "$(id -u)" = 0 ]; then
    as_root=
  elif command -v sudo >/dev/null 2>&1; then
    as_root=sudo
  else
    echo "These packages are missing. As root, run:" >&2
    echo "  apt-get install --no-install-recommends$missing" >&2
    exit 2
  fi
  $as_root apt-get update -q || exit 2
  $as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends $missing || exit 2
}
