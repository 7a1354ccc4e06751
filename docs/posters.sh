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
say "pictures are in docs/pictures"
