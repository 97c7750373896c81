#!/usr/bin/env bash
# Builds and runs the benchmarks, each with its peer in the same run:   tools/benchmark.sh [--smoke]
# All are run; the exit status says whether every ratio held. --smoke runs each a few times only, to see that they work;
# then no ratio can fail.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
cmake --preset release -DSPAREWRIGHT_BENCHMARKS=ON
cmake --build --preset release

outcome=0
# bench NAME ARGUMENTS...: one benchmark program; the rest still runs when it fails.
bench() {
  local name=$1
  shift
  build/release/benchmarks/"$name" "$@" || outcome=1
}

bench numbers_benchmark benchmarks/bracket.numbers.txt benchmarks/numbers_peer.py "$@"
bench after_edit_benchmark benchmarks/numbers_peer.py examples/*.job.toml "$@"
bench cold_checks_benchmark examples/*.job.toml "$@"
bench cold_check_benchmark build/release/bin/sparewright examples/bracket.job.toml build/release/benchmarks/bare_kernel "$@"
bench solid_edit_benchmark "$@"
bench least_wall_benchmark "$@"
bench hidden_lines_benchmark "$@"
bench packet_benchmark tests/jobs/shift_lever.job.toml "$@"
bench packet_benchmark examples/bracket.job.toml --to-be-read "$@"
bench gear_trains_benchmark "$@"
bench monte_carlo_benchmark benchmarks/monte_carlo_peer.py "$@"
bench survey_benchmark benchmarks/survey_peer.py "$@"
exit "$outcome"
