#!/usr/bin/env bash
# Makes the environment and runs everything that must hold: lint, format, types, contracts, tests.
# `tests/run.sh [pytest arguments]`. Every part runs; the exit status is that of the first that fails.
# Without arguments the tests run in two halves at the same time: those that need a screen of their own, and
# the others, whose words come when they are done.
set -euo pipefail
# shellcheck source=resources/environment.sh
source "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/../resources/environment.sh"

work=$(mktemp -d "${TMPDIR:-/tmp}/pacewright-tests.XXXXXX")
screen=
other=
leave() {
    [[ -z $other ]] || kill "$other" 2>/dev/null || true
    [[ -z $screen ]] || kill "$screen" 2>/dev/null || true
    rm -rf "$work"
}
trap leave EXIT

# A screen of its own, on whatever display is free.
open_screen() {
    unset WAYLAND_DISPLAY QT_QPA_PLATFORM
    if ! has_command Xvfb; then
        say "no Xvfb: Qt draws offscreen"
        export QT_QPA_PLATFORM=offscreen
        return
    fi
    Xvfb -displayfd 3 -screen 0 1920x1080x24 -nolisten tcp 3>"$work/display" >"$work/screen.log" 2>&1 &
    screen=$!
    for _ in {1..100}; do
        [[ -s $work/display ]] && break
        kill -0 "$screen" 2>/dev/null || give_up "Xvfb did not start: $(tail -n 1 "$work/screen.log")"
        sleep 0.1
    done
    DISPLAY=:$(<"$work/display")
    export DISPLAY
}

status=0
failed=()
part() {
    local name=$1 code=0
    shift
    say "$name"
    "$python" "$@" || code=$?
    [[ $code != 0 ]] || return 0
    failed+=("$name")
    [[ $status != 0 ]] || status=$code
}

prepare test
cd "$root"
open_screen
part "lint" -m ruff check --quiet .
part "format" -m ruff format --check --quiet .
part "types" -m mypy
part "contracts" -c 'from importlinter.cli import lint_imports_command; lint_imports_command()'
[[ ${#failed[@]} == 0 ]] || say "failed before the tests, see above: ${failed[*]}"
if [[ $# != 0 ]]; then
    part "tests" -m pytest "$@"
    exit "$status"
fi
readonly without_screen=(tests/golden tests/outside tests/unit tests/integration)
readonly on_screen=(tests/integration/test_open_command.py tests/integration/test_start_script.py)
with_screen=("${on_screen[@]}")
for folder in tests/*/; do
    folder=${folder%/}
    [[ $folder == */__pycache__ || " ${without_screen[*]} " == *" $folder "* ]] || with_screen+=("$folder")
done
QT_QPA_PLATFORM=offscreen "$python" -m pytest "${without_screen[@]}" "${on_screen[@]/#/--ignore=}" \
    >"$work/without_screen.log" 2>&1 &
other=$!
part "tests with a screen" -m pytest "${with_screen[@]}"
say "tests without a screen"
code=0
wait "$other" || code=$?
other=
cat "$work/without_screen.log"
if [[ $code != 0 ]]; then
    failed+=("tests without a screen")
    [[ $status != 0 ]] || status=$code
fi
[[ ${#failed[@]} == 0 ]] || say "failed: ${failed[*]}"
exit "$status"
