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

// 3/8-16 UNC and BSW have one diameter and pitch; 1/2-20 UNF and BSC the flanks too.
TEST(WhatDecidesThreads, FlanksThenCrestsThenNothing) {
  MeasuredThread what = measured(9.42, 16);
  auto left = not_ruled_out(identify_thread(what).value());
  ASSERT_EQ(left.size(), 2U);
  EXPECT_EQ(words_of(what_decides(what, left[0], left[1]), left[0], left[1]),
            "the flank angle: 60 or 55 degrees");
  what.flank_angle = quantity::Angle::of(55, unit::degree);
  left = not_ruled_out(identify_thread(what).value());
  ASSERT_EQ(left.size(), 1U);
  EXPECT_EQ(to_string(left.front().thread), "3/8-16 BSW");
  what = measured(12.6, 20);
  what.flank_angle = quantity::Angle::of(60, unit::degree);
  left = not_ruled_out(identify_thread(what).value());
  ASSERT_EQ(left.size(), 2U);
  EXPECT_EQ(words_of(what_decides(what, left[0], left[1]), left[0], left[1]), "its crests: flat or rounded");
  what.rounded = true;
  left = not_ruled_out(identify_thread(what).value());
  ASSERT_EQ(left.size(), 1U);
  EXPECT_EQ(to_string(left.front().thread), "1/2-20 BSC");
  EXPECT_EQ(what_decides(what, left[0], left[0]).by, ThreadDecider::kNothing);
}

// M5x0.8 against #10-32: 0.8 - 25.4/32 = 0.00625 mm; 0.15 mm after 24 threads, so over 25.
TEST(WhatDecidesThreads, SoManyThreadsThatACalliperSeesIt) {
  MeasuredThread what;
  what.major = Diameter::of(4.82, unit::millimetre);
  what.pitch = Length::of(0.797, unit::millimetre);
  what.flank_angle = quantity::Angle::of(60, unit::degree);
  const auto left = not_ruled_out(identify_thread(what).value());
  ASSERT_EQ(left.size(), 2U);
  const WhatDecides decides = what_decides(what, left[0], left[1]);
  EXPECT_EQ(decides.by, ThreadDecider::kPitch);
  EXPECT_EQ(decides.threads, 25);
  const std::string words = words_of(decides, left[0], left[1]);
  EXPECT_TRUE(words == "the pitch over 25 threads: 20.00 or 19.84 mm" ||
              words == "the pitch over 25 threads: 19.84 or 20.00 mm")
      << words;
}

TEST(WhatDecidesThreads, TaperIsSeenByAStraightedge) {
  MeasuredThread what = measured(20.95, 14);  // G1/2, and 1/2-14 NPT along its taper
  what.flank_angle = quantity::Angle::of(57.5, unit::degree);
  what.angle_good_to = quantity::Angle::of(5, unit::degree);
  const auto left = not_ruled_out(identify_thread(what).value());
  ASSERT_GE(left.size(), 2U);
  bool by_taper = false;
  for (std::size_t i = 1; i < left.size(); ++i)
    by_taper = by_taper || what_decides(what, left[0], left[i]).by == ThreadDecider::kTaper;
  EXPECT_TRUE(by_taper);
  what.tapered = false;
  for (const ThreadCandidate& one : not_ruled_out(identify_thread(what).value()))
    EXPECT_FALSE(shape_of(one.thread).tapered) << to_string(one.thread);
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
