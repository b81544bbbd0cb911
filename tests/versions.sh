#!/usr/bin/env bash
# versions.sh [VERSION...]: tests/host and tests/gui in each FreeCAD that people run, side by side.
#
# A VERSION is "host", the FreeCAD of this machine, or a Debian release, which is built as a root of its
# own the first time. Without one: the three releases below, this machine standing for its own release.
# PYTEST_ARGS holds further arguments for pytest. The gui tests' pictures end up in LOUVERWRIGHT_SHOTS.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
. "$here/lib.sh"

generations=(bookworm trixie forky)    # FreeCAD 0.20, 1.0 and 1.1
rooms=(host gui)
packages=(freecad python3-numpy python3-pytest python3-hypothesis python3-jsonschema
  xvfb xauth xdotool poppler-utils fonts-dejavu-core)
roots=${LOUVERWRIGHT_CHROOTS:-/var/cache/louverwright/chroots}
shots=${LOUVERWRIGHT_SHOTS:-/tmp/louverwright-shots}
# Replay, dry fit and angles take their time: in each version they are run on these examples, in run.sh on all.
examples="hay-barn-28ft octagon-dairy"
time_limit=900    # seconds for one room; a GUI whose script failed stays open for ever
path=/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin

give_up() {
  say "$*"
  exit 1
}

# For a script that is stopped: nothing it started lives on. unshare heeds no TERM; all in it ends with it.
end_jobs() {
  local signal jobs
  for signal in TERM KILL; do
    mapfile -t jobs < <(jobs -pr)
    [ "${#jobs[@]}" -eq 0 ] || kill -s "$signal" "${jobs[@]}"
    sleep 1
  done
  exit 1
}

# --- inside one version -------------------------------------------------------------------------------

# The folders that hold tests for room $1. What was mended once is tried in every FreeCAD's console.
folders_of() {
  local folder folders=("$here/$1")
  [ "$1" != host ] || folders+=("$here/regressions")
  for folder in "${folders[@]}"; do
    [ -z "$(test_files "$folder")" ] || printf '%s\n' "$folder"
  done
}

# Room $2 in the FreeCAD of the root we are in, with everything that is written kept under folder $1.
# $3: where to begin looking for a free display; roots see each other's displays, but not their locks.
# Nothing of the caller's environment comes in: no PYTHONPATH, no settings, no display.
run_room() {
  local work=$1 room=$2 display=$3 folder arguments=${PYTEST_ARGS:-} command
  mkdir -p "$work/$room/home" "$work/$room/tmp" "$work/shots"
  /usr/bin/python3 -B "$here/make_profile.py" "$work/$room/profile"
  while read -r folder; do    # the runner adds the room's own folder itself
    [ "$folder" = "$here/$room" ] || arguments="$arguments '$folder'"
  done < <(folders_of "$room")
  command=(freecadcmd "$here/host/run_host.py")
  if [ "$room" = gui ]; then
    command=(xvfb-run -a -n "$display" -s "-screen 0 1600x1000x24" freecad "$here/gui/run_gui.py")
  fi
  cd "$work/$room"
  exec timeout --kill-after=10 "$time_limit" env -i PATH="$path" LANG=C.UTF-8 HOME="$work/$room/home" \
    TMPDIR="$work/$room/tmp" FREECAD_USER_HOME="$work/$room/profile" LOUVERWRIGHT_SHOTS="$work/shots" \
    PYTEST_ARGS="$arguments" LOUVERWRIGHT_EXAMPLES="$examples" PYTHONDONTWRITEBYTECODE=1 \
    QTWEBENGINE_DISABLE_SANDBOX=1 "${command[@]}" </dev/null
}

# versions.sh --here WORK DISPLAY ROOM...: leaves ROOM.log and, once it has ended, ROOM.status in WORK.
run_here() {
  local work=$1 display=$2 room status
  shift 2
  trap end_jobs INT TERM
  for room in "$@"; do
    [ -n "$(folders_of "$room")" ] || continue
    status=0
    run_room "$work" "$room" "$display" >"$work/$room.log" 2>&1 &
    wait "$!" || status=$?
    rm -rf "${work:?}/$room"
    printf '%s\n' "$status" >"$work/$room.status"
  done
}

# versions.sh --enter ROOT WORK DISPLAY ROOM...: the same inside ROOT, which sees the checkout (read-only)
# and WORK. Called in namespaces of its own: the mounts and all processes end with it.
enter() {
  local root=$1 work=$2 display=$3
  shift 3
  mount -t proc proc "$root/proc"    # freecadcmd dies without it
  mkdir -p "$root/srv/louverwright"
  mount --bind "$(dirname "$here")" "$root/srv/louverwright"
  mount -o remount,bind,ro "$root/srv/louverwright"
  mount --bind "$work" "$root/mnt"
  chroot "$root" env -i PATH="$path" PYTEST_ARGS="${PYTEST_ARGS:-}" \
    bash /srv/louverwright/tests/versions.sh --here /mnt "$display" "$@"
}

case ${1:-} in
  --here) shift; run_here "$@"; exit ;;
  --enter) shift; enter "$@"; exit ;;
esac

# --- outside: choose, build, run, judge ------------------------------------------------------------------

# What to run when nothing is asked for, one a line.
default_versions() {
  local suite
  for suite in "${generations[@]}"; do
    if [ "$suite" = "$(release_of_host)" ]; then echo host; else echo "$suite"; fi
  done
}

check_names() {
  local version
  for version in "$@"; do
    case " host ${generations[*]} " in
      *" $version "*) ;;
      *) give_up "no such version: $version (there are: host ${generations[*]})" ;;
    esac
  done
}

# Roots take what only root can do: says plainly what is missing.
check_abilities() {
  [ "$(id -u)" -eq 0 ] || give_up "Debian roots can be built and entered by root only: run this as root, or for host alone."
  unshare --mount --propagation private --pid --fork --kill-child true ||
    give_up "this machine does not let root make a mount namespace (unshare failed): run the tests for host alone."
  need_packages debootstrap debian-archive-keyring || true    # judged by the next line
  command -v debootstrap >/dev/null ||
    give_up "debootstrap is not there and could not be installed: no Debian root can be built."
}

# Builds the roots named that are not complete yet, side by side. A failure shows in BUILD.status.
build_roots() {
  local suite
  for suite in "$@"; do
    [ -f "$roots/$suite/etc/louverwright-tests" ] ||
      say "$suite: building a root in $roots/$suite, some three minutes"
    (
      status=0
      unshare --mount --propagation private \
        bash "$here/chroot.sh" "$suite" "$roots/$suite" "${packages[@]}" || status=$?
      printf '%s\n' "$status" >"$logs/$suite/build.status"
    ) >"$logs/$suite/build.log" 2>&1 </dev/null &
  done
  wait
}

# Becomes the run of all rooms in version $1; to be called in the background.
run_version() {
  local version=$1 display=$2
  if [ "$version" = host ]; then
    exec bash "$here/versions.sh" --here "$logs/host" "$display" "${rooms[@]}"
  else
    exec unshare --mount --propagation private --pid --fork --kill-child \
      bash "$here/versions.sh" --enter "$roots/$version" "$logs/$version" "$display" "${rooms[@]}"
  fi
}

status_in() { if [ -s "$1" ]; then cat "$1"; else echo 1; fi; }

# Says how room $2 of version $1 went; shows the end of a log that tells of a failure.
judge_room() {
  local version=$1 room=$2 log="$logs/$1/$2.log" about
  if [ -z "$(folders_of "$room")" ]; then
    say "$version: no tests in tests/$room"
    failed_total=$((failed_total + 1))
    return 0
  fi
  [ -f "$log" ] || cp "$logs/$version/run.log" "$log"    # it did not come as far as this room
  about=$(grep -aEm1 '^FreeCAD [0-9.]+, Python' "$log") || about="FreeCAD did not start"
  judge "$version tests/$room ($about)" "$(status_in "$logs/$version/$room.status")" "$log" && return 0
  tail -n 80 "$log"
  echo    # a log that was cut short has no last newline
}

judge_version() {
  local version=$1 room
  if [ "$version" != host ] && [ "$(status_in "$logs/$version/build.status")" -ne 0 ]; then
    say "$version: its root could not be built"
    tail -n 40 "$logs/$version/build.log"
    failed_total=$((failed_total + 1))
    return
  fi
  for room in "${rooms[@]}"; do judge_room "$version" "$room"; done
}

# The pictures of version $1; those of an earlier run go, lest they be taken for today's.
keep_shots() {
  local version=$1
  [ -d "$logs/$version/shots" ] || return 0
  mkdir -p "$shots/$version"
  find "$shots/$version" -maxdepth 1 -name '*.png' -delete
  cp -r "$logs/$version/shots/." "$shots/$version/"
  rm -rf "${logs:?}/$version/shots"
}

if [ $# -eq 0 ]; then mapfile -t versions < <(default_versions); else versions=("$@"); fi
check_names "${versions[@]}"
suites=()
for version in "${versions[@]}"; do [ "$version" = host ] || suites+=("$version"); done
[ "${#suites[@]}" -eq 0 ] || check_abilities
case " ${versions[*]} " in *" host "*) need_packages "${packages[@]}" ;; esac

trap end_jobs INT TERM
logs=$(mktemp -d "${TMPDIR:-/tmp}/louverwright-versions-XXXXXX")
say "versions: ${versions[*]}; logs in $logs"
for version in "${versions[@]}"; do mkdir -p "$logs/$version"; done
build_roots "${suites[@]}"

display=100
for version in "${versions[@]}"; do
  if [ "$version" = host ] || [ "$(status_in "$logs/$version/build.status")" -eq 0 ]; then
    run_version "$version" "$display" >"$logs/$version/run.log" 2>&1 </dev/null &
  fi
  display=$((display + 50))
done
wait

for version in "${versions[@]}"; do
  judge_version "$version"
  keep_shots "$version"
done
if [ $((passed_total + failed_total)) -eq 0 ]; then
  say "no test ran"
  failed_total=1
fi
[ -z "${PYTEST_ARGS:-}" ] || say "only a part was asked for: $PYTEST_ARGS"
closing_total
