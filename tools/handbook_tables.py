#!/usr/bin/env python3
"""Turns the handbook's tables (core/<room>/data/*.csv) into rows of C++ that are compiled in.

A table is a CSV file with a head:

    # Lines like this (a blank after the #) say what was taken from which source, and why.
    #! rows 26                               the number of rows, so that a lost one is noticed
    #! unique series name                    no two rows agree in these columns
    #! ascending diameter within series      grows from row to row where the others agree
    #! intervals over up_to within letter    rows join end to end where the others agree
    #! disjoint over up_to within letter     the same, gaps allowed
    series:DrillSeries,name:text,diameter:Diameter @unit,unit:unit,source:source,basis:basis

The column heads name a field of a C++ struct and its type:

    text, text?         a string_view; with ? it may be empty
    int, number         as written; with ? an empty cell is std::nullopt
    Length inch         a quantity of core/quantity in that unit (@unit: in the unit named by that column of the row);
                        with ? (Length? inch) an empty cell is std::nullopt
    unit                not a field: the unit other columns point to
    source, basis       one field, Source: a key of sources.csv and how the value is known
    AnyOtherName        an enumerator: 'turning rough' becomes AnyOtherName::kTurningRough; with ? it may be empty

Every cell is placed or the run fails, with file and line; so does a row whose number of cells is wrong, a source that
is not listed, and a listed source that no row uses. The compiler then checks names, order and types of the fields.

Usage: handbook_tables.py DATA_DIR OUTPUT_DIR     or     handbook_tables.py --check DATA_DIR
"""

import csv
import pathlib
import re
import sys

NUMBER = re.compile(r"-?(\d+\.?\d*|\.\d+)")
INT = re.compile(r"-?\d+")
WORDS = re.compile(r"[a-z0-9]+( [a-z0-9]+)*")
UNITS = {"inch", "thou", "millimetre", "micrometre", "foot_per_minute", "inch_per_turn", "gram_per_cubic_centimetre",
         "gigapascal", "megapascal", "psi", "kilonewton", "square_millimetre", "square_inch", "degree"}
BASES = {"published": "kPublished", "derived": "kDerived", "from memory": "kFromMemory",
         "common practice": "kCommonPractice"}


class TableError(Exception):
    """A table that cannot be placed; the message names file and line."""


def quoted(text):
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"') + '"'


class Table:
    """One CSV file: its directives, its columns, its rows with their line numbers."""

    def __init__(self, path):
        self.path = path
        self.name = path.stem
        self.directives = []
        self.rows = []
        lines = path.read_text(encoding="utf-8").splitlines()
        body = []
        for number, line in enumerate(lines, 1):
            if line.startswith("#!"):
                self.directives.append((number, " ".join(line[2:].split())))
            elif line and line != "#" and not line.startswith("# "):
                body.append((number, line))
        if not body:
            raise TableError(f"{path}: no rows")
        self.columns = [self.column(body[0][0], head) for head in self.cells(*body[0])]
        for number, line in body[1:]:
            cells = self.cells(number, line)
            if len(cells) != len(self.columns):
                self.fail(number, f"{len(cells)} cells where there are {len(self.columns)} columns")
            self.rows.append((number, dict(zip([c["name"] for c in self.columns], cells))))

    def fail(self, line, message):
        raise TableError(f"{self.path}:{line}: {message}")

    def number(self, line, cell):
        try:
            return float(cell)
        except ValueError:
            return self.fail(line, f"'{cell}' is not a number")

    def cells(self, number, line):
        try:
            return [cell.strip() for cell in next(csv.reader([line], strict=True))]
        except csv.Error as error:
            return self.fail(number, str(error))

    def column(self, line, head):
        match = re.fullmatch(r"([a-z][a-z0-9_]*):([A-Za-z][A-Za-z0-9]*)(\?)?(?: (@?[a-z_]+))?", head)
        if not match:
            self.fail(line, f"'{head}' is not a column head such as diameter:Diameter inch")
        name, kind, optional, unit = match.groups()
        if unit and not unit.startswith("@") and unit not in UNITS:
            self.fail(line, f"'{unit}' is not a unit known here")
        return {"name": name, "type": kind, "optional": bool(optional), "unit": unit}

    def column_names(self, line, names):
        known = {c["name"] for c in self.columns}
        for name in names:
            if name not in known:
                self.fail(line, f"there is no column '{name}'")
        return names


def check_directives(table):
    counted = False
    for line, text in table.directives:
        if match := re.fullmatch(r"rows (\d+)", text):
            counted = True
            if int(match[1]) != len(table.rows):
                table.fail(line, f"{match[1]} rows are promised and {len(table.rows)} are there")
        elif re.fullmatch(r"unique( \w+)+", text):
            check_unique(table, table.column_names(line, text.split()[1:]))
        elif match := re.fullmatch(r"ascending (\w+)(?: within((?: \w+)+))?", text):
            check_ascending(table, table.column_names(line, [match[1], *(match[2] or "").split()]))
        elif match := re.fullmatch(r"(intervals|disjoint) (\w+) (\w+)(?: within((?: \w+)+))?", text):
            names = table.column_names(line, [match[2], match[3], *(match[4] or "").split()])
            check_intervals(table, names, gaps=match[1] == "disjoint")
        else:
            table.fail(line, f"'{text}' is not a directive")
    if not counted:
        raise TableError(f"{table.path}: '#! rows N' is missing")


def check_unique(table, names):
    seen = {}
    for line, row in table.rows:
        key = tuple(row[n] for n in names)
        if key in seen:
            table.fail(line, f"{' '.join(key)} is already in line {seen[key]}")
        seen[key] = line


def check_ascending(table, names):
    value_name, group = names[0], names[1:]
    last = {}
    for line, row in table.rows:
        key = tuple(row[n] for n in group)
        value = table.number(line, row[value_name])
        if key in last and value <= last[key]:
            table.fail(line, f"{value_name} {row[value_name]} does not grow")
        last[key] = value


def check_intervals(table, names, gaps):
    low_name, high_name, group = names[0], names[1], names[2:]
    ends = {}
    for line, row in table.rows:
        low = table.number(line, row[low_name] or "-inf")
        high = table.number(line, row[high_name] or "inf")
        key = tuple(row[n] for n in group)
        if low >= high:
            table.fail(line, f"from {row[low_name]} to {row[high_name]} is no range")
        if key in ends and (low < ends[key] or (low > ends[key] and not gaps)):
            table.fail(line, f"the range starts at {row[low_name]}, the one before ends at {ends[key]}")
        ends[key] = high


def initializer(table, line, column, row, sources):
    """The C++ of one field, or None for a column that is not a field."""
    cell, kind = row[column["name"]], column["type"]
    if kind in ("unit", "basis"):
        return None
    if not cell and not column["optional"]:
        table.fail(line, f"'{column['name']}' is empty")
    if kind == "text":
        return quoted(cell)
    if kind == "source":
        return source_initializer(table, line, row, sources)
    if not cell:
        return "std::nullopt"
    if kind in ("int", "number"):
        if not (INT if kind == "int" else NUMBER).fullmatch(cell):
            table.fail(line, f"'{cell}' is not a{'n int' if kind == 'int' else ' number'}")
        return cell
    if column["unit"]:
        unit = row[column["unit"][1:]] if column["unit"].startswith("@") else column["unit"]
        if unit not in UNITS:
            table.fail(line, f"'{unit}' is not a unit known here")
        if not NUMBER.fullmatch(cell):
            table.fail(line, f"'{cell}' is not a number")
        return f"{kind}::of({cell}, unit::{unit})"
    if not WORDS.fullmatch(cell):
        table.fail(line, f"'{cell}' is not a name in small letters")
    return f"{kind}::k" + "".join(word.capitalize() for word in cell.split())


def source_initializer(table, line, row, sources):
    key, basis = row["source"], row.get("basis", "")
    if key not in sources:
        table.fail(line, f"'{key}' is not in sources.csv")
    if basis not in BASES:
        table.fail(line, f"'{basis}' is not one of {', '.join(BASES)}")
    sources[key]["used"] = True
    return f"{{{quoted(sources[key]['text'])}, {quoted(sources[key]['address'])}, Basis::{BASES[basis]}}}"


def compiled(table, sources):
    out = [f"// Made by tools/handbook_tables.py from {table.path.name}: {len(table.rows)} rows.\n"]
    for line, row in table.rows:
        fields = []
        for column in table.columns:
            value = initializer(table, line, column, row, sources)
            if value is not None:
                fields.append(f".{column['name']} = {value}")
        out.append("{" + ", ".join(fields) + "},\n")
    return "".join(out)


def read_sources(path):
    table = Table(path)
    check_directives(table)
    sources = {}
    for line, row in table.rows:
        if not row["key"] or not row["text"]:
            table.fail(line, "a source needs a key and a text")
        sources[row["key"]] = {"text": row["text"], "address": row["address"], "used": False}
    return sources


def run(data_dir, output_dir):
    data_dir = pathlib.Path(data_dir)
    sources = read_sources(data_dir / "sources.csv")
    total = 0
    for path in sorted(data_dir.glob("*.csv")):
        if path.name == "sources.csv":
            continue
        table = Table(path)
        check_directives(table)
        text = compiled(table, sources)
        total += len(table.rows)
        print(f"{path.name}: {len(table.rows)} rows read, {text.count(chr(10)) - 1} compiled in")
        if output_dir is not None:
            out = pathlib.Path(output_dir) / (table.name + ".inc")
            out.parent.mkdir(parents=True, exist_ok=True)
            out.write_text(text, encoding="utf-8")
    unused = [key for key, source in sources.items() if not source["used"]]
    if unused:
        raise TableError(f"{data_dir / 'sources.csv'}: no row uses {', '.join(unused)}")
    print(f"{total} rows, {len(sources)} sources")


def main(arguments):
    if len(arguments) != 2:
        print(__doc__, file=sys.stderr)
        return 2
    try:
        if arguments[0] == "--check":
            run(arguments[1], None)
        else:
            run(*arguments)
    except (TableError, OSError, UnicodeDecodeError) as error:
        print(error, file=sys.stderr)
        return 1
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
