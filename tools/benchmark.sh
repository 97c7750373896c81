#!/usr/bin/env bash
# Builds and runs the benchmarks, each with its peer in the same run:   tools/benchmark.sh [--smoke]
# --smoke runs each a few times only, to see that they work; then no ratio can fail.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
cmake --preset release -DSPAREWRIGHT_BENCHMARKS=ON
cmake --build --preset release
build/release/benchmarks/numbers_benchmark benchmarks/bracket.numbers.txt benchmarks/numbers_peer.py "$@"
build/release/benchmarks/cold_check_benchmark build/release/bin/sparewright examples/bracket.job.toml \
  build/release/benchmarks/bare_kernel "$@"
build/release/benchmarks/solid_edit_benchmark "$@"
build/release/benchmarks/least_wall_benchmark "$@"
build/release/benchmarks/hidden_lines_benchmark "$@"
build/release/benchmarks/packet_benchmark tests/jobs/shift_lever.job.toml "$@"
build/release/benchmarks/packet_benchmark examples/bracket.job.toml --to-be-read "$@"
build/release/benchmarks/gear_trains_benchmark "$@"
