#!/bin/bash
# Measures the engines. Compiles their sources and the benchmarks, then runs one of
#
#   releng/benchmarks/run.sh compare [BUILDINGS SEED SECONDS]   small buildings against a general-purpose solver
#   releng/benchmarks/run.sh growing [BUILDINGS SEED SECONDS]   the same while walls grow
#   releng/benchmarks/run.sh claims [WALLS SEED SECONDS]        claims of optimality on full-sized walls
#   releng/benchmarks/run.sh oracles [BUILDINGS SEED]           the solver against trying everything, the verifier against spoiled layouts
#   releng/benchmarks/run.sh scale [SEED]                       time and memory for 5, 20, 60 and 200 walls
#   releng/benchmarks/run.sh moves [SEED]                       one opening moved, the building laid again
#   releng/benchmarks/run.sh advice [SEED]                      changes of dimensions that spare cuts
#   releng/benchmarks/run.sh coordinated                        sixty walls on the module
#   releng/benchmarks/run.sh takeoff                            take-off, price and simulation of 20,000 units
#   releng/benchmarks/run.sh jmh [JMH OPTIONS]                  JMH benchmarks, time on the clock; the result goes to target
#
# Reports go to docs/benchmarks, or to the folder named by REPORTS. Exit status 1: the engine is refuted by an oracle.
# HEAP  heap to run in; 256m if not set, the goal for sixty walls
# MVN  the Maven to use; the one that releng/setup.sh fetches if not set
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../.." && pwd)
reports=${REPORTS:-$root/docs/benchmarks}
mvn=${MVN:-$(ls "$root"/.mvn-dist/apache-maven-*/bin/mvn 2>/dev/null || echo mvn)}
target=$here/target

compile() {
  local path=$target/classpath.txt
  if ! [ "$path" -nt "$here/pom.xml" ]; then
    "$mvn" -q -B -ntp ${MAVEN_REPO_LOCAL:+-Dmaven.repo.local="$MAVEN_REPO_LOCAL"} -f "$here/pom.xml" \
      dependency:build-classpath -Dmdep.outputFile="$path"
  fi
  rm -rf "$target/classes"
  mkdir -p "$target/classes" "$reports"
  find "$root"/bundles/engines/org.coursewright.{measure,bond}/src "$here/src" -name '*.java' >"$target/sources.txt"
  javac --release 17 -Xlint:all,-processing -d "$target/classes" -cp "$(cat "$path")" @"$target/sources.txt"
  classpath=$target/classes:$(cat "$path")
}

# The take-off is measured from the model on, so that core and the model are compiled too.
takeoff() {
  local path=$target/takeoff-classpath.txt classes=$target/takeoff-classes bundles=$root/bundles
  mkdir -p "$target"
  if ! [ "$path" -nt "$here/takeoff/pom.xml" ]; then
    "$mvn" -q -B -ntp ${MAVEN_REPO_LOCAL:+-Dmaven.repo.local="$MAVEN_REPO_LOCAL"} -f "$here/takeoff/pom.xml" \
      dependency:build-classpath -Dmdep.outputFile="$path"
  fi
  rm -rf "$classes"
  mkdir -p "$classes" "$reports"
  local sources=("$bundles"/engines/org.coursewright.{measure,bond,takeoff}/src "$bundles"/model/org.coursewright.model/src-gen
    "$bundles"/model/org.coursewright.model.edit/src "$bundles"/headless/org.coursewright.core/src)
  find "${sources[@]}" "$here/takeoff" -name '*.java' >"$target/takeoff-sources.txt"
  javac --release 17 -nowarn -d "$classes" -cp "$(cat "$path")" @"$target/takeoff-sources.txt"
  local folder
  for folder in "${sources[@]}"; do
    (cd "$folder" && find . -type f ! -name '*.java' -exec cp --parents {} "$classes" \;)
  done
  java -Xmx512m -XX:+UseSerialGC -cp "$classes:$(cat "$path")" org.coursewright.benchmarks.takeoff.TakeoffSpeed \
    "$reports/takeoff-speed.md"
}

main() {
  local program=org.coursewright.benchmarks.$1
  shift
  # one core: walls are worked on one after another
  java "-Xmx${HEAP:-256m}" -XX:+UseSerialGC -Djava.util.concurrent.ForkJoinPool.common.parallelism=0 -cp "$classpath" "$program" "$@"
}

command=${1:-}
shift || true
case $command in
  compare) compile && main Comparison "${1:-480}" "${2:-1}" "${3:-1.5}" "$reports/bond-comparison.md" ;;
  growing) compile && HEAP=6g main GrowingComparison "${1:-24}" "${2:-1}" "${3:-6}" "$reports/bond-growing.md" ;;
  claims) compile && HEAP=2g main Claims "${1:-60}" "${2:-1}" "${3:-4}" "$reports/bond-claims.md" ;;
  oracles) compile && main OracleCheck "${1:-120}" "${2:-3}" ;;
  scale) compile && main Scale "${1:-1}" "$reports" ;;
  moves) compile && main Moves "${1:-1}" "$reports/bond-moves.md" ;;
  advice) compile && main Advices "${1:-1}" "$reports/bond-advice.md" ;;
  coordinated) compile && main Coordinated "$reports/bond-coordinated.md" ;;
  takeoff) takeoff ;;
  jmh) compile && java -cp "$classpath" org.openjdk.jmh.Main -rff "$target/bond-jmh.json" -rf json "$@" ;;
  *) sed -n '2,/^set/{/^#/s/^# \{0,1\}//p}' "${BASH_SOURCE[0]}"; exit 2 ;;
esac
