#!/bin/sh
# Builds Stopwalk and runs it with the arguments given; without any, it opens the sample workshop,
# or audits it where there is no display.
set -eu
root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd -P)
. "$root/app/packages.sh"

# shellcheck disable=SC2086  # a list of words
install_missing $run_packages
(cd "$root" && build release build/release)
program="$root/build/release/app/stopwalk"

[ $# -gt 0 ] && exec "$program" "$@"

cd "$root"
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
  say "opening sample-layouts/tram-depot.layout.yaml"
  exec "$program" sample-layouts/tram-depot.layout.yaml
fi
say "auditing sample-layouts/tram-depot.layout.yaml"
# Status 1 says that rules are broken, and in the sample some are, on purpose.
"$program" audit sample-layouts/tram-depot.layout.yaml || [ $? -eq 1 ]
