#!/usr/bin/env bash
# run.sh [PYTEST ARGUMENTS]: lint, types and every test, with the FreeCAD of this machine.
# On a fresh Debian 12 or 13 it first installs what it needs. versions.sh tries the other FreeCADs.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
. "$here/lib.sh"
cd "$here/.."
unset PYTHONPATH    # another checkout of louverwright must not be the one tested

# pytest, hypothesis and jsonschema are Debian's for the tests inside FreeCAD's GUI; all others use the venv's.
# Chromium opens the cut report as it is used in the shop; the other FreeCADs have no need of it.
packages=(freecad python3-numpy python3-scipy python3-venv python3-pytest python3-hypothesis python3-jsonschema
  xvfb xauth xdotool poppler-utils fonts-dejavu-core chromium)
python=/usr/bin/python3    # the one Debian's FreeCAD is built for; the first on PATH may be another
cache=${XDG_CACHE_HOME:-$HOME/.cache}/louverwright
venv=$cache/venv
requirements=tests/requirements.txt
time_limit=1800
export PYTHONDONTWRITEBYTECODE=1 RUFF_CACHE_DIR=$cache/ruff MYPY_CACHE_DIR=$cache/mypy

# The virtual environment, made anew when the requirements or Python have changed. It sees Debian's numpy.
make_venv() {
  local wanted
  wanted="$("$python" --version) $(sha256sum <"$requirements")"
  mkdir -p "$cache"
  exec 9>"$cache/venv.lock"
  flock 9
  if [ ! -f "$venv/made" ] || [ "$(cat "$venv/made")" != "$wanted" ]; then
    say "making a virtual environment in $venv"
    "$python" -m venv --clear --system-site-packages "$venv"
    "$venv/bin/python" -m pip install -q --disable-pip-version-check -r "$requirements"
    printf '%s\n' "$wanted" >"$venv/made"    # last: an interrupted one is made again
  fi
  exec 9>&-
}

# One check that is not pytest, named $1: a failure counts as one.
check() {
  local name=$1
  shift
  if "$@" >"$work/check.log" 2>&1; then
    say "$name: good"
  else
    say "$name: failed"
    cat "$work/check.log"
    failed_total=$((failed_total + 1))
  fi
}

# Which of the folders of tests named hold any, one a line.
filled() {
  local folder
  for folder in "$@"; do
    if [ -n "$(test_files "$folder")" ]; then printf '%s\n' "$folder"; fi
  done
}

# pytest in the virtual environment, for step $1 with folders of tests $2... and the caller's arguments.
# In the background: leaves STEP.log and STEP.status.
run_pytest() {
  local step=$1 status=0
  shift
  timeout --kill-after=10 "$time_limit" "$venv/bin/python" -m pytest -q --durations=5 -p no:cacheprovider \
    -c tests/pytest.ini "${arguments[@]}" "$@" >"$work/$step.log" 2>&1 </dev/null || status=$?
  printf '%s\n' "$status" >"$work/$step.status"
}

# The real GUI, in a profile and on a display of its own.
run_gui() {
  PYTEST_ARGS=$("$python" -c 'import shlex, sys; print(shlex.join(sys.argv[1:]))' "${arguments[@]}") \
    bash tests/versions.sh --here "$work" 90 gui
}

# Judges step $1, named $2; shows its log if it failed. A -k that fits no test of one step is not a failure.
judge_step() {
  local step=$1 name=$2 status=1
  [ ! -s "$work/$step.status" ] || status=$(cat "$work/$step.status")
  if [ "$status" -eq 5 ] && [ "${#arguments[@]}" -gt 0 ]; then
    say "$name: none chosen"
  elif ! judge "$name" "$status" "$work/$step.log"; then
    cat "$work/$step.log"
  fi
}

arguments=("$@")
need_packages "${packages[@]}"
make_venv
work=$(mktemp -d "${TMPDIR:-/tmp}/louverwright-run-XXXXXX")
trap 'rm -rf "$work"' EXIT

for folder in core report host regressions gui; do
  [ -n "$(filled "tests/$folder")" ] || { say "tests/$folder: no tests"; failed_total=$((failed_total + 1)); }
done
mapfile -t pure < <(filled tests/core tests/report)
mapfile -t host < <(filled tests/host tests/regressions)    # together: a regression may need FreeCAD
mapfile -t gui < <(filled tests/gui)
# A regression alone still finds FreeCAD, which tests/host/conftest.py loads.
if [ "${#host[@]}" -eq 1 ] && [ "${host[0]}" = tests/regressions ]; then host=(tests/host tests/regressions); fi

say "running in the background: ${pure[*]} ${host[*]} ${gui[*]}"
if [ "${#pure[@]}" -gt 0 ]; then run_pytest pure "${pure[@]}" & fi
if [ "${#host[@]}" -gt 0 ]; then run_pytest host "${host[@]}" & fi
if [ "${#gui[@]}" -gt 0 ]; then run_gui & fi    # it mostly waits for the window

check "lint (ruff)" "$venv/bin/ruff" check workbench tests
check "types (mypy)" "$venv/bin/mypy" --config-file tests/mypy.ini -p louverwright.core -p louverwright.report
wait

[ "${#pure[@]}" -eq 0 ] || judge_step pure "${pure[*]}"
[ "${#host[@]}" -eq 0 ] || judge_step host "${host[*]}"
[ "${#gui[@]}" -eq 0 ] || judge_step gui "${gui[*]}"
if [ $((passed_total + failed_total)) -eq 0 ]; then
  say "no test ran"
  failed_total=1
fi
[ "${#arguments[@]}" -eq 0 ] || say "only a part was asked for: ${arguments[*]}"
closing_total
