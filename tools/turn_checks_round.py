#!/usr/bin/env python3
"""Proves that the pairs of the checks bite: turns each check round and sees whether its test fails.

For every check with a number the inequality is reversed, and the limit is moved to either side by twice the margin of the
pair's two jobs (tests/unit/core/job/check_pairs_*.cpp). Each turn must fail the row of the pair. Checks that are yes or no
by nature are reversed.

How: verdicts with a margin all come out of Pen::judge. A copy of its source swaps `.low` and `.high`, or moves them, for
the one check that the environment names: the same as doing so where that check calls it. What is decided before a verdict
is given is in TURNS below, one expression each; copies of those sources take the turned expression where the environment
says so. The copies are compiled as the build compiles the originals, and linked in front of them into a test program of
its own under <build>/turned; neither the source nor the build is touched.

Run by hand, after a build of sparewright_job_tests:
    tools/turn_checks_round.py [--build build/sanitize] [--only WORD]
It prints a line for each turn, caught or NOT CAUGHT, and the counts; exits 1 where one was not caught.
"""

import argparse
import json
import os
import pathlib
import re
import shlex
import subprocess
import sys
from dataclasses import dataclass

ROOT = pathlib.Path(__file__).resolve().parent.parent
TARGET = "sparewright_job_tests"
SUITE = "Checks/CheckPairTest.JustInsideAndJustOutside/"
JUDGE = "core/ledger/judge.cpp"
MARGINS = 2.0  # so many margins of the pair a limit is moved by


@dataclass
class Turn:
    """What decides some rows where no margin does: one expression, which stands once in its file."""

    rows: tuple
    file: str
    expression: str
    moved: str = ""  # the same with BY added to its limit; empty: yes or no
    within: str = ""  # where the expression alone stands more than once: what stands once, with it
    is_condition: bool = True  # else a number, which cannot be reversed
    scale: float = 1.0  # of BY, where the limit is not in the unit of the row
    ways: tuple = (1, -1)  # a second guard may stand behind the limit on one side


ALIKE = "std::max({shape::kAlikeAtLeast_mm, band.upper, -band.lower})"
TURNS = [
    Turn(("the_slide_goes_that_far",), "core/judge/reach.cpp", "high - low <= travel.base()",
         "high - low <= travel.base() + BY"),
    Turn(("the_machine_has_the_speed",), "core/judge/tooling.cpp", "wanted.value >= slowest",
         "wanted.value >= slowest + BY"),
    Turn(("instrument_proves_diameter_with_ease",), "core/judge/measuring.cpp", "4.0 * unknown.value < tolerance",
         "4.0 * unknown.value < tolerance + BY"),
    Turn(("edge_distance_of_one_and_a_half_diameters", "edge_distance_of_a_bored_hole"), "core/judge/edge_distance.cpp",
         "edge.to_middle_mm >= rule.easy * diameter.value", "edge.to_middle_mm >= rule.easy * diameter.value + BY"),
    Turn(("stock_on_hand_of_that_section",), "core/route/on_hand.cpp", "one == other",
         within="if (one == other) return true"),
    Turn(("drill_starts_square_up_to_2_degrees",), "core/judge/drill_start.cpp", "start.slope_rad <= kSquare_rad",
         "start.slope_rad <= kSquare_rad + BY"),
    Turn(("drill_starts_square_over_the_edge",), "core/judge/drill_start.cpp", "std::isinf(here)",
         within="start.over_air || std::isinf(here)"),
    Turn(("drill_starts_square_over_the_edge",), "core/judge/drill_start.cpp", "kJustInside * radius_mm",
         "kJustInside * radius_mm + BY", is_condition=False),
    # Moved the other way, the wall between the two holes tells that they do not meet.
    Turn(("drill_meets_way_at_all", "drill_meets_one_alongside"), "core/judge/drill_meets.cpp",
         "met.overlap_mm <= shape::kTouch_mm", "met.overlap_mm <= shape::kTouch_mm + BY", ways=(1,)),
    Turn(("blind_hole_ends_in_metal_with_its_point",), "core/judge/blind_end.cpp",
         "in.enter_mm < end.tip_mm - shape::kTouch_mm", "in.enter_mm < end.tip_mm - shape::kTouch_mm + BY"),
    Turn(("least_wall_while_it_is_made",), "core/judge/state_wall.cpp",
         "wall.least_mm < std::min(asked_mm_, thin.least_mm)"),
    Turn(("least_wall_while_it_is_made",), "core/judge/state_wall.cpp", "allowed.value", "allowed.value + BY",
         within="finished, allowed.value", is_condition=False),
    Turn(("left_or_right", "left_or_right_by_a_slot"), "core/judge/hand.cpp", "!shape::difference(work, image, alike_mm(subject))"),
    Turn(("left_or_right", "left_or_right_by_a_slot", "may_be_turned_over"), "core/judge/hand.cpp", ALIKE, ALIKE + " + BY", is_condition=False),
    Turn(("may_be_turned_over",), "core/judge/hand.cpp", "!unlike"),
    # The plate is 60 by 20: so many mm3 to a mm of its length.
    Turn(("split_leaves_two_pieces",), "core/judge/split.cpp", "piece.value > 0.0", "piece.value > BY",
         scale=60.0 * 20.0),
    Turn(("build_up_in_x_or_not_sure", "marks_hold_its_place_in_x_or_not_sure"), JUDGE, "margin.value + noise >= margin.expanded()",
         "margin.value + noise >= margin.expanded() + BY"),
    Turn(("it_cuts_metal",), "core/judge/bite.cpp", "bite.taken == shape::Taken::kMetal"),
    Turn(("geometry",), "core/part/geometry.cpp", "!recipe"),
    Turn(("spindle_reaches_it",), "core/judge/reach.cpp", "reached_from(setup, feature, up)",
         within="if (reached_from(setup, feature, up)) return;"),
    Turn(("it_is_made_in_a_setup",), "core/judge/reach.cpp", "!made", within="if (!made) {"),
    Turn(("a_tool_makes_it",), "core/judge/tooling.cpp", "there", within="if (there || kinds.empty()) return;"),
    Turn(("how_it_is_cut",), "core/judge/tooling.cpp", "route::cuts_are_worked_out(setup, feature)"),
    Turn(("the_tap_has_the_thread",), "core/judge/tool_size.cpp",
         "std::abs(cut->pitch_mm - wanted->pitch_mm) < kSame_mm"),
    Turn(("no_press_in_a_slit_boss",), "core/judge/bush.cpp", "slit == part.features.end()"),
    Turn(("instrument_touches_diameter",), "core/judge/measuring.cpp", "has(dimension.jaws)"),
    Turn(("drill_starts_square_where_it_leans",), "core/judge/drill_start.cpp", "drilling.hole().lean"),
    Turn(("drill_starts_square_with_a_dimple_on_a_bar",), "core/judge/drill_start.cpp",
         "drilling.uses(shop::ToolKind::kSpotDrill)"),
    Turn(("stands_out_of_the_chuck_more_than_three_diameters",
          "stands_out_of_the_chuck_more_than_twelve_diameters_with_the_tail"), "core/judge/lathe_holding.cpp",
         "out.value <= most", "out.value <= most + BY"),
    Turn(("stands_out_of_the_chuck_more_than_five_diameters",), "core/judge/lathe_holding.cpp", "out.value <= past",
         "out.value <= past + BY"),
    Turn(("goes_into_the_spindle_what_the_jaws_do_not_hold_alone",), "core/judge/lathe_holding.cpp",
         "*o.on.gripped <= *jaws", "o.on.gripped->base() <= jaws->base() + BY"),
    Turn(("a_centre_finds_its_hole_at_the_headstock",), "core/judge/lathe_support.cpp",
         "centre_is_there(t, part::opposite(t.on.free_end), false)"),
    Turn(("a_centre_finds_its_hole_drilled_before_the_tail_comes_up",
          "a_centre_finds_its_hole_at_the_tail_between_centres"), "core/judge/lathe_support.cpp", "!between",
         within="t.on.free_end, !between"),
    Turn(("between_centres",), "core/judge/lathe_support.cpp", "!tail_is_centre"),
    Turn(("it_is_gripped_on_what_is_there_made_in_a_setup_before",), "core/judge/lathe_support.cpp",
         "is_there(t.subject, t.setup, t.on.on, false)"),
    Turn(("it_is_gripped_on_what_is_there_a_mandrel_in_a_bore",), "core/judge/lathe_support.cpp",
         "t.on.on.empty()"),
    Turn(("the_tool_goes_into_the_groove_where_its_width_is_said",), "core/judge/turned_size.cpp", "!tool.width"),
    Turn(("what_pressing_does_where_the_bush_s_metal_is_said", "what_pressing_does_where_the_boss_s_metal_is_known"),
         "core/judge/press.cpp", "!metals"),
    Turn(("what_pressing_does_where_the_boss_is_closed_all_round",), "core/judge/press.cpp", "!wall"),
    Turn(("goes_between_the_centres_only_with_something_at_the_tail",), "core/judge/lathe_room.cpp",
         "room.on.tail == route::TailSupport::kNone"),
    Turn(("press_holds",), "core/judge/press.cpp", "!(answer.holds_at_least.base() > 0.0)"),
    Turn(("press_holds",), "core/judge/press.cpp", 'pen.need(path + "/interference/least").value',
         'pen.need(path + "/interference/least").value + BY', is_condition=False),
    Turn(("bore_closes_in_pressing",), "core/judge/press.cpp", 'pen.need(path + "/interference/most").value',
         'pen.need(path + "/interference/most").value + BY', is_condition=False),
    Turn(("O_ring_is_squeezed_enough_and_not_too_much_not_too_deep",), "core/judge/o_ring_seat.cpp",
         "most.value > high.value", "most.value > high.value + BY"),
    Turn(("ring_s_groove",), "core/judge/ring_seat.cpp", "!groove"),
    Turn(("slit_bends_its_hinge_and_springs_back_easily",), "core/judge/clamp.cpp",
         "stress.value > kEasyShare * most.value", "stress.value > kEasyShare * most.value + BY"),
    Turn(("the_saw_reaches_it",), "core/judge/reach.cpp", "sawn_from(feature, up)",
         within="if (sawn_from(feature, up)) return;"),
]

TOLD = r"""
#include <cstdlib>
#include <string_view>
namespace {
[[maybe_unused]] std::string_view told(const char* what) {
  const char* value = std::getenv(what);
  return value == nullptr ? "" : value;
}
[[maybe_unused]] bool turned(std::string_view how) {
  return told("SPAREWRIGHT_TURNED") == how;
}
[[maybe_unused]] double turned_by() {
  return std::atof(std::getenv("SPAREWRIGHT_TURNED_BY"));
}
}  // namespace
"""
ENTRY = "State Pen::judge(const Judgement& j) {\n"
TURNED_ENTRY = """State Pen::judge(const Judgement& given) {
  Judgement j = given;
  Figure low_moved = *j.figure;
  Figure high_moved = *j.figure;
  if (told("SPAREWRIGHT_TURNED_CHECK") == j.check) {
    if (turned("judge/reversed")) std::swap(j.low, j.high);
    if (turned("judge/moved") && j.low != nullptr) {
      low_moved = *j.low;
      low_moved.value += turned_by();
      j.low = &low_moved;
    }
    if (turned("judge/moved") && j.high != nullptr) {
      high_moved = *j.high;
      high_moved.value -= turned_by();
      j.high = &high_moved;
    }
  }
"""


def stop(why):
    sys.exit(f"turn_checks_round: {why}")


def once(text, found, file):
    if text.count(found) != 1:
        stop(f"{file}: '{found}' stands {text.count(found)} times, not once; see TURNS")
    return found


def turned_source(file):
    """The copy of a source, with all its turns in it."""
    text = (ROOT / file).read_text()
    for number, turn in enumerate(TURNS):
        if turn.file != file:
            continue
        as_it_is = f"static_cast<bool>({turn.expression})" if turn.is_condition else f"({turn.expression})"
        if turn.is_condition:
            as_it_is = f'({as_it_is} != turned("{number}/reversed"))'
        new = as_it_is
        if turn.moved:
            moved = turn.moved.replace("BY", "turned_by()")
            moved = f"static_cast<bool>({moved})" if turn.is_condition else f"({moved})"
            new = f'(turned("{number}/moved") ? {moved} : {as_it_is})'
        within = once(text, turn.within or turn.expression, file)
        text = text.replace(within, within.replace(turn.expression, new))
    if file == JUDGE:
        text = text.replace(once(text, ENTRY, file), TURNED_ENTRY)
    last = list(re.finditer(r"^#include .*\n", text, re.MULTILINE))[-1].end()
    return text[:last] + TOLD + text[last:]


def run(command, build):
    done = subprocess.run(command, cwd=build, capture_output=True, text=True, check=False)
    if done.returncode != 0:
        stop(f"failed: {shlex.join(command)}\n{done.stdout}{done.stderr}")


def sources_of(build, compiled):
    """What one command compiles: itself, or the files that the build joined in it."""
    if "/Unity/" not in compiled:
        return [compiled]
    return re.findall(r'^#include "(.*)"$', (build / compiled).read_text(), re.MULTILINE)


def commands(build):
    """The command that links the test program, and by source the one that compiles it, with what it names."""
    done = subprocess.run(["ninja", "-C", str(build), "-t", "commands", TARGET], capture_output=True, text=True,
                          check=False)
    if done.returncode != 0:
        stop(f"no commands of {TARGET} in {build}: {done.stderr}")
    compiles = {}
    link = None
    for line in done.stdout.splitlines():
        words = shlex.split(line)
        if "-c" in words:
            compiled = words[words.index("-c") + 1]
            for source in sources_of(build, compiled):
                compiles[source] = (compiled, words)
        elif any(word.endswith(f"/{TARGET}") for word in words):
            link = words
    if link is None:
        stop(f"how {TARGET} is linked was not found")
    return link, compiles


def built_program(build):
    """Compiles the turned copies and links them in front of the libraries that have the originals."""
    folder = build / "turned"
    link, compiles = commands(build)
    objects = []
    for file in sorted({turn.file for turn in TURNS} | {JUDGE}):
        if str(ROOT / file) not in compiles:
            stop(f"how {file} is compiled was not found")
        compiled, command = compiles[str(ROOT / file)]
        copy = folder / file
        copy.parent.mkdir(parents=True, exist_ok=True)
        text = turned_source(file)
        object_file = copy.with_suffix(".o")
        if not (copy.exists() and object_file.exists() and copy.read_text() == text):
            copy.write_text(text)
            made = command[command.index("-o") + 1]
            # The folder of the sources stands for includes from the top.
            turned = [str(copy) if word == compiled else word for word in command]
            turned = [word.replace(made, str(object_file)) if made in word else word for word in turned]
            run(turned, build)
        objects.append(str(object_file))
    # ": && g++ ... -o tests/program ... && :"
    words = [word for word in link if word not in (":", "&&")]
    at = words.index("-o")
    program = folder / TARGET
    # Where files are compiled together the originals come along with their neighbours: the first one counts.
    first = "-Wl,--allow-multiple-definition"
    run(words[:at] + objects + [first, "-o", str(program)] + words[at + 2:], build)
    return program


class Program:
    def __init__(self, path, build):
        self.path = path
        self.results = build / "turned" / "rows.json"

    def passes(self, row, environment):
        told = dict(os.environ)
        told.setdefault("LSAN_OPTIONS", f"suppressions={ROOT}/tests/leaks.supp:print_suppressions=0")
        told.update(environment)
        done = subprocess.run([str(self.path), f"--gtest_filter={SUITE}{row}", f"--gtest_output=json:{self.results}"],
                              env=told, cwd=ROOT, capture_output=True, text=True, check=False)
        return done.returncode == 0

    def rows(self):
        """Name of each row to what it says of itself; all must pass as they are."""
        passed = self.passes("*", {})
        found = {}
        for suite in json.loads(self.results.read_text())["testsuites"]:
            for case in suite["testsuite"]:
                found[case["name"].split("/")[-1]] = case
        if not passed or not found:
            failed = sorted(name for name, case in found.items() if case.get("failures"))
            stop(f"these rows fail before anything is turned: {', '.join(failed) or 'all'}")
        return found


def turns_of(rows):
    """(row, what is done, environment) of everything to be tried."""
    for name, row in rows.items():
        if row["judged"] != "yes":
            continue
        by = MARGINS * float(row["by"])
        of = {"SPAREWRIGHT_TURNED_CHECK": row["check"]}
        yield name, "reversed", {**of, "SPAREWRIGHT_TURNED": "judge/reversed"}
        for way in (by, -by):
            yield name, f"limit moved {way:+.6g}", {
                **of, "SPAREWRIGHT_TURNED": "judge/moved", "SPAREWRIGHT_TURNED_BY": repr(way)}
    for number, turn in enumerate(TURNS):
        for name in turn.rows:
            if name not in rows:
                stop(f"no row {name}; see TURNS")
            if turn.is_condition:
                yield name, f"reversed: {turn.expression}", {"SPAREWRIGHT_TURNED": f"{number}/reversed"}
            if not turn.moved:
                continue
            for way in turn.ways:
                by = way * MARGINS * float(rows[name]["by"]) * turn.scale
                yield name, f"moved {by:+.6g}: {turn.moved}", {
                    "SPAREWRIGHT_TURNED": f"{number}/moved", "SPAREWRIGHT_TURNED_BY": repr(by)}


def main():
    parser = argparse.ArgumentParser(description="Turns each check round and sees whether its pair fails.")
    parser.add_argument("--build", type=pathlib.Path, default=ROOT / "build" / "sanitize")
    parser.add_argument("--only", default="", metavar="WORD", help="rows with this in their name")
    asked = parser.parse_args()
    build = asked.build.resolve()
    program = Program(built_program(build), build)
    rows = program.rows()
    tried = {name: 0 for name in rows}
    missed = 0
    for name, what, environment in turns_of(rows):
        tried[name] += 1
        if asked.only not in name:
            continue
        caught = not program.passes(name, environment)
        missed += not caught
        print(f"{'caught    ' if caught else 'NOT CAUGHT'}  {name}: {what}", flush=True)
    never = sorted(name for name, count in tried.items() if count == 0)
    for name in never:
        print(f"NOT TRIED   {name}: what decides it is not in TURNS")
    print(f"{len(rows)} rows, {sum(tried.values())} turns, {missed} not caught, {len(never)} rows not tried")
    return 1 if missed or never else 0


if __name__ == "__main__":
    sys.exit(main())
