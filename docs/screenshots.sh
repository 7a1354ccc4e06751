#!/bin/sh
# Takes the pictures of every screen, light and dark, into docs/pictures/.
set -eu
cd -P -- "$(dirname -- "$0")/.."
. app/packages.sh

# shellcheck disable=SC2086  # lists of words
install_missing $run_packages $test_packages
build debug build/debug
build/debug/tests/app/window/window_pictures docs/pictures
say "pictures are in docs/pictures"
