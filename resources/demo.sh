#!/usr/bin/env bash
# demo.sh [OUT]: the main job on a fresh Debian 12 or 13 machine: every example scenario to a model and a cut report.
# Installs FreeCAD through apt if it is not there; writes to OUT (default: louverwright-demo in the current folder).
set -euo pipefail
addon=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
out=${1:-$PWD/louverwright-demo}

say() { printf '== %s\n' "$*"; }

need() {
  local package missing=()
  for package in "$@"; do
    [ "$(dpkg-query -W -f '${Status}' "$package" 2>/dev/null || true)" = "install ok installed" ] || missing+=("$package")
  done
  [ "${#missing[@]}" -eq 0 ] && return 0
  say "installing: ${missing[*]}"
  local root=(); [ "$(id -u)" -eq 0 ] || root=(sudo)
  "${root[@]}" apt-get -qq update
  "${root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -qq install -y --no-install-recommends "${missing[@]}" >/dev/null
}

need freecad python3-numpy fonts-dejavu-core
mkdir -p "$out"
for scenario in "$addon"/resources/examples/*.json; do
  name=$(basename "$scenario" .json)
  say "$name"
  PYTHONPATH="$addon/workbench" /usr/bin/python3 -m louverwright build "$scenario" --out "$out/$name"
done
say "done: look at report.pdf or report.html and open model.FCStd in $out"
