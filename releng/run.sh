#!/bin/bash
# The one command: sets up what the machine lacks, builds what has changed, and runs.
#
#   releng/run.sh                       plans the demo building into out/ and says where to look next
#   releng/run.sh workbench [PROJECT]   opens the window, on the demo if no project is named
#   releng/run.sh COMMAND …             any headless command; its exit status is passed on
#
# Paths are taken from the folder it is called in. Exit status 4: the machine could not be set up or the build failed.
# MAVEN_REPO_LOCAL  a folder to use as local Maven repository
# shellcheck source=releng/setup.sh
source "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

demo=$root/releng/demo/clinic.coursewright
out=$root/out

# plan FILE COMMAND…: one headless command on the demo, its result in out/FILE. Status 1 only says there are findings.
plan() {
  local file=$1 status=0
  shift
  "$product/coursewright" "$@" >"$out/$file" || status=$?
  if [ "$status" -gt 1 ] || [ ! -s "$out/$file" ]; then
    say "coursewright $* ended with status $status and wrote $(wc -c <"$out/$file") bytes."
    return 3
  fi
}

plan_demo() {
  local jobs=() job status=0
  mkdir -p "$out"
  plan check.txt check "$demo" & jobs+=($!)
  plan describe.txt describe "$demo" & jobs+=($!)
  plan lay.txt lay "$demo" & jobs+=($!)
  plan lay.json lay "$demo" --format json & jobs+=($!)
  for job in "${jobs[@]}"; do
    wait "$job" || status=$?
  done
  [ "$status" = 0 ] || exit "$status"
}

summary() {
  cat <<EOF

The demo building is planned: a community clinic, from releng/demo/.

$(head -n 3 "$out/describe.txt")

Findings (check):
$(head -n 6 "$out/check.txt")

Layout (lay):
$(tail -n 6 "$out/lay.txt")

Where to look next
  out/describe.txt   the building in outline       out/check.txt   all findings
  out/lay.txt        every course of every wall    out/lay.json    the same for other programs
  releng/run.sh workbench                          opens the clinic in a window
  releng/run.sh help                               the headless commands
  README.md                                        what it does and what it does not do
EOF
}

open_workbench() {
  if [ -z "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    say "There is no screen here (DISPLAY is not set). To try the window without one:"
    say "  apt-get install xvfb xauth && xvfb-run -a releng/run.sh workbench"
    exit 2
  fi
  if [ $# = 0 ]; then
    # a copy, so that what you try out does not change the demo under version control
    mkdir -p "$out"
    [ -e "$out/clinic.coursewright" ] || cp "$demo" "$out/clinic.coursewright"
    set -- "$out/clinic.coursewright"
  fi
  exec "$product/coursewright-workbench" "$@"
}

case ${1:-} in
  workbench) set_up window ;;
  *) set_up headless ;;
esac
make_product
case ${1:-} in
  '')
    plan_demo
    summary
    ;;
  workbench)
    shift
    open_workbench "$@"
    ;;
  *) exec "$product/coursewright" "$@" ;;
esac
