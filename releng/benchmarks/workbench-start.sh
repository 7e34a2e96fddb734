#!/bin/bash
# Measures how long the workbench takes from its start until the window bears the name of the demo, which is then in the navigator.
#
#   releng/benchmarks/workbench-start.sh [STARTS] [PRODUCT]
#
# STARTS  how many starts to measure, 5 if not given; the first one makes the settings and is told apart
# PRODUCT folder of the built product; that of the last build if not given
# Needs xdotool, and xvfb-run if there is no screen. Prints a line for each start: seconds on the clock, seconds of the processor.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../.." && pwd)
starts=${1:-5}
product=${2:-$root/releng/org.coursewright.product/target/products/org.coursewright.product/linux/gtk/x86_64}
name=$(sed -n 's/.*<project:Project.* name="\([^"]*\)".*/\1/p' "$root/releng/demo/clinic.coursewright" | head -1)
if [ -z "${DISPLAY:-}" ]; then
  exec xvfb-run -a -s '-screen 0 1400x900x24' "$0" "$starts" "$product"
fi
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cp "$root/releng/demo/clinic.coursewright" "$work/"

# end_of PROCESS: waits until it has ended; now and then the virtual machine hangs when it is told to end while it starts.
end_of() {
  local i
  for ((i = 0; i < 50; i++)); do
    kill -0 "$1" 2>/dev/null || break
    sleep 0.1
  done
  kill -9 "$1" 2>/dev/null || true
  wait "$1" 2>/dev/null || true
}

for ((i = 1; i <= starts; i++)); do
  begin=$(date +%s%N)
  "$product/coursewright-workbench" -data "$work/settings" "$work/clinic.coursewright" >"$work/log" 2>&1 &
  process=$!
  until xdotool search --name "$name" >/dev/null 2>&1; do
    kill -0 "$process" || { cat "$work/log" >&2; exit 1; }
    sleep 0.05
  done
  end=$(date +%s%N)
  ticks=$(awk '{print $14 + $15}' "/proc/$process/stat")
  awk -v i="$i" -v ns=$((end - begin)) -v ticks="$ticks" -v hz="$(getconf CLK_TCK)" \
    'BEGIN {printf "start %d%s: %.1f s on the clock, %.1f s of the processor\n", i, i == 1 ? " (new settings)" : "", ns / 1e9, ticks / hz}'
  kill "$process"
  end_of "$process"
done
