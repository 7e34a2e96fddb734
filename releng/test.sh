#!/bin/bash
# Sets up what the machine lacks, builds everything afresh and runs every test. Arguments are passed on to Maven.
# Exit status 0: all is well; 1: something failed; 4: the machine could not be set up.
#
# MAVEN_REPO_LOCAL  a folder to use as local Maven repository
# shellcheck source=releng/setup.sh
source "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

log=$root/out/test.log
begun=$SECONDS
failed=()

# Bundles that hold tests: a test folder beside src, or a bundle of tests.
test_bundles() {
  (cd "$root" && find bundles -name target -prune -o -name '*Test.java' -print) | cut -d / -f 1-3 | sort -u
}

# attribute NAME: the sum of an attribute over the reports of one bundle, read from the first line of each suite.
sum() { grep -h -o "<testsuite .*" "${@:2}" | sed -n "s/.* $1=\"\([0-9]*\)\".*/\1/p" | awk '{ total += $1 } END { print total + 0 }'; }

# Prints one line a bundle and a total; fails if a test failed or a bundle ran none.
report_tests() {
  local bundle reports run bad skipped all=0 all_bad=0 all_skipped=0 status=0
  while read -r bundle; do
    mapfile -t reports < <(compgen -G "$root/$bundle/target/surefire-reports/TEST-*.xml" || true)
    run=0 bad=0 skipped=0
    if [ ${#reports[@]} -gt 0 ]; then
      run=$(sum tests "${reports[@]}")
      bad=$(($(sum failures "${reports[@]}") + $(sum errors "${reports[@]}")))
      skipped=$(sum skipped "${reports[@]}")
    fi
    printf '  %-58s %6d run %4d failed %4d skipped\n' "$bundle" "$run" "$bad" "$skipped"
    if [ $((run - skipped)) -le 0 ]; then
      echo "  ^ no test ran in this bundle, though it has some"
      status=1
    fi
    [ "$bad" = 0 ] || status=1
    all=$((all + run)) all_bad=$((all_bad + bad)) all_skipped=$((all_skipped + skipped))
  done < <(test_bundles)
  printf '  %-58s %6d run %4d failed %4d skipped\n' total "$all" "$all_bad" "$all_skipped"
  # the plain line that test counters of any language read
  printf '%d passed, %d failed, %d skipped\n' $((all - all_bad - all_skipped)) "$all_bad" "$all_skipped"
  [ "$all" -gt 0 ] && return "$status"
}

set_up tests
one_build_at_a_time
made_from=$(sources)
rm -f "$stamp"
say "Building and testing everything …"
# a screen of their own, so that test windows neither need nor disturb yours
on_screen=(xvfb-run -a -s "-screen 0 1400x900x24")
if build "$log" --fail-at-end clean verify "$@"; then record_product "$made_from"; else failed+=("the build"); fi
say "Comparing the generated model code with the model …"
MVN=$maven "$root/releng/emfgen/regenerate.sh" --check >&2 || failed+=("the generated code")

echo "Tests"
report_tests || failed+=("tests")
if [ ${#failed[@]} -gt 0 ]; then
  printf 'FAILED: %s (%d s). The log is %s\n' "$(printf '%s, ' "${failed[@]}" | sed 's/, $//')" $((SECONDS - begun)) "$log"
  exit 1
fi
printf 'All well, in %d s.\n' $((SECONDS - begun))
