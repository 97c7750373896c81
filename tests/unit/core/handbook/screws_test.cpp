// Tap drills, socket head screws, clearance holes, counterbores.
#include <array>
#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/clearance_holes.hpp"
#include "core/handbook/counterbores.hpp"
#include "core/handbook/socket_head_screws.hpp"
#include "core/handbook/tapping.hpp"
#include "core/handbook/thread_formulas.hpp"
#include "core/handbook/unified_threads.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using testing::HasSubstr;
namespace unit = quantity::unit;

TEST(PercentOfThread, ByHand) {
  // M8 drilled 6.8: 1.2 / (1.299038 x 1.25) = 73.9 %.
  EXPECT_NEAR(percent_of_thread(8.0, 6.8, 1.25), 73.90, 0.005);
  EXPECT_NEAR(hole_for_percent_mm(8.0, 73.9007, 1.25), 6.8, 1e-5);
}

TEST(TapDrills, ChoicesCarryTheirPercentage) {
  const UnifiedThread thread = read_unified_thread("1/4-20").value();
  constexpr std::array kSeries{DrillSeries::kNumber, DrillSeries::kLetter, DrillSeries::kFraction};
  const auto choices = tap_drills(thread.major, thread.pitch(), kSeries, {60, 80});
  std::vector<std::string_view> names;
  names.reserve(choices.size());
  for (const TapDrill& choice : choices) {
    names.push_back(choice.drill.name);
    EXPECT_GE(choice.percent, 60.0);
    EXPECT_LE(choice.percent, 80.0);
  }
  EXPECT_EQ(names, (std::vector<std::string_view>{"#8", "#7", "13/64", "#6", "#5", "#4"}));
  EXPECT_NEAR(choices[1].percent, 75.4, 0.05);  // (0.25 - 0.201) 20 / 1.299 by hand
}

TEST(TapDrills, TheChartedDrill) {
  const auto half = charted_tap_drill("1/2-13 UNC-2B", TapChartColumn::kNominal75);
  EXPECT_EQ(half->choice.drill.name, "27/64");
  EXPECT_NEAR(half->choice.percent, 78.2, 0.05);
  EXPECT_EQ(charted_tap_drill("M8", TapChartColumn::kNominal75)->choice.drill.name, "6.8 mm");
  EXPECT_EQ(charted_tap_drill("M8-6H-LH", TapChartColumn::kNominal75)->choice.drill.name, "6.8 mm");
  EXPECT_EQ(charted_tap_drill("10-24", TapChartColumn::kNominal50)->choice.drill.name, "#20");
  EXPECT_EQ(charted_tap_drill("1-8", TapChartColumn::kNominal50).error().code, base::Code::kNotTabled);
  EXPECT_EQ(charted_tap_drill("x", TapChartColumn::kNominal50).error().code, base::Code::kNameUnknown);
}

// Every row of the chart names a drill that is there; the columns are as loose as the head of the file says.
TEST(TapDrills, ChartColumnsRunFrom65To80And43To58) {
  int charted = 0;
  for (const StandardThread& standard : standard_unified_threads()) {
    const std::string name =
        std::string(standard.size) + "-" + std::to_string(static_cast<int>(standard.threads_per_inch));
    for (const TapChartColumn column : {TapChartColumn::kNominal75, TapChartColumn::kNominal50}) {
      const auto drill = charted_tap_drill(name, column);
      if (!drill) continue;
      ++charted;
      const bool fine = column == TapChartColumn::kNominal75;
      EXPECT_GE(drill->choice.percent, fine ? 64.9 : 43.0) << name;
      EXPECT_LE(drill->choice.percent, fine ? 80.0 : 58.0) << name;
    }
  }
  EXPECT_EQ(charted, 60);
}

TEST(SocketHeadScrews, AreFoundBySizeOrThread) {
  const auto screw = socket_head_screw("5/16-18");
  EXPECT_EQ(screw->size, "5/16");
  EXPECT_DOUBLE_EQ(screw->head_max.in(unit::inch), 0.469);
  EXPECT_DOUBLE_EQ(screw->head_height_max.in(unit::inch), 0.312);
  EXPECT_EQ(screw->key_name, "1/4 in");
  EXPECT_DOUBLE_EQ(screw->key.in(unit::inch), 0.25);
  EXPECT_FALSE(screw->knurled_head_max);
  EXPECT_DOUBLE_EQ(socket_head_screw("M8")->head_max.in(unit::millimetre), 13.0);
  EXPECT_DOUBLE_EQ(socket_head_screw("M8x1.25")->knurled_head_max->in(unit::millimetre), 13.27);
  EXPECT_EQ(socket_head_screw("10")->size, "#10");
  const auto none = socket_head_screw("#12");
  ASSERT_FALSE(none);
  EXPECT_EQ(none.error().code, base::Code::kNotTabled);
  EXPECT_THAT(base::report(none.error()), HasSubstr("#10, 1/4"));
}

// B18.3: the head is as high as the body is thick; from 1/4 in up it is half as wide again.
TEST(SocketHeadScrews, HeadsFollowTheBody) {
  ASSERT_EQ(socket_head_screws().size(), 28U);
  for (const SocketHeadScrew& screw : socket_head_screws()) {
    EXPECT_NEAR(screw.head_height_max.base(), screw.body_max.base(), 0.013) << screw.size;  // 0.0005 in
    EXPECT_GT(screw.head_min, screw.body_max) << screw.size;
    EXPECT_GT(screw.head_max, screw.head_min) << screw.size;
    EXPECT_LT(screw.key.base(), screw.head_min.base()) << screw.size;
    if (screw.body_max.in(unit::inch) > 0.249 && screw.body_max.in(unit::inch) <= 1.0 &&
        !screw.knurled_head_max) {
      EXPECT_NEAR(screw.head_max.base(), 1.5 * screw.body_max.base(), 0.02) << screw.size;
    }
  }
}

TEST(ClearanceHoles, ByFit) {
  EXPECT_DOUBLE_EQ(clearance_hole("5/16-18", ClearanceFit::kNormal)->hole.in(unit::inch), 0.3438);
  EXPECT_EQ(clearance_hole("5/16", ClearanceFit::kClose)->drill, "21/64");
  EXPECT_DOUBLE_EQ(clearance_hole("1/4", ClearanceFit::kLoose)->hole_max->in(unit::inch), 0.311);
  EXPECT_DOUBLE_EQ(clearance_hole("M8", ClearanceFit::kNormal)->hole.in(unit::millimetre), 9.0);
  EXPECT_EQ(clearance_hole("M8", ClearanceFit::kNormal)->zone, "H13");
  EXPECT_EQ(clearance_hole("M12", ClearanceFit::kNormal)->note, "BS 4186:1967 gives 14 mm");
  EXPECT_EQ(clearance_hole("M30", ClearanceFit::kNormal).error().code, base::Code::kNotTabled);
}

// The drill named beside a hole is that hole to the places printed; looser fits are larger.
TEST(ClearanceHoles, DrillsAreTheHoles) {
  for (const SocketHeadScrew& screw : socket_head_screws()) {
    Diameter last = screw.body_max;
    for (const ClearanceFit fit : {ClearanceFit::kClose, ClearanceFit::kNormal, ClearanceFit::kLoose}) {
      const auto hole = clearance_hole(screw.size, fit);
      if (!hole) continue;  // 9/16, M2, M2.5
      EXPECT_GT(hole->hole, last) << screw.size;
      last = hole->hole;
      const auto drill = find_drill(hole->drill);
      if (!drill) {
        EXPECT_GT(hole->hole.in(unit::millimetre), 25.4) << hole->drill;  // beyond the tables of drills
        continue;
      }
      EXPECT_NEAR(drill->diameter.base(), hole->hole.base(), 0.013) << screw.size << " " << hole->drill;
    }
  }
}

TEST(Counterbores, TheSetIsAlwaysNamed) {
  const auto usual = counterbore("5/16-18");
  EXPECT_EQ(usual->set, CounterboreSet::kAppendix);
  EXPECT_DOUBLE_EQ(usual->diameter.in(unit::inch), 17.0 / 32);
  EXPECT_FALSE(usual->depth);
  EXPECT_EQ(usual->source.basis, Basis::kFromMemory);
  EXPECT_EQ(name_of(usual->set), "ASME B18.3 appendix");
  EXPECT_DOUBLE_EQ(counterbore("5/16", CounterboreSet::kTight)->diameter.in(unit::inch), 0.5);
  EXPECT_EQ(counterbore("M8")->set, CounterboreSet::kMetric);
  EXPECT_DOUBLE_EQ(counterbore("M8")->diameter.in(unit::millimetre), 15.0);
  EXPECT_EQ(counterbore("M8", CounterboreSet::kTight).error().code, base::Code::kNotTabled);
  EXPECT_EQ(counterbore("9/16").error().code, base::Code::kNotTabled);
}

TEST(Counterbores, TheFourInchSetsDisagree) {
  std::vector<double> inches;
  const auto all = counterbores("1/4");
  inches.reserve(all->size());
  for (const Counterbore& one : *all)
    inches.push_back(one.diameter.in(unit::inch));
  EXPECT_THAT(inches, testing::ElementsAre(testing::DoubleEq(0.4375), testing::DoubleEq(0.40625),
                                           testing::DoubleEq(0.400), testing::DoubleEq(0.416)));
}

// No set is so tight that the largest head does not go in; the usual one leaves 0.03 in or more.
TEST(Counterbores, TheLargestHeadGoesIn) {
  int checked = 0;
  for (const SocketHeadScrew& screw : socket_head_screws()) {
    const auto all = counterbores(screw.size);
    if (!all) continue;
    for (const Counterbore& one : *all) {
      ++checked;
      EXPECT_GT(one.diameter, screw.head_max) << screw.size << " " << name_of(one.set);
      if (one.set == CounterboreSet::kAppendix) {
        EXPECT_GE((one.diameter - screw.head_max).in(unit::inch), 0.03) << screw.size;
      }
    }
  }
  EXPECT_GT(checked, 60);
}

}  // namespace
}  // namespace sparewright::handbook
