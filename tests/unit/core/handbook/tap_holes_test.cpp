#include "core/handbook/tap_holes.hpp"

#include <array>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/thread_designation.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using testing::HasSubstr;
namespace unit = quantity::unit;

constexpr std::array kAll{DrillSeries::kNumber, DrillSeries::kLetter, DrillSeries::kFraction,
                          DrillSeries::kMetric};

ThreadShape shape(std::string_view text) {
  return shape_of(read_thread(text).value());
}

TEST(TapHoles, TheHoleForAPercentageAndTheNearestDrillOfEachSeries) {
  const HoleForPercent found = hole_for_percent(shape("1/4-20 UNC"), 75.0, kAll).value();
  EXPECT_NEAR(found.hole.in(unit::inch), 0.2013, 0.00005);
  ASSERT_EQ(found.nearest.size(), 4U);
  EXPECT_EQ(found.nearest[0].drill.name, "#7");
  EXPECT_EQ(found.nearest[1].drill.name, "letter A");
  EXPECT_EQ(found.nearest[2].drill.name, "13/64");
  EXPECT_EQ(found.nearest[3].drill.name, "5.1 mm");
  EXPECT_NEAR(found.nearest[0].percent, 75.4, 0.05);
}

TEST(TapHoles, ADrillReallyLeavesLessThanItsSizeSays) {
  const TapDrillPercent seven = percent_of_drill(shape("1/4-20 UNC"), find_drill("#7").value()).value();
  EXPECT_NEAR(seven.percent, 75.4, 0.05);
  ASSERT_TRUE(seven.really);
  EXPECT_LT(*seven.really, seven.percent);
  EXPECT_LT(*seven.really_least, *seven.really);
  EXPECT_GT(*seven.really_most, *seven.really);
  EXPECT_NEAR(*seven.really, 69.8, 0.3);  // 0.0036 in larger between 1/8 and 1/4
  EXPECT_FALSE(percent_of_drill(shape("#0-80 UNF"), find_drill("3/64").value())->really) << "below 1/16 in";
}

TEST(TapHoles, OtherFormsCountTheirOwnDepth) {
  EXPECT_DOUBLE_EQ(full_thread_per_pitch(ThreadForm::kAcme), 1.0);
  EXPECT_NEAR(full_thread_per_pitch(ThreadForm::kWhitworth), 1.280654, 1e-9);
  EXPECT_NEAR(hole_for_percent(shape("Tr20x4"), 100.0, kAll)->hole.base(), 16.0, 1e-9);
  EXPECT_NEAR(hole_for_percent(shape("2 BA"), 100.0, kAll)->hole.base(), 4.7 - 1.2 * 0.81, 1e-9);
}

TEST(TapHoles, BadInput) {
  for (const double percent : {0.0, -5.0, 101.0, std::nan("")}) {
    const auto hole = hole_for_percent(shape("M8"), percent, kAll);
    ASSERT_FALSE(hole) << percent;
    EXPECT_EQ(hole.error().code, base::Code::kValueNotAccepted);
    EXPECT_FALSE(form_tap_hole(shape("M8"), percent, kAll));
  }
  EXPECT_THAT(base::report(hole_for_percent(shape("M8"), -5.0, kAll).error()),
              HasSubstr("'percent of thread' cannot be '-5 %'"));
  EXPECT_FALSE(hole_for_percent(shape("1/2 NPT"), 75.0, kAll));
  EXPECT_FALSE(percent_of_drill(shape("R1/2"), find_drill("#7").value()));
  EXPECT_FALSE(form_tap_hole(shape("1/4-20 BSW"), 65.0, kAll));
  EXPECT_TRUE(hole_for_percent(shape("4-4 UNC"), 75.0, kAll)->nearest.empty()) << "no drill is that large";
}

TEST(TapHoles, AFormTapWantsALargerHole) {
  const HoleForPercent formed = form_tap_hole(shape("1/4-20 UNC"), kUsualFormTapPercent, kAll).value();
  EXPECT_GT(formed.hole, hole_for_percent(shape("1/4-20 UNC"), 65.0, kAll)->hole);
  EXPECT_EQ(formed.nearest[0].drill.name, "#1");
  EXPECT_NEAR(formed.nearest[0].percent, 64.7, 0.05);
}

TEST(TapHoles, ABlindHoleHasRoomForTheTap) {
  const ThreadShape thread = shape("1/4-20 UNC");
  const Diameter drill = find_drill("#7")->diameter;
  const BlindHole plug = blind_hole(thread, Length::of(0.5, unit::inch), TapChamfer::kPlug, drill).value();
  EXPECT_NEAR(plug.lead.in(unit::inch), 0.25, 1e-9);
  EXPECT_NEAR(plug.full_diameter.in(unit::inch), 0.80, 1e-9);
  EXPECT_NEAR(plug.deepest.in(unit::inch), 0.80 + 0.0604, 0.0001);
  EXPECT_NEAR(full_thread_in(thread, plug.full_diameter, TapChamfer::kPlug).in(unit::inch), 0.5, 1e-9);
  EXPECT_LT(full_thread_in(thread, plug.full_diameter, TapChamfer::kTaper).in(unit::inch), 0.26);
  EXPECT_LT(full_thread_in(thread, Length::of(0.2, unit::inch), TapChamfer::kTaper), Length());
  const BlindHole bottomed =
      blind_hole(thread, Length::of(0.5, unit::inch), TapChamfer::kBottoming, drill, Length()).value();
  EXPECT_NEAR(bottomed.full_diameter.in(unit::inch), 0.60, 1e-9);
  EXPECT_EQ(blind_hole(thread, Length(), TapChamfer::kPlug, drill).error().code,
            base::Code::kSizeNotPositive);
}

}  // namespace
}  // namespace sparewright::handbook
