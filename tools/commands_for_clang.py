#!/usr/bin/env python3
"""Makes a compile_commands.json that clang can read out of one written for g++.

commands_for_clang.py FROM TO <NAMES     NAMES: paths from the top, one a line; '*' for all. Prints, each ended by a NUL,
the sources to lint: those named, and for a header the source that verifies it alone.
"""

import json
import os
import pathlib
import shlex
import sys


def clang_arguments(command):
    """The compiler and its arguments, without launcher, precompiled header and warnings."""
    words = shlex.split(command)
    start = next(i for i, word in enumerate(words) if os.path.basename(word) in ("g++", "c++"))
    kept = ["clang++"]
    skip = False
    for word in words[start + 1 :]:
        if skip:
            skip = False
        elif word == "-include":
            skip = True
        elif not word.startswith(("-W", "-fsanitize", "-fno-sanitize")):
            kept.append(word)
    return kept


def is_named(source, root, names):
    """Whether a source is to be linted, or verifies a header that is."""
    if "*" in names:
        return True
    verified = source.with_suffix("") if source.suffix == ".cxx" else source
    if source.is_relative_to(root) and source.relative_to(root).as_posix() in names:
        return True
    return any(name.endswith(".hpp") and verified.as_posix().endswith("/" + name) for name in names)


def main():
    written, wanted = map(pathlib.Path, sys.argv[1:3])
    root = pathlib.Path.cwd()
    names = set(sys.stdin.read().splitlines())
    entries = json.loads(written.read_text(encoding="utf-8"))
    kept = []
    for entry in entries:
        source = pathlib.Path(entry["directory"], entry["file"])
        ours = source.suffix == ".cpp" and source.name != "pch.cpp" or source.name.endswith(".hpp.cxx")
        if not ours or not source.is_file():
            continue
        kept.append({"directory": entry["directory"], "file": str(source), "arguments": clang_arguments(entry["command"])})
        if is_named(source, root, names):
            sys.stdout.write(f"{source}\0")
    wanted.write_text(json.dumps(kept, indent=1), encoding="utf-8")


if __name__ == "__main__":
    main()
