#!/bin/bash
# regenerate.sh          generates src-gen of the model bundle afresh from model/coursewright.genmodel
# regenerate.sh --check  fails if the committed sources differ from a fresh generation
set -euo pipefail
cd "$(dirname "$0")"
root=$(cd ../.. && pwd)
name=org.coursewright.model
bundle=$root/bundles/model/$name
mvn=${MVN:-$root/.mvn-dist/apache-maven-3.9.11/bin/mvn}
# the class path is found anew when it is out of date or the local repository it points into is another or gone
made_for=${MAVEN_REPO_LOCAL:-default}
first_jar=$(cut -d : -f 1 target/cp.txt 2>/dev/null || true)
if ! { [ -f "$first_jar" ] && [ target/cp.txt -nt pom.xml ] && [ target/classes/EmfGen.class -nt src/main/java/EmfGen.java ] &&
  [ "$(cat target/made-for 2>/dev/null)" = "$made_for" ]; }; then
  "$mvn" -q -B -ntp ${MAVEN_REPO_LOCAL:+-Dmaven.repo.local="$MAVEN_REPO_LOCAL"} -f pom.xml \
    compile dependency:build-classpath -Dmdep.outputFile=target/cp.txt
  echo "$made_for" >target/made-for
fi
generate() {
  java -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Dfile.encoding=UTF-8 -cp "target/classes:$(cat target/cp.txt)" \
    EmfGen "$name" "$1" "$1/model/coursewright.genmodel"
}
if [ "${1:-}" = --check ]; then
  # from an empty folder: the generator's merger would keep hand edits of an existing file
  fresh=$(mktemp -d)
  trap 'rm -rf "$fresh"' EXIT
  mkdir "$fresh/$name"
  (cd "$bundle" && tar cf - --exclude=./target --exclude=./src-gen .) | (cd "$fresh/$name" && tar xf -)
  generate "$fresh/$name"
  diff -r -x target "$bundle" "$fresh/$name" || { echo "src-gen is not what the model gives: run releng/emfgen/regenerate.sh" >&2; exit 1; }
  echo "The generated sources are what the model gives."
else
  rm -rf "$bundle/src-gen"
  generate "$bundle"
fi
