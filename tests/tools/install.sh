# SPDX-License-Identifier: MIT
# Sourced by plates/draw and tests/run: the Debian packages that building and testing need, and how missing ones are installed.
# shellcheck shell=bash

# shellcheck disable=SC2034  # used by the scripts that source this file
build_packages=(
    g++ cmake ninja-build pkg-config ccache
    libyaml-cpp-dev libcli11-dev nlohmann-json3-dev libpugixml-dev lib2geom-dev libpolyclipping-dev libboost-dev
    libcairo2-dev librsvg2-dev libpango1.0-dev libharfbuzz-dev libfontconfig-dev libpng-dev zlib1g-dev libhyphen-dev
    fonts-ebgaramond fonts-ebgaramond-extra hyphen-en-gb hyphen-fr hyphen-de
)
# shellcheck disable=SC2034
test_packages=(
    libgtest-dev clang clang-format clang-tidy
    git diffutils shellcheck librsvg2-bin libxml2-utils qpdf poppler-utils chromium nodejs python3 python3-ezdxf python3-shapely
)

# install_missing PACKAGE...: quick and silent when nothing is missing; needs root or sudo when something is.
install_missing() {
    local missing=() package as_root=()
    for package in "$@"; do
        # shellcheck disable=SC2016  # dpkg's own ${…}, not the shell's
        [[ $(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null) == installed ]] || missing+=("$package")
    done
    # Node.js from elsewhere than Debian brings its own npm, and Debian's would quarrel with it.
    if [[ " $* " == *" nodejs "* ]] && ! command -v npm >/dev/null; then
        missing+=(npm)
    fi
    [[ ${#missing[@]} -eq 0 ]] && return
    echo "installing: ${missing[*]}"
    if [[ $(id -u) -ne 0 ]]; then
        if ! command -v sudo >/dev/null; then
            echo "these Debian packages are missing and only root can install them: ${missing[*]}" >&2
            return 1
        fi
        as_root=(sudo)
    fi
    "${as_root[@]}" apt-get update -qq
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
}

# configure FOLDER CMAKE-OPTION...: says something only when it fails.
configure() {
    local folder=$1
    shift
    cmake -S . -B "$folder" -G Ninja -DCMAKE_CXX_COMPILER_LAUNCHER=ccache "$@" >"$folder.log" 2>&1 || {
        cat "$folder.log" >&2
        return 1
    }
}

# build_program FOLDER CMAKE-OPTION...: configures (anew only where something changed) and builds with two jobs.
build_program() {
    configure "$@"
    ninja -C "$1" -j2
}
