#!/bin/sh
# Builds Stopwalk with warnings as errors and runs every test; arguments go to ctest, such as: -R core_floor
set -eu
cd -P -- "$(dirname -- "$0")/.."
. app/packages.sh

# shellcheck disable=SC2086  # lists of words
install_missing $run_packages $test_packages
build debug build/debug
say "testing"
exec ctest --test-dir build/debug --output-on-failure --no-tests=error --timeout 300 -j "$(nproc)" "$@"
