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

# What the plan follows from; while it is the same, so is the plan.
plan_basis() { sha256sum <"$demo" && product_files; }

plan_is_current() {
  local file
  for file in check.txt describe.txt lay.txt lay.json takeoff.txt price.txt price.pdf scenarios.txt; do
    [ -s "$out/$file" ] || return 1
  done
  [ -f "$out/plan-basis" ] && [ "$(cat "$out/plan-basis")" = "$(plan_basis)" ]
}

plan_demo() {
  local jobs=() job status=0
  ! plan_is_current || return 0
  mkdir -p "$out"
  rm -f "$out/plan-basis"
  say "Planning the demo building …"
  plan check.txt check "$demo" & jobs+=($!)
  plan describe.txt describe "$demo" & jobs+=($!)
  plan lay.txt lay "$demo" & jobs+=($!)
  plan lay.json lay "$demo" --format json & jobs+=($!)
  plan takeoff.txt takeoff "$demo" --resources --out "$out/takeoff.xlsx" & jobs+=($!)
  plan price.txt price "$demo" --out "$out/price.pdf" & jobs+=($!)
  plan scenarios.txt price "$demo" --compare --out "$out/scenarios.xlsx" & jobs+=($!)
  for job in "${jobs[@]}"; do
    wait "$job" || status=$?
  done
  [ "$status" = 0 ] || exit "$status"
  plan_basis >"$out/plan-basis"
}

# excerpt FILE LINES: the first lines of a result, cut to the width of a screen.
excerpt() { sed -n "1,$2p" "$out/$1" | cut -c 1-110 | sed 's/^/  /'; }

summary() {
  cat <<EOF

The demo building is planned: a small community clinic, from releng/demo/.

In outline
$(excerpt describe.txt 2)

Layout, wall by wall
$(excerpt lay.txt 40)

What it costs, with invented prices, and other ways to build it
$(excerpt scenarios.txt 10)

Findings, the gravest first
$(sed -n '2,5p' "$out/check.txt" | cut -c 1-110 | sed 's/^/  /')

Where to look next
  out/describe.txt   storeys, walls, openings      out/check.txt   all findings
  out/lay.txt        the layout above              out/lay.json    every run and piece, for other programs
  out/takeoff.txt    what it takes (also .xlsx)    out/price.txt   what it costs, line by line (also .pdf)
  out/scenarios.txt  ways to build it, side by side (also .xlsx)
  releng/run.sh lay releng/demo/clinic.coursewright --wall W1      the courses of one wall
  releng/run.sh workbench                                          the clinic in a window
  releng/run.sh help                                               all headless commands

This is a plan, not structural design; README.md says what to heed before you build from it.
EOF
}

names_project() {
  local argument
  for argument; do
    case $argument in
      -project | *.coursewright) return 0 ;;
    esac
  done
  return 1
}

open_workbench() {
  if [ -z "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    say "There is no screen here (DISPLAY is not set). To try the window without one:"
    say "  apt-get install xvfb xauth && xvfb-run -a releng/run.sh workbench"
    exit 2
  fi
  if ! names_project "$@"; then
    # a copy, so that what you try out does not change the demo under version control
    mkdir -p "$out"
    [ -e "$out/clinic.coursewright" ] || cp "$demo" "$out/clinic.coursewright"
    set -- "$@" "$out/clinic.coursewright"
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
