# SPDX-FileCopyrightText: The infiltration library contributors
# SPDX-License-Identifier: Apache-2.0
#
# Sourced by the launchers: builds what is missing or older than its sources, and finds Java.
# Standard output belongs to the command alone: what a build has to say goes to standard error.

examples="$(cd "$(dirname "${BASH_SOURCE[0]}")/../../.." && pwd -P)"
root="$(dirname "$examples")"
target="$examples/target"
jar="$target/infiltration-examples.jar"
lib="$target/lib"
stamp="$target/launch.stamp"

# Without a locale Java would read and write file names and text as ASCII.
case "${LC_ALL:-${LC_CTYPE:-${LANG:-}}}" in
    '' | C | POSIX) export LC_ALL=C.UTF-8 ;;
esac

die() {
    printf '%s: %s\n' "$(basename "$0")" "$1" >&2
    exit 2
}

jdk() { # TOOL: its path
    if [[ -n ${JAVA_HOME:-} ]]; then
        [[ -x $JAVA_HOME/bin/$1 ]] || die "no $1 in JAVA_HOME ($JAVA_HOME)"
        printf '%s' "$JAVA_HOME/bin/$1"
    else
        command -v "$1" || die "no $1 on the PATH: install a JDK, 17 or later, or set JAVA_HOME"
    fi
}

# A folder counts too: its time changes when a file in it goes.
fresh() {
    [[ -f $stamp && -f $jar && -d $lib ]] &&
        [[ -z $(find "$root/pom.xml" "$root"/infiltration-*/{pom.xml,src/main} -newer "$stamp" -print -quit) ]]
}

build() {
    command -v mvn >/dev/null || die "no mvn on the PATH: install Maven, 3.8.7 or later"
    local started
    mkdir -p "$target"
    rm -f "$target"/launch.?????? # of a killed build; the stamp and the lock have shorter names
    started="$(mktemp "$target/launch.XXXXXX")" # what changes while the build runs is newer than this
    rm -rf "$stamp" "$lib"
    if ! mvn -q -B -f "$root/pom.xml" -Dstyle.color=never -Dmaven.test.skip=true -Dmaven.source.skip=true \
        -pl infiltration-examples -am package </dev/null >&2; then
        rm -f "$started"
        die "the build failed"
    fi
    mv "$started" "$stamp"
}

# Two launches at once build once, where the system has flock.
ensure_built() {
    fresh && return
    { mkdir -p "$target" && [[ -w $target ]] && : >>"$target/launch.lock"; } 2>/dev/null ||
        die "the build is missing or older than its sources, and $target cannot be written to: run from a writable copy"
    exec 9>"$target/launch.lock"
    ! command -v flock >/dev/null || flock 9
    fresh || build
    exec 9>&-
}
