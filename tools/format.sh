#!/usr/bin/env bash
# Formats all of our C++ (clang-format 14, .clang-format).   tools/format.sh          rewrites the files
#                                                           tools/format.sh --check  only says what is not formatted
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."

mode=(-i)
case ${1-} in
  '') ;;
  --check) mode=(--dry-run -Werror --ferror-limit=1) ;;
  *)
    echo "usage: tools/format.sh [--check]" >&2
    exit 2
    ;;
esac

directories=()
for directory in core solid drawing sheets app store cli server tests benchmarks; do
  if [[ -d $directory ]]; then directories+=("$directory"); fi
done
find "${directories[@]}" -type f \( -name '*.cpp' -o -name '*.hpp' \) -print0 |
  xargs -0 -r -n 20 -P "$(nproc)" clang-format "${mode[@]}"
if [[ ${1-} == --check ]]; then echo "format: as .clang-format wants it"; fi
