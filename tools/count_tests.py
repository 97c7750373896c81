#!/usr/bin/env python3
"""Counts the test cases of a run and prints the two closing lines of ./test.

Reads what ctest knows of its tests (a program each), its JUnit report, and the JSON each program wrote. A program that
wrote no result, or ended badly although its cases passed (a leak, a crash at the end), counts as one failure; a skipped
or disabled case counts as failed, since everything it could need is installed. Checks that are scripts are handed over
as NAME=passed or NAME=failed and count one each.

    count_tests.py BUILD [--junit FILE] [--check NAME=passed]...     or     count_tests.py --self-test

The last two lines are   outside checks: N passed, N failed   and   N passed, N failed
where the outside checks are the cases of suites whose name starts with Outside. Exits 1 when anything failed.
"""

import argparse
import contextlib
import io
import json
import pathlib
import subprocess
import sys
import tempfile
import xml.etree.ElementTree

RESULT_OPTION = "--gtest_output=json:"


class Count:
    def __init__(self):
        self.passed = 0
        self.failed = 0

    def add(self, good):
        self.passed += good
        self.failed += not good

    def __str__(self):
        return f"{self.passed} passed, {self.failed} failed"


def programs(build):
    """(name of the test, file its results go to) for each test that ctest knows; none where it fails."""
    command = ["ctest", "--test-dir", str(build), "--show-only=json-v1"]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    tests = json.loads(done.stdout)["tests"] if done.returncode == 0 else []
    for test in tests:
        outputs = [word for word in test.get("command", []) if word.startswith(RESULT_OPTION)]
        yield test["name"], pathlib.Path(outputs[0].removeprefix(RESULT_OPTION)) if outputs else None


def ended_badly(junit):
    """Names of the tests that ctest itself calls failed or not run."""
    if junit is None or not junit.is_file():
        return None
    cases = xml.etree.ElementTree.parse(junit).getroot().iter("testcase")
    return {case.get("name") for case in cases if case.get("status") != "run"}


def cases(result):
    """(suite, case, whether it passed) from a program's JSON; None where there is no whole result."""
    try:
        suites = json.loads(result.read_text(encoding="utf-8"))["testsuites"]
    except (OSError, ValueError, KeyError):
        return None
    return [
        (suite["name"], case["name"], case.get("result") == "COMPLETED" and not case.get("failures"))
        for suite in suites
        for case in suite["testsuite"]
    ]


def is_outside(suite):
    """Suites that run by rows are called Rows/OutsideName."""
    return any(part.startswith("Outside") for part in suite.split("/"))


def count_program(name, result, bad, everything, outside):
    found = cases(result) if result else None
    if not found:
        print(f"FAILED {name}: no results; it was not built, did not run, or crashed")
        everything.add(False)
        return
    for suite, case, good in found:
        everything.add(good)
        if is_outside(suite):
            outside.add(good)
        if not good:
            print(f"FAILED {name}: {suite}.{case}")
    if (bad is None or name in bad) and all(good for _, _, good in found):
        print(f"FAILED {name}: its cases passed, and the program still ended badly")
        everything.add(False)


def count_all(checks, known, bad):
    """(everything, outside checks) of the scripts, the programs ctest knows and those it calls bad (None: no report)."""
    everything, outside = Count(), Count()
    for check in checks:
        name, _, outcome = check.rpartition("=")
        everything.add(outcome == "passed")
        if outcome != "passed":
            print(f"FAILED check: {name}")
    if not known:
        print("FAILED ctest: it knows of no test")
        everything.add(False)
    for name, result in known:
        count_program(name, result, bad, everything, outside)
    return everything, outside


def self_test():
    def case(name, result="COMPLETED", failed=False):
        return {"name": name, "result": result} | ({"failures": [{"failure": "x"}]} if failed else {})

    good = {"testsuites": [{"name": "Rows/OutsideTable", "testsuite": [case("a/0"), case("a/1")]}]}
    mixed = {"testsuites": [
        {"name": "Plain", "testsuite": [case("a"), case("b", failed=True), case("c", "SKIPPED")]},
        {"name": "OutsideLaw", "testsuite": [case("d", failed=True)]},
    ]}
    trials = [  # what it is, programs with what they wrote, what ctest calls bad, checks, everything, outside
        ("all good", [("x", json.dumps(good))], set(), ["format=passed"], "3 passed, 0 failed", "2 passed, 0 failed"),
        ("failures", [("x", json.dumps(mixed))], {"x"}, [], "1 passed, 3 failed", "0 passed, 1 failed"),
        ("crashed", [("x", None)], {"x"}, [], "0 passed, 1 failed", "0 passed, 0 failed"),
        ("cut short", [("x", json.dumps(good)[:40])], {"x"}, [], "0 passed, 1 failed", "0 passed, 0 failed"),
        ("ran nothing", [("x", '{"testsuites": []}')], set(), [], "0 passed, 1 failed", "0 passed, 0 failed"),
        ("leaked", [("x", json.dumps(good))], {"x"}, [], "2 passed, 1 failed", "2 passed, 0 failed"),
        ("no report", [("x", json.dumps(good))], None, [], "2 passed, 1 failed", "2 passed, 0 failed"),
        ("no tests", [], set(), ["rooms=failed"], "0 passed, 2 failed", "0 passed, 0 failed"),
    ]
    wrong = []
    with tempfile.TemporaryDirectory() as directory:
        for what, written, bad, checks, *expected in trials:
            known = []
            for name, text in written:
                result = pathlib.Path(directory, f"{what} {name}.json")
                if text is not None:
                    result.write_text(text, encoding="utf-8")
                known.append((name, result))
            with contextlib.redirect_stdout(io.StringIO()):
                counts = [str(count) for count in count_all(checks, known, bad)]
            if counts != expected:
                wrong.append(f"self-test: {what}: expected {expected}, counted {counts}")
    print("\n".join(wrong) if wrong else f"count_tests self-test: {len(trials)} runs counted rightly")
    return 1 if wrong else 0


def main():
    parser = argparse.ArgumentParser(description="Counts the test cases of a run.")
    parser.add_argument("build", type=pathlib.Path, nargs="?")
    parser.add_argument("--junit", type=pathlib.Path, help="written by ctest --output-junit")
    parser.add_argument("--check", action="append", default=[], metavar="NAME=passed|failed")
    parser.add_argument("--self-test", action="store_true", help="count runs whose counts are known")
    arguments = parser.parse_args()
    if arguments.self_test:
        return self_test()
    if arguments.build is None:
        parser.error("names no build directory")
    known = list(programs(arguments.build))
    everything, outside = count_all(arguments.check, known, ended_badly(arguments.junit))
    print(f"outside checks: {outside}")
    print(everything)
    return 1 if everything.failed else 0


if __name__ == "__main__":
    sys.exit(main())
