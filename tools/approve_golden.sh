#!/usr/bin/env bash
# Takes over what the golden tests found, after it was looked at:   tools/approve_golden.sh
# A test that differs writes what it found under build/golden; this copies it all to tests/golden.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."
if [[ ! -d build/golden ]]; then
  echo "Nothing was found to differ: there is no build/golden."
  exit 0
fi
cp -Rv -- build/golden/. tests/golden/
rm -rf -- build/golden
