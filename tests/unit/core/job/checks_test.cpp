// For every check a job just inside its limit and one just outside, both worked by hand.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include "judged_job.hpp"

namespace sparewright {
namespace {

using ledger::State;
using tests::job_with;
using tests::judged;
using tests::setup_with;

constexpr double kTiny_in = 1e-9;

std::string hole(const std::string& name, const std::string& x, const std::string& y,
                 const std::string& rest) {
  return fmt::format("[[feature]]\nname = \"{}\"\nkind = \"hole\"\nat.x = {}\nat.y = {}\n{}\n", name, x, y,
                     rest);
}

std::string quoted(double inches) {
  return fmt::format("\"{:.6f}\"", inches);
}

// --- fit with the mate ------------------------------------------------------------------------------------------
// Pin 0.5000; clearance asked 0.0010 to 0.0020; hole 0.0004 wide. Tight end: hole least - 0.5000 - 0.0010.
std::string fitted_hole(double nominal) {
  return job_with(hole(
      "bore", "\"2\"", "\"1.5\"",
      fmt::format("how = \"bored\"\ndiameter = {{ size = {}, tol = \"±0.0002\", mate = \"pin\", clearance = "
                  "\"+0.0010 to +0.0020\", with = \"fine\" }}",
                  quoted(nominal))));
}

TEST(FitCheck, TightEndJustInside) {
  auto job = judged(fitted_hole(0.5013));  // least 0.5011: 0.0011 of clearance, 0.0001 to spare
  EXPECT_EQ(job.state("fit, tight end", "bore"), State::kOk);
  EXPECT_NEAR(job.margin_in("fit, tight end", "bore"), 0.0001, kTiny_in);
}

TEST(FitCheck, TightEndJustOutside) {
  auto job = judged(fitted_hole(0.5011));  // least 0.5009: 0.0001 too tight
  EXPECT_EQ(job.state("fit, tight end", "bore"), State::kNo);
  EXPECT_NEAR(job.margin_in("fit, tight end", "bore"), -0.0001, kTiny_in);
  EXPECT_EQ(job.state("fit, loose end", "bore"), State::kOk);
}

TEST(FitCheck, LooseEndJustInside) {
  auto job = judged(fitted_hole(0.5017));  // most 0.5019: 0.0019, 0.0001 to spare
  EXPECT_EQ(job.state("fit, loose end", "bore"), State::kOk);
  EXPECT_NEAR(job.margin_in("fit, loose end", "bore"), 0.0001, kTiny_in);
}

TEST(FitCheck, LooseEndJustOutside) {
  auto job = judged(fitted_hole(0.5019));  // most 0.5021: 0.0001 too loose
  EXPECT_EQ(job.state("fit, loose end", "bore"), State::kNo);
  EXPECT_NEAR(job.margin_in("fit, loose end", "bore"), -0.0001, kTiny_in);
}

// A hole made to the mate with a caliper good to 0.001 cannot be proven to 0.0010: CLOSE, never NO.
TEST(FitCheck, AFitFinerThanTheInstrumentIsClose) {
  const auto made_to_pin = [](const char* instrument) {
    return job_with(
        hole("bore", "\"2\"", "\"1.5\"",
             fmt::format("how = \"bored\"\ndiameter = {{ on = \"pin\", clearance = \"+0.0010 to +0.0020\", "
                         "with = \"{}\" }}",
                         instrument)));
  };
  auto coarse = judged(made_to_pin("caliper"));
  EXPECT_EQ(coarse.state("fit as it can be measured", "bore"), State::kClose);
  auto fine = judged(made_to_pin("fine"));
  EXPECT_EQ(fine.state("fit as it can be measured", "bore"), State::kOk);
}

TEST(FitCheck, WithoutAnInstrumentTheAimIsNotKnownAndSaysWhatIsMissing) {
  auto job = judged(
      job_with(hole("bore", "\"2\"", "\"1.5\"",
                    "how = \"bored\"\ndiameter = { on = \"pin\", clearance = \"+0.0010 to +0.0020\" }")));
  const auto verdict = job.verdict("fit as it can be measured", "bore");
  EXPECT_EQ(verdict.state, State::kNotKnown);
  ASSERT_FALSE(verdict.missing.empty());
  EXPECT_EQ(verdict.missing.front(), "feature/bore/diameter/instrument");
}

// --- screw head --------------------------------------------------------------------------------------------------
// A 1/4 in head is 0.375 across and 0.250 high at most (ASME B18.3). General tolerance on three places 0.005.
std::string counterbored(const std::string& diameter, const std::string& depth) {
  return job_with(hole(
      "screw", "\"2\"", "\"1.5\"",
      fmt::format(
          "how = \"counterbored\"\nscrew = \"1/4-20 socket head\"\ncounterbore = {{ diameter = {}, depth "
          "= {} }}",
          diameter, depth)));
}

TEST(ScrewHeadCheck, SeatsJustInside) {
  auto job = judged(counterbored("\"0.381\"", "\"0.300\""));  // least 0.376
  EXPECT_EQ(job.state("screw head seats", "screw"), State::kOk);
  EXPECT_NEAR(job.margin_in("screw head seats", "screw"), 0.001, kTiny_in);
}

TEST(ScrewHeadCheck, SeatsJustOutside) {
  auto job = judged(counterbored("\"0.379\"", "\"0.300\""));  // least 0.374
  EXPECT_EQ(job.state("screw head seats", "screw"), State::kNo);
  EXPECT_NEAR(job.margin_in("screw head seats", "screw"), -0.001, kTiny_in);
}

TEST(ScrewHeadCheck, FlushJustInside) {
  auto job = judged(counterbored("\"0.438\"", "\"0.256\""));  // least 0.251: 0.001 below
  EXPECT_EQ(job.state("screw head flush or below", "screw"), State::kOk);
  EXPECT_NEAR(job.margin_in("screw head flush or below", "screw"), 0.001, kTiny_in);
}

TEST(ScrewHeadCheck, FlushJustOutside) {
  auto job = judged(counterbored("\"0.438\"", "\"0.254\""));  // least 0.249: 0.001 proud
  EXPECT_EQ(job.state("screw head flush or below", "screw"), State::kNo);
  EXPECT_NEAR(job.margin_in("screw head flush or below", "screw"), -0.001, kTiny_in);
}

// --- least wall --------------------------------------------------------------------------------------------------
// A hole 0.500 (+0.002/-0) with its axis e from the front: wall at worst e - 0.251 - 0.005 (place, general tolerance).
// Allowed 0.0625. So e = 0.3185 is on the limit.
std::string near_the_front(double e) {
  return job_with(hole("bore", "\"2\"", quoted(e), "how = \"drilled\"\ndiameter = \"0.500 +0.002/-0.000\""));
}

TEST(WallCheck, ToTheOutsideJustInside) {
  auto job = judged(near_the_front(0.3195));
  EXPECT_EQ(job.state("least wall", "bore"), State::kOk);
  EXPECT_NEAR(job.margin_in("least wall", "bore"), 0.001, 1e-6);
}

TEST(WallCheck, ToTheOutsideJustOutside) {
  auto job = judged(near_the_front(0.3175));
  EXPECT_EQ(job.state("least wall", "bore"), State::kNo);
  EXPECT_NEAR(job.margin_in("least wall", "bore"), -0.001, 1e-6);
}

TEST(WallCheck, AHoleThatBreaksOutIsNoAndSaysByHowMuch) {
  auto job = judged(near_the_front(0.234));  // nominal: 0.250 - 0.234
  const auto verdict = job.verdict("least wall", "bore");
  EXPECT_EQ(verdict.state, State::kNo);
  EXPECT_EQ(verdict.reason, "it breaks out at front by 0.016");
}

// Two holes 0.500 exactly (±0), d apart along x; each place counts with its general tolerance of 0.005:
// wall d - 0.500 - 0.010. Allowed 0.0625: d = 0.5725 is on the limit.
std::string two_holes(double d) {
  return job_with(
      hole("one", "\"1.000\"", "\"1.5\"", "how = \"drilled\"\ndiameter = \"0.500 ±0.000\"") +
      hole("other", quoted(1.0 + d), "\"1.5\"", "how = \"drilled\"\ndiameter = \"0.500 ±0.000\""));
}

TEST(WallCheck, BetweenHolesJustInside) {
  auto job = judged(two_holes(0.5735));
  EXPECT_EQ(job.state("least wall", "one"), State::kOk);
  EXPECT_NEAR(job.margin_in("least wall", "one"), 0.001, 1e-6);
}

TEST(WallCheck, BetweenHolesJustOutside) {
  auto job = judged(two_holes(0.5715));
  EXPECT_EQ(job.state("least wall", "one"), State::kNo);
  EXPECT_NEAR(job.margin_in("least wall", "one"), -0.001, 1e-6);
}

// Placed from the other, a hole is out by its own tolerance alone: d = 0.5675 is on the limit.
std::string one_from_the_other(double d) {
  return job_with(hole("one", "\"1.000\"", "\"1.5\"", "how = \"drilled\"\ndiameter = \"0.500 ±0.000\"") +
                  hole("other", fmt::format("{{ size = {}, from = \"one\" }}", quoted(d)),
                       "{ size = \"0 ±0.000\", from = \"one\" }",
                       "how = \"drilled\"\ndiameter = \"0.500 ±0.000\""));
}

TEST(WallCheck, AHoleFromTheOtherCountsItsOwnToleranceAlone) {
  auto inside = judged(one_from_the_other(0.5685));
  EXPECT_NEAR(inside.margin_in("least wall", "one"), 0.001, 1e-6);
  EXPECT_NEAR(inside.margin_in("least wall", "other"), 0.001, 1e-6);
  auto outside = judged(one_from_the_other(0.5665));
  EXPECT_EQ(outside.state("least wall", "one"), State::kNo);
}

// A hole 0.500 in a block 3 deep, 1.250 of metal to the front at nominal: thick enough without a search, but 1.20 of
// tolerance leaves 0.05.
TEST(WallCheck, AWideToleranceThinsAThickWall) {
  auto job = judged(job_with(hole("bore", "\"2\"", "{ size = \"1.500\", tol = \"±1.200\" }",
                                  "how = \"drilled\"\ndiameter = \"0.500 ±0.000\"")));
  EXPECT_EQ(job.state("least wall", "bore"), State::kNo);
  EXPECT_NEAR(job.margin_in("least wall", "bore"), 0.050 - 0.0625, 1e-6);
}

// --- blank cleans up ---------------------------------------------------------------------------------------------
// A block 1.000 thick, flat leaving L ± 0.005: least metal 1 - L - 0.005; at least 0.003 has to come off.
std::string flat_leaving(double leaves) {
  return job_with(fmt::format(
      "[[feature]]\nname = \"flat\"\nkind = \"flat\"\nleaves = {{ size = {}, tol = \"±0.005\" }}\n",
      quoted(leaves)));
}

TEST(CleanUpCheck, JustInside) {
  auto job = judged(flat_leaving(0.991));  // 0.004 at the least
  EXPECT_EQ(job.state("blank cleans up", "flat"), State::kOk);
  EXPECT_NEAR(job.margin_in("blank cleans up", "flat"), 0.001, kTiny_in);
}

TEST(CleanUpCheck, JustOutside) {
  auto job = judged(flat_leaving(0.993));  // 0.002
  EXPECT_EQ(job.state("blank cleans up", "flat"), State::kNo);
  EXPECT_NEAR(job.margin_in("blank cleans up", "flat"), -0.001, kTiny_in);
}

TEST(CleanUpCheck, AFlatOutsideTheBlankIsNo) {
  auto job = judged(flat_leaving(1.200));
  EXPECT_EQ(job.state("blank cleans up", "flat"), State::kNo);
  EXPECT_LT(job.margin_in("blank cleans up", "flat"), -0.1);
}

// --- holding -----------------------------------------------------------------------------------------------------
// Jaws 2 deep, block 1 thick: parallels 1-1/2 leave 0.5 gripped, 1-7/8 leave 0.125. At least 0.25 is wanted.
constexpr const char* kDrillMiddle = "[[setup.do]]\nmake = \"bore\"\nwith = [\"spot\", \"drill 1/2\"]\n";

std::string drilled_on(const std::string& parallels, const std::string& blank) {
  return job_with(hole("bore", "\"2\"", "\"1.5\"", "how = \"drilled\"\ndiameter = \"0.500\"") +
                      setup_with(kDrillMiddle, parallels),
                  blank);
}

TEST(HoldingCheck, GripInside) {
  auto job = judged(drilled_on("1-1/2 x 1/8", R"({ length = "4", width = "3", thickness = "1" })"));
  EXPECT_EQ(job.state("grip", "op 10"), State::kOk);
  EXPECT_NEAR(job.margin_in("grip", "op 10"), 0.25, kTiny_in);
}

TEST(HoldingCheck, GripOutside) {
  auto job = judged(drilled_on("1-7/8 x 1/8", R"({ length = "4", width = "3", thickness = "1" })"));
  EXPECT_EQ(job.state("grip", "op 10"), State::kNo);
  EXPECT_NEAR(job.margin_in("grip", "op 10"), -0.125, kTiny_in);
}

TEST(HoldingCheck, JawsOpenJustInsideAndJustOutside) {  // they open 4
  auto inside = judged(drilled_on("1-1/2 x 1/8", R"({ length = "4", width = "3.999", thickness = "1" })"));
  EXPECT_EQ(inside.state("jaws open far enough", "op 10"), State::kOk);
  EXPECT_NEAR(inside.margin_in("jaws open far enough", "op 10"), 0.001, kTiny_in);
  auto outside = judged(drilled_on("1-1/2 x 1/8", R"({ length = "4", width = "4.001", thickness = "1" })"));
  EXPECT_EQ(outside.state("jaws open far enough", "op 10"), State::kNo);
  EXPECT_NEAR(outside.margin_in("jaws open far enough", "op 10"), -0.001, kTiny_in);
}

// Gripped 0.5 on 1-1/2 parallels: a flat leaving L lies L - 0.5 above the jaws; 0.020 is kept off.
std::string milled_to(double leaves) {
  return job_with(
      fmt::format("[[feature]]\nname = \"flat\"\nkind = \"flat\"\nleaves = {}\n", quoted(leaves)) +
      setup_with("[[setup.do]]\nmake = \"flat\"\nwith = [\"end mill\"]\n"));
}

TEST(HoldingCheck, CutterAboveTheJawsJustInsideAndJustOutside) {
  auto inside = judged(milled_to(0.521));
  EXPECT_EQ(inside.state("cutter clears the jaws", "flat"), State::kOk);
  EXPECT_NEAR(inside.margin_in("cutter clears the jaws", "flat"), 0.001, kTiny_in);
  auto outside = judged(milled_to(0.519));
  EXPECT_EQ(outside.state("cutter clears the jaws", "flat"), State::kNo);
  EXPECT_NEAR(outside.margin_in("cutter clears the jaws", "flat"), -0.001, kTiny_in);
}

// --- drill room --------------------------------------------------------------------------------------------------
// Parallel 1/8 hard against the front jaw: a 0.500 hole with its axis e from the front passes it by e - 0.250 - 0.125;
// 0.020 is kept off, so e = 0.395 is on the limit.
std::string drilled_near_the_jaw(double e) {
  return job_with(hole("bore", "\"2\"", quoted(e), "how = \"drilled\"\ndiameter = \"0.500\"") +
                  setup_with(kDrillMiddle));
}

TEST(DrillRoomCheck, ParallelsJustInsideAndJustOutside) {
  auto inside = judged(drilled_near_the_jaw(0.396));
  EXPECT_EQ(inside.state("drill clears the parallels", "bore"), State::kOk);
  EXPECT_NEAR(inside.margin_in("drill clears the parallels", "bore"), 0.001, kTiny_in);
  auto outside = judged(drilled_near_the_jaw(0.394));
  EXPECT_EQ(outside.state("drill clears the parallels", "bore"), State::kNo);
  EXPECT_NEAR(outside.margin_in("drill clears the parallels", "bore"), -0.001, kTiny_in);
}

// A 1/2 drill goes 0.25 x cot 59 = 0.150215 past, and 1.5 mm (0.059055 in) further: 0.209270. Parallels 1/4 high leave
// 0.040730. A 3 in drill goes 1.5/tan 59 = 0.90129 + 0.05906 = 0.96035 past: on 1/4 high parallels it is in the vise.
TEST(DrillRoomCheck, PointUnderTheWorkInside) {
  auto job = judged(drilled_on("1/4 x 1/8", R"({ length = "4", width = "3", thickness = "1" })"));
  EXPECT_EQ(job.state("drill point clears what is under the work", "bore"), State::kOk);
  EXPECT_NEAR(job.margin_in("drill point clears what is under the work", "bore"), 0.25 - 0.209270, 5e-6);
}

TEST(DrillRoomCheck, PointUnderTheWorkOutside) {
  auto job =
      judged(job_with(hole("bore", "\"2\"", "\"1.5\"", "how = \"drilled\"\ndiameter = \"1.500\"") +
                      setup_with("[[setup.do]]\nmake = \"bore\"\nwith = [\"drill 1-1/2\"]\n", "1/4 x 1/8")));
  // 0.75/tan 59 = 0.45065, + 0.05906 = 0.50970
  EXPECT_EQ(job.state("drill point clears what is under the work", "bore"), State::kNo);
  EXPECT_NEAR(job.margin_in("drill point clears what is under the work", "bore"), 0.25 - 0.50970, 5e-6);
}

// Blind 1/2 hole in 1.000: the point is out when depth + 0.15022 > 1.
std::string blind(double depth) {
  return job_with(hole("bore", "\"2\"", "\"1.5\"",
                       fmt::format("how = \"drilled\"\ndiameter = \"0.500\"\ndepth = {}", quoted(depth))) +
                  setup_with(kDrillMiddle));
}

TEST(DrillRoomCheck, BlindPointJustInsideAndJustOutside) {
  auto inside = judged(blind(0.848));
  EXPECT_EQ(inside.state("drill point stays in the metal", "bore"), State::kOk);
  EXPECT_NEAR(inside.margin_in("drill point stays in the metal", "bore"), 0.00178, 5e-6);
  auto outside = judged(blind(0.852));
  EXPECT_EQ(outside.state("drill point stays in the metal", "bore"), State::kNo);
  EXPECT_NEAR(outside.margin_in("drill point stays in the metal", "bore"), -0.00222, 5e-6);
}

// --- build-up ----------------------------------------------------------------------------------------------------
// A place on a whole division costs nothing: the margin is the tolerance. 0.0003 off a division with ±0.0002: outside.
std::string located(double x, const std::string& tol) {
  return job_with(
      hole("bore",
           fmt::format("{{ size = {}, tol = \"{}\", duty = \"locates\", with = \"fine\" }}", quoted(x), tol),
           "\"1.5\"", "how = \"drilled\"\ndiameter = \"0.500\"") +
      setup_with(kDrillMiddle));
}

TEST(BuildUpCheck, JustInside) {
  auto job = judged(located(2.000, "±0.002"));
  EXPECT_EQ(job.state("build-up in x", "bore"), State::kOk);
  EXPECT_NEAR(job.margin_in("build-up in x", "bore"), 0.002, kTiny_in);
}

TEST(BuildUpCheck, JustOutside) {
  auto job = judged(located(2.0003, "±0.0002"));  // the collar makes it 2.0000
  EXPECT_EQ(job.state("build-up in x", "bore"), State::kNo);
  EXPECT_NEAR(job.margin_in("build-up in x", "bore"), -0.0001, kTiny_in);
}

// Half a division (0.0005) and 0.0005 of repeating, rectangular each, and 0.0001 of the edge finder:
// u = sqrt(0.0005^2 + 0.0005^2 + 0.0001^2)/sqrt(3) = 0.000412, U = 1.96 u = 0.000808.
TEST(BuildUpCheck, AToleranceFinerThanTheMachineIsClose) {
  auto close = judged(located(2.000, "±0.0008"));
  EXPECT_EQ(close.state("build-up in x", "bore"), State::kClose);
  auto ok = judged(located(2.000, "±0.00082"));
  EXPECT_EQ(ok.state("build-up in x", "bore"), State::kOk);
  EXPECT_NEAR(ok.ledger.get("op 10/bore/x made").expanded() / 25.4, 0.000808, 1e-6);
}

// --- tooling -----------------------------------------------------------------------------------------------------
TEST(ToolingCheck, ABoredHoleNeedsABoringHead) {
  const std::string bore = hole("bore", "\"2\"", "\"1.5\"", "how = \"bored\"\ndiameter = \"0.600\"");
  auto without = judged(job_with(bore + setup_with(kDrillMiddle)));
  EXPECT_EQ(without.state("a tool makes it", "bore"), State::kNo);
  auto with = judged(job_with(
      bore + setup_with("[[setup.do]]\nmake = \"bore\"\nwith = [\"drill 1/2\", \"boring head\"]\n")));
  for (const auto& v : with.ledger.verdicts())
    EXPECT_NE(v.check, "a tool makes it");
}

// The handbook drills 1018 at 70 ft/min with high-speed steel: a 3 in drill wants 70 x 12 / (pi x 3) = 89.1 rpm.
std::string shop_whose_slowest_is(const std::string& rpm) {
  std::string shop = tests::plain_shop();
  const std::string speeds = "speeds = [80,";
  shop.replace(shop.find(speeds), speeds.size(), "speeds = [" + rpm + ",");
  return shop;
}

TEST(ToolingCheck, ASpeedTheMachineDoesNotHave) {
  const std::string text =
      job_with(hole("bore", "\"2\"", "\"1.5\"", "how = \"drilled\"\ndiameter = \"3.000\"") +
                   setup_with("[[setup.do]]\nmake = \"bore\"\nwith = [\"drill 3\"]\n"),
               R"({ length = "8", width = "4", thickness = "1" })");
  auto outside = judged(text, shop_whose_slowest_is("90"));
  EXPECT_NEAR(outside.ledger.get("op 10/bore/drill 3 rpm wanted").value / quantity::unit::rpm.to_base(1.0),
              89.127, 1e-3);
  EXPECT_EQ(outside.state("the machine has the speed", "bore/drill 3"), State::kNo);
  auto inside = judged(text, shop_whose_slowest_is("89"));
  for (const auto& v : inside.ledger.verdicts())
    EXPECT_NE(v.check, "the machine has the speed");
}

// --- reach -------------------------------------------------------------------------------------------------------
TEST(ReachCheck, AHoleInTheSideIsNotReachedFromTheTop) {
  const std::string made = setup_with("[[setup.do]]\nmake = \"bore\"\nwith = [\"drill 1/2\"]\n");
  auto side = judged(
      job_with("[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"drilled\"\ninto = \"front\"\nat.x = "
               "\"2\"\nat.z = \"0.5\"\ndiameter = \"0.500\"\n" +
               made));
  EXPECT_EQ(side.state("spindle reaches it", "bore"), State::kNo);
  auto top =
      judged(job_with(hole("bore", "\"2\"", "\"1.5\"", "how = \"drilled\"\ndiameter = \"0.500\"") + made));
  for (const auto& v : top.ledger.verdicts())
    EXPECT_NE(v.check, "spindle reaches it");
}

TEST(ReachCheck, AFeatureThatNoSetupMakesIsNo) {
  const std::string two = hole("bore", "\"2\"", "\"1.5\"", "how = \"drilled\"\ndiameter = \"0.500\"") +
                          hole("other", "\"3\"", "\"1.5\"", "how = \"drilled\"\ndiameter = \"0.500\"");
  auto job = judged(job_with(two + setup_with("[[setup.do]]\nmake = \"bore\"\nwith = [\"drill 1/2\"]\n")));
  EXPECT_EQ(job.state("it is made in a setup", "other"), State::kNo);
  auto none_yet = judged(job_with(two));
  for (const auto& v : none_yet.ledger.verdicts())
    EXPECT_NE(v.check, "it is made in a setup");
}

}  // namespace
}  // namespace sparewright
