# Shared by run.sh, versions.sh and chroot.sh: what to say, what to install, how to count.
# shellcheck shell=bash

say() { printf '%s\n' "== $*"; }

as_root() {
  if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi
}

# Installs the Debian packages named that are not there yet; says so, and is quick when all are.
need_packages() {
  local package state missing=()
  for package in "$@"; do
    state=$(dpkg-query -W -f '${Status}' "$package" 2>&1) || true
    [ "$state" = "install ok installed" ] || missing+=("$package")
  done
  [ "${#missing[@]}" -eq 0 ] && return 0
  say "installing: ${missing[*]}"
  as_root apt-get -qq update
  as_root env DEBIAN_FRONTEND=noninteractive \
    apt-get -qq install -y --no-install-recommends "${missing[@]}" >/dev/null
}

release_of_host() { (. /etc/os-release && printf '%s\n' "${VERSION_CODENAME:?no Debian release name}"); }

# The mirror this machine's apt is set up for. $1: main or security. Empty if there is none.
debian_site() {
  apt-get indextargets --format '$(RELEASE) $(COMPONENT) $(SITE)' 'Created-By: Packages' |
    awk -v want="$1" -v release="$(release_of_host)" '
      $2 != "main" { next }
      want == "main" && ($1 == release || $1 ~ /^(old)*stable$/ || $1 == "testing") && !seen++ { print $3 }
      want == "security" && $1 ~ /-security$/ && !seen++ { print $3 }'
}

# Test modules in the folders named, one a line.
test_files() {
  local folder
  for folder in "$@"; do
    [ -d "$folder" ] && find "$folder" -name 'test_*.py' -not -path '*/__pycache__/*'
  done
  return 0
}

passed_total=0 failed_total=0 skipped_total=0

# The closing line of the pytest run logged in file $1 ("2 failed, 7 passed in 0.31s"), or nothing.
closing_line() {
  { grep -aE '^(=+ )?([0-9]+ [a-z]+, )*[0-9]+ [a-z]+ in [0-9.]+s' "$1" || true; } | tail -n 1
}

# How many of kind $2 (an awk pattern) closing line $1 counts.
counted() {
  printf '%s\n' "$1" | tr -d '=' | tr ',' '\n' |
    awk -v kind="^($2)\$" '$2 ~ kind { n += $1 } END { print n + 0 }'
}

# Judges one pytest run by its exit status ($2) and its closing line in the log ($3), names it $1, adds it
# to the totals and says one line. Fails unless the status is 0 and the line counts a passed test.
judge() {
  local name=$1 status=$2 log=$3 line passed failed skipped
  line=$(closing_line "$log")
  passed=$(counted "$line" 'passed|xfailed')
  failed=$(counted "$line" 'failed|errors?|xpassed')
  skipped=$(counted "$line" skipped)
  if [ "$status" -ne 0 ] && [ "$failed" -eq 0 ]; then failed=1; fi
  if [ "$status" -eq 0 ] && [ "$passed" -eq 0 ]; then failed=1; fi
  passed_total=$((passed_total + passed))
  failed_total=$((failed_total + failed))
  skipped_total=$((skipped_total + skipped))
  say "$name: ${line:-no closing line of pytest} (status $status)"
  [ "$failed" -eq 0 ]
}

# The last line of a script: what was counted in all runs. Fails if any test failed.
closing_total() {
  local line="$passed_total passed, $failed_total failed"
  [ "$skipped_total" -eq 0 ] || line="$line, $skipped_total skipped"
  if [ -n "${LOUVERWRIGHT_TOTALS:-}" ]; then
    printf '%s %s %s\n' "$passed_total" "$failed_total" "$skipped_total" >>"$LOUVERWRIGHT_TOTALS"
  fi
  printf '%s\n' "$line"
  [ "$failed_total" -eq 0 ]
}
