# Makes the environment the program and its tests run in. Sourced by resources/start.sh and tests/run.sh.
# shellcheck shell=bash
#
# root    the checkout
# venv    the virtual environment: .venv in the checkout, or where PACEWRIGHT_VENV says
# python  the interpreter in it
# prepare [test]   brings whatever is missing of all this; with "test" also what the tests need

root=$(cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.." && pwd -P)
venv=${PACEWRIGHT_VENV:-$root/.venv}
[[ $venv == /* ]] || venv=$PWD/$venv
python=$venv/bin/python
readonly ALSA_HEADER=/usr/include/alsa/asoundlib.h

# What Qt's wheels and the sound take from the system: the file, and the Debian package that holds it.
readonly LIBRARIES=(
    libGL.so.1:libgl1 libEGL.so.1:libegl1 libgthread-2.0.so.0:libglib2.0-0
    libfontconfig.so.1:libfontconfig1 libxkbcommon.so.0:libxkbcommon0 libdbus-1.so.3:libdbus-1-3
    libxcb-cursor.so.0:libxcb-cursor0 libxkbcommon-x11.so.0:libxkbcommon-x11-0
    libxcb-icccm.so.4:libxcb-icccm4 libxcb-keysyms.so.1:libxcb-keysyms1 libxcb-shape.so.0:libxcb-shape0
    libxcb-image.so.0:libxcb-image0 libxcb-render-util.so.0:libxcb-render-util0
    libwayland-cursor.so.0:libwayland-cursor0 libwayland-egl.so.1:libwayland-egl1
    libasound.so.2:libasound2
)
# What the tests start: the command, and the package that holds it.
readonly TEST_COMMANDS=(
    Xvfb:xvfb xdpyinfo:x11-utils xrandr:x11-xserver-utils xdotool:xdotool pulseaudio:pulseaudio pactl:pulseaudio-utils sox:sox
    desktop-file-validate:desktop-file-utils appstreamcli:appstream
)

say() { printf 'pacewright: %s\n' "$*" >&2; }

give_up() {
    say "$@"
    exit 1
}

# The system's packages ------------------------------------------------------------------------------------------

has_command() { command -v "$1" >/dev/null; }

as_root=()
may_install() {
    has_command apt-get || return 1
    [[ $EUID == 0 ]] && return
    as_root=(sudo -n)
    sudo -n true 2>/dev/null
}

apt() {
    "${as_root[@]}" env PATH="$PATH:/usr/local/sbin:/usr/sbin:/sbin" DEBIAN_FRONTEND=noninteractive \
        apt-get -qq -o DPkg::Lock::Timeout=120 "$@" </dev/null
}

refreshed=
refresh() {
    [[ -n $refreshed ]] && return
    refreshed=yes
    apt update >/dev/null 2>&1 || true
}

apt_install() { apt install -y --no-install-recommends "$@"; }

# Since 2024 some libraries carry a suffix (libasound2t64): bring_missing takes whichever name is known.
known_package() { has_command apt-cache && [[ $(LC_ALL=C apt-cache policy "$1" 2>/dev/null) == *Candidate:\ [0-9]* ]]; }

# What is missing, by package; filled by the want_... below, brought together by bring_missing.
missing=()

# bring_missing: installs it, or says the one line that does. Fails when it is not there afterwards.
bring_missing() {
    [[ ${#missing[@]} != 0 ]] || return 0
    if ! has_command apt-get; then
        say "install with this system's package manager, by the names Debian gives them: ${missing[*]}"
        return 1
    elif ! may_install; then
        say "to bring what is missing, run: sudo apt-get install -y ${missing[*]}"
        return 1
    fi
    say "bringing by apt: ${missing[*]}"
    local log package packages=()
    known_package "${missing[0]}" || refresh
    for package in "${missing[@]}"; do
        known_package "$package" || ! known_package "${package}t64" || package=${package}t64
        packages+=("$package")
    done
    log=$(mktemp)
    if ! apt_install "${packages[@]}" >"$log" 2>&1 && { refresh; ! apt_install "${packages[@]}" >"$log" 2>&1; }; then
        tail -n 5 "$log" >&2
        rm -f "$log"
        say "apt could not bring them; with a network, run: apt-get update && apt-get install -y ${packages[*]}"
        return 1
    fi
    rm -f "$log"
}

# want TEST NAME:PACKAGE...: the packages of those names that fail the test.
want() {
    local test=$1 pair
    shift
    for pair in "$@"; do
        "$test" "${pair%%:*}" || missing+=("${pair#*:}")
    done
}

libraries=
has_library() { [[ $libraries == *[[:space:]]"$1 "* ]]; }

want_libraries() {
    [[ $OSTYPE == linux* ]] || return 0
    libraries=$(PATH=$PATH:/usr/sbin:/sbin ldconfig -p 2>/dev/null) || return 0
    want has_library "${LIBRARIES[@]}"
}

want_test_tools() {
    want has_command "${TEST_COMMANDS[@]}"
    if [[ $OSTYPE == linux* ]] && ! compgen -G '/usr/lib/*/alsa-lib/libasound_module_pcm_pulse.so' >/dev/null; then
        missing+=(libasound2-plugins)
    fi
}

# Python ---------------------------------------------------------------------------------------------------------

readonly GOOD_PYTHON='import sys; sys.exit(sys.version_info < (3, 11))'
readonly WHOLE_PYTHON='import ctypes, ensurepip, sqlite3, ssl, venv'

# find_python [STATEMENT]: prints the first interpreter that is new enough and runs STATEMENT.
find_python() {
    local candidate
    for candidate in python3.13 python3.12 python3.11 python3 python; do
        if "$candidate" -c "${1:-pass}; $GOOD_PYTHON" >/dev/null 2>&1; then
            command -v "$candidate"
            return
        fi
    done
    return 1
}

# A Python that is whole, and what simpleaudio is built with on Linux: a compiler, Python's headers, ALSA's.
want_python() {
    local found version
    if found=$(find_python "$WHOLE_PYTHON"); then
        want_build_tools "$("$found" -c 'import sysconfig; print(sysconfig.get_paths()["include"] + "/Python.h")')"
        return
    fi
    if found=$(find_python); then
        version=$("$found" -c 'import sys; print("%d.%d" % sys.version_info[:2])')
    else
        ! may_install || refresh
        for version in 3.13 3.12 3.11 3; do
            ! known_package "python$version-venv" || break
        done
    fi
    missing+=("python$version" "python$version-venv")
    want_build_tools "/usr/include/python$version/Python.h"
}

want_build_tools() {
    [[ $OSTYPE == linux* ]] || return 0
    has_command cc || has_command gcc || missing+=(gcc libc6-dev)
    [[ -e $ALSA_HEADER ]] || missing+=(libasound2-dev)
    [[ -e $1 ]] || missing+=("$(basename "$(dirname "$1")")-dev")
}

# The virtual environment ----------------------------------------------------------------------------------------

fingerprint() {
    printf '%s %s ' "$root" "$(readlink -f "$python")"
    cksum <"$root/pyproject.toml"
}

finished() { [[ -x $python && -r $venv/.finished-$1 && $(<"$venv/.finished-$1") == "$(fingerprint)" ]]; }

make_venv() {
    local maker=$1
    if [[ -x $python ]] && "$python" -m pip --version >/dev/null 2>&1 && "$python" -c "$GOOD_PYTHON"; then
        return
    fi
    if [[ -e $venv && ! -e $venv/pyvenv.cfg && ! -e $venv/.begun && -n $(ls -A "$venv") ]]; then
        give_up "$venv is there and is no Python environment: move it away, or name another by PACEWRIGHT_VENV."
    fi
    say "making the environment $venv with $maker"
    rm -rf "$venv"
    mkdir "$venv"
    : >"$venv/.begun"
    "$maker" -m venv "$venv" || give_up "$maker could not make $venv."
}

pip() { "$python" -m pip install --quiet --no-input --disable-pip-version-check "$@"; }

# install EXTRA LOG: the project in place with what it depends on; without simpleaudio where that cannot be built.
install() {
    local extra=$1 log=$2 project=$root
    [[ $extra == base ]] || project="$root[$extra]"
    pip --editable "$project" >"$log" 2>&1 && return
    grep -qi 'build.* simpleaudio' "$log" || return 1
    say "simpleaudio cannot be built here (why is in $log): sound goes through miniaudio. To try it again, delete $venv"
    pip --no-deps --editable "$root" >>"$log" 2>&1 || return 1
    "$python" - "$extra" >"$venv/requirements.txt" <<'PYTHON'
import importlib.metadata, sys
extra = "" if sys.argv[1] == "base" else sys.argv[1]
for line in importlib.metadata.requires("pacewright") or []:
    requirement, _, marker = line.partition(";")
    wanted = f'extra == "{extra}"' in marker.replace("'", '"') or "extra ==" not in marker
    if wanted and not requirement.startswith("simpleaudio"):
        print(requirement if "extra ==" in marker else line)
PYTHON
    pip --requirement "$venv/requirements.txt" >>"$log" 2>&1
}

fill_venv() {
    local extra=$1 log=$venv/install.log
    say "installing what it needs (the first time takes a minute or two)"
    if ! install "$extra" "$log"; then
        if grep -qiE 'connection|name resolution|network is|proxy|timed out' "$log"; then
            give_up "no network? Nothing is lost: run this again when there is one. All that pip said is in $log"
        fi
        tail -n 5 "$log" >&2
        give_up "the installation failed: all that pip said is in $log. Run this again to go on."
    fi
    "$python" -m compileall -q "$root/app" >/dev/null 2>&1 || true
    [[ $extra == base ]] || fingerprint >"$venv/.finished-$extra"
    fingerprint >"$venv/.finished-base"
}

# Two starts at once: the second waits for what the first makes.
take_turn() {
    mkdir -p "$(dirname "$venv")" 2>/dev/null && : 2>/dev/null >>"$venv.lock" ||
        give_up "cannot write $venv: name a folder of yours, like PACEWRIGHT_VENV=/tmp/pacewright bash ..."
    has_command flock || return 0
    exec 9>"$venv.lock"
    flock --nonblock 9 || {
        say "another start is making the environment: waiting for it"
        flock 9
    }
}

bring_or_go_on() { bring_missing || say "going on without: a window, sound or a test may fail"; }

make_environment() {
    local extra=$1 maker
    take_turn
    finished "$extra" || want_python
    bring_or_go_on
    finished "$extra" && return
    maker=$(find_python "$WHOLE_PYTHON") || give_up "there is no Python 3.11 or newer here that can make an environment."
    make_venv "$maker"
    fill_venv "$extra"
}

prepare() {
    local extra=${1:-base}
    unset PYTHONPATH PYTHONHOME PYTHONDONTWRITEBYTECODE
    missing=()
    want_libraries
    [[ $extra == base ]] || want_test_tools
    if finished "$extra"; then
        bring_or_go_on
    else
        (make_environment "$extra")
    fi
}
