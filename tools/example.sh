#!/usr/bin/env bash
# Does the main job on the example:   tools/example.sh PROGRAM
# Checks the bracket, prints its order of work and writes its sheets and its solid to build/example/.
set -euo pipefail
program=$(realpath -- "$1")
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
mkdir -p build/example

run() {
  printf '\n$ sparewright %s\n' "$*"
  "$program" "$@"
}
run check examples/bracket.job.toml
run why examples/bracket.job.toml "feature/pivot bore/diameter/aim"
run order examples/bracket.job.toml
run sheets examples/bracket.job.toml -o build/example/bracket.pdf
run solid examples/bracket.job.toml -o build/example/bracket.step
printf '\nThe sheets are in build/example/bracket.pdf, the solid in build/example/bracket.step.\n'
