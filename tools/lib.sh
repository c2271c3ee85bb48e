# shellcheck shell=bash
# What the tools share: the place they work in, the search path, steps that are
# named and timed, and the one way of building and serving the release. Source it
# first; it ends in the repository's root.

set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
ROOT=$PWD
# shellcheck source=tools/pins
. tools/pins

# What setup installs wins over what the machine has: it is only there when the
# machine had nothing that fits.
export PATH="$ROOT/.tools/bin:$ROOT/.tools/npm/build/node_modules/.bin:$PATH"

say() { printf '%s\n' "$*"; }

die() {
    printf '%s: %s\n' "$(basename "$0")" "$*" >&2
    exit 1
}

have() { command -v "$1" >/dev/null 2>&1; }

# version_of PROGRAM: the first dotted number it says of itself, or nothing.
version_of() {
    have "$1" || return 0
    { "$1" --version 2>/dev/null || true; } | grep -oE '[0-9]+(\.[0-9]+)*' | head -n 1 || true
}

# at_least WANTED FOUND: whether FOUND is WANTED or newer.
at_least() { [ -n "$2" ] && [ "$(printf '%s\n%s\n' "$1" "$2" | sort -V | head -n 1)" = "$1" ]; }

# step NAME COMMAND...: runs the command, says how long it took, and names the
# step if it fails. The command is not run inside a condition, so `set -e` keeps
# its force within functions.
STEP=
step() {
    local began=$SECONDS
    STEP=$1
    shift
    say
    say "== $STEP"
    "$@"
    say "-- $STEP: done in $((SECONDS - began)) s"
    STEP=
}

# Server started by `serve_in_background`, ended with the script.
SERVER=

on_exit() {
    local status=$?
    if [ -n "$SERVER" ]; then kill "$SERVER" 2>/dev/null || true; fi
    if [ "$status" -ne 0 ] && [ -n "$STEP" ]; then
        printf '\nFAILED: %s (exit status %s)\n' "$STEP" "$status" >&2
    fi
}
trap on_exit EXIT

# The release page into dist/. Offline when the crates are all here already, so
# that a build neither needs the network nor waits for it; with the network
# otherwise. Trunk finds wasm-bindgen and wasm-opt on the path and downloads
# neither. It reads NO_COLOR as a boolean, which other programs do not.
build_release() {
    local flags=(--release --locked)
    if cargo fetch --locked --offline --target wasm32-unknown-unknown >/dev/null 2>&1; then
        flags+=(--offline)
    fi
    env -u NO_COLOR trunk build "${flags[@]}" "$@"
}

# compressed_copy FROM TO: the files of FROM, each text-like one with a brotli
# and a gzip twin beside it, as a good web host would hold them.
compressed_copy() {
    rm -rf "$2"
    mkdir -p "$(dirname "$2")"
    cp -R "$1" "$2"
    node tools/compress.mjs "$2"
}

# serve_in_background DIRECTORY PORT: serves it until the script ends, and
# returns once the server answers.
serve_in_background() {
    # sirv would quietly take another port.
    node -e 'require("net").createServer().once("error", () => process.exit(1)).listen(+process.argv[1], "127.0.0.1", () => process.exit(0))' "$2" ||
        die "port $2 is taken; choose another with --port"
    sirv "$1" --host 127.0.0.1 --port "$2" --brotli --gzip --etag --quiet &
    SERVER=$!
    local waited=0
    until node -e 'fetch(process.argv[1]).then(r => process.exit(r.ok ? 0 : 1), () => process.exit(1))' \
        "http://127.0.0.1:$2/"; do
        kill -0 "$SERVER" 2>/dev/null || die "the server for $1 ended at once"
        waited=$((waited + 1))
        [ "$waited" -lt 100 ] || die "the server for $1 does not answer"
        sleep 0.1
    done
}

# A port nobody listens on at this moment.
free_port() {
    node -e 'const s = require("net").createServer(); s.listen(0, "127.0.0.1", () => { console.log(s.address().port); s.close(); })'
}

# find_program VARIABLE NAME...: the path given in the environment variable, or
# the first name found on the path; nothing when there is neither.
find_program() {
    local variable=$1 name
    shift
    if [ -n "${!variable:-}" ]; then
        [ -x "${!variable}" ] || die "$variable is set to ${!variable}, which cannot be run"
        printf '%s\n' "${!variable}"
        return
    fi
    for name in "$@"; do
        if have "$name"; then
            command -v "$name"
            return
        fi
    done
}

find_chromium() { find_program CHROMIUM chromium chromium-browser google-chrome; }
find_chromedriver() { find_program CHROMEDRIVER chromedriver chromium.chromedriver; }
find_java() { find_program JAVA java; }
