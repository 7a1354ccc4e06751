# Sourced by app/run.sh and tests/run.sh: the Debian packages that Stopwalk is made with. docs/dependencies.md says why.

run_packages="g++ cmake ninja-build libyaml-dev libutf8proc-dev libspdlog-dev libcli11-dev nlohmann-json3-dev libssl-dev qt6-base-dev libqt6svg6-dev qt6-tools-dev qt6-l10n-tools pkg-config libqrcodegencpp-dev libqpdf-dev fonts-dejavu-core qt6-translations-l10n"
test_packages="libgtest-dev libgmock-dev librapidcheck-dev libcgal-dev libgeos-dev libbenchmark-dev poppler-utils zbar-tools"
bench_packages="librecast-dev"  # with the test packages, where STOPWALK_BENCH is on

say() { printf 'stopwalk: %s\n' "$*" >&2; }

# Installs those of the named packages that are not there; asks apt nothing when all are.
install_missing() {
  if ! command -v dpkg-query >/dev/null; then
    say "this is not Debian: install the likes of $* yourself; going on"
    return 0
  fi
  present=" $(dpkg-query -W -f '${Package}:${db:Status-Status} ' "$@" 2>/dev/null || true)"
  missing=""
  for package in "$@"; do
    case "$present" in *" $package:installed "*) ;; *) missing="$missing $package" ;; esac
  done
  [ -z "$missing" ] && return 0

  as_root="env"
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || { say "as root, run: apt-get install$missing"; exit 1; }
    as_root="sudo env"
  fi
  say "installing$missing"
  apt="$as_root DEBIAN_FRONTEND=noninteractive apt-get -q -o DPkg::Lock::Timeout=300"
  { $apt update && $apt install -y --no-install-recommends $missing; } >&2
}

# Configures the preset $1 in the folder $2 when that was not yet done there, and builds what changed.
build() {
  preset=$1 folder=$2
  if [ ! -f "$folder/build.ninja" ] || ! grep -qxF "CMAKE_HOME_DIRECTORY:INTERNAL=$(pwd -P)" "$folder/CMakeCache.txt"; then
    say "configuring ($preset)"
    cmake --fresh --preset "$preset" >&2
  fi
  case "$(ninja -C "$folder" -n 2>&1)" in *"no work to do"*) return 0 ;; esac
  say "building ($preset)"
  cmake --build "$folder" -j "$(nproc)" >&2
}
