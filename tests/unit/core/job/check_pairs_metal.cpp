// Pairs of the checks of metal: walls, edges, and what a drill meets.
#include "check_pairs.hpp"
#include "part_text.hpp"

namespace sparewright::tests {
namespace {

using ledger::State;

// --- walls --------------------------------------------------------------------------------------------------------

// 1/16 in is the least (common practice).
const std::string kHalfInch = "how = \"drilled\"\ndiameter = \"0.500 ±0.000\"";

const CheckPairs kWalls{{
    // Radius at its most 0.251, place out by 0.005 (the general tolerance of three places): e - 0.256 against 0.0625.
    {.check = "least wall",
     .subject = "bore",
     .about = "to the outside",
     .job = job_with(hole_text("bore", "2", "@", "how = \"drilled\"\ndiameter = \"0.500 +0.002/-0.000\"")),
     .inside = "0.3195",
     .outside = "0.3175",
     .by = 1 * kThou},
    // Two radii of 0.250 and two places out by 0.005 each: d - 0.510 against 0.0625, from x = 1 on.
    {.check = "least wall",
     .subject = "one",
     .about = "between holes",
     .job = job_with(hole_text("one", "1.000", "1.5", kHalfInch) + hole_text("other", "@", "1.5", kHalfInch)),
     .inside = "1.5735",
     .outside = "1.5715",
     .by = 1 * kThou},
    // A pocket 30 wide in a plate 60 wide, in mm and at nominal size: 60 - y - 15 against 1.5875.
    {.check = "least wall",
     .subject = "it",
     .about = "beside a pocket",
     .job = plate() + form("pocket",
                           "at.x = \"50\"\nat.y = \"@\"\nlength = \"40\"\nwidth = \"30\"\ndepth = \"8\"\n"
                           "corner_radius = \"5\""),
     .inside = "43.3925",
     .outside = "43.4325",
     .by = 0.02},
    // Its middle y from the front leaves y - 0.250 until the front is milled off: 0.0635, 0.0615 against 0.0625.
    {.check = "least wall while it is made",
     .subject = "bore",
     .job = job_with(
         feature_text("bore", "hole",
                      "how = \"drilled\"\ndiameter = \"0.500\"\nat.x = \"2\"\nat.y = { size = \"@\", "
                      "from = \"back\" }") +
         feature_text("front flat", "flat", "side = \"front\"\nleaves = \"2.800\"") +
         made_with("bore", "\"spot\", \"drill 1/2\"")),
     .inside = "2.6865",
     .outside = "2.6885",
     .by = 1 * kThou,
     .inside_is = kSilent,
     .outside_is = State::kClose},
}};

// --- edges --------------------------------------------------------------------------------------------------------

// Of a hole of 0.200 for a thread: 1-1/2 diameters are 0.300 and 1 diameter 0.200 (common practice).
std::string tapped_near_the_front() {
  return job_with(
      hole_text("screw", "2", "@", "how = \"tapped\"\nthread = \"1/4-20 UNC-2B\"\ndiameter = \"0.200\""));
}

const CheckPairs kEdges{{
    {.check = "edge distance",
     .subject = "screw",
     .about = "of one and a half diameters",
     .job = tapped_near_the_front(),
     .inside = "0.301",
     .outside = "0.299",
     .by = 1 * kThou,
     .outside_is = State::kClose,
     .outside_margin = 99 * kThou},  // over one diameter
    {.check = "edge distance",
     .subject = "screw",
     .about = "of one diameter",
     .job = tapped_near_the_front(),
     .inside = "0.201",
     .outside = "0.199",
     .by = 1 * kThou,
     .inside_is = State::kClose},
    // 3/4 of a bore of 0.500 is 0.375: a boss of one and a half bores (common practice). Against its rim, half a bore, it is
    // 0.374 less 0.250.
    {.check = "edge distance",
     .subject = "bore",
     .about = "of a bored hole",
     .job = job_with(hole_text("bore", "2", "@",
                               "how = \"bored\"\ndiameter = { size = \"0.500\", mate = \"pin\", clearance = "
                               "\"0.000 to +0.100\" }")),
     .inside = "0.376",
     .outside = "0.374",
     .by = 1 * kThou,
     .outside_is = State::kClose,
     .outside_margin = 124 * kThou},
}};

// --- a drill starts square ----------------------------------------------------------------------------------------

// On a bar of radius 1 with its middle e from the centre line, a drill of diameter d meets the bar at
// sqrt(1 - (e - d/2)^2) on one side and at sqrt(1 - (e + d/2)^2) on the other.
//   d = 0.250: 5 degrees are 0.250 tan 5 = 0.0218722 between the two. At e = 0.0861220 there are 0.0217842, 4.98
//     degrees; at e = 0.0868118 0.0219601, 5.02 degrees.
//   d = 0.500: 2 degrees are 0.500 tan 2 = 0.0174604. At e = 0.0334522 there are 0.0172856, 1.98 degrees; at
//     e = 0.0341277 0.0176351, 2.02 degrees.
// Up to 2 degrees is square enough and past 5 a drill walks (common practice).
const CheckPairs kStarts{{
    {.check = "drill starts square",
     .subject = "oil",
     .about = "up to 5 degrees",
     .job = round_bar_with(hole_text("oil", "2", "@", "how = \"drilled\"\ndiameter = \"0.250\"")),
     .inside = "1.0861220",
     .outside = "1.0868118",
     .by = 0.02 * kDegree,
     .inside_is = State::kClose},
    {.check = "drill starts square",
     .subject = "oil",
     .about = "up to 2 degrees",
     .job = round_bar_with(hole_text("oil", "2", "@", "how = \"drilled\"\ndiameter = \"0.500\"") +
                           made_with("oil", "\"spot\", \"drill 1/2\"")),
     .inside = "1.0334522",
     .outside = "1.0341277",
     .by = 0.02 * kDegree,
     .outside_is = State::kClose,
     .outside_margin = (5.0 - 2.02) * kDegree},
    {.check = "drill starts square",
     .subject = "oil",
     .about = "with a dimple on a bar",
     .job = round_bar_with(hole_text("oil", "2", "1", "how = \"drilled\"\ndiameter = \"0.500\"") +
                           made_with("oil", "@\"drill 1/2\"")),
     .inside = "\"spot\", ",
     .outside = "",
     .outside_is = State::kClose},
    {.check = "drill starts square",
     .subject = "oil",
     .about = "where it leans",
     .job = job_with(hole_text("oil", "2", "1.5", "how = \"drilled\"\ndiameter = \"0.250\"\n@")),
     .inside = "",
     .outside = "leans = { towards = \"right end\", angle = \"30\" }",
     .inside_is = kSilent,
     .outside_is = State::kClose},
    // Its radius is 0.250.
    {.check = "drill starts square",
     .subject = "bore",
     .about = "over the edge",
     .job = job_with(hole_text("bore", "2", "@", "how = \"drilled\"\ndiameter = \"0.500\"")),
     .inside = "0.251",
     .outside = "0.249",
     .by = 1 * kThou,
     .inside_is = kSilent},
}};

// --- a drill meets a hole, or comes out ---------------------------------------------------------------------------

// A hole of 0.500 through the front, its middle line at x = 2; then one of 0.250 from the top whose middle line passes it a
// away: they overlap by 0.375 - a.
std::string crossing() {
  return job_with(feature_text("way", "hole",
                               "how = \"drilled\"\ninto = \"front\"\nat.x = \"2\"\nat.z = \"0.5\"\n"
                               "diameter = \"0.500\"") +
                  hole_text("oil", "@", "1.5", "how = \"drilled\"\ndiameter = \"0.250\""));
}
// A slot 0.400 deep in the underside leaves 0.600 over it. A drill of 0.500 has a point of 0.250 / tan 59 = 0.1502152.
std::string over_a_slot() {
  return job_with(feature_text("groove", "slot",
                               "side = \"underside\"\nalong = \"x\"\nat.x = \"2\"\nat.y = \"1.5\"\n"
                               "width = \"1\"\ndepth = \"0.400\"") +
                  hole_text("feed", "2", "1.5", "how = \"drilled\"\ndiameter = \"0.500\"\ndepth = \"@\""));
}

const CheckPairs kMeetings{{
    // Half its diameter is 0.125 (common practice): a = 0.249, 0.251.
    {.check = "drill meets way",
     .subject = "oil",
     .about = "with half its width",
     .job = crossing(),
     .inside = "2.249",
     .outside = "2.251",
     .by = 1 * kThou,
     .inside_is = State::kClose},
    // They part at a = 0.375.
    {.check = "drill meets way",
     .subject = "oil",
     .about = "at all",
     .job = crossing(),
     .inside = "2.376",
     .outside = "2.374",
     .by = 1 * kThou,
     .inside_is = kSilent,
     .outside_margin = -124 * kThou},
    // The radii are 0.250 and 0.125.
    {.check = "drill meets one",
     .subject = "two",
     .about = "alongside",
     .job = job_with(hole_text("one", "1", "1.5", "how = \"drilled\"\ndiameter = \"0.500\"") +
                     hole_text("two", "@", "1.5", "how = \"drilled\"\ndiameter = \"0.250\"")),
     .inside = "1.376",
     .outside = "1.374",
     .by = 1 * kThou,
     .inside_is = kSilent},
    // The point reaches 0.599, 0.601 of the 0.600 over the slot.
    {.check = "blind hole ends in metal",
     .subject = "feed",
     .about = "with its point",
     .job = over_a_slot(),
     .inside = "0.4487848",
     .outside = "0.4507848",
     .by = 1 * kThou,
     .inside_is = kSilent,
     .outside_margin = -149.2152 * kThou},
    // So does its full diameter: then it is through.
    {.check = "blind hole ends in metal",
     .subject = "feed",
     .about = "or is through",
     .job = over_a_slot(),
     .inside = "0.601",
     .outside = "0.599",
     .by = 1 * kThou,
     .inside_is = State::kClose},
}};

// --- blind threads ------------------------------------------------------------------------------------------------

const CheckPairs kBlindThreads{{
    // 1/4-20: a plug tap leads in 5 pitches of 0.050, one more for chips, 0.300; half a diameter is 0.125 (common practice).
    {.check = "a blind thread has full thread",
     .subject = "hole",
     .job = job_with(
         hole_text("hole", "2", "1.5", "how = \"tapped\"\nthread = \"1/4-20 UNC-2B\"\ndepth = \"@\"")),
     .inside = "0.426",
     .outside = "0.424",
     .by = 1 * kThou,
     .inside_is = State::kClose},
}};

}  // namespace
}  // namespace sparewright::tests
