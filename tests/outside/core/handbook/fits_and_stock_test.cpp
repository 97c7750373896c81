// Inch fits (inch_fits.csv), bright bars (en10278.csv) and cutting values against printed rows.
#include <algorithm>

#include <gtest/gtest.h>

#include "core/handbook/bar_stock.hpp"
#include "core/handbook/cutting_speeds.hpp"
#include "core/handbook/drilled_holes.hpp"
#include "core/handbook/feeds.hpp"
#include "core/handbook/inch_fits.hpp"
#include "core/handbook/iso286.hpp"
#include "published.hpp"

namespace sparewright::handbook {
namespace {

using published::Row;
using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

// The row holds just over its lower end, at its upper end and between.
void expect_fit(const Row& row) {
  constexpr double kExactThou = 1e-9;
  const double over = row.number("over");
  const double up_to = row.number("up_to");
  for (const double nominal : {over + 0.0001, (over + up_to) / 2.0, up_to}) {
    const InchFit fit = inch_fit(row["fit"], Diameter::of(nominal, unit::inch)).value();
    EXPECT_NEAR(fit.hole_lower.in(unit::thou), row.number("hole_lower"), kExactThou) << row;
    EXPECT_NEAR(fit.hole_upper.in(unit::thou), row.number("hole_upper"), kExactThou) << row;
    EXPECT_NEAR(fit.shaft_lower.in(unit::thou), row.number("shaft_lower"), kExactThou) << row;
    EXPECT_NEAR(fit.shaft_upper.in(unit::thou), row.number("shaft_upper"), kExactThou) << row;
  }
}

class OutsideInchFit : public testing::TestWithParam<Row> {};
TEST_P(OutsideInchFit, HasThePrintedLimits) {
  expect_fit(GetParam());
}

std::vector<Row> table(const std::string& name) {
  return published::rows_of("inch_fits.csv", "Machinery's Handbook " + name);
}
const std::vector<Row> kRunning = table("31st, Table 8a");
const std::vector<Row> kFree = table("31st, Table 8b");
const std::vector<Row> kTransition = table("31st, Table 10");
const std::vector<Row> kInterference = table("31st, Table 12");
const std::vector<Row> kForce = table("27th, Table 11");
INSTANTIATE_TEST_SUITE_P(Outside8a, OutsideInchFit, testing::ValuesIn(published::counted(kRunning)));
INSTANTIATE_TEST_SUITE_P(Outside8b, OutsideInchFit, testing::ValuesIn(published::counted(kFree)));
INSTANTIATE_TEST_SUITE_P(Outside10, OutsideInchFit, testing::ValuesIn(published::counted(kTransition)));
INSTANTIATE_TEST_SUITE_P(Outside12, OutsideInchFit, testing::ValuesIn(published::counted(kInterference)));
INSTANTIATE_TEST_SUITE_P(Outside11, OutsideInchFit, testing::ValuesIn(published::counted(kForce)));
INSTANTIATE_TEST_SUITE_P(Outside11Of31st, OutsideInchFit, testing::ValuesIn(table("31st, Table 11")));
INSTANTIATE_TEST_SUITE_P(OutsideLc6, OutsideInchFit,
                         testing::ValuesIn(published::rows_of("inch_fits.csv", "training page, LC6")));
TEST(OutsideInchFitRest, HasThePrintedLimits) {
  for (const std::vector<Row>& all : {kRunning, kFree, kTransition, kInterference, kForce}) {
    for (const Row& row : published::others(all))
      expect_fit(row);
  }
}

// Bars: a printed all-minus tolerance of EN 10278 is that of the table, and both are the ISO zone it is said
// to be.
void expect_bar(const Row& row) {
  constexpr double kExactMm = 1e-9;
  const std::string& form = row["form"];
  const BarStandard standard =
      form == "turned round" ? BarStandard::kEn10278Turned : BarStandard::kEn10278Drawn;
  const BarForm bar = form == "flat width"       ? BarForm::kFlatWidth
                      : form == "flat thickness" ? BarForm::kFlatThickness
                      : form == "square"         ? BarForm::kSquare
                                                 : BarForm::kRound;
  const double size = row.number("up_to");
  const BarTolerance tolerance = bar_tolerance(standard, bar, Length::of(size, unit::millimetre)).value();
  EXPECT_NEAR(tolerance.minus.in(unit::millimetre), row.number("minus"), kExactMm) << row;
  EXPECT_EQ(tolerance.plus, Length()) << row;
  const FitDeviations zone = iso286_deviations(row["zone"], Diameter::of(size, unit::millimetre)).value();
  EXPECT_NEAR(-zone.lower.in(unit::millimetre), row.number("minus"), kExactMm) << row;
}

class OutsideBrightBar : public testing::TestWithParam<Row> {};
TEST_P(OutsideBrightBar, IsTheIsoZone) {
  expect_bar(GetParam());
}
const std::vector<Row> kRounds = published::rows_of("en10278.csv", "EN 10278 bars");
const std::vector<Row> kFlats = published::rows_of("en10278.csv", "EN 10278 flats");
INSTANTIATE_TEST_SUITE_P(OutsideBars, OutsideBrightBar, testing::ValuesIn(published::counted(kRounds)));
INSTANTIATE_TEST_SUITE_P(OutsideFlats, OutsideBrightBar, testing::ValuesIn(published::counted(kFlats)));
TEST(OutsideBrightBarRest, IsTheIsoZone) {
  for (const Row& row : published::others(kRounds))
    expect_bar(row);
  for (const Row& row : published::others(kFlats))
    expect_bar(row);
}

// ASTM A108-03, Table A1.1 (www.lucefin.com/lucefin/en/tabelle_30.php): all minus, thousandths of an inch.
struct PrintedBar {
  BarStandard standard;
  BarForm form;
  double size_in;
  double minus_thou;
};
class OutsideA108 : public testing::TestWithParam<PrintedBar> {};
TEST_P(OutsideA108, HasThePrintedTolerance) {
  const PrintedBar& bar = GetParam();
  const auto tolerance = bar_tolerance(bar.standard, bar.form, Length::of(bar.size_in, unit::inch));
  EXPECT_NEAR(tolerance->minus.in(unit::thou), bar.minus_thou, 1e-9);
  EXPECT_EQ(tolerance->plus, Length());
}
INSTANTIATE_TEST_SUITE_P(OutsideA1, OutsideA108,
                         testing::Values(PrintedBar{BarStandard::kA108LowCarbon, BarForm::kRound, 1.0, 2},
                                         PrintedBar{BarStandard::kA108LowCarbon, BarForm::kRound, 1.5, 2},
                                         PrintedBar{BarStandard::kA108LowCarbon, BarForm::kRound, 1.5625, 3},
                                         PrintedBar{BarStandard::kA108MediumCarbon, BarForm::kRound, 3.0, 5},
                                         PrintedBar{BarStandard::kA108LowCarbon, BarForm::kHexagon, 0.75, 2},
                                         PrintedBar{BarStandard::kA108MediumCarbon, BarForm::kHexagon, 1.0,
                                                    4},
                                         PrintedBar{BarStandard::kA108LowCarbon, BarForm::kSquare, 1.0, 3},
                                         PrintedBar{BarStandard::kA108MediumCarbon, BarForm::kSquare, 2.0, 6},
                                         PrintedBar{BarStandard::kA108LowCarbon, BarForm::kFlat, 2.5, 5},
                                         PrintedBar{BarStandard::kA108LowCarbon, BarForm::kFlat, 8.0, 13}));

// AND10387 (www.engineersedge.com/manufacturing/drill-mechanical-tolerances.htm): inches below and above the
// drill.
struct PrintedHole {
  double drill_in;
  double upper_in;
};
class OutsideDrilledHole : public testing::TestWithParam<PrintedHole> {};
TEST_P(OutsideDrilledHole, HasThePrintedLimits) {
  const auto limits = drilled_hole_limits(Diameter::of(GetParam().drill_in, unit::inch));
  EXPECT_NEAR(limits->lower.in(unit::inch), -0.001, 1e-12);
  EXPECT_NEAR(limits->upper.in(unit::inch), GetParam().upper_in, 1e-12);
}
INSTANTIATE_TEST_SUITE_P(OutsideAnd10387, OutsideDrilledHole,
                         testing::Values(PrintedHole{0.125, 0.004}, PrintedHole{0.25, 0.005},
                                         PrintedHole{0.3125, 0.006}, PrintedHole{0.75, 0.008},
                                         PrintedHole{1.0, 0.010}, PrintedHole{2.0, 0.012}));

// Drilling with high-speed steel, NAVEDTRA 14345 (enginemechanics.tpub.com/14345/Holding-The-Work-93.html):
// the manual's row is among what is in print, and the spread holds it.
struct PrintedSpeed {
  WorkGroup group;
  double low_fpm;
  double high_fpm;
};
class OutsideNavySpeed : public testing::TestWithParam<PrintedSpeed> {};
TEST_P(OutsideNavySpeed, IsAmongThePrinted) {
  const PrintedSpeed& navy = GetParam();
  const auto speed = cutting_speed({navy.group, {}}, Operation::kDrilling, ToolMaterial::kHighSpeedSteel);
  const auto is_navy = [&](const Printed<quantity::Speed>& one) {
    return one.source.text.starts_with("Navy") &&
           std::abs(one.low.in(unit::foot_per_minute)-navy.low_fpm) < 1e-9 &&
           std::abs(one.high.in(unit::foot_per_minute)-navy.high_fpm) < 1e-9;
  };
  EXPECT_TRUE(std::any_of(speed->printed.begin(), speed->printed.end(), is_navy));
  EXPECT_LE(speed->low.in(unit::foot_per_minute), navy.low_fpm + 1e-9);
  EXPECT_GE(speed->high.in(unit::foot_per_minute), navy.high_fpm - 1e-9);
}
INSTANTIATE_TEST_SUITE_P(OutsideNavy, OutsideNavySpeed,
                         testing::Values(PrintedSpeed{WorkGroup::kLowCarbonSteel, 80, 110},
                                         PrintedSpeed{WorkGroup::kMediumCarbonSteel, 70, 80},
                                         PrintedSpeed{WorkGroup::kAlloySteel, 50, 70},
                                         PrintedSpeed{WorkGroup::kStainless, 30, 40},
                                         PrintedSpeed{WorkGroup::kBrass, 200, 300},
                                         PrintedSpeed{WorkGroup::kBronze, 200, 300},
                                         PrintedSpeed{WorkGroup::kAluminium, 200, 300},
                                         PrintedSpeed{WorkGroup::kGreyIron, 70, 150}));

// Where sources differ the spread shows it: 304 drilled with high-speed steel is 30-40 (Navy), 30-50
// (article) and 55 (cutter maker) feet per minute.
TEST(OutsideSpeedSpread, Stainless304IsShownWhole) {
  const auto speed = cutting_speed({WorkGroup::kStainless, BrinellRange{150, 180}}, Operation::kDrilling,
                                   ToolMaterial::kHighSpeedSteel);
  EXPECT_NEAR(speed->low.in(unit::foot_per_minute), 30, 1e-9);
  EXPECT_GE(speed->high.in(unit::foot_per_minute), 55 - 1e-9);
}

// Drill feeds of the same manual, inches a turn.
struct PrintedFeed {
  double drill_in;
  double low;
  double high;
};
class OutsideNavyFeed : public testing::TestWithParam<PrintedFeed> {};
TEST_P(OutsideNavyFeed, IsAmongThePrinted) {
  const auto feed = drill_feed(Diameter::of(GetParam().drill_in, unit::inch));
  const auto is_navy = [&](const Printed<quantity::FeedPerTurn>& one) {
    return one.source.text.starts_with("Navy") &&
           std::abs(one.low.in(unit::inch_per_turn)-GetParam().low) < 1e-12 &&
           std::abs(one.high.in(unit::inch_per_turn)-GetParam().high) < 1e-12;
  };
  EXPECT_TRUE(std::any_of(feed->printed.begin(), feed->printed.end(), is_navy));
}
INSTANTIATE_TEST_SUITE_P(OutsideNavy, OutsideNavyFeed,
                         testing::Values(PrintedFeed{0.1, 0.001, 0.002}, PrintedFeed{0.25, 0.002, 0.004},
                                         PrintedFeed{0.3125, 0.004, 0.007}, PrintedFeed{0.75, 0.007, 0.015},
                                         PrintedFeed{1.25, 0.015, 0.025}));

}  // namespace
}  // namespace sparewright::handbook
