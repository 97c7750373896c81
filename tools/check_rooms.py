#!/usr/bin/env python3
"""Compares every #include with the graph of rooms that cmake/room.cmake writes to rooms.json.

A wrong include does not compile either, unless a precompiled header hides it; so it is read here once
more. What is checked:

* Inside core/ a room may include what it uses and what that uses in turn. Outside core/ a room may include the rooms it
  names and, of those in core/, what they may include. A room declared HIDES gives its users itself alone.
* A test may include what its room may, what lies in tests/support, and a header beside it; a benchmark what lies in
  tests/support too.
* Headers of other people's libraries stay behind their fence (FENCES below); one that no fence names is an error.
* Includes are written from the top: none leaves or shortens its room's path, and each file exists.
* The graph drawn in docs/architecture.md is the one that was built (--write draws it anew).

Usage: check_rooms.py [--rooms build/sanitize/rooms.json] [--write]     or     check_rooms.py --self-test
"""

import argparse
import json
import pathlib
import re
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parent.parent
TEST_KINDS = ("unit", "property", "outside", "golden", "fuzz")
SOURCE_DIRECTORIES = ("core", "solid", "drawing", "sheets", "app", "store", "cli", "server", "tests", "benchmarks")
SUFFIXES = {".cpp", ".hpp", ".h"}
DRAWING = pathlib.Path("docs/architecture.md")
DRAWING_BEGIN = "<!-- rooms: drawn by tools/check_rooms.py --write -->"
DRAWING_END = "<!-- rooms end -->"

# Header of a library -> who may include it: a room, "tests", "benchmarks", or "*" for everyone.
FENCES = [
    (r"fmt/.*", {"*"}),
    (r"tl/expected\.hpp", {"core/base", "app", "cli"}),
    (r"tao/pegtl.*", {"core/quantity", "core/formula"}),
    (r"toml\+\+/.*", {"core/text"}),
    (r"nlohmann/.*", {"core/text", "solid", "cli", "app", "server", "store", "tests"}),
    (r"Eigen/.*", {"core/survey", "tests", "benchmarks"}),
    (r".*\.hxx", {"solid", "benchmarks", "tests"}),
    (r"(cairo|pango).*\.h", {"sheets"}),
    (r"CLI/.*", {"cli"}),
    (r"SQLiteCpp/.*", {"store"}),
    (r"httplib\.h", {"server"}),
    (r"(gtest|gmock)/.*", {"tests"}),
    (r"rapidcheck.*\.h", {"tests"}),
    (r"ceres/.*", {"tests", "benchmarks"}),
    (r"benchmark/.*", {"benchmarks"}),
    (r"(sys/.*|unistd|fcntl|signal|poll|termios|malloc)(\.h)?", {"store", "cli", "server", "app", "tests", "benchmarks"}),
    (r"[a-z_0-9]+", {"*"}),  # the standard library
]

INCLUDE = re.compile(r'^[ \t]*#[ \t]*include[ \t]*(["<])([^">]+)[">]', re.MULTILINE)


class Rooms:
    """The declared graph."""

    def __init__(self, declared):
        self.uses = {room["room"]: list(room["uses"]) for room in declared}
        self.hides = {room["room"] for room in declared if room["hides"]}
        self.order = [room["room"] for room in declared]

    def of(self, path):
        """The room a path from the top lies in, or None."""
        inside = [room for room in self.order if path.startswith(room + "/")]
        return max(inside, key=len, default=None)

    def visible(self, room):
        """The rooms that `room` may include, itself among them."""
        seen = {room}
        for used in self.uses[room]:
            if used.startswith("core/") and used not in self.hides:
                seen |= self.visible(used)
            else:
                seen.add(used)
        return seen

    def drawn(self):
        """The graph as a block of Markdown between its markers."""
        width = max((len(room) for room in self.order), default=0)
        lines = [DRAWING_BEGIN, "```text"]
        for room in self.order:
            hides = "   (those who use it see it alone)" if room in self.hides else ""
            lines.append(f"{room:<{width}} <- {', '.join(self.uses[room]) or '-'}{hides}")
        return "\n".join([*lines, "```", DRAWING_END])


def includes(text):
    """(line, is_quoted, name) of each #include; comments do not hide one, since a hidden one does no harm."""
    for match in INCLUDE.finditer(text):
        yield text.count("\n", 0, match.start()) + 1, match[1] == '"', match[2]


class Check:
    """One walk over the sources; problems collects what is wrong, one line each."""

    def __init__(self, root, rooms):
        self.root = root
        self.rooms = rooms
        self.problems = []
        self.files = 0
        self.support = {p.name: p for p in sorted((root / "tests" / "support").glob("*.hpp"))}

    def run(self):
        for directory in SOURCE_DIRECTORIES:
            for path in sorted((self.root / directory).rglob("*")):
                if path.suffix in SUFFIXES and path.is_file():
                    self.files += 1
                    self.file(path)
        return self.problems

    def file(self, path):
        name = path.relative_to(self.root).as_posix()
        guest, room = self.owner(name)
        if guest is None:
            self.problems.append(f"{name}:1: lies in no room that CMakeLists.txt declares")
            return
        for line, quoted, header in includes(path.read_text(encoding="utf-8")):
            problem = self.quoted(header, path, guest, room) if quoted else self.fenced(header, guest)
            if problem:
                self.problems.append(f"{name}:{line}: {problem}")

    def owner(self, name):
        """Who includes (a room, "tests" or "benchmarks") and the room whose sight counts (None for all)."""
        parts = name.split("/")
        if parts[0] == "benchmarks" or parts[:2] == ["tests", "support"]:
            return ("benchmarks" if parts[0] == "benchmarks" else "tests"), None
        if parts[0] == "tests":
            room = self.rooms.of("/".join(parts[2:])) if parts[1] in TEST_KINDS else None
            return ("tests" if room else None), room
        room = self.rooms.of(name)
        return room, room

    def quoted(self, header, path, guest, room, through=""):
        if guest in ("tests", "benchmarks") and "/" not in header and (path.parent / header).is_file():
            return None  # checked as a file of its own
        if guest == "benchmarks" and header in self.support:
            return None
        if guest == "tests" and header in self.support:
            return self.through_support(header, room)
        if header.startswith("generated/"):
            own = room is not None and header.startswith(f"generated/{room}/")
            return None if own else f'"{header}" is generated for another room'
        if header.startswith(("./", "../")) or "/../" in header or "/" not in header:
            return f'"{header}" is not written from the top'
        target = self.rooms.of(header)
        if target is None:
            return f'"{header}" lies in no room that CMakeLists.txt declares'
        if not (self.root / header).is_file():
            return f'"{header}" does not exist'
        if room is not None and target not in self.rooms.visible(room):
            return f'"{header}"{through}: {room} may not use {target}'
        return None

    def through_support(self, header, room):
        """A header of tests/support shows what it includes to the room's tests."""
        path = self.support[header]
        for _, quoted, inner in includes(path.read_text(encoding="utf-8")):
            problem = self.quoted(inner, path, "tests", room, f" by way of {header}") if quoted and room else None
            if problem:
                return problem
        return None

    @staticmethod
    def fenced(header, guest):
        for pattern, allowed in FENCES:
            if re.fullmatch(pattern, header):
                if "*" in allowed or guest in allowed:
                    return None
                return f"<{header}> is for {', '.join(sorted(allowed))} only"
        return f"<{header}> has no fence in tools/check_rooms.py"


def check_drawing(root, rooms, write):
    """Problems of the drawn graph; with write it is drawn instead."""
    path = root / DRAWING
    drawn = rooms.drawn()
    text = path.read_text(encoding="utf-8") if path.is_file() else None
    if text is None and not write:
        return [f"{DRAWING}: does not exist; draw it with tools/check_rooms.py --write"]
    if text is None:
        text = f"# Architecture\n\n{DRAWING_BEGIN}\n{DRAWING_END}\n"
    if text.count(DRAWING_BEGIN) != 1 or text.count(DRAWING_END) != 1:
        return [f"{DRAWING}: needs the markers '{DRAWING_BEGIN}' and '{DRAWING_END}' once each"]
    before, rest = text.split(DRAWING_BEGIN)
    inside, after = rest.split(DRAWING_END)
    if DRAWING_BEGIN + inside + DRAWING_END == drawn:
        return []
    if not write:
        return [f"{DRAWING}: the graph drawn is not the one built; draw it with tools/check_rooms.py --write"]
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(before + drawn + after, encoding="utf-8")
    return []


# --- the check of the check -------------------------------------------------------------------------------------------
SELF_TEST_ROOMS = [
    {"room": "core/low", "uses": [], "hides": False},
    {"room": "core/mid", "uses": ["core/low"], "hides": False},
    {"room": "core/side", "uses": ["core/low"], "hides": False},
    {"room": "core/high", "uses": ["core/mid"], "hides": False},
    {"room": "app", "uses": ["core/high"], "hides": True},
    {"room": "sheets", "uses": ["core/mid"], "hides": False},
    {"room": "server", "uses": ["sheets"], "hides": False},
    {"room": "cli", "uses": ["app"], "hides": False},
]
# (file, include line, a piece of the problem it must give; None where it is right)
SELF_TEST_INCLUDES = [
    ("core/high/a.cpp", '#include "core/low/low.hpp"', None),
    ("core/high/b.cpp", '#include "core/side/side.hpp"', "core/high may not use core/side"),
    ("core/low/c.cpp", '#include "core/mid/mid.hpp"', "core/low may not use core/mid"),
    ("core/high/d.cpp", "  #  include <vector>", None),
    ("core/high/e.cpp", '#include "../low/low.hpp"', "not written from the top"),
    ("core/high/f.cpp", '#include "core/high/../low/low.hpp"', "not written from the top"),
    ("core/high/g.cpp", '#include "high.hpp"', "not written from the top"),
    ("core/high/h.cpp", '#include "core/low/lost.hpp"', "does not exist"),
    ("core/high/i.cpp", "#include <toml++/toml.h>", "is for core/text only"),
    ("core/high/j.cpp", "#include <boost/any.hpp>", "has no fence"),
    ("core/high/k.cpp", "#include <gtest/gtest.h>", "is for tests only"),
    ("core/high/l.cpp", "#include <BRep_Tool.hxx>", "is for benchmarks, solid, tests only"),
    ("core/high/m.cpp", '#include "generated/core/high/rows.inc"', None),
    ("core/high/n.cpp", '#include "generated/core/mid/rows.inc"', "generated for another room"),
    ("core/lost/o.cpp", "#include <vector>", "lies in no room"),
    ("cli/p.cpp", '#include "app/app.hpp"', None),
    ("cli/q.cpp", '#include "core/high/high.hpp"', "cli may not use core/high"),
    ("sheets/r.cpp", '#include "core/low/low.hpp"', None),
    ("server/s.cpp", '#include "core/mid/mid.hpp"', "server may not use core/mid"),
    ("tests/unit/core/mid/t_test.cpp", "#include <gtest/gtest.h>", None),
    ("tests/unit/core/mid/u_test.cpp", '#include "core/low/low.hpp"', None),
    ("tests/unit/core/mid/v_test.cpp", '#include "core/side/side.hpp"', "core/mid may not use core/side"),
    ("tests/unit/core/mid/w_test.cpp", '#include "samples.hpp"', "by way of samples.hpp: core/mid may not use core/high"),
    ("tests/unit/core/high/x_test.cpp", '#include "samples.hpp"', None),
    ("tests/unit/core/high/beside.hpp", '#include "core/side/side.hpp"', "core/high may not use core/side"),
    ("tests/unit/core/high/z_test.cpp", '#include "beside.hpp"', None),
    ("tests/odd/core/high/y_test.cpp", "#include <vector>", "lies in no room"),
]


def self_test():
    failures = []
    with tempfile.TemporaryDirectory() as directory:
        root = pathlib.Path(directory)
        rooms = Rooms(SELF_TEST_ROOMS)
        for room in rooms.order:
            (root / room).mkdir(parents=True)
            name = room.split("/")[-1]
            (root / room / f"{name}.hpp").write_text("#pragma once\n", encoding="utf-8")
        (root / "tests/support").mkdir(parents=True)
        (root / "tests/support/samples.hpp").write_text('#include "core/high/high.hpp"\n', encoding="utf-8")
        for name, line, _ in SELF_TEST_INCLUDES:
            (root / name).parent.mkdir(parents=True, exist_ok=True)
            (root / name).write_text(f"// planted\n{line}\n", encoding="utf-8")
        problems = Check(root, rooms).run()
        for name, line, expected in SELF_TEST_INCLUDES:
            found = [p for p in problems if p.startswith(name + ":")]
            if expected is None and found:
                failures.append(f"{line} in {name} is right, but gave: {found}")
            if expected is not None and not any(expected in p for p in found):
                failures.append(f"{line} in {name} should have given '{expected}', but gave: {found}")
        wrong = sum(expected is not None for _, _, expected in SELF_TEST_INCLUDES)
        if len(problems) != wrong:
            failures.append(f"{wrong} wrong includes were planted, {len(problems)} problems found")
        if not check_drawing(root, rooms, write=False):
            failures.append("a missing drawing was not seen")
        if check_drawing(root, rooms, write=True) or check_drawing(root, rooms, write=False):
            failures.append("a drawing just written is not accepted")
        drawing = root / DRAWING
        drawing.write_text(drawing.read_text(encoding="utf-8").replace("core/low", "core/law"), encoding="utf-8")
        if not check_drawing(root, rooms, write=False):
            failures.append("a wrong drawing was not seen")
    for failure in failures:
        print(f"self-test: {failure}", file=sys.stderr)
    if not failures:
        print(f"check_rooms self-test: {len(SELF_TEST_INCLUDES)} planted includes judged rightly")
    return 1 if failures else 0


def main():
    parser = argparse.ArgumentParser(description="Compares the includes with the graph of rooms.")
    parser.add_argument("--rooms", default="build/sanitize/rooms.json", help="written by the configure step")
    parser.add_argument("--write", action="store_true", help="draw the graph in docs/architecture.md")
    parser.add_argument("--self-test", action="store_true", help="plant wrong includes and see that each is found")
    arguments = parser.parse_args()
    if arguments.self_test:
        return self_test()
    path = ROOT / arguments.rooms
    if not path.is_file():
        print(f"{path} does not exist: configure first, as in 'cmake --preset sanitize'", file=sys.stderr)
        return 2
    rooms = Rooms(json.loads(path.read_text(encoding="utf-8")))
    check = Check(ROOT, rooms)
    problems = check.run() + check_drawing(ROOT, rooms, arguments.write)
    for problem in problems:
        print(problem, file=sys.stderr)
    if arguments.write:
        print(f"{DRAWING}: drawn")
    if not problems:
        print(f"check_rooms: {check.files} files, {len(rooms.order)} rooms, every include as declared")
    return 1 if problems else 0


if __name__ == "__main__":
    sys.exit(main())
