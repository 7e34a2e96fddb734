#!/bin/bash
# Runs every test under JaCoCo and prints the line coverage of each bundle's hand-written code. The figures count all
# tests together, those in OSGi included; what tests start as a process of its own is not seen.
# The browsable report goes to out/coverage/report. Exit status as for releng/test.sh.
# shellcheck source=releng/setup.sh
source "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

jacoco_version=$(sed -n 's/.*<jacoco.version>\(.*\)<.*/\1/p' "$root/pom.xml")
cli=$root/.mvn-dist/org.jacoco.cli-$jacoco_version-nodeps.jar
data=$root/out/coverage

# report FILES CSV [more options]: one report over the named class folders
report() {
  local arguments=() folder
  while IFS= read -r folder; do arguments+=(--classfiles "$folder"); done <<<"$1"
  java -jar "$cli" report "$data/jacoco.exec" "${arguments[@]}" --csv "$2" "${@:3}" >/dev/null
}

# Reads a CSV report and prints lines covered, lines in all and the share. Columns 8 and 9 are lines missed and covered.
lines() { awk -F, -v name="$1" 'NR > 1 { missed += $8; covered += $9 } END {
  if (missed + covered > 0) printf "  %-40s %6d of %6d lines  %5.1f %%\n", name, covered, missed + covered, 100 * covered / (missed + covered) }' "$2"; }

rm -rf "$data"
mkdir -p "$data"
status=0
"$root/releng/test.sh" -Pcoverage || status=$?
[ -s "$data/jacoco.exec" ] || give_up "No coverage data was written."
[ -s "$cli" ] || (cd "$root" && "$maven" -q -B -ntp ${MAVEN_REPO_LOCAL:+-Dmaven.repo.local="$MAVEN_REPO_LOCAL"} -N \
  dependency:copy -Dartifact="org.jacoco:org.jacoco.cli:$jacoco_version:jar:nodeps" -DoutputDirectory="$root/.mvn-dist")
find_jdk

echo "Line coverage"
all=()
sources=()
for bundle in "$root"/bundles/{engines,model,headless,ui}/*/; do
  name=$(basename "$bundle")
  # generated code and stand-ins for foreign classes say nothing about our tests
  if [ -d "$bundle/src" ] && [ -d "$bundle/target/classes" ] && ! [[ $name =~ \.(tests|compat)$ ]]; then
    report "${bundle}target/classes" "$data/$name.csv"
    lines "$name" "$data/$name.csv"
    all+=("${bundle}target/classes")
    sources+=(--sourcefiles "${bundle}src")
  fi
done
report "$(printf '%s\n' "${all[@]}")" "$data/all.csv" --html "$data/report" --name Coursewright "${sources[@]}"
lines total "$data/all.csv"
echo "Browse $data/report/index.html"
exit "$status"
