// The checks of screws and clamps: for each a job just inside its limit and one just outside, both worked by hand from the
// source named beside it.
#include <fmt/format.h>
#include <gmock/gmock.h>

#include "judged_job.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using tests::job_with;
using tests::judged;
using tests::troubles_of;

std::string feature(const std::string& name, const std::string& kind, const std::string& rest) {
  return fmt::format("[[feature]]\nname = \"{}\"\nkind = \"{}\"\n{}\n", name, kind, rest);
}

// A hole tapped 5/16-18 right through the block, 1 in thick, for a screw of that length that comes through so much.
std::string tapped(double through, const std::string& length = "1", const std::string& more = "") {
  return job_with(
      feature("screw", "hole",
              fmt::format("how = \"tapped\"\nscrew = \"5/16-18 x {} socket head\"\nthrough = \"{:.4f}\"\n"
                          "at.x = \"2\"\nat.y = \"1.5\"\n{}",
                          length, through, more)));
}

// FED-STD-H28: least screw 2A in largest hole 2B, 5/16-18: Ds 0.3026, Es 0.2712, Kn 0.2650, En 0.2817; At 0.05243 in2.
// Hole's thread: pi 0.3026 (0.5 + 0.57735 x 18 x 0.0209) = 0.6818 in2 an inch; its shear strength half of 441 MPa = 31.98 ksi.
// Screw A574, 180 ksi: 0.05243 x 180 / (0.6818 x 31.98) = 0.4328 in; at its proof load, 140 ksi: 0.3366 in.
// One pitch, 0.0556, of the point is no thread.
TEST(ScrewStripping, FullThreadAgainstTheScrewsStrength) {
  EXPECT_EQ(judged(tapped(1.0 - 0.4900)).state("thread does not strip", "screw"), State::kOk);
  EXPECT_EQ(judged(tapped(1.0 - 0.4870)).state("thread does not strip", "screw"), State::kClose);
  EXPECT_EQ(judged(tapped(1.0 - 0.3935)).state("thread does not strip", "screw"), State::kClose);
  EXPECT_EQ(judged(tapped(1.0 - 0.3905)).state("thread does not strip", "screw"), State::kNo);
}

TEST(ScrewStripping, IsNotKnownInAMetalThatIsNot) {
  std::string text = tapped(0.5);
  text.replace(text.find("1018 cold drawn"), 15, "not known");
  auto job = judged(text);
  EXPECT_EQ(job.state("thread does not strip", "screw"), State::kNotKnown);
}

// 1-1/2 diameters of 5/16 are 0.46875. The next shorter length sold, 3/4, has to reach that: 0.75 - 0.28 = 0.47 does, and
// 0.75 - 0.283 = 0.467 does not, so that 7/8 is then the shortest there is.
TEST(ScrewEngagement, MoreThanOneAndAHalfDiametersIsOfNoUse) {
  EXPECT_EQ(judged(tapped(0.5320)).state("no more thread than is of use", "screw"), State::kOk);
  auto more = judged(tapped(0.2800, "7/8"));
  EXPECT_EQ(more.state("no more thread than is of use", "screw"), State::kClose);
  EXPECT_THAT(more.verdict("no more thread than is of use", "screw").reason, HasSubstr("1.9 diameters"));
  EXPECT_THAT(more.verdict("no more thread than is of use", "screw").todo, HasSubstr("0.75 in long"));
  EXPECT_EQ(judged(tapped(0.2830, "7/8")).state("no more thread than is of use", "screw"), State::kOk);
}

TEST(ScrewEngagement, ALengthThatIsNotGivenIsNotKnownAndOneIsNamed) {
  std::string text = tapped(0.5);
  text.replace(text.find(" x 1 socket"), 4, "");
  auto job = judged(text);
  // 0.5 and 0.46875 are 0.96875: the next length sold is 1 in.
  EXPECT_EQ(job.state("screw has the right length", "screw"), State::kNotKnown);
  EXPECT_THAT(job.verdict("screw has the right length", "screw").todo, HasSubstr("1 in long"));
}

// ASME B18.3 (from memory): by 1/8 in up to 1 in, then by 1/4.
TEST(ScrewLength, IsOneThatIsSold) {
  EXPECT_EQ(judged(tapped(0.53, "7/8")).state("screw is sold in that length", "screw"), State::kOk);
  EXPECT_EQ(judged(tapped(0.53, "1-1/8")).state("screw is sold in that length", "screw"), State::kClose);
}

// A plug tap's lead of 5 threads and one pitch for chips: 6/18 = 0.3333 of the depth are no full thread.
TEST(ScrewBottoms, InABlindHole) {
  EXPECT_EQ(judged(tapped(0.5, "1", "depth = \"0.8340\"")).state("screw does not bottom", "screw"),
            State::kOk);
  EXPECT_EQ(judged(tapped(0.5, "1", "depth = \"0.8325\"")).state("screw does not bottom", "screw"),
            State::kNo);
}

// 2 D + 1/2 = 1.125 in of a 2 in screw are threaded: 0.875 are not.
TEST(ScrewShank, DoesNotComeToTheThread) {
  EXPECT_EQ(judged(tapped(0.8751, "2")).state("screw is threaded far enough", "screw"), State::kOk);
  EXPECT_EQ(judged(tapped(0.8749, "2")).state("screw is threaded far enough", "screw"), State::kNo);
}

// Least nut factor in print, as received: 0.158. 140 ksi x 0.05243 in2 = 7340 lbf; x 0.158 x 0.3125 in = 362.4 in lbf.
TEST(ScrewTension, StandsTheTorque) {
  EXPECT_EQ(
      judged(tapped(0.53, "1", "torque = \"362 in lbf\"")).state("screw stands its tightening", "screw"),
      State::kOk);
  EXPECT_EQ(
      judged(tapped(0.53, "1", "torque = \"363 in lbf\"")).state("screw stands its tightening", "screw"),
      State::kNo);
}

// Three quarters of the proof load at the mean factor, 0.199: 342.4 in lbf, which leave 3652 lbf at the highest, 0.30.
TEST(ScrewTension, OfTheHandbooksTorque) {
  auto job = judged(tapped(0.53));
  EXPECT_EQ(job.state("screw stands its tightening", "screw"), State::kOk);
  const auto& least = job.ledger.get("check/screw tension/screw/preload at least");
  EXPECT_NEAR(least.value / quantity::unit::pound_force.to_base(1.0), 3652.0, 2.0);
}

// Greatest 1/4 screw 0.250 in a hole of 0.290 at least: 0.040. A hole out by +-t both ways lies 1.414 t out and takes twice
// that: t 0.01414.
std::string clearance(double t) {
  return job_with(feature("screw", "hole",
                          fmt::format("how = \"drilled\"\nscrew = \"1/4-20 socket head\"\nhead = \"proud\"\n"
                                      "diameter = {{ size = \"0.290\", tol = \"+0.010/-0.000\" }}\n"
                                      "at.x = {{ size = \"2\", tol = \"±{0:.4f}\" }}\n"
                                      "at.y = {{ size = \"1.5\", tol = \"±{0:.4f}\" }}",
                                      t)));
}

TEST(ScrewFloat, TakesUpWhatTheHoleIsOut) {
  EXPECT_EQ(judged(clearance(0.0140)).state("screw finds its thread", "screw"), State::kOk);
  EXPECT_EQ(judged(clearance(0.0143)).state("screw finds its thread", "screw"), State::kNo);
}

// A 1/4 key's short arm is 1.219 over the bend (ASME B18.3, from memory): its arm passes 0.969 above the socket's bottom,
// which lies half of 0.3125 below the top of the head: 0.813 over the head, which sunk 0.3125 deeper is 1.125.
std::string sunk(double depth) {
  return job_with(
      feature("screw", "hole",
              fmt::format("how = \"counterbored\"\nscrew = \"5/16-18 socket head\"\nat.x = \"2\"\n"
                          "at.y = \"1.5\"\ncounterbore = {{ depth = {{ size = \"{:.4f}\", tol = "
                          "\"+0.010/-0.000\" }} }}",
                          depth)),
      R"({ length = "4", width = "3", thickness = "2" })");
}

TEST(KeyRoom, ASunkHeadIsOutOfReachOfABentKey) {
  EXPECT_EQ(judged(sunk(1.120)).state("key can turn", "screw"), State::kOk);
  EXPECT_EQ(judged(sunk(1.130)).state("key can turn", "screw"), State::kClose);
}

TEST(KeyRoom, AWallOnOneSideIsNone) {
  const std::string wall =
      feature("step", "flat",
              "leaves = \"0.5\"\nregion = { along = \"x\", start = \"1.6\", towards = \"right "
              "end\" }");
  const auto head = [](double x) {
    return feature("screw", "hole",
                   fmt::format("how = \"drilled\"\nscrew = \"5/16-18 socket head\"\nhead = \"proud\"\nat.x = "
                               "\"{:.3f}\"\nat.y = \"1.5\"",
                               x));
  };
  const std::string block = R"({ length = "4", width = "3", thickness = "3" })";
  EXPECT_EQ(judged(job_with(wall + head(2.0), block)).state("key can turn", "screw"), State::kOk);
}

// --- what is refused ------------------------------------------------------------------------------------------------
TEST(ScrewText, RefusesWhatItCannotRead) {
  EXPECT_THAT(troubles_of(tapped(0.5, "0")), AllOf(HasSubstr("screw is 0"), Not(HasSubstr("needs the key"))));
  EXPECT_THAT(troubles_of(tapped(0.5, "1", "grade = \"grade 99\"")), HasSubstr("grade 99"));
  EXPECT_THAT(troubles_of(tapped(0.5, "1", "torque = \"20\"")), HasSubstr("torque"));
  std::string text = tapped(0.5);
  text.replace(text.find("through = \"0.5000\""), 18, "");
  EXPECT_THAT(troubles_of(text), HasSubstr("through"));
}

// --- a slit and its screw -------------------------------------------------------------------------------------------
// A hole of 0.501 (+0.001/-0) for the pin of 0.5000, 0.65 from the left end, slit towards it.
std::string clamp(const std::string& slit, const std::string& more = "") {
  return job_with(
      feature("bore", "hole",
              "how = \"bored\"\nat.x = \"0.65\"\nat.y = \"1.5\"\ndiameter = { size = \"0.501\", tol = "
              "\"+0.001/-0.000\", mate = \"pin\", clearance = \"0 to 0.003\", with = \"fine\" }") +
      feature("slit", "slit", "in = \"bore\"\nside = \"left end\"\n" + slit) + more);
}
std::string wide(double width, double closes_by = 0.0) {
  const std::string by = closes_by > 0.0 ? fmt::format("\ncloses_by = \"{:.5f}\"", closes_by) : std::string();
  return fmt::format("width = {{ size = \"{:.5f}\", tol = \"+0.005/-0.000\" }}{}", width, by);
}

// The largest hole is 0.002 larger than the pin: to take that off the bore the slit closes by pi x 0.002 = 0.00628.
TEST(Clamp, ASlitHasRoomToClose) {
  EXPECT_EQ(judged(clamp(wide(0.0064))).state("slit leaves room to close", "slit"), State::kOk);
  EXPECT_EQ(judged(clamp(wide(0.0062))).state("slit leaves room to close", "slit"), State::kNo);
}

TEST(Clamp, ComesDownOnItsMate) {
  EXPECT_EQ(judged(clamp(wide(0.0625, 0.0064))).state("clamp comes down on its mate", "slit"), State::kOk);
  EXPECT_EQ(judged(clamp(wide(0.0625, 0.0062))).state("clamp comes down on its mate", "slit"), State::kNo);
}

// Ring of 0.501 bore and a wall of 1.5 - 0.2505 = 1.2495: R 0.8753. Stress E h c/(3 pi R2); 372 MPa of 205 GPa at c 0.01049.
TEST(Clamp, TheHingeSpringsBack) {
  const std::string check = "slit bends its hinge and springs back";
  EXPECT_EQ(judged(clamp(wide(0.0625, 0.0051))).state(check, "slit"), State::kOk);
  EXPECT_EQ(judged(clamp(wide(0.0625, 0.0054))).state(check, "slit"), State::kClose);
  EXPECT_EQ(judged(clamp(wide(0.0625, 0.0103))).state(check, "slit"), State::kClose);
  EXPECT_EQ(judged(clamp(wide(0.0625, 0.0107))).state(check, "slit"), State::kNo);
}

std::string clamp_screw(const std::string& rest) {
  return feature(
      "screw", "hole",
      "how = \"screw through and tapped\"\ninto = \"front\"\nhead = \"proud\"\nat.x = \"0.2\"\nat.z = "
      "\"0.5\"\n" +
          rest);
}

// Pull c E b h3/(36 pi R3) = 3824 lbf at c 0.005, and the screw pulls 3652 at the least (above): 0.00478 is even.
TEST(Clamp, TheScrewClosesIt) {
  const std::string screw = clamp_screw("screw = \"5/16-18 x 2 socket head\"");
  EXPECT_EQ(judged(clamp(wide(0.0625, 0.0047), screw)).state("screw can close the slit", "slit"), State::kOk);
  EXPECT_EQ(judged(clamp(wide(0.0625, 0.0049), screw)).state("screw can close the slit", "slit"),
            State::kClose);
}

// Under the head 1.5 - 0.03125 = 1.46875, slit 0.0625: a 2 in screw reaches 0.46875 into a hole with depth - 1.53125 - 0.33333
// of full thread. It closes by 0.0050: depth 2.33833 is even.
TEST(Clamp, TheSlitClosesBeforeTheScrewBottoms) {
  const auto deep = [](double depth) {
    return clamp(wide(0.0625, 0.0050),
                 clamp_screw(fmt::format("screw = \"5/16-18 x 2 socket head\"\ndepth = \"{:.4f}\"", depth)));
  };
  const std::string check = "slit closes before the screw bottoms";
  EXPECT_EQ(judged(deep(2.3390)).state(check, "slit"), State::kOk);
  auto outside = judged(deep(2.3375));
  EXPECT_EQ(outside.state(check, "slit"), State::kNo);
  EXPECT_EQ(outside.state("screw does not bottom", "screw"), State::kOk);
}

TEST(ThroughAndTapped, NamesTheSlitItCrosses) {
  const std::string screw = clamp_screw("screw = \"5/16-18 x 2 socket head\"\nacross = \"bore\"");
  EXPECT_THAT(troubles_of(clamp(wide(0.0625), screw)), HasSubstr("slit"));
  const std::string alone = job_with(clamp_screw("screw = \"5/16-18 x 2 socket head\""));
  EXPECT_THAT(troubles_of(alone), HasSubstr("slit or split across the hole"));
}

// Clearance 0.344 (ASME B18.2.8, normal, for 5/16) from the front to the middle of the slit at 1.5, tap drill F (0.257) on.
TEST(ThroughAndTapped, StepsFromClearanceToTapDrillAtTheSlit) {
  auto job = judged(clamp(wide(0.0625), clamp_screw("screw = \"5/16-18 x 2 socket head\"")));
  const auto recipe = job.ledger.value<shape::Recipe>(part::kRecipe);
  ASSERT_TRUE(recipe);
  std::vector<const shape::Cylinder*> cylinders;
  for (const shape::Cut& cut : recipe->cuts())
    if (const auto* cylinder = std::get_if<shape::Cylinder>(&cut.nominal); cylinder && cut.feature == "screw")
      cylinders.push_back(cylinder);
  ASSERT_EQ(cylinders.size(), 2U);
  EXPECT_NEAR(cylinders[0]->radius_mm, job.ledger.get("feature/screw/diameter").value / 2, 1e-5);
  EXPECT_NEAR(cylinders[0]->height_mm, 1.5 * 25.4, 1e-5);
  EXPECT_NEAR(cylinders[1]->radius_mm, 0.257 * 25.4 / 2, 1e-4);
  EXPECT_NEAR(cylinders[1]->height_mm, 3.0 * 25.4, 1e-5);
  EXPECT_NEAR(job.inches("feature/screw/gap/near"), 1.46875, 1e-6);
  EXPECT_NEAR(job.inches("feature/screw/gap/far"), 1.53125, 1e-6);
}

}  // namespace
}  // namespace sparewright
