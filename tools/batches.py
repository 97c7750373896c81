#!/usr/bin/env python3
"""Sorts sources into batches that can be compiled as one file each, for cmake/batches.cmake.

    batches.py SIZE FILE...     or     batches.py --self-test

Prints one batch a line, its files parted by ';'. Compiled as one, files see each other's names in the unnamed namespace.
So two files share a batch only where no name that one of them keeps to itself is so much as said in the other: not
declared, not called, not used for a local variable; nor declared in a header of the same namespace that the other
includes. Then neither can be understood otherwise than alone. What is said after '.', '->' or '::' is looked up elsewhere
and does not count. A name taken from another namespace ('using shape::Face;') clashes only with a header of this one that
has the same, or with another of that name taken from elsewhere. A file that opens a namespace for all that follows ('using
namespace' at the margin) is a batch of its own.

It reads the text as tools/format.sh leaves it: what is declared in a namespace begins at the margin.
"""

import pathlib
import re
import sys

SPACE_OR_WORDS_NOT_NAMES = re.compile(
    r"""//[^\n]*|/\*.*?\*/                              # comments
      |R"(?P<mark>[^()\s\\]{0,16})\(.*?\)(?P=mark)"     # raw strings
      |"(?:\\.|[^"\\\n])*"|(?<![\w'])'(?:\\.|[^'\\\n])+'  # strings and characters, but not 1'000
      |^[ \t]*\#[ \t]*include[^\n]*""",
    re.VERBOSE | re.DOTALL | re.MULTILINE,
)
SAID = re.compile(r"(?:(?P<inside>\.|->|::)\s*)?(?P<name>[A-Za-z_]\w*)")
UNNAMED = re.compile(r"^namespace \{$", re.MULTILINE)
OPENS_A_NAMESPACE = re.compile(r"^using namespace\b", re.MULTILINE)
MACRO = re.compile(r"^[ \t]*#[ \t]*define[ \t]+(\w+)", re.MULTILINE)
# Declared again in another file they mean the same, or the compiler says so.
HARMLESS = re.compile(r"using [\w:]+;|friend\b|extern\b|namespace \w+ =|static_assert\b|[A-Z][A-Z0-9_]*\(")
TYPE = re.compile(r"(?:class|struct|union|enum(?: class)?)\s+(?:\[\[\w+\]\]\s*)?(\w+)")
TAKEN = re.compile(r"^using ([\w:]+::(\w+));", re.MULTILINE)
NAMESPACE = re.compile(r"^namespace ([\w:]+) \{$", re.MULTILINE)
INCLUDED = re.compile(r'^#include "([^"]+)"', re.MULTILINE)
ALIAS = re.compile(r"using\s+(\w+)\s*=")


def plain(text):
    """The text without comments, strings and includes, line by line as it was."""
    return SPACE_OR_WORDS_NOT_NAMES.sub(lambda found: "\n" * found.group().count("\n") or " ", text)


def name_of(declaration):
    """The name that a declaration at the margin makes known; None where it is none, or one that may be made twice."""
    declaration = re.sub(r"\[\[.*?\]\]", " ", declaration)
    if declaration.startswith("template"):
        declaration = without_angles(declaration).removeprefix("template").lstrip()
    if HARMLESS.match(declaration):
        return None
    for pattern in (TYPE, ALIAS):
        found = pattern.match(declaration)
        if found:
            return found.group(1)
    head = re.split(r"[({=;\[]", without_angles(declaration), maxsplit=1)[0]
    names = re.findall(r"[A-Za-z_]\w*", head)
    return names[-1] if names else None


def without_angles(text):
    while True:
        shorter = re.sub(r"<[^<>]*>", " ", text)
        if shorter == text:
            return text
        text = shorter


def body_after(text, start):
    """The text up to the brace that closes what was opened before start."""
    depth = 1
    for brace in re.compile(r"[{}]").finditer(text, start):
        depth += 1 if brace.group() == "{" else -1
        if depth == 0:
            return text[start : brace.start()]
    return text[start:]


def kept_names(text):
    """The names that a file (plain text) has for itself alone."""
    names = set(MACRO.findall(text))
    for opened in UNNAMED.finditer(text):
        names |= declared_names(body_after(text, opened.end()))
    return names


def declared_names(text):
    """What is declared at the margin of a text."""
    lines = text.split("\n")
    starts = [number for number, line in enumerate(lines) if re.match(r"[A-Za-z_\[]", line)]
    return {name_of("\n".join(lines[number : number + 4])) for number in starts} - {None}


class Headers:
    """What the headers of the house declare, each read once. Includes are written from the top or from tests/support."""

    def __init__(self, folders):
        self.folders = folders
        self.read = {}

    def declared(self, include, seen):
        """(namespace, name) of what a header and those it includes declare; seen are the headers looked at before."""
        if include in seen:
            return set()
        seen.add(include)
        if include not in self.read:
            path = next((folder / include for folder in self.folders if (folder / include).is_file()), None)
            written = path.read_text(encoding="utf-8") if path else ""
            text = trimmed(written)
            opened = NAMESPACE.search(text)
            own = {(opened.group(1), name) for name in declared_names(text)} if opened else set()
            self.read[include] = (own, INCLUDED.findall(written))
        own, includes = self.read[include]
        return own.union(*(self.declared(other, seen) for other in includes))


def trimmed(text):
    return "\n".join(line.rstrip() for line in plain(text).split("\n"))


class Source:
    def __init__(self, path, written, headers=None):
        text = trimmed(written)
        opened = NAMESPACE.search(text)
        self.path = path
        self.namespace = opened.group(1) if opened else ""
        self.alone = bool(OPENS_A_NAMESPACE.search(text))
        self.kept = kept_names(text)
        self.taken = {name: whole for whole, name in TAKEN.findall(text)}
        self.said = {found["name"] for found in SAID.finditer(text) if not found["inside"]} | self.kept
        seen = set()
        self.beside = set().union(*(headers.declared(header, seen) for header in INCLUDED.findall(written))) if headers else set()

    def goes_with(self, other):
        return not (self.alone or other.alone or self.disturbs(other) or other.disturbs(self))

    def disturbs(self, other):
        beside = {name for namespace, name in other.beside if namespace == self.namespace}
        differs = any(other.taken.get(name, whole) != whole for name, whole in self.taken.items())
        return bool(self.kept & (other.said | beside) or self.taken.keys() & beside or differs)


def batches_of(sources, size):
    """Each source into the first batch that has room for it and nothing against it."""
    batches = []
    for source in sources:
        for batch in batches:
            if len(batch) < size and all(source.goes_with(other) for other in batch):
                batch.append(source)
                break
        else:
            batches.append([source])
    return batches


# --- the check of the check -------------------------------------------------------------------------------------------
def in_unnamed(text):
    return f"namespace sparewright::base {{\nnamespace {{\n\n{text}\n\n}}  // namespace\n}}  // namespace sparewright::base\n"


# (one file, another, whether they may share a batch)
SELF_TEST = [
    (in_unnamed("double half(double x) {\n  return x / 2;\n}"), in_unnamed("double third(double x);"), True),
    (in_unnamed("double half(double x) {\n  return x / 2;\n}"), in_unnamed("double half(Length x);"), False),
    (in_unnamed("double half(double x);"), "double y = half(3);", False),
    (in_unnamed("double half(double x);"), "double y = other::half(3) + x.half + z->half();", True),
    (in_unnamed("double half(double x);"), 'auto y = "half"; // half\n', True),
    (in_unnamed("int one() {\n  return 1;\n}\n\nint two() {\n  return 2;\n}"), "int two = 0;", False),
    ("namespace {\nint one() {\n  return 1;\n}\n}  // namespace\nint two();\n", "int three = two();", True),
    (in_unnamed("template <class T>\nstd::map<T, double> table(T x);"), "int table = 0;", False),
    (in_unnamed("struct Row {\n  double size = 0.0;\n};"), in_unnamed("struct Row;"), False),
    (in_unnamed("struct Row {\n  double size = 0.0;\n};"), "double size = 0.0;", True),
    (in_unnamed("constexpr std::array<Row, 2> kRows = {{1, 2}};"), "auto n = kRows.size();", False),
    (in_unnamed("constexpr std::array<\n    Row, 2>\n    kRows{};"), "auto n = kRows.size();", False),
    (in_unnamed("using quantity::Length;"), in_unnamed("using quantity::Length;"), True),
    (in_unnamed("using quantity::Length;"), in_unnamed("using part::Length;"), False),
    (in_unnamed("namespace unit = quantity::unit;"), in_unnamed("namespace unit = quantity::unit;"), True),
    (in_unnamed("using Rows = std::vector<int>;"), in_unnamed("using Rows = std::vector<double>;"), False),
    (in_unnamed("TEST(Rows, AreThere) {}"), in_unnamed("TEST(Rows, AreInOrder) {}"), True),
    (in_unnamed("char kMark = '\"';\nint n = 1'000;"), in_unnamed("int n = 2;"), False),
    ("#define TWICE(x) (2 * (x))\n", "int n = TWICE(3);\n", False),
    ("using namespace std;\n", "int n = 3;\n", False),
]


def self_test():
    failures = 0
    for one, other, together in SELF_TEST:
        count = len(batches_of([Source("one", one), Source("other", other)], 2))
        if (count == 1) != together:
            failures += 1
            print(f"self-test: {'parted' if together else 'put together'}:\n{one}\n{other}", file=sys.stderr)
    many = [Source(str(i), "") for i in range(7)]
    if [len(batch) for batch in batches_of(many, 3)] != [3, 3, 1]:
        failures += 1
        print("self-test: seven files that go together are not 3 + 3 + 1", file=sys.stderr)
    if not failures:
        print(f"batches self-test: {len(SELF_TEST) + 1} cases judged rightly")
    return 1 if failures else 0


def main():
    if sys.argv[1:] == ["--self-test"]:
        return self_test()
    size = int(sys.argv[1])
    top = pathlib.Path(__file__).resolve().parent.parent
    headers = Headers([top, top / "tests/support"])
    sources = [Source(path, pathlib.Path(path).read_text(encoding="utf-8"), headers) for path in sorted(sys.argv[2:])]
    for batch in batches_of(sources, size):
        print(";".join(source.path for source in batch))
    return 0


if __name__ == "__main__":
    sys.exit(main())
