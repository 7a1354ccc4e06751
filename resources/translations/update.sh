#!/bin/sh
# Renews the translations here by the texts that app/ says now, or those of the files named on the command
# line: new texts come in unfinished, those no longer said go. docs/translating.md says how to fill them in.
set -eu
cd -P -- "$(dirname -- "$0")/../.."
lupdate=${LUPDATE:-/usr/lib/qt6/bin/lupdate}
[ $# -gt 0 ] || set -- resources/translations/*.ts
# The root as include path, else classes get no namespace and their texts a context nobody asks for.
"$lupdate" app -I . -source-language en -locations none -no-obsolete -ts "$@"
