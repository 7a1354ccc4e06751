#!/bin/sh
# Takes the pictures of posters and sheets of all sample rooms into docs/pictures/.
set -eu
cd -P -- "$(dirname -- "$0")/.."
. app/packages.sh

# shellcheck disable=SC2086  # lists of words
install_missing $run_packages
build debug build/debug
program=build/debug/app/stopwalk
for shop in tram-depot scene-shop school-wing; do
  $program poster sample-layouts/$shop.layout.yaml --all --format png --dpi 50 --out docs/pictures/poster-$shop.png
done
$program poster sample-layouts/tram-depot.layout.yaml --room hall --format png --dpi 75 --out docs/pictures/poster-hall.png
$program poster sample-layouts/tram-depot.layout.yaml --room hall --language de,es --format png --dpi 60 --out docs/pictures/poster-two-languages.png
$program poster sample-layouts/tram-depot.layout.yaml --room hall --sheet --format png --dpi 60 --out docs/pictures/sheet.png
mv docs/pictures/sheet-1.png docs/pictures/sheet-lathe.png
rm -f docs/pictures/sheet-[0-9]*.png docs/pictures/sheet.png
scratch=$(mktemp -d)
trap 'rm -rf -- "$scratch"' EXIT
picture() { pdftoppm -r 75 -f "$2" -l "$2" -singlefile -png "$scratch/$1.pdf" "docs/pictures/$1"; }
$program round sheet sample-layouts/scene-shop.layout.yaml --out "$scratch/round-sheet.pdf"
picture round-sheet 1
cp sample-layouts/scene-shop.layout.yaml "$scratch"
round() { verb=$1; shift; (cd "$scratch" && "$here/$program" round "$verb" scene-shop.layout.yaml "$@" > /dev/null); }
here=$PWD
check() { device=$1; shift; round record --round 1 --device "$device" "$@"; }
round new --by "Ada Example" --at "2026-03-02 08:00"
check table-saw/paddle --at "2026-03-02 08:10" --result pass --second "Bo Example" --check clear=yes --check legible=yes --check pressed-running=yes --run-down 2.4,2.6,2.5
check router/console --at "2026-03-02 08:15" --result fail --check latches=no --note "does not latch" --action "locked off" \
  --corrective "change the contact block" --owner "Cy Example" --fix-by 2026-03-09
check mitre-saw/trigger --at "2026-03-02 08:20" --result not-tested --note "in use"
check mitre-saw/trigger --at "2026-03-02 08:40" --result pass --by "Bo Example" --corrects 4 --note "tested after all"
round bundle --from 2026-01-01 --to 2026-12-31 --out "$scratch/round-bundle.pdf"
picture round-bundle 1
say "pictures are in docs/pictures"
