#include "core/handbook/identify_threads.hpp"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using testing::ElementsAre;
namespace unit = quantity::unit;

MeasuredThread measured(double major_mm, double per_inch) {
  MeasuredThread out;
  out.major = Diameter::of(major_mm, unit::millimetre);
  out.pitch = Length::of(1.0 / per_inch, unit::inch);
  return out;
}

std::vector<std::string> names(const MeasuredThread& what, std::size_t most) {
  std::vector<std::string> out;
  const auto found = identify_thread(what, most).value();
  out.reserve(found.size());
  for (const ThreadCandidate& one : found)
    out.push_back(to_string(one.thread));
  return out;
}

TEST(IdentifyThread, AScrewALittleUnderItsSize) {
  EXPECT_THAT(names(measured(9.42, 16), 2), ElementsAre("3/8-16 UNC", "3/8-16 BSW"));
  const auto found = identify_thread(measured(9.42, 16), 3).value();
  EXPECT_EQ(found[0].misfit, 0.0);
  EXPECT_NEAR(found[0].major_off.base(), -0.105, 1e-9);
  EXPECT_EQ(to_string(found[1].from_first), "flank angle");
  EXPECT_GT(found[2].misfit, 5.0);
}

TEST(IdentifyThread, TheFlanksDecideWhereSizesDoNot) {
  MeasuredThread what = measured(6.30, 20);
  what.flank_angle = quantity::Angle::of(55, unit::degree);
  EXPECT_EQ(names(what, 1).front(), "1/4-20 BSW");
  what.flank_angle = quantity::Angle::of(60, unit::degree);
  EXPECT_EQ(names(what, 1).front(), "1/4-20 UNC");
}

TEST(IdentifyThread, WornAndMetric) {
  MeasuredThread what;
  what.major = Diameter::of(7.90, unit::millimetre);
  what.pitch = Length::of(1.25, unit::millimetre);
  EXPECT_EQ(names(what, 1).front(), "M8x1.25");
  what.major = Diameter::of(7.60, unit::millimetre);  // worn below its limit
  const auto worn = identify_thread(what, 1).value();
  EXPECT_EQ(to_string(worn.front().thread), "M8x1.25");
  EXPECT_NEAR(worn.front().misfit, (7.760 - 7.60) / 0.05, 1e-6);
}

TEST(IdentifyThread, PipeAcmeAndTrapezoidal) {
  EXPECT_EQ(names(measured(21.2, 14), 1).front(), "1/2-14 NPT");
  EXPECT_EQ(names(measured(20.85, 14), 1).front(), "G1/2");
  EXPECT_EQ(names(measured(25.2, 5), 1).front(), "1-5 ACME-2G");
  MeasuredThread what;
  what.major = Diameter::of(19.9, unit::millimetre);
  what.pitch = Length::of(4.0, unit::millimetre);
  EXPECT_EQ(names(what, 1).front(), "Tr20x4");
  what.major = Diameter::of(4.65, unit::millimetre);
  what.pitch = Length::of(0.81, unit::millimetre);
  EXPECT_EQ(names(what, 1).front(), "2 BA");
}

TEST(IdentifyThread, BestFirstAndNoMoreThanAsked) {
  const auto found = identify_thread(measured(12.6, 13), 12).value();
  ASSERT_EQ(found.size(), 12U);
  for (std::size_t i = 1; i < found.size(); ++i)
    EXPECT_LE(found[i - 1].misfit, found[i].misfit);
  EXPECT_TRUE(identify_thread(measured(12.6, 13), 0)->empty());
  EXPECT_EQ(to_string(found.front().from_first), "nothing");
  EXPECT_GT(identify_thread(measured(12.6, 13), 100000)->size(), 400U);
}

TEST(IdentifyThread, BadInput) {
  for (auto change :
       {+[](MeasuredThread& m) { m.major = Diameter(); }, +[](MeasuredThread& m) { m.pitch = -m.pitch; },
        +[](MeasuredThread& m) { m.major_good_to = Length(); },
        +[](MeasuredThread& m) { m.pitch_good_to = Length::from_base(std::nan("")); },
        +[](MeasuredThread& m) { m.angle_good_to = quantity::Angle(); }}) {
    MeasuredThread what = measured(8, 20);
    change(what);
    const auto found = identify_thread(what);
    ASSERT_FALSE(found);
    EXPECT_EQ(found.error().code, base::Code::kSizeNotPositive);
  }
}

}  // namespace
}  // namespace sparewright::handbook
