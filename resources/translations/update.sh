#!/usr/bin/env bash
# Finds the words of the screens, brings the list of messages up to date, and compiles it. What is new stands unfinished in
# pacewright_de.ts and is named here; translate it there (or in Qt Linguist) and run this again.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
bin=".venv/bin"
here="resources/translations"
readarray -t files < <(find app/views -name '*.py' | LC_ALL=C sort)
options=(-silent -no-obsolete -locations none -source-language en -tr-function-alias QT_TR_NOOP+=message)
"$bin/pyside6-lupdate" "${options[@]}" "${files[@]}" -target-language de -ts "$here/pacewright_de.ts"
"$bin/pyside6-lrelease" -silent -nounfinished "$here/pacewright_de.ts" -qm "$here/pacewright_de.qm"
grep -B 2 'type="unfinished"' "$here/pacewright_de.ts" | grep '<source>' || true
