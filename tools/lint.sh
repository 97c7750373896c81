#!/usr/bin/env bash
# clang-tidy 14 (.clang-tidy) over the C++ that changed against the last commit; where nothing did, over what the last
# commit changed.   tools/lint.sh          what changed
#                   tools/lint.sh --all    everything
# Headers are linted alone, by the sources that verify them. Uses build/dev, or the build directory in BUILD.
set -euo pipefail
cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.."

build=${BUILD:-build/dev}
if [[ ! -f $build/compile_commands.json ]]; then cmake --preset dev -B "$build" >/dev/null; fi

changed_files() {
  local git=(git -c "safe.directory=$PWD") changed
  changed=$("${git[@]}" diff --name-only HEAD && "${git[@]}" ls-files --others --exclude-standard)
  if [[ -z $changed ]]; then changed=$("${git[@]}" diff --name-only HEAD~1 HEAD); fi
  printf '%s\n' "$changed"
}

case ${1-} in
  '') changed_files >"$build/lint.files" ;;
  --all) echo '*' >"$build/lint.files" ;;
  *)
    echo "usage: tools/lint.sh [--all]" >&2
    exit 2
    ;;
esac

# g++'s precompiled header and its own warning flags mean nothing to clang: a second database without them.
mkdir -p "$build/lint"
/usr/bin/python3 tools/commands_for_clang.py "$build/compile_commands.json" "$build/lint/compile_commands.json" \
  <"$build/lint.files" >"$build/lint.sources"
count=$(tr -cd '\0' <"$build/lint.sources" | wc -c)
echo "lint: $count files"
xargs -0 -r -n 1 -P "$(nproc)" clang-tidy --quiet -p "$build/lint" <"$build/lint.sources" 2> >(grep -v 'warnings generated' >&2)
echo "lint: clean"
