#!/usr/bin/env python3
"""Checks what no compiler reads.

* Paths named in backticks in README.md and docs/ exist, so that the docs cannot rot.
* A source file has at most 600 lines and a function at most 80 (docs/contributing.md), unless a comment in the first 30
  lines of the file, or in the three before the function, says 'long because ...'.
* No mark of unfinished work stays behind.
* Every table under core/handbook/data names its source.

Usage: check_text.py     or     check_text.py --self-test
"""

import argparse
import json
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parent.parent
SKIPPED_DIRECTORIES = {".git", "build", "node_modules", "__pycache__"}
SOURCE_SUFFIXES = {".cpp", ".hpp", ".py", ".sh", ".cmake", ".ts", ".tsx", ".css"}
FUNCTION_SUFFIXES = {".cpp": "C++", ".hpp": "C++", ".py": "Python", ".sh": "Sh", ".ts": "TypeScript"}
NOT_CODE = {"CMakeLists.txt": ".cmake", "run": ".sh", "test": ".sh"}  # sources without a telling suffix
MOST_LINES = 600
MOST_FUNCTION_LINES = 80
HEAD_LINES = 30
REASON = "long because"
UNFINISHED = re.compile(r"\b(TO" r"DO|FIX" r"ME|XX" r"X)\b")
BACKTICKS = re.compile(r"`([^`\n]+)`")
FENCE = re.compile(r"^```.*?^```", re.MULTILINE | re.DOTALL)
PATH = re.compile(r"(\./)?[A-Za-z0-9_.+-]+(/[A-Za-z0-9_.+-]+)*/?")
MADE_BY_THE_BUILD = ("build/",)


def files(root):
    for path in sorted(root.rglob("*")):
        parts = path.relative_to(root).parts
        if path.is_file() and not path.is_symlink() and not SKIPPED_DIRECTORIES.intersection(parts):
            yield path


def text_of(path):
    """The text of a file, or None where it is not one."""
    try:
        return path.read_text(encoding="utf-8")
    except UnicodeDecodeError:
        return None


def suffix_of(path):
    return NOT_CODE.get(path.name, path.suffix)


def names_a_path(word, root):
    """Whether a word in backticks means a path: it begins like one of ours, or at the top."""
    if not PATH.fullmatch(word) or word.startswith(MADE_BY_THE_BUILD):
        return False
    first = word.removeprefix("./").split("/")[0]
    if word.startswith("./"):
        return True
    return "/" in word and ((root / first).is_dir() or (root / "core" / first).is_dir())


def lost_paths(root):
    documents = [root / "README.md", *sorted((root / "docs").rglob("*.md"))]
    for document in documents:
        if not document.is_file():
            continue
        text = document.read_text(encoding="utf-8")
        # code blocks are blanked, so that line numbers stay
        text = FENCE.sub(lambda block: "\n" * block[0].count("\n"), text)
        for match in BACKTICKS.finditer(text):
            word = match[1]
            if not names_a_path(word, root):
                continue
            if not any((base / word.removeprefix("./")).exists() for base in (root, root / "core", document.parent)):
                line = text.count("\n", 0, match.start()) + 1
                yield f"{document.relative_to(root)}:{line}: `{word}` does not exist"


def has_reason(lines):
    return any(REASON in line for line in lines)


def long_files(root):
    for path in files(root):
        if suffix_of(path) not in SOURCE_SUFFIXES:
            continue
        lines = (text_of(path) or "").splitlines()
        if len(lines) > MOST_LINES and not has_reason(lines[:HEAD_LINES]):
            yield f"{path.relative_to(root)}:1: {len(lines)} lines; split it, or say '{REASON} ...' in its head"


def functions(root):
    """(path, name, first line, last line) of each function, as Universal Ctags sees them."""
    paths = [path for path in files(root) if suffix_of(path) in FUNCTION_SUFFIXES]
    listing = "\n".join(str(path) for path in paths)
    command = ["ctags", "--output-format=json", "--fields=+neK", "--kinds-C++=f", "--kinds-Python=fm", "--kinds-Sh=f"]
    command += ["--kinds-TypeScript=fm", "--map-Sh=+(run)", "--map-Sh=+(test)", "-f", "-", "-L", "-"]
    done = subprocess.run(command, input=listing, capture_output=True, text=True, check=True)
    for line in done.stdout.splitlines():
        tag = json.loads(line)
        if "end" in tag:
            yield pathlib.Path(tag["path"]), tag["name"], tag["line"], tag["end"]


def long_functions(root):
    for path, name, first, last in functions(root):
        if last - first + 1 <= MOST_FUNCTION_LINES:
            continue
        lines = (text_of(path) or "").splitlines()
        if not has_reason(lines[:HEAD_LINES]) and not has_reason(lines[max(0, first - 4) : first]):
            yield (
                f"{path.relative_to(root)}:{first}: {name} has {last - first + 1} lines; "
                f"name its steps, or say '{REASON} ...' before it"
            )


def unfinished(root):
    for path in files(root):
        for number, line in enumerate((text_of(path) or "").splitlines(), 1):
            if UNFINISHED.search(line):
                yield f"{path.relative_to(root)}:{number}: unfinished: {line.strip()[:80]}"


def tables_without_source(root):
    data = root / "core" / "handbook" / "data"
    for path in files(data) if data.is_dir() else []:
        if path.name == "sources.csv":  # the list the other tables point to
            continue
        if not any("source" in line.lower() for line in (text_of(path) or "").splitlines()[:HEAD_LINES]):
            yield f"{path.relative_to(root)}:1: names no source in its head"


def all_problems(root):
    return [
        *lost_paths(root),
        *long_files(root),
        *long_functions(root),
        *unfinished(root),
        *tables_without_source(root),
    ]


def self_test():
    mark = "TO" + "DO"
    body = "  x += 1;\n"
    planted = {
        "README.md": ("See `core/base/kept.hpp`, `base/kept.hpp`, `./run`, `core/<room>/a.hpp`, `a/b`, `build/bin/x`.\n", None),
        "docs/a.md": ("```\n`core/base/lost.hpp`\n```\nand `core/base/lost.hpp`\n", "docs/a.md:4: `core/base/lost.hpp`"),
        "docs/b.md": ("`./lost`\n", "`./lost` does not exist"),
        "core/base/kept.hpp": ("#pragma once\n", None),
        "core/base/long.cpp": ("int x;\n" * 601, "601 lines"),
        "core/base/just.cpp": ("int x;\n" * 600, None),
        "core/base/reasoned.cpp": ("// long because it is a table\n" + "int x;\n" * 700, None),
        "core/base/function.cpp": ("void longest(int x) {\n" + body * 79 + "}\n", "longest has 81 lines"),
        "core/base/short.cpp": ("void fits(int x) {\n" + body * 78 + "}\n", None),
        "core/base/told.cpp": ("int y;\n" * 40 + "// long because\nvoid told(int x) {\n" + body * 99 + "}\n", None),
        "core/base/open.cpp": (f"// {mark}: later\n", "unfinished"),
        "core/handbook/data/with.csv": ("# Source: a book, table 3\n1,2\n", None),
        "core/handbook/data/without.csv": ("1,2\n", "names no source"),
        "run": ("#!/usr/bin/env bash\n", None),
    }
    failures = []
    with tempfile.TemporaryDirectory() as directory:
        root = pathlib.Path(directory)
        for name, (text, _) in planted.items():
            (root / name).parent.mkdir(parents=True, exist_ok=True)
            (root / name).write_text(text, encoding="utf-8")
        problems = all_problems(root)
        for name, (_, expected) in planted.items():
            found = [problem for problem in problems if problem.startswith(name + ":")]
            if (expected is None) != (not found) or (expected and expected not in found[0]):
                failures.append(f"{name}: expected {expected!r}, found {found}")
    for failure in failures:
        print(f"self-test: {failure}", file=sys.stderr)
    if not failures:
        print(f"check_text self-test: {len(planted)} planted files judged rightly")
    return 1 if failures else 0


def main():
    parser = argparse.ArgumentParser(description="Checks what no compiler reads.")
    parser.add_argument("--self-test", action="store_true", help="plant faults and see that each is found")
    arguments = parser.parse_args()
    if shutil.which("ctags") is None:
        print("check_text needs universal-ctags", file=sys.stderr)
        return 2
    if arguments.self_test:
        return self_test()
    problems = all_problems(ROOT)
    for problem in problems:
        print(problem, file=sys.stderr)
    if not problems:
        print("check_text: paths in the docs exist, sizes are kept, nothing is left unfinished, tables name sources")
    return 1 if problems else 0


if __name__ == "__main__":
    sys.exit(main())
