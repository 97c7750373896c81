// The checks of edges, drills, shoulders, room and hand: for each a job just inside its limit and one just outside, both
// worked by hand.
#include <cmath>

#include <fmt/format.h>
#include <gmock/gmock.h>

#include "judged_job.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::HasSubstr;
using tests::job_with;
using tests::judged;
using tests::setup_with;

constexpr double kTiny_in = 1e-6;

std::string quoted(double inches) {
  return fmt::format("\"{:.6f}\"", inches);
}

std::string hole(const std::string& name, double x, double y, const std::string& rest) {
  return fmt::format("[[feature]]\nname = \"{}\"\nkind = \"hole\"\nat.x = {}\nat.y = {}\n{}\n", name,
                     quoted(x), quoted(y), rest);
}

std::string feature(const std::string& name, const std::string& kind, const std::string& rest) {
  return fmt::format("[[feature]]\nname = \"{}\"\nkind = \"{}\"\n{}\n", name, kind, rest);
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  return text.replace(text.find(from), from.size(), to);
}

// A bar 4 long and 2 in diameter in place of the block; of a material with no mill limits, so that it is as large as it says.
std::string bar_with(const std::string& sections) {
  return replaced(replaced(job_with(sections, R"({ length = "4", diameter = "2" })"), "shape = \"block\"",
                           "shape = \"round bar\""),
                  "1018 cold drawn", "not known");
}

bool says(tests::Judged& job, const std::string& check, const std::string& subject) {
  for (const ledger::Verdict& v : job.ledger.verdicts()) {
    if (v.check == check && v.subject == subject) return true;
  }
  return false;
}

// --- edge distance ------------------------------------------------------------------------------------------------
// A hole of 0.200 for a pin or a thread with its middle e from the front: 1.5 diameters are 0.300, 1 diameter 0.200.
std::string tapped(double e) {
  return job_with(
      hole("screw", 2.0, e, "how = \"tapped\"\nthread = \"1/4-20 UNC-2B\"\ndiameter = \"0.200\""));
}

TEST(EdgeDistanceCheck, OneAndAHalfDiameters) {
  auto inside = judged(tapped(0.301));
  EXPECT_EQ(inside.state("edge distance", "screw"), State::kOk);
  EXPECT_NEAR(inside.margin_in("edge distance", "screw"), 0.001, kTiny_in);
  auto outside = judged(tapped(0.299));
  EXPECT_EQ(outside.state("edge distance", "screw"), State::kClose);
  EXPECT_NEAR(outside.margin_in("edge distance", "screw"), 0.099, kTiny_in);  // against one diameter
  EXPECT_THAT(outside.verdict("edge distance", "screw").todo, HasSubstr("move it 0.001 further in"));
}

TEST(EdgeDistanceCheck, OneDiameter) {
  auto inside = judged(tapped(0.201));
  EXPECT_EQ(inside.state("edge distance", "screw"), State::kClose);
  auto outside = judged(tapped(0.199));
  EXPECT_EQ(outside.state("edge distance", "screw"), State::kNo);
  EXPECT_NEAR(outside.margin_in("edge distance", "screw"), -0.001, kTiny_in);
}

// A step from 2.5 on: its wall is an edge too, 0.15 from the middle.
TEST(EdgeDistanceCheck, TheWallOfAStepIsAnEdge) {
  auto job = judged(job_with(
      feature("step", "flat",
              "leaves = \"0.300\"\nregion = { along = \"x\", start = \"2.500\", towards = \"right end\" }") +
      hole("screw", 2.35, 1.5, "how = \"tapped\"\nthread = \"1/4-20 UNC-2B\"\ndiameter = \"0.200\"")));
  EXPECT_EQ(job.state("edge distance", "screw"), State::kNo);
  EXPECT_NEAR(job.margin_in("edge distance", "screw"), -0.050, kTiny_in);
}

// A block sawn in two through its bore, 0.9 diameters from the nearest edge beside it: the front, which the bore goes into,
// is its mouth, and the cut of the saw is the bore's own.
TEST(EdgeDistanceCheck, TheMouthOfABoreIsNoEdge) {
  auto job = judged(
      job_with(feature("joint", "split", "side = \"top\"\nfrom_side = \"0.450\"\nwidth = \"0.100\"") +
               feature("bore", "hole",
                       "how = \"bored\"\ninto = \"front\"\nat.x = \"2\"\nat.z = \"0.500\"\n"
                       "diameter = { size = \"0.550\", mate = \"pin\", clearance = \"+0.010 to +0.100\" }")));
  EXPECT_EQ(job.state("edge distance", "bore"), State::kOk);
  EXPECT_NEAR(job.margin_in("edge distance", "bore"), 0.0875, kTiny_in);  // 0.500 less 3/4 of 0.550
}

TEST(EdgeDistanceCheck, SaysNothingOfAHoleForNothingOrFarFromAllEdges) {
  auto plain = judged(job_with(hole("vent", 2.0, 0.25, "how = \"drilled\"\ndiameter = \"0.200\"")));
  EXPECT_FALSE(says(plain, "edge distance", "vent"));
  auto far = judged(tapped(1.5));
  EXPECT_FALSE(says(far, "edge distance", "screw"));
}

// --- a drill starts square -----------------------------------------------------------------------------------------
// On a bar of radius 1 with the drill's middle e from the centre line, a drill of 0.250 meets the bar at
// sqrt(1 - (e - 0.125)^2) on one side and sqrt(1 - (e + 0.125)^2) on the other. 5 degrees are 0.250 tan 5 = 0.021872
// between the two. e = 0.0860: 0.999239 - 0.977486 = 0.021753, 4.97 degrees. e = 0.0875: 0.999297 - 0.977161 = 0.022136,
// 5.06 degrees. 2 degrees are 0.008730: e = 0.0340: 0.995851 - 0.987279 = 0.008572; e = 0.0352: 0.995960 - 0.987085 = 0.008875.
std::string across_bar(double e, const std::string& setup = "") {
  return bar_with(hole("oil", 2.0, 1.0 + e, "how = \"drilled\"\ndiameter = \"0.250\"") + setup);
}

TEST(DrillStartCheck, FiveDegreesOnTheSideOfABar) {
  auto inside = judged(across_bar(0.0860));
  EXPECT_EQ(inside.state("drill starts square", "oil"), State::kClose);
  auto outside = judged(across_bar(0.0875));
  EXPECT_EQ(outside.state("drill starts square", "oil"), State::kNo);
  const auto verdict = outside.verdict("drill starts square", "oil");
  EXPECT_NEAR(outside.ledger.get(verdict.figure).value, std::atan(0.022136 / 0.250), 1e-4);
  EXPECT_THAT(verdict.reason, HasSubstr("5.1 degrees from square"));
}

TEST(DrillStartCheck, TwoDegreesAreSquareEnough) {
  auto inside = judged(across_bar(0.0340));
  EXPECT_THAT(inside.verdict("drill starts square", "oil").reason, HasSubstr("on the centre line"));
  auto outside = judged(across_bar(0.0352));
  EXPECT_THAT(outside.verdict("drill starts square", "oil").reason, HasSubstr("2.0 degrees from square"));
  EXPECT_EQ(outside.state("drill starts square", "oil"), State::kClose);
}

TEST(DrillStartCheck, OnTheCentreLineOfABarASpotDrillMakesItOk) {
  auto job = judged(across_bar(0.0));
  EXPECT_EQ(job.state("drill starts square", "oil"), State::kClose);
  auto spotted =
      judged(bar_with(hole("oil", 2.0, 1.0, "how = \"drilled\"\ndiameter = \"0.500\"") +
                      setup_with("[[setup.do]]\nmake = \"oil\"\nwith = [\"spot\", \"drill 1/2\"]\n")));
  EXPECT_EQ(spotted.state("drill starts square", "oil"), State::kOk);
}

TEST(DrillStartCheck, AHoleThatIsMeantToLeanIsToldHowToBeStarted) {
  auto job = judged(job_with(hole("oil", 2.0, 1.5,
                                  "how = \"drilled\"\ndiameter = \"0.250\"\nleans = { towards = "
                                  "\"right end\", angle = \"30\" }")));
  const auto verdict = job.verdict("drill starts square", "oil");
  EXPECT_EQ(verdict.state, State::kClose);
  EXPECT_THAT(verdict.reason, HasSubstr("30.0 degrees"));
}

// A drill of 0.500 with its middle 0.251 from the front stands on metal all round; at 0.249 a sliver of it does not.
TEST(DrillStartCheck, OverTheEdge) {
  const auto at = [](double y) {
    return job_with(hole("bore", 2.0, y, "how = \"drilled\"\ndiameter = \"0.500\""));
  };
  auto inside = judged(at(0.251));
  EXPECT_FALSE(says(inside, "drill starts square", "bore"));
  auto outside = judged(at(0.249));
  EXPECT_EQ(outside.state("drill starts square", "bore"), State::kNo);
  EXPECT_THAT(outside.verdict("drill starts square", "bore").reason, HasSubstr("over the air"));
}

// --- a drill meets a hole ------------------------------------------------------------------------------------------
// A hole of 0.500 through the front at z 0.500; then one of 0.250 from the top whose middle line passes it at a distance
// a: they overlap by 0.375 - a, and half its diameter is 0.125. On the limit at a = 0.250.
std::string crossing(double a) {
  return job_with(feature("way", "hole",
                          "how = \"drilled\"\ninto = \"front\"\nat.x = \"2\"\nat.z = \"0.5\"\n"
                          "diameter = \"0.500\"") +
                  hole("oil", 2.0 + a, 1.5, "how = \"drilled\"\ndiameter = \"0.250\""));
}

TEST(DrillMeetsCheck, HalfItsDiameter) {
  auto inside = judged(crossing(0.249));
  EXPECT_EQ(inside.state("drill meets way", "oil"), State::kClose);
  auto outside = judged(crossing(0.251));
  const auto verdict = outside.verdict("drill meets way", "oil");
  EXPECT_EQ(verdict.state, State::kNo);
  EXPECT_NEAR(outside.margin_in("drill meets way", "oil"), -0.001, kTiny_in);
  EXPECT_THAT(verdict.reason, HasSubstr("0.124 of its 0.250 width"));
  EXPECT_FALSE(says(outside, "drill meets oil", "way"));  // that one was there first
}

TEST(DrillMeetsCheck, JustClearOfItSaysNothing) {
  auto touching = judged(crossing(0.374));
  EXPECT_TRUE(says(touching, "drill meets way", "oil"));
  auto clear = judged(crossing(0.376));
  EXPECT_FALSE(says(clear, "drill meets way", "oil"));
  EXPECT_EQ(clear.state("least wall", "oil"), State::kNo);  // a wall of 0.001, less the tolerances
}

TEST(DrillMeetsCheck, ThroughTheMiddleIsSaidToBeAllOfIt) {
  auto job = judged(crossing(0.0));
  EXPECT_THAT(job.verdict("drill meets way", "oil").reason, HasSubstr("with all of its 0.250 width"));
}

TEST(DrillMeetsCheck, AlongsideAnotherHole) {
  const auto beside = [](double apart) {
    return job_with(hole("one", 1.0, 1.5, "how = \"drilled\"\ndiameter = \"0.500\"") +
                    hole("two", 1.0 + apart, 1.5, "how = \"drilled\"\ndiameter = \"0.250\""));
  };
  auto outside = judged(beside(0.374));  // the two meet at 0.375
  EXPECT_EQ(outside.state("drill meets one", "two"), State::kNo);
  auto inside = judged(beside(0.376));
  EXPECT_FALSE(says(inside, "drill meets one", "two"));
}

// --- a blind hole comes out in a cut --------------------------------------------------------------------------------
// A slot 0.400 deep in the underside leaves 0.600 over it. A 0.500 drill has a point of 0.250 / tan 59 = 0.15022.
std::string over_slot(double depth) {
  return job_with(feature("groove", "slot",
                          "side = \"underside\"\nalong = \"x\"\nat.x = \"2\"\nat.y = \"1.5\"\n"
                          "width = \"1\"\ndepth = \"0.400\"") +
                  hole("feed", 2.0, 1.5,
                       fmt::format("how = \"drilled\"\ndiameter = \"0.500\"\ndepth = {}", quoted(depth))));
}

TEST(BlindEndCheck, ThePointAloneAndTheWholeDiameter) {
  auto inside = judged(over_slot(0.449));  // the point ends at 0.59922
  EXPECT_FALSE(says(inside, "blind hole ends in metal", "feed"));
  auto point = judged(over_slot(0.451));  // 0.60122
  EXPECT_EQ(point.state("blind hole ends in metal", "feed"), State::kNo);
  EXPECT_THAT(point.verdict("blind hole ends in metal", "feed").reason,
              HasSubstr("only its point comes out in groove, by 0.001"));
  auto almost = judged(over_slot(0.599));
  EXPECT_EQ(almost.state("blind hole ends in metal", "feed"), State::kNo);
  EXPECT_NEAR(almost.margin_in("blind hole ends in metal", "feed"), -0.001, kTiny_in);
  auto through = judged(over_slot(0.601));
  EXPECT_EQ(through.state("blind hole ends in metal", "feed"), State::kClose);
}

// --- a fillet in a shoulder ------------------------------------------------------------------------------------------
// Fillet R +0/-0.002 against a corner of 0.040 ±0.000: the mate stands off by R - 0.040.
std::string shoulder(double fillet) {
  return bar_with(feature(
      "seat", "turned",
      fmt::format("side = \"left end\"\ndiameter = \"1.5\"\nlength = \"1\"\nfillet = {{ size = {}, tol = "
                  "\"+0.000/-0.002\" }}\nmate_corner = {{ size = \"0.040\", tol = \"±0.000\" }}",
                  quoted(fillet))));
}

TEST(ShoulderCheck, AFilletUnderAndOverTheMatesCorner) {
  auto inside = judged(shoulder(0.039));
  EXPECT_EQ(inside.state("mate goes up to the shoulder", "seat"), State::kOk);
  EXPECT_NEAR(inside.margin_in("mate goes up to the shoulder", "seat"), 0.001, kTiny_in);
  auto outside = judged(shoulder(0.043));
  EXPECT_EQ(outside.state("mate goes up to the shoulder", "seat"), State::kNo);
  EXPECT_THAT(outside.verdict("mate goes up to the shoulder", "seat").reason,
              HasSubstr("stands off by 0.003"));
}

// --- room --------------------------------------------------------------------------------------------------------------
// The block 4 x 3 x 1 with 0.100 milled off its top is 0.900 high.
std::string in_space(const std::string& space) {
  return job_with(feature("skim", "flat", "leaves = \"0.900\"") + "[space]\n" + space);
}

TEST(EnvelopeCheck, OfTheFinishedPart) {
  const auto room = [](const char* height) {
    return in_space(fmt::format("envelope = {{ length = \"5\", width = \"5\", height = \"{}\" }}\n", height));
  };
  auto inside = judged(room("0.901"));
  EXPECT_EQ(inside.state("part has room", "part"), State::kOk);
  EXPECT_NEAR(inside.margin_in("part has room", "part"), 0.001, kTiny_in);
  auto outside = judged(room("0.899"));
  EXPECT_EQ(outside.state("part has room", "part"), State::kNo);
  EXPECT_NEAR(outside.margin_in("part has room", "part"), -0.001, kTiny_in);
}

TEST(EnvelopeCheck, TurnedByQuartersOnlyWhereTheJobSaysSo) {
  const char* on_edge = "envelope = { length = \"3.1\", width = \"1\", height = \"4.1\" }\n";
  EXPECT_EQ(judged(in_space(on_edge)).state("part has room", "part"), State::kNo);
  const char* any_way = "envelope = { length = \"3.1\", width = \"1\", height = \"4.1\", any_way = true }\n";
  auto job = judged(in_space(any_way));
  EXPECT_EQ(job.state("part has room", "part"), State::kOk);
  EXPECT_NEAR(job.margin_in("part has room", "part"), 0.100, kTiny_in);
}

// End first it is 3 x 0.9 across: through a square-cornered opening as it is, through a round one over its corners:
// sqrt(3^2 + 0.9^2) = 3.13209.
TEST(OpeningCheck, SquareAndRound) {
  auto inside = judged(in_space("opening = { width = \"0.901\", height = \"3.010\" }\n"));
  EXPECT_EQ(inside.state("part passes the opening", "part"), State::kOk);
  EXPECT_NEAR(inside.margin_in("part passes the opening", "part"), 0.001, kTiny_in);
  auto outside = judged(in_space("opening = { width = \"0.901\", height = \"2.999\" }\n"));
  EXPECT_EQ(outside.state("part passes the opening", "part"), State::kNo);
  auto round = judged(in_space("opening = { diameter = \"3.133\" }\n"));
  EXPECT_EQ(round.state("part passes the opening", "part"), State::kOk);
  EXPECT_NEAR(round.margin_in("part passes the opening", "part"), 3.133 - 3.13209, 1e-5);
  EXPECT_EQ(judged(in_space("opening = { diameter = \"3.131\" }\n")).state("part passes the opening", "part"),
            State::kNo);
}

TEST(OpeningCheck, ATurnedBarPassesByItsOwnDiameter) {
  const std::string seat =
      feature("seat", "turned", "side = \"left end\"\ndiameter = \"1.5\"\nlength = \"4\"");
  auto job = judged(bar_with(seat + "[space]\nopening = { diameter = \"1.501\" }\n"));
  EXPECT_EQ(job.state("part passes the opening", "part"), State::kOk);
  EXPECT_NEAR(job.margin_in("part passes the opening", "part"), 0.001, 1e-5);
}

TEST(OpeningCheck, ATextThatGivesHalfAnOpeningIsTold) {
  EXPECT_THAT(tests::troubles_of(in_space("opening = { width = \"1\" }\n")),
              HasSubstr("needs the key 'height'"));
  EXPECT_THAT(tests::troubles_of(in_space("opening = { width = \"1\", height = \"1\", diameter = \"1\" }\n")),
              HasSubstr("either a diameter, or width and height"));
}

// --- hand ----------------------------------------------------------------------------------------------------------------
// Two blind holes in the top, one on the middle line x = 2; the other one's image lies twice as far off as the hole is off
// that line. Up to 0.005, the tolerance of three places, that is the same place: on the limit at x = 2.0025.
std::string l_of_holes(double x, const std::string& says = "") {
  const std::string rest = "how = \"drilled\"\ndiameter = \"0.250\"\ndepth = \"0.5\"";
  std::string text = job_with(hole("one", x, 0.5, rest) + hole("two", 2.0, 2.0, rest));
  const std::string units = "units = \"in\"\n";
  return text.insert(text.find(units) + units.size(), says);
}

TEST(HandCheck, APartThatIsNotItsOwnMirrorImageHasAHand) {
  auto alike = judged(l_of_holes(2.0024));
  EXPECT_EQ(alike.state("left or right", "part"), State::kOk);
  auto handed = judged(l_of_holes(2.0026));
  const auto verdict = handed.verdict("left or right", "part");
  EXPECT_EQ(verdict.state, State::kNotKnown);
  EXPECT_EQ(verdict.missing, std::vector<std::string>{"job.hand"});
  auto said = judged(l_of_holes(2.0026, "hand = \"right, seen from the top\"\n"));
  EXPECT_EQ(said.state("left or right", "part"), State::kOk);
  auto wrongly_said = judged(l_of_holes(2.0026, "hand = \"not handed\"\n"));
  EXPECT_EQ(wrongly_said.state("left or right", "part"), State::kClose);
}

// Through holes at 0.5 and 3.5: turned half round they change places. At 3.480 the one is 0.020 off.
TEST(TurnOverCheck, SaysWhatWouldStandElsewhere) {
  const auto turned = [](double x) {
    const std::string rest = "how = \"drilled\"\ndiameter = \"0.250\"";
    std::string text =
        job_with(hole("one", 0.5, 1.5, rest) + hole("two", x, 1.5, rest) +
                 hole("blind", 2.0, 1.5, "how = \"drilled\"\ndiameter = \"0.375\"\ndepth = \"0.3\""));
    const std::string units = "units = \"in\"\n";
    return text.insert(text.find(units) + units.size(), "turn_over = true\n");
  };
  auto same = judged(turned(3.5));
  EXPECT_EQ(same.state("may be turned over", "part"), State::kOk);
  auto moved = judged(turned(3.480));
  const auto verdict = moved.verdict("may be turned over", "part");
  EXPECT_EQ(verdict.state, State::kClose);
  EXPECT_THAT(verdict.reason, HasSubstr("half round, the same side up"));
  EXPECT_THAT(verdict.reason, HasSubstr("stands 0.020 from where it was"));
}

TEST(TurnOverCheck, SaysNothingWhereTheJobDoesNotAsk) {
  auto job = judged(l_of_holes(2.0));
  EXPECT_FALSE(says(job, "may be turned over", "part"));
}

// --- walls in states before the finished one ---------------------------------------------------------------------------
// A hole of 0.500 with its middle 0.300 from the front leaves 0.050 there until 0.200 is milled off the front.
std::string hole_then_front(double y) {
  return job_with(
      feature("bore", "hole",
              fmt::format("how = \"drilled\"\ndiameter = \"0.500\"\nat.x = \"2\"\nat.y = {{ size = {}, from "
                          "= \"back\" }}",
                          quoted(3.0 - y))) +
      feature("front flat", "flat", "side = \"front\"\nleaves = \"2.800\"") +
      setup_with("[[setup.do]]\nmake = \"bore\"\nwith = [\"spot\", \"drill 1/2\"]\n"));
}

TEST(StateWallCheck, AWallThatALaterCutTakesAway) {
  auto outside = judged(hole_then_front(0.312));  // 0.062 to the front, 0.0625 asked
  EXPECT_EQ(outside.state("least wall while it is made", "bore"), State::kClose);
  EXPECT_THAT(outside.verdict("least wall while it is made", "bore").reason, HasSubstr("0.062 of metal"));
  auto inside = judged(hole_then_front(0.313));
  EXPECT_FALSE(says(inside, "least wall while it is made", "bore"));
}

TEST(StateWallCheck, AWallThatIsThinOnTheFinishedPartIsSaidOnce) {
  auto job =
      judged(job_with(hole("bore", 2.0, 0.300, "how = \"drilled\"\ndiameter = \"0.500\"") +
                      setup_with("[[setup.do]]\nmake = \"bore\"\nwith = [\"spot\", \"drill 1/2\"]\n")));
  EXPECT_EQ(job.state("least wall", "bore"), State::kNo);
  EXPECT_FALSE(says(job, "least wall while it is made", "bore"));
}

}  // namespace
}  // namespace sparewright
