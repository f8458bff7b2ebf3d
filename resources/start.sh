#!/usr/bin/env bash
# Brings what is missing and runs the program: `start.sh [COMMAND ...]`. Without words it opens the demo session.
set -euo pipefail
# shellcheck source=resources/environment.sh
source "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/environment.sh"

run() { "$python" -P -m app "$@"; }

has_display() { [[ -n ${DISPLAY:-}${WAYLAND_DISPLAY:-} || $OSTYPE == darwin* ]]; }

rehearse_demo() {
    local folder
    folder=$(mktemp -d "${TMPDIR:-/tmp}/pacewright-demo.XXXXXX")
    say "no display here: rehearsing the demo session without a screen"
    run rehearse "$root/demo_data/shoulder_rotators.toml" --speed 0 --database "$folder/demo.db"
    say "drawing the athlete's screen"
    QT_QPA_PLATFORM=offscreen run picture -o "$folder/athlete.png"
    say "the record is $folder/demo.db, the athlete's screen is $folder/athlete.png"
}

prepare base
if [[ $# -gt 0 ]]; then
    exec "$python" -P -m app "$@"
elif has_display; then
    say "opening the demo session"
    exec "$python" -P -m app open --demo
else
    rehearse_demo
fi
