#!/usr/bin/env bash
# chroot.sh SUITE DIR PACKAGE...: a Debian SUITE in DIR with the packages named, ready to enter.
# Called by versions.sh as root in a mount namespace of its own, so every mount ends with this process.
# A stamp written last tells a finished root from an interrupted one, which is thrown away.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
. "$here/lib.sh"

suite=$1 root=$2
shift 2
recipe="recipe 1: $suite $*"
stamp=$root/etc/louverwright-tests

mkdir -p "$(dirname "$root")"
exec 9>"$root.lock"
flock 9
if [ -f "$stamp" ] && [ "$(cat "$stamp")" = "$recipe" ]; then exit 0; fi

say "building a $suite root"
started=$SECONDS
if findmnt -rno TARGET | grep -q "^$root/"; then
  say "something is mounted under $root; unmount it first"
  exit 1
fi
rm -rf --one-file-system "$root"

# An older debootstrap does not know the newest releases; its script for sid fits them.
script=/usr/share/debootstrap/scripts/$suite
[ -e "$script" ] || script=/usr/share/debootstrap/scripts/sid
main=$(debian_site main)
security=$(debian_site security)
[ -n "$main" ] || { say "apt names no Debian mirror on this machine"; exit 1; }

debootstrap --variant=minbase --include=ca-certificates \
  --keyring=/usr/share/keyrings/debian-archive-keyring.gpg "$suite" "$root" "$main" "$script"

cp -L /etc/resolv.conf /etc/hosts "$root/etc/"
cp /etc/apt/apt.conf.d/* "$root/etc/apt/apt.conf.d/"    # a mirror may need, say, an older Release file let in
echo force-unsafe-io >"$root/etc/dpkg/dpkg.cfg.d/unsafe-io"
printf '#!/bin/sh\nexit 101\n' >"$root/usr/sbin/policy-rc.d"    # no service is started in here
chmod +x "$root/usr/sbin/policy-rc.d"
case $suite in
  bookworm | trixie)
    [ -z "$security" ] || echo "deb $security $suite-security main" >>"$root/etc/apt/sources.list" ;;
esac

mountpoint -q "$root/proc" || mount -t proc proc "$root/proc"    # freecadcmd dies without it
chroot "$root" apt-get -qq update
chroot "$root" env DEBIAN_FRONTEND=noninteractive \
  apt-get -qq install -y --no-install-recommends "$@"
chroot "$root" apt-get clean
printf '%s\n' "$recipe" >"$stamp"
say "$suite root ready after $((SECONDS - started)) s"
