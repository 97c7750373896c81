#!/usr/bin/env bash
# Makes solids of mutated recipes, each in a child process that is given up on after two minutes:
#   tools/mutants.sh [COUNT [FIRST_SEED]]     10000 from seed 1 on unless said otherwise
# Fails, telling the seeds, on a crash, a wait without end, a solid that rays do not agree with, or a failure that names
# no feature. Under sanitizers; some twenty a second.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
cmake --preset sanitize
cmake --build --preset sanitize --target sparewright_solid_tests
SPAREWRIGHT_MUTANTS=${1:-10000} SPAREWRIGHT_FIRST_MUTANT=${2:-1} \
  LSAN_OPTIONS=suppressions=$PWD/tests/leaks.supp:print_suppressions=0 \
  build/sanitize/tests/sparewright_solid_tests --gtest_filter='RecipeMutator.*'
