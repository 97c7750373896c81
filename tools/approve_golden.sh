#!/bin/sh
# Takes what the golden tests found (build/golden) over into tests/golden, after showing the differences.
set -eu
cd "$(dirname "$0")/.."
[ -d build/golden ] || { echo "nothing to approve"; exit 0; }
diff -ru tests/golden build/golden | grep -v '^Only in tests/golden' || true
printf 'Take these over? [y/N] '
read -r answer
[ "$answer" = y ] || exit 1
(cd build/golden && find . -type f) | while read -r file; do
  mkdir -p "tests/golden/$(dirname "$file")"
  cp "build/golden/$file" "tests/golden/$file"
done
rm -r build/golden
