// Facts of the trade through a whole job: common practice, no source of their own. The head is ASME B18.3's: a 3/8
// socket head is 0.562 across at most.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include "judged_job.hpp"

namespace sparewright {
namespace {

using ledger::State;
using tests::job_with;
using tests::judged;

// A bore of 1.850 central in a block `across` wide, and a 3/8 screw midway in the metal that is left at the front.
std::string bored_block(double across) {
  const double wall = (across - 1.850) / 2.0;
  return job_with(fmt::format(R"(
[[feature]]
name = "bore"
kind = "hole"
how = "bored"
at.x = "2"
at.y = "{:.4f}"
diameter = {{ size = "1.850", with = "fine" }}
[[feature]]
name = "screw"
kind = "hole"
how = "drilled"
screw = "3/8-16 socket head"
head = "proud"
diameter = "0.397"
at.x = "2"
at.y = "{:.5f}"
)",
                              across / 2.0, wall / 2.0),
                  fmt::format(R"({{ length = "4", width = "{:.3f}", thickness = "1" }})", across));
}

TEST(OutsideCommonPractice, ABoreOf1850CentralIn3000Leaves0575ASide) {
  auto job = judged(bored_block(3.000));
  const double wall = job.inches("feature/bore/at y") - job.inches("feature/bore/diameter") / 2.0;
  EXPECT_NEAR(wall, 0.575, 1e-12);
  EXPECT_NEAR(job.inches("check/screw head/screw/face across"), 0.575, 1e-12);
}

TEST(OutsideCommonPractice, AThreeEighthsSocketHeadJustSeatsOnAFaceOf0575) {
  auto job = judged(bored_block(3.000));
  EXPECT_EQ(job.state("screw head seats", "screw"), State::kOk);
  EXPECT_NEAR(job.margin_in("screw head seats", "screw"), 0.575 - 0.562, 1e-9);
}

TEST(OutsideCommonPractice, With0158OffEachSideTheFaceIs0417AndTheHeadDoesNotSeat) {
  auto job = judged(bored_block(3.000 - 2 * 0.158));
  EXPECT_NEAR(job.inches("check/screw head/screw/face across"), 0.417, 1e-9);
  EXPECT_EQ(job.state("screw head seats", "screw"), State::kNo);
}

TEST(OutsideCommonPractice, HalfOf1852And0944FromTheEdgeIs1870ToTheCentre) {
  auto job = judged(job_with(R"(
[[reading]]
name = "bore"
what = "inside"
of = "bore"
with = "fine"
got = ["1.852"]
[[reading]]
name = "near"
what = "edge to hole, near"
of = ["edge", "bore"]
with = "fine"
got = ["0.944"]
)"));
  EXPECT_NEAR(job.inches("survey/edge"), 1.870, 1e-9);
}

}  // namespace
}  // namespace sparewright
