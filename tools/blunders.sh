#!/usr/bin/env bash
# Plants misreadings in readings as a shop takes them, and tells how often each is named:
#   tools/blunders.sh [SETS]     1000 unless said otherwise; ten times as many without any, for false alarms
# Under sanitizers; ./test does 50.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
cmake --preset sanitize
cmake --build --preset sanitize --target sparewright_survey_tests
SPAREWRIGHT_SURVEYS=${1:-1000} LSAN_OPTIONS=suppressions=$PWD/tests/leaks.supp:print_suppressions=0 \
  build/sanitize/tests/sparewright_survey_tests --gtest_filter='Planted*'
