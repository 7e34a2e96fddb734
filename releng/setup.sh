#!/bin/bash
# Sets up whatever a fresh Debian machine lacks, and builds. Sourced by the other scripts here; run by itself it only
# sets up, for headless work, or with the argument "window" or "tests" for what those need as well.
#
# MAVEN_REPO_LOCAL  a folder to use as local Maven repository (an empty one makes a clean-room build)

set -euo pipefail

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
maven_version=3.9.11
maven=$root/.mvn-dist/apache-maven-$maven_version/bin/mvn
case $(uname -m) in
  aarch64 | arm64) arch=aarch64 ;;
  *) arch=x86_64 ;;
esac
product=$root/releng/org.coursewright.product/target/products/org.coursewright.product/linux/gtk/$arch
stamp=$root/target/product-made-from
on_screen=() # the command that gives Maven a screen, where tests need one

# Exit status when the machine could not be set up or the build failed; below it are those of the headless commands.
readonly CANNOT_BUILD=4

say() { printf '%s\n' "$*" >&2; }
give_up() {
  say "$@"
  exit "$CANNOT_BUILD"
}

# The major version of the JDK in a folder; 0 if there is none with a compiler.
jdk_version() {
  local version=
  [ ! -x "$1/bin/javac" ] || version=$(sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$1/release" 2>/dev/null) || true
  echo "${version:-0}"
}

# Makes JAVA_HOME a JDK of 17 or later and fails if there is none.
find_jdk() {
  local candidate
  for candidate in "${JAVA_HOME:-}" "$(command -v javac || true)" /usr/lib/jvm/*; do
    [ -n "$candidate" ] || continue
    case $candidate in
      */javac) candidate=$(dirname "$(dirname "$(readlink -f "$candidate")")") ;;
    esac
    if [ "$(jdk_version "$candidate")" -ge 17 ]; then
      export JAVA_HOME=$candidate JAVA=$candidate/bin/java PATH=$candidate/bin:$PATH
      return
    fi
  done
  return 1
}

has_library() { PATH=$PATH:/sbin:/usr/sbin ldconfig -p | grep -F "$1" >/dev/null; }
has_fonts() { compgen -G '/usr/share/fonts/*' >/dev/null || compgen -G '/usr/local/share/fonts/*' >/dev/null; }

# The first of the named packages that this release of Debian offers; the last if it offers none of them.
offered() {
  local name
  for name; do
    if apt-cache policy "$name" 2>/dev/null | grep 'Candidate: [0-9]' >/dev/null; then
      break
    fi
  done
  echo "$name"
}

# lacking headless|window|tests: prints one alternative of Debian packages a line for each thing the machine lacks.
lacking() {
  find_jdk || echo openjdk-17-jdk-headless openjdk-21-jdk-headless default-jdk-headless
  command -v mvn >/dev/null || [ -x "$maven" ] || echo maven
  command -v flock >/dev/null || echo util-linux
  [ "$1" != headless ] || return 0
  has_library libgtk-3.so.0 || echo libgtk-3-0 libgtk-3-0t64
  # without any font the window shows empty boxes for letters
  has_fonts || echo fonts-dejavu-core
  [ "$1" != window ] || return 0
  command -v Xvfb >/dev/null && command -v xvfb-run >/dev/null || echo xvfb
  command -v xauth >/dev/null || echo xauth
}

install_packages() {
  local alternatives=("$@") packages=() choice sudo=()
  command -v apt-get >/dev/null || give_up "This machine lacks: ${alternatives[*]}." \
    "It has no apt-get, so please install them by its own means and start again."
  if [ "$(id -u)" != 0 ]; then
    command -v sudo >/dev/null || give_up "This machine lacks: ${alternatives[*]}." \
      "Installing them takes root: run 'apt-get install' for them as root and start again."
    sudo=(sudo)
  fi
  say "Installing what this machine lacks: ${alternatives[*]} …"
  "${sudo[@]}" apt-get update -qq >&2
  for choice in "${alternatives[@]}"; do
    # shellcheck disable=SC2086 # a list of names
    packages+=("$(offered $choice)")
  done
  "${sudo[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends \
    "${packages[@]}" >&2 </dev/null
}

fetch_maven() {
  [ ! -x "$maven" ] || return 0
  say "Fetching Maven $maven_version …"
  local empty
  empty=$(mktemp -d)
  # outside the repository: the installed Maven may be too old for this project's settings
  if ! (cd "$empty" && mvn -q -B -ntp org.apache.maven.plugins:maven-dependency-plugin:3.8.1:unpack \
    -Dartifact="org.apache.maven:apache-maven:$maven_version:tar.gz:bin" -DoutputDirectory="$empty/unpacked" \
    ${MAVEN_REPO_LOCAL:+-Dmaven.repo.local="$MAVEN_REPO_LOCAL"}) >"$empty/log" 2>&1 </dev/null; then
    what_matters <"$empty/log" >&2
    rm -r "$empty"
    give_up "Maven $maven_version could not be fetched. Is Maven Central within reach?"
  fi
  chmod +x "$empty/unpacked/apache-maven-$maven_version/bin/mvn"
  # moved as a whole, so that a fetch cut short leaves nothing that looks complete
  mkdir -p "$root/.mvn-dist"
  mv "$empty/unpacked/apache-maven-$maven_version" "$root/.mvn-dist/"
  rm -r "$empty"
}

# set_up headless|window|tests
set_up() {
  local alternatives
  mapfile -t alternatives < <(lacking "$1")
  if [ ${#alternatives[@]} -gt 0 ]; then
    install_packages "${alternatives[@]}" || give_up "The packages could not be installed; see above."
  fi
  find_jdk || give_up "No JDK of 17 or later was found, in JAVA_HOME, on the PATH or in /usr/lib/jvm."
  fetch_maven
}

# Reads a Maven log and prints one line for each module begun.
progress() {
  local line name count shown
  while IFS= read -r line; do
    case $line in
      '[INFO] Building '*' ['*/*']')
        read -r name _ count <<<"${line#'[INFO] Building '}"
        shown="$count $name"
        if [ -t 2 ]; then printf '\r\033[K  %s' "$shown" >&2; else say "  $shown"; fi
        ;;
    esac
  done
  [ ! -t 2 ] || printf '\r\033[K' >&2
}

# Reads a Maven log and prints its errors, without Maven's advice on itself.
what_matters() {
  sed -n -e 's/ *-> \[Help 1\]//' -e '/Help 1\] http/d' -e '/^\[ERROR\] *$/d' \
    -e '/-[eX] switch\|possible solutions\|you can resume\|mvn <args>\|See dump files/d' \
    -e '/^\[ERROR\]\|^\[FATAL\]\|^Caused by\|Tests run:.*FAIL/p' | sed -n 1,40p | cut -c 1-300
}

# build LOG MAVEN-ARGUMENT…: everything Maven says goes to the log; on failure what matters of it is shown.
build() {
  local log=$1
  shift
  mkdir -p "$(dirname "$log")"
  if (cd "$root" && exec 8>&- "${on_screen[@]}" "$maven" -B -ntp -Dplatform.arch="$arch" \
    ${MAVEN_REPO_LOCAL:+-Dmaven.repo.local="$MAVEN_REPO_LOCAL"} "$@" 2>&1 </dev/null) | tee "$log" | progress; then
    return
  fi
  say "The build failed:"
  what_matters <"$log" >&2
  say "The whole log is in $log"
  return 1
}

# The files a product is made from, each with its checksum.
sources() {
  (cd "$root" && find pom.xml .mvn bundles features releng \
    \( -name target -o -name test -o -name '*.tests' -o -name testkit -o -name demo -o -name benchmarks -o -name emfgen -o -name '*.sh' \) -prune \
    -o -type f -print0 | LC_ALL=C sort -z | xargs -0 sha256sum)
}

# What a product consists of; a build by other means changes the times.
product_files() { find "$product/plugins" -printf '%f %s %T@\n' 2>/dev/null | LC_ALL=C sort; }

product_is_current() { [ -f "$stamp" ] && [ "$(cat "$stamp")" = "$1"$'\n'"$(product_files)" ]; }

# record_product SOURCES, taken before the build so that an edit made while it ran is not missed
record_product() {
  mkdir -p "$(dirname "$stamp")"
  { printf '%s\n' "$1" && product_files; } >"$stamp"
}

# Two builds at once would spoil each other's files. Held until the script ends or file 8 is closed.
one_build_at_a_time() {
  mkdir -p "$root/out"
  exec 8>"$root/out/build.lock"
  flock --nonblock 8 || {
    say "Another build is running here; waiting for it …"
    flock 8
  }
}

# Builds the product for this machine, without tests, if anything it is made from has changed.
make_product() {
  local made_from
  made_from=$(sources)
  ! product_is_current "$made_from" || return 0
  one_build_at_a_time
  made_from=$(sources)
  if ! product_is_current "$made_from"; then
    say "Building (the first time takes some minutes) …"
    rm -f "$stamp"
    build "$root/out/build.log" -Dproduct.only verify || exit "$CANNOT_BUILD"
    record_product "$made_from"
  fi
  exec 8>&-
}

if [ "${BASH_SOURCE[0]}" = "$0" ]; then
  set_up "${1:-headless}"
fi
