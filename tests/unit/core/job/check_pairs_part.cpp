// Pairs of the checks of the part as a whole, its blank, its room, its heads and shoulders.
#include "check_pairs.hpp"
#include "part_text.hpp"

namespace sparewright::tests {
namespace {

using ledger::State;

// --- screw heads and shoulders ------------------------------------------------------------------------------------

// A 1/4 in socket head is 0.375 across and 0.250 high at most (ASME B18.3). The general tolerance of three places is 0.005.
std::string counterbored(const std::string& diameter, const std::string& depth) {
  return job_with(
      hole_text("screw", "2", "1.5",
                fmt::format("how = \"counterbored\"\nscrew = \"1/4-20 socket head\"\ncounterbore = "
                            "{{ diameter = \"{}\", depth = \"{}\" }}",
                            diameter, depth)));
}

const CheckPairs kHeads{{
    // At its least 0.376, 0.374 across.
    {.check = "screw head seats",
     .subject = "screw",
     .about = "in a counterbore",
     .job = counterbored("@", "0.300"),
     .inside = "0.381",
     .outside = "0.379",
     .by = 1 * kThou},
    // Twice the way to the front: 0.376, 0.374.
    {.check = "screw head seats",
     .subject = "screw",
     .about = "on a plain face",
     .job = job_with(
         hole_text("screw", "2", "@", "how = \"drilled\"\nscrew = \"1/4-20 socket head\"\nhead = \"proud\"")),
     .inside = "0.188",
     .outside = "0.187",
     .by = 1 * kThou},
    // At its least 0.251, 0.249 deep.
    {.check = "screw head flush or below",
     .subject = "screw",
     .job = counterbored("0.438", "@"),
     .inside = "0.256",
     .outside = "0.254",
     .by = 1 * kThou},
    // The fillet at its most against a corner of 0.040.
    {.check = "mate goes up to the shoulder",
     .subject = "seat",
     .job = round_bar_with(feature_text(
         "seat", "turned",
         "side = \"left end\"\ndiameter = \"1.5\"\nlength = \"1\"\nfillet = { size = \"@\", tol = "
         "\"+0.000/-0.002\" }\nmate_corner = { size = \"0.040\", tol = \"±0.000\" }")),
     .inside = "0.039",
     .outside = "0.041",
     .by = 1 * kThou},
}};

// --- the blank ----------------------------------------------------------------------------------------------------

// 106 long as cast, 100 finished; the lowest spot of the left end is 1 deep.
std::string casting() {
  return R"([job]
title = "Test"
units = "mm"
[blank]
shape = "casting"
material = "not known"
size = { length = "106", width = "60", thickness = "20" }
found = { length = "106", width = "60", thickness = "20" }
found_with = "fine"
rough = [{ side = "left end", uneven = "1" }, { side = "right end", uneven = "0.5" }]
[[feature]]
name = "left"
kind = "flat"
side = "left end"
leaves = { size = "@", tol = "±0.1" }
[[feature]]
name = "right"
kind = "flat"
side = "right end"
leaves = { size = "100", tol = "±0.1" }
)";
}

const CheckPairs kBlanks{{
    // 1.000 less what is left and 0.005: 0.004, 0.002 against 0.003 (common practice).
    {.check = "blank cleans up",
     .subject = "flat",
     .job = job_with(feature_text("flat", "flat", "leaves = { size = \"@\", tol = \"±0.005\" }")),
     .inside = "0.991",
     .outside = "0.993",
     .by = 1 * kThou},
    // 106 less what is left, less 1: 0.02, -0.02.
    {.check = "casting is shared out",
     .subject = "blank",
     .job = casting(),
     .inside = "104.98",
     .outside = "105.02",
     .by = 0.02},
    // The block is 4 long, the radius 0.250.
    {.check = "it cuts metal",
     .subject = "bore",
     .job = job_with(hole_text("bore", "@", "1.5", "how = \"drilled\"\ndiameter = \"0.500\"")),
     .inside = "4.249",
     .outside = "4.251",
     .by = 1 * kThou,
     .inside_is = kSilent},
    // A pocket 30 wide has room for corners of 15.
    {.check = "geometry",
     .subject = "it",
     .job = plate() + form("pocket",
                           "at.x = \"50\"\nat.y = \"30\"\nlength = \"40\"\nwidth = \"30\"\ndepth = \"8\"\n"
                           "corner_radius = \"@\""),
     .inside = "14.98",
     .outside = "15.02",
     .inside_is = kSilent},
    // A saw cut 2 wide in a plate 100 long.
    {.check = "split leaves two pieces",
     .subject = "it",
     .job = plate() + form("split", "side = \"left end\"\nfrom_side = \"@\"\nwidth = \"2\""),
     .inside = "97.98",
     .outside = "98.02",
     .by = 0.02,
     .inside_is = kSilent},
}};

// --- room and hand ------------------------------------------------------------------------------------------------

// The block 4 x 3 x 1 with 0.100 milled off its top.
std::string in_space(const std::string& space) {
  return job_with(feature_text("skim", "flat", "leaves = \"0.900\"") + "[space]\n" + space + "\n");
}

// Two blind holes in the top, one on the middle line x = 2: the other's image lies twice as far off as the hole is off that
// line. Up to 0.005, the tolerance of three places, it is the same place.
const std::string kBlind = "how = \"drilled\"\ndiameter = \"0.250\"\ndepth = \"0.5\"";
// Through holes 0.5 from each end change places when the part is turned half round.
const std::string kThrough = "how = \"drilled\"\ndiameter = \"0.250\"";

const CheckPairs kRooms{{
    {.check = "part has room",
     .subject = "part",
     .job = in_space("envelope = { length = \"5\", width = \"5\", height = \"@\" }"),
     .inside = "0.901",
     .outside = "0.899",
     .by = 1 * kThou},
    {.check = "part passes the opening",
     .subject = "part",
     .about = "with its larger side",
     .job = in_space("opening = { width = \"0.950\", height = \"@\" }"),
     .inside = "3.001",
     .outside = "2.999",
     .by = 1 * kThou},
    // Over its corners: sqrt(3^2 + 0.9^2) = 3.1320920.
    {.check = "part passes the opening",
     .subject = "part",
     .about = "that is round",
     .job = in_space("opening = { diameter = \"@\" }"),
     .inside = "3.1330920",
     .outside = "3.1310920",
     .by = 1 * kThou},
    // 0.004, 0.006 off.
    {.check = "left or right",
     .subject = "part",
     .job = job_with(hole_text("one", "@", "0.5", kBlind) + hole_text("two", "2", "2", kBlind)),
     .inside = "2.002",
     .outside = "2.003",
     .by = 1 * kThou,
     .outside_is = State::kNotKnown},
    // A slot and a hole on the middle line: the slot's image lies 0.004, 0.006 off.
    {.check = "left or right",
     .subject = "part",
     .about = "by a slot",
     .job = job_with(feature_text("way", "slot",
                                  "along = \"x\"\nat.x = \"@\"\nat.y = \"0.5\"\nlength = \"1\"\n"
                                  "width = \"0.25\"\ndepth = \"0.25\"") +
                     hole_text("two", "2", "2", kBlind)),
     .inside = "2.002",
     .outside = "2.003",
     .by = 1 * kThou,
     .outside_is = State::kNotKnown},
    // 0.004, 0.006 off.
    {.check = "may be turned over",
     .subject = "part",
     .job = with_job_line(
         job_with(hole_text("one", "0.5", "1.5", kThrough) + hole_text("two", "@", "1.5", kThrough) +
                  hole_text("blind", "2", "1.5", "how = \"drilled\"\ndiameter = \"0.375\"\ndepth = \"0.3\"")),
         "turn_over = true"),
     .inside = "3.496",
     .outside = "3.494",
     .by = 1 * kThou,
     .outside_is = State::kClose},
}};

}  // namespace
}  // namespace sparewright::tests
